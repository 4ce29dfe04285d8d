import { OfficeMockObject } from "office-addin-mock";
import { afterEach, describe, vi } from "vitest";
import { ExcelWorkbookHost } from "../../src/pages/excel/excel-workbook-host";
import { expressionAlone } from "../../src/pages/excel/expression-alone";
import { placeOf } from "../../src/workbook/addresses";
import { FakeExcel } from "../pages/excel/fake-excel";
import { book, expressions, type HostAtWork, hostContract, type Put, selectionContract, spilling } from "./contract";
import { FakeWorkbookHost } from "./fake-workbook-host";

const names = { here: "Lot", there: "Past lots", name: "Pan" } as const;

/** The cells of a sheet with those of the answer that spills. */
const cellsOf = (cells: Readonly<Record<string, Put>>, withSpill: boolean): [string, Exclude<Put, CellContent>][] => {
  const { row, column } = placeOf(spilling.at);
  const spilled = spilling.values.map((value, down): [string, Put] => [
    `${String.fromCharCode(65 + column)}${row + down + 1}`,
    down === 0 ? { content: spilling.formula, value } : value,
  ]);
  return [...Object.entries(cells), ...(withSpill ? spilled : [])].map(([address, cell]) => [
    address,
    typeof cell === "object" ? cell : { content: cell },
  ]);
};
type CellContent = string | number | boolean;

afterEach(() => vi.unstubAllGlobals());

describe("the host of the tests", () => {
  hostContract(async (): Promise<HostAtWork> => {
    const sheet = (cells: Readonly<Record<string, Put>>, withSpill = false) =>
      Object.fromEntries(
        cellsOf(cells, withSpill).map(([address, { content, value = content, format = "General" }]) => [
          address,
          { value, format, ...(String(content).startsWith("=") && { formula: String(content) }) },
        ]),
      );
    const host = new FakeWorkbookHost({ [names.here]: sheet(book.here, true), [names.there]: sheet(book.there) });
    host.names[names.name] = `'${names.there}'!$A$1`;
    host.spills.push({ sheet: names.here, row: 1, column: 3, rows: 3, columns: 1 });
    for (const { expression, rows } of expressions) {
      host.expressions[expression.replace("{there}", names.there)] = rows;
    }
    return {
      ...names,
      host,
      select: async (sheet, address) => host.select(sheet, address),
      type: async (sheet, address, content) => host.put(sheet, address, content),
      protect: async (sheet) => void host.protectedSheets.add(sheet),
    };
  });
});

const stubOffice = (): void => {
  const requirements = { isSetSupported: () => true };
  vi.stubGlobal("Office", { context: { displayLanguage: "zh-CN", requirements } });
};

describe("Excel's host, over cells in memory", () => {
  hostContract(async (): Promise<HostAtWork> => {
    const excel = new FakeExcel();
    const sheet = (cells: Readonly<Record<string, Put>>, withSpill = false) =>
      Object.fromEntries(
        cellsOf(cells, withSpill).map(([address, { content, ...rest }]) => [address, { formula: content, ...rest }]),
      );
    excel.addSheet(names.here, sheet(book.here, true), { spills: { [spilling.at]: spilling.over } });
    excel.addSheet(names.there, sheet(book.there));
    excel.names.set(names.name, { type: "Range", value: "", range: [names.there, "A1"] });
    for (const { expression, rows, ...more } of expressions) {
      const alone = expressionAlone(expression.replace("{there}", names.there), {
        sheet: names.here,
        row: 8,
        column: 5,
      });
      const [value] = rows[0];
      const type = "cells" in more ? "Range" : typeof value === "number" ? "Double" : "Error";
      const range = "cells" in more ? ([names[more.cells[0]], more.cells[1]] as const) : undefined;
      excel.formulas.set(`=${alone}`, { type, value, ...(range && { range }) });
    }
    vi.stubGlobal("Excel", excel);
    stubOffice();
    const tell = async (of: string) => {
      for (const handler of excel.handlers.get(of) ?? []) await handler();
    };
    return {
      ...names,
      host: new ExcelWorkbookHost(),
      select: async (sheet, address) => {
        excel.selected = [sheet, address];
        await tell("selection");
      },
      type: async (sheet, address, content) => {
        const { row, column } = placeOf(address);
        excel.sheets.get(sheet)?.cells.set(`${row},${column}`, { formula: content });
        await tell("changed");
      },
      protect: async (sheet) => {
        const known = excel.sheets.get(sheet);
        if (known) known.isProtected = true;
      },
    };
  });
});

/** The makers' mock has no cells behind its ranges: it knows what is loaded, for one range. */
describe("Excel's host, through the mock of Office's makers", () => {
  selectionContract(async () => {
    const used = { isNullObject: false, rowIndex: 0, columnIndex: 0, rowCount: 4, columnCount: 4 };
    const range = {
      ...{ rowIndex: 0, columnIndex: 0, rowCount: 3, columnCount: 2 },
      values: [
        ["One lot", 12],
        ["", 3],
        ["", "#DIV/0!"],
      ],
      formulas: [
        ["One lot", 12],
        ["", "=B1/4"],
        ["", "=1/0"],
      ],
      numberFormat: [
        ["General", "0.0"],
        ["General", "General"],
        ["General", "General"],
      ],
      worksheet: { name: names.here, used, getUsedRangeOrNullObject: () => mockedUsed() },
    };
    const mock = new OfficeMockObject({
      context: { workbook: { range, getSelectedRange: () => mocked().range } },
      run: async (batch: (context: unknown) => Promise<unknown>) =>
        batch((mock as unknown as { context: unknown }).context),
    });
    const mocked = () =>
      (mock as unknown as { context: { workbook: { range: { worksheet: { used: { isNullObject: boolean } } } } } })
        .context.workbook;
    const mockedUsed = () => mocked().range.worksheet.used;
    mockedUsed().isNullObject = false;
    vi.stubGlobal("Excel", mock);
    stubOffice();
    return { host: new ExcelWorkbookHost(), here: names.here, select: async () => {} };
  });
});

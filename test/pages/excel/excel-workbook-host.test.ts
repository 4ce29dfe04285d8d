import { OfficeMockObject } from "office-addin-mock";
import { beforeEach, describe, expect, test, vi } from "vitest";
import type { Block } from "../../../src/host/workbook-host";
import { ExcelWorkbookHost } from "../../../src/pages/excel/excel-workbook-host";
import { expressionAlone } from "../../../src/pages/excel/expression-alone";
import { FakeExcel } from "./fake-excel";

let excel: FakeExcel;
let host: ExcelWorkbookHost;

const office = {
  context: { displayLanguage: "zh-CN" },
};
/** Which calls this Excel knows. */
let knows = 1.12;

/** Two inputs, a formula on them, and one that spills. */
const block: Block = {
  rows: 3,
  columns: 2,
  cells: [
    { row: 0, column: 0, content: "Fresh weight, g", look: "label" },
    { row: 0, column: 1, content: 320, format: "0.0", look: "input" },
    { row: 1, column: 1, content: "=TEA.TARGETWEIGHT(C3,75%,60%)", format: "0.0", look: "answer" },
    {
      row: 2,
      column: 0,
      content: "=TEA.CHARGESPLIT(C3,100,0.1)",
      format: "0.0",
      spill: { rows: 4, columns: 1 },
    },
  ],
};
const at = { sheet: "Lot", row: 2, column: 1 };

beforeEach(() => {
  excel = new FakeExcel();
  excel.addSheet("Lot", { A1: "One lot", B1: 12 });
  vi.stubGlobal("Excel", excel);
  knows = 1.12;
  const requirements = { isSetSupported: (_: string, version: string) => Number(version) <= knows };
  vi.stubGlobal("Office", { context: { ...office.context, requirements } });
  host = new ExcelWorkbookHost();
});

describe("with the mock of Office's makers", () => {
  const data = {
    context: {
      workbook: {
        range: {
          ...{ rowIndex: 3, columnIndex: 1, rowCount: 1, columnCount: 2 },
          ...{ values: [[0.76, "x"]], formulas: [["=1-B3", "x"]], numberFormat: [["0.0%", "General"]] },
          worksheet: {
            name: "Lot",
            used: { rowIndex: 0, columnIndex: 0, rowCount: 9, columnCount: 4 },
            getUsedRangeOrNullObject(this: { used: unknown }) {
              return this.used;
            },
          },
        },
        getSelectedRange(this: { range: unknown }) {
          return this.range;
        },
      },
    },
    async run(batch: (context: unknown) => Promise<unknown>) {
      return batch((this as unknown as { context: unknown }).context);
    },
  };

  test("gives the selection with values, formulas and formats, everything loaded before it is read", async () => {
    const mock = new OfficeMockObject(data) as unknown as {
      context: { workbook: { range: { worksheet: { used: { isNullObject: boolean } } } } };
    };
    mock.context.workbook.range.worksheet.used.isNullObject = false;
    vi.stubGlobal("Excel", mock);
    expect(await host.selection()).toEqual({
      ...{ sheet: "Lot", row: 3, column: 1, rows: 1, columns: 2 },
      values: [[0.76, "x"]],
      formulas: [["=1-B3", ""]],
      formats: [["0.0%", "General"]],
    });
  });
});

describe("reading", () => {
  test("takes whole columns as far as the sheet is used", async () => {
    excel.addSheet("Lot", { A1: 1, A2: 2, C9: 3 });
    excel.selected = ["Lot", "A:B"];
    const read = await host.selection();
    expect([read.rows, read.columns]).toEqual([9, 2]);
    expect(read.values[1]).toEqual([2, ""]);
  });

  test("loads nothing that it does not answer with", async () => {
    await host.selection();
    const needed = ["rowIndex", "columnIndex", "rowCount", "columnCount", "worksheet/name", "name"];
    expect([...new Set(excel.loads)].sort()).toEqual([...needed, "values", "formulas", "numberFormat"].sort());
  });

  test("tells a formula from a text that looks like one, and names functions as cells show them", async () => {
    excel.addSheet("Lot", {
      A1: { formula: "=A2", value: "=A2" },
      B1: { formula: "=_xldudf_TEA_OUTTURN(B4,B5)", value: 0.21 },
    });
    const { formulas } = await host.read("A1:B1", at);
    expect(formulas).toEqual([["", "=TEA.OUTTURN(B4,B5)"]]);
  });

  test("finds a table and its parts, and in a table the cell in the formula's own row", async () => {
    excel.addSheet("Past lots", { B2: 5, B3: 6 });
    excel.tables.set("lots", { sheet: "Past lots", address: "B1:C4", columns: ["kg", "lot"], showTotals: true });
    for (const text of ["lots[kg]", "lots[KG]", "lots[[#Data],[kg]]"]) {
      expect(await host.read(text, at)).toMatchObject({ row: 1, column: 1, rows: 2, columns: 1, values: [[5], [6]] });
    }
    expect(await host.read("lots", at)).toMatchObject({ row: 1, column: 1, rows: 2, columns: 2 });
    expect(await host.read("lots[#All]", at)).toMatchObject({ row: 0, rows: 4, columns: 2 });
    expect(await host.read("lots[[#Headers],[lot]]", at)).toMatchObject({ row: 0, column: 2, rows: 1, columns: 1 });
    expect(await host.read("lots[[#Totals],[kg]:[lot]]", at)).toMatchObject({ row: 3, column: 1, rows: 1, columns: 2 });
    const beside = { sheet: "Past lots", row: 2, column: 2 };
    expect(await host.read("[@kg]", beside)).toMatchObject({ row: 2, column: 1, rows: 1, columns: 1, values: [[6]] });
    expect(await host.read("[kg]", beside)).toMatchObject({ row: 1, rows: 2, values: [[5], [6]] });
  });

  test("finds another sheet, a name, a number that a name stands for, and a spill", async () => {
    excel.addSheet("Past lots", { B2: 5, B3: 6 }, { spills: { B2: "B2:B3" } });
    excel.names.set("Pan", { type: "Range", value: "='Past lots'!$B$2", range: ["Past lots", "B2"] });
    excel.names.set("Step", { type: "Double", value: 0.1 });
    expect(await host.read("'Past lots'!B2:B3", at)).toMatchObject({ sheet: "Past lots", values: [[5], [6]] });
    expect(await host.read("Pan", at)).toMatchObject({ sheet: "Past lots", row: 1, column: 1, values: [[5]] });
    expect(await host.read("Step", at)).toMatchObject({ values: [[0.1]], formulas: [[""]] });
    expect(await host.read("'Past lots'!B2#", at)).toMatchObject({ rows: 2, values: [[5], [6]] });
  });

  test("finds the answer that spills over a cell, in an Excel that tells", async () => {
    excel.addSheet("Past lots", { B2: 5, B3: 6 }, { spills: { B2: "B2:C9" } });
    const whole = { sheet: "Past lots", row: 1, column: 1, rows: 8, columns: 2 };
    expect(await host.spillAround({ sheet: "Past lots", row: 4, column: 2 })).toEqual(whole);
    expect(await host.spillAround({ sheet: "Past lots", row: 9, column: 2 })).toBeUndefined();
    knows = 1.11;
    expect(await host.spillAround({ sheet: "Past lots", row: 4, column: 2 })).toBeUndefined();
  });

  test.each(["Nowhere!A1", "Nothing", "Lot!B9#"])("says that there is no %s", async (address) => {
    await expect(host.read(address, at)).rejects.toMatchObject({
      reason: "not here",
      message: `There is no ${address} in this workbook.`,
    });
  });

  test("gives the used cells of the sheet that is shown, and one blank cell of an empty one", async () => {
    expect(await host.usedCells()).toMatchObject({ sheet: "Lot", values: [["One lot", 12]] });
    excel.addSheet("Empty", {});
    expect(await host.usedCells("Empty")).toMatchObject({ rows: 1, columns: 1, values: [[""]] });
  });
});

describe("a new sheet", () => {
  test("gets the name that is wished for, or the like where that is taken", async () => {
    expect(await host.addSheet("Plan the charges")).toBe("Plan the charges");
    expect(await host.addSheet("Plan the charges")).toBe("Plan the charges 2");
    expect([...excel.sheets.keys()]).toEqual(["Lot", "Plan the charges", "Plan the charges 2"]);
    expect(await host.write(block, { ...at, sheet: "Plan the charges 2" })).toMatchObject({ written: { rows: 3 } });
    expect(excel.cell("Plan the charges 2", "C3")).toMatchObject({ formula: 320 });
  });

  test("is refused in plain words where the workbook does not allow one", async () => {
    excel.isReadOnly = true;
    await expect(host.addSheet("Plan")).rejects.toMatchObject({ reason: "protected" });
    expect([...excel.sheets.keys()]).toEqual(["Lot"]);
  });
});

describe("writing", () => {
  test("puts values, formulas, formats and looks in one batch, which Excel undoes in one step", async () => {
    expect(await host.write(block, at)).toEqual({ written: { ...at, rows: 3, columns: 2 } });
    expect(excel.batches.length).toBe(1);
    expect(excel.cell("Lot", "C3")).toMatchObject({ formula: 320, format: "0.0", looks: { "fill.color": "#f7efd3" } });
    expect(excel.cell("Lot", "C4")).toMatchObject({ formula: "=TEA.TARGETWEIGHT(C3,75%,60%)", format: "0.0" });
    // The one formula fills the cells below by itself; they only get its format.
    expect(excel.cell("Lot", "B5")).toMatchObject({ formula: "=TEA.CHARGESPLIT(C3,100,0.1)" });
    expect(excel.cell("Lot", "B8")).toMatchObject({ formula: "", format: "0.0" });
    expect(excel.cell("Lot", "B9")).toBeUndefined();
  });

  test("writes nothing where a cell is filled, also one that only the spill would reach, until it is told to", async () => {
    excel.addSheet("Lot", { C4: "mine", B8: { formula: '=""', value: "" } });
    expect(await host.write(block, at)).toEqual({ filled: ["C4", "B8"] });
    expect(excel.batches).toEqual([]);
    expect(excel.cell("Lot", "C4")?.formula).toBe("mine");
    await host.write(block, at, { over: true });
    expect(excel.cell("Lot", "C4")?.formula).toContain("TARGETWEIGHT");
    expect(excel.cell("Lot", "B8")?.formula).toBe("");
  });

  test("leaves cells that the block leaves out as they are", async () => {
    excel.addSheet("Lot", { B4: "a remark" });
    expect(await host.write(block, at)).toHaveProperty("written");
    expect(excel.cell("Lot", "B4")?.formula).toBe("a remark");
  });

  test("keeps a formula live in a cell that was formatted as text", async () => {
    excel.addSheet("Lot", { C4: { formula: "", format: "@" } });
    await host.write(
      { rows: 1, columns: 1, cells: [{ row: 0, column: 0, content: "=1+1" }] },
      { ...at, row: 3, column: 2 },
    );
    expect(excel.cell("Lot", "C4")).toMatchObject({ format: "General", formula: "=1+1" });
    const [batch] = excel.batches;
    expect(batch).toEqual(["formats Lot!C4:C4", "formulas Lot!C4:C4"]);
  });

  test.each(["1/2", "-5", "TRUE", "@home", "2025-04-13"])("keeps the text %s a text", async (content) => {
    await host.write({ rows: 1, columns: 1, cells: [{ row: 0, column: 0, content }] }, at);
    expect(excel.cell("Lot", "B3")).toMatchObject({ value: content });
  });

  test("says so when the block does not fit above the sheet's last row", async () => {
    await expect(host.write(block, { ...at, row: 1_048_575 })).rejects.toThrow(/does not fit/);
  });

  test("a name that begins as a formula does is written as a text", async () => {
    const plot: Block = { rows: 1, columns: 1, cells: [{ row: 0, column: 0, content: "=1+1", isConstant: true }] };
    await host.write(plot, at);
    expect(excel.cell("Lot", "B3")).toMatchObject({ formula: "=1+1", value: "=1+1" });
    expect((await host.read("B3", at)).formulas).toEqual([[""]]);
  });
});

describe("working an expression out", () => {
  const name = "TEA_working_for_a_moment";
  const number = { type: "Double", value: 336 };

  test("takes a hidden name for it, which is gone afterwards", async () => {
    excel.formulas.set("=ROUND(Lot!$B$2*1.05, 0)", number);
    let wasVisible: boolean | undefined;
    vi.spyOn(excel.sheetNames, "delete").mockImplementationOnce(function (this: typeof excel.sheetNames, key) {
      wasVisible = this.get(key)?.visible;
      return Map.prototype.delete.call(this, key);
    });
    expect(await host.evaluate("ROUND(B2*1.05, 0)", at)).toEqual([[336]]);
    expect(excel.batches).toEqual([[`add Lot!${name} =ROUND(Lot!$B$2*1.05, 0)`], [`delete Lot!${name}`]]);
    expect(wasVisible).toBe(false);
    expect(excel.sheetNames.size).toBe(0);
    expect(host.evaluatesUntouched).toBe(false);
  });

  test("gives cells, arrays, texts, truths and errors", async () => {
    excel.addSheet("Past lots", { A1: 0.75, A2: 0.6 });
    const [range, array] = [
      ["Past lots", "A1:A2"],
      [
        [1, "x"],
        [true, "#N/A"],
      ],
    ] as const;
    excel.formulas.set("=INDEX('Past lots'!$A:$A,0)", { type: "Range", value: "", range });
    excel.formulas.set("=Lot!$A$1:$B$2", { type: "Array", value: "", array });
    excel.formulas.set("=1/0", { type: "Error", value: "#DIV/0!" });
    expect(await host.evaluate("INDEX('Past lots'!A:A,0)", at)).toEqual([[0.75], [0.6]]);
    expect(await host.evaluate("A1:B2", at)).toEqual(array);
    expect(await host.evaluate("1/0", at)).toEqual([["#DIV/0!"]]);
    expect(excel.sheetNames.size).toBe(0);
  });

  test.each([
    ["SUM(B2,$C3,2:3)", "SUM(Lot!$B$2,Lot!$C$3,Lot!$2:$3)"],
    ["LET(w,B2,w*Rate)", "LET(w,Lot!$B$2,w*Rate)"],
    ['IF(B2="B2",B4#,lots[kg])', 'IF(Lot!$B$2="B2",Lot!$B$4#,lots[kg])'],
    ["@C2:C9+@A3:E3+@D7:D9", "Lot!$C$3+Lot!$B$3+@Lot!$D$7:$D$9"],
    ["SUM(B2:C9 C3:C4)", "SUM(Lot!$B$2:$C$9 Lot!$C$3:$C$4)"],
    ["ROW()+COLUMN( )+ROW(A9)", "ROW(Lot!$B$3)+COLUMN(Lot!$B$3 )+ROW(Lot!$A$9)"],
  ])("writes %s so that it means the same in a name", async (expression, alone) => {
    expect(expressionAlone(expression, at)).toBe(alone);
  });

  test("names a sheet in quotes where it needs them", () => {
    expect(expressionAlone("A1", { ...at, sheet: "Ming's lots" })).toBe("'Ming''s lots'!$A$1");
  });

  test.each(["'C:\\\\books\\\\[Other.xlsx]Lot 1'!A1", "@lots[kg]*2", "@loads", "@(A1:A9)"])(
    "leaves %s to its own cell, and says so",
    async (expression) => {
      await expect(host.evaluate(expression, at)).rejects.toThrow("only in its own cell");
      expect(excel.batches).toEqual([]);
    },
  );

  test("knows the row of a formula however ROW is written", () => {
    expect(expressionAlone("ROW(\n )", at)).toBe("ROW(Lot!$B$3\n )");
  });

  test("means by the row of a table what the formula beside it means", async () => {
    excel.addSheet("Past lots", {});
    excel.tables.set("lots", { sheet: "Past lots", address: "B2:D9", columns: ["Lot", "fresh kg", "tea [kg]"] });
    excel.formulas.set("='Past lots'!$C$5*2-'Past lots'!$D$5", number);
    const beside = { sheet: "Past lots", row: 4, column: 3 };
    expect(await host.evaluate("[@[fresh kg]]*2-lots[@[tea '[kg']]]", beside)).toEqual([[336]]);
  });

  test.each([
    ["outside of every table", "[@kg]*2", at],
    ["where the table has no such column", "lots[@jin]*2", { sheet: "Lot", row: 4, column: 1 }],
    ["in the row of headings", "lots[@kg]*2", { sheet: "Lot", row: 3, column: 1 }],
  ])("says %s that only the formula's own cell knows", async (_, expression, beside) => {
    excel.tables.set("lots", { sheet: "Lot", address: "A4:B9", columns: ["lot", "kg"] });
    await expect(host.evaluate(expression, beside)).rejects.toThrow("only in its own cell");
    expect(excel.batches).toEqual([]);
  });

  test("takes the name away also when it cannot be read", async () => {
    excel.formulas.set("=1+1", number);
    excel.refuseNames = "SomethingNew";
    await expect(host.evaluate("1+1", at)).rejects.toThrow("Excel could not do this (SomethingNew)");
    expect(excel.sheetNames.size).toBe(0);
  });

  test("takes a name away first that was left over", async () => {
    excel.formulas.set("=1+1", number);
    excel.sheetNames.set(`Lot!${name}`, { ...number, formula: "=2", visible: false });
    expect(await host.evaluate("1+1", at)).toEqual([[336]]);
    expect(excel.sheetNames.size).toBe(0);
  });

  test("says so when Excel has not finished", async () => {
    excel.formulas.set("=TEA.DRYBASIS(Lot!$B$2)", { type: "Error", value: "#BUSY!" });
    await expect(host.evaluate("TEA.DRYBASIS(B2)", at)).rejects.toMatchObject({ reason: "busy" });
    expect(excel.sheetNames.size).toBe(0);
  });

  test("says in plain words that a sheet is protected, a workbook read only, a cell being typed in", async () => {
    excel.formulas.set("=1+1", number);
    excel.addSheet("Lot", {}, { isProtected: true });
    await expect(host.evaluate("1+1", at)).rejects.toMatchObject({ reason: "protected" });
    excel.addSheet("Lot", {});
    excel.isReadOnly = true;
    await expect(host.evaluate("1+1", at)).rejects.toMatchObject({ reason: "read-only" });
    excel.isReadOnly = false;
    excel.refuse = "InvalidOperationInCellEditMode";
    await expect(host.evaluate("1+1", at)).rejects.toThrow("press Enter or Escape");
    await expect(host.evaluate("1+1", { ...at, sheet: "Gone" })).rejects.toMatchObject({ reason: "gone" });
    expect(excel.batches).toEqual([]);
  });
});

describe("what Excel refuses", () => {
  test.each([
    ["InvalidOperationInCellEditMode", "busy", /press Enter or Escape/],
    ["InvalidSelection", "gone", /select one cell/],
    ["SomethingNew", "unknown", /Excel could not do this \(SomethingNew\)/],
  ])("%s is said in plain words", async (code, reason, message) => {
    excel.refuse = code;
    await expect(host.selection()).rejects.toMatchObject({ name: "HostProblem", reason });
    excel.refuse = code;
    await expect(host.write(block, at)).rejects.toThrow(message);
  });

  test("a protected sheet and a workbook for reading only are told apart", async () => {
    excel.addSheet("Lot", {}, { isProtected: true });
    await expect(host.write(block, at)).rejects.toMatchObject({ reason: "protected" });
    excel.addSheet("Lot", {});
    excel.isReadOnly = true;
    await expect(host.write(block, at)).rejects.toMatchObject({ reason: "read-only" });
  });

  test("a sheet that was deleted meanwhile is named", async () => {
    await expect(host.write(block, { ...at, sheet: "Gone" })).rejects.toMatchObject({
      reason: "gone",
      message: expect.stringContaining("“Gone”"),
    });
  });
});

test("tells of a new selection, another sheet and changed cells, until it is told to stop", async () => {
  const listener = vi.fn();
  const stop = host.onSelection(listener);
  await vi.waitFor(() => expect(excel.handlers.get("changed")?.size).toBe(1));
  for (const handlers of excel.handlers.values()) for (const handler of handlers) await handler();
  expect(listener).toHaveBeenCalledTimes(3);
  stop();
  await vi.waitFor(() => expect([...excel.handlers.values()].map(({ size }) => size)).toEqual([0, 0, 0]));
});

test("goes to a cell of another sheet", async () => {
  excel.addSheet("Past lots", {});
  await host.goTo({ sheet: "Past lots", row: 4, column: 2 });
  expect(excel.batches).toEqual([["show Past lots", "select Past lots!C5:C5"]]);
});

test("draws a native chart at the right of a table, with its first column as names", async () => {
  const column = { sheet: "Lot", row: 1, rows: 4, columns: 1 };
  await host.addChart({
    title: "Outturn",
    names: { ...column, column: 0 },
    values: { ...column, column: 6 },
    beside: { sheet: "Lot", row: 0, column: 0, rows: 5, columns: 11 },
  });
  expect(excel.charts).toMatchObject([
    {
      type: "ColumnClustered",
      seriesBy: "Columns",
      over: "Lot!G2:G5",
      names: "Lot!A2:A5",
      title: { text: "Outturn" },
      legend: { visible: false },
      position: "Lot!M1:M1",
    },
  ]);
});

test("speaks Excel's language", () => {
  expect(host.language).toBe("zh-CN");
});

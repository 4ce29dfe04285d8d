/// <reference types="office-js" />
import { holdsFormula, isFormula, placesOf } from "../../host/block-cells";
import { HostProblem } from "../../host/host-problem";
import { looks } from "../../host/looks";
import { freeSheetName } from "../../host/sheet-name";
import type {
  Block,
  BookFormulas,
  BookName,
  CellArea,
  CellContent,
  CellPlace,
  Chart,
  FormulaChange,
  FormulaLeft,
  ReadArea,
  WorkbookHost,
  WriteOutcome,
  WrittenCell,
} from "../../host/workbook-host";
import { addressOf } from "../../workbook/addresses";
import { areaWithin, partsOf } from "../../workbook/references";
import { sheetColumns, sheetRows } from "../../workbook/sheet-size";
import { pixelsOfCharacters } from "../../workbook/sizes";
import type { Area, Style } from "../../workbook/workbook";
import { inExcel, knowsSpills } from "./excel-problems";

/** Excel as the pane sees it. Each request is one `Excel.run`, and loads no more than it answers with. */
export class ExcelWorkbookHost implements WorkbookHost {
  readonly changesFormulas = true;
  readonly drawsCharts = true;
  readonly evaluatesUntouched = false;
  readonly language = Office.context.displayLanguage;

  selection(): Promise<ReadArea> {
    return inExcel((context) => readRange(context, context.workbook.getSelectedRange()));
  }

  onSelection(listener: () => void): () => void {
    let isStopped = false;
    const hear = async () => {
      if (!isStopped) listener();
    };
    // While a cell is typed in Excel refuses everything; this can wait until that is done.
    const listening = Excel.run({ delayForCellEdit: true }, async (context) => {
      const { workbook } = context;
      const added = [
        workbook.onSelectionChanged.add(hear),
        workbook.worksheets.onActivated.add(hear),
        workbook.worksheets.onChanged.add(hear),
      ];
      await context.sync();
      return { context, added };
    });
    // An Excel that does not tell of changes is still asked for the selection whenever it is needed.
    listening.catch(() => undefined);
    return () => {
      isStopped = true;
      listening
        .then(({ context, added }) =>
          Excel.run(context, async () => {
            for (const handler of added) handler.remove();
            await context.sync();
          }),
        )
        .catch(() => undefined);
    };
  }

  read(address: string, beside: CellPlace): Promise<ReadArea> {
    const missing = new HostProblem("not here", { kind: "no such place", address });
    return inExcel(async (context) => {
      const { sheet: named, cells } = partsOf(address);
      const sheet = context.workbook.worksheets.getItemOrNullObject(named ?? beside.sheet);
      sheet.load("name");
      await context.sync();
      if (sheet.isNullObject) throw missing;
      if (areaWithin(cells, { rows: 1, columns: 1 })) return readRange(context, sheet.getRange(cells));
      if (cells.endsWith("#")) {
        const spilled = sheet.getRange(cells.slice(0, -1)).getSpillingToRangeOrNullObject();
        spilled.load("address");
        await context.sync();
        if (spilled.isNullObject) throw missing;
        return readRange(context, spilled);
      }
      return readNamed(context, sheet, cells, beside).then((found) => found ?? Promise.reject(missing));
    });
  }

  usedCells(sheet?: string): Promise<ReadArea> {
    return inExcel(async (context) => {
      const { worksheets } = context.workbook;
      const shown = sheet === undefined ? worksheets.getActiveWorksheet() : worksheets.getItemOrNullObject(sheet);
      shown.load("name");
      await context.sync();
      if (shown.isNullObject) throw new HostProblem("not here", { kind: "no such sheet", sheet: sheet ?? "" });
      const used = shown.getUsedRangeOrNullObject(true);
      used.load("rowIndex,columnIndex,rowCount,columnCount,values,formulas,numberFormat");
      await context.sync();
      if (used.isNullObject) return blank(shown.name);
      return answerOf(used, shown.name);
    });
  }

  // What reads formulas is fetched when a working first asks for it: it is not small, and the jobs do without.
  async evaluate(expression: string, beside: CellPlace): Promise<CellContent[][]> {
    const { evaluateInExcel } = await import("./excel-formulas");
    return evaluateInExcel(expression, beside);
  }

  /** Excel does not tell why a custom function gave an error. */
  async errorMessage(): Promise<undefined> {
    return undefined;
  }

  async write(block: Block, at: CellPlace, { over = false } = {}): Promise<WriteOutcome> {
    if (at.row + block.rows > sheetRows || at.column + block.columns > sheetColumns) {
      throw new HostProblem("not here", "block does not fit");
    }
    let isProtected: boolean | undefined;
    return inExcel(
      async (context) => {
        const sheet = context.workbook.worksheets.getItemOrNullObject(at.sheet);
        sheet.load("name,protection/protected");
        await context.sync();
        if (sheet.isNullObject) throw new HostProblem("gone", { kind: "sheet gone", sheet: at.sheet });
        isProtected = sheet.protection.protected;
        const places = placesOf(block, at);
        const area = around(places, at);
        const present = sheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns);
        present.load("values,formulas,numberFormat");
        const columns = (block.widths ?? []).map((characters, index) => {
          const { format } = sheet.getRangeByIndexes(at.row, at.column + index, 1, 1);
          format.load("columnWidth");
          return { format, width: pointsOfCharacters(characters + 1) };
        });
        await context.sync();
        const inArea = <Content>(grid: Content[][], { row, column }: { row: number; column: number }) =>
          grid[row - area.row]?.[column - area.column];
        // A formula whose answer is an empty text fills its cell as well.
        const filled = places.filter((place) => (inArea(present.formulas, place) ?? "") !== "");
        if (filled.length > 0 && !over) return { filled: filled.map(({ row, column }) => addressOf(row, column)) };

        // From here on one batch: Excel undoes what it was given at once in one step.
        for (const { format, width } of columns) if (format.columnWidth < width) format.columnWidth = width;
        for (const { row, column } of filled) sheet.getCell(row, column).clear(Excel.ClearApplyTo.contents);
        // In a cell that is formatted as text a formula would stay text.
        for (const place of places.filter((place) => inArea(present.numberFormat, place) === "@")) {
          sheet.getCell(place.row, place.column).numberFormat = [["General"]];
        }
        for (const cell of block.cells) writeCell(sheet, cell, at.row + cell.row, at.column + cell.column);
        await context.sync();
        return { written: { ...at, rows: block.rows, columns: block.columns } };
      },
      () => isProtected,
    );
  }

  addSheet(wish: string): Promise<string> {
    return inExcel(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load("items/name");
      await context.sync();
      const taken = worksheets.items.map(({ name }) => name);
      const name = freeSheetName(wish, taken);
      worksheets.add(name);
      await context.sync();
      return name;
    });
  }

  spillAround({ sheet, row, column }: CellPlace): Promise<CellArea | undefined> {
    return inExcel(async (context) => {
      // An older Excel does not tell.
      if (!knowsSpills()) return undefined;
      const cell = context.workbook.worksheets.getItem(sheet).getCell(row, column);
      const first = cell.getSpillParentOrNullObject();
      first.load("rowIndex,columnIndex");
      await context.sync();
      if (first.isNullObject) return undefined;
      const whole = first.getSpillingToRangeOrNullObject();
      whole.load("rowIndex,columnIndex,rowCount,columnCount");
      await context.sync();
      if (whole.isNullObject) return undefined;
      const { rowIndex, columnIndex, rowCount, columnCount } = whole;
      return { sheet, row: rowIndex, column: columnIndex, rows: rowCount, columns: columnCount };
    });
  }

  goTo({ sheet, row, column }: CellPlace): Promise<void> {
    return inExcel(async (context) => {
      const there = context.workbook.worksheets.getItemOrNullObject(sheet);
      there.load("name");
      await context.sync();
      if (there.isNullObject) throw new HostProblem("gone", { kind: "sheet gone", sheet });
      there.activate();
      there.getCell(row, column).select();
      await context.sync();
    });
  }

  addChart({ title, names, values, beside }: Chart): Promise<void> {
    return inExcel(async (context) => {
      const { worksheets } = context.workbook;
      const rangeOf = ({ sheet, row, column, rows, columns }: CellArea) =>
        worksheets.getItem(sheet).getRangeByIndexes(row, column, rows, columns);
      const sheet = worksheets.getItem(beside.sheet);
      const chart = sheet.charts.add(Excel.ChartType.columnClustered, rangeOf(values), Excel.ChartSeriesBy.columns);
      chart.series.getItemAt(0).setXAxisValues(rangeOf(names));
      chart.legend.visible = false;
      chart.title.text = title;
      // With a column between.
      chart.setPosition(sheet.getCell(beside.row, beside.column + beside.columns + 1));
      await context.sync();
    });
  }

  // What goes through a whole workbook is fetched when someone wants that.
  async formulasWith(text: string): Promise<BookFormulas> {
    return (await import("./whole-book")).formulasWith(text);
  }

  async changeFormulas(sheet: string, changes: readonly FormulaChange[]): Promise<readonly FormulaLeft[]> {
    return (await import("./whole-book")).changeFormulas(sheet, changes);
  }

  async putNames(names: readonly BookName[]): Promise<void> {
    return (await import("./whole-book")).putNames(names);
  }

  async takeNames(names: readonly string[]): Promise<void> {
    return (await import("./whole-book")).takeNames(names);
  }
}

/** Excel counts the widths of columns in points; a pixel is three quarters of one. */
const pointsOfCharacters = (characters: number): number => pixelsOfCharacters(characters) * 0.75;

/** Whole rows and columns are read as far as their sheet is used. */
async function readRange(context: Excel.RequestContext, range: Excel.Range): Promise<ReadArea> {
  const used = range.worksheet.getUsedRangeOrNullObject(true);
  range.load("rowIndex,columnIndex,rowCount,columnCount,worksheet/name");
  used.load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  const end = used.isNullObject
    ? { row: 1, column: 1 }
    : { row: used.rowIndex + used.rowCount, column: used.columnIndex + used.columnCount };
  const { rowIndex: row, columnIndex: column, rowCount, columnCount, worksheet } = range;
  const rows = rowCount === sheetRows ? end.row : rowCount;
  const columns = columnCount === sheetColumns ? end.column : columnCount;
  const isWhole = rows === rowCount && columns === columnCount;
  const read = isWhole ? range : worksheet.getRangeByIndexes(row, column, rows, columns);
  read.load("rowIndex,columnIndex,rowCount,columnCount,values,formulas,numberFormat");
  await context.sync();
  return answerOf(read, worksheet.name);
}

/** What a defined name stands for, first one of the sheet, then one of the workbook; or a part of a table. */
async function readNamed(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  name: string,
  beside: CellPlace,
): Promise<ReadArea | undefined> {
  const items = name.includes("[")
    ? []
    : [sheet.names.getItemOrNullObject(name), context.workbook.names.getItemOrNullObject(name)];
  for (const item of items) item.load("type,value");
  await context.sync();
  const item = items.find(({ isNullObject }) => !isNullObject);
  if (item === undefined) {
    const { tableCells } = await import("./excel-formulas");
    const cells = await tableCells(context, name, beside);
    return cells && readRange(context, cells);
  }
  if (item.type === Excel.NamedItemType.range) return readRange(context, item.getRange());
  // A name can also stand for a number or a text, which is in no cell.
  return { ...beside, ...{ rows: 1, columns: 1, values: [[item.value]], formulas: [[""]], formats: [["General"]] } };
}

type LoadedRange = Pick<
  Excel.Range,
  "rowIndex" | "columnIndex" | "rowCount" | "columnCount" | "values" | "formulas" | "numberFormat"
>;

async function answerOf(range: LoadedRange, sheet: string): Promise<ReadArea> {
  const values: CellContent[][] = range.values;
  // Names as in a file are rare in cells, and what reads formulas is not small: it is fetched where there are some.
  const asInCell = range.formulas.flat().some((formula) => isFormula(formula) && formula.includes("_x"))
    ? (await import("./excel-formulas")).fromFileFormula
    : (formula: string) => formula;
  return {
    sheet,
    row: range.rowIndex,
    column: range.columnIndex,
    rows: range.rowCount,
    columns: range.columnCount,
    values,
    // Excel gives a constant as its own formula, also a text that looks like one.
    formulas: range.formulas.map((row, down) =>
      row.map((formula, right) => (isFormula(formula) && formula !== values[down]?.[right] ? asInCell(formula) : "")),
    ),
    formats: range.numberFormat,
  };
}

const blank = (sheet: string): ReadArea => ({
  ...{ sheet, row: 0, column: 0, rows: 1, columns: 1 },
  ...{ values: [[""]], formulas: [[""]], formats: [["General"]] },
});

function writeCell(sheet: Excel.Worksheet, cell: WrittenCell, row: number, column: number): void {
  const { content, format, look, spill = { rows: 1, columns: 1 } } = cell;
  const range = sheet.getCell(row, column);
  const whole = sheet.getRangeByIndexes(row, column, spill.rows, spill.columns);
  if (format !== undefined) {
    whole.numberFormat = Array.from({ length: spill.rows }, () => Array(spill.columns).fill(format));
  }
  if (content !== "") range.formulas = [[holdsFormula(cell) ? content : typed(content)]];
  if (look !== undefined) applyStyle(whole.format, looks[look]);
}

/** A text that Excel would take for a number, a date or a formula is marked as a text, as one does by hand. */
function typed(content: CellContent): CellContent {
  if (typeof content !== "string") return content;
  return /^[-=+@'#]|\d|^(true|false)$/i.test(content) ? `'${content}` : content;
}

function applyStyle(format: Excel.RangeFormat, style: Style): void {
  if (style.bold !== undefined) format.font.bold = style.bold;
  if (style.italic !== undefined) format.font.italic = style.italic;
  if (style.size !== undefined) format.font.size = style.size;
  if (style.color !== undefined) format.font.color = style.color;
  if (style.fill !== undefined) format.fill.color = style.fill;
  for (const edge of edges[style.border ?? "none"]) format.borders.getItem(edge).style = "Continuous";
}

const edges = {
  thin: ["EdgeTop", "EdgeRight", "EdgeBottom", "EdgeLeft"],
  bottom: ["EdgeBottom"],
  none: [],
} as const;

/** The smallest area that holds these places. */
function around(places: readonly { row: number; column: number }[], at: CellArea | CellPlace): Area {
  const rows = places.map(({ row }) => row);
  const columns = places.map(({ column }) => column);
  const [row, column] = [Math.min(at.row, ...rows), Math.min(at.column, ...columns)];
  return {
    row,
    column,
    rows: Math.max(at.row, ...rows) - row + 1,
    columns: Math.max(at.column, ...columns) - column + 1,
  };
}

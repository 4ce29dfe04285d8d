/// <reference types="office-js" />
import { isFormula } from "../../host/block-cells";
import { HostProblem } from "../../host/host-problem";
import type {
  BookFormulas,
  BookName,
  CellFormula,
  FormulaChange,
  FormulaLeft,
  SheetFormulas,
} from "../../host/workbook-host";
import { fromFileFormula } from "../../workbook/formula-names";
import type { Area } from "../../workbook/workbook";
import { inExcel, knowsSpills, problemFrom } from "./excel-problems";

/** Excel on the web hands over some megabytes at once, and a formula may be long. */
const cellsAtOnce = 20_000;
function refuseOlder(): void {
  // The names alone would take 1.7; who has LAMBDA has both.
  if (!knowsSpills()) {
    throw new HostProblem("not here", "not in this Excel");
  }
}

export function formulasWith(text: string): Promise<BookFormulas> {
  const sought = text.toUpperCase();
  const holds = (formula: unknown): formula is string =>
    isFormula(formula as string) && (formula as string).toUpperCase().includes(sought);
  return inExcel(async (context) => {
    refuseOlder();
    const { worksheets, names } = context.workbook;
    worksheets.load("items/name,items/protection/protected");
    names.load("items/name,items/formula,items/comment");
    await context.sync();
    const used = worksheets.items.map((sheet) => {
      const range = sheet.getUsedRangeOrNullObject(true);
      range.load("rowIndex,columnIndex,rowCount,columnCount");
      sheet.names.load("items/name,items/formula,items/comment");
      return range;
    });
    await context.sync();
    const named = (items: readonly Excel.NamedItem[], sheet?: string): BookName[] =>
      items
        .filter(({ name, formula }) => name.toUpperCase().includes(sought) || holds(formula))
        .map(({ name, formula, comment }) => ({
          ...{ name, comment, formula: asShown(String(formula)) },
          ...(sheet !== undefined && { sheet }),
        }));
    const sheets: SheetFormulas[] = [];
    for (const [index, sheet] of worksheets.items.entries()) {
      const range = used[index];
      const cells: CellFormula[] = [];
      if (range && !range.isNullObject) {
        const { rowIndex: row, columnIndex: column, rowCount: rows, columnCount: columns } = range;
        cells.push(...(await formulasIn(context, sheet, { row, column, rows, columns }, holds)));
      }
      sheets.push({ sheet: sheet.name, isProtected: sheet.protection.protected, cells });
    }
    return {
      sheets,
      names: [...named(names.items), ...worksheets.items.flatMap((sheet) => named(sheet.names.items, sheet.name))],
    };
  });
}

async function formulasIn(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  area: Area,
  holds: (formula: unknown) => formula is string,
): Promise<CellFormula[]> {
  const found: CellFormula[] = [];
  const rowsAtOnce = Math.max(1, Math.floor(cellsAtOnce / area.columns));
  let above: readonly unknown[] = [];
  for (let row = area.row; row < area.row + area.rows; row += rowsAtOnce) {
    const rows = Math.min(rowsAtOnce, area.row + area.rows - row);
    const part = sheet.getRangeByIndexes(row, area.column, rows, area.columns);
    part.load("formulas");
    await context.sync();
    const formulas: readonly (readonly unknown[])[] = part.formulas;
    const places = formulas.flatMap((line, down) =>
      line.flatMap((formula, right) => (holds(formula) ? [{ down, right, formula }] : [])),
    );
    if (places.length > 0) {
      part.load("values");
      // A cell into which a spill runs may show its formula as well: then the one before it shows the same.
      const asked = places.map(({ down, right, formula }) => {
        const before = [formulas[down]?.[right - 1], down === 0 ? above[right] : formulas[down - 1]?.[right]];
        if (!before.includes(formula)) return undefined;
        const first = sheet.getCell(row + down, area.column + right).getSpillParentOrNullObject();
        first.load("rowIndex,columnIndex");
        return first;
      });
      await context.sync();
      places.forEach(({ down, right, formula }, index) => {
        const at = { row: row + down, column: area.column + right };
        const first = asked[index];
        const isSpilled =
          first && !first.isNullObject && (first.rowIndex !== at.row || first.columnIndex !== at.column);
        const value = part.values[down]?.[right];
        // A text that only looks like a formula is its own value.
        if (!isSpilled && value !== formula) found.push({ ...at, formula: asShown(formula), value });
      });
    }
    above = formulas.at(-1) ?? [];
  }
  return found;
}

/** Excel gives names as in a file where the add-in has not come up. */
const asShown = (formula: string): string => (formula.includes("_x") ? fromFileFormula(formula) : formula);

export function changeFormulas(sheetName: string, changes: readonly FormulaChange[]): Promise<readonly FormulaLeft[]> {
  let isProtected: boolean | undefined;
  return inExcel(
    async (context) => {
      refuseOlder();
      const sheet = context.workbook.worksheets.getItemOrNullObject(sheetName);
      sheet.load("name,protection/protected");
      await context.sync();
      if (sheet.isNullObject) throw new HostProblem("gone", { kind: "sheet gone", sheet: sheetName });
      isProtected = sheet.protection.protected;
      if (isProtected) throw new HostProblem("protected", "sheet protected");
      const left: FormulaLeft[] = [];
      for (let start = 0; start < changes.length; start += cellsAtOnce) {
        left.push(...(await changeSome(context, sheet, changes.slice(start, start + cellsAtOnce))));
      }
      return left;
    },
    () => isProtected,
  );
}

/** Reads what stands there now, and writes where that is what was expected. */
async function changeSome(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  changes: readonly FormulaChange[],
): Promise<FormulaLeft[]> {
  const runs = runsOf(changes).map((run) => {
    const range = rangeOf(sheet, run);
    range.load("formulas,numberFormat");
    return { run, range };
  });
  await context.sync();
  const left: FormulaLeft[] = [];
  const due: DueChange[] = [];
  for (const { run, range } of runs) {
    run.forEach((change, down) => {
      const now = asShown(String(range.formulas[down]?.[0] ?? ""));
      const format = String(range.numberFormat[down]?.[0] ?? "General");
      if (now === change.was) due.push({ ...change, format });
      else if (now !== change.formula) left.push(leftBy(change, new HostProblem("unknown", "another formula by now")));
    });
  }
  return [...left, ...(await write(context, sheet, due))];
}

interface DueChange extends FormulaChange {
  readonly format: string;
}

/**
 * All at once; where Excel refuses that, by halves, until the cells are known that it refuses. What a refused request
 * has written before it was refused is written again.
 */
async function write(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  due: readonly DueChange[],
): Promise<FormulaLeft[]> {
  const [first] = due;
  if (first === undefined) return [];
  try {
    const written = runsOf(due).map((run) => {
      const range = rangeOf(sheet, run);
      // In a cell that is formatted as text a formula would stay text, and others may take a format from what they read.
      if (run.some(({ format }) => format === "@")) {
        range.numberFormat = run.map(({ format }) => [format === "@" ? "General" : format]);
      }
      range.formulas = run.map(({ formula }) => [formula]);
      range.numberFormat = run.map(({ format }) => [format]);
      range.load("formulas");
      return { run, range };
    });
    await context.sync();
    return written.flatMap(({ run, range }) =>
      run
        .filter(({ was }, down) => asShown(String(range.formulas[down]?.[0] ?? "")) === was)
        .map((change) => leftBy(change, new HostProblem("unknown", "formula not taken"))),
    );
  } catch (thrown) {
    const problem = problemFrom(thrown);
    if (problem.reason === "busy") throw problem;
    if (due.length === 1) return [leftBy(first, problem)];
    const half = Math.ceil(due.length / 2);
    const left = await write(context, sheet, due.slice(0, half));
    return [...left, ...(await write(context, sheet, due.slice(half)))];
  }
}

const leftBy = ({ row, column }: FormulaChange, { trouble }: HostProblem): FormulaLeft => ({ row, column, trouble });

/** The cells that stand one below the other. */
function runsOf<Change extends FormulaChange>(changes: readonly Change[]): Change[][] {
  const sorted = [...changes].sort((one, other) => one.column - other.column || one.row - other.row);
  const runs: Change[][] = [];
  for (const change of sorted) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (run && last && last.column === change.column && last.row + 1 === change.row) run.push(change);
    else runs.push([change]);
  }
  return runs;
}

const rangeOf = (sheet: Excel.Worksheet, run: readonly FormulaChange[]): Excel.Range =>
  sheet.getRangeByIndexes(run[0]?.row ?? 0, run[0]?.column ?? 0, run.length, 1);

export function putNames(names: readonly BookName[]): Promise<void> {
  return inExcel(async (context) => {
    refuseOlder();
    const at = names.map(({ name, sheet }) => {
      const place = sheet === undefined ? context.workbook.names : context.workbook.worksheets.getItem(sheet).names;
      const item = place.getItemOrNullObject(name);
      item.load("formula");
      return { place, item };
    });
    await context.sync();
    const before = at.map(({ item }) => (item.isNullObject ? undefined : item.formula));
    try {
      names.forEach(({ name, formula, comment }, index) => {
        const { place, item } = at[index] as (typeof at)[number];
        if (before[index] === undefined) place.add(name, formula, comment);
        else item.formula = formula;
      });
      await context.sync();
    } catch (thrown) {
      await putBack(context, names, at, before);
      throw thrown;
    }
  });
}

/** Some may have been put in before Excel refused one. */
async function putBack(
  context: Excel.RequestContext,
  names: readonly BookName[],
  at: readonly { readonly place: Excel.NamedItemCollection }[],
  before: readonly unknown[],
): Promise<void> {
  const now = names.map(({ name }, index) => {
    const item = (at[index] as (typeof at)[number]).place.getItemOrNullObject(name);
    item.load("formula");
    return item;
  });
  await context.sync();
  now.forEach((item, index) => {
    if (item.isNullObject) return;
    if (before[index] === undefined) item.delete();
    else if (item.formula !== before[index]) item.formula = before[index];
  });
  await context.sync();
}

export function takeNames(names: readonly string[]): Promise<void> {
  return inExcel(async (context) => {
    refuseOlder();
    const items = names.map((name) => {
      const item = context.workbook.names.getItemOrNullObject(name);
      item.load("name");
      return item;
    });
    await context.sync();
    for (const item of items) if (!item.isNullObject) item.delete();
    await context.sync();
  });
}

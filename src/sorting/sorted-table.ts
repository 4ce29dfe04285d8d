/** Sorts the rows of a worksheet table by a column: which row comes where, and how formulas are written then. */

import type { Area, Cell, Sheet, Table, Workbook } from "../workbook/workbook";
import { BookOfCells, type Spot } from "./formula-reads";
import { type Direction, rowOrder } from "./row-order";
import {
  type FormulaRefusal,
  isMoving,
  type Moving,
  readsAnyRow,
  readsSomeRows,
  SortedFormulas,
} from "./sorted-formulas";

export interface Sorting {
  /** The name of the sheet. */
  readonly sheet: string;
  readonly table: Table;
  readonly column: number;
  readonly direction: Direction;
  /** Whether what is typed right beside the table goes along with its rows. */
  readonly withBeside: boolean;
  /** In whose order texts are put. */
  readonly language: string;
}

export type SortingRefusal =
  | FormulaRefusal
  | { readonly is: "spills"; readonly at: Spot }
  | { readonly is: "merged"; readonly at: Spot }
  | { readonly is: "hidden"; readonly row: number };

export type SortedTable =
  | { readonly is: "refused"; readonly refusal: SortingRefusal }
  | { readonly is: "in order" }
  | {
      readonly is: "sorted";
      readonly moving: Moving;
      /** By each row, the row whose cells come to stand there. */
      readonly order: ReadonlyMap<number, number>;
      /** The formulas of the moving cells as they are now, and where and how they are written then. */
      readonly formulas: readonly { readonly from: Cell; readonly row: number; readonly formula: string }[];
    };

export function sortedTable(workbook: Workbook, sorting: Sorting): SortedTable {
  const ground = groundOf(workbook, sorting);
  if (!ground) return { is: "in order" };
  const { sheet, moving, book, cells } = ground;
  const formulas = new SortedFormulas(book, moving, originsIn(workbook));
  const refusal = refusalOf(sheet, sorting.table, moving, cells, formulas);
  if (refusal) return { is: "refused", refusal };

  const order = orderOf(ground, sorting);
  const places = new Map([...order].map(([to, from]) => [from, to]));
  if ([...order].every(([to, from]) => to === from)) return { is: "in order" };
  return {
    is: "sorted",
    moving,
    order,
    formulas: cells.flatMap((from) => {
      const row = places.get(from.row) ?? from.row;
      if (from.formula === undefined) return [];
      return [{ from, row, formula: formulas.moved(from.formula, { ...from, sheet: sheet.name }, row) }];
    }),
  };
}

/**
 * What looks at some of the rows from elsewhere, and will look at those that come to stand there: cells as spots, names
 * and charts by their names.
 */
export function lookersByPlace(workbook: Workbook, sorting: Sorting): (Spot | string)[] {
  const ground = groundOf(workbook, sorting);
  if (!ground) return [];
  const { moving, book } = ground;
  const looks = (formula: string, home: Spot) =>
    book.rowsByNumber(formula, home).some((read) => readsAnyRow(read, moving)) ||
    book
      .readsOf(formula, home)
      .some(
        (read) =>
          readsSomeRows(read, moving) &&
          !(home.sheet === read.sheet && read.top === home.row && read.bottom === home.row),
      );
  const top = { row: -1, column: -1 };
  return [
    ...workbook.sheets.flatMap(({ name: sheet, cells }) =>
      cells.flatMap(({ row, column, formula }) => {
        const spot = { sheet, row, column };
        return formula !== undefined && !isMoving(spot, moving) && looks(formula, spot) ? [spot] : [];
      }),
    ),
    ...(workbook.names ?? []).flatMap(({ name, formula, sheet = sorting.sheet }) =>
      looks(formula, { sheet, ...top }) ? [name] : [],
    ),
    ...workbook.sheets.flatMap(({ name: sheet, charts = [] }) =>
      charts.flatMap(({ title, series }) =>
        series.some(({ across, up }) => looks(`=${across}`, { sheet, ...top }) || looks(`=${up}`, { sheet, ...top }))
          ? [title]
          : [],
      ),
    ),
  ];
}

/** The cells that would change their rows: from the first row below the headings to the last that holds anything. */
export const movingCells = (workbook: Workbook, sorting: Sorting): Moving | undefined =>
  groundOf(workbook, sorting)?.moving;

/** The columns beside the table as far as something is typed in its rows, with no empty column between; if any. */
export function typedBeside(
  workbook: Workbook,
  { sheet: name, table }: Pick<Sorting, "sheet" | "table">,
): Area | undefined {
  const sheet = workbook.sheets.find((each) => each.name === name);
  if (!sheet) return undefined;
  const { row, column, rows, columns } = table.area;
  const held = new Map<number, "typed" | "worked out">();
  const isSpilled = originsIn(workbook);
  for (const cell of sheet.cells) {
    if (cell.row <= row || cell.row >= row + rows || cell.value === undefined) continue;
    const isTyped = cell.formula === undefined && !isSpilled.has(keyOf({ sheet: name, ...cell }));
    if (isTyped || !held.has(cell.column)) held.set(cell.column, isTyped ? "typed" : "worked out");
  }
  for (const other of sheet.tables ?? []) {
    if (other.name === table.name) continue;
    for (let right = 0; right < other.area.columns; right += 1) held.delete(other.area.column + right);
  }
  const reach = (from: number, step: 1 | -1): number => {
    let farthest = from;
    for (let at = from + step; held.has(at); at += step) if (held.get(at) === "typed") farthest = at;
    return farthest;
  };
  const last = column + columns - 1;
  const [left, right] = [reach(column, -1), reach(last, 1)];
  return left === column && right === last ? undefined : { row, column: left, rows, columns: right - left + 1 };
}

interface Ground {
  readonly sheet: Sheet;
  readonly book: BookOfCells;
  /** From the first row of the table to the last that holds anything. */
  readonly moving: Moving;
  readonly cells: readonly Cell[];
}

/** undefined when there is nothing to sort. */
function groundOf(workbook: Workbook, sorting: Sorting): Ground | undefined {
  const sheet = workbook.sheets.find(({ name }) => name === sorting.sheet);
  const area = (sorting.withBeside && typedBeside(workbook, sorting)) || sorting.table.area;
  if (!sheet) return undefined;
  const body: Moving = {
    sheet: sheet.name,
    ...{ top: area.row + 1, bottom: area.row + area.rows - 1 },
    ...{ left: area.column, right: area.column + area.columns - 1 },
  };
  const filled = sheet.cells.filter((cell) => isFilled(cell) && isMoving({ ...cell, sheet: sheet.name }, body));
  if (filled.length === 0) return undefined;
  const moving = { ...body, bottom: Math.max(...filled.map(({ row }) => row)) };
  const cells = sheet.cells.filter((cell) => isMoving({ ...cell, sheet: sheet.name }, moving));
  return { sheet, moving, cells, book: new BookOfCells(workbook) };
}

/** A formula that still waits shows nothing. */
const isFilled = ({ value }: Cell): boolean => value !== undefined && value !== "";

/** Rows that hold nothing at all stand below those that lack only what is sorted by. */
function orderOf({ moving, cells }: Ground, { column, direction, language }: Sorting): Map<number, number> {
  const filled = new Set(cells.filter(isFilled).map(({ row }) => row));
  const keys = new Map(cells.filter((cell) => cell.column === column).map(({ row, value }) => [row, value]));
  const rows = Array.from({ length: moving.bottom - moving.top + 1 }, (_, place) => moving.top + place);
  const withAny = rows.filter((row) => filled.has(row));
  const sorted = rowOrder(
    withAny.map((row) => keys.get(row)),
    direction,
    language,
  ).map((place) => withAny[place] as number);
  const all = [...sorted, ...rows.filter((row) => !filled.has(row))];
  return new Map(all.map((from, place) => [moving.top + place, from]));
}

function refusalOf(
  { name, cells: all, merges, hiddenRows = [] }: Sheet,
  { area }: Table,
  moving: Moving,
  cells: readonly Cell[],
  formulas: SortedFormulas,
): SortingRefusal | undefined {
  const hidden = hiddenRows.find((row) => row >= moving.top && row <= moving.bottom);
  if (hidden !== undefined) return { is: "hidden", row: hidden };
  const merged = merges.find((each) => overlap(each, moving));
  if (merged) return { is: "merged", at: { sheet: name, row: merged.row, column: merged.column } };
  // What spills from above beside the table may stay: it answers for the rows as they come to stand.
  const own = { ...moving, left: area.column, right: area.column + area.columns - 1 };
  const spilling = all.find(
    ({ row, column, spill }) =>
      spill &&
      spill.rows * spill.columns > 1 &&
      (isMoving({ sheet: name, row, column }, moving) || overlap({ row, column, ...spill }, own)),
  );
  if (spilling) return { is: "spills", at: { sheet: name, row: spilling.row, column: spilling.column } };
  for (const { row, column, formula } of cells) {
    const refusal = formula === undefined ? undefined : formulas.refusal(formula, { sheet: name, row, column });
    if (refusal) return refusal;
  }
  return undefined;
}

const overlap = ({ row, column, rows, columns }: Area, { top, bottom, left, right }: Moving): boolean =>
  row <= bottom && row + rows > top && column <= right && column + columns > left;

/** By each cell that holds a spilled value, the cell whose formula spills it. */
function originsIn({ sheets }: Workbook): ReadonlyMap<string, Cell> {
  const origins = new Map<string, Cell>();
  for (const { name: sheet, cells } of sheets) {
    for (const cell of cells) {
      const { rows = 1, columns = 1 } = cell.spill ?? {};
      for (let down = 0; down < rows; down += 1) {
        for (let right = 0; right < columns; right += 1) {
          if (down + right > 0) origins.set(keyOf({ sheet, row: cell.row + down, column: cell.column + right }), cell);
        }
      }
    }
  }
  return origins;
}

const keyOf = ({ sheet, row, column }: Spot): string => `${sheet}!${row},${column}`;

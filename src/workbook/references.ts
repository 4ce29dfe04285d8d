/** References to cells as formulas write them: `B4`, `$A$1:C9`, `Lot!A1`, `'Two words'!A:B`, `3:5`, `B4#`. */
import { addressOf, placeOf } from "./addresses";
import type { Area, Sheet, Workbook } from "./workbook";

interface Reference {
  /** The sheet that the reference names; undefined when it names none. */
  readonly sheet: string | undefined;
  /** The rest as it was written, such as `$A$1:C9`, or a defined name. */
  readonly cells: string;
}

/** Parts a reference into the sheet that it names and the cells. */
export function partsOf(reference: string): Reference {
  const text = reference.trim();
  const [, quoted, plain, cells] = /^(?:'((?:[^']|'')+)'!|([^'!]+)!)?(.+)$/s.exec(text) ?? [];
  return { sheet: quoted?.replaceAll("''", "'") ?? plain, cells: cells ?? text };
}

/**
 * The area that `A1`, `A1:C9`, `A:C` or `2:5` covers; undefined for anything else, such as a name. Whole columns and
 * rows reach as far as the sheet is used.
 */
export function areaWithin(cells: string, used: { readonly rows: number; readonly columns: number }): Area | undefined {
  const [first = "", last = first, ...more] = cells.replaceAll("$", "").split(":");
  if (more.length > 0) return undefined;
  const cell = /^[A-Z]{1,3}[1-9]\d{0,6}$/i;
  if (cell.test(first) && cell.test(last)) return between(placeOf(first), placeOf(last));
  const isRange = cells.includes(":");
  const [column, row] = [/^[A-Z]{1,3}$/i, /^[1-9]\d{0,6}$/];
  if (isRange && column.test(first) && column.test(last)) {
    return between(placeOf(`${first}1`), { ...placeOf(`${last}1`), row: Math.max(0, used.rows - 1) });
  }
  if (isRange && row.test(first) && row.test(last)) {
    return between(placeOf(`A${first}`), { ...placeOf(`A${last}`), column: Math.max(0, used.columns - 1) });
  }
  return undefined;
}

/**
 * Where a place of a workbook is that something leads to: an address, with a sheet or without, or a name. Undefined where
 * there is none.
 */
export function placeNamed(
  place: string,
  from: string,
  { names = [], sheets }: Workbook,
): (Area & { readonly sheet: string }) | undefined {
  const isSame = (one: string, other: string) => one.toUpperCase() === other.toUpperCase();
  const named = names.find(({ name }) => isSame(name, place));
  const { sheet = from, cells } = partsOf(named ? named.formula.slice(1) : place);
  const known = sheets.find(({ name }) => isSame(name, sheet));
  const area = known && areaWithin(cells, usedIn(known));
  return area && { ...area, sheet: known.name };
}

const usedIn = ({ cells }: Sheet): { rows: number; columns: number } => ({
  rows: cells.reduce((rows, { row }) => Math.max(rows, row + 1), 0),
  columns: cells.reduce((columns, { column }) => Math.max(columns, column + 1), 0),
});

/** A sheet's name as a formula writes it, in quotes where it needs them. */
export const sheetInFormula = (name: string): string =>
  /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(name) && !/^[A-Z]{1,3}\d+$/i.test(name) && !/^R\d*(C\d*)?$|^C\d*$/i.test(name)
    ? name
    : `'${name.replaceAll("'", "''")}'`;

/** `Lot!B4`, or `'Two words'!B4:C9`. */
export function referenceTo(area: Area & { readonly sheet: string }): string {
  const first = addressOf(area.row, area.column);
  const last = addressOf(area.row + area.rows - 1, area.column + area.columns - 1);
  return `${sheetInFormula(area.sheet)}!${first === last ? first : `${first}:${last}`}`;
}

function between(one: { row: number; column: number }, other: { row: number; column: number }): Area {
  const [row, column] = [Math.min(one.row, other.row), Math.min(one.column, other.column)];
  return {
    row,
    column,
    rows: Math.abs(one.row - other.row) + 1,
    columns: Math.abs(one.column - other.column) + 1,
  };
}

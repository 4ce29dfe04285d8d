/** Addresses as cells show them, `B4` and `A1:C7`, and as the workbook counts them, from 0. */
import type { Area } from "./workbook";

/** `A` for 0, `AA` for 26. */
export function columnName(column: number): string {
  const letter = String.fromCharCode(65 + (column % 26));
  return column < 26 ? letter : columnName(Math.floor(column / 26) - 1) + letter;
}

export const addressOf = (row: number, column: number): string => `${columnName(column)}${row + 1}`;

/** `$B$4` for `B4`. */
export const fixed = (address: string): string => address.replace(/([A-Z]+)(\d+)/, "$$$1$$$2");

/** `B4` or `$B$4`. Throws for anything else. */
export function placeOf(address: string): { row: number; column: number } {
  const [, letters, digits] = /^\$?([A-Z]{1,3})\$?([1-9]\d*)$/i.exec(address.trim()) ?? [];
  if (letters === undefined || digits === undefined) throw new Error(`"${address}" is not the address of a cell`);
  let count = 0;
  for (const letter of letters.toUpperCase()) count = count * 26 + letter.charCodeAt(0) - 64;
  return { row: Number(digits) - 1, column: count - 1 };
}

/** `A1:C7`; a single cell is an area of one. */
export function areaOf(reference: string): Area {
  const [first = "", last = first] = reference.split(":");
  const start = placeOf(first);
  const end = placeOf(last);
  return {
    row: Math.min(start.row, end.row),
    column: Math.min(start.column, end.column),
    rows: Math.abs(end.row - start.row) + 1,
    columns: Math.abs(end.column - start.column) + 1,
  };
}

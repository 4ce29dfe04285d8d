/** Addresses as a file writes them: `B4`, `A1:C7`, `A:C`, `2:5`. Whatever lies outside the sheet is refused. */

import { sheetColumns, sheetRows } from "../../workbook/sheet-size";
import type { Area } from "../../workbook/workbook";
import { Refusal } from "../refusal";
import type { PlaceInFile } from "../refusals";

export interface Place {
  readonly row: number;
  readonly column: number;
}

export function placeIn(address: string): Place {
  let at = 0;
  let column = 0;
  let row = 0;
  if (address.charCodeAt(at) === 36) at += 1;
  for (; at < address.length; at += 1) {
    const letter = address.charCodeAt(at) & ~32;
    if (letter < 65 || letter > 90 || column > sheetColumns) break;
    column = column * 26 + letter - 64;
  }
  if (address.charCodeAt(at) === 36) at += 1;
  for (; at < address.length; at += 1) {
    const digit = address.charCodeAt(at) - 48;
    if (digit < 0 || digit > 9 || row > sheetRows) throw outside({ address: address.slice(0, 30) });
    row = row * 10 + digit;
  }
  if (row < 1 || row > sheetRows || column < 1 || column > sheetColumns)
    throw outside({ address: address.slice(0, 30) });
  return { row: row - 1, column: column - 1 };
}

/** A single cell is an area of one; whole columns and rows are areas as well. */
export function areaIn(reference: string): Area {
  const [first = "", last = first] = reference.trim().split(":");
  if (/^\$?\d+$/.test(first)) return between(placeIn(`A${bare(first)}`), placeIn(`XFD${bare(last)}`));
  if (/^\$?[A-Z]+$/i.test(first)) return between(placeIn(`${bare(first)}1`), placeIn(`${bare(last)}${sheetRows}`));
  return between(placeIn(first), placeIn(last));
}

/** Areas with spaces between them. */
export const areasIn = (references: string | undefined): Area[] =>
  (references ?? "").split(/\s+/).filter(Boolean).map(areaIn);

const bare = (reference: string): string => reference.replaceAll("$", "");

function between(one: Place, other: Place): Area {
  const [row, column] = [Math.min(one.row, other.row), Math.min(one.column, other.column)];
  return { row, column, rows: Math.abs(one.row - other.row) + 1, columns: Math.abs(one.column - other.column) + 1 };
}

export const outside = (place: PlaceInFile): Refusal =>
  new Refusal({ kind: "place outside", place, rows: sheetRows, columns: sheetColumns });

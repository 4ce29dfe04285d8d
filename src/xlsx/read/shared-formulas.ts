/** A formula that many cells share is written once; the others move what it refers to (ECMA-376 part 1, 18.3.1.40). */

import { columnName } from "../../workbook/addresses";
import { tokenize } from "../../workbook/formula";
import { sheetColumns, sheetRows } from "../../workbook/sheet-size";

/** A formula whose relative references can be moved; it is taken apart once. */
export class MovableFormula {
  readonly #pieces: readonly (string | Reference)[];

  constructor(formula: string) {
    // The tokenizer asks for the equals sign that files leave out.
    this.#pieces = tokenize(`=${formula}`, { withLocation: false })
      .slice(1)
      .flatMap(({ type, value }) => (rangeTypes.has(type) ? piecesOf(value) : [value]));
  }

  /** As a cell so many rows below and columns to the right of the first one has it. */
  moved(rows: number, columns: number): string {
    let formula = "";
    for (const piece of this.#pieces)
      formula += typeof piece === "string" ? piece : movedReference(piece, rows, columns);
    return formula;
  }
}

const rangeTypes: ReadonlySet<string> = new Set(["range", "range_beam", "range_ternary"]);

/** One corner of a range: a cell, a whole column or a whole row. */
interface Reference {
  readonly column: { readonly at: number; readonly isFixed: boolean } | undefined;
  readonly row: { readonly at: number; readonly isFixed: boolean } | undefined;
}

/** The sheet's name and the colon stay as they are. */
function piecesOf(range: string): (string | Reference)[] {
  const start = range.lastIndexOf("!") + 1;
  return [
    range.slice(0, start),
    ...range
      .slice(start)
      .split(/([^$A-Z\d]+)/i)
      .map(referenceOf),
  ];
}

function referenceOf(text: string): string | Reference {
  const [, columnDollar, letters, rowDollar, digits] = /^(?:(\$?)([A-Z]{1,3}))?(?:(\$?)(\d{1,7}))?$/i.exec(text) ?? [];
  if (letters === undefined && digits === undefined) return text;
  return {
    column: letters === undefined ? undefined : { at: columnOf(letters), isFixed: columnDollar === "$" },
    row: digits === undefined ? undefined : { at: Number(digits) - 1, isFixed: rowDollar === "$" },
  };
}

const columnOf = (letters: string): number =>
  [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

/** What leaves the sheet comes in again on the other side. */
function movedReference({ column, row }: Reference, rows: number, columns: number): string {
  const part = (at: number, isFixed: boolean, by: number, size: number) => (isFixed ? at : (at + by + size) % size);
  const letters = column && columnName(part(column.at, column.isFixed, columns, sheetColumns));
  const number = row && part(row.at, row.isFixed, rows, sheetRows) + 1;
  return `${column ? `${column.isFixed ? "$" : ""}${letters}` : ""}${row ? `${row.isFixed ? "$" : ""}${number}` : ""}`;
}

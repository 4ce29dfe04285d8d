/**
 * What becomes of formulas when the rows of a table are sorted. In a formula that moves, what is read from its own row
 * goes along with it, whatever dollars say, and everything else stays; where neither would leave the answer as it was,
 * sorting is refused. Formulas that do not move read the same places as before, as in any spreadsheet.
 */
import { parseA1Ref, stringifyA1Ref, type Token } from "../workbook/formula";
import type { Cell } from "../workbook/workbook";
import { type BookOfCells, type Read, type Spot, tokensOf } from "./formula-reads";

/** What reads more columns of a row than this reads a row as a whole. */
const widest = 100;

/** The cells that change their rows, up to and with `bottom` and `right`. */
export interface Moving {
  readonly sheet: string;
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

/** Why a formula keeps its table from being sorted. */
export type FormulaRefusal =
  /** It reads another row, or some of the rows. */
  | { readonly is: "reads other rows"; readonly at: Spot; readonly text: string }
  /** It asks for its place, or reckons places out. */
  | { readonly is: "goes by its place"; readonly at: Spot; readonly text: string }
  /** It reads a cell outside, which itself is worked out from some of the rows. */
  | { readonly is: "reads what follows rows"; readonly at: Spot; readonly text: string };

/** How an area lies to the moving cells: `row`: it holds one of their rows, `part`: some of them. */
function lieOf(read: Read, moving: Moving): "apart" | "whole" | "row" | "part" {
  const isApart =
    read.sheet !== moving.sheet ||
    read.right < moving.left ||
    read.left > moving.right ||
    read.bottom < moving.top ||
    read.top > moving.bottom;
  if (isApart) return "apart";
  if (read.top <= moving.top && read.bottom >= moving.bottom) return "whole";
  return read.top === read.bottom ? "row" : "part";
}

export const isMoving = ({ sheet, row, column }: Spot, moving: Moving): boolean =>
  sheet === moving.sheet &&
  row >= moving.top &&
  row <= moving.bottom &&
  column >= moving.left &&
  column <= moving.right;

/** Whether any of the moving rows lies in an area. */
export const readsAnyRow = (read: Read, moving: Moving): boolean => lieOf(read, moving) !== "apart";

/** Whether an area holds some of the moving rows and not all. */
export const readsSomeRows = (read: Read, moving: Moving): boolean => ["row", "part"].includes(lieOf(read, moving));

export class SortedFormulas {
  readonly #book: BookOfCells;
  readonly #moving: Moving;
  /** The cells whose values are spilled, with the cell of the formula. */
  readonly #origins: ReadonlyMap<string, Cell>;
  readonly #following = new Map<string, boolean>();

  constructor(book: BookOfCells, moving: Moving, origins: ReadonlyMap<string, Cell>) {
    this.#book = book;
    this.#moving = moving;
    this.#origins = origins;
  }

  /** Why the formula in a moving cell cannot move; undefined when it can. */
  refusal(formula: string, at: Spot): FormulaRefusal | undefined {
    const place = placeFunctionIn(formula);
    if (place) return { is: "goes by its place", at, text: place };
    const taken = this.#book.rowsByNumber(formula, at).find((read) => readsAnyRow(read, this.#moving));
    if (taken) return { is: "reads other rows", at, text: taken.text };
    for (const read of this.#book.readsOf(formula, at)) {
      const lie = lieOf(read, this.#moving);
      const isOwn = lie === "row" && read.top === at.row && !read.isNamed;
      if ((lie === "row" && !isOwn) || lie === "part") return { is: "reads other rows", at, text: read.text };
      if (lie === "apart" && !this.#isBeside(read, at) && this.#follows(read)) {
        return { is: "reads what follows rows", at, text: read.text };
      }
    }
    return undefined;
  }

  /** The formula as it is written once its row has moved. */
  moved(formula: string, from: Spot, toRow: number): string {
    return tokensOf(formula)
      .map((token) => (this.#goesAlong(token, from) ? shifted(token.value, toRow - from.row) : token.value))
      .join("");
  }

  /** What stands beside the table and is worked out from the same row is found beside the new row as well. */
  #goesAlong(token: Token, at: Spot): boolean {
    if (token.type !== "range") return false;
    const [read] = this.#book.readsOfToken(token, at);
    if (!read || read.top !== at.row || read.bottom !== at.row) return false;
    const lie = lieOf(read, this.#moving);
    return lie === "row" || (lie === "apart" && this.#isBeside(read, at) && this.#follows(read));
  }

  #isBeside(read: Read, at: Spot): boolean {
    return read.sheet === at.sheet && read.top === at.row && read.bottom === at.row;
  }

  /** Whether cells of one row outside are worked out from some of the moving rows, or from their place. */
  #follows({ sheet, top, bottom, left, right }: Read): boolean {
    if (top !== bottom || right - left > widest) return false;
    for (let column = left; column <= right; column += 1) {
      if (this.#cellFollows({ sheet, row: top, column })) return true;
    }
    return false;
  }

  #cellFollows(at: Spot): boolean {
    const key = `${at.sheet}!${at.row},${at.column}`;
    const known = this.#following.get(key);
    if (known !== undefined) return known;
    // Of a circle of formulas none follows on account of itself.
    this.#following.set(key, false);
    const follows = this.#readsRows(at);
    this.#following.set(key, follows);
    return follows;
  }

  #readsRows(at: Spot): boolean {
    const { formula } = this.#book.cellAt(at) ?? {};
    const origin = this.#origins.get(`${at.sheet}!${at.row},${at.column}`);
    if (formula === undefined && origin?.formula !== undefined) {
      const reads = this.#book.readsOf(origin.formula, { ...at, row: origin.row, column: origin.column });
      return reads.some((read) => lieOf(read, this.#moving) !== "apart");
    }
    if (formula === undefined) return false;
    if (placeFunctionIn(formula)) return true;
    return this.#book
      .readsOf(formula, at)
      .some(
        (read) => readsSomeRows(read, this.#moving) || (lieOf(read, this.#moving) === "apart" && this.#follows(read)),
      );
  }
}

/** A function that asks where a cell stands, or reckons out which one to read. */
function placeFunctionIn(formula: string): string | undefined {
  const place = tokensOf(formula).find(({ type, value }) =>
    type === "func" ? /^(?:ROW|OFFSET|INDIRECT|CELL)$/i.test(value) : type === "operator" && value === ":",
  );
  return place?.value.toUpperCase();
}

function shifted(reference: string, rows: number): string {
  const parsed = parseA1Ref(reference);
  if (!parsed || !("range" in parsed) || !parsed.range) return reference;
  const { top, bottom } = parsed.range;
  return stringifyA1Ref({
    ...parsed,
    range: { ...parsed.range, top: Number(top) + rows, bottom: Number(bottom) + rows },
  });
}

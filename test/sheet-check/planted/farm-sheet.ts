/** A sheet of an invented farm as it grows: cells, and what stands where, so that a slip knows where it belongs. */
import type { SeededNumbers } from "../../../src/sample-books/season/seeded-numbers";
import { addressOf } from "../../../src/workbook/addresses";

export type Holds =
  | "fresh"
  | "aired"
  | "finished"
  | "stage weight"
  | "fresh moisture"
  | "finished moisture"
  | "stage moisture"
  | "target"
  | "span"
  | "usual loss"
  | "largest loss"
  | "dry basis"
  | "formula";

export interface Place {
  readonly row: number;
  readonly column: number;
  readonly holds: Holds;
  /** Cells with one of these belong to one lot, and to look at one of them is to look at the lot. */
  readonly lot: string;
}

export interface Content {
  /** A constant, or a formula, which begins with an equals sign. */
  readonly content: number | string;
  readonly format?: string;
}

export interface FarmSheet {
  /** The layout that it was made by. */
  readonly layout: string;
  readonly cells: ReadonlyMap<string, Content>;
  readonly places: readonly Place[];
}

export const keyOf = (row: number, column: number): string => addressOf(row, column);

/** Writes a sheet from top to bottom. */
export class Draft {
  readonly cells = new Map<string, Content>();
  readonly places: Place[] = [];
  /** Where the next row goes. */
  row = 0;

  put(column: number, content: Content["content"] | undefined, format?: string): void {
    if (content === undefined || content === "") return;
    this.cells.set(keyOf(this.row, column), format === undefined ? { content } : { content, format });
  }

  /** A value whose kind the slips know. */
  place(column: number, holds: Holds, lot: string, content: Content["content"] | undefined, format?: string): void {
    if (content === undefined) return;
    this.put(column, content, format);
    this.places.push({ row: this.row, column, holds, lot });
  }

  line(...contents: readonly (Content["content"] | undefined)[]): void {
    for (const [column, content] of contents.entries()) this.put(column, content);
    this.row += 1;
  }

  /** The address of a cell in the row that is being written. */
  at = (column: number): string => keyOf(this.row, column);

  done = (layout: string): FarmSheet => ({ layout, cells: this.cells, places: this.places });
}

/** A lot whose weights and moistures agree: no dry matter comes from nowhere. Weights in grams. */
export interface Lot {
  readonly fresh: number;
  readonly aired: number;
  readonly finished: number;
  readonly freshMoisture: number;
  readonly finishedMoisture: number;
}

export function lotBy({ next, scatter }: SeededNumbers, step = 1): Lot {
  const onScale = (weight: number) => Number((Math.round(weight / step) * step).toFixed(3));
  const fresh = onScale(600 + 1300 * next());
  const freshMoisture = Number((0.765 + 0.008 * scatter()).toFixed(3));
  const finishedMoisture = Number((0.05 + 0.004 * scatter()).toFixed(3));
  const lost = 0.03 + 0.006 * scatter();
  const finished = (fresh * (1 - freshMoisture) * (1 - lost)) / (1 - finishedMoisture);
  const aired = onScale(fresh * (0.86 + 0.08 * next()));
  return { fresh, aired, finished: onScale(finished), freshMoisture, finishedMoisture };
}

export const manyBy = <Each>(count: number, each: (index: number) => Each): Each[] =>
  Array.from({ length: count }, (_, index) => each(index));

/** One of these. */
export const oneOf = <Each>(random: SeededNumbers, these: readonly Each[]): Each | undefined =>
  these[Math.floor(random.next() * these.length)];

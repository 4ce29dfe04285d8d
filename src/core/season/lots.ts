/**
 * Which rows of a book are lots. A book is taken as its maker keeps it: with a heading or without, lots still open,
 * rows left empty, and mistakes. A lot has both weights; an open lot is fresh leaf that is not finished yet.
 */

import { leastAmount, mostAmount } from "../bounds";
import type { BookCell, BookColumn } from "../define";
import { type DomainError, inPlace, mustBe, mustBeNumber } from "../errors";
import { type Quantity, weight } from "../quantities";
import type { Finding } from "../refusals";
import { looksLikeNumber } from "../shown";

/** What the two columns of weights are called in messages. */
interface WeightNames {
  readonly fresh: string;
  readonly finished: string;
}

export const lotNames: WeightNames = { fresh: "freshWeights", finished: "finishedWeights" };
export const pastNames: WeightNames = { fresh: "pastFreshWeights", finished: "pastFinishedWeights" };

export const cellIn = (column: BookColumn, row: number): BookCell => column[row]?.[0];

/** 1 where the first row is a heading, text in every column of numbers, and 0 where it is a row like any other. */
export const firstRow = (...columns: readonly BookColumn[]): 0 | 1 =>
  columns.every((column) => isHeading(cellIn(column, 0))) ? 1 : 0;

/** Digits stored as text are a mistake to report, and no heading. */
const isHeading = (cell: BookCell): boolean => typeof cell === "string" && cell.trim() !== "" && !looksLikeNumber(cell);

/** A number above 0 that arithmetic can be done with: a weight, or an area. */
export const isAmount = (cell: BookCell): cell is number =>
  typeof cell === "number" && cell >= leastAmount && cell <= mostAmount;

/** Also 0, which older hosts send for a blank cell: there is no weight and no area of 0. */
export const isBlankAmount = (cell: BookCell): boolean =>
  cell === null || cell === undefined || cell === "" || cell === 0;

export const isGap = (fresh: BookCell, finished: BookCell): boolean => isBlankAmount(fresh) && isBlankAmount(finished);

export const isOpen = (fresh: BookCell, finished: BookCell): boolean => isAmount(fresh) && isBlankAmount(finished);

/** Why a row is no lot, when it is neither open nor a gap. */
export function lotProblem(fresh: BookCell, finished: BookCell, row: number, names: WeightNames): DomainError {
  if (!isAmount(fresh)) return amountProblem(names.fresh, weight, fresh, row);
  if (!isAmount(finished)) return amountProblem(names.finished, weight, finished, row);
  const question = "are both in the same unit, and not swapped?";
  return inPlace(
    mustBe(names.finished, { kind: "limit", is: "at most", limit: fresh, what: "the fresh weight" }, finished, {
      question,
    }),
    row,
  );
}

/** The refusal of a cell that should hold an amount, with its row. */
export function amountProblem(name: string, { requirement }: Quantity, cell: BookCell, row: number): DomainError {
  const isText = typeof cell === "string" && cell !== "";
  return inPlace(isText ? mustBeNumber(name, requirement, cell) : mustBe(name, requirement, cell), row);
}

/** The lots of a book that both weights are known of, in its order, and what kept other rows out. */
export interface PastLots {
  readonly fresh: readonly number[];
  readonly finished: readonly number[];
  readonly leftOut: number;
  readonly firstLeftOut: DomainError | undefined;
}

/**
 * Lots to compare another with; open lots, gaps and mistakes are left out. Finished weights above the fresh ones are
 * a mistake too, except where the function is there to find them.
 */
export function pastLots(
  freshWeights: BookColumn,
  finishedWeights: BookColumn,
  names: WeightNames,
  { withSwapped }: { readonly withSwapped: boolean },
): PastLots {
  const fresh: number[] = [];
  const finished: number[] = [];
  let leftOut = 0;
  let firstLeftOut: DomainError | undefined;
  for (let row = firstRow(freshWeights, finishedWeights); row < freshWeights.length; row += 1) {
    const before = freshWeights[row]?.[0];
    const after = finishedWeights[row]?.[0];
    if (isAmount(before) && isAmount(after) && (withSwapped || after <= before)) {
      fresh.push(before);
      finished.push(after);
    } else if (!isOpen(before, after) && !isGap(before, after)) {
      leftOut += 1;
      firstLeftOut ??= lotProblem(before, after, row, names);
    }
  }
  return { fresh, finished, leftOut, firstLeftOut };
}

/** What a refusal for want of lots says of those that were there: "got 2", or with the first that was left out. */
export const lotsFound = ({ fresh, leftOut, firstLeftOut }: PastLots): Finding => ({
  kind: "lots",
  count: fresh.length,
  leftOut: firstLeftOut && { rows: leftOut, first: firstLeftOut.refusal },
});

/**
 * A column of forecasts or flags looks back at the same past for each of its cells: what was worked out for a book is
 * kept for as long as its columns are.
 */
export function rememberedForBook<Found>(find: (freshWeights: BookColumn, finishedWeights: BookColumn) => Found) {
  const known = new WeakMap<BookColumn, { readonly finishedWeights: BookColumn; readonly found: Found }>();
  return (freshWeights: BookColumn, finishedWeights: BookColumn): Found => {
    const before = known.get(freshWeights);
    if (before?.finishedWeights === finishedWeights) return before.found;
    const found = find(freshWeights, finishedWeights);
    known.set(freshWeights, { finishedWeights, found });
    return found;
  };
}

import { isInside } from "../bounds";
import { DomainError } from "../errors";
import type { Bounds } from "../quantities";

/** Size of a step as a share of the value. With five points the error of the slope is about its fourth power. */
const stepShare = 1e-3;
/** A moisture near 0 moves in steps of a moisture, not of itself. */
const smallestShare = 0.01;

const central = [
  [-2, 1 / 12],
  [-1, -2 / 3],
  [1, 2 / 3],
  [2, -1 / 12],
] as const;

const oneSided = [
  [0, -25 / 12],
  [1, 4],
  [2, -3],
  [3, 4 / 3],
  [4, -1 / 4],
] as const;

type Formula = readonly (readonly [step: number, weight: number])[];

/** Where bounds leave no room for a step of the usual size, one a thousand times smaller may fit. */
const finer = 1e-3;

/**
 * Slope of a smooth function at a value, from five points: on both sides, or on one beside a bound of the value's own
 * or one that another argument sets; undefined where bounds leave room on no side.
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, table 25.2.
 */
export function slope(smooth: (x: number) => number, x: number, error: number, bounds: Bounds): number | undefined {
  const usual = stepAt(x, error, bounds);
  for (const step of [usual, usual * finer]) {
    for (const [formula, direction] of ways) {
      const along = slopeAlong(smooth, x, formula, direction * step, bounds);
      if (along !== undefined) return along;
    }
  }
  return undefined;
}

const ways = [
  [central, 1],
  [oneSided, 1],
  [oneSided, -1],
] as const;

/** undefined where one of the five points is beyond a bound. */
function slopeAlong(
  smooth: (x: number) => number,
  x: number,
  formula: Formula,
  step: number,
  bounds: Bounds,
): number | undefined {
  if (formula.some(([steps]) => !isInside(x + steps * step, bounds))) return undefined;
  try {
    return formula.reduce((sum, [steps, weight]) => sum + weight * smooth(x + steps * step), 0) / step;
  } catch (problem) {
    if (problem instanceof DomainError) return undefined;
    throw problem;
  }
}

/** Shares have a top; other quantities only a size, or their error where that is larger. */
function stepAt(x: number, error: number, { below, atMost }: Bounds): number {
  const size = Math.abs(x);
  if (below !== 1 && atMost !== 1) return stepShare * Math.max(size, error);
  const room = 1 - x;
  return stepShare * Math.min(Math.max(size, smallestShare), room > 0 ? room : 1);
}

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

/** Each step is this much smaller than the one before; the last is small enough for what bends within 1e-5 of a value. */
const finer = 1 / 8;
const mostSteps = 9;
/** Two slopes that are this near to each other, as a share, are both good. */
const agreement = 1e-9;

/**
 * Slope of a smooth function at a value, from five points: on both sides, or on one beside a bound of the value's own
 * or one that another argument sets; undefined where bounds leave room on no side. A function that bends within the
 * usual step, as the moisture of a little leaf in a heavy dish does, is asked again with smaller ones until two slopes
 * agree; where none do, the two that are nearest to each other count.
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, table 25.2.
 */
export function slope(smooth: (x: number) => number, x: number, error: number, bounds: Bounds): number | undefined {
  let best: number | undefined;
  let bestDifference = Number.POSITIVE_INFINITY;
  let before: number | undefined;
  let step = stepAt(x, error, bounds);
  for (let tries = 0; tries < mostSteps; tries += 1, step *= finer) {
    const found = slopeWith(smooth, x, step, bounds);
    if (found === undefined) continue;
    const difference = before === undefined ? Number.POSITIVE_INFINITY : Math.abs(found - before);
    if (best === undefined || difference < bestDifference) [best, bestDifference] = [found, difference];
    // The larger step has less noise.
    if (difference <= agreement * Math.abs(found)) return before;
    before = found;
  }
  return best;
}

/** On the first way that bounds leave room for. */
function slopeWith(smooth: (x: number) => number, x: number, step: number, bounds: Bounds): number | undefined {
  for (const [formula, direction] of ways) {
    const along = slopeAlong(smooth, x, formula, direction * step, bounds);
    if (along !== undefined) return along;
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

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
/** Where even the first step drowns in the rounding of the result, each is this much larger instead. */
const coarser = 8;
const mostCoarserSteps = 12;
/** Two slopes that are this near to each other, as a share, are both good. */
const agreement = 1e-9;

/**
 * Slope of a smooth function at a value, from five points: on both sides, or on one beside a bound of the value's own
 * or one that another argument sets; undefined where bounds leave room on no side. A function that bends within the
 * usual step, as the moisture of a little leaf in a heavy dish does, is asked again with smaller ones until two slopes
 * agree. Where none do, the steps may have been too small: a cost of 0 with an error of 0.00001 moves a result of a
 * thousand only in its last digits, and larger steps are asked. Where none agree at all, the two that are nearest to each
 * other count.
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, table 25.2.
 */
export function slope(smooth: (x: number) => number, x: number, error: number, bounds: Bounds): number | undefined {
  const digit = Number.EPSILON * Math.abs(smooth(x));
  let best: number | undefined;
  let bestDoubt = Number.POSITIVE_INFINITY;
  let before: number | undefined;
  for (const step of stepsFrom(stepAt(x, error, bounds))) {
    const found = slopeWith(smooth, x, step, bounds);
    if (found === undefined) continue;
    best ??= found;
    // Of the slope itself: how far it is from the one before, or what the last digit of the result can make of it.
    const size = Math.abs(found);
    const doubt =
      size === 0 || before === undefined
        ? Number.POSITIVE_INFINITY
        : Math.max(Math.abs(found - before), digit / step) / size;
    if (doubt < bestDoubt) [best, bestDoubt] = [found, doubt];
    // The larger step has less noise.
    if (doubt <= agreement) return before;
    before = found;
  }
  return best;
}

const stepsFrom = (first: number): number[] => [
  ...Array.from({ length: mostSteps }, (_, tries) => first * finer ** tries),
  ...Array.from({ length: mostCoarserSteps }, (_, tries) => first * coarser ** (tries + 1)),
];

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

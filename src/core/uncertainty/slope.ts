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

/**
 * Slope of a smooth function at a value, from five points: on both sides, or on one beside a bound of the value's own
 * or one that another argument sets.
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, table 25.2.
 */
export function slope(smooth: (x: number) => number, x: number, error: number, bounds: Bounds): number {
  const step = stepAt(x, error, bounds);
  const along = (formula: Formula, direction: number): number => {
    const parts = formula.map(([steps, weight]) => {
      const place = x + direction * steps * step;
      if (!isInside(place, bounds)) throw new DomainError("", "beyond a bound");
      return weight * smooth(place);
    });
    return parts.reduce((sum, part) => sum + part, 0) / (direction * step);
  };
  for (const [formula, direction] of [
    [central, 1],
    [oneSided, 1],
  ] as const) {
    try {
      return along(formula, direction);
    } catch (problem) {
      if (!(problem instanceof DomainError)) throw problem;
    }
  }
  return along(oneSided, -1);
}

/** Shares have a top; other quantities only a size, or their error where that is larger. */
function stepAt(x: number, error: number, { below, atMost }: Bounds): number {
  const size = Math.abs(x);
  if (below !== 1 && atMost !== 1) return stepShare * Math.max(size, error);
  const room = 1 - x;
  return stepShare * Math.min(Math.max(size, smallestShare), room > 0 ? room : 1);
}

export const isInside = (value: number, { above, atLeast, below, atMost }: Bounds): boolean =>
  !(
    (above !== undefined && value <= above) ||
    (atLeast !== undefined && value < atLeast) ||
    (below !== undefined && value >= below) ||
    (atMost !== undefined && value > atMost)
  );

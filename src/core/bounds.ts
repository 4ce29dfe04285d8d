import type { Bounds } from "./quantities";

/**
 * No weight, area or amount of any farm lies outside these, in whatever unit. Inside them the arithmetic of every
 * function stays within what a cell can hold.
 */
export const leastAmount = 1e-12;
export const mostAmount = 1e12;

/** The least and the greatest double inside some bounds. */
export function limits({ above, atLeast, below, atMost }: Bounds): { readonly low: number; readonly high: number } {
  const justAbove = above === 0 ? leastAmount : nextAbove(above ?? -mostAmount);
  return {
    low: atLeast ?? justAbove,
    high: atMost ?? (below === undefined ? mostAmount : -nextAbove(-below)),
  };
}

/** A little more than half the distance from 1 to the next double. */
const halfStep = Number.EPSILON / 2 + Number.EPSILON ** 2 / 2;

/**
 * The smallest double above a number that no bound comes too near zero for: the sum is rounded to it. Whole numbers of
 * 64 bits would say it more plainly, but Excel's script engine does not know them on all its systems.
 */
function nextAbove(value: number): number {
  return value === 0 ? Number.MIN_VALUE : value + Math.abs(value) * halfStep;
}

export function isInside(value: number, bounds: Bounds): boolean {
  const { low, high } = limits(bounds);
  return value >= low && value <= high;
}

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

/** The smallest double above a number: the one whose bits, read as a whole number, are next. */
function nextAbove(value: number): number {
  if (value === 0) return Number.MIN_VALUE;
  const bits = new DataView(new ArrayBuffer(8));
  bits.setFloat64(0, value);
  bits.setBigInt64(0, bits.getBigInt64(0) + (value > 0 ? 1n : -1n));
  return bits.getFloat64(0);
}

export function isInside(value: number, bounds: Bounds): boolean {
  const { low, high } = limits(bounds);
  return value >= low && value <= high;
}

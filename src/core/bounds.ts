import type { Bounds } from "./quantities";

/**
 * No weight, area or amount of any farm lies outside these, in whatever unit. Inside them the arithmetic of every
 * function stays within what a cell can hold.
 */
export const leastAmount = 1e-12;
export const mostAmount = 1e12;

/** The least and the greatest number inside some bounds: as far from an open bound as the least amount from 0. */
export const limits = ({ above, atLeast, below, atMost }: Bounds): { readonly low: number; readonly high: number } => ({
  low: atLeast ?? (above === undefined ? -mostAmount : above + leastAmount),
  high: atMost ?? (below === undefined ? mostAmount : below - leastAmount),
});

export function isInside(value: number, bounds: Bounds): boolean {
  const { low, high } = limits(bounds);
  return value >= low && value <= high;
}

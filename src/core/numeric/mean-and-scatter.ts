import { CompensatedSum } from "./compensated-sum";

interface MeanAndScatter {
  readonly mean: number;
  /** Standard deviation of one reading, s with n − 1; 0 for a single reading, which has none. */
  readonly scatter: number;
}

/**
 * In two passes, each with compensated sums: in one pass the squares of readings that lie close together would eat the
 * digits of their scatter.
 */
export function meanAndScatter(readings: readonly number[]): MeanAndScatter {
  const sum = new CompensatedSum();
  for (const reading of readings) sum.add(reading);
  const mean = sum.total / readings.length;
  const squares = new CompensatedSum();
  for (const reading of readings) squares.add((reading - mean) ** 2);
  return { mean, scatter: readings.length < 2 ? 0 : Math.sqrt(squares.total / (readings.length - 1)) };
}

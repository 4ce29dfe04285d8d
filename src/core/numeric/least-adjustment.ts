import { factored } from "./semidefinite";

/** A balance between readings: the coefficient of each reading that takes part, by its place. */
export type Balance = ReadonlyMap<number, number>;

interface Adjustment {
  /** What to add to each reading. */
  readonly changes: number[];
  /** Standard deviation of each change; 0 where the balances leave a reading alone. */
  readonly deviations: () => number[];
  /** Balances that do not follow from the others: the degrees of freedom of the test. */
  readonly rank: number;
  /** By how much each balance stays open, because no reading in it can move. */
  readonly open: number[];
}

/**
 * The smallest changes, weighed by their variances, that bring the balances to zero:
 * −V·Aᵀ·(A·V·Aᵀ)⁻¹·r, where r is what the balances hold now. A reading of variance 0 does not move.
 */
export function leastAdjustment(
  balances: readonly Balance[],
  variances: readonly number[],
  residuals: readonly number[],
): Adjustment {
  const band = bandOf(balances);
  const variance = (place: number): number => variances[place] as number;
  const matrix = factored(balances.length, band, (row, column) => {
    const other = balances[column] as Balance;
    let sum = 0;
    for (const [place, coefficient] of balances[row] as Balance) {
      sum += coefficient * variance(place) * (other.get(place) ?? 0);
    }
    return sum;
  });
  const { solution, leftovers } = matrix.solve(residuals);
  const changes = variances.map(() => 0);
  balances.forEach((balance, row) => {
    for (const [place, coefficient] of balance) {
      changes[place] = (changes[place] as number) - variance(place) * coefficient * (solution[row] as number);
    }
  });
  const deviations = (): number[] =>
    variances.map((variance, place) => {
      const column = balances.map((balance) => balance.get(place) ?? 0);
      const weights = matrix.solve(column).solution;
      const spread = column.reduce((sum, coefficient, row) => sum + coefficient * (weights[row] as number), 0);
      return variance * Math.sqrt(Math.max(0, spread));
    });
  return { changes, deviations, rank: matrix.rank, open: leftovers };
}

/** How far apart two balances that share a reading stand in the list. */
function bandOf(balances: readonly Balance[]): number {
  const firstUse = new Map<number, number>();
  let band = 0;
  balances.forEach((balance, row) => {
    for (const place of balance.keys()) {
      const first = firstUse.get(place);
      if (first === undefined) firstUse.set(place, row);
      else band = Math.max(band, row - first);
    }
  });
  return band;
}

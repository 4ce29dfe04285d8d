import { mustBe, noAnswer } from "../errors";
import { type Balance, leastAdjustment } from "./least-adjustment";

interface Reconciliation {
  /** The readings, moved as little as their errors ask for until every balance closes. */
  readonly fitted: number[];
  /** Standard deviation of each adjustment, fitted − reading. */
  readonly adjustmentDeviations: number[];
  /** Standard deviation of each fitted value. */
  readonly fittedDeviations: number[];
  /** Adjustment over its standard deviation; NaN where no balance moves the reading. */
  readonly scores: number[];
  /** Σ (fitted − reading)² / variance: chi-square when the errors are as stated. */
  readonly gamma: number;
  readonly degreesOfFreedom: number;
}

/**
 * Readings that should satisfy A·x = 0, fitted by weighted least squares: x = y − V·Aᵀ·(A·V·Aᵀ)⁻¹·A·y.
 * `matrix` holds A by rows, `variances` the diagonal of V. A balance that follows from the others adds nothing.
 * Source: Narasimhan and Jordache, Data Reconciliation and Gross Error Detection.
 */
export function linearReconciliation(
  matrix: readonly (readonly number[])[],
  variances: readonly number[],
  readings: readonly number[],
): Reconciliation {
  for (const row of matrix) {
    if (row.length !== readings.length) throw mustBe("matrix", "a column for each reading", row.length);
  }
  if (variances.length !== readings.length) throw mustBe("variances", "one for each reading", variances.length);
  const balances: Balance[] = matrix.map(
    (row) => new Map(row.flatMap((coefficient, place) => (coefficient === 0 ? [] : [[place, coefficient] as const]))),
  );
  const termsOf = (balance: Balance): number[] =>
    [...balance].map(([place, coefficient]) => coefficient * (readings[place] as number));
  const residuals = balances.map((balance) => termsOf(balance).reduce((sum, term) => sum + term, 0));
  const { changes, deviations, rank, open } = leastAdjustment(balances, variances, residuals);
  balances.forEach((balance, row) => {
    const size = termsOf(balance).reduce((sum, term) => sum + Math.abs(term), 0);
    if (Math.abs(open[row] as number) > 1e-9 * size) {
      throw noAnswer("readings", { do: "agree where they are exact" }, { kind: "open balance", row: row + 1 });
    }
  });
  const adjustmentDeviations = deviations();
  return {
    fitted: readings.map((reading, place) => reading + (changes[place] as number)),
    adjustmentDeviations,
    fittedDeviations: variances.map((variance, place) =>
      Math.sqrt(Math.max(0, variance - (adjustmentDeviations[place] as number) ** 2)),
    ),
    scores: changes.map((change, place) => change / (adjustmentDeviations[place] as number)),
    gamma: changes.reduce((sum, change, place) => sum + scaled(change, variances[place] as number), 0),
    degreesOfFreedom: rank,
  };
}

const scaled = (change: number, variance: number): number => (variance === 0 ? 0 : (change * change) / variance);

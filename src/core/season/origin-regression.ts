/** A line through the origin, y = bx, fitted to readings whose variance grows as x to a power. */
interface OriginRegression {
  readonly slope: number;
  readonly slopeError: number;
  /** Residual standard deviation s: one reading scatters by s·x^(power/2). */
  readonly scatter: number;
  readonly degrees: number;
  /** Standard error of a new reading at x, the scatter of the reading itself included. */
  readonly predictionError: (x: number) => number;
}

/**
 * Weighted least squares with weights x^−p: b = Σx^(1−p)y / Σx^(2−p), s² = Σ(y − bx)²x^−p / (n − 1).
 * p = 0 is the plain line through the origin (NIST StRD, NoInt1); p = 1, where the variance grows with x, gives
 * b = Σy/Σx, the outturn of a season; p = 2, where readings scatter by a share of x, gives b = mean of y/x. At least
 * two readings, every x above 0.
 */
export function originRegression(
  x: readonly number[],
  y: readonly number[],
  variancePower: 0 | 1 | 2,
): OriginRegression {
  const varianceAt = (at: number): number => at ** variancePower;
  let products = 0;
  let squares = 0;
  x.forEach((at, index) => {
    products += (at * (y[index] as number)) / varianceAt(at);
    squares += (at * at) / varianceAt(at);
  });
  const slope = products / squares;
  let residuals = 0;
  x.forEach((at, index) => {
    residuals += ((y[index] as number) - slope * at) ** 2 / varianceAt(at);
  });
  const degrees = x.length - 1;
  const scatter = Math.sqrt(residuals / degrees);
  return {
    slope,
    slopeError: scatter / Math.sqrt(squares),
    scatter,
    degrees,
    predictionError: (at) => scatter * Math.sqrt(varianceAt(at) + (at * at) / squares),
  };
}

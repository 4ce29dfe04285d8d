/**
 * The 95 % quantile of the range (largest less smallest) of n normal values, in standard deviations, for n = 2, 3, … 20.
 * Worked out from its definition, n ∫ φ(x) (Φ(x + w) − Φ(x))ⁿ⁻¹ dx = 0.95, as test/core/normal-range.test.ts does again.
 */
const quantiles = [
  2.77181, 3.31449, 3.63316, 3.85766, 4.03009, 4.16955, 4.28631, 4.38651, 4.47412, 4.55186, 4.62166, 4.68492, 4.74273,
  4.79592, 4.84515, 4.89095, 4.93375, 4.97389, 5.01169,
] as const;

/** Beyond twenty values, as for twenty. */
export const rangeQuantile = (n: number): number => quantiles[Math.min(n - 2, quantiles.length - 1)] as number;

/** How much wider n readings of the same may lie than two: 1 for two. */
export const rangeFactor = (n: number): number => rangeQuantile(n) / rangeQuantile(2);

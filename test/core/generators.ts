import fc from "fast-check";

const from = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Weights from a pinch on a fine scale to a season in grams. */
export const weights = from(0.1, 1e7);

/** Moistures that leaf has; above 95 % a double itself holds too few digits of the dry matter for 1e-12. */
export const moistures = fc.oneof(fc.constant(0), from(1e-6, 0.95));

/** A share of anything. */
export const shares = fc.oneof(fc.constantFrom(0, 1), from(1e-6, 1));

import { crossing } from "./crossing";

const density = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

/** From here on the continued fraction is the better one: both then hold 13 digits of the tail. */
const farOut = 2.5;

/**
 * Probability that a standard normal value passes `z`.
 * Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.11 near the middle, 26.2.14 in the tail: every term
 * is positive, so nothing cancels.
 */
export function normalTail(z: number): number {
  if (z < 0) return 1 - normalTail(-z);
  if (z < farOut) return 0.5 - density(z) * seriesOver(z);
  let fraction = z;
  for (let term = 60; term >= 1; term -= 1) fraction = z + term / fraction;
  return density(z) / fraction;
}

/** z + z³/3 + z⁵/(3·5) + … */
function seriesOver(z: number): number {
  let term = z;
  let sum = z;
  for (let odd = 3; term > sum * 1e-17; odd += 2) {
    term *= (z * z) / odd;
    sum += term;
  }
  return sum;
}

/** The value that a standard normal one stays below with this probability, above 0 and below 1. */
export function normalQuantile(probability: number): number {
  if (probability === 0.5) return 0;
  // Through the smaller tail, and with the sign outside: 1 − (1 − p) would round a small p.
  const tail = Math.min(probability, 1 - probability);
  const z = crossing((x) => -normalTail(x), -tail);
  return probability < 0.5 ? -z : z;
}

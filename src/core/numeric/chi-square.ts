import { normalTail } from "./normal";

/**
 * Probability that chi-square with a whole number of degrees of freedom passes `value`.
 * Abramowitz and Stegun, Handbook of Mathematical Functions, 26.4.4 and 26.4.5: from one or two degrees up, by two at
 * a time. The terms go by their logarithms, because value and degrees may be far apart.
 */
export function chiSquareTail(value: number, degrees: number): number {
  if (value <= 0) return 1;
  const half = value / 2;
  const odd = degrees % 2 === 1;
  let order = odd ? 0.5 : 1;
  let sum = odd ? 2 * normalTail(Math.sqrt(value)) : Math.exp(-half);
  let logTerm = order * Math.log(half) - half - (odd ? Math.log(Math.sqrt(Math.PI) / 2) : 0);
  while (order < degrees / 2) {
    sum += Math.exp(logTerm);
    order += 1;
    logTerm += Math.log(half / order);
  }
  return Math.min(1, sum);
}

import { normalQuantile } from "../numeric/normal";
import { type OutturnSpread, usualLimit } from "./outturn-spread";

/** Of clean books, so many have no flag; of good new lots, so many get none. */
const cleanBooks = 0.95;
const goodLots = 0.99;

/**
 * How far from the usual is too far, where nobody typed a limit. The modified z-score scatters the more the fewer lots
 * there are, since the median and the MAD of few lots are uncertain themselves: one limit for all books flags clean
 * small ones in every fifth case. Both limits are the normal quantile that a large book would need, times a factor
 * that falls to 1 as books grow. Source: our own simulation of 200,000 clean books of each size from 5 to 12 lots,
 * 60,000 of up to 40, 20,000 of up to 400; test/core/flag-limit.test.ts repeats it in small.
 */
export function limitOfBook(spread: OutturnSpread): number {
  const { count } = spread;
  const quantile = normalQuantile((1 + cleanBooks ** (1 / count)) / 2);
  return limitFor(spread, quantile, (even) => (4.15 + Math.log(even) ** 2 / 6) / even);
}

/** The same for one new lot beside those of a book. */
export const limitOfLot = (spread: OutturnSpread): number =>
  limitFor(spread, normalQuantile((1 + goodLots) / 2), (even) => (6.2 + 3 / even) / even);

function limitFor(
  { count, isByMedian }: OutturnSpread,
  quantile: number,
  logFactor: (evenCount: number) => number,
): number {
  // Where the mean distance stands in for the MAD, most lots are alike: that was not simulated, and the advice stands.
  if (!isByMedian) return usualLimit;
  // Of an odd number of lots one lies on the median and measures nothing.
  const even = count - (count % 2);
  return quantile * Math.exp(logFactor(even));
}

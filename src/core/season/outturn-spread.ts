import { noAnswer } from "../errors";
import { lotsFound, type PastLots } from "./lots";

/** Makes the median distance of normally scattered numbers from their median a standard deviation of 1. */
const normalMedianDistance = 0.6745;
/** The same for the mean distance: √(π/2). */
const normalMeanDistance = 1.253314;

/** Outturns closer than this, relatively, differ by the rounding of doubles alone. */
const rounding = 1e-12;

/** The limit that Iglewicz and Hoaglin advise. */
export const usualLimit = 3.5;

/** How many lots it takes to say what is usual. */
const fewestLots = 5;

/** The usual outturn of a book on the scale of logarithms, and how far the lots lie from it. */
export interface OutturnSpread {
  readonly median: number;
  /** What z divides by, 0 where all lots are alike. */
  readonly unit: number;
  /** How many lots there are, and whether their median distance is the unit: where most are alike it is the mean one. */
  readonly count: number;
  readonly isByMedian: boolean;
}

/**
 * Modified z-score (Iglewicz and Hoaglin): z = 0.6745 (r − median) / MAD with r = ln(P/F); where more than half of the
 * lots are alike and MAD is 0, the mean distance stands in: z = (r − median) / (1.253314 · mean|r − median|).
 */
export function outturnSpread(lots: PastLots, argument: string): OutturnSpread {
  const count = lots.fresh.length;
  if (count < fewestLots) throw noAnswer(argument, { do: { kind: "lots", least: fewestLots } }, lotsFound(lots));
  const logOutturns = new Float64Array(count);
  for (let lot = 0; lot < count; lot += 1) {
    logOutturns[lot] = Math.log((lots.finished[lot] as number) / (lots.fresh[lot] as number));
  }
  const median = medianOf(logOutturns);
  const distances = logOutturns.map((logOutturn) => Math.abs(logOutturn - median));
  const medianDistance = medianOf(distances);
  if (medianDistance > rounding) {
    return { median, unit: medianDistance / normalMedianDistance, count, isByMedian: true };
  }
  const meanDistance = distances.reduce((sum, distance) => sum + distance, 0) / count;
  return { median, unit: meanDistance > rounding ? normalMeanDistance * meanDistance : 0, count, isByMedian: false };
}

export function robustZ({ median, unit }: OutturnSpread, fresh: number, finished: number): number {
  return unit === 0 ? 0 : (Math.log(finished / fresh) - median) / unit;
}

/** The fixed words of a flag; nothing where the lot is as usual. */
export type Flag = "high" | "low" | "more out than in" | "";

export function flagOf(z: number, fresh: number, finished: number, limit: number): Flag {
  if (finished > fresh) return "more out than in";
  if (z > limit) return "high";
  return z < -limit ? "low" : "";
}

/** Sorts in place: the caller keeps no order. */
function medianOf(values: Float64Array): number {
  values.sort();
  const middle = values.length >> 1;
  const upper = values[middle] as number;
  return values.length % 2 === 1 ? upper : ((values[middle - 1] as number) + upper) / 2;
}

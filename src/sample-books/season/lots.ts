import { dayZero, millisecondsInDay } from "../../core/days";
import { seededNumbers } from "./seeded-numbers";

/** A lot as the book of the invented farm holds it. */
export interface Lot {
  readonly number: number;
  /** As the spreadsheet counts days. */
  readonly picked: number;
  readonly plot: (typeof plots)[number]["name"];
  readonly remark: "" | "rain";
  readonly fresh: number;
  /** null while the lot is open. */
  readonly finished: number | null;
}

/** A plot, its land in m², the leaf of a usual lot in g, and what its leaf usually makes. */
export const plots = [
  { name: "Wall", area: 465, leaf: 1120, outturn: 0.232 },
  { name: "Long bank", area: 880, leaf: 1690, outturn: 0.226 },
  { name: "Hedge", area: 540, leaf: 1270, outturn: 0.229 },
  { name: "Cherry", area: 690, leaf: 1430, outturn: 0.234 },
  { name: "Well", area: 395, leaf: 980, outturn: 0.224 },
] as const;

/** Lots that were written down wrong, by their numbers, as makers do at night. */
export const planted = {
  /** The dish was left on the scale. */
  tooHigh: 27,
  /** A weight was read a hundred grams short. */
  tooLow: 58,
  /** Each weight stands in the column of the other. */
  swapped: 41,
} as const;

const lotCount = 80;
export const openLots = 3;
const firstDay = (Date.UTC(2024, 2, 25) - dayZero) / millisecondsInDay;
const daysOfPicking = 74;
/** Wet leaf brings water along that no tea comes of. */
const rainShare = 0.96;

const tenths = (grams: number): number => Math.round(grams * 10) / 10;

/** One spring: every build makes the same lots. */
export function springLots(): Lot[] {
  const numbers = seededNumbers(20240325);
  const rainyDays = Array.from({ length: daysOfPicking + 1 }, () => numbers.next() < 0.16);
  let plot = 0;
  return Array.from({ length: lotCount }, (_, index): Lot => {
    const number = index + 1;
    const day = Math.round((index * daysOfPicking) / (lotCount - 1));
    // Plots are picked in turn, and now and then one has to wait.
    plot = (plot + (numbers.next() < 0.85 ? 1 : 2)) % plots.length;
    const { name, leaf, outturn } = plots[plot] as (typeof plots)[number];
    const rain = rainyDays[day] === true;
    // Leaf comes slowly, then all at once, then less.
    const plenty = 0.75 + 0.4 * Math.sin((Math.PI * day) / daysOfPicking);
    const fresh = tenths(leaf * plenty * (1 + 0.09 * numbers.scatter()));
    const finished = tenths(fresh * outturn * (1 + 0.018 * numbers.scatter()) * (rain ? rainShare : 1));
    const lot = { number, picked: firstDay + day, plot: name, remark: rain ? "rain" : "" } as const;
    if (number > lotCount - openLots) return { ...lot, fresh, finished: null };
    return { ...lot, ...written(number, fresh, finished) };
  });
}

/** The weights as they stand in the book. */
function written(number: number, fresh: number, finished: number): { fresh: number; finished: number } {
  if (number === planted.tooHigh) return { fresh, finished: tenths(finished + 118) };
  if (number === planted.tooLow) return { fresh, finished: tenths(finished - 100) };
  if (number === planted.swapped) return { fresh: finished, finished: fresh };
  return { fresh, finished };
}

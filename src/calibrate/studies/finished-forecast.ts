import { finishedForecast } from "../../core/season/finished-forecast";
import { counted, mean, share } from "../columns";
import type { Random } from "../random";
import type { Situation, Study } from "../study";

/** How far the finished weight of a lot scatters, in grams, by its fresh weight. */
type Scatter = (fresh: number) => number;

/** By the same 4 % whatever the size, or by less in large lots, 4 % at 1000 g. */
const scatters: readonly Scatter[] = [(fresh) => 0.04 * 0.22 * fresh, (fresh) => 0.04 * 0.22 * Math.sqrt(1000 * fresh)];

const finishedOf = (random: Random, fresh: number, scatter: Scatter): number =>
  0.22 * fresh + scatter(fresh) * random.normal();

const column = (values: readonly number[]): number[][] => values.map((value) => [value]);

/** Past lots and a new one: within their range, as large as the largest, half as large again, twice as large. */
const situation = (lots: number): Situation => ({
  label: `${lots}`,
  trial: (random) => {
    const fresh = Array.from({ length: lots }, () => random.between(400, 1600));
    const largest = Math.max(...fresh);
    const smallest = Math.min(...fresh);
    const sizes = [random.between(smallest, largest), largest, 1.5 * largest, 2 * largest];
    return scatters.flatMap((scatter) => {
      const finished = fresh.map((one) => finishedOf(random, one, scatter));
      return sizes.map((size) => {
        const truth = finishedOf(random, size, scatter);
        const [low, , high] = finishedForecast.calculate(size, column(fresh), column(finished), 0.95) as Three;
        return counted(low <= truth && truth <= high);
      });
    });
  },
});

type Three = [number, number, number];

/** How much wider the range is than the usual scatter would need if it were known: 2 × 1.96 of it. */
const width = (lots: number): Situation => ({
  label: `${lots}`,
  trial: (random) => {
    const fresh = Array.from({ length: lots }, () => random.between(400, 1600));
    const size = random.between(Math.min(...fresh), Math.max(...fresh));
    return scatters.map((scatter) => {
      const finished = fresh.map((one) => finishedOf(random, one, scatter));
      const [low, , high] = finishedForecast.calculate(size, column(fresh), column(finished), 0.95) as Three;
      return (high - low) / (2 * 1.959_964 * scatter(size));
    });
  },
});

const sizes = ["within the past", "the largest", "1.5 times the largest", "twice the largest"];
const kinds = ["alike in percent", "large ones less"];
const counts = [3, 4, 5, 6, 8, 12, 20, 40];

export const finishedForecastStudy: Study = {
  functions: ["FINISHEDFORECAST"],
  seed: 20_261_204,
  says: [
    "Past lots of 400 to 1600 g of fresh leaf with an outturn of 22 %, whose finished weights scatter normally: all lots alike, by 4 %, or large lots less, the variance growing with the weight, by 4 % at 1000 g. The range is asked for with a confidence of 0.95, for a new lot of a size within that of the past ones, of the size of the largest, and of one and a half times and twice that size.",
    "The range is meant to hold in at least 95 of 100 whichever of the two is true. It is wider than needed where the other one is.",
  ],
  tables: [
    {
      title: "How often the range of 95 % holds the lot",
      rowsAre: "past lots",
      columns: kinds.flatMap((kind) => sizes.map((size) => share(`${kind}: ${size}`))),
      trials: 20_000,
      situations: counts.map(situation),
    },
    {
      title: "How wide the range is, where 1 would do if outturn and scatter were known",
      rowsAre: "past lots",
      columns: kinds.map(mean),
      trials: 5_000,
      situations: counts.map(width),
    },
  ],
  picture: {
    title: "How often a range of 95 % holds the lot",
    table: 0,
    columns: ["within the past", "twice the largest"].flatMap((size) => kinds.map((kind) => `${kind}: ${size}`)),
    asked: 95,
    from: 90,
  },
  quotes: (at) => {
    const cells = (lots: readonly number[], ...which: string[]): number[] =>
      lots.flatMap((count) => kinds.flatMap((kind) => which.map((size) => at(0, `${count}`, `${kind}: ${size}`))));
    const range = (values: readonly number[]): string =>
      `${Math.min(...values).toFixed(1)} to ${Math.max(...values).toFixed(1)}`;
    const width = (count: number): string => {
      const times = kinds.map((kind) => at(1, `${count}`, kind));
      return `${(Math.floor(10 * Math.min(...times)) / 10).toFixed(1)} to ${(Math.ceil(10 * Math.max(...times)) / 10).toFixed(1)} times`;
    };
    const few = counts.filter((count) => count < 8);
    const many = counts.filter((count) => count >= 8);
    const inside = sizes.slice(0, 2);
    const beyond = sizes.slice(2);
    return [
      {
        on: "FINISHEDFORECAST",
        words: `From 8 past lots on, for leaf within their size, it held ${range(cells(many, ...inside))} of 100 lots`,
      },
      {
        on: "FINISHEDFORECAST",
        words: `With 3 to 6 it held ${range(cells(few, ...inside))} of 100, and for a lot of one and a half times or twice the largest ${range(cells(counts, ...beyond))}`,
      },
      {
        on: "FINISHEDFORECAST",
        words: `with three past lots it is ${width(3)} as wide as it would have to be if outturn and scatter were known, with eight ${width(8)}, with forty ${width(40)}`,
      },
    ];
  },
};

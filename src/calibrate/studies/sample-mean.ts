import { sampleMean } from "../../core/uncertainty/sample-mean";
import { counted, inWords, share } from "../columns";
import type { Random } from "../random";
import type { Situation, Study } from "../study";

const confidence = 0.95;

/** Readings about a mean of 0, with a standard deviation of 1. */
const ways: Readonly<Record<string, (random: Random) => number>> = {
  "as a bell": (random) => random.normal(),
  evenly: (random) => Math.sqrt(12) * (random.uniform() - 0.5),
  "to one side": (random) => -Math.log(1 - random.uniform()) - 1,
};

const taken = (random: Random, way: (random: Random) => number, count: number): number[] =>
  Array.from({ length: count }, () => way(random));

const holds = (count: number): Situation => ({
  label: String(count),
  trial: (random) =>
    Object.values(ways).map((way) => {
      const [, low, high] = sampleMean.calculate(taken(random, way, count), undefined, confidence) as number[];
      return counted((low as number) <= 0 && 0 <= (high as number));
    }),
});

const halfWidth = 0.5;

/** As many readings as the first ones ask for: is the range of all of them as narrow as was asked. */
const narrow = (first: number): Situation => ({
  label: String(first),
  trial: (random) => {
    const readings = taken(random, (random) => random.normal(), first);
    const needed = sampleMean.calculate(readings, halfWidth, confidence)[6] as number;
    const all = [...readings, ...taken(random, (random) => random.normal(), Math.max(0, needed - first))];
    const [mean, , high] = sampleMean.calculate(all, undefined, confidence) as [number, number, number];
    return [counted(high - mean <= halfWidth * (1 + 1e-12))];
  },
});

export const sampleMeanStudy: Study = {
  functions: ["SAMPLEMEAN"],
  seed: 20_261_126,
  says: [
    "Readings that scatter as a bell does, evenly between two ends, or to one side with a long tail, and whether the range of 95 % holds the mean that they were drawn about. The rule takes a bell for granted; readings of another shape come close to it as they become more.",
    "Then as many readings are taken as the first ones ask for, to know the mean to half of the scatter. What is needed is worked out from the scatter seen, and where that happened to be small, too few are asked for.",
  ],
  tables: [
    {
      title: "The range of 95 % holds the mean",
      rowsAre: "readings",
      columns: Object.keys(ways).map((way) => share(`scattered ${way}`)),
      trials: 20_000,
      situations: [2, 3, 5, 10, 20].map(holds),
    },
    {
      title: "With as many readings as were asked for, the range is narrow enough",
      rowsAre: "readings at first",
      columns: [share("narrow enough")],
      trials: 5_000,
      situations: [3, 5, 10, 20].map(narrow),
    },
  ],
  picture: {
    title: "How often the range of 95 % holds the mean",
    table: 0,
    columns: Object.keys(ways).map((way) => `scattered ${way}`),
  },
  quotes: (at) => {
    const held = (count: number, way: string) => inWords(at(0, String(count), `scattered ${way}`));
    const narrowed = (first: number) => inWords(at(1, String(first), "narrow enough"));
    return [
      {
        on: "SAMPLEMEAN",
        words: `a range of 95 % held the true mean in ${held(5, "as a bell")} of 100 when five readings scattered as a bell does, in ${held(5, "evenly")} when they scattered evenly between two ends, and in ${held(5, "to one side")} with a long tail to one side`,
      },
      {
        on: "SAMPLEMEAN",
        words: `three readings at first made the range narrow enough in ${narrowed(3)} of 100, five in ${narrowed(5)} and ten in ${narrowed(10)}`,
      },
    ];
  },
};

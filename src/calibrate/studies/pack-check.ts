import { packCheck } from "../../core/packing/pack-check";
import { counted, inWords, share } from "../columns";
import type { Situation, Study } from "../study";

const nominal = 50;
const tolerance = 4.5;
const scatter = 0.3;
const [large, small] = [1000, 80] as const;

const counts = [5, 10, 20, 30, 50] as const;

/** By how many standard deviations of one fill the fills of the whole lot lie below the nominal weight. */
const shorts = [0, 0.25, 0.5, 1] as const;
const named = (short: number): string => (short === 0 ? "at the nominal weight" : `${short} s below it`);

const weighed = (count: number, packages: number): Situation => ({
  label: String(count),
  trial: (random) =>
    shorts.map((short) => {
      const netWeights = Array.from({ length: count }, () => nominal + scatter * (random.normal() - short));
      const [verdict] = packCheck.calculate(netWeights, nominal, tolerance, packages, 0.025);
      return counted(String(verdict) === "mean below the limit");
    }),
});

/** Fills scatter to both sides alike, so that this is known; of 5000 trials a share lies beside it by 2.8 at the most. */
const isHalf = (of100: number): boolean => Math.abs(of100 - 50) < 2.8;

export const packCheckStudy: Study = {
  functions: ["PACKCHECK"],
  seed: 20_261_127,
  says: [
    "A lot of 1000 packages, and then one of 80, of which some are weighed. The fills scatter as a bell does, by s, and lie at the nominal weight in the mean, or below it. How often the verdict is “mean below the limit”: of a lot that is right, that is a false alarm, and of one that is short, the check has seen it. The shares are the same whatever s is, as long as no single package is short by the tolerance.",
    "Of 100 packages and more the limit gives way for those that were not weighed. Below that it is the nominal weight itself, and the mean of a few lies below it as often as not.",
  ],
  tables: [
    {
      title: "Mean below the limit, some of 1000 weighed",
      rowsAre: "weighed",
      columns: shorts.map((short) => share(named(short))),
      trials: 20_000,
      situations: counts.map((count) => weighed(count, large)),
    },
    {
      title: "Mean below the limit, some of 80 weighed",
      rowsAre: "weighed",
      columns: shorts.map((short) => share(named(short))),
      trials: 5_000,
      situations: [5, 10, 20, 40].map((count) => weighed(count, small)),
    },
  ],
  picture: {
    title: "How often the mean is found below the limit, where it is below the nominal weight",
    table: 0,
    columns: shorts.slice(1).map(named),
  },
  quotes: (at) => {
    const found = (count: number, short: (typeof shorts)[number], table = 0) =>
      inWords(at(table, String(count), named(short)));
    // The most of them, and not a little less.
    const falseAlarms = Math.ceil(10 * Math.max(...counts.map((count) => at(0, String(count), named(0))))) / 10;
    const ofRight = at(1, "10", named(0));
    return [
      {
        on: "PACKCHECK",
        words: `of 100 large lots that are right, ${falseAlarms} or fewer are said to be short; of 100 whose mean lies half the scatter of a fill below the nominal weight, ten weighed packages find ${found(10, 0.5)}, twenty ${found(20, 0.5)} and fifty ${found(50, 0.5)}`,
      },
      {
        on: "PACKCHECK",
        words: `the mean of ten weighed lies below it in ${isHalf(ofRight) ? "half" : `${inWords(ofRight)} of 100`} of the lots that are exactly right`,
      },
    ];
  },
};

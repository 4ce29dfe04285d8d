import { packCheck } from "../../core/packing/pack-check";
import { counted, share } from "../columns";
import type { Situation, Study } from "../study";

const nominal = 50;
const tolerance = 4.5;
const scatter = 0.3;
const packages = 1000;

/** By how many standard deviations of one fill the fills of the whole lot lie below the nominal weight. */
const shorts = [0, 0.25, 0.5, 1] as const;
const named = (short: number): string => (short === 0 ? "at the nominal weight" : `${short} s below it`);

const weighed = (count: number): Situation => ({
  label: String(count),
  trial: (random) =>
    shorts.map((short) => {
      const netWeights = Array.from({ length: count }, () => nominal + scatter * (random.normal() - short));
      const [verdict] = packCheck.calculate(netWeights, nominal, tolerance, packages, 0.025);
      return counted(String(verdict) === "mean below the limit");
    }),
});

export const packCheckStudy: Study = {
  functions: ["PACKCHECK"],
  seed: 20_261_127,
  says: [
    "A lot of 1000 packages of which some are weighed. The fills scatter as a bell does, by s, and lie at the nominal weight in the mean, or below it. How often the verdict is “mean below the limit”: of a lot that is right, that is a false alarm, and of one that is short, the check has seen it. The shares are the same whatever s is, as long as no single package is short by the tolerance.",
  ],
  tables: [
    {
      title: "Mean below the limit",
      rowsAre: "weighed",
      columns: shorts.map((short) => share(named(short))),
      trials: 20_000,
      situations: [5, 10, 20, 30, 50].map(weighed),
    },
  ],
  picture: {
    title: "How often the mean is found below the limit, where it is below the nominal weight",
    table: 0,
    columns: shorts.slice(1).map(named),
  },
  quotes: () => [],
};

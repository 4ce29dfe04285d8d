import { budCount } from "../../core/yields/bud-count";
import { counted, inWords, share } from "../columns";
import type { Situation, Study } from "../study";

/** What a bud weighs in the mean, in grams, and how far one bud scatters about that. */
const [oneBud, scatter] = [0.09, 0.027] as const;
const buds = 100;
const wanted = 1500;

/** By how much of itself the mean weight of a bud differs from one spot of the basket to the next. */
const baskets: Readonly<Record<string, number>> = { "basket well mixed": 0, "basket mixed by 3 %": 0.03 };

/** Samples of a hundred buds; where a part of the basket alone is sampled, its spot is that of all of them. */
const sampled = (samples: number): Situation => ({
  label: String(samples),
  trial: (random) => {
    const found = (spots: number, isOneSpot: boolean): number => {
      const spot = spots * random.normal();
      const weights = Array.from({ length: samples }, () => {
        const here = oneBud * (1 + (isOneSpot ? spot : spots * random.normal()));
        return buds * here + Math.sqrt(buds) * scatter * random.normal();
      });
      const counts = weights.map(() => buds);
      const [, low, , high] = budCount.calculate(counts, weights, wanted, undefined, 0.95);
      const truth = wanted / oneBud;
      return counted((low as number) <= truth && (typeof high !== "number" || truth <= high));
    };
    return [...Object.values(baskets).map((spots) => found(spots, false)), found(0.03, true)];
  },
});

const oneSpot = "all from one spot of it";

export const budCountStudy: Study = {
  functions: ["BUDCOUNT"],
  seed: 20_261_129,
  says: [
    "Samples of a hundred buds from a basket whose buds weigh 0.09 g in the mean and scatter by 0.027 g, and whether the range of 95 % holds the number of buds in 1500 g. The basket is well mixed, or its buds weigh 3 % more or less from spot to spot: then each sample comes from a spot of its own, or all of them from the same one.",
  ],
  tables: [
    {
      title: "The range of 95 % holds the true number",
      rowsAre: "samples",
      columns: [...Object.keys(baskets), oneSpot].map(share),
      trials: 5_000,
      situations: [2, 3, 4, 6, 10].map(sampled),
    },
  ],
  picture: {
    title: "How often the range of 95 % holds the true number of buds",
    table: 0,
    columns: [...Object.keys(baskets), oneSpot],
  },
  quotes: (at) => {
    const held = (column: string): string => inWords(at(0, "4", column));
    return [
      {
        on: "BUDCOUNT",
        words: `with four samples of a hundred a range of 95 % held the true number in ${held("basket well mixed")} of 100 where the basket was well mixed, and in ${held(oneSpot)} where its buds weigh 3 % more or less from spot to spot and all samples came from one`,
      },
    ];
  },
};

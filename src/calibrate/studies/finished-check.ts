import { dryRecovery } from "../../core/yields/dry-recovery";
import { finishedCheck } from "../../core/yields/finished-check";
import { counted, inWords, share } from "../columns";
import type { Random } from "../random";
import type { Situation, Study } from "../study";

interface Readings {
  readonly freshWeight: number;
  readonly freshMoisture: number;
  readonly finishedWeight: number;
  readonly finishedMoisture: number;
}

interface Farm {
  readonly freshMoistureError: number;
  /** How far the true losses of good lots scatter about 4 %. */
  readonly lossScatter: number;
  readonly pastLots: number;
}

const farm: Farm = { freshMoistureError: 0.01, lossScatter: 0.01, pastLots: 20 };
const points = (share: number): string => `${100 * share} ${share === 0.01 ? "point" : "points"}`;

const weightError = 0.3;
const finishedMoistureError = 0.003;

/** What is read of a lot that loses what good lots lose, and an extra share of what is left. */
function lot(random: Random, { freshMoistureError, lossScatter }: Farm): (extra: number) => Readings {
  const fresh = random.between(600, 1500);
  const loss = Math.max(0, 0.04 + lossScatter * random.normal());
  const finished = (fresh * (1 - 0.76) * (1 - loss)) / (1 - 0.045);
  const [ofFresh, ofMoisture, ofFinished, ofFinishedMoisture] = [1, 2, 3, 4].map(random.normal) as Four;
  return (extra) => ({
    freshWeight: fresh + weightError * ofFresh,
    freshMoisture: 0.76 + freshMoistureError * ofMoisture,
    finishedWeight: finished * (1 - extra) + weightError * ofFinished,
    finishedMoisture: 0.045 + finishedMoistureError * ofFinishedMoisture,
  });
}

type Four = [number, number, number, number];

/** 1 less DRYRECOVERY, as a maker works it out for a past lot. */
const ownLoss = ({ freshWeight, freshMoisture, finishedWeight, finishedMoisture }: Readings): number =>
  1 - dryRecovery.calculate(freshWeight, freshMoisture, finishedWeight, finishedMoisture, 0, undefined);

type Limits = readonly [low: number, high: number | undefined];
type Recipe = (losses: readonly number[]) => Limits;

const byMean: Recipe = (losses) => {
  const mean = Math.max(0, losses.reduce((sum, loss) => sum + loss, 0) / losses.length);
  return [mean, mean];
};
const byExtremes: Recipe = (losses) => [Math.max(0, Math.min(...losses)), Math.max(...losses)];

const verdict = (readings: Readings, [low, high]: Limits, freshMoistureError: number): string => {
  const { freshWeight, freshMoisture, finishedWeight, finishedMoisture } = readings;
  return String(
    finishedCheck.calculate(
      freshWeight,
      freshMoisture,
      finishedWeight,
      finishedMoisture,
      0,
      undefined,
      low,
      high,
      weightError,
      freshMoistureError,
      finishedMoistureError,
    ),
  );
};

const extras = [0.05, 0.1, 0.15, 0.2] as const;
const more = "more lost than expected";

/** A book of past lots gives the limits; a good lot, and the same lot with more lost, are judged by them. */
function situation(label: string, recipe: Recipe, changed: Partial<Farm> = {}): Situation {
  const here = { ...farm, ...changed };
  return {
    label,
    trial: (random) => {
      const losses = Array.from({ length: here.pastLots }, () => ownLoss(lot(random, here)(0)));
      const limits = recipe(losses);
      const today = lot(random, here);
      const says = (extra: number) => verdict(today(extra), limits, here.freshMoistureError);
      const good = says(0);
      return [
        counted(good === more),
        counted(good !== more && good !== "agrees"),
        ...extras.map((extra) => counted(says(extra) === more)),
      ];
    },
  };
}

const columns = [
  share("good lot: more lost"),
  share("good lot: less lost"),
  ...extras.map((extra) => share(`${Math.round(100 * extra)} % more lost: found`)),
];

const mistakes = [0.05, 0.1, 0.2, 0.5] as const;

/** Without losses of one's own: what a weight that is too high is told by. */
const withoutLosses = (freshMoistureError: number): Situation => ({
  label: points(freshMoistureError),
  trial: (random) => {
    const today = lot(random, { ...farm, freshMoistureError })(0);
    return [0, ...mistakes].map((mistake) => {
      const readings = { ...today, finishedWeight: today.finishedWeight * (1 + mistake) };
      return counted(verdict(readings, [0, undefined], freshMoistureError) !== "agrees");
    });
  },
});

export const finishedCheckStudy: Study = {
  functions: ["FINISHEDCHECK", "FINISHEDBAND"],
  seed: 20_261_201,
  says: [
    "Lots of 600 to 1500 g of fresh leaf at 76 %, finished at 4.5 %, of which good ones lose 4 % of the dry matter, scattering by 1 point (one standard deviation) from lot to lot. Weights are read with an error of 0.3 g, the finished moisture with 0.3 points, the fresh moisture with one point; the same errors are stated to the function. A book of past good lots, read with the same errors, gives lowLoss and highLoss; then a new lot is judged.",
    "The mean of the own losses as both limits counts the errors of a moisture once, in the band. Their smallest and largest hold those errors already, and the band adds them again: fewer good lots are called wrong, and far fewer wrong ones are found.",
  ],
  tables: [
    {
      title: "Two recipes for lowLoss and highLoss",
      rowsAre: "recipe and past lots",
      columns,
      trials: 10_000,
      situations: [
        ...[12, 20, 40].map((pastLots) => situation(`mean, ${pastLots} lots`, byMean, { pastLots })),
        ...[12, 20, 40].map((pastLots) => situation(`extremes, ${pastLots} lots`, byExtremes, { pastLots })),
      ],
    },
    {
      title: "The mean of 20 lots, where the fresh moisture is read better or worse",
      rowsAre: "error of the fresh moisture",
      columns,
      trials: 10_000,
      situations: [0.003, 0.005, 0.01, 0.02].map((freshMoistureError) =>
        situation(points(freshMoistureError), byMean, { freshMoistureError }),
      ),
    },
    {
      title: "The mean of 20 lots, where true losses scatter less or more",
      rowsAre: "scatter of the true losses",
      columns,
      trials: 10_000,
      situations: [0, 0.01, 0.02, 0.03].map((lossScatter) => situation(points(lossScatter), byMean, { lossScatter })),
    },
    {
      title: "Without highLoss and lowLoss: more dry matter out than came in",
      rowsAre: "error of the fresh moisture",
      columns: [
        share("good lot: said so"),
        ...mistakes.map((mistake) => share(`weight ${100 * mistake} % too high: found`)),
      ],
      trials: 10_000,
      situations: [0.003, 0.005, 0.01, 0.02].map(withoutLosses),
    },
  ],
  picture: {
    title: "Lots called “more lost than expected”, by two recipes for the limits",
    table: 0,
    columns: ["good lot: more lost", "5 % more lost: found", "10 % more lost: found", "20 % more lost: found"],
  },
  quotes: (at) => {
    const cell = (column: string) => inWords(at(0, "mean, 20 lots", column));
    const better = inWords(at(1, "0.5 points", "10 % more lost: found"));
    const both = Math.round(
      at(0, "mean, 20 lots", "good lot: more lost") + at(0, "mean, 20 lots", "good lot: less lost"),
    );
    const extremes = Math.round(at(0, "extremes, 20 lots", "10 % more lost: found"));
    const words = `a good lot was called wrong in ${both} of 100, a lot that lost 10 % more was found in ${cell("10 % more lost: found")} of 100 and one that lost 15 % more in ${cell("15 % more lost: found")}; with half a point of error, 10 % were found in ${better}. The smallest and the largest of the losses as limits would count the errors twice and find ${extremes}`;
    return [
      { on: "FINISHEDCHECK", words },
      { on: "FINISHEDBAND", words },
    ];
  },
};

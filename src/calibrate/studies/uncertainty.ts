import type { FunctionSpec } from "../../core/define";
import { freshMoisture } from "../../core/moisture/fresh-moisture";
import { moistureNow } from "../../core/moisture/moisture-now";
import { ovenMoisture } from "../../core/moisture/oven-moisture";
import { uncertaintyOf } from "../../core/uncertainty/uncertainty";
import { finishedWeight } from "../../core/yields/finished-weight";
import { leafCost } from "../../core/yields/leaf-cost";
import { outturn } from "../../core/yields/outturn";
import { counted, inWords, share, usual } from "../columns";
import type { Situation, Study } from "../study";

const functions: readonly FunctionSpec[] = [
  finishedWeight,
  freshMoisture,
  moistureNow,
  ovenMoisture,
  outturn,
  leafCost,
];
const uncertainty = uncertaintyOf(() => functions);

/** True values and the standard uncertainties with which they are read. */
const inputs: readonly (readonly [spec: FunctionSpec, values: readonly number[], errors: readonly number[]])[] = [
  [finishedWeight, [900, 0.76, 0.045, 0.06], [0.5, 0.01, 0.003, 0.01]],
  [freshMoisture, [900, 216, 0.045, 0.06], [0.5, 0.3, 0.003, 0.01]],
  [moistureNow, [320, 0.72, 190, 0.03], [0.5, 0.01, 0.5, 0.005]],
  [ovenMoisture, [35, 31.4, 30], [0.01, 0.01, 0.01]],
  [outturn, [900, 216], [0.5, 0.3]],
  [leafCost, [90, 0.9, 0.216, 60], [2, 0.0005, 0.0003, 10]],
];

type Rows = readonly (readonly [string, number, number, number])[];

const covered = ([spec, values, errors]: (typeof inputs)[number]): Situation => ({
  label: spec.id,
  trial: (random) => {
    const read = values.map((value, place) => value + (errors[place] as number) * random.normal());
    const [[, result, stated]] = uncertainty.calculate(spec.id, read, errors) as unknown as [Rows[number]];
    const error = Math.abs(result - (spec.calculate(...values) as number));
    return [counted(error <= stated), counted(error <= 2 * stated), (error / stated) ** 2];
  },
});

/** Which reading has the largest share, in a kitchen of any kind. */
const largest = (label: string, moistureErrors: readonly [number, number]): Situation => ({
  label,
  trial: (random) => {
    const values = [random.between(300, 3000), random.between(0.72, 0.8), random.between(0.03, 0.07)];
    const errors = [random.between(0.3, 5), random.between(...moistureErrors), random.between(0.002, 0.01)];
    const [, weight, moisture, finished] = uncertainty.calculate("FINISHEDWEIGHT", values, errors) as unknown as Rows;
    const [ofWeight, ofMoisture, ofFinished] = [weight, moisture, finished].map((row) => row?.[3] ?? 0) as Three;
    return [counted(ofMoisture > ofWeight && ofMoisture > ofFinished), counted(ofMoisture > 0.9), ofWeight];
  },
});

type Three = [number, number, number];

export const uncertaintyStudy: Study = {
  functions: ["UNCERTAINTY"],
  seed: 20_261_207,
  says: [
    "True values of a lot of an invented farm, read with normal errors as large as the standard uncertainties that are stated: 900 g ± 0.5 g of fresh leaf at 76 ± 1 %, finished at 4.5 ± 0.3 %, 6 ± 1 % lost; 320 g at 72 ± 1 % fired to 190 g, 3 ± 0.5 % lost; an oven dish of 30 g with 5 g of leaf, each weighing ± 0.01 g; leaf at 90 ± 2 a kilogram and other cost of 60 ± 10. What counts is how far the result lies from that of the true values.",
    "Then which reading has the largest share in the doubt about FINISHEDWEIGHT: 300 to 3000 g of leaf read to 0.3 to 5 g, at 72 to 80 %, finished at 3 to 7 % read to 0.2 to 1 point, and the fresh moisture read as each row says.",
  ],
  tables: [
    {
      title: "How often a result lies within the error that is stated",
      rowsAre: "function",
      columns: [share("within it"), share("within twice"), usual("error, times the stated one")],
      trials: 5_000,
      situations: inputs.map(covered),
    },
    {
      title: "FINISHEDWEIGHT: where the doubt comes from",
      rowsAre: "error of the fresh moisture",
      columns: [
        share("the fresh moisture has the largest share"),
        share("it has more than nine tenths"),
        share("mean share of the fresh weight"),
      ],
      trials: 5_000,
      situations: [
        largest("0.2 to 0.5 points", [0.002, 0.005]),
        largest("0.5 to 1 points", [0.005, 0.01]),
        largest("1 to 3 points", [0.01, 0.03]),
      ],
    },
  ],
  picture: {
    title: "How often an error lies within the stated one, and within twice as much",
    table: 0,
    columns: ["within it", "within twice"],
  },
  quotes: (at) => {
    const range = (column: string): string => {
      const values = inputs.map(([{ id }]) => Math.round(at(0, id, column)));
      return `${Math.min(...values)} to ${Math.max(...values)}`;
    };
    const moisture = (row: string) => inWords(at(1, row, "the fresh moisture has the largest share"));
    return [
      {
        on: "UNCERTAINTY",
        words: `${range("within it")} of 100 results lie within one such error of the truth, ${range("within twice")} within two`,
      },
      {
        on: "UNCERTAINTY",
        words: `the moisture of the fresh leaf in ${moisture("0.5 to 1 points")} of 100 kitchens where that is read to half a point or one, and in ${moisture("0.2 to 0.5 points")} where it is read more finely`,
      },
    ];
  },
};

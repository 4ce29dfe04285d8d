import { meanAndScatter } from "../../core/numeric/mean-and-scatter";
import { packPlan } from "../../core/packing/pack-plan";
import { counted, inWords, share } from "../columns";
import type { Situation, Study } from "../study";

const nominal = 50;
const scatter = 0.3;
const asked = [0.9, 0.95, 0.99] as const;
const named = (confidence: number): string => `${Math.round(100 * confidence)} % asked for`;

/** Fills are weighed, their scatter is typed, and one package more is filled to what the plan says. */
const weighed = (fills: number): Situation => ({
  label: String(fills),
  trial: (random) => {
    const list = Array.from({ length: fills }, () => nominal + scatter * random.normal());
    const { scatter: seen } = meanAndScatter(list);
    const next = scatter * random.normal();
    return asked.map((confidence) => {
      const rows = packPlan.calculate(1000, [nominal], undefined, undefined, undefined, seen, confidence, undefined);
      const [, fill] = rows[0] as [number, number];
      return counted(fill + next >= nominal);
    });
  },
});

export const packPlanStudy: Study = {
  functions: ["PACKPLAN"],
  seed: 20_261_130,
  says: [
    "Packages of 50 g whose fills scatter as a bell does, about the fill that was aimed at. So many fills are weighed, their scatter is typed, and a package is filled by the plan: how often it holds its nominal weight. What few fills show of the scatter is off by chance, and the margin with it.",
  ],
  tables: [
    {
      title: "The package holds its nominal weight",
      rowsAre: "fills weighed",
      columns: asked.map((confidence) => share(named(confidence))),
      trials: 20_000,
      situations: [3, 5, 10, 20, 50].map(weighed),
    },
  ],
  picture: {
    title: "How often a package holds its nominal weight",
    table: 0,
    columns: asked.map(named),
  },
  quotes: (at) => {
    const held = (fills: number): string => inWords(at(0, String(fills), named(0.95)));
    return [
      {
        on: "PACKPLAN",
        words: `where 95 % was asked for, ${held(5)} of 100 packages held it with the scatter of five fills, ${held(10)} with that of ten and ${held(50)} with that of fifty`,
      },
    ];
  },
};

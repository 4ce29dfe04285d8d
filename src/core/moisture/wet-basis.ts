import { defineFunction, exactly, type FunctionPage, measured } from "../define";
import { dryBasisMoisture, moisture, within } from "../quantities";
import { foodBalanceNotes } from "../sources";
import { percent, step } from "../working";

/** Up to 25, 96.2 % on wet basis: no leaf holds more, and 300 typed for 300 % has to be caught. */
const givenDryBasis = within(dryBasisMoisture, { atLeast: 0, atMost: 25 }, "from 0 to 25 (300% or 3)");

/** Moisture on wet basis from dry basis, M = X / (1 + X). Dry basis from 0 to 25. */
export const wetBasis = defineFunction({
  id: "WETBASIS",
  group: "moisture",
  parameters: [measured("dryBasis", givenDryBasis)],
  result: { shape: "cell", quantity: moisture },
  smooth: true,
  calculate: (dryBasis): number => dryBasis / (1 + dryBasis),
});

export const wetBasisPage = {
  summary: "Moisture on wet basis, the trade's usual figure, from moisture on dry basis.",
  parameters: { dryBasis: "water for each unit of dry matter; 300 % or 3 is possible" },
  formula: "M = X / (1 + X)",
  working: (dryBasis: number) => [
    step(
      "water as a share of the whole",
      "X / (1 + X)",
      { X: percent(dryBasis) },
      wetBasis.calculate(dryBasis),
      moisture,
    ),
  ],
  guide: [
    "Drying curves and laboratory papers often state moisture on dry basis. Turn such a figure into wet basis before you give it to any other function here: they all work on wet basis.",
    "Percentages above 100 % are a sign that a figure is on dry basis. One below 100 % may be on either: ask before you trust it, 50 % on dry basis is only 33.3 % on wet basis.",
    "Refused: a negative figure, and one above 25, which is 2500 %. No leaf holds that much water: 300 looks like 300 % typed without its sign.",
  ],
  sources: [{ work: foodBalanceNotes, place: "conversion formula and example 5" }],
  cautions: [],
  examples: [
    { given: [0.6], gives: 0.375, shows: "60 g of water on 100 g of dry matter is 37.5 % of the whole 160 g" },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [0.9],
      expected: 0.4736,
      source: { work: foodBalanceNotes, place: "example 5" },
      tolerance: { absolute: 0.0001 },
      because: "published to four decimals, the last one cut off",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [[[1 / 19], [1 / 9], [0.25], [1 / 3], [1], [1.5], [7 / 3], [3], [77 / 23], [4], [83 / 17]]],
      expected: [[0.05], [0.1], [0.2], [0.25], [0.5], [0.6], [0.7], [0.75], [0.77], [0.8], [0.83]],
      working:
        "water / (water + dry matter): 1/(1 + 19) = 0.05; 1/(1 + 9) = 0.1; 1/(1 + 4) = 0.2; 1/(1 + 3) = 0.25; 1/2 = 0.5; 1.5/2.5 = 0.6; 7/(7 + 3) = 0.7; 3/4 = 0.75; 77/(77 + 23) = 0.77; 4/5 = 0.8; 83/(83 + 17) = 0.83",
      ...exactly,
    },
    {
      status: "exact",
      given: [-0.1],
      expected: { error: "#VALUE!", message: "dryBasis must be from 0 to 25 (300% or 3); got -0.1" },
      working: "there is no leaf with less than no water",
      ...exactly,
    },
    {
      status: "exact",
      given: [300],
      expected: { error: "#VALUE!", message: "dryBasis must be from 0 to 25 (300% or 3); got 300" },
      working: "300 for each 1 would be 30000 %, and 99.67 % of the whole; 300 % is 3",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [25],
      expected: 25 / 26,
      working: "25 / (1 + 25) = 0.9615384615",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

import { defineFunction, exactly, type FunctionPage, measured } from "../define";
import { looseWeight, moisture, weight } from "../quantities";
import { foodBalanceNotes, iowaMoistureBasis } from "../sources";
import { percent, step } from "../working";

/** Weight of the water in leaf, W × M, in the unit of the weight. */
export const water = defineFunction({
  id: "WATER",
  group: "moisture",
  parameters: [measured("weight", weight), measured("moisture", moisture)],
  result: { shape: "cell", quantity: looseWeight },
  smooth: true,
  calculate: (weight, moisture): number => weight * moisture,
});

export const waterPage = {
  summary: "Weight of the water in leaf of a known moisture.",
  parameters: {
    weight: "weight of the leaf on the scale",
    moisture: "moisture of that leaf, wet basis",
  },
  formula: "water = W × M",
  working: (W: number, M: number) => [
    step("the share of the weight that is water", "W × M", { W, M: percent(M) }, water.calculate(W, M), looseWeight),
  ],
  guide: [
    "The water in a charge is what a firing works on. A loss of 30 % of the water is 30 % of this number, never of what the scale shows.",
    "Water and dry matter add up to the weight: WATER and DRYMATTER of the same leaf give what is on the scale. For how much has to go to reach a target, use WATERTOREMOVE, since some water always stays.",
    "Refused: a weight of 0 or below, and a moisture of 100 % or more.",
  ],
  sources: [{ work: iowaMoistureBasis, place: "definition of wet basis" }],
  cautions: [],
  examples: [{ given: [500, 0.6], gives: 300, shows: "500 g at 60 % holds 300 g of water" }],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [10, 0.75],
      expected: 7.5,
      source: { work: foodBalanceNotes, place: "example 6, 10 kg at 75 %" },
      tolerance: { absolute: 1e-9 },
      because: "published exactly",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [650, 0.78],
      expected: 507,
      working: "650 × 0.78 = 507; with 143 g dry: 650",
      ...exactly,
    },
    {
      status: "exact",
      given: [-5, 0.78],
      expected: { error: "#VALUE!", message: "weight must be a weight above 0; got -5" },
      working: "no leaf weighs less than nothing",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

import { defineFunction, exactly, type FunctionPage, measured } from "../define";
import { looseWeight, moisture, weight } from "../quantities";
import { iowaMoistureBasis } from "../sources";

/**
 * Dry matter of leaf, D = W(1 − M), in the unit of the weight.
 * Weight above 0; moisture on wet basis, from 0 up to, not including, 1.
 */
export const dryMatter = defineFunction({
  id: "DRYMATTER",
  group: "moisture",
  parameters: [measured("weight", weight), measured("moisture", moisture)],
  result: { shape: "cell", quantity: looseWeight },
  calculate: (weight: number, moisture: number): number => weight * (1 - moisture),
});

export const dryMatterPage: FunctionPage = {
  summary: "Weight of the dry matter in leaf of a known moisture.",
  parameters: {
    weight: "weight of the leaf on the scale",
    moisture: "moisture of that leaf, wet basis",
  },
  formula: "D = W × (1 − M)",
  guide: [
    "Dry matter is what stays when the last water has gone. It is the same before and after a firing as long as no leaf is taken out, so it is the number to compare when two weighings do not seem to fit.",
  ],
  sources: [{ work: iowaMoistureBasis, place: "definition of wet basis" }],
  cautions: [],
  examples: [{ given: [500, 0.6], gives: 200, shows: "500 g at 60 % holds 200 g of dry matter" }],
  checks: [
    {
      status: "exact",
      given: [650, 0.78],
      expected: 143,
      working: "650 × (1 − 0.78) = 650 × 0.22 = 143",
      ...exactly,
    },
  ],
};

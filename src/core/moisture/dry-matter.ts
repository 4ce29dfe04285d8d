import { defineFunction, exactly, type FunctionPage, measured } from "../define";
import { looseWeight, moisture, weight } from "../quantities";
import { foodBalanceNotes, iowaMoistureBasis } from "../sources";
import { percent, step } from "../working";

/**
 * Dry matter of leaf, D = W(1 − M), in the unit of the weight.
 * Weight above 0; moisture on wet basis, from 0 up to, not including, 1.
 */
export const dryMatter = defineFunction({
  id: "DRYMATTER",
  group: "moisture",
  parameters: [measured("weight", weight), measured("moisture", moisture)],
  result: { shape: "cell", quantity: looseWeight },
  smooth: true,
  calculate: (weight, moisture): number => weight * (1 - moisture),
});

export const dryMatterPage = {
  summary: "Weight of the dry matter in leaf of a known moisture.",
  parameters: {
    weight: "weight of the leaf on the scale",
    moisture: "moisture of that leaf, wet basis",
  },
  formula: "D = W × (1 − M)",
  working: (W: number, M: number) => [
    step(
      "what is not water is dry matter",
      "W × (1 − M)",
      { W, M: percent(M) },
      dryMatter.calculate(W, M),
      looseWeight,
    ),
  ],
  guide: [
    "Dry matter is what stays when the last water has gone. It is the same before and after a firing as long as no leaf is taken out, so it is the number to compare when two weighings do not seem to fit.",
    "When the dry matter after a firing is lower than before, leaf has fallen out, been sifted or been sampled, or one of the two moistures is off. When it is higher, a reading is wrong: drying makes no dry matter.",
    "Refused: a weight of 0 or below, and a moisture of 100 % or more.",
  ],
  sources: [{ work: iowaMoistureBasis, place: "definition of wet basis" }],
  cautions: [],
  examples: [{ given: [500, 0.6], gives: 200, shows: "500 g at 60 % holds 200 g of dry matter" }],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [10, 0.75],
      expected: 2.5,
      source: { work: foodBalanceNotes, place: "example 6, 10 kg at 75 %" },
      tolerance: { absolute: 1e-9 },
      because: "published exactly",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [650, 0.78],
      expected: 143,
      working: "650 × (1 − 0.78) = 650 × 0.22 = 143",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [
        [[900], [755], [480], [204]],
        [[0.765], [0.725], [0.575], [0.045]],
      ],
      expected: [[211.5], [207.625], [204], [194.82]],
      working: "900 × 0.235 = 211.5; 755 × 0.275 = 207.625; 480 × 0.425 = 204; 204 × 0.955 = 194.82",
      ...exactly,
    },
    {
      status: "exact",
      given: [650, 78],
      expected: { error: "#VALUE!", message: "moisture must be from 0 up to, not including, 1 (76% or 0.76); got 78" },
      working: "78 is 7800 %, more water than leaf",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

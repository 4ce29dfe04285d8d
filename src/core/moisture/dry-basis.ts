import { defineFunction, exactly, type FunctionPage, measured } from "../define";
import { dryBasisMoisture, moisture } from "../quantities";
import { foodBalanceNotes } from "../sources";
import { percent, step } from "../working";

/**
 * Moisture on dry basis, X = M / (1 − M): the water for each unit of dry matter.
 * Moisture on wet basis, from 0 up to, not including, 1. The answer may pass 1.
 */
export const dryBasis = defineFunction({
  id: "DRYBASIS",
  group: "moisture",
  parameters: [measured("moisture", moisture)],
  result: { shape: "cell", quantity: dryBasisMoisture },
  smooth: true,
  calculate: (moisture): number => moisture / (1 - moisture),
});

export const dryBasisPage = {
  summary: "Moisture on dry basis: the water for each unit of dry matter.",
  parameters: { moisture: "moisture on wet basis, the trade's usual figure" },
  formula: "X = M / (1 − M)",
  working: (moisture: number) => [
    step(
      "water for each unit of dry matter",
      "M / (1 − M)",
      { M: percent(moisture) },
      dryBasis.calculate(moisture),
      dryBasisMoisture,
    ),
  ],
  guide: [
    "Use it to compare how much water two firings have really taken. Dry matter stays the same while leaf dries, so equal steps on dry basis are equal grams of water. Equal steps on wet basis are not: near the start one point is a lot of water, near the end it is little.",
    "The answer may pass 100 %: fresh leaf holds several times its dry matter in water. Give its cell a percent format.",
    "A moisture of 100 % and more is refused, because such leaf would hold no dry matter to divide by.",
  ],
  sources: [{ work: foodBalanceNotes, place: "conversion formula and example 4" }],
  cautions: [],
  examples: [
    { given: [0.36], gives: 0.5625, shows: "leaf at 36 % holds 56.25 g of water for each 100 g of dry matter" },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [0.85],
      expected: 5.67,
      source: { work: foodBalanceNotes, place: "example 4" },
      tolerance: { absolute: 0.005 },
      because: "published to two decimals",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [[[0.05], [0.1], [0.2], [0.25], [0.5], [0.6], [0.7], [0.75], [0.77], [0.8], [0.83]]],
      expected: [[1 / 19], [1 / 9], [0.25], [1 / 3], [1], [1.5], [7 / 3], [3], [77 / 23], [4], [83 / 17]],
      working:
        "5/95 = 0.0526316; 10/90 = 0.1111111; 20/80 = 0.25; 25/75 = 0.3333333; 50/50 = 1; 60/40 = 1.5; 70/30 = 2.3333333; 75/25 = 3; 77/23 = 3.3478261; 80/20 = 4; 83/17 = 4.8823529",
      ...exactly,
    },
    { status: "exact", exercises: "edge", given: [0], expected: 0, working: "no water: 0 / 1 = 0", ...exactly },
    {
      status: "exact",
      given: [1],
      expected: {
        error: "#VALUE!",
        message: "moisture must be from 0 up to, not including, 1 (76% or 0.76); got 1",
      },
      working: "1 / (1 − 1) divides by nothing",
      ...exactly,
    },
    {
      status: "exact",
      given: [78],
      expected: {
        error: "#VALUE!",
        message: "moisture must be from 0 up to, not including, 1 (76% or 0.76); got 78",
      },
      working: "78 is 7800 %, more water than leaf",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

import { isAbove } from "../comparison";
import { defineFunction, exactly, type FunctionPage, measured, optional } from "../define";
import { mustBe } from "../errors";
import { dryLoss, looseWeight, moisture, mostMoisture, share, weight } from "../quantities";
import { irriMoisture, junshanProcess } from "../sources";
import { percent, step } from "../working";
import { dryMatter } from "./dry-matter";

/**
 * Moisture that fresh leaf must have had, from a finished lot: M = 1 − P(1 − Mp) / (F(1 − ℓ)). Weights in the same
 * unit; ℓ is the share of dry matter lost on the way. With ℓ = 0 the answer is an upper bound.
 */
export const freshMoisture = defineFunction({
  id: "FRESHMOISTURE",
  group: "moisture",
  parameters: [
    measured("freshWeight", weight),
    measured("finishedWeight", weight),
    measured("finishedMoisture", moisture),
    optional("dryLoss", dryLoss, 0),
  ],
  result: { shape: "cell", quantity: moisture },
  smooth: true,
  calculate: (freshWeight, finishedWeight, finishedMoisture, dryLoss): number => {
    const dryShare = dryMatter.calculate(finishedWeight, finishedMoisture) / (freshWeight * (1 - dryLoss));
    if (isAbove(dryShare, 1)) {
      const largest = (freshWeight * (1 - dryLoss)) / (1 - finishedMoisture);
      throw mustBe(
        "finishedWeight",
        { kind: "limit", is: "at most", limit: largest, what: "what fresh leaf without water would give" },
        finishedWeight,
      );
    }
    // Nearly all water rounds to all water, which is no moisture of leaf.
    return Math.min(Math.max(0, 1 - dryShare), mostMoisture);
  },
});

export const freshMoisturePage = {
  summary: "Moisture the fresh leaf must have had, worked back from a finished lot.",
  parameters: {
    freshWeight: "weight of the fresh leaf",
    finishedWeight: "weight of the finished tea made from all of it",
    finishedMoisture: "moisture of the finished tea, wet basis",
    dryLoss: "share of the dry matter lost on the way: sift-outs, samples, dust, breathing",
  },
  formula: "M = 1 − P × (1 − Mp) / (F × (1 − ℓ))",
  working: (F: number, P: number, Mp: number, ℓ: number) => {
    const D = dryMatter.calculate(P, Mp);
    return [
      step("dry matter of the finished tea", "P × (1 − Mp)", { P, Mp: percent(Mp) }, D, looseWeight),
      step(
        "share of the fresh leaf that was dry matter",
        "D / (F × (1 − ℓ))",
        { D, F, ℓ: percent(ℓ) },
        D / (F * (1 - ℓ)),
        share,
      ),
      step(
        "the rest was water",
        "1 − share",
        { share: percent(D / (F * (1 - ℓ))) },
        freshMoisture.calculate(F, P, Mp, ℓ),
        moisture,
      ),
    ];
  },
  guide: [
    "Few makers put fresh leaf in an oven. Your own finished lots tell the moisture instead: work it out for several good lots of the same plot and season, and take the middle as the moisture to assume for the next one.",
    "Without dryLoss the answer is an upper bound: every gram of dry matter that was sifted out, sampled or lost as dust is taken for water. It is still the right figure to plan with, as long as the next lot is sifted in the same way.",
    "Give the share of dry matter lost as dryLoss when you know it, and the answer is the moisture of the leaf itself.",
    "Refused: more finished tea than the fresh leaf could have given if it had held no water at all. Are both weights in the same unit, and not swapped?",
  ],
  sources: [{ work: junshanProcess, place: "2000 g fresh leaf to 500 g finished" }],
  cautions: [],
  examples: [
    { given: [1250, 300, 0.05], gives: 0.772, shows: "1250 g fresh gave 300 g at 5 %: at most 77.2 % fresh" },
    {
      given: [1250, 300, 0.05, 0.04],
      gives: 0.7625,
      shows: "the same lot, with 4 % of the dry matter lost on the way",
    },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [1000, 872, 0.14],
      expected: 0.25,
      source: { work: irriMoisture, place: "worked example, 1000 kg from 25 % to 14 %, read backwards" },
      tolerance: { absolute: 0.0005 },
      because: "half a kilogram of the 872 published makes that much",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [2000, 500, 0.05],
      expected: 0.7625,
      working: "published input: 2000 g fresh, 500 g finished; 500 × 0.95 = 475 g dry; 1 − 475/2000 = 0.7625",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [2000, 500, 0.05, 0.05],
      expected: 0.75,
      working: "2000 × 0.95 = 1900; 1 − 475/1900 = 0.75",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [[[0.95 / 0.25], [0.95 / 0.23], [0.95 / 0.22]], 1, 0.05],
      expected: [[0.75], [0.77], [0.78]],
      working: "3.800, 4.130 and 4.318 kg fresh for each kg at 5 %: 1 − 0.95/3.8 = 0.75, and so on back to 77 and 78 %",
      ...exactly,
    },
    {
      status: "exact",
      given: [500, 2000, 0.05],
      expected: {
        error: "#VALUE!",
        message: "finishedWeight must be at most 526.31, what fresh leaf without water would give; got 2000",
      },
      working: "500 / 0.95 = 526.3157895 g is the most that 500 g could give",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

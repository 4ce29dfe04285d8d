import { saleLimit } from "../cautions";
import { isAbove } from "../comparison";
import { defineFunction, exactly, type FunctionPage, measured, optional } from "../define";
import { mustBe } from "../errors";
import { dryLoss, looseWeight, moisture, mostMoisture, weight } from "../quantities";
import { irriMoisture, junshanProcess, teaWaterLoss } from "../sources";
import { percent, step } from "../working";
import { dryMatter } from "./dry-matter";

/**
 * Moisture of leaf by weight alone, M = 1 − W₀(1 − M₀)(1 − ℓ) / W. Weights in the same unit; ℓ is the share of the
 * dry matter that has been lost since the start. A gain of weight is allowed: leaf takes up water again.
 */
export const moistureNow = defineFunction({
  id: "MOISTURENOW",
  group: "moisture",
  parameters: [
    measured("startWeight", weight),
    measured("startMoisture", moisture),
    measured("weightNow", weight),
    optional("dryLoss", dryLoss, 0),
  ],
  result: { shape: "cell", quantity: moisture },
  smooth: true,
  calculate: (startWeight, startMoisture, weightNow, dryLoss): number => {
    const dryWeight = dryMatter.calculate(startWeight, startMoisture) * (1 - dryLoss);
    const dryShare = dryWeight / weightNow;
    if (isAbove(dryShare, 1))
      throw mustBe("weightNow", { kind: "limit", is: "at least", limit: dryWeight, what: "the dry matter" }, weightNow);
    // Nearly all water rounds to all water, which is no moisture of leaf.
    return Math.min(Math.max(0, 1 - dryShare), mostMoisture);
  },
});

export const moistureNowPage = {
  summary: "How moist the leaf is now, from its weight alone.",
  parameters: {
    startWeight: "weight of the leaf at the start",
    startMoisture: "moisture of the leaf at the start, wet basis",
    weightNow: "weight of the same leaf now",
    dryLoss: "share of the dry matter lost since the start, as dust or sift-outs",
  },
  formula: "M = 1 − W₀ × (1 − M₀) × (1 − ℓ) / W",
  working: (start: number, startMoisture: number, W: number, ℓ: number) => {
    const D = dryMatter.calculate(start, startMoisture) * (1 - ℓ);
    return [
      step(
        "dry matter of the start, less what was lost",
        "W₀ × (1 − M₀) × (1 − ℓ)",
        { "W₀": start, "M₀": percent(startMoisture), ℓ: percent(ℓ) },
        D,
        looseWeight,
      ),
      step(
        "what is not dry matter now is water",
        "1 − D / W",
        { D, W },
        moistureNow.calculate(start, startMoisture, W, ℓ),
        moisture,
      ),
    ];
  },
  guide: [
    "Weigh the leaf, and you know its moisture without an oven: the dry matter has stayed, so what the scale has lost is water. It works at every stage between the first weighing and the last.",
    "Only water may have left between the two weighings. Leaf that was sifted out, sampled or spilt counts as water here and makes the answer too dry. After sifting, begin again from the weight after sifting, or give the share of dry matter that went as dryLoss.",
    "The answer is only as good as the moisture at the start, and the error grows on the way down: an error of one point at 76 % becomes four points near 5 %. Near dryness use an oven.",
    "The leaf may have gained weight: damp air and rain put water back. Refused: a weight now that is below the dry matter, since something other than water has left then.",
  ],
  sources: [{ work: junshanProcess, place: "300 g charge, weight loss of about 30 % in the fixing" }],
  cautions: [saleLimit],
  examples: [
    { given: [520, 0.75, 200], gives: 0.35, shows: "520 g of leaf at 75 % now weighs 200 g" },
    { given: [520, 0.75, 200, 0.02], gives: 0.363, shows: "the same, with 2 % of the dry matter lost as dust" },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [100, 0.78, 55],
      expected: 0.6,
      source: { work: teaWaterLoss, place: "the whole statement: 45 of 100 kg leave" },
      tolerance: { absolute: 1e-9 },
      because: "published exactly",
    },
    {
      status: "published",
      exercises: "calculation",
      given: [1000, 0.25, 872],
      expected: 0.14,
      source: { work: irriMoisture, place: "worked example, 1000 kg from 25 % to 14 %, read backwards" },
      tolerance: { absolute: 0.0005 },
      because: "half a kilogram of the 872 published makes that much",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [300, 0.77, 210],
      expected: 141 / 210,
      working:
        "published input: a 300 g charge loses 30 % of its weight; 300 × 0.23 = 69 g dry, 210 g left; 1 − 69/210 = 0.6714286",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [100, 0.77, [[65, 60]]],
      expected: [[1 - 0.23 / 0.65, 1 - 0.23 / 0.6]],
      working: "losses of 35 and 40 % of the weight: 1 − 23/65 = 0.6461538; 1 − 23/60 = 0.6166667",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [400, 0.7, 500],
      expected: 0.76,
      working: "rained on: 400 × 0.3 = 120 g dry; 1 − 120/500 = 0.76",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [1000, 0.75, 237.5, 0.05],
      expected: 0,
      working: "1000 × 0.25 × 0.95 = 237.5 g dry matter left and nothing else: 0",
      tolerance: { absolute: 1e-12 },
      because: "exact arithmetic; a difference of two equal numbers",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1000, [[0.77], [0.76]], 240 / 0.95],
      expected: [[1 - (230 * 0.95) / 240], [0.05]],
      working:
        "240 g dry at 5 % weigh 252.6316 g; with 230 g dry the same weight is at 1 − 218.5/240 = 0.0895833: one point at 76 % is four near 5 %",
      ...exactly,
    },
    {
      status: "exact",
      given: [426, 0.8, 80],
      expected: { error: "#VALUE!", message: "weightNow must be at least 85.2, the dry matter; got 80" },
      working: "426 × 0.2 = 85.2 g dry, more than the 80 g on the scale",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

import { carbonMonoxide, hotPan } from "../cautions";
import { defineFunction, exactly, type FunctionPage, measured, setting } from "../define";
import { loss, moisture, weight } from "../quantities";
import { junshanProcess, teaWaterLoss } from "../sources";
import { step } from "../working";
import { type LossOf, lossOf, requirePossible, shareLeft } from "./loss-of";
import { readingNumbers, readingSymbols, stepsOfLoss } from "./loss-working";

/**
 * What the scale reads when leaf has lost a share of its water, W(1 − Ml), of its weight, W(1 − l), or points of
 * moisture, W(1 − M)/(1 − M + l). A loss of weight or points cannot pass the moisture.
 */
export const firingTarget = defineFunction({
  id: "FIRINGTARGET",
  group: "targets",
  parameters: [
    measured("weight", weight),
    measured("moisture", moisture),
    setting("loss", loss),
    setting("lossOf", lossOf),
  ],
  result: { shape: "cell", quantity: weight },
  calculate: (weight, moisture, loss, lossOf): number => {
    requirePossible(moisture, loss, lossOf);
    return weight * shareLeft(moisture, loss, lossOf);
  },
});

export const firingTargetPage = {
  summary: "What the scale should read when a charge has lost what it should.",
  parameters: {
    weight: "weight of the charge before firing",
    moisture: "moisture of the charge before firing, wet basis",
    loss: "how much is to be lost: 30 % or 0.3; 30 points are 0.30",
    lossOf: 'what the loss is a share of: "water", "weight", or "points" of moisture',
  },
  formula: "water: W × (1 − M × l); weight: W × (1 − l); points: W × (1 − M) / (1 − M + l)",
  working: (W: number, M: number, l: number, of: LossOf) => [
    ...stepsOfLoss(W, M, l, of),
    step(
      "what the scale reads then",
      readingSymbols[of],
      readingNumbers(W, M, l, of),
      firingTarget.calculate(W, M, l, of),
      weight,
    ),
  ],
  guide: [
    "Take the charge out of the pan when the scale reads this number. Weigh the whole charge, and shake the steam out of it first.",
    "Always say what the loss is of. The same percentage of the water, of the weight and in points of moisture gives three scale readings, and they lie far apart: LOSSMEANINGS shows all three. There is no usual meaning, so none is assumed.",
    "A loss of the water leaves the most on the scale, the same loss of the weight less, and as points of moisture the least.",
    "It holds as long as only water leaves. Dust and broken bits that fall out of the pan make the scale read low while the leaf is still wet.",
    "Refused: a loss of weight or of points that is larger than the moisture, since the leaf does not hold that much water; and a meaning that is left blank.",
  ],
  sources: [{ work: junshanProcess, place: "weight loss of about 30 % in the fixing of a 300 g charge" }],
  cautions: [hotPan, carbonMonoxide],
  examples: [
    { given: [320, 0.75, 0.2, "water"], gives: 272, shows: "20 % of the water off 320 g at 75 %" },
    { given: [320, 0.75, 0.2, "weight"], gives: 256, shows: "20 % of the weight off the same charge" },
    { given: [320, 0.75, 0.25, "points"], gives: 160, shows: "25 points off the same charge, from 75 % to 50 %" },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [100, 0.78, [[0.45, 0.18]], [["weight", "points"]]],
      expected: [[55, 55]],
      source: { work: teaWaterLoss, place: "45 of 100 kg leave on the way from 78 to 60 %, which are 18 points" },
      tolerance: { absolute: 1e-9 },
      because: "published exactly",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [400, 0.75, 0.3, [["water"], ["weight"], ["points"]]],
      expected: [[310], [280], [2000 / 11]],
      working: "400 × (1 − 0.225) = 310; 400 × 0.7 = 280; 400 × 0.25/0.55 = 100/0.55 = 181.8181818",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      idle: ["moisture"],
      given: [300, 0.77, 0.3, "weight"],
      expected: 210,
      working: "published input: 300 g losing 30 % of its weight; 300 × 0.7 = 210",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "input",
      given: [650, 0.78, 0.3, "水分"],
      expected: 497.9,
      working: "650 × (1 − 0.78 × 0.3) = 650 × 0.766 = 497.9, with the meaning written in Chinese",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [400, 0.75, 1, "water"],
      expected: 100,
      working: "all of the water off: 400 × 0.25 = 100 g of dry matter",
      ...exactly,
    },
    {
      status: "common practice",
      exercises: "calculation",
      given: [355, 0.76, 0.3, "water"],
      expected: 274.06,
      fact: "the first firing takes out about 30 % of the water; 355 × (1 − 0.76 × 0.3) = 355 × 0.772 = 274.06",
      ...exactly,
    },
    {
      status: "common practice",
      exercises: "calculation",
      idle: ["moisture"],
      given: [355, 0.76, 0.3, "weight"],
      expected: 248.5,
      fact: "taken for a loss of weight, the first firing would end far lower: 355 × 0.7 = 248.5",
      ...exactly,
    },
    {
      status: "common practice",
      exercises: "calculation",
      given: [355, 0.76, 0.3, "points"],
      expected: 157.8,
      fact: "taken for points of moisture, lower still: 355 × 0.24/0.54 = 85.2/0.54 = 157.7778",
      tolerance: { absolute: 0.05 },
      because: "stated to a tenth of a gram",
    },
    {
      status: "exact",
      given: [400, 0.25, 0.3, "weight"],
      expected: {
        error: "#VALUE!",
        message: "loss must be at most 0.25, the moisture of the leaf, as a loss of weight; got 0.3",
      },
      working: "30 % of 400 g is 120 g; the leaf holds 100 g of water",
      ...exactly,
    },
    {
      status: "exact",
      given: [400, 0.25, 0.3, "points"],
      expected: {
        error: "#VALUE!",
        message: "loss must be at most 0.25, the moisture of the leaf, as a loss of points; got 0.3",
      },
      working: "25 points less 30 points is below nothing",
      ...exactly,
    },
    {
      status: "exact",
      given: [400, 0.75, 30, "water"],
      expected: { error: "#VALUE!", message: "loss must be from 0 to 1 (30% or 0.3); got 30" },
      working: "30 is 3000 %",
      ...exactly,
    },
    {
      status: "exact",
      given: [400, 0.75, 0.3, null],
      expected: { error: "#VALUE!", message: 'lossOf must be one of "water", "weight", "points"; got a blank' },
      working: "310, 280 or 181.8 g: without a meaning there is no telling",
      ...exactly,
    },
    {
      status: "exact",
      given: [400, 0.75, 0.3, "moisture"],
      expected: {
        error: "#VALUE!",
        message: 'lossOf must be one of "water", "weight", "points"; got the text "moisture"',
      },
      working: "a loss of moisture may mean of the water or in points",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

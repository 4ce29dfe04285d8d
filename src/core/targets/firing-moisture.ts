import { hotPan } from "../cautions";
import { defineFunction, exactly, type FunctionPage, measured, setting } from "../define";
import { loss, moisture } from "../quantities";
import { junshanProcess, teaWaterLoss } from "../sources";
import { percent, step } from "../working";
import { type LossOf, lossOf, moistureLeft, requirePossible } from "./loss-of";
import { moistureSymbols } from "./loss-working";

/**
 * Moisture of leaf after a loss: of its water, M(1 − l)/(1 − Ml); of its weight, (M − l)/(1 − l); points, M − l.
 * A loss of weight or points cannot pass the moisture.
 */
export const firingMoisture = defineFunction({
  id: "FIRINGMOISTURE",
  group: "targets",
  parameters: [measured("moisture", moisture), setting("loss", loss), setting("lossOf", lossOf)],
  result: { shape: "cell", quantity: moisture },
  calculate: (moisture, loss, lossOf): number => {
    requirePossible(moisture, loss, lossOf);
    return moistureLeft(moisture, loss, lossOf);
  },
});

export const firingMoisturePage = {
  summary: "Moisture of a charge that has lost a share of its water, weight, or points.",
  parameters: {
    moisture: "moisture of the charge before firing, wet basis",
    loss: "how much is lost: 30 % or 0.3; 30 points are 0.30",
    lossOf: 'what the loss is a share of: "water", "weight", or "points" of moisture',
  },
  formula: "water: M × (1 − l) / (1 − M × l); weight: (M − l) / (1 − l); points: M − l",
  working: (M: number, l: number, of: LossOf) => [
    step(
      "moisture after the loss",
      moistureSymbols[of],
      { M: percent(M), l: percent(l) },
      firingMoisture.calculate(M, l, of),
      moisture,
    ),
  ],
  guide: [
    "Use it to carry the moisture on from one firing to the next: the charge comes out at this moisture, and the next target starts from it. The weight plays no part.",
    "A loss of 30 % of the water lowers the moisture by far less than 30 points, because the leaf gets lighter as well. That surprises many, and it is why the meaning of a loss is never assumed.",
    "When you have weighed the charge, MOISTURENOW tells what the moisture really is. This function tells what it should be.",
    "Refused: a loss of weight or of points that is larger than the moisture, and a meaning that is left blank.",
  ],
  sources: [{ work: junshanProcess, place: "weight loss of about 30 % in the fixing of a 300 g charge" }],
  cautions: [hotPan],
  examples: [
    { given: [0.75, 0.2, "weight"], gives: 0.6875, shows: "leaf at 75 % that has lost 20 % of its weight" },
    { given: [0.75, 0.2, "points"], gives: 0.55, shows: "the same leaf, 20 points down" },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [0.78, 0.45, "weight"],
      expected: 0.6,
      source: { work: teaWaterLoss, place: "the whole statement: 45 of 100 kg leave" },
      tolerance: { absolute: 1e-9 },
      because: "published exactly",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [0.78, 0.3, [["water", "weight", "points"]]],
      expected: [[0.546 / 0.766, 0.48 / 0.7, 0.48]],
      working:
        "0.78 × 0.7 / (1 − 0.234) = 0.546/0.766 = 0.7127937336815; 0.48/0.7 = 0.6857142857143; 0.78 − 0.3 = 0.48",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [0.77, 0.3, "weight"],
      expected: 0.47 / 0.7,
      working: "published input: 30 % of the weight lost from 77 %; (0.77 − 0.3)/0.7 = 0.6714286, or 67.14 %",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "input",
      given: [0.77, [[0.35], [0.4]], "重量"],
      expected: [[0.42 / 0.65], [0.37 / 0.6]],
      working: "published losses: 0.42/0.65 = 0.6461538 and 0.37/0.6 = 0.6166667",
      ...exactly,
    },
    {
      status: "exact",
      given: [0.25, 0.3, "weight"],
      expected: {
        error: "#VALUE!",
        message: "loss must be at most 0.25, the moisture of the leaf, as a loss of weight; got 0.3",
      },
      working: "0.25 − 0.3 is below nothing",
      ...exactly,
    },
    {
      status: "exact",
      given: [0.75, 0.3, "grams"],
      expected: {
        error: "#VALUE!",
        message: 'lossOf must be one of "water", "weight", "points"; got the text "grams"',
      },
      working: "a loss is a share here, never a weight",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

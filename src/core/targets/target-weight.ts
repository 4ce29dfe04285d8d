import { hotPan } from "../cautions";
import { defineFunction, exactly, type FunctionPage, measured, setting } from "../define";
import { dryMatter } from "../moisture/dry-matter";
import { moisture, weight } from "../quantities";
import { irriMoisture } from "../sources";

/**
 * What the scale reads when leaf has reached another moisture and only water has moved:
 * Wt = W(1 − M) / (1 − Mt), in the unit of the weight. A wetter target is allowed.
 * Source: IRRI Rice Knowledge Bank, "Moisture content calculations".
 */
export const targetWeight = defineFunction({
  id: "TARGETWEIGHT",
  group: "targets",
  parameters: [measured("weight", weight), measured("moisture", moisture), setting("targetMoisture", moisture)],
  result: { shape: "cell", quantity: weight },
  calculate: (weight: number, moisture: number, targetMoisture: number): number =>
    dryMatter.calculate(weight, moisture) / (1 - targetMoisture),
});

export const targetWeightPage: FunctionPage = {
  summary: "What the scale should read when leaf has reached a target moisture.",
  parameters: {
    weight: "weight of the leaf now",
    moisture: "moisture of the leaf now, wet basis",
    targetMoisture: "moisture wanted, wet basis",
  },
  formula: "Wt = W × (1 − M) / (1 − Mt)",
  guide: [
    "Put the charge back into the pan until the scale reads this number. It holds as long as only water leaves: take sift-outs and samples off the weight first.",
    "A target wetter than the leaf is allowed, because it restates a weight to a standard moisture.",
  ],
  sources: [{ work: irriMoisture, place: "final weight after drying" }],
  cautions: [hotPan],
  examples: [
    { given: [320, 0.75, 0.6], gives: 200, shows: "320 g at 75 % weighs 200 g when it has come down to 60 %" },
  ],
  checks: [
    {
      status: "published",
      given: [1000, 0.25, 0.14],
      expected: 872,
      source: { work: irriMoisture, place: "worked example, 1000 kg from 25 % to 14 %" },
      tolerance: { absolute: 0.5 },
      because: "published to the whole kilogram",
    },
    {
      status: "exact",
      given: [1000, 0.25, 0.14],
      expected: 750 / 0.86,
      working: "1000 × 0.75 / 0.86 = 750 / 0.86 = 872.0930233",
      ...exactly,
    },
  ],
};

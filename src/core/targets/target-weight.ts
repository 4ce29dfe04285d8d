import { hotPan } from "../cautions";
import { defineFunction, exactly, type FunctionPage, measured, setting } from "../define";
import { dryMatter } from "../moisture/dry-matter";
import { looseWeight, moisture, weight } from "../quantities";
import { hellevangBlending, irriMoisture, wardMoisture } from "../sources";
import { percent, step } from "../working";

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
  smooth: true,
  calculate: (weight, moisture, targetMoisture): number => dryMatter.calculate(weight, moisture) / (1 - targetMoisture),
});

export const targetWeightPage = {
  summary: "What the scale should read when leaf has reached a target moisture.",
  parameters: {
    weight: "weight of the leaf now",
    moisture: "moisture of the leaf now, wet basis",
    targetMoisture: "moisture wanted, wet basis",
  },
  formula: "Wt = W × (1 − M) / (1 − Mt)",
  working: (W: number, M: number, Mt: number) => {
    const D = dryMatter.calculate(W, M);
    return [
      step("dry matter, which stays", "W × (1 − M)", { W, M: percent(M) }, D, looseWeight),
      step(
        "weight at which it is the right share",
        "D / (1 − Mt)",
        { D, Mt: percent(Mt) },
        targetWeight.calculate(W, M, Mt),
        weight,
      ),
    ];
  },
  guide: [
    "Put the charge back into the pan until the scale reads this number. It holds as long as only water leaves: take sift-outs and samples off the weight first.",
    "A target wetter than the leaf is allowed, because it restates a weight to a standard moisture.",
    "The answer is as good as the moisture you start from: near the start one point wrong moves the reading by about four in a hundred. Try a moisture one point to either side, and see how far the target moves, before you trust the last gram.",
    "Refused: a weight of 0 or below, and a moisture of 100 % or more.",
  ],
  sources: [{ work: irriMoisture, place: "final weight after drying" }],
  cautions: [hotPan],
  examples: [
    { given: [320, 0.75, 0.6], gives: 200, shows: "320 g at 75 % weighs 200 g when it has come down to 60 %" },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [2, 0.75, 0.15],
      expected: 0.59,
      source: { work: wardMoisture, place: "example, a load of 2 tons from 75 to 15 %" },
      tolerance: { absolute: 0.005 },
      because: "published to two decimals",
    },
    {
      status: "published",
      exercises: "calculation",
      given: [60, 0.135, 0.105],
      expected: 57.99,
      source: { work: hellevangBlending, place: "a bushel of 60 pounds of wheat from 13.5 to 10.5 %" },
      tolerance: { absolute: 0.005 },
      because: "published to two decimals",
    },
    {
      status: "published",
      exercises: "calculation",
      given: [1000, 0.25, 0.14],
      expected: 872,
      source: { work: irriMoisture, place: "worked example, 1000 kg from 25 % to 14 %" },
      tolerance: { absolute: 0.5 },
      because: "published to the whole kilogram",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1000, 0.25, 0.14],
      expected: 750 / 0.86,
      working: "1000 × 0.75 / 0.86 = 750 / 0.86 = 872.0930233",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [100, 0.8, 0.68],
      expected: 62.5,
      working: "a wither from 80 to 68 %: 100 × 0.2 / 0.32 = 62.5",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1, 0.05, [[0.75], [0.77], [0.78]]],
      expected: [[3.8], [0.95 / 0.23], [0.95 / 0.22]],
      working:
        "a wetter target: 1 kg at 5 % restated to fresh leaf at 75, 77 and 78 %: 0.95/0.25 = 3.800, 0.95/0.23 = 4.130, 0.95/0.22 = 4.318",
      ...exactly,
    },
    {
      status: "exact",
      given: [400, 0.75, 5],
      expected: {
        error: "#VALUE!",
        message: "targetMoisture must be from 0 up to, not including, 1 (76% or 0.76); got 5",
      },
      working: "5 is 500 %, more water than leaf",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

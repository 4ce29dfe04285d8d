import { hotPan } from "../cautions";
import { isAbove } from "../comparison";
import { defineFunction, exactly, type FunctionPage, measured, setting } from "../define";
import { mustBe } from "../errors";
import { dryMatter } from "../moisture/dry-matter";
import { looseWeight, moisture, weight } from "../quantities";
import { irriMoisture, teaWaterLoss } from "../sources";
import { percent, step } from "../working";

/**
 * Weight of the water that has to leave to reach a lower moisture, W(M − Mt)/(1 − Mt), in the unit of the weight.
 * It is the weight less the final weight of IRRI Rice Knowledge Bank, "Moisture content calculations".
 */
export const waterToRemove = defineFunction({
  id: "WATERTOREMOVE",
  group: "targets",
  parameters: [measured("weight", weight), measured("moisture", moisture), setting("targetMoisture", moisture)],
  result: { shape: "cell", quantity: looseWeight },
  smooth: true,
  calculate: (weight, moisture, targetMoisture): number => {
    if (isAbove(targetMoisture, moisture)) {
      throw mustBe("targetMoisture", { kind: "at most moisture", moisture }, targetMoisture);
    }
    return (weight * Math.max(0, moisture - targetMoisture)) / (1 - targetMoisture);
  },
});

export const waterToRemovePage = {
  summary: "How much water has to leave before the leaf is at a target moisture.",
  parameters: {
    weight: "weight of the leaf now",
    moisture: "moisture of the leaf now, wet basis",
    targetMoisture: "moisture wanted, wet basis, no wetter than now",
  },
  formula: "water off = W × (M − Mt) / (1 − Mt)",
  working: (W: number, M: number, Mt: number) => {
    const D = dryMatter.calculate(W, M);
    const reading = D / (1 - Mt);
    return [
      step("dry matter, which stays", "W × (1 − M)", { W, M: percent(M) }, D, looseWeight),
      step("weight at the target", "D / (1 − Mt)", { D, Mt: percent(Mt) }, reading, weight),
      step("water that has to go", "W − Wt", { W, Wt: reading }, waterToRemove.calculate(W, M, Mt), looseWeight),
    ];
  },
  guide: [
    "The number to wait for when you watch how much a tray has lost rather than what it weighs, and the work that a dryer or a fire has to do: two trays with the same water to remove take about the same heat, whatever they weigh.",
    "It is more than the moistures' difference suggests. From 75 % to 60 % is 15 points but more than a third of the weight, because the points are counted on leaf that gets lighter.",
    "Weight less this answer is TARGETWEIGHT. It holds as long as only water leaves.",
    "Refused: a target wetter than the leaf, since there is nothing to remove then.",
  ],
  sources: [{ work: irriMoisture, place: "final weight after drying" }],
  cautions: [hotPan],
  examples: [{ given: [320, 0.75, 0.6], gives: 120, shows: "320 g at 75 % loses 120 g on the way to 60 %" }],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [100, 0.78, 0.6],
      expected: 45,
      source: { work: teaWaterLoss, place: "the whole statement" },
      tolerance: { absolute: 1e-9 },
      because: "published exactly",
    },
    {
      status: "published",
      exercises: "calculation",
      given: [1000, 0.25, 0.14],
      expected: 128,
      source: { work: irriMoisture, place: "worked example, 1000 kg from 25 % to 14 % is 872 kg: 128 kg less" },
      tolerance: { absolute: 0.5 },
      because: "published to the whole kilogram",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1000, 0.25, 0.14],
      expected: 110 / 0.86,
      working: "1000 × 0.11 / 0.86 = 110/0.86 = 127.9069767; with 872.0930233 it makes 1000",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [480, 0.45, 0.45],
      expected: 0,
      working: "already there: 480 × 0 / 0.55 = 0",
      ...exactly,
    },
    {
      status: "exact",
      given: [480, 0.45, 0.6],
      expected: { error: "#VALUE!", message: "targetMoisture must be at most 0.45, the moisture of the leaf; got 0.6" },
      working: "0.6 > 0.45: water would have to be added",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

import { saleLimit } from "../cautions";
import { defineFunction, exactly, type FunctionPage, measured, optional } from "../define";
import { mustBe } from "../errors";
import { looseWeight, moisture, weight } from "../quantities";
import { iso1573, jacobsenMicrowave } from "../sources";
import { step } from "../working";

/**
 * Moisture of an oven sample, M = (before − after) / (before − dish). Both weights include the dish; all three in
 * the same unit. The formula is from memory; the oven method is that of ISO 1573:1980.
 */
export const ovenMoisture = defineFunction({
  id: "OVENMOISTURE",
  group: "moisture",
  parameters: [
    measured("weightBefore", weight),
    measured("weightAfter", weight),
    optional("dishWeight", looseWeight, 0),
  ],
  result: { shape: "cell", quantity: moisture },
  smooth: true,
  calculate: (weightBefore, weightAfter, dishWeight): number => {
    if (weightAfter > weightBefore) {
      throw mustBe(
        "weightAfter",
        { kind: "limit", is: "at most", limit: weightBefore, what: "the weight before the oven" },
        weightAfter,
      );
    }
    if (weightAfter <= dishWeight) {
      throw mustBe(
        "weightAfter",
        { kind: "limit", is: "above", limit: dishWeight, what: "the weight of the dish alone" },
        weightAfter,
      );
    }
    return (weightBefore - weightAfter) / (weightBefore - dishWeight);
  },
});

export const ovenMoisturePage = {
  summary: "Moisture of a sample from its weight before and after the oven.",
  parameters: {
    weightBefore: "sample and dish before the oven",
    weightAfter: "sample and dish after the oven, once the weight has stopped falling",
    dishWeight: "the dish alone; leave it out when the scale was tared with the dish on it",
  },
  formula: "M = (before − after) / (before − dish)",
  working: (before: number, after: number, dish: number) => [
    step("water that the oven took", "before − after", { before, after }, before - after, looseWeight),
    step("leaf in the dish before the oven", "before − dish", { before, dish }, before - dish, looseWeight),
    step(
      "share of the leaf that was water",
      "water / leaf",
      { water: before - after, leaf: before - dish },
      ovenMoisture.calculate(before, after, dish),
      moisture,
    ),
  ],
  guide: [
    "This is the measurement that all other moistures rest on. Dry a small sample at 103 °C until the scale shows the same weight twice, let it cool under a lid, and weigh. Weigh the dish first, or tare it away and leave dishWeight out.",
    "Either both weights include the dish or neither does. A dish left in by mistake makes the leaf look far drier than it is.",
    "Use a scale that shows at least 0.01 g: on 5 g of leaf, 0.1 g is already two points of moisture. Take two samples and give both to OVENMEAN.",
    "Refused: a weight after the oven above the weight before it, and one that is no more than the dish alone.",
  ],
  sources: [{ work: iso1573, place: "oven at 103 ± 2 °C to constant mass; the formula itself is from memory" }],
  cautions: [saleLimit],
  examples: [
    { given: [40, 37.5, 30], gives: 0.25, shows: "10 g of leaf in a 30 g dish; dish and leaf weigh 37.5 g when dry" },
    { given: [8, 7.5], gives: 0.0625, shows: "8 g on a tared dish come down to 7.5 g" },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [100, 35],
      expected: 0.65,
      source: { work: jacobsenMicrowave, place: "example: 100 g wet, 35 g dry, 35 % dry matter" },
      tolerance: { absolute: 1e-9 },
      because: "published exactly",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [57.312, 56.887, 48.812],
      expected: 0.05,
      working: "(57.312 − 56.887) / (57.312 − 48.812) = 0.425 / 8.500 = 0.05",
      tolerance: { relative: 1e-11 },
      because: "exact arithmetic; the difference of two near weights loses digits of a double",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [5, 1.25],
      expected: 0.75,
      working: "no dish: 3.75 / 5 = 0.75",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [12, 12, 7],
      expected: 0,
      working: "nothing left in the oven: 0 / 5 = 0",
      ...exactly,
    },
    {
      status: "exact",
      given: [40, 40.2, 30],
      expected: {
        error: "#VALUE!",
        message: "weightAfter must be at most 40, the weight before the oven; got 40.2",
      },
      working: "40.2 > 40: an oven adds no weight",
      ...exactly,
    },
    {
      status: "exact",
      given: [40, 30, 30],
      expected: {
        error: "#VALUE!",
        message: "weightAfter must be above 30, the weight of the dish alone; got 30",
      },
      working: "30 − 30 leaves no dry matter",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

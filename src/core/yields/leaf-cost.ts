import { defineFunction, exactly, type FunctionPage, measured, optional, setting } from "../define";
import { money, weight } from "../quantities";
import { leafPriceReport, quam } from "../sources";
import { step } from "../working";

/**
 * What one unit of finished tea has cost, (price × F + other) / P. Both weights in the unit that the price is for.
 * Its arithmetic without other costs is that of QUAM example A1, which serves as the check.
 */
export const leafCost = defineFunction({
  id: "LEAFCOST",
  group: "yields",
  parameters: [
    setting("leafPrice", money),
    measured("freshWeight", weight),
    measured("finishedWeight", weight),
    optional("otherCost", money, 0),
  ],
  result: { shape: "cell", quantity: money },
  smooth: true,
  calculate: (leafPrice, freshWeight, finishedWeight, otherCost): number =>
    (leafPrice * freshWeight + otherCost) / finishedWeight,
});

export const leafCostPage = {
  summary: "What the leaf and other costs come to for one unit of finished tea.",
  parameters: {
    leafPrice: "price of fresh leaf for one unit of weight, the unit of both weights",
    freshWeight: "weight of the leaf that was paid for",
    finishedWeight: "weight of the tea that was packed",
    otherCost: "whatever else the whole lot cost: fuel, hands, packing; 0 when left out",
  },
  formula: "(price × F + other) / P",
  working: (price: number, F: number, P: number, other: number) => [
    step("cost of the leaf", "price × F", { price, F }, price * F, money),
    step(
      "with the other costs, for each of finished",
      "(leaf + other) / P",
      { leaf: price * F, other, P },
      leafCost.calculate(price, F, P, other),
      money,
    ),
  ],
  guide: [
    "Use it when a lot is packed. The answer is a cost for each unit of finished tea, in the unit of the weights: kilograms with a price for a kilogram give the cost of a kilogram.",
    "otherCost is for the whole lot, not for a kilogram. With it the weights have to be in the unit that the price is for: a price for a kilogram beside weights in grams gives a wrong answer that looks like a number.",
    "The cost is no more exact than the two weights are. Nothing is rounded, and nothing is refused because the lot looks dear.",
  ],
  sources: [{ work: quam, place: "example A1: the same arithmetic, of a mass, a purity and a volume" }],
  cautions: [],
  examples: [{ given: [60, 5, 1.25, 90], gives: 312, shows: "5 kg at 60 and 90 for fuel and hands, 1.25 kg of tea" }],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [30, [[4], [5]], 1],
      expected: [[120], [150]],
      source: { work: leafPriceReport, place: "4 to 5 kg of leaf at about 30 rupees make 1 kg of tea for 120 to 150" },
      tolerance: { absolute: 1e-9 },
      because: "the report rounds its price of 30.03 to 30 for this",
    },
    {
      status: "published",
      exercises: "calculation",
      given: [999.9, 100.28, 100],
      expected: 1002.7,
      source: { work: quam, place: "example A1, concentration 1002.7 mg/L" },
      tolerance: { absolute: 0.05 },
      because: "published to a tenth",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [999.9, 100.28, 100],
      expected: 1002.69972,
      working: "999.9 × 100.28 = 100269.972; / 100 = 1002.69972",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [60, 5, 1.25],
      expected: 240,
      working: "60 × 5 = 300; 300 / 1.25 = 240",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [0, 5, 1.25, 90],
      expected: 72,
      working: "leaf of one's own at no price is 0, not a blank: 90 / 1.25 = 72",
      ...exactly,
    },
    {
      status: "exact",
      given: [60, 5, null, 90],
      expected: "",
      working: "not packed yet: the answer waits",
      ...exactly,
    },
    {
      status: "exact",
      given: [60, 5, 1.25, -90],
      expected: { error: "#VALUE!", message: "otherCost must be an amount of 0 or more; got -90" },
      working: "−90 < 0",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

import { defineFunction, exactly, type FunctionPage, measuredList } from "../define";
import { looseWeight, moisture, weight } from "../quantities";
import { hellevangBlending } from "../sources";
import { percent, step, sumOf, workingNumber } from "../working";
import { water } from "./water";

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Moisture of parts put together, ΣWM / ΣW: the mean of their moistures weighted by weight. */
export const blendMoisture = defineFunction({
  id: "BLENDMOISTURE",
  group: "moisture",
  parameters: [measuredList("weights", weight), measuredList("moistures", moisture)],
  result: { shape: "cell", quantity: moisture },
  calculate: (weights, moistures): number =>
    sum(weights.map((weight, row) => water.calculate(weight, moistures[row] as number))) / sum(weights),
});

export const blendMoisturePage = {
  summary: "Moisture of several batches put together.",
  parameters: {
    weights: "weight of each batch, a row or a column",
    moistures: "moisture of each batch, wet basis, in the same order",
  },
  formula: "M = (W₁M₁ + W₂M₂ + …) / (W₁ + W₂ + …)",
  working: (weights: readonly number[], moistures: readonly number[]) => {
    const [total, wet] = [sum(weights), sum(weights.map((W, row) => W * (moistures[row] as number)))];
    return [
      step(
        "water in all batches",
        "W₁ × M₁ + W₂ × M₂ + …",
        sumOf(weights.map((W, row) => `${workingNumber(W)} × ${percent(moistures[row] as number)}`)),
        wet,
        looseWeight,
      ),
      step("weight of all batches", "W₁ + W₂ + …", sumOf(weights.map(workingNumber)), total, looseWeight),
      step(
        "share of the whole that is water",
        "water / weight",
        { water: wet, weight: total },
        blendMoisture.calculate(weights, moistures),
        moisture,
      ),
    ];
  },
  guide: [
    "Use it when charges of unequal dryness go into one wrap, or baskets of two plots into one pan. The heavier batch counts for more: the plain average of the moistures is right only when all batches weigh the same.",
    "This is the moisture of the whole. Freshly mixed leaf is still uneven inside, and evens out only with time: one handful taken from it can be far off.",
    "A row that is blank in both lists is passed over; while a row has only one of its two readings the answer waits. Lists of unequal length are refused.",
  ],
  sources: [{ work: hellevangBlending, place: "blending of equal weights at 14 and 12 %" }],
  cautions: [],
  examples: [
    {
      given: [
        [[300], [100]],
        [[0.6], [0.4]],
      ],
      gives: 0.55,
      shows: "300 g at 60 % and 100 g at 40 %: nearer to the heavier one",
    },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [
        [[1000], [1000]],
        [[0.14], [0.12]],
      ],
      expected: 0.13,
      source: { work: hellevangBlending, place: "1000 pounds at 14 % and 1000 pounds at 12 % average 13 %" },
      tolerance: { absolute: 1e-9 },
      because: "published exactly",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [[[250, 150, 100]], [[0.72], [0.64], [0.5]]],
      expected: 0.652,
      working: "(250 × 0.72 + 150 × 0.64 + 100 × 0.5) / 500 = (180 + 96 + 50) / 500 = 326/500 = 0.652",
      ...exactly,
    },
    {
      status: "exact",
      given: [
        [[250], [150]],
        [[0.72], [64]],
      ],
      expected: {
        error: "#VALUE!",
        message: "moistures must be from 0 up to, not including, 1 (76% or 0.76); got 64 in place 2 of the list",
      },
      working: "64 is 6400 %, more water than leaf",
      ...exactly,
    },
    {
      status: "exact",
      given: [
        [[250], [150], [100]],
        [[0.72], [0.64]],
      ],
      expected: { error: "#VALUE!", message: "moistures must have as many rows as weights; got 2 and 3" },
      working: "three weights, two moistures: the third batch has none",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

import { defineFunction, exactly, type FunctionPage, measured, setting, settingList } from "../define";
import { must } from "../errors";
import { count, looseWeight, plainNumber, weight } from "../quantities";
import { largestRemainder } from "../sources";
import { step, sumOf, workingNumber } from "../working";
import { weightOfSteps, wholeSteps } from "./whole-steps";

/** Remainders that differ by less than this share of all steps, or of one step, differ by noise and are tied. */
export const noise = 2 ** -50;
export const noiseOfStep = 1e-9;

/**
 * A weight in parts of given proportion, in whole steps of the scale, by largest remainder: each part gets the whole
 * steps of its exact share, the steps left over go one each to the largest remainders, ties to the earlier part.
 * Source: largest remainder (Hamilton) apportionment.
 */
export const splitWeight = defineFunction({
  id: "SPLITWEIGHT",
  group: "charges",
  parameters: [measured("weight", weight), settingList("portions", plainNumber), setting("readability", weight)],
  result: { shape: "column", quantity: looseWeight },
  calculate: (weight, portions, readability): number[] => {
    const steps = wholeSteps(weight, readability);
    const largest = portions.reduce((most, portion) => Math.max(most, portion), 0);
    if (largest === 0) throw must("portions", { do: "hold at least one number above 0" }, "got only 0");
    // Relative to the largest first, so that no sum can run out of the range of doubles.
    const relative = portions.map((portion) => portion / largest);
    const total = relative.reduce((sum, portion) => sum + portion, 0);
    const shares = relative.map((portion) => (steps * portion) / total);
    const parts = shares.map(Math.floor);
    const leftOver = steps - parts.reduce((sum, part) => sum + part, 0);
    const tied = Math.max(noiseOfStep, noise * steps);
    const remainder = (place: number): number => (shares[place] as number) - (parts[place] as number);
    const order = [...shares.keys()].sort((one, other) => {
      const difference = remainder(other) - remainder(one);
      return Math.abs(difference) <= tied ? one - other : difference;
    });
    const rounded = new Set(order.slice(0, leftOver));
    return parts.map((part, place) => weightOfSteps(rounded.has(place) ? part + 1 : part, readability));
  },
});

export const splitWeightPage = {
  summary: "A weight shared out in proportion, in steps the scale can show, with nothing left over.",
  parameters: {
    weight: "weight to share out",
    portions: "what each part counts, in any unit: pan sizes, shares, or the leaf each grower brought",
    readability: "smallest step the scale shows",
  },
  formula: "K × pᵢ / Σp steps each, rounded down; the steps left over go to the largest remainders",
  working: (W: number, portions: readonly number[], d: number) => {
    const parts = splitWeight.calculate(W, portions, d);
    const steps = wholeSteps(W, d);
    const [first, total] = [portions[0] as number, portions.reduce((sum, portion) => sum + portion, 0)];
    return [
      step("steps of the scale in the weight", "W / d", { W, d }, steps, count),
      step(
        "exact share of the first part, in steps",
        "K × p₁ / Σp",
        { K: steps, "p₁": first, Σp: total },
        (steps * first) / total,
        plainNumber,
      ),
      step(
        "whole steps each; those left over go to the largest remainders",
        "part 1 + part 2 + … = W",
        sumOf(parts.map(workingNumber)),
        parts,
        looseWeight,
      ),
    ];
  },
  guide: [
    "Use it where the parts are not equal: two pans of different size, or the finished tea of a lot that several growers brought leaf to. Portions may be in any unit, because only their proportion counts. The answer is a column in their order.",
    "Each part is rounded down to a step of the scale, and the steps left over go, one each, to the parts that lost most by it; where two lost the same, the earlier one gets it. The parts add up to the weight to the last step, which rounding each by itself does not do.",
    "A portion of 0 gets nothing, and a very small one may get 0. The answer spills, and a spill cannot stand inside a worksheet table: there use =INDEX(TEA.SPLITWEIGHT(F1, A2:A6, 1), 2) for the second part.",
    "Refused: a weight that is no whole number of the scale's steps, a portion below 0 or blank between others, and portions that are all 0.",
  ],
  sources: [{ work: largestRemainder, place: "worked example" }],
  cautions: [],
  examples: [
    {
      given: [905, [[3], [2], [2]], 5],
      gives: [[385], [260], [260]],
      shows: "905 g for one large pan and two smaller ones, on a scale with steps of 5 g",
    },
  ],
  checks: [
    {
      // By hand: 6.088, 4.560, 11.313, 9.859, 10.180 down to 6, 4, 11, 9, 10, which is 40; two go to 0.859 and 0.560.
      status: "published",
      exercises: "calculation",
      given: [42, [[247], [185], [459], [400], [413]], 1],
      expected: [[6], [5], [11], [10], [10]],
      source: { work: largestRemainder, place: "worked example, 42 seats" },
      tolerance: { absolute: 0 },
      because: "whole seats",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [7, [[50, 30, 20]], 1],
      expected: [[4], [2], [1]],
      working: "3.5, 2.1, 1.4 down to 3, 2, 1; the one step left goes to the remainder 0.5",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [0.7, [[0.5], [0.3], [0.2]], 0.1],
      expected: [[0.4], [0.2], [0.1]],
      working: "the same in steps of 0.1 and with shares of one",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [5, [[1], [1]], 1],
      expected: [[3], [2]],
      working: "2.5 each: a tie, and the earlier one gets the step",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [10, [[0.3], [0], [0.1]], 1],
      expected: [[8], [0], [2]],
      working: "7.5, 0, 2.5 down to 7, 0, 2; a tie of 0.5, and the earlier one gets the step",
      ...exactly,
    },
    {
      status: "exact",
      given: [905, [[3], [2], [2]], 2],
      expected: {
        error: "#VALUE!",
        message: "weight must be a whole number of steps of 2; got 905 (the nearest are 904 and 906)",
      },
      working: "905 / 2 = 452.5",
      ...exactly,
    },
    {
      status: "exact",
      given: [905, [[0], [0]], 5],
      expected: { error: "#VALUE!", message: "portions must hold at least one number above 0; got only 0" },
      working: "nothing can be shared out in proportion to 0 and 0",
      ...exactly,
    },
    {
      status: "exact",
      given: [905, [[3], [-2]], 5],
      expected: { error: "#VALUE!", message: "portions must be a number of 0 or more; got -2 in place 2 of the list" },
      working: "−2 < 0",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

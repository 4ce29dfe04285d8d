import { defineFunction, exactly, type FunctionPage, measured } from "../define";
import { count, tally, weight, weight as weightQuantity } from "../quantities";
import { numpySplit } from "../sources";
import { step, sumOf, workingNumber } from "../working";
import { chargeCount } from "./charge-count";
import { maxLoad, panAndScale, panLoad, readability } from "./charge-parameters";
import { weightOfSteps, wholeSteps } from "./whole-steps";

/**
 * The weight of each pan charge. With readability, whole steps K = qn + r: the first r charges get q + 1 steps, the
 * rest q, so that they add up to the weight. Without it, equal parts. Source: none; its own definition.
 */
export const chargeSplit = defineFunction({
  id: "CHARGESPLIT",
  group: "charges",
  parameters: [measured("weight", weight), panLoad, maxLoad, readability],
  result: { shape: "column", quantity: weight },
  calculate: (weight, panLoad, maxLoad, readability): number[] => {
    const charges = chargeCount.calculate(weight, panLoad, maxLoad, readability);
    if (readability === undefined) return new Array<number>(charges).fill(weight / charges);
    const steps = wholeSteps(weight, readability);
    const heavier = steps % charges;
    const each = (steps - heavier) / charges;
    return Array.from({ length: charges }, (_, charge) =>
      weightOfSteps(charge < heavier ? each + 1 : each, readability),
    );
  },
});

export const chargeSplitPage = {
  summary: "The weight of each pan charge, in steps that the scale can show.",
  parameters: { weight: "weight of the leaf to be fired", ...panAndScale },
  formula: "K = W / d = q × n + r: the first r charges weigh (q + 1) × d, the others q × d",
  working: (W: number, L: number, most?: number, d?: number) => {
    const loads = chargeSplit.calculate(W, L, most, d);
    const n = loads.length;
    const all = sumOf(loads.map(workingNumber));
    if (d === undefined) return [step("equal parts", "W / n", { W, n }, loads, weightQuantity)];
    const steps = wholeSteps(W, d);
    const r = steps % n;
    return [
      step("steps of the scale in the weight", "W / d", { W, d }, steps, count),
      step("steps in each charge", "(K − r) / n", { K: steps, r, n }, (steps - r) / n, tally),
      step(
        "the r steps left over go one each to the first charges",
        "load 1 + load 2 + … = W",
        all,
        loads,
        weightQuantity,
      ),
    ];
  },
  guide: [
    "Weigh the charges out in this order before the pan is hot. The number of charges is that of CHARGECOUNT; the answer is a column with one weight for each of them.",
    "Type readability, the smallest step your scale shows (1 for a kitchen scale that shows whole grams). Every charge is then a weight that you can really set on the scale, no two differ by more than one step, and together they are the whole weight to the last step. Without it the charges are equal parts, with as many decimals as it takes.",
    "The answer spills over as many cells as there are charges, and a spill cannot stand inside a worksheet table. Put it beside the table, or ask for one charge in one cell: =INDEX(TEA.CHARGESPLIT(A2, 320, , 1), 1) is the first charge, which no other is heavier than.",
    "Refused: a weight that is no whole number of the scale's steps, with the nearest that are; and whatever CHARGECOUNT refuses. For pans of different sizes use SPLITWEIGHT.",
  ],
  sources: [],
  cautions: [],
  examples: [
    {
      given: [938, 320, null, 1],
      gives: [[313], [313], [312]],
      shows: "938 g on a scale of whole grams makes 313, 313 and 312 g",
    },
    { given: [930, 320], gives: [[310], [310], [310]], shows: "without readability, three equal parts" },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [8, 2.7, null, 1],
      expected: [[3], [3], [2]],
      source: { work: numpySplit, place: "first example: 8 values into 3 parts; three are nearest to 2.7" },
      tolerance: { absolute: 0 },
      because: "whole values",
    },
    {
      status: "published",
      exercises: "calculation",
      given: [9, 2.25, null, 1],
      expected: [[3], [2], [2], [2]],
      source: { work: numpySplit, place: "second example: 9 values into 4 parts; 9 / 4 = 2.25" },
      tolerance: { absolute: 0 },
      because: "whole values",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [702, 340, null, 1],
      expected: [[351], [351]],
      working: "two charges are nearest to 340 (351); 702 = 2 × 351 + 0",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1000, 350, null, 1],
      expected: [[334], [333], [333]],
      working: "three charges are nearest to 350; 1000 = 3 × 333 + 1, so the first gets one step more",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [705, 350, 352, 1],
      expected: [[235], [235], [235]],
      working: "two charges would be 353 and 352, and 353 passes 352; 705 = 3 × 235",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1234.5, 300, null, 0.1],
      expected: [[308.7], [308.6], [308.6], [308.6]],
      working: "12345 steps in four charges: 12345 = 4 × 3086 + 1",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [466, 350, null, 1],
      expected: 466,
      working: "one charge is 116 too heavy, two are 117 too light",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [467, 350, null, 1],
      expected: [[234], [233]],
      working: "two charges are nearer (116.5 against 117); 467 = 2 × 233 + 1",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [1200, 350, null, 5],
      expected: [[300], [300], [300], [300]],
      working: "a tie between three of 400 and four of 300 takes four; 240 steps of 5 = 4 × 60",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [467, 350],
      expected: [[233.5], [233.5]],
      working: "467 / 2 = 233.5",
      ...exactly,
    },
    {
      status: "exact",
      given: [null, 350],
      expected: "",
      working: "no weight yet: the answer waits",
      ...exactly,
    },
    {
      status: "common practice",
      exercises: "calculation",
      given: [710, 350, null, 1],
      expected: [[355], [355]],
      fact: "a sifted lot of 710 g, fired at about 350 g a pan, makes two charges of 355 g",
      tolerance: { absolute: 0 },
      because: "weights on a scale of whole grams",
    },
    {
      status: "exact",
      given: [702.4, 340, null, 1],
      expected: {
        error: "#VALUE!",
        message: "weight must be a whole number of steps of 1; got 702.4 (the nearest are 702 and 703)",
      },
      working: "702.4 / 1 is no whole number",
      ...exactly,
    },
    {
      status: "exact",
      given: [0.3, 5, null, 2],
      expected: {
        error: "#VALUE!",
        message: "weight must be a whole number of steps of 2; got 0.3 (the nearest is 2)",
      },
      working: "0.3 is below one step of 2, and a charge of 0 is none",
      ...exactly,
    },
    {
      status: "exact",
      given: [9000000000, 9000000000, null, 0.001],
      expected: {
        error: "#VALUE!",
        message: "weight must be at most 1000000, a thousand million steps of 0.001; got 9000000000",
      },
      working: "9000000000 / 0.001 = 9 000 000 000 000 steps, more than 1 000 000 000",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

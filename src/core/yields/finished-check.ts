import { isAbove } from "../comparison";
import { defineFunction, exactly, type FunctionPage, measured } from "../define";
import { Phrase } from "../phrases";
import { moisture, text, weight } from "../quantities";
import { gum, quam } from "../sources";
import { step, workingNumber } from "../working";
import {
  aboutErrors,
  aboutLosses,
  aboutPower,
  finishedLimits,
  type LotDetails,
  lotDetails,
  lotDetailsExplained,
} from "./finished-limits";
import { stepsToLimits } from "./limits-working";

/**
 * Whether the finished weight in the book can be true: it against the limits of FINISHEDBAND, and against the limit
 * that no loss at all would give. Source: as FINISHEDBAND.
 */
export const finishedCheck = defineFunction({
  id: "FINISHEDCHECK",
  group: "yields",
  parameters: [
    measured("freshWeight", weight),
    measured("freshMoisture", moisture),
    measured("finishedWeight", weight),
    measured("finishedMoisture", moisture),
    ...lotDetails,
  ],
  result: { shape: "cell", quantity: text },
  calculate: (freshWeight, freshMoisture, finishedWeight, finishedMoisture, ...details): Phrase => {
    const { low, high, limit } = finishedLimits(freshWeight, freshMoisture, finishedMoisture, ...details);
    if (isAbove(finishedWeight / limit, 1)) return new Phrase("more dry matter out than came in");
    if (isAbove(finishedWeight / high, 1)) return new Phrase("less lost than expected");
    if (low !== undefined && isAbove(low / finishedWeight, 1)) return new Phrase("more lost than expected");
    return new Phrase("agrees");
  },
});

const more = "more dry matter out than came in";

export const finishedCheckPage = {
  summary: "Whether a finished weight fits the fresh leaf it came from.",
  parameters: {
    freshWeight: "weight of the leaf as received",
    freshMoisture: "moisture of the fresh leaf, wet basis",
    finishedWeight: "weight of the tea that was packed",
    finishedMoisture: "moisture of the finished tea, wet basis",
    ...lotDetailsExplained,
  },
  formula:
    "P > P₀(1 + 2r): more dry matter out than came in; P > high: less lost than expected; P < low: more lost than expected; else agrees. P₀, r, high and low as in FINISHEDBAND",
  working: (F: number, Mf: number, P: number, Mp: number, ...details: LotDetails) => {
    const { low, high } = finishedLimits(F, Mf, Mp, ...details);
    return [
      ...stepsToLimits(F, Mf, Mp, ...details),
      step(
        "the weight in the book against the limits",
        "low ≤ P ≤ high",
        `${low === undefined ? "" : `${workingNumber(low)} ≤ `}${workingNumber(P)} ≤ ${workingNumber(high)}`,
        finishedCheck.calculate(F, Mf, P, Mp, ...details),
        text,
      ),
    ];
  },
  guide: [
    "Use it when the lot is packed and the book is filled in. The answer is one of four texts.",
    "“agrees”: the readings can all be true together. “more dry matter out than came in”: they cannot, even if nothing was lost and every error counted; a weight or a moisture is wrong, two lots were mixed, or the tea is not as dry as it was said to be. “less lost than expected”: possible, but better than lowLoss and the errors allow. “more lost than expected”: below what highLoss and the errors allow; look for sift-outs that were not written down, a spill, or fresh leaf weighed with dew on it.",
    "Without highLoss the last of these is never said: a weight of next to nothing would agree. Without lowLoss the third is never said.",
    aboutLosses,
    aboutPower,
    aboutErrors,
    "The wider the errors, the wider the limits. If a weight agrees with one point of fresh moisture error and not with 0, the book is neither right nor wrong: a better moisture would tell.",
    "The verdict is about the figures. It is no statement about the tea itself, nor about anyone's honesty.",
  ],
  sources: [{ work: gum, place: "law of propagation of uncertainty, clause 5.1.2" }],
  cautions: [],
  examples: [
    {
      given: [950, 0.76, 221, 0.05, null, null, 0, 0.1],
      gives: "agrees",
      shows: "221 g lies between 198 and 260 g",
    },
    {
      given: [950, 0.76, 190, 0.05, null, null, 0, 0.1],
      gives: "more lost than expected",
      shows: "190 g lies below 198 g",
    },
    {
      given: [950, 0.76, 268, 0.05],
      gives: more,
      shows: "268 g lies above 260 g, the most that an error of one point explains, counted twice",
    },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      idle: ["lowLoss"],
      given: [
        1002.8,
        0.0001,
        [[1000.7], [1001.1], [1004.3], [1004.7]],
        0,
        null,
        null,
        0,
        0,
        Math.SQRT1_2 / 2,
        0.000058,
        0.0007,
      ],
      expected: [["more lost than expected"], ["agrees"], ["agrees"], [more]],
      source: {
        work: quam,
        place:
          "example A1, 1002.7 mg/L with u = 0.9: 1000·m·P/V with m 100.28 ± 0.05, P 0.9999 ± 0.000058, V 100 ± 0.07. Ten times m is taken for the leaf, 1 − P and the error of V for moistures; its one error of m is shared between two weighings, 0.5/√2 each. The limits stand two of u away, at 1000.9 and 1004.5; the four weights lie 0.2 to either side",
      },
      tolerance: { absolute: 0 },
      because: "four texts",
    },
    {
      status: "exact",
      exercises: "calculation",
      idle: ["freshMoistureError"],
      given: [640, 0.77, 150, 0.05, null, null, null, 0.1, null, 0],
      expected: "agrees",
      working: "139.4526316 ≤ 150 ≤ 154.9473684",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [720, 0.77, 150, 0.05, null, null, null, 0.1, null, 0],
      expected: "more lost than expected",
      working: "150 < 156.8842105",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      idle: ["freshMoistureError"],
      given: [720, 0.77, 150, 0.05, 60, 0.75, null, 0.1, null, 0],
      expected: "agrees",
      working: "with 60 removed at 75 %: 142.6736842 ≤ 150 ≤ 158.5263158",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      idle: ["highLoss"],
      given: [640, 0.77, 158, 0.05, null, null, null, 0.1, null, 0],
      expected: more,
      working: "158 > 154.9473684",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [640, 0.7654, 158, 0.05, null, null, null, 0.1, null, 0],
      expected: "agrees",
      working: "0.46 points less fresh moisture: 640 × 0.2346 / 0.95 = 158.0463158 ≥ 158",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [640, 0.7656, 158, 0.05, null, null, null, 0.1, null, 0],
      expected: more,
      working: "0.44 points are not enough: 640 × 0.2344 / 0.95 = 157.9115789 < 158",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "input",
      given: [640, 0.77, 158, 0.05],
      expected: "agrees",
      working: "with one point of error, left out: r = 0.01 / 0.23 and 154.9473684 × (1 + 2r) = 168.4210526 ≥ 158",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [640, 0.77, [[168.4], [168.5]], 0.05],
      expected: [["agrees"], [more]],
      working: "either side of 168.4210526",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [640, 0.77, [[151.8], [151.9], [154.9], [155]], 0.05, null, null, 0.02, 0.1, null, 0],
      expected: [["agrees"], ["less lost than expected"], ["less lost than expected"], [more]],
      working: "high = 154.9473684 × 0.98 = 151.8484211; above 154.9473684 there is more than came in",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [640, 0.77, 1, 0.05],
      expected: "agrees",
      working: "without highLoss there is no lower limit",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [2000, 0.7625, 500, 0.05, null, null, null, 0, null, 0],
      expected: "agrees",
      working: "2000 × 0.2375 = 475 = 500 × 0.95: at the limit itself nothing is amiss",
      ...exactly,
    },
    {
      status: "common practice",
      exercises: "calculation",
      idle: ["finishedMoisture", "freshMoistureError"],
      given: [710, 0.76, 170, 0.05, null, null, null, null, null, 0],
      expected: "agrees",
      fact: "710 g at 76 % and 170 g at 5 % agree, the moistures taken as exact",
      tolerance: { absolute: 0 },
      because: "a text",
    },
    {
      status: "common practice",
      exercises: "calculation",
      given: [710, 0.76, 182, 0.05, null, null, null, null, null, 0],
      expected: more,
      fact: "710 g at 76 % and 182 g at 5 % do not agree, the moistures taken as exact",
      tolerance: { absolute: 0 },
      because: "a text",
    },
    {
      status: "exact",
      given: [640, 0.77, null, 0.05],
      expected: "",
      working: "not packed yet: the answer waits",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      idle: ["lowLoss"],
      given: [1000, 0.75, [[157, 158, 168, 169]], 0.05, 100, 0.05, 0, 0, 2, 0, 0],
      expected: [["more lost than expected", "agrees", "agrees", more]],
      working:
        "removed leaf as dry as tea brings an error of its own: N = 250 − 95 = 155; P₀ = 163.1578947; u_N² = (0.25 × 2)² + (0.95 × 2)² = 3.86; r² = 3.86/24025 + (2/163.1578947)², r = 0.0176335; 163.1578947 × (1 ± 2r) = 157.404 and 168.912",
      ...exactly,
    },
    {
      status: "exact",
      given: [500, 0.75, 100, 0.05, 500],
      expected: {
        error: "#VALUE!",
        message: "removed must be below 500, which holds all the dry matter of the fresh leaf; got 500",
      },
      working: "all of the leaf was taken out",
      ...exactly,
    },
    {
      status: "exact",
      given: [500, 0.75, 100, 0.05, -20],
      expected: { error: "#VALUE!", message: "removed must be a weight of 0 or more; got -20" },
      working: "−20 < 0",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

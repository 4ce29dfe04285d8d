import { saleLimit } from "../cautions";
import { isAbove } from "../comparison";
import { defineFunction, exactly, type FunctionPage, measuredList, optional } from "../define";
import { noAnswer } from "../errors";
import { rangeFactor, rangeQuantile } from "../numeric/normal-range";
import { moisture, plainNumber, share, within } from "../quantities";
import { iso1573, iso5725Range } from "../sources";
import { percent, step, sumOf } from "../working";

/** Repeatability of the oven method for finished tea, 0.3 g in 100 g (ISO 1573:1980): a difference of moistures. */
const finishedTeaRepeatability = 0.003;

const spreadLimit = within(share, { above: 0, atMost: 0.05 }, "above 0 and at most 0.05 (0.3 points is 0.003)");

/**
 * Mean of moistures of the same leaf when they agree: largest − smallest ≤ limit × q(n)/q(2), for at least two of them,
 * q(n) the 95 % quantile of the range of n normal values. The limit is one for two readings; more of them spread wider.
 * Without agreement there is no answer (#N/A).
 */
export const ovenMean = defineFunction({
  id: "OVENMEAN",
  group: "moisture",
  parameters: [measuredList("moistures", moisture), optional("limit", spreadLimit, finishedTeaRepeatability)],
  result: { shape: "cell", quantity: moisture },
  calculate: (moistures, limit): number => {
    if (moistures.length < 2)
      throw noAnswer("moistures", { do: "hold at least two readings of the same leaf" }, { kind: "value", value: 1 });
    let highest = 0;
    let lowest = 1;
    let sum = 0;
    for (const reading of moistures) {
      highest = Math.max(highest, reading);
      lowest = Math.min(lowest, reading);
      sum += reading;
    }
    const spread = highest - lowest;
    const allowed = limit * rangeFactor(moistures.length);
    if (isAbove(spread, allowed)) {
      const within = moistures.length === 2 ? limit : Number(allowed.toPrecision(3));
      throw noAnswer("moistures", { do: { kind: "agree within", limit: within } }, { kind: "spread", spread });
    }
    return sum / moistures.length;
  },
});

export const ovenMeanPage = {
  summary: "Mean of repeated oven moistures, given only when they agree.",
  parameters: {
    moistures: "moistures of samples of the same leaf, two or more; blank cells are passed over",
    limit: "largest difference allowed between two readings; for more it widens by itself; 0.3 points is 0.003",
  },
  formula: "mean of M when largest M − smallest M ≤ limit × qₙ / q₂",
  working: (moistures: readonly number[], limit: number) => {
    // A list may be longer than a call takes arguments.
    const largest = moistures.reduce((most, moisture) => Math.max(most, moisture));
    const smallest = moistures.reduce((least, moisture) => Math.min(least, moisture));
    const n = moistures.length;
    return [
      step(
        "how much wider this many readings may lie than two, at 95 %",
        "qₙ / q₂",
        { qₙ: rangeQuantile(n), "q₂": rangeQuantile(2) },
        rangeFactor(n),
        plainNumber,
      ),
      step(
        "how far apart the readings are, which has to stay within the limit times that",
        "largest − smallest",
        { largest: percent(largest), smallest: percent(smallest) },
        largest - smallest,
        share,
      ),
      step(
        "their mean",
        "(M₁ + M₂ + …) / n",
        `(${sumOf(moistures.map(percent))}) / ${n}`,
        ovenMean.calculate(moistures, limit),
        moisture,
      ),
    ];
  },
  guide: [
    "Dry two samples of the same leaf and give both moistures. When they agree you get their mean; when they do not you get #N/A and the spread between them, and the honest thing is to dry two more and give all four.",
    "The limit that stands when you give none, 0.3 points, is how well two determinations on finished tea repeat. Fresh and half-dried leaf is far less even and needs a limit of its own: dry several samples of one well-mixed basket and see how far apart they come out.",
    "The limit is one for two readings: good ones differ by more 5 times in 100. More readings of the same leaf lie further apart, so the limit widens by itself, 1.20 times for three, 1.31 for four, 1.39 for five and 1.45 for six, and good sets of any size are refused in 5 of 100.",
    "Measured with readings that scatter as much as the limit is made for: a pair of which one is wrong by 1.5 times the limit is refused in 84 of 100, by twice the limit in 98, and two more readings bring a good pair that was refused to agree in 67 of 100.",
    "Agreement says that the samples repeat, not that they are right. An oven that is too cool or a scale that is out gives the same wrong answer twice.",
    "Refused: a limit of more than 5 points, which no longer tells anything apart. One reading alone gives #N/A.",
  ],
  unpublished:
    "What is published are the limit of two readings (ISO 1573) and how it widens with their number (ISO 5725-6), to one decimal; no work was found that states readings with their mean. The means of the checks are hand arithmetic.",
  sources: [
    { work: iso1573, place: "repeatability, 0.3 g of moisture per 100 g of sample" },
    { work: iso5725Range, place: "critical range of n results, f(n) = 2.8, 3.3, 3.6, 3.9, 4.0 for n = 2 to 6" },
  ],
  cautions: [saleLimit],
  examples: [
    { given: [[[0.046], [0.048]]], gives: 0.047, shows: "two samples of finished tea 0.2 points apart agree" },
    {
      given: [[[0.71], [0.73], [0.72]], 0.02],
      gives: 0.72,
      shows: "three samples of fresh leaf with a limit of 2 points",
    },
  ],
  checks: [
    {
      status: "exact",
      exercises: "edge",
      given: [[[0.05], [0.053]]],
      expected: 0.0515,
      working:
        "ISO 1573 lets two determinations differ by 0.3 g in 100 g: 0.053 − 0.05 = 0.003 still agrees; 0.103 / 2",
      tolerance: { relative: 1e-12 },
      because: "exact arithmetic; the moistures are no doubles",
    },
    {
      status: "exact",
      given: [[[0.05], [0.054]]],
      expected: { error: "#N/A", message: "moistures must agree within 0.003; got a spread of 0.004" },
      working: "ISO 1573 lets two determinations differ by 0.3 g in 100 g: 0.054 − 0.05 = 0.004 is more",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [[[0.04, 0.05, 0.06, 0.07]], 0.03],
      expected: 0.055,
      working: "(0.04 + 0.05 + 0.06 + 0.07) / 4 = 0.22 / 4 = 0.055; spread 0.03, the limit",
      ...exactly,
    },
    {
      status: "memory",
      exercises: "calculation",
      given: [[[0.05, 0.0535, 0.052]]],
      expected: 0.155_5 / 3,
      recalls:
        "ISO 5725-6: the critical range of three results is 3.3 / 2.8 times that of two, 0.0035 for a limit of 0.003; 0.05 + 0.0535 + 0.052 = 0.1555",
      ...exactly,
    },
    {
      status: "exact",
      given: [[[0.05, 0.054, 0.052, 0.051]]],
      expected: { error: "#N/A", message: "moistures must agree within 0.00393; got a spread of 0.004" },
      working: "q(4) / q(2) = 3.63316 / 2.77181 = 1.31075; 0.003 × 1.31075 = 0.00393; 0.054 − 0.05 = 0.004",
      ...exactly,
    },
    {
      status: "exact",
      given: [[[0.05]]],
      expected: { error: "#N/A", message: "moistures must hold at least two readings of the same leaf; got 1" },
      working: "one reading has no spread",
      ...exactly,
    },
    {
      status: "exact",
      given: [[[0.05], [0.051]], 0.3],
      expected: {
        error: "#VALUE!",
        message: "limit must be above 0 and at most 0.05 (0.3 points is 0.003); got 0.3",
      },
      working: "0.3 is 30 points, above the 5 points allowed",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

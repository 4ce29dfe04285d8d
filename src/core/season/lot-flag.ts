import { type BookColumn, bookList, defineFunction, exactly, type FunctionPage, measured, optional } from "../define";
import { text, weight, zLimit, zScore } from "../quantities";
import { iglewiczHoaglin, modifiedScores } from "../sources";
import { step, workingNumber } from "../working";
import { limitOfLot } from "./flag-limit";
import { pastLots, pastNames, rememberedForBook } from "./lots";
import { type Flag, flagOf, outturnSpread, robustZ } from "./outturn-spread";
import { distance } from "./spread-working";

/**
 * Whether the outturn of one lot is unusual among the lots of a book, by the modified z-score of its logarithm: the
 * form that fits into one cell, also inside a worksheet table.
 */
export const lotFlag = defineFunction({
  id: "LOTFLAG",
  group: "season",
  parameters: [
    measured("freshWeight", weight),
    measured("finishedWeight", weight),
    bookList("past", "pastFreshWeights", weight),
    bookList("past", "pastFinishedWeights", weight),
    optional("limit", zLimit),
  ],
  result: { shape: "cell", quantity: text },
  calculate: (freshWeight, finishedWeight, pastFreshWeights, pastFinishedWeights, limit): Flag => {
    const spread = spreadOf(pastFreshWeights, pastFinishedWeights);
    const z = robustZ(spread, freshWeight, finishedWeight);
    return flagOf(z, freshWeight, finishedWeight, limit ?? limitOfLot(spread));
  },
});

const spreadOf = rememberedForBook((pastFreshWeights: BookColumn, pastFinishedWeights: BookColumn) =>
  outturnSpread(pastLots(pastFreshWeights, pastFinishedWeights, pastNames, { withSwapped: true }), pastNames.fresh),
);

export const lotFlagPage = {
  summary: "Flags one lot whose outturn is unusual among your lots; fits into one cell of a table.",
  parameters: {
    freshWeight: "fresh weight of the lot",
    finishedWeight: "finished weight of the lot; the answer waits until it is there",
    pastFreshWeights: "fresh weights of the lots to compare with; the whole column, this lot among them, is fine",
    pastFinishedWeights: "their finished weights; a lot without one is left out",
    limit:
      "how many usual distances from the usual outturn are too many; left out, as many as the size of the book asks for",
  },
  formula: "r = ln(P / F); z = 0.6745 × (r − median) / MAD, MAD the median of |r − median|; flagged when |z| > limit",
  working: (F: number, P: number, pastFresh: BookColumn, pastFinished: BookColumn, typed?: number) => {
    const spread = spreadOf(pastFresh, pastFinished);
    const z = robustZ(spread, F, P);
    const limit = typed ?? limitOfLot(spread);
    return [
      step("outturn, on the scale of logarithms", "ln(P / F)", { P, F }, Math.log(P / F), zScore),
      ...(spread.unit === 0 ? [] : [distance(F, P, spread)]),
      step(
        "flagged when it is farther away than the limit",
        "−limit ≤ z ≤ limit",
        `−${workingNumber(limit)} ≤ ${workingNumber(z)} ≤ ${workingNumber(limit)}`,
        lotFlag.calculate(F, P, pastFresh, pastFinished, typed),
        text,
      ),
    ];
  },
  guide: [
    "Use it as one more column of the book of lots: each new lot is compared with all the others the moment its finished weight is written down, while the tea and the scale are still there to weigh again. It gives one cell, so it works inside a worksheet table, where LOTFLAGS cannot spill.",
    'The flag is one of three, or nothing. "high": more tea than the leaf usually makes; "low": less; "more out than in": the finished weight is above the fresh weight, as when the two were swapped or one was read in another unit. Nothing means as usual, or not finished yet.',
    "A flag says look, and not wrong. First look at the two weights: a slip of the pen, a dish left on the scale, grams for kilograms. Then at the day: rain on the leaf gives a low outturn that is true, and so does a basket of coarse leaf that was sifted hard.",
    "Usual means the middle lot, and the usual distance is the middle of the distances from it, so that a few gross mistakes in the book move neither. When more than half of the lots are alike the mean distance takes its place; when all are alike there is nothing to measure with, and only more out than in is flagged.",
    "Leave the limit out, and it follows the number of past lots, so that of a hundred good new lots about one is flagged: it is 14.6 with five past lots, 4.9 with ten, 3.5 with twenty, and near 2.6 with hundreds. With few lots only a gross mistake can be told. A limit that you type, such as the 3.5 that is often advised, counts for books of every size; of a hundred good lots it flags 12 beside five past ones, 3 beside ten, 1 beside twenty.",
    "Measured with simulated lots whose outturns scatter by 3 %: a lot that is 20 % too low was flagged in 29 of 100 beside five past lots, in 92 beside ten and in over 99 beside twenty. What counts is the mistake against that scatter; docs/how-sure.md has more sizes.",
    "Open lots, empty rows, headings and mistakes in the past lists are passed over. Fewer than five finished lots give #N/A.",
  ],
  sources: [{ work: iglewiczHoaglin, place: "modified z-score, 1.3.5.17" }],
  cautions: [],
  examples: [
    {
      given: [
        900,
        150,
        [[1200], [880], [1000], [600], [1500], [950], [1100], [700]],
        [[258], [187], [216], [126], [318], [203], [233], [152]],
      ],
      gives: "low",
      shows: "150 g from 900 g, on an invented farm whose lots come out at 21 to 22 %",
    },
    {
      given: [900, 192, [[1200], [880], [1000], [600], [1500]], [[258], [187], [216], [126], [318]]],
      gives: "",
      shows: "192 g from the same leaf is as usual, and nothing is flagged",
    },
  ],
  checks: [
    {
      status: "exact",
      given: [500, 105, [[800], [900], [700], [600], [120]], [[168], [189], [147], [126], [560]]],
      expected: "",
      working: "four of the five are at 0.21 and so is this one; the fifth, swapped, is a lot to compare with as well",
      ...exactly,
    },
    {
      status: "published",
      exercises: "calculation",
      given: [
        1,
        /* @__PURE__ */ [10, 14, 300].map((value) => [Math.exp(value / 1000 - 1)]),
        [[1, 1, 1, 1, 1, 1, 1, 1]],
        [/* @__PURE__ */ [10, 12, 12, 13, 12, 11, 14, 300].map((value) => Math.exp(value / 1000 - 1))],
      ],
      expected: [[""], [""], ["high"]],
      source: {
        work: modifiedScores,
        place: "example data table: 300 alone is far off, its numbers taken for thousandths of ln(finished/fresh) + 1",
      },
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [
        [[780], [905], [690], [142], [820]],
        [[131], [190], [146], [700], [null]],
        [[820, 640, 910, 715, 1050, 560, 780, 905, 690, 142]],
        [[171, 136, 194, 149, 223, 116, 131, 190, 146, 700]],
      ],
      expected: [["low"], [""], [""], ["more out than in"], [""]],
      working:
        "median r −1.5569979237, MAD 0.0109905865; z = 0.6745 (r + 1.5569979237)/0.0109905865 = −13.94, −0.24, 0.24, and 700 is above 142; the last lot waits",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1600, [[1600], [100], [800]], [[1600, 1600, 1600, 1600, 1600]], [[100, 200, 400, 800, 1600]], 1.3],
      expected: [["high"], ["low"], [""]],
      working:
        "ratios 1/16, 1/8, 1/4, 1/2, 1: r is −4, −3, −2, −1, 0 times ln 2, median −2 ln 2, MAD ln 2; so z = 0.6745 · (2, −2, 1) = 1.349, −1.349 and 0.6745 against the limit of 1.3",
      ...exactly,
    },
    {
      status: "exact",
      given: [900, 150, [[1200], [880], [1000], [600]], [[258], [187], [216], [126]]],
      expected: { error: "#N/A", message: "pastFreshWeights must hold at least 5 finished lots; got 4" },
      working: "4 < 5",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

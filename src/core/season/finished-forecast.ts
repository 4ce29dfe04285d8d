import {
  type Answer,
  type BookColumn,
  bookList,
  defineFunction,
  exactly,
  explained,
  type FunctionPage,
  measured,
  optional,
} from "../define";
import { noAnswer } from "../errors";
import { studentQuantile } from "../numeric/student";
import { confidence, looseWeight, share, weight } from "../quantities";
import { berkeleyAdmissions, nistNoInt1 } from "../sources";
import { step } from "../working";
import { lotsFound, pastLots, pastNames, rememberedForBook } from "./lots";
import { originRegression } from "./origin-regression";

/** With fewer there is no telling how far lots scatter. */
const fewestLots = 3;

/**
 * What today's leaf will make, from lots made before: the line through the origin that their finished weights scatter
 * about. Expected b·x₀ with b = Σy/Σx. How the scatter grows with the lot is not known: its variance with the fresh
 * weight, as of many small accidents, or its size with the fresh weight, as of one moisture for the whole lot. Under
 * either, Student's t gives a range that holds as often as was asked; low is the lower of their two lower ends and high
 * the higher of their two upper ends, so that the range holds at least as often whichever is true.
 */
export const finishedForecast = defineFunction({
  id: "FINISHEDFORECAST",
  group: "season",
  parameters: [
    measured("freshWeight", weight),
    bookList("past", "pastFreshWeights", weight),
    bookList("past", "pastFinishedWeights", weight),
    optional("confidence", confidence, 0.95),
  ],
  result: {
    shape: "row",
    columns: [
      explained({ name: "low", quantity: looseWeight }),
      explained({ name: "expected", quantity: looseWeight }),
      explained({ name: "high", quantity: looseWeight }),
    ],
  },
  calculate: (freshWeight, pastFreshWeights, pastFinishedWeights, confidence): Answer[] => {
    const { byWeight, byShare } = regressionsOf(pastFreshWeights, pastFinishedWeights);
    const t = studentQuantile((1 + confidence) / 2, byWeight.degrees);
    const ends = [byWeight, byShare].flatMap(({ slope, scatter, predictionError }) => {
      // No scatter, no margin, however sure the answer should be.
      const margin = scatter === 0 ? 0 : t * predictionError(freshWeight);
      return [slope * freshWeight - margin, slope * freshWeight + margin];
    });
    return [Math.max(0, Math.min(...ends)), byWeight.slope * freshWeight, Math.min(freshWeight, Math.max(...ends))];
  },
});

const regressionsOf = rememberedForBook((pastFreshWeights: BookColumn, pastFinishedWeights: BookColumn) => {
  const lots = pastLots(pastFreshWeights, pastFinishedWeights, pastNames, { withSwapped: false });
  if (lots.fresh.length < fewestLots) {
    throw noAnswer(pastNames.fresh, { do: { kind: "lots", least: fewestLots } }, lotsFound(lots));
  }
  const byWeight = originRegression(lots.fresh, lots.finished, 1);
  // Lots that are all alike are so by either measure, whatever rounding makes of the other.
  return { byWeight, byShare: byWeight.scatter === 0 ? byWeight : originRegression(lots.fresh, lots.finished, 2) };
});

export const finishedForecastPage = {
  summary: "What today's leaf will make, with the range to expect, from your own past lots.",
  parameters: {
    freshWeight: "fresh weight of today's lot",
    pastFreshWeights: "fresh weights of lots made before; whole columns may be given, with their heading",
    pastFinishedWeights: "their finished weights; a lot without one is left out",
    confidence: "how often a lot should fall inside the range; 95 % is 95 lots of 100",
  },
  formula:
    "expected b·x₀, b = Σy/Σx; the range holds b·x₀ ± t(n − 1)·s·√(x₀ + x₀²/Σx), s² = Σ((y − bx)²/x)/(n − 1), and m·x₀ ± t(n − 1)·d·x₀·√(1 + 1/n), m the mean of y/x and d its standard deviation",
  working: (F: number, fresh: BookColumn, finished: BookColumn, sure: number) => {
    const { byWeight, byShare } = regressionsOf(fresh, finished);
    const lots = pastLots(fresh, finished, pastNames, { withSwapped: false });
    const sum = (weights: readonly number[]): number => weights.reduce((total, weight) => total + weight, 0);
    const [Σx, Σy, n] = [sum(lots.fresh), sum(lots.finished), lots.fresh.length];
    const t = studentQuantile((1 + sure) / 2, byWeight.degrees);
    const [u, v] = [byWeight.predictionError(F), byShare.predictionError(F)];
    const [expected, even] = [byWeight.slope * F, byShare.slope * F];
    return [
      step("outturn of the past lots together", "Σy / Σx", { Σy, Σx }, byWeight.slope, share),
      step("weight to expect", "b × x₀", { b: byWeight.slope, "x₀": F }, expected, looseWeight),
      step(
        "how far one lot scatters, if large lots scatter less in percent",
        "s × √(x₀ + x₀² / Σx)",
        { s: byWeight.scatter, "x₀": F, Σx },
        u,
        looseWeight,
      ),
      step(
        "weight at the mean of the lots' outturns, each counted alike",
        "m × x₀",
        { m: byShare.slope, "x₀": F },
        even,
        looseWeight,
      ),
      step(
        "how far one lot scatters, if all lots scatter alike in percent",
        "d × x₀ × √(1 + 1 / n)",
        { d: byShare.scatter, "x₀": F, n },
        v,
        looseWeight,
      ),
      step(
        "as sure as was asked, whichever is true: the lower of both lower ends, the weight to expect, the higher of both upper ends; never below 0 nor above the fresh weight",
        "expected ± t × u; even ± t × v; expected",
        { expected, t, u, even, v },
        finishedForecast.calculate(F, fresh, finished, sure),
      ),
    ];
  },
  guide: [
    "Use it on the morning when the leaf has come in, to plan packing or to promise tea: three cells, the least to expect, the weight to expect, and the most. It needs no moisture, only your own book; the expected weight is today's leaf at the outturn of the whole season.",
    "The range is for this one lot, and a confidence of 95 % means to hold it in 95 of 100 when nothing is wrong. A lot outside it is worth a look at the weights, and at what was different that day: rain on the leaf, another plot, coarser plucking. It widens for a larger lot, and narrows as you write more lots down.",
    "Measured with simulated lots that scatter normally, in either way. From 8 past lots on, for leaf within their size, it held 94.8 to 98.9 of 100 lots. With 3 to 6 it held 94.6 to 97.4 of 100, and for a lot of one and a half times or twice the largest 94.8 to 99.9. It pays for that with its width: with three past lots it is 2.3 to 2.5 times as wide as it would have to be if outturn and scatter were known, with eight 1.3 to 1.4 times, with forty 1.1 to 1.2 times.",
    "It takes for granted that today's leaf is like the leaf of the past lots, and that lots scatter by chance: all by the same percent, or large ones by less. The range is wide enough for either. Give it the lots of the same kind of leaf: a first flush says little about a third.",
    "Lots still open, empty rows and headings are passed over. Rows that cannot be right (text, a finished weight above the fresh one, an error) are left out without a word, so look at the column of those left out in SEASONTABLE. Lots that are merely unlikely are kept: find them with LOTFLAGS, and mend them first.",
    "Fewer than three finished lots give #N/A, for there is no telling how far two of them scatter. Lots that are all exactly alike give a range of no width, which says more about the book than about the leaf.",
    "The answer is a row of three. Inside a worksheet table ask for one of them: =INDEX(TEA.FINISHEDFORECAST(D2,B:B,C:C),1,2) is the weight to expect.",
  ],
  sources: [
    {
      work: nistNoInt1,
      place:
        "the line through the origin under this function gives its certified slope and deviations where the variance does not grow with x",
    },
  ],
  cautions: [],
  examples: [
    {
      given: [
        700,
        [["fresh g"], [1200], [880], [1000], [950], [600]],
        [["finished g"], [258], [187], [216], [null], [126]],
      ],
      gives: [[142.66583999304, 149.701086957, 156.556058299]],
      shows: "700 g of fresh leaf on an invented farm with four lots finished and one still open",
    },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [100, [[825], [560], [325], [417], [191], [373]], [[512], [353], [120], [138], [53], [22]], 0.5],
      expected: [[9.3500293353, 44.5, 79.6875031805]],
      source: {
        work: berkeleyAdmissions,
        place:
          "44.5 % of the male applicants of six departments were admitted, so 44.5 of 100 like them; the mean of the six shares would be 38.1. The ends by a second program, with t(0.75, 5) = 0.7266868 integrated at 40 digits",
      },
      tolerance: { absolute: 0.05 },
      because: "published to a tenth of a percent",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [300, [[50], [100], [150]], [[12], [20], [28]], 0.6],
      expected: [[188 / 3 - 2 * 26 ** 0.5, 60, 188 / 3 + 2 * 26 ** 0.5]],
      working:
        "b = 60/300 = 0.2, so 60; residuals 2, 0, −2, s² = (4/50 + 4/150)/2 = 4/75; t of 2 degrees in closed form, c·√2/√(1 − c²) = 0.75·√2 at c = 0.6; 0.75·√2·√(4/75)·√(300 + 300²/300) = 0.75·√(2 · 4/75 · 600) = 0.75 · 8 = 6: 54 to 66. Shares 0.24, 0.2 and 14/75 have the mean 47/225 and d² = 13/16875; 0.75·√2·300·√(13/16875 · 4/3) = √104: 188/3 ± 2√26, lower and higher",
      tolerance: { relative: 1e-12 },
      because: "exact arithmetic; the deviations lose digits of doubles",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [850, [[820], [640], [910], [715], [1050], [560]], [[171], [136], [194], [149], [223], [116]]],
      expected: [[172.6302646106, 179.0521831736, 184.9757333887]],
      working:
        "b = 989/4695; 850 b = 179.0521831736; s² = 0.00507799049; t(0.975, 5) = 2.57058183564, integrated numerically to 40 digits; 2.57058183564 · √(0.00507799049 · (850 + 850²/4695)) = 5.80389860197: 173.248 to 184.856. The shares have the mean 0.2103564694113 and d = 0.002615494643243; 850 · (0.2103564694113 ± 2.57058183564 · 0.002615494643243 · √(7/6)) is lower and higher",
      tolerance: { relative: 1e-12 },
      because: "worked to thirteen digits",
    },
    {
      status: "exact",
      exercises: "edge",
      given: [10, [[100], [100], [100]], [[95], [10], [60]], 0.8],
      expected: [[0, 5.5, 10]],
      working:
        "b = 165/300 = 0.55; s² = (40² + 45² + 5²)/100/2 = 18.25; t of 2 degrees 0.8·√2/0.6 = 1.886; 1.886 · √(18.25 · (10 + 100/300)) = 25.9, wider than 0 to 10, so the bounds stand; no range makes them narrower",
      ...exactly,
    },
    {
      status: "exact",
      given: [850, [[820], [640], [910]], [[171], [136], [null]]],
      expected: { error: "#N/A", message: "pastFreshWeights must hold at least 3 finished lots; got 2" },
      working: "the third lot is open: 2 < 3",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

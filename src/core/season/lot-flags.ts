import {
  type Answer,
  type BookCell,
  type BookColumn,
  bookList,
  defineFunction,
  exactly,
  type FunctionPage,
  headers,
  optional,
} from "../define";
import { share, text, weight, zLimit, zScore } from "../quantities";
import { isSheetError } from "../sheet-error";
import { iglewiczHoaglin, modifiedScores } from "../sources";
import { step, workingNumber } from "../working";
import { limitOfBook } from "./flag-limit";
import { firstRow, isAmount, isGap, isOpen, lotNames, lotProblem, pastLots } from "./lots";
import { flagOf, outturnSpread, robustZ } from "./outturn-spread";
import { distance } from "./spread-working";

/** The outturn of every lot of a book, how unusual it is among them, and the flag that LOTFLAG gives: a row for each. */
export const lotFlags = defineFunction({
  id: "LOTFLAGS",
  group: "season",
  parameters: [
    bookList("lots", "freshWeights", weight, { blank: "waits" }),
    bookList("lots", "finishedWeights", weight, { blank: "waits" }),
    optional("limit", zLimit),
    headers,
  ],
  result: {
    shape: "table",
    columns: [
      { name: "outturn", quantity: share },
      { name: "z", quantity: zScore },
      { name: "flag", quantity: text },
    ],
  },
  calculate: (freshWeights, finishedWeights, typed): Answer | Answer[][] => {
    const first = firstRow(freshWeights, finishedWeights);
    // A heading alone: the season has not begun.
    if (freshWeights.length === first) return "";
    const lots = pastLots(freshWeights, finishedWeights, lotNames, { withSwapped: true });
    const spread = outturnSpread(lots, lotNames.fresh);
    const limit = typed ?? limitOfBook(spread);
    const rows: Answer[][] = [];
    for (let row = first; row < freshWeights.length; row += 1) {
      const fresh = freshWeights[row]?.[0];
      const finished = finishedWeights[row]?.[0];
      if (isAmount(fresh) && isAmount(finished)) {
        const z = robustZ(spread, fresh, finished);
        rows.push([finished / fresh, z, flagOf(z, fresh, finished, limit)]);
      } else {
        const instead = isOpen(fresh, finished) || isGap(fresh, finished) ? "" : errorOf(fresh, finished, row);
        rows.push([instead, instead, instead]);
      }
    }
    return rows;
  },
});

/** An error of the sheet comes back as it is. */
const errorOf = (fresh: BookCell, finished: BookCell, row: number): Answer =>
  [fresh, finished].find(isSheetError) ?? lotProblem(fresh, finished, row, lotNames);

const publishedData = [10, 12, 12, 13, 12, 11, 14, 300];

export const lotFlagsPage = {
  summary: "Every lot of a book: its outturn, how unusual it is, and a flag where it should be looked at.",
  parameters: {
    freshWeights: "fresh weights of the lots; whole columns may be given, with their heading",
    finishedWeights: "their finished weights; blank while a lot is not finished",
    limit:
      "how many usual distances from the usual outturn are too many; left out, as many as the size of the book asks for",
  },
  formula: "r = ln(P / F); z = 0.6745 × (r − median) / MAD, MAD the median of |r − median|; flagged when |z| > limit",
  working: (fresh: BookColumn, finished: BookColumn, typed?: number) => {
    const rows = lotFlags.calculate(fresh, finished, typed);
    if (!Array.isArray(rows)) return [step("the season has not begun", "—", "—", rows, text)];
    const lots = pastLots(fresh, finished, lotNames, { withSwapped: true });
    const spread = outturnSpread(lots, lotNames.fresh);
    const limit = typed ?? limitOfBook(spread);
    const [F, P] = [lots.fresh[0] as number, lots.finished[0] as number];
    return [
      step("outturn of the first finished lot", "P / F", { P, F }, P / F, share),
      step("the same on the scale of logarithms", "ln(P / F)", { P, F }, Math.log(P / F), zScore),
      ...(spread.unit === 0 ? [] : [distance(F, P, spread)]),
      step(
        "every lot in the same way; flagged when farther away than the limit",
        "−limit ≤ z ≤ limit",
        `−${workingNumber(limit)} ≤ z ≤ ${workingNumber(limit)}`,
        rows,
      ),
    ];
  },
  guide: [
    "Use it before you trust a season's numbers, to find the lots that were weighed or written down wrong. It gives a row for every row of the book, in the same order, so put it beside the book: in the row of the headings when the lists begin there or just below, and in the row of the first lot with FALSE for headers.",
    'The flag is "high" (more tea than the leaf usually makes), "low" (less), "more out than in" (finished above fresh, which is flagged here and refused elsewhere), or nothing. z says how far: of the lots of a good book of twenty 69 in 100 lie within 1; in the tens, look first for a slip of the pen.',
    "Leave the limit out, and it follows the number of lots, so that of twenty clean books about one has a flag: it is 8 for five lots, 4.6 for ten, 3.8 for forty. A limit that you type counts for books of every size. The 3.5 that is often advised flags a lot in 20 of a hundred clean books of five lots, in 13 of those of ten, and in 9 of those of forty.",
    "Measured with simulated lots whose outturns scatter by 3 %: a lot that is 20 % too low was flagged in 88 of 100 books of ten lots and in over 99 of those of forty. What counts is the mistake against that scatter; docs/how-sure.md has more sizes.",
    "A flag says look, and not wrong: leaf that came in wet from rain has a low outturn that is true. Compare flagged lots by their dry matter with DRYRECOVERY when the moistures are known.",
    "The comparison is by ratio: twice the usual outturn and half of it are equally far away. Usual means the middle lot, so a few gross mistakes do not hide each other. When more than half of the lots are alike the mean distance takes the place of the middle one; then the limit is 3.5, whatever the size; when all are alike z is 0.",
    "A lot that is still open and an empty row give empty cells. A row with a mistake in it holds the error and says which cell it is. Fewer than five finished lots give #N/A.",
    "A spill cannot stand inside a worksheet table. There, use LOTFLAG, which gives the flag of one lot in one cell.",
  ],
  sources: [{ work: iglewiczHoaglin, place: "modified z-score, 1.3.5.17" }],
  cautions: [],
  examples: [
    {
      given: [
        [["fresh g"], [1200], [880], [1000], [600], [1500], [900], [1100]],
        [["finished g"], [258], [187], [216], [126], [318], [150], [null]],
      ],
      gives: [
        ["outturn", "z", "flag"],
        [0.215, 0.738058623384, ""],
        [0.2125, 0.0675263619746, ""],
        [0.216, 1.0040909096, ""],
        [0.21, -0.610941376616, ""],
        [0.212, -0.0675263619746, ""],
        [150 / 900, -13.860542783, "low"],
        ["", "", ""],
      ],
      shows: "seven lots of an invented farm, the sixth far below the others and the last still open",
    },
  ],
  checks: [
    {
      // The table scores 10, 12, 12, 13, 12, 11, 14 and 300: here they are thousandths of ln(finished/fresh) + 1.
      status: "published",
      exercises: "calculation",
      given: [
        [[1, 1, 1, 1, 1, 1, 1, 1]],
        [/* @__PURE__ */ publishedData.map((value) => Math.exp(value / 1000 - 1))],
        null,
        false,
      ],
      expected: /* @__PURE__ */ publishedData.map((value, index) => [
        Math.exp(value / 1000 - 1),
        [-1.349, 0, 0, 0.6745, 0, -0.6745, 1.349, 194.256][index] as number,
        value === 300 ? "high" : "",
      ]),
      source: {
        work: modifiedScores,
        place: "example data table, its numbers taken for thousandths of ln(finished/fresh) + 1",
      },
      tolerance: { absolute: 5e-5 },
      because: "published to four decimals",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [
        [[820], [640], [910], [715], [1050], [560], [780], [905], [690], [142]],
        [[171], [136], [194], [149], [223], [116], [131], [190], [146], [700]],
        null,
        false,
      ],
      expected: [
        [171 / 820, -0.6531597811694, ""],
        [136 / 640, 0.5022966700688, ""],
        [194 / 910, 0.7003307269077, ""],
        [149 / 715, -0.6958402188306, ""],
        [223 / 1050, 0.4679056907647, ""],
        [116 / 560, -1.064699971867, ""],
        [131 / 780, -13.93720473556, "low"],
        [190 / 905, -0.240140351047304, ""],
        [146 / 690, 0.240140351047304, ""],
        [700 / 142, 193.4558658237, "more out than in"],
      ],
      working:
        "r = ln(P/F): the median lies between those of (905, 190) and (690, 146), (−1.5609108 − 1.5530850)/2 = −1.5569979237112; the distances from it sorted, the middle two give MAD 0.0109905865408894; z = 0.6745 (r − median)/MAD, worked with 40 digits",
      tolerance: { relative: 1e-11 },
      because: "exact arithmetic; r − median loses digits of doubles",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [[[1600, 1600, 1600, 1600, 1600]], [[100, 200, 400, 800, 1600]], 1, false],
      expected: [
        [0.0625, -1.349, "low"],
        [0.125, -0.6745, ""],
        [0.25, 0, ""],
        [0.5, 0.6745, ""],
        [1, 1.349, "high"],
      ],
      working:
        "ratios 1/16, 1/8, 1/4, 1/2, 1: r is −4, −3, −2, −1, 0 times ln 2, median −2 ln 2, distances 2, 1, 0, 1, 2, MAD ln 2; z = 0.6745 · (−2, −1, 0, 1, 2)",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [[[400, 800, 1200, 1600, 800]], [[100, 200, 300, 400, 400]], null, false],
      expected: [
        [0.25, 0, ""],
        [0.25, 0, ""],
        [0.25, 0, ""],
        [0.25, 0, ""],
        [0.5, 5 / 1.253314, "high"],
      ],
      working:
        "four lots alike, so MAD is 0; mean distance ln 2 / 5, and the last lot lies ln 2 away: z = ln 2 / (1.253314 · ln 2 / 5) = 5 / 1.253314 = 3.989",
      ...exactly,
    },
    {
      status: "exact",
      given: [
        [[1200], [880], [1000], [600], [900]],
        [[258], [187], [216], [126], [null]],
      ],
      expected: { error: "#N/A", message: "freshWeights must hold at least 5 finished lots; got 4" },
      working: "four lots are finished: 4 < 5",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

import { type Answer, defineFunction, exactly, explained, type FunctionPage, measuredList, optional } from "../define";
import { noAnswer } from "../errors";
import { meanAndScatter } from "../numeric/mean-and-scatter";
import { studentQuantile } from "../numeric/student";
import { mavroReadings } from "../published-readings";
import { anyNumber, confidence, halfWidth, scatterOf, standardError, tally } from "../quantities";
import { nistMavro, pennStateSampleSize } from "../sources";
import { step, sumOf, workingNumber } from "../working";

/** More readings than this nobody takes by hand. */
export const mostReadings = 1_000_000;

/** How far rounding may lift a half-width above the one asked for. */
export const rounding = 1e-12;

/**
 * Mean of repeated readings of one thing: x̄ ± t(n − 1)·s/√n, s with n − 1. The readings needed are the least N ≥ 2 with
 * t(N − 1)·s/√N ≤ halfWidth, those taken included; t/√N falls, so N is found by halving. One reading has a mean alone.
 * Source: Student's t; W. S. Gosset's range for a mean as every textbook has it.
 */
export const sampleMean = defineFunction({
  id: "SAMPLEMEAN",
  group: "uncertainty",
  parameters: [
    measuredList("repeats", anyNumber),
    optional("halfWidth", halfWidth),
    optional("confidence", confidence, 0.95),
  ],
  result: {
    shape: "row",
    columns: [
      explained({ name: "mean", quantity: anyNumber }),
      explained({ name: "low", quantity: anyNumber }),
      explained({ name: "high", quantity: anyNumber }),
      explained({ name: "standard error", quantity: standardError }),
      explained({ name: "scatter", quantity: scatterOf }),
      explained({ name: "readings", quantity: tally }),
      explained({ name: "needed", quantity: tally }),
    ],
  },
  calculate: (repeats, halfWidth, confidence): Answer[] => {
    const n = repeats.length;
    const { mean, scatter } = meanAndScatter(repeats);
    if (n < 2) return [mean, "", "", "", "", n, ""];
    const error = scatter / Math.sqrt(n);
    const margin = error === 0 ? 0 : quantile(n, confidence) * error;
    const needed = halfWidth === undefined ? "" : readingsNeeded(scatter, halfWidth, confidence);
    return [mean, mean - margin, mean + margin, error, scatter, n, needed];
  },
});

const quantile = (readings: number, confidence: number): number => studentQuantile((1 + confidence) / 2, readings - 1);

function readingsNeeded(scatter: number, halfWidth: number, confidence: number): Answer {
  const isEnough = (readings: number): boolean =>
    scatter === 0 || quantile(readings, confidence) * scatter <= halfWidth * Math.sqrt(readings) * (1 + rounding);
  if (isEnough(2)) return 2;
  if (!isEnough(mostReadings)) {
    const found = { kind: "value", value: halfWidth } as const;
    return noAnswer("halfWidth", { be: "wide enough for a million readings at most" }, found);
  }
  let tooFew = 2;
  let enough = mostReadings;
  while (enough - tooFew > 1) {
    const middle = Math.floor((tooFew + enough) / 2);
    if (isEnough(middle)) enough = middle;
    else tooFew = middle;
  }
  return enough;
}

/** Half of the range of three readings that scatter by 0.537: t(0.975, 2) · 0.537 / √3. */
const closedForm = (0.537 * 0.95 * Math.SQRT2) / Math.sqrt(3 * (1 - 0.95 ** 2));

export const sampleMeanPage = {
  summary: "Mean of repeated readings with its range and standard error, and how many readings to take.",
  parameters: {
    repeats: "readings of the same thing; blank cells are passed over",
    halfWidth: "how near, either way, you want to know the mean; without it no number of readings is given",
    confidence: "how often the true mean should lie inside the range; 95 % is 95 of 100",
  },
  formula:
    "x̄ ± t(n − 1) × s / √n, s² = Σ(x − x̄)² / (n − 1); needed: the least N ≥ 2 with t(N − 1) × s / √N ≤ halfWidth",
  working: (repeats: readonly number[], wanted: number | undefined, sure: number) => {
    const row = sampleMean.calculate(repeats, wanted, sure);
    const [mean, , , error, s] = row as number[] as [number, number, number, number, number];
    const n = repeats.length;
    const averaged = step(
      "the mean",
      "(x₁ + x₂ + …) / n",
      `(${sumOf(repeats.map(workingNumber))}) / ${n}`,
      mean,
      anyNumber,
    );
    if (n < 2) return [averaged, step("one reading tells nothing of the scatter", "x̄", workingNumber(mean), row)];
    const t = quantile(n, sure);
    const [shownMean, margin] = [workingNumber(mean), workingNumber(t * error)];
    return [
      averaged,
      step(
        "how far one reading scatters",
        "√(Σ(x − x̄)² / (n − 1))",
        `√(${workingNumber(s * s * (n - 1))} / (${n} − 1))`,
        s,
        scatterOf,
      ),
      step("standard error of the mean", "s / √n", `${workingNumber(s)} / √(${n})`, error, standardError),
      step("half of the range, t by the number of readings", "t × u", { t, u: error }, t * error, halfWidth),
      step(
        "the mean with its range; the readings needed for the half-width, all counted",
        "x̄ − t × u; x̄ + t × u",
        `${shownMean} − ${margin}; ${shownMean} + ${margin}`,
        row,
      ),
    ];
  },
  guide: [
    "Use it wherever you measure one thing several times: oven moistures of one basket, hundred-bud weights, one bag on the scale ten times. The standard error is the number that weightError, freshMoistureError and the other errors of these functions ask for.",
    "The range takes for granted that readings scatter by chance, as a bell does. Measured with simulated readings, a range of 95 % held the true mean in 95 of 100 when five readings scattered as a bell does, in 94 when they scattered evenly between two ends, and in 89 with a long tail to one side; docs/how-sure.md has more. It tells nothing of what all readings share: repeats of one dish on one scale say nothing about a scale that reads 1 % high, or about a basket that was not mixed.",
    "Type halfWidth, in the unit of the readings, and the last cell says how many readings make the range that narrow, those taken included: it is at most the number of readings once the range is narrow enough. It takes the scatter seen so far as the true one. Five readings know the scatter to a third only, so take half of what is asked, and ask again: measured likewise, three readings at first made the range narrow enough in 52 of 100, five in 60 and ten in 73.",
    "Blank cells are passed over, so that the list may be ruled ahead; a 0 is a reading. One reading gives its own value and nothing else. Where more than a million readings would be needed, that cell is #N/A and the others stand.",
    "The answer is a row of seven, and a spill cannot stand inside a worksheet table: there ask for one of them, =INDEX(TEA.SAMPLEMEAN(A2:A11), 1, 4) is the standard error.",
  ],
  sources: [
    { work: nistMavro, place: "certified mean and standard deviation" },
    { work: pennStateSampleSize, place: "readings for a half-width, by t of the number of readings itself" },
  ],
  cautions: [],
  examples: [
    {
      given: [[[9.1], [8.8], [9], [9.4], [8.7]], 0.1],
      gives: [[9, 8.6599563097, 9.3400436903, 0.122474487139, 0.273861278753, 5, 32]],
      shows: "five hundred-bud weights of an invented farm; to know the mean to 0.1 g takes 32 of them",
    },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [mavroReadings.map((reading) => [reading])],
      expected: [
        [2.001856, 2.0017340445, 2.0019779555, 0.000429123454003053 / Math.sqrt(50), 0.000429123454003053, 50, ""],
      ],
      source: {
        work: nistMavro,
        place:
          "certified mean 2.00185600000000 and standard deviation 0.000429123454003053; the range is 2.009575237 · s / √50 to either side",
      },
      tolerance: { relative: 3e-11 },
      because:
        "the ends of the range are written to ten decimals; test/core/sample-mean.test.ts holds mean and deviation to their certified digits",
    },
    {
      status: "published",
      exercises: "calculation",
      given: [[[-400], [0], [400]], 120, 0.9],
      expected: [[0, -360 * Math.sqrt(2 / 0.57), 360 * Math.sqrt(2 / 0.57), 400 / Math.sqrt(3), 400, 3, 32]],
      source: {
        work: pennStateSampleSize,
        place: "a standard deviation of 400, a half-width of 120 at 90 %: 32 readings; these three scatter by 400",
      },
      tolerance: { relative: 1e-12 },
      because:
        "the count is published; √(320000/2) = 400, and t(0.95, 2) = 0.9·√2/√(1 − 0.81) in closed form: 400/√3 times that is 360·√(2/0.57)",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [[[5.2], [5.4]], 0.1],
      expected: [[5.3, 4.02937952636, 6.57062047364, 0.1, Math.sqrt(0.02), 2, 11]],
      working:
        "s = √(0.01 + 0.01) = 0.1414213562; s/√2 = 0.1; t(0.975, 1) = tan(0.475 π) = 12.7062047364; 2.228138852 · 0.1414213562 / √11 = 0.0950 ≤ 0.1, and 2.262157163 · 0.1414213562 / √10 = 0.1012 is above",
      tolerance: { relative: 1e-11 },
      because: "worked to twelve digits; the readings are no doubles",
    },
    {
      status: "exact",
      exercises: "edge",
      given: [[[7], [7], [7]], 0.1],
      expected: [[7, 7, 7, 0, 0, 3, 2]],
      working: "no scatter: a range of no width, and two readings would have told as much",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "input",
      given: [[[7], [null], [9]]],
      expected: [[8, 8 - 12.7062047361747, 8 + 12.7062047361747, 1, Math.SQRT2, 2, ""]],
      working: "a blank is passed over: (7 + 9)/2 = 8, s = √2, s/√2 = 1, t(0.975, 1) = tan(0.475 π) = 12.7062047361747",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [[[7]], 0.1],
      expected: [[7, "", "", "", "", 1, ""]],
      working: "one reading is its own mean and has no scatter",
      ...exactly,
    },
    {
      status: "exact",
      given: [[[null], [null]]],
      expected: [["", "", "", "", "", "", ""]],
      working: "nothing measured yet: the answer waits",
      ...exactly,
    },
    {
      status: "memory",
      exercises: "calculation",
      given: [[[1.563], [2.1], [2.637]], 0.3],
      expected: [[2.1, 2.1 - closedForm, 2.1 + closedForm, 0.537 / Math.sqrt(3), 0.537, 3, 15]],
      recalls:
        "an exercise without a known author: s 0.537, half-width 0.3 at 95 %, 15 readings; t(0.975, 2) = 0.95·√2/√(1 − 0.95²)",
      tolerance: { relative: 1e-12 },
      because: "the readings are no doubles",
    },
    {
      status: "exact",
      exercises: "edge",
      given: [[[0], [1000]], 0.001],
      expected: [
        [
          500,
          500 - 6353.10236808735,
          500 + 6353.10236808735,
          500,
          Math.sqrt(500000),
          2,
          { error: "#N/A", message: "halfWidth must be wide enough for a million readings at most; got 0.001" },
        ],
      ],
      working: "1.96 · 707.1 / √1000000 = 1.386, far above 0.001; 500 · 12.7062047361747 = 6353.10236808735",
      tolerance: { relative: 1e-12 },
      because: "t to fifteen digits",
    },
    {
      status: "exact",
      given: [[[9.1], ["9.2"]]],
      expected: {
        error: "#VALUE!",
        message:
          'repeats must be a number; got the text "9.2" (it looks like a number but is stored as text: type it again as a number) in place 2 of the list',
      },
      working: "text is never guessed into a number",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

import { paidWeight, saleLimit } from "../cautions";
import {
  type Answer,
  defineFunction,
  exactly,
  explained,
  type FunctionPage,
  measuredList,
  optional,
  setting,
} from "../define";
import { mustBe, noAnswer } from "../errors";
import { meanAndScatter } from "../numeric/mean-and-scatter";
import { studentQuantile } from "../numeric/student";
import { Phrase } from "../phrases";
import { count, scatterOf, share, tally, text, weight, weightDifference } from "../quantities";
import { ukPackagedGoods, ukPackagedGoodsGuidance, ukPackageSchedule } from "../sources";
import { step, sumOf, workingNumber } from "../working";

/** From so many packages on, a lot is judged by a sample, with an allowance for what a sample may miss. */
export const largeLot = 100;

/** One-sided 99.5 %: what the reference test of the regulations allows the mean of a sample. */
export const sampleConfidence = 0.995;

/** Noise of computed weights, as a share of the nominal weight: exactly T short is not more than T short. */
export const noise = 1e-9;

/**
 * Net weights of filled packages against the nominal weight N and the tolerance T that the maker types. Limit of the
 * mean: N; for a sample of a lot of 100 packages and more N − t₀.₉₉₅(n − 1)·s/√n. Short: N − w > T; far short: > 2T.
 * Source: SI 2006/659, Schedule 2, paragraphs 4.1 to 4.7.
 */
export const packCheck = defineFunction({
  id: "PACKCHECK",
  group: "packing",
  parameters: [
    measuredList("netWeights", weight),
    setting("nominal", weight),
    setting("tolerance", weight),
    optional("packages", count),
    optional("shortShare", share, 0.025),
  ],
  result: {
    shape: "row",
    columns: [
      explained({ name: "verdict", quantity: text }),
      explained({ name: "mean", quantity: weight }),
      explained({ name: "limit", quantity: weightDifference }),
      explained({ name: "scatter", quantity: scatterOf }),
      explained({ name: "short", quantity: tally }),
      explained({ name: "far short", quantity: tally }),
    ],
    picture: explained({ shows: "fills", weights: "netWeights", nominal: "nominal", tolerance: "tolerance" }),
  },
  calculate: (netWeights, nominal, tolerance, packages, shortShare): Answer[] => {
    const n = netWeights.length;
    if (packages !== undefined && packages < n) {
      throw mustBe("packages", { kind: "limit", is: "at least", limit: n, what: "as many as were weighed" }, packages);
    }
    const { mean, scatter } = meanAndScatter(netWeights);
    const shortBy = (allowed: number): number =>
      netWeights.filter((net) => nominal - net > allowed + noise * nominal).length;
    const [short, farShort] = [shortBy(tolerance), shortBy(2 * tolerance)];
    const rest = [n < 2 ? "" : scatter, short, farShort];
    if (!isSample(n, packages)) return [verdict(nominal), mean, nominal, ...rest];
    if (n < 2) {
      const unknown = noAnswer(
        "netWeights",
        { do: "hold at least two packages of a large lot" },
        { kind: "value", value: n },
      );
      return [unknown, mean, unknown, ...rest];
    }
    const limit = nominal - allowance(n) * scatter;
    return [verdict(limit), mean, limit, ...rest];

    function verdict(limit: number): Phrase {
      if (farShort > 0) return new Phrase("a package short by more than twice the tolerance");
      if (mean < limit - noise * nominal) return new Phrase("mean below the limit");
      if (short / n > shortShare) return new Phrase("too many short by more than the tolerance");
      return new Phrase("agrees");
    }
  },
});

const isSample = (weighed: number, packages: number | undefined): boolean =>
  packages !== undefined && packages >= largeLot && packages > weighed;

/** In standard deviations, what the mean of n packages of many may lie below the mean of all. */
const allowance = (n: number): number => studentQuantile(sampleConfidence, n - 1) / Math.sqrt(n);

const twelve = [50.1, 49.8, 50.3, 50, 49.9, 50.2, 50.1, 49.7, 50.4, 50, 50.1, 50.2] as const;
const column = (weights: readonly number[]) => weights.map((net) => [net]);
const lastOfTwelve = (net: number) => column([...twelve.slice(0, -1), net]);
const repeated = (times: number, net: number): number[] => new Array<number>(times).fill(net);
const halfAndHalf = () => column([...repeated(15, 49.6), ...repeated(15, 50.2)]);

/** n weights that scatter by exactly 1 about 0 above the nominal weight: the limit is then the allowance itself. */
const scatteringByOne = (n: number) => {
  const half = Math.sqrt((n - 1) / n);
  return column([...repeated(n / 2, 100 - half), ...repeated(n / 2, 100 + half)]);
};

const ofOnePackage = {
  error: "#N/A",
  message: "netWeights must hold at least two packages of a large lot; got 1",
};

export const packCheckPage = {
  summary: "Net weights of filled packages against the nominal weight and the tolerance you type.",
  parameters: {
    netWeights: "net weights of the packages weighed, one for each; blank cells are passed over",
    nominal: "weight that the packages state",
    tolerance: "how much a single package may be short, in the unit of the weights: look it up where you sell",
    packages: "how many packages the whole lot has; left out, those weighed are all",
    shortShare: "share of the packages that may be short by more than the tolerance; left out, 2.5 %",
  },
  formula:
    "mean ≥ limit; short: N − w > T; far short: N − w > 2T; limit = N, or N − t₀.₉₉₅(n − 1) × s / √n for a sample of 100 packages and more",
  working: (weights: readonly number[], N: number, T: number, packages: number | undefined, shortShare: number) => {
    const row = packCheck.calculate(weights, N, T, packages, shortShare);
    const [, mean, limit] = row as [string, number, number];
    const n = weights.length;
    const { scatter: s } = meanAndScatter(weights);
    const least = weights.reduce((lowest, net) => Math.min(lowest, net));
    return [
      step("the mean", "(w₁ + w₂ + …) / n", `(${sumOf(weights.map(workingNumber))}) / ${n}`, mean, weight),
      ...(isSample(n, packages) && n > 1
        ? [
            step(
              "what the mean must reach, with an allowance for packages that were not weighed",
              "N − t × s / √(n)",
              { N, t: studentQuantile(sampleConfidence, n - 1), s, n },
              limit,
              weight,
            ),
          ]
        : []),
      step(
        "the lightest package; the nominal weight less the tolerance; less twice the tolerance",
        "w; N − T; N − 2 × T",
        { w: least, N, T },
        row,
      ),
    ];
  },
  guide: [
    'Use it when the tins are filled: weigh them net, type what they state and the tolerance of the law where you sell, and read the verdict, the first of these that holds: "a package short by more than twice the tolerance", "mean below the limit", "too many short by more than the tolerance", "agrees".',
    "It is your own check on your own scale, never a ruling, and agreeing says nothing about what may be sold. The law differs by country, and some ask that no package be short at all: then type 0% for shortShare and the smallest tolerance. Inspectors use a plan of their own and a verified scale.",
    "The tolerance is always yours to type. In the United Kingdom it is 9 % for 5 to 50 g, 4.5 g up to 100 g, 4.5 % up to 200 g, 9 g up to 300 g and 3 % up to 500 g, a percentage rounded up to 0.1 g; not more than 2.5 % of the packages may be short by more than it, and none by more than twice. Yours may differ.",
    "Weigh net: empty tins scatter more than fills. Weigh each empty tin before it is filled, or fill on the tared scale.",
    "When only some packages of a lot of a hundred and more are weighed, type how many there are: the mean of a sample may lie a little below the nominal weight by chance, and the limit gives way by what 99.5 % of samples keep to. Measured with simulated fills: of 100 large lots that are right, 0.6 or fewer are said to be short; of 100 whose mean lies half the scatter of a fill below the nominal weight, ten weighed packages find 10, twenty 29 and fifty 80. In smaller lots the limit is the nominal weight itself, and the mean of ten weighed lies below it in half of the lots that are exactly right: weigh them all. docs/how-sure.md has more. Of few packages, a share of 2.5 % forbids even one: below 40 that were weighed, a single short one is too many.",
    "The answer is a row of six, and a spill cannot stand inside a worksheet table: there ask for the verdict alone, =INDEX(TEA.PACKCHECK(A2:A13, 50, 4.5), 1, 1). One single package of a large lot has no limit: verdict and limit are then #N/A.",
  ],
  sources: [
    { work: ukPackageSchedule, place: "Schedule 2, paragraphs 4.1 to 4.7, the reference test" },
    { work: ukPackagedGoods, place: "table of tolerable negative errors" },
    { work: ukPackagedGoodsGuidance, place: "the three packers' rules" },
  ],
  cautions: [paidWeight, saleLimit],
  examples: [
    {
      given: [column([100.4, 99.2, 100.6, 100.2]), 100, 4.5],
      gives: [["agrees", 100.1, 100, Math.sqrt(1.16 / 3), 0, 0]],
      shows: "four tins of an invented farm, one of them 0.8 g short",
    },
  ],
  checks: [
    ...(
      [
        [20, 0.64],
        [30, 0.503],
        [50, 0.379],
      ] as const
    ).map(([n, published]): FunctionPage["checks"][number] => ({
      status: "published",
      exercises: "calculation",
      given: [scatteringByOne(n), 100, 10, 1000],
      expected: [["agrees", 100, 100 - published, 1, 0, 0]],
      source: {
        work: ukPackageSchedule,
        place: `the mean of ${n} packages must reach the nominal quantity less ${published.toFixed(3)} s; these scatter by 1`,
      },
      tolerance: { absolute: 0.0005 },
      because: "published to three decimals",
    })),
    ...(
      [
        [20, 0.6397244259],
        [30, 0.5032449122],
        [50, 0.3790024428],
      ] as const
    ).map(([n, worked]): FunctionPage["checks"][number] => ({
      status: "exact",
      exercises: "calculation",
      given: [scatteringByOne(n), 100, 10, 1000],
      expected: [["agrees", 100, 100 - worked, 1, 0, 0]],
      working: `t₀.₉₉₅(${n - 1}) / √${n} = ${worked}, t integrated numerically to 40 digits in a separate program`,
      tolerance: { absolute: 1e-10 },
      because: "ten decimals were written down",
    })),
    {
      status: "exact",
      exercises: "calculation",
      given: [column(twelve), 50, 4.5],
      expected: [["agrees", 50 + 0.8 / 12, 50, 0.2015094554, 0, 0]],
      working:
        "the differences from 50 add up to 0.8: 50.0666666667; their squares to 0.50, s² = (0.50 − 0.64/12)/11 = 0.0406060606; the lightest, 49.7, is 0.3 short",
      tolerance: { absolute: 1e-10 },
      because: "ten decimals were written down",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [halfAndHalf(), 50, 4.5, 200],
      expected: [["agrees", 49.9, 49.8464455962, 0.3051285766, 0, 0]],
      working:
        "s² = 30 · 0.09/29, s = 0.3051285766; 50 − 0.5032449122 · 0.3051285766 = 49.8464455962, below the mean of 49.9",
      tolerance: { absolute: 1e-10 },
      because: "ten decimals were written down",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [halfAndHalf(), 50, 4.5],
      expected: [["mean below the limit", 49.9, 50, 0.3051285766, 0, 0]],
      working: "when the thirty are all there are, the limit is the nominal weight, and 49.9 < 50",
      tolerance: { absolute: 1e-10 },
      because: "ten decimals were written down",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [halfAndHalf(), 50, 4.5, 80],
      expected: [["mean below the limit", 49.9, 50, 0.3051285766, 0, 0]],
      working: "of 80 packages, fewer than 100, likewise",
      tolerance: { absolute: 1e-10 },
      because: "ten decimals were written down",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [lastOfTwelve(40.9), 50, 4.5],
      expected: [
        [
          "a package short by more than twice the tolerance",
          591.5 / 12,
          50,
          Math.sqrt((83.27 - 72.25 / 12) / 11),
          1,
          1,
        ],
      ],
      working: "50 − 40.9 = 9.1 > 9; the differences from 50 add up to 0.6 − 9.1 = −8.5, their squares to 0.46 + 82.81",
      tolerance: { relative: 1e-12 },
      because: "exact arithmetic; the weights are no doubles",
    },
    {
      status: "exact",
      exercises: "edge",
      given: [lastOfTwelve(41), 50, 4.5],
      expected: [["mean below the limit", 49.3, 50, Math.sqrt((81.46 - 70.56 / 12) / 11), 1, 0]],
      working: "50 − 41 = 9, exactly twice the tolerance and not more; (600 + 0.6 − 9)/12 = 49.3",
      tolerance: { relative: 1e-12 },
      because: "exact arithmetic; the weights are no doubles",
    },
    {
      status: "exact",
      exercises: "edge",
      given: [column([18.2, 21, 21, 21]), 20, 1.8],
      expected: [["agrees", 20.3, 20, 1.4, 0, 0]],
      working: "20 − 18.2 = 1.8, exactly the tolerance and not more; s² = (4.41 + 3 · 0.49)/3 = 1.96",
      tolerance: { relative: 1e-12 },
      because: "exact arithmetic; the weights are no doubles",
    },
    {
      status: "exact",
      exercises: "edge",
      given: [column([45.4, ...repeated(39, 50.4)]), 50, 4.5],
      expected: [["agrees", 50.275, 50, Math.sqrt(0.625), 1, 0]],
      working: "one of forty is 4.6 short: 1/40 = 2.5 %, not more; s² = (25 − 25/40)/39 = 0.625",
      tolerance: { relative: 1e-12 },
      because: "exact arithmetic; the weights are no doubles",
    },
    {
      status: "exact",
      exercises: "edge",
      given: [column([45.4, ...repeated(38, 50.4)]), 50, 4.5],
      expected: [["too many short by more than the tolerance", 50.4 - 5 / 39, 50, Math.sqrt(25 / 39), 1, 0]],
      working: "one of thirty-nine: 2.56 %, more than 2.5 %; s² = (25 − 25/39)/38 = 25/39",
      tolerance: { relative: 1e-12 },
      because: "exact arithmetic; the weights are no doubles",
    },
    {
      status: "exact",
      exercises: "edge",
      given: [50.1, 50, 4.5, 200],
      expected: [[ofOnePackage, 50.1, ofOnePackage, "", 0, 0]],
      working: "one package of many has no scatter to make an allowance from",
      ...exactly,
    },
    {
      status: "exact",
      given: [column([50.1, 49.9]), 50, 4.5, 1],
      expected: { error: "#VALUE!", message: "packages must be at least 2, as many as were weighed; got 1" },
      working: "1 < 2",
      ...exactly,
    },
    {
      status: "exact",
      given: [[[null], [null]], 50, 4.5],
      expected: [["", "", "", "", "", ""]],
      working: "no tin weighed yet: the answer waits",
      ...exactly,
    },
    {
      status: "exact",
      given: [column(twelve), 50, null],
      expected: { error: "#VALUE!", message: "tolerance must be a weight above 0; got a blank" },
      working: "none is supplied here",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

import {
  type Answer,
  defineFunction,
  exactly,
  explained,
  type FunctionPage,
  measured,
  measuredList,
  optional,
} from "../define";
import { noAnswer } from "../errors";
import { studentQuantile } from "../numeric/student";
import { mavroReadings } from "../published-readings";
import { confidence, count, pieces, piecesAnHour, plainNumber, timeSpan, weight } from "../quantities";
import { originRegression } from "../season/origin-regression";
import { nistMavro } from "../sources";
import { step, workingNumber } from "../working";

/**
 * How many buds make a weight, from counted and weighed samples: the line through the origin whose variance grows with
 * the count, w₁ = Σw/Σc for one bud, u = s/√Σc, W/(w₁ ± t(n − 1)·u). With equal counts it is Student's range of
 * hundred-bud weights. Nothing is rounded. Source: least squares through the origin, checked on NIST data.
 */
export const budCount = defineFunction({
  id: "BUDCOUNT",
  group: "yields",
  parameters: [
    measuredList("budCounts", count),
    measuredList("sampleWeights", weight),
    measured("weightWanted", weight),
    optional("pickingRate", piecesAnHour),
    optional("confidence", confidence, 0.95),
  ],
  result: {
    shape: "row",
    columns: [
      explained({ name: "weight of 100", quantity: weight }),
      explained({ name: "low", quantity: pieces }),
      explained({ name: "buds", quantity: pieces }),
      explained({ name: "high", quantity: pieces }),
      explained({ name: "picking time", quantity: timeSpan }),
    ],
  },
  calculate: (budCounts, sampleWeights, weightWanted, pickingRate, confidence): Answer[] => {
    const { slope: one, slopeError, degrees } = originRegression(budCounts, sampleWeights, 1);
    const buds = weightWanted / one;
    const time = pickingRate === undefined ? "" : buds / pickingRate / 24;
    if (degrees === 0) return [100 * one, "", buds, "", time];
    const margin = slopeError === 0 ? 0 : studentQuantile((1 + confidence) / 2, degrees) * slopeError;
    const high =
      margin < one
        ? weightWanted / (one - margin)
        : noAnswer("sampleWeights", { do: "scatter less for an upper end" }, { kind: "spread", spread: margin });
    return [100 * one, weightWanted / (one + margin), buds, high, time];
  },
});

export const budCountPage = {
  summary: "How many buds make a weight, with the range from your samples, and how long the picking takes.",
  parameters: {
    budCounts: "how many buds each sample holds",
    sampleWeights: "weights of the samples, beside their counts",
    weightWanted:
      "weight that is wanted, in the unit and the state of the samples: fresh with fresh, finished with finished",
    pickingRate: "buds that all pickers together pick in an hour; without it no time is given",
    confidence: "how often the true number should lie inside the range; 95 % is 95 of 100",
  },
  formula:
    "w₁ = Σw / Σc; buds = W / w₁; low, high = W / (w₁ ± t(n − 1) × u), u = s / √Σc, s² = Σ((w − w₁c)² / c) / (n − 1); time = buds / rate / 24",
  working: (
    counts: readonly number[],
    weights: readonly number[],
    W: number,
    rate: number | undefined,
    sure: number,
  ) => {
    const row = budCount.calculate(counts, weights, W, rate, sure);
    const { slope: one, slopeError: u, scatter: s, degrees } = originRegression(counts, weights, 1);
    const sum = (list: readonly number[]): number => list.reduce((total, each) => total + each, 0);
    const [Σw, Σc] = [sum(weights), sum(counts)];
    const buds = W / one;
    const steps = [
      step("weight of one bud", "Σw / Σc", { Σw, Σc }, one, weight),
      step("buds in the weight wanted", "W / w₁", { W, "w₁": one }, buds, pieces),
      ...(rate === undefined
        ? []
        : [step("days of picking", "buds / rate / 24", { buds, rate }, buds / rate / 24, plainNumber)]),
    ];
    if (degrees === 0) {
      return [...steps, step("one sample tells nothing of the range", "buds", workingNumber(buds), row)];
    }
    const t = studentQuantile((1 + sure) / 2, degrees);
    const [shownWeight, shownBud, shownMargin] = [W, one, t * u].map(workingNumber);
    return [
      ...steps,
      step("how well one bud is known", "s / √(Σc)", { s, Σc }, u, weight),
      step(
        "the range: as many buds as the heaviest and the lightest that one may be",
        "W / (w₁ + t × u); W / (w₁ − t × u)",
        `${shownWeight} / (${shownBud} + ${shownMargin}); ${shownWeight} / (${shownBud} − ${shownMargin})`,
        row,
      ),
    ];
  },
  guide: [
    "Use it to tell the pickers how much is wanted, or a customer what is in a tin. Draw samples blindly from the whole basket, count and weigh each, and type how much you want. Four samples of a hundred say far more than one of four hundred, for only several can show how they scatter.",
    "The range is what the samples scatter, not what the season does: buds grow heavier within days, so count anew for each flush. Measured with simulated baskets, with four samples of a hundred a range of 95 % held the true number in 95 of 100 where the basket was well mixed, and in 76 where its buds weigh 3 % more or less from spot to spot and all samples came from one: draw them from everywhere. docs/how-sure.md has more.",
    "Fresh buds hold for fresh weight only. For finished tea, weigh finished buds, or turn the weight into fresh leaf with FRESHNEEDED first.",
    "pickingRate is buds an hour of all pickers together: the time is then a span, for a cell of the format [h]:mm. Nothing is rounded: show the numbers of buds without decimals.",
    "One sample gives no range. Where so few or so uneven samples might as well weigh nothing, high is #N/A, and the others stand. A row without a count and without a weight is passed over.",
    "The answer is a row of five, and a spill cannot stand inside a worksheet table: there ask for one of them, =INDEX(TEA.BUDCOUNT(A2:A5, B2:B5, D2), 1, 3) is the number of buds.",
  ],
  sources: [{ work: nistMavro, place: "certified mean and standard deviation, through fifty samples of one" }],
  cautions: [],
  examples: [
    {
      given: [[[100], [100], [120], [80]], [[9.1], [8.8], [10.9], [7]], 1500, 2400],
      gives: [[8.95, 16237.131167753, 16759.7765363128, 17317.1870489274, 0.29096834264432]],
      shows:
        "four samples of an invented farm: some 16,800 buds for 1500 g, and seven hours of picking at 2400 an hour",
    },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [mavroReadings.map(() => [1]), mavroReadings.map((reading) => [reading]), 2.001856],
      expected: [[200.1856, 0.9999390825, 1, 1.0000609249, ""]],
      source: {
        work: nistMavro,
        place:
          "certified mean 2.00185600000000 and standard deviation s 0.000429123454003053, of fifty buds weighed one by one: 2.001856 / (2.001856 ± 2.009575237 · s / √50)",
      },
      tolerance: { relative: 5e-11 },
      because: "the range is written to ten decimals",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [[[100], [100], [120], [80]], [[9.1], [8.8], [10.9], [7]], 1500, 2400],
      expected: [[8.95, 16237.131167753, 16759.7765363128, 17317.1870489274, 0.29096834264432]],
      working:
        "Σw/Σc = 35.8/400 = 0.0895; w − 0.0895 c = 0.15, −0.15, 0.16, −0.16; Σ(…²/c) = 0.000225 + 0.000225 + 0.0256/120 + 0.00032 = 0.00098333333; s² = a third of it, 0.000327777778; u = s/20 = 0.000905231; t(0.975, 3) = 3.182446305; 1500/(0.0895 ± 0.0028808486); 16759.7765363128/2400 = 6.98324022 h",
      tolerance: { relative: 1e-12 },
      because: "worked to fifteen digits",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [[[100], [100], [100]], [[9], [9.3], [8.7]], 1000, null, 0.95],
      expected: [[9, 10261.4185511459, 1000 / 0.09, 12114.2245095361, ""]],
      working:
        "with equal counts it is Student's range of the hundred-bud weights: 9 ± 4.302652730 · 0.3/√3 = 9 ± 0.745241313; 100000/9.745241313 and 100000/8.254758687",
      tolerance: { relative: 1e-12 },
      because: "worked to fifteen digits",
    },
    {
      status: "exact",
      exercises: "edge",
      given: [[[100], [100]], [[8], [12]], 1000],
      expected: [
        [
          10,
          2823.8688496495,
          10000,
          { error: "#N/A", message: "sampleWeights must scatter less for an upper end; got a spread of 0.2541240947" },
          "",
        ],
      ],
      working:
        "10 ± t(0.975, 1) · √8/√2 = 10 ± 12.7062047362 · 2 = 10 ± 25.4124: 100000/35.4124094723 is the lower end, and no upper end is left",
      tolerance: { relative: 1e-12 },
      because: "worked to thirteen digits",
    },
    {
      status: "exact",
      exercises: "edge",
      given: [[[100], [null], [100]], [[9], [null], [9]], 900, 3000],
      expected: [[9, 10000, 10000, 10000, 10000 / 3000 / 24]],
      working: "no scatter: 900/0.09 = 10000 at all three; 10000/3000 = 3.3333 h; the empty row is passed over",
      tolerance: { relative: 1e-12 },
      because: "exact arithmetic; the samples are no doubles",
    },
    {
      status: "common practice",
      exercises: "edge",
      given: [112, 1, 500],
      expected: [[100 / 112, "", 56000, "", ""]],
      fact: "some 112 buds make 1 g of finished green tea, and 56,000 make 500 g",
      tolerance: { relative: 1e-12 },
      because: "112 × 500",
    },
    {
      status: "exact",
      given: [[[100], [100]], [[9], [null]], 1000],
      expected: [["", "", "", "", ""]],
      working: "the second sample is counted and not weighed yet: the answer waits",
      ...exactly,
    },
    {
      status: "exact",
      given: [[[100.5]], [[9]], 1000],
      expected: {
        error: "#VALUE!",
        message: "budCounts must be a whole number of 1 or more; got 100.5 in place 1 of the list",
      },
      working: "half a bud is none",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

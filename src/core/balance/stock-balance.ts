import { paidWeight } from "../cautions";
import {
  type Answer,
  defineFunction,
  exactly,
  explained,
  type FunctionPage,
  headers,
  optional,
  optionalList,
  parameter,
  settingList,
} from "../define";
import { must } from "../errors";
import { CompensatedSum } from "../numeric/compensated-sum";
import { normalQuantile } from "../numeric/normal";
import { Phrase } from "../phrases";
import {
  choice,
  confidence,
  looseWeight,
  outturn,
  outturnError,
  share,
  text,
  weight,
  weightDifference,
  weightError,
  within,
} from "../quantities";
import { oneCertBalance, safeguardsBalance } from "../sources";
import { step, sumOf, workingNumber } from "../working";

/** Rounding of sums, as a share of all that is added up. */
const noise = 1e-9;

type Direction = "opening" | "in" | "out" | "closing";

const direction = choice("direction", { opening: ["期初"], in: ["入"], out: ["出"], closing: ["期末"] });

/** A stock may have run out: 0 is 0. */
const stockWeight = within(weight, { atLeast: 0 }, "a weight of 0 or more");

const comesIn = (direction: Direction): boolean => direction === "opening" || direction === "in";

/**
 * A book of stock: everything restated as tea, a = w·o, and U = Σ(opening, in) − Σ(out, closing) held against its own
 * error, u² = Σ((o·u_w)² + (w·u_o)²), two-sided. Errors count as independent.
 * Source: material unaccounted for, MUF = (PB + X − Y) − PE, Nuclear Safeguards Education Portal.
 */
export const stockBalance = defineFunction({
  id: "STOCKBALANCE",
  group: "balance",
  parameters: [
    settingList("items", text),
    settingList("directions", direction),
    // With gaps: a stock that is not counted yet is in the book, and the whole balance waits for it.
    parameter("weights", stockWeight, { takes: "list", blank: "waits", gaps: true }),
    optionalList("outturns", outturn, { oneForAll: true, gaps: true, fallback: 1 }),
    optionalList("weightErrors", weightError, { oneForAll: true, gaps: true }),
    optionalList("outturnErrors", outturnError, { oneForAll: true, gaps: true }),
    optional("confidence", confidence, 0.95),
    headers,
  ],
  result: {
    shape: "table",
    columns: [
      { name: "item", quantity: text },
      { name: "direction", quantity: text },
      { name: "weight", quantity: looseWeight },
      { name: "as tea", quantity: weightDifference },
      { name: "error", quantity: weightError },
      { name: "share of variance", quantity: share },
    ],
    lastRow: explained({
      is: "verdict",
      columns: [
        { name: "verdict", quantity: text },
        { name: "", quantity: text },
        { name: "", quantity: text },
        { name: "unaccounted", quantity: weightDifference },
        { name: "error", quantity: weightError },
      ],
    }),
  },
  calculate: (items, directions, weights, outturns, weightErrors, outturnErrors, confidence): Answer | Answer[][] => {
    if (!directions.some(comesIn))
      throw must("directions", { do: "hold a row that comes in, opening or in" }, "got none");
    if (directions.every(comesIn))
      throw must("directions", { do: "hold a row that goes out, out or closing" }, "got none");
    if (!isCounted(weights)) return "";
    const { rows, unaccounted, all, variance } = balanced(directions, weights, outturns, weightErrors, outturnErrors);
    const isJudged = weightErrors !== undefined || outturnErrors !== undefined;
    const error = Math.sqrt(variance);
    return [
      ...rows.map((row, index): Answer[] => [
        items[index] as string,
        new Phrase(directions[index] as Direction),
        weights[index] as number,
        row.tea,
        isJudged ? Math.sqrt(row.variance) : "",
        isJudged ? (variance === 0 ? 0 : row.variance / variance) : "",
      ]),
      [
        new Phrase(
          isJudged ? verdict(unaccounted, limitOf(error, confidence) + noise * all) : "not judged: no errors given",
        ),
        "",
        "",
        unaccounted,
        isJudged ? error : "",
        "",
      ],
    ];
  },
});

const isCounted = (weights: readonly (number | null)[]): weights is readonly number[] =>
  weights.every((weight) => weight !== null);

/** No error, no allowance, however sure the verdict should be. */
const limitOf = (error: number, confidence: number): number =>
  error === 0 ? 0 : normalQuantile((1 + confidence) / 2) * error;

function verdict(unaccounted: number, limit: number) {
  if (Math.abs(unaccounted) <= limit) return "agrees";
  return unaccounted > 0 ? "more in than out" : "more out than in";
}

function balanced(
  directions: readonly Direction[],
  weights: readonly number[],
  outturns: readonly number[],
  weightErrors: readonly (number | null)[] = [],
  outturnErrors: readonly (number | null)[] = [],
) {
  const [unaccounted, all, variance] = [new CompensatedSum(), new CompensatedSum(), new CompensatedSum()];
  const rows = weights.map((weight, index) => {
    const ratio = outturns[index] as number;
    const tea = weight * ratio;
    const ofRow = (ratio * (weightErrors[index] || 0)) ** 2 + (weight * (outturnErrors[index] || 0)) ** 2;
    unaccounted.add(comesIn(directions[index] as Direction) ? tea : -tea);
    all.add(tea);
    variance.add(ofRow);
    return { tea, variance: ofRow };
  });
  return { rows, unaccounted: unaccounted.total, all: all.total, variance: variance.total };
}

const headings = ["item", "direction", "weight", "as tea", "error", "share of variance"];
const year = [["opening stock"], ["made"], ["sold"], ["given away"], ["closing stock"]];
const ways = [["opening"], ["in"], ["out"], ["out"], ["closing"]];
const errors = [[1], [6], [5], [1], [1]];

export const stockBalancePage = {
  summary: "A book of stock: what came in against what went out and is left, with the error of the difference.",
  parameters: {
    items: "what each row is: opening stock, a month's making, a buyer",
    directions: '"opening", "in", "out" or "closing", one for each row',
    weights: "weight of each row, in one unit; 0 is 0, and a blank one makes the whole balance wait",
    outturns:
      "tea from one unit of this row's weight: 1 for tea, and your own figure for leaf; one for all, or beside the rows; a blank is 1",
    weightErrors: "error of each weight, one standard uncertainty; one for all, or beside the rows; a blank is 0",
    outturnErrors: "error of each outturn, one standard uncertainty; one for all, or beside the rows; a blank is 0",
    confidence: "how often a true book should agree; 95 % is 95 of 100",
  },
  formula: "a = w × o; U = Σ(opening, in) − Σ(out, closing); u² = Σ((o × u_w)² + (w × u_o)²); agrees when |U| ≤ z × u",
  working: (
    items: readonly string[],
    directions: readonly Direction[],
    weights: readonly (number | null)[],
    outturns: readonly number[],
    weightErrors: readonly (number | null)[] | undefined,
    outturnErrors: readonly (number | null)[] | undefined,
    sure: number,
  ) => {
    const answer = stockBalance.calculate(items, directions, weights, outturns, weightErrors, outturnErrors, sure);
    if (!Array.isArray(answer) || !isCounted(weights)) {
      return [step("a stock is still to be counted", "—", "—", answer as Answer, text)];
    }
    const { rows, unaccounted: U, variance } = balanced(directions, weights, outturns, weightErrors, outturnErrors);
    const teas = (wanted: boolean): readonly number[] =>
      rows.flatMap(({ tea }, index) => (comesIn(directions[index] as Direction) === wanted ? [tea] : []));
    const sum = (list: readonly number[]): number => list.reduce((total, tea) => total + tea, 0);
    const [into, out] = [teas(true), teas(false)];
    const inLine = (list: readonly number[]): string => sumOf(list.map(workingNumber));
    const u = Math.sqrt(variance);
    const z = u === 0 ? 0 : normalQuantile((1 + sure) / 2);
    return [
      step("came in, as tea", "a₁ + a₂ + …", inLine(into), sum(into), looseWeight),
      step("went out or is left, as tea", "a₁ + a₂ + …", inLine(out), sum(out), looseWeight),
      ...(weightErrors === undefined && outturnErrors === undefined
        ? []
        : [
            step(
              "error of the difference",
              "√(u₁² + u₂² + …)",
              `√(${sumOf(rows.map((row) => workingNumber(row.variance)))})`,
              u,
              weightError,
            ),
            step("how far from 0 it may lie by chance", "z × u", { z, u }, z * u, looseWeight),
          ]),
      step(
        "what is unaccounted for",
        "in − out",
        `${workingNumber(sum(into))} − ${workingNumber(sum(out))} = ${workingNumber(U)}`,
        answer,
      ),
    ];
  },
  guide: [
    "Use it at the end of the year, or when someone asks how your sales fit your making: a row for the opening stock, what was made, each buyer, what was given away, and the closing stock. The last row says what is unaccounted for, its error, and a verdict.",
    'The verdict is "agrees", "more in than out" or "more out than in". Without any errors it is "not judged: no errors given": a difference says little until you know how large it may be by chance. SCALEERROR gives the error of one weighing; the error of a total of n like weighings is √n of it.',
    "An agreement is only as sharp as its error. With leaf at an outturn that is known to a hundredth, anything within 2 % of the season agrees: it then shows that the tea can come from the leaf, never that it did. The share of variance shows which row the sharpness hangs on.",
    "Errors count as independent of each other: a scale that reads 1 % high throughout is not seen, for it does so on both sides. Stocks take up moisture: restate them to one moisture with TARGETWEIGHT first.",
    "No tolerance of any auditor is known to us, and none is built in. A book that agrees may still be wrong in two places, and one that does not may be honest: look for a row that is missing or written twice.",
    "A stock that is not counted yet makes the whole balance wait; 0 is a stock that has run out. The answer is a table, and a spill cannot stand inside a worksheet table: there ask for one cell, =INDEX(TEA.STOCKBALANCE(A2:A6, B2:B6, C2:C6, , D2:D6, , , FALSE), 6, 1) is the verdict of five rows.",
    "Refused: a book without a row that comes in (opening or in) or without one that goes out (out or closing), a row without a name or a direction, and an outturn above 1.",
  ],
  unpublished:
    "The works found give the balance and its test in symbols, and no book in numbers: the year of each check is an invented one, worked by hand.",
  sources: [
    { work: safeguardsBalance, place: "MUF = (PB + X − Y) − PE, tested there against three standard deviations" },
    { work: oneCertBalance, place: "A + B − D = C" },
  ],
  cautions: [paidWeight],
  examples: [
    {
      given: [
        [["opening"], ["made"], ["sold"], ["closing"]],
        [["opening"], ["in"], ["out"], ["closing"]],
        [[800], [5000], [4400], [1390]],
        null,
        [[3], [4], [12], [0]],
      ],
      gives: [
        headings,
        ["opening", "opening", 800, 800, 3, 9 / 169],
        ["made", "in", 5000, 5000, 4, 16 / 169],
        ["sold", "out", 4400, 4400, 12, 144 / 169],
        ["closing", "closing", 1390, 1390, 0, 0],
        ["agrees", "", "", 10, 13, ""],
      ],
      shows: "an invented farm's year: 10 g unaccounted for, with an error of 13 g",
    },
  ],
  checks: [
    {
      status: "exact",
      exercises: "calculation",
      given: [year, ways, [[1350], [9784], [7912], [226], [2985]], null, errors],
      expected: [
        headings,
        ["opening stock", "opening", 1350, 1350, 1, 0.015625],
        ["made", "in", 9784, 9784, 6, 0.5625],
        ["sold", "out", 7912, 7912, 5, 0.390625],
        ["given away", "out", 226, 226, 1, 0.015625],
        ["closing stock", "closing", 2985, 2985, 1, 0.015625],
        ["agrees", "", "", 11, 8, ""],
      ],
      working:
        "1350 + 9784 − 7912 − 226 − 2985 = 11; 1 + 36 + 25 + 1 + 1 = 64 = 8²; 1.959963985 · 8 = 15.6797118763, above 11; shares 1/64, 36/64, 25/64, 1/64, 1/64",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [year, ways, [[1350], [9784], [8012], [226], [2985]], null, errors, null, null, false],
      expected: [
        ["opening stock", "opening", 1350, 1350, 1, 0.015625],
        ["made", "in", 9784, 9784, 6, 0.5625],
        ["sold", "out", 8012, 8012, 5, 0.390625],
        ["given away", "out", 226, 226, 1, 0.015625],
        ["closing stock", "closing", 2985, 2985, 1, 0.015625],
        ["more out than in", "", "", -89, 8, ""],
      ],
      working: "100 more sold: 11 − 100 = −89, farther from 0 than 15.68",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [
        year,
        ways,
        [[1350], [46500], [7912], [226], [2985]],
        [[null], [0.212], [null], [null], [null]],
        [[1], [40], [5], [1], [1]],
        [[null], [0.002], [null], [null], [null]],
        0.95,
        false,
      ],
      expected: [
        ["opening stock", "opening", 1350, 1350, 1, 1 / 8748.9104],
        ["made", "in", 46500, 9858, 93.3858147686, 0.9967996015],
        ["sold", "out", 7912, 7912, 5, 25 / 8748.9104],
        ["given away", "out", 226, 226, 1, 1 / 8748.9104],
        ["closing stock", "closing", 2985, 2985, 1, 1 / 8748.9104],
        ["agrees", "", "", 85, 93.535610331, ""],
      ],
      working:
        "46500 · 0.212 = 9858; (0.212 · 40)² + (46500 · 0.002)² = 71.9104 + 8649 = 8720.9104 = 93.3858147686²; + 25 + 3 = 8748.9104 = 93.5356103310²; U = 85 within 1.959963985 · 93.5356 = 183.3264275208; the row's share is 8720.9104/8748.9104",
      tolerance: { relative: 1e-10 },
      because: "ten digits were written down",
    },
    {
      status: "exact",
      exercises: "input",
      given: [[["leaf"], ["tea"]], [["IN"], ["期末"]], [[1000], [200]], 0.25, 3, 0.01, null, false],
      expected: [
        ["leaf", "in", 1000, 250, Math.sqrt(100.5625), 100.5625 / 105.125],
        ["tea", "closing", 200, 50, Math.sqrt(4.5625), 4.5625 / 105.125],
        ["more in than out", "", "", 200, Math.sqrt(105.125), ""],
      ],
      working:
        "one for all: 0.25 · 1000 − 0.25 · 200 = 200; (0.25 · 3)² = 0.5625, with (1000 · 0.01)² = 100 and (200 · 0.01)² = 4; 1.96 · √105.125 = 20.1",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [year, ways, [[1350], [9784], [7912], [226], [2985]], null, null, null, null, false],
      expected: [
        ["opening stock", "opening", 1350, 1350, "", ""],
        ["made", "in", 9784, 9784, "", ""],
        ["sold", "out", 7912, 7912, "", ""],
        ["given away", "out", 226, 226, "", ""],
        ["closing stock", "closing", 2985, 2985, "", ""],
        ["not judged: no errors given", "", "", 11, "", ""],
      ],
      working: "1350 + 9784 − 7912 − 226 − 2985 = 11",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [[["made"], ["sold"]], [["in"], ["out"]], [[0.3], [0.3]], null, 0, null, null, false],
      expected: [
        ["made", "in", 0.3, 0.3, 0, 0],
        ["sold", "out", 0.3, 0.3, 0, 0],
        ["agrees", "", "", 0, 0, ""],
      ],
      working: "0.3 − 0.3 = 0 agrees even without an error",
      ...exactly,
    },
    {
      status: "exact",
      given: [year, ways, [[1350], [9784], [7912], [226], [null]], null, errors],
      expected: "",
      working: "the closing stock is not counted yet: the balance waits",
      ...exactly,
    },
    {
      status: "exact",
      given: [
        [["made"], ["bought"]],
        [["in"], ["in"]],
        [[500], [20]],
      ],
      expected: {
        error: "#VALUE!",
        message: "directions must hold a row that goes out, out or closing; got none",
      },
      working: "nothing to balance against",
      ...exactly,
    },
    {
      status: "exact",
      given: [[["sold"]], [["out"]], [[500]]],
      expected: {
        error: "#VALUE!",
        message: "directions must hold a row that comes in, opening or in; got none",
      },
      working: "nothing to balance against",
      ...exactly,
    },
    {
      status: "exact",
      given: [
        [["leaf"], ["sold"]],
        [["in"], ["out"]],
        [[500], [100]],
        [[21], [1]],
      ],
      expected: {
        error: "#VALUE!",
        message: "outturns must be above 0 and at most 1 (21% or 0.21); got 21 in place 1 of the list",
      },
      working: "21 is 2100 %",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

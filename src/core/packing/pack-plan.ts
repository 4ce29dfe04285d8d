import { bothGiven } from "../both-given";
import { dust, paidWeight } from "../cautions";
import { weightOfSteps } from "../charges/whole-steps";
import {
  type Answer,
  defineFunction,
  exactly,
  explained,
  type FunctionPage,
  headers,
  measured,
  optional,
  optionalList,
  settingList,
} from "../define";
import { shownNumber } from "../describe";
import { mustBe } from "../errors";
import { normalQuantile } from "../numeric/normal";
import { Phrase } from "../phrases";
import { confidence, count, looseWeight, moisture, standardError, tally, weight, within } from "../quantities";
import { irriMoisture, nzDesiccatingGoods } from "../sources";
import { percent, step, workingNumber } from "../working";

/** Noise of computed cells: a fill is not raised by a step for it, and the last package is not lost to it. */
const noiseOfSteps = 1e-6;
const noiseOfPackages = 1e-9;

const fillConfidence = within(confidence, { atLeast: 0.5, below: 1 }, "from 50% up to, not including, 100%");

/**
 * Finished tea shared out into packages. Fill: N(1 − M_driest)/(1 − M_finished) + z·scatter, z one-sided, raised to a
 * step of the scale. Sizes with a number of units first, in their order; then the others, each as many as fit.
 * Source: the balance of dry matter; the margin is the maker's own choice.
 */
export const packPlan = defineFunction({
  id: "PACKPLAN",
  group: "packing",
  parameters: [
    measured("finishedWeight", weight),
    settingList("nominals", weight),
    optionalList("units", count, { gaps: true }),
    optional("finishedMoisture", moisture),
    optional("driestMoisture", moisture),
    optional("scatter", standardError, 0),
    optional("confidence", fillConfidence, 0.95),
    optional("readability", weight),
    headers,
  ],
  result: {
    shape: "table",
    columns: [
      { name: "nominal", quantity: weight },
      { name: "fill", quantity: weight },
      { name: "units", quantity: tally },
      { name: "missing", quantity: tally },
      { name: "tea", quantity: looseWeight },
      { name: "above nominal", quantity: looseWeight },
    ],
    lastRow: explained({ is: "total" }),
  },
  calculate: (
    finishedWeight,
    nominals,
    units,
    finishedMoisture,
    driestMoisture,
    scatter,
    confidence,
    readability,
  ): Answer[][] => {
    bothGiven("finishedMoisture", finishedMoisture, "driestMoisture", driestMoisture);
    const drying = dryingFactor(finishedMoisture, driestMoisture);
    const sizes = nominals.map((nominal, index) => ({
      nominal,
      fill: raised(nominal * drying + margin(scatter, confidence), readability),
      wanted: units?.[index] || 0,
      filled: 0,
    }));
    let rest = finishedWeight;
    for (const size of [...sizes.filter(({ wanted }) => wanted), ...sizes.filter(({ wanted }) => !wanted)]) {
      const fit = Math.floor(rest / size.fill + noiseOfPackages);
      size.filled = Math.min(fit, size.wanted || fit);
      rest = Math.max(0, rest - size.filled * size.fill);
    }
    const rows = sizes.map(({ nominal, fill, wanted, filled }) => {
      const missing = Math.max(0, wanted - filled);
      return [nominal, fill, filled, missing, filled * fill, filled * (fill - nominal)];
    });
    const sum = (column: number): number => rows.reduce((total, row) => total + (row[column] as number), 0);
    return [
      ...rows,
      [new Phrase("left over"), "", "", "", Math.max(0, finishedWeight - sum(4)), ""],
      [new Phrase("total"), "", sum(2), sum(3), finishedWeight, sum(5)],
    ];
  },
});

/** How much more has to go in so that the nominal weight is left when the tea is as dry as it may become. */
function dryingFactor(finished = 0, driest = finished): number {
  if (driest > finished)
    throw mustBe("driestMoisture", { kind: "at most", most: finished, argument: "finishedMoisture" }, driest);
  return (1 - driest) / (1 - finished);
}

/** No scatter, no margin, however many packages should hold the nominal weight. */
const margin = (scatter: number, confidence: number): number =>
  scatter === 0 ? 0 : normalQuantile(confidence) * scatter;

/** The next step that the scale shows, one at least. */
const raised = (fill: number, readability: number | undefined): number =>
  readability === undefined
    ? fill
    : weightOfSteps(Math.max(1, Math.ceil(fill / readability - noiseOfSteps)), readability);

const headings = ["nominal", "fill", "units", "missing", "tea", "above nominal"];

export const packPlanPage = {
  summary: "What to fill into each package, how many packages the tea makes, and what is left over.",
  parameters: {
    finishedWeight: "weight of the tea that is to be packed",
    nominals: "weights that the packages state, a row or a column",
    units: "how many packages of each size are wanted, beside the sizes; blank for as many as fit",
    finishedMoisture:
      "moisture of the tea when it is filled, wet basis; left out with driestMoisture, nothing is added",
    driestMoisture: "lowest moisture that the tea may fall to in the package before it is sold, wet basis",
    scatter: "standard deviation of one fill, as your filling scatters; left out, 0",
    confidence: "share of the packages that should hold the nominal weight, where fills scatter; 50 % adds nothing",
    readability: "smallest step the scale shows: fills are raised to a whole step; without it nothing is rounded",
  },
  formula:
    "fill = N × (1 − Md) / (1 − Mf) + z × s, raised to a step of the scale; units = as many as wanted, or ⌊rest / fill⌋",
  working: (
    P: number,
    nominals: readonly number[],
    units: readonly (number | null)[] | undefined,
    Mf: number | undefined,
    Md: number | undefined,
    s: number,
    sure: number,
    d?: number,
  ) => {
    const rows = packPlan.calculate(P, nominals, units, Mf, Md, s, sure, d);
    const [N, fill] = rows[0] as [number, number];
    const factor = dryingFactor(Mf, Md);
    const kept = N * factor;
    const z = s === 0 ? 0 : normalQuantile(sure);
    const left = rows[rows.length - 2]?.[4] as number;
    const teas = rows.slice(0, -2).map((row) => workingNumber(row[4] as number));
    return [
      Mf === undefined || Md === undefined
        ? step("the first size holds its nominal weight", "N", { N }, kept, weight)
        : step(
            "what has to go in so that the first size still holds its nominal weight when dry",
            "N × (1 − Md) / (1 − Mf)",
            { N, Md: percent(Md), Mf: percent(Mf) },
            kept,
            weight,
          ),
      step("with the margin for fills that scatter", "e + z × s", { e: kept, z, s }, kept + z * s, weight),
      ...(d === undefined
        ? []
        : [step("raised to a step of the scale", "d × steps", { d, steps: Math.round(fill / d) }, fill, weight)]),
      // With ten digits: a small rest of much tea would drown in the rounding of seven.
      step("what is left when all are filled", "P − Σtea", { P, Σtea: shownNumber(P - left) }, left, looseWeight),
      step("every size in the same way", "units × fill = tea", teas.join("; "), rows),
    ];
  },
  guide: [
    "Use it before the tins come out: what to fill into each, how many the lot makes, and what stays in the tray. Type the sizes under each other, and beside each how many you want of it; a blank takes as many as fit. The sizes with a number come first, in their order, then the others in theirs.",
    "Finished tea is drier than the air and takes up water in a tin that leaks, so leave both moistures blank unless you know that yours dries out. A gain is no reason to fill less. With both, so much more goes in that the nominal weight is still there at the driest.",
    "No filling hits the same weight twice. Weigh ten fills, take their scatter from SAMPLEMEAN, and type it: the fill is raised until the share of packages that you ask for, 95 % when you ask for none, holds the nominal weight, if your fills scatter like a bell around it and their scatter is known. Measured with simulated fills: where 95 % was asked for, 91 of 100 packages held it with the scatter of five fills, 93 with that of ten and 95 with that of fifty; docs/how-sure.md has more. That margin is your choice, not a rule of law.",
    "Type readability, and the fill is a weight that your scale can show, the next step up. Missing counts packages that were wanted and that the tea did not reach for. Above nominal is what goes into the packages beyond what they state. No packages at all is an answer too.",
    "Trade advice for goods that dry out, as New Zealand's Trading Standards gives it: set filled packages aside for seven days, weigh them again, and add what is missing to the fill. What a package must hold is the law of the place where it is sold; nothing here rules on it.",
    "The answer is a table, and a spill cannot stand inside a worksheet table: there ask for one cell, =INDEX(TEA.PACKPLAN(B2, A5:A6, , , , , , , FALSE), 1, 2) is the fill of the first size.",
    "Refused: one of the two moistures without the other, a driestMoisture above finishedMoisture, and a confidence below 50 %.",
  ],
  sources: [
    { work: irriMoisture, place: "final weight after drying, for what a package loses" },
    { work: nzDesiccatingGoods, place: "set aside for seven days, weigh again, add what is missing" },
  ],
  cautions: [paidWeight, dust],
  examples: [
    {
      given: [960, [[100], [30]], [[6], [null]], null, null, null, null, 0.5],
      gives: [
        headings,
        [100, 100, 6, 0, 600, 0],
        [30, 30, 12, 0, 360, 0],
        ["left over", "", "", "", 0, ""],
        ["total", "", 18, 0, 960, 0],
      ],
      shows: "960 g of an invented farm: six large tins, and the rest in small ones",
    },
    {
      given: [500, [[50]], null, null, null, 0.2, null, 0.1, false],
      gives: [
        [50, 50.4, 9, 0, 453.6, 3.6],
        ["left over", "", "", "", 46.4, ""],
        ["total", "", 9, 0, 500, 3.6],
      ],
      shows: "fills that scatter by 0.2 g are raised to 50.4 g",
    },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [2000, 872, null, 0.25, 0.14, null, null, null, false],
      expected: [
        [872, 872 * (0.86 / 0.75), 2, 0, 2 * 872 * (0.86 / 0.75), 2 * 872 * (0.11 / 0.75)],
        ["left over", "", "", "", 2000 - 1744 * (0.86 / 0.75), ""],
        ["total", "", 2, 0, 2000, 1744 * (0.11 / 0.75)],
      ],
      source: {
        work: irriMoisture,
        place:
          "1000 kg at 25 % weigh 872 kg at 14 %: a package that should hold 872 is filled with 1000, exactly 999.8933333",
      },
      tolerance: { relative: 1e-12 },
      because: "published to the whole kilogram; 872 · 0.86/0.75 = 999.8933333, within it",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1842.6, [[50], [20]], [[30], [null]], 0.052, 0.045, 0.15, 0.95, 0.1],
      expected: [
        headings,
        [50, 50.7, 30, 0, 1521, 21],
        [20, 20.4, 15, 0, 306, 6],
        ["left over", "", "", "", 15.6, ""],
        ["total", "", 45, 0, 1842.6, 27],
      ],
      working:
        "50 · 0.955/0.948 = 50.3691983 and 1.6448536 · 0.15 = 0.2467280: 50.6159264, the next step 50.7; 20 · 0.955/0.948 + 0.2467280 = 20.3944074, the next step 20.4; 30 · 50.7 = 1521; 321.6/20.4 = 15.76: 15 · 20.4 = 306; 321.6 − 306 = 15.6; 30 · 0.7 = 21, 15 · 0.4 = 6",
      tolerance: { relative: 1e-12 },
      because: "exact arithmetic; what is left over loses digits of doubles",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1842.6, [[50], [20]], [[30], [null]], 0.052, 0.045, 0.15, 0.95, null, false],
      expected: [
        [50, 50.615926356279, 30, 0, 1518.47779068837, 18.47779068837],
        [20, 20.3944073689372, 15, 0, 305.916110534058, 5.916110534058],
        ["left over", "", "", "", 18.206098777572, ""],
        ["total", "", 45, 0, 1842.6, 24.393901222428],
      ],
      working: "the same without a scale: 50.6159263562790 and 20.3944073689372, not rounded",
      tolerance: { relative: 1e-12 },
      because: "worked to fifteen digits",
    },
    {
      status: "exact",
      exercises: "edge",
      degenerate: "one size, no moisture, no scatter, nothing left over: a division",
      given: [1000, 50, null, null, null, null, null, null, false],
      expected: [
        [50, 50, 20, 0, 1000, 0],
        ["left over", "", "", "", 0, ""],
        ["total", "", 20, 0, 1000, 0],
      ],
      working: "1000 / 50 = 20, nothing left",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [180, [[50], [20]], [[4], [0]], null, null, null, null, null, false],
      expected: [
        [50, 50, 3, 1, 150, 0],
        [20, 20, 1, 0, 20, 0],
        ["left over", "", "", "", 10, ""],
        ["total", "", 4, 1, 180, 0],
      ],
      working: "three of four fit, 30 left; one of 20, 10 left; a 0 for the units is a blank",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [40, 50, null, null, null, null, null, null, false],
      expected: [
        [50, 50, 0, 0, 0, 0],
        ["left over", "", "", "", 40, ""],
        ["total", "", 0, 0, 40, 0],
      ],
      working: "40 < 50: no package, and that is the answer",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [0.3, 0.1, null, null, null, null, null, 0.1, false],
      expected: [
        [0.1, 0.1, 3, 0, 0.3, 0],
        ["left over", "", "", "", 0, ""],
        ["total", "", 3, 0, 0.3, 0],
      ],
      working: "three of 0.1 in 0.3, though doubles make 0.3 / 0.1 less than 3, and 3 · 0.1 more than 0.3",
      tolerance: { absolute: 1e-15 },
      because: "3 · 0.1 is no double",
    },
    {
      status: "memory",
      exercises: "calculation",
      given: [100, 10, null, null, null, 0.16, 0.8944, null, false],
      expected: [
        [10, 10.200043609, 9, 0, 91.800392481, 1.800392481],
        ["left over", "", "", "", 8.199607519, ""],
        ["total", "", 9, 0, 100, 1.800392481],
      ],
      recalls:
        "an exercise without a known author: a bottler who aims at 10.2 oz with a standard deviation of 0.16 leaves 10.56 % of the bottles below 10 oz",
      tolerance: { relative: 5e-10 },
      because: "worked to ten decimals",
    },
    {
      status: "exact",
      given: [null, [[50], [20]]],
      expected: "",
      working: "not weighed yet: the answer waits",
      ...exactly,
    },
    {
      status: "exact",
      given: [1000, 50, null, 0.052],
      expected: {
        error: "#VALUE!",
        message: "driestMoisture must be given together with finishedMoisture; got a blank",
      },
      working: "one moisture alone says nothing of what is lost between two",
      ...exactly,
    },
    {
      status: "exact",
      given: [1000, 50, null, 0.045, 0.052],
      expected: { error: "#VALUE!", message: "driestMoisture must be at most 0.045, the finishedMoisture; got 0.052" },
      working: "0.052 > 0.045: tea that gains weight needs no more of it",
      ...exactly,
    },
    {
      status: "exact",
      given: [1000, 50, null, null, null, 0.15, 0.4],
      expected: { error: "#VALUE!", message: "confidence must be from 50% up to, not including, 100%; got 0.4" },
      working: "below a half the fill would lie below the nominal weight",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

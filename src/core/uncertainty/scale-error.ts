import { paidWeight } from "../cautions";
import { defineFunction, exactly, type FunctionPage, optional, setting } from "../define";
import { count, looseWeight, plainNumber, weight, weightError, yesNo } from "../quantities";
import { gum, tartuWeighing } from "../sources";
import { step } from "../working";

/**
 * Standard uncertainty of a weight on a scale: u² = k(d²/12 + s²/n) + a²/3, k = 2 when tared, since the weight is then
 * the difference of two readings. Averaging n readings makes s smaller and leaves the step d as it is.
 * Source: GUM (JCGM 100:2008), rectangular distributions of half-width d/2 and a.
 */
export const scaleError = defineFunction({
  id: "SCALEERROR",
  group: "uncertainty",
  parameters: [
    setting("readability", weight),
    optional("repeatability", weightError, 0),
    optional("readings", count, 1),
    optional("tared", yesNo, false),
    optional("accuracy", looseWeight, 0),
  ],
  result: { shape: "cell", quantity: weightError },
  calculate: (
    readability: number,
    repeatability: number,
    readings: number,
    tared: boolean,
    accuracy: number,
  ): number => {
    const oneReading = readability ** 2 / 12 + repeatability ** 2 / readings;
    return Math.sqrt((tared ? 2 : 1) * oneReading + accuracy ** 2 / 3);
  },
});

export const scaleErrorPage: FunctionPage = {
  summary: "Standard uncertainty of a weight, from what the scale shows and how well it repeats.",
  parameters: {
    readability: "smallest step that the scale shows, d",
    repeatability: "standard deviation of repeated readings of one load, s; left out, 0",
    readings: "how many readings of the load were averaged; left out, 1",
    tared: "TRUE when the dish was tared or weighed apart, so that the weight is a difference of two readings",
    accuracy: "largest error that the scale may have at this load, either way, a; left out, 0",
  },
  formula: "u² = k(d²/12 + s²/n) + a²/3, with k = 2 when tared, else 1",
  working: (d: number, s: number, n: number, tared: boolean, a: number) => {
    const reading = d ** 2 / 12 + s ** 2 / n;
    return [
      step(
        "one reading, squared: the step of the display and the scatter",
        "d² / 12 + s² / n",
        { d, s, n },
        reading,
        plainNumber,
      ),
      step(
        "k readings, and how far the scale may be off",
        "√(k × one + a² / 3)",
        { k: tared ? 2 : 1, one: reading, a },
        scaleError.calculate(d, s, n, tared, a),
        weightError,
      ),
    ];
  },
  guide: [
    "Use it to get the weight errors that BALANCEFIT, FINISHEDBAND, FINISHEDCHECK and UNCERTAINTY ask for. The answer is one standard uncertainty, in the unit of your scale: about two readings in three lie within it, nineteen in twenty within twice as much.",
    "The step of the display alone gives d/√12, a little under a third of a step. To learn the repeatability, put the same bag of leaf on the scale ten times, lift it off in between, and take STDEV of the readings. Where that shows one and the same number every time, leave it at 0.",
    "Averaging several readings makes the part that scatters smaller. It does nothing for the step of the display nor for a scale that is off, so the answer has a floor.",
    "For accuracy take what the maker or a test certificate states, or what a known weight shows. A scale that is off by the same share everywhere does no harm to outturns and ratios of weights taken on it; it does harm where weights of two scales meet.",
    "Refused: a readability of 0 or blank, a negative repeatability or accuracy, and readings that are no whole number.",
  ],
  sources: [{ work: gum, place: "rectangular distribution; clause F.2.2.1 for the readability" }],
  cautions: [paidWeight],
  examples: [
    { given: [1], gives: 1 / Math.sqrt(12), shows: "a scale that shows whole grams: 0.29 g for one reading" },
    { given: [1, null, null, true], gives: 1 / Math.sqrt(6), shows: "the same scale with a tared dish: 0.41 g" },
  ],
  checks: [
    {
      status: "published",
      given: [0.0001, 0.00017, 1, false, 0.0002],
      expected: 0.000207525098883645,
      source: { work: tartuWeighing, place: "a display of 0.1 mg, a repeatability of 0.17 mg, a drift within 0.2 mg" },
      tolerance: { absolute: 1e-15 },
      because: "published to fifteen digits",
    },
    {
      status: "exact",
      given: [0.1, 0.1],
      expected: 0.104083299973,
      working: "0.01/12 + 0.01 = 0.13/12; √0.010833333 = 0.104083299973",
      tolerance: { absolute: 5e-13 },
      because: "twelve decimals were written down",
    },
    {
      status: "exact",
      given: [0.1, 0.1, 3],
      expected: 0.064549722437,
      working: "0.01/12 + 0.01/3 = 0.05/12; √0.0041666667 = 0.064549722437",
      tolerance: { absolute: 5e-13 },
      because: "twelve decimals were written down",
    },
    {
      status: "exact",
      given: [0.1, 0.1, 1, true, 0.1],
      expected: 0.158113883008,
      working: "2 × (0.01/12 + 0.01) + 0.01/3 = 0.025; √0.025 = 0.158113883008",
      tolerance: { absolute: 5e-13 },
      because: "twelve decimals were written down",
    },
    {
      status: "exact",
      given: [[[1], [2], [5]], null, null, [[false], [true], [false]]],
      expected: [[0.2886751345948129], [0.8164965809277261], [1.4433756729740645]],
      working: "1/√12 = 0.2886751; 2/√6 = 0.8164966; 5/√12 = 1.4433757",
      ...exactly,
    },
    {
      status: "exact",
      given: [0.1, -0.1],
      expected: {
        error: "#VALUE!",
        message: "repeatability must be a standard uncertainty of 0 or more; got -0.1",
      },
      working: "a standard deviation is never below 0",
      ...exactly,
    },
  ],
};

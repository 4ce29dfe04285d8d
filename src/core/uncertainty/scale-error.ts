import { paidWeight } from "../cautions";
import { defineFunction, exactly, type FunctionPage, optional, setting } from "../define";
import { count, looseWeight, plainNumber, weight, weightError, yesNo } from "../quantities";
import { gum, tartuWeighing } from "../sources";
import { step } from "../working";

/**
 * Standard uncertainty of a weight on a scale: u² = k(r + s²/n) + a²/3, k = 2 when tared, since the weight is then the
 * difference of two readings. The scatter s of displayed readings holds their rounding already; what averaging leaves of
 * the step d is r = d²/12 · (1 − 5.5 s²/d²)², and nothing once s is 0.43 d: readings that scatter by about half a step
 * average the step out. The 5.5 was chosen by what a simulated scale does, test/core/scale-error.test.ts.
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
  calculate: (readability, repeatability, readings, tared, accuracy): number => {
    const oneWeighing = roundingLeft(readability, repeatability) + repeatability ** 2 / readings;
    return Math.sqrt((tared ? 2 : 1) * oneWeighing + accuracy ** 2 / 3);
  },
});

/** How fast scatter averages the step out, times s²/d². */
export const averagedOut = 5.5;

/** What the step of the display adds beyond the scatter of what it shows, squared. */
const roundingLeft = (readability: number, repeatability: number): number =>
  (readability ** 2 / 12) * Math.max(0, 1 - averagedOut * (repeatability / readability) ** 2) ** 2;

export const scaleErrorPage = {
  summary: "Standard uncertainty of a weight, from what the scale shows and how well it repeats.",
  parameters: {
    readability: "smallest step that the scale shows, d",
    repeatability: "standard deviation of repeated readings of one load, s; left out, 0",
    readings: "how many readings of the load were averaged; left out, 1",
    tared: "TRUE when the dish was tared or weighed apart, so that the weight is a difference of two readings",
    accuracy: "largest error that the scale may have at this load, either way, a; left out, 0",
  },
  formula:
    "u² = k(r + s²/n) + a²/3, with k = 2 when tared, else 1; r = d²/12 × (1 − 5.5 s²/d²)² while 5.5 s² is below d², else 0",
  working: (d: number, s: number, n: number, tared: boolean, a: number) => {
    const rounding = roundingLeft(d, s);
    const reading = rounding + s ** 2 / n;
    return [
      step(
        "what the step adds to the scatter, squared; nothing once s is 0.43 d",
        rounding === 0 ? "0" : "d² / 12 × (1 − 5.5 × s² / d²)²",
        { d, s },
        rounding,
        plainNumber,
      ),
      step("one weighing, squared", "r + s² / n", { r: rounding, s, n }, reading, plainNumber),
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
    "Use it to get the weight errors that BALANCEFIT, FINISHEDBAND, FINISHEDCHECK and UNCERTAINTY ask for. The answer is one standard uncertainty, in the unit of your scale: the usual size of the error. Where readings scatter by half a step or more, 68 to 69 in 100 weights lie within it and 95 to 96 within twice as much. Where the step of the display alone makes it, 58 in 100 lie within it and all within twice as much.",
    "The step of the display alone gives d/√12, a little under a third of a step. To learn the repeatability, put the same bag of leaf on the scale ten times, lift it off in between, and take STDEV of the readings. Where that shows one and the same number every time, leave it at 0. Ten readings know the scatter to about a quarter of itself (1/√18), and within twice the answer lie only 92 to 93 in 100 then: do it with two or three loads and take the mean.",
    "Averaging several readings makes the part that scatters smaller. A display that shows the same number every time gains nothing by it; where readings scatter by 0.43 of a step or more, averaging takes the step out as well. Between, against a simulated scale of which s is well known, with 1 to 10 readings and s up to three steps, the answer is never more than 4 % too small nor 5 % too large. A scale that is off stays off.",
    "For accuracy take what the maker or a test certificate states, or what a known weight shows. A scale that is off by the same share everywhere does no harm to outturns and ratios of weights taken on it; it does harm where weights of two scales meet.",
    "Refused: a readability of 0 or blank, a negative repeatability or accuracy, and readings that are no whole number.",
  ],
  sources: [{ work: gum, place: "rectangular distribution; clause F.2.2.1 for the readability" }],
  cautions: [paidWeight],
  examples: [
    { given: [1], gives: 1 / 12 ** 0.5, shows: "a scale that shows whole grams: 0.29 g for one reading" },
    { given: [1, null, null, true], gives: 1 / 6 ** 0.5, shows: "the same scale with a tared dish: 0.41 g" },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [0.0001, 0.00017, 1, false, 0.0002],
      expected: (0.000207525098883645 ** 2 - 0.0001 ** 2 / 12) ** 0.5,
      source: {
        work: tartuWeighing,
        place:
          "a display of 0.1 mg, a repeatability of 0.17 mg, a drift within 0.2 mg: 0.207525098883645 mg, less the rounding of 0.1/√12 mg that it adds to a scatter of displayed readings which holds it",
      },
      tolerance: { absolute: 1e-15 },
      because: "published to fifteen digits",
    },
    {
      status: "memory",
      exercises: "calculation",
      given: [1],
      expected: 0.29,
      recalls: "GUM, F.2.2.1: a display that shows steps of δx gives a standard uncertainty of 0.29 δx",
      tolerance: { absolute: 0.005 },
      because: "stated to two decimals",
    },
    {
      status: "exact",
      exercises: "edge",
      given: [0.1, 0.1],
      expected: 0.1,
      working: "s is a whole step, so r = 0; √(0.01) = 0.1",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1, 0.2, 4],
      expected: 0.246373699895,
      working: "5.5 × 0.04 = 0.22; r = 0.78² / 12 = 0.0507; 0.0507 + 0.04/4 = 0.0607; √0.0607 = 0.246373699895",
      tolerance: { absolute: 5e-13 },
      because: "twelve decimals were written down",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [0.1, 0.1, 4, true, 0.1],
      expected: 0.091287092918,
      working: "2 × 0.01/4 + 0.01/3 = 0.025/3; √0.0083333333 = 0.091287092918",
      tolerance: { absolute: 5e-13 },
      because: "twelve decimals were written down",
    },
    {
      status: "exact",
      exercises: "input",
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
} as const satisfies FunctionPage;

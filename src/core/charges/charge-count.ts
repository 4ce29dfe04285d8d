import { isAbove } from "../comparison";
import { defineFunction, exactly, type FunctionPage, measured } from "../define";
import { mustBe } from "../errors";
import { count, ratio, weight, weight as weightQuantity } from "../quantities";
import { armyBuses } from "../sources";
import { step } from "../working";
import { maxLoad, panAndScale, panLoad, readability } from "./charge-parameters";
import { stepsWithin, wholeSteps } from "./whole-steps";

/** More charges than this in one lot come from a mix of units. */
export const mostCharges = 10_000;

/**
 * How many pan charges to make of a weight: the n that brings W/n nearest to the pan load, raised until no charge
 * passes maxLoad. Source: none; the arithmetic is its own definition.
 */
export const chargeCount = defineFunction({
  id: "CHARGECOUNT",
  group: "charges",
  parameters: [measured("weight", weight), panLoad, maxLoad, readability],
  result: { shape: "cell", quantity: count },
  calculate: (weight, panLoad, maxLoad, readability): number => {
    if (readability !== undefined && isAbove(readability / panLoad, 1)) {
      throw mustBe("panLoad", { kind: "at least", least: readability, argument: "readability" }, panLoad);
    }
    if (maxLoad !== undefined && isAbove(panLoad / maxLoad, 1)) {
      throw mustBe("maxLoad", { kind: "at least", least: panLoad, argument: "panLoad" }, maxLoad);
    }
    const steps = readability === undefined ? undefined : wholeSteps(weight, readability);
    const wanted = nearestCount(weight, panLoad);
    refuseTooMany(wanted, "panLoad", panLoad, weight);
    if (maxLoad === undefined) return wanted;
    const loads =
      readability === undefined || steps === undefined ? weight / maxLoad : steps / stepsWithin(maxLoad, readability);
    const least = isAbove(loads, Math.round(loads)) ? Math.ceil(loads) : Math.round(loads);
    refuseTooMany(least, "maxLoad", maxLoad, weight);
    return Math.max(wanted, least);
  },
});

/** The number of equal charges whose weight is nearest to the pan load; a tie takes more pans, which hold less. */
function nearestCount(weight: number, panLoad: number): number {
  const fewer = Math.floor(weight / panLoad);
  if (fewer === 0) return 1;
  const more = fewer + 1;
  const tooHeavyBy = weight / fewer - panLoad;
  const tooLightBy = panLoad - weight / more;
  return isAbove(tooLightBy / panLoad, tooHeavyBy / panLoad) ? fewer : more;
}

function refuseTooMany(charges: number, argument: string, load: number, weight: number): void {
  if (charges <= mostCharges) return;
  throw mustBe(argument, { kind: "few charges", most: mostCharges, weight }, load, {
    question: "are both in the same unit?",
  });
}

export const chargeCountPage = {
  summary: "How many pan charges to make of a weight of leaf.",
  parameters: { weight: "weight of the leaf to be fired", ...panAndScale },
  formula: "the n that brings W / n nearest to the pan load; a tie takes the larger n",
  working: (W: number, L: number, most?: number, d?: number) => {
    const n = chargeCount.calculate(W, L, most, d);
    return [
      step("pan loads in the weight", "W / load", { W, load: L }, W / L, ratio),
      step("weight of one charge when there are n", "W / n", { W, n }, W / n, weightQuantity),
      step("the n whose charges come nearest to the pan load, and pass no limit", "n", { n }, n, count),
    ];
  },
  guide: [
    "Use it before the first firing, on the weight that really goes to the pan: after airing, with sift-outs taken off. Type the load at which your pan works best, and the answer is the number of charges whose weight comes nearest to it.",
    "When two numbers of charges are equally near, you get the larger one: a pan that is a little light dries evenly, one that is too full steams the leaf. Type maxLoad where your pan has a limit that no charge may pass, and the number goes up until every charge keeps to it.",
    "With readability, the smallest step your scale shows, charges are counted in steps that you can weigh: CHARGESPLIT then gives the same number of charges with their weights.",
    "Refused: a weight that your scale cannot show, a maxLoad below panLoad, a panLoad below one step of the scale, and more than 10000 charges: look whether one side is in grams and the other in kilograms.",
  ],
  sources: [],
  cautions: [],
  examples: [
    { given: [936, 320], gives: 3, shows: "936 g at about 320 g a pan makes 3 charges, of 312 g each" },
    { given: [980, 320], gives: 3, shows: "980 g makes 3 charges of 326.7 g" },
    { given: [980, 320, 325], gives: 4, shows: "where no charge may pass 325 g, the same leaf makes 4" },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      idle: ["readability"],
      given: [1128, 36, 36, 1],
      expected: 32,
      source: {
        work: armyBuses,
        place: "1128 soldiers in buses that hold 36; by weight 31 would be nearest, of 36.4",
      },
      tolerance: { absolute: 0 },
      because: "whole buses",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [466, 350],
      expected: 1,
      working: "one charge is 466 − 350 = 116 too heavy, two are 350 − 233 = 117 too light: one is nearer",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [467, 350],
      expected: 2,
      working: "one charge is 467 − 350 = 117 too heavy, two are 350 − 233.5 = 116.5 too light: two are nearer",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [1200, 350, null, 5],
      expected: 4,
      working: "three charges of 400 are 50 too heavy, four of 300 are 50 too light: a tie takes more pans",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      idle: ["readability"],
      given: [705, 350, 352, 1],
      expected: 3,
      working: "two charges are nearest, but 705 steps in two make one of 353, which passes 352; three make 235 each",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [705, 350, 352.5],
      expected: 2,
      working: "705 / 2 = 352.5, which does not pass 352.5; without readability no charge is rounded up",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "input",
      given: [[[466], [467], [1200]], 350],
      expected: [[1], [2], [4]],
      working: "the three weights above, as a column",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [120, 350],
      expected: 1,
      working: "120 is less than one pan load, and there cannot be fewer charges than one",
      ...exactly,
    },
    {
      status: "common practice",
      exercises: "calculation",
      idle: ["readability"],
      given: [710, 350, null, 1],
      expected: 2,
      fact: "a sifted lot of 710 g, fired at about 350 g a pan, makes two charges",
      tolerance: { absolute: 0 },
      because: "a count",
    },
    {
      status: "exact",
      given: [900, 320, 300],
      expected: { error: "#VALUE!", message: "maxLoad must be at least 320, the panLoad; got 300" },
      working: "300 < 320",
      ...exactly,
    },
    {
      status: "exact",
      given: [10, 0.5, null, 1],
      expected: { error: "#VALUE!", message: "panLoad must be at least 1, the readability; got 0.5" },
      working: "0.5 < 1",
      ...exactly,
    },
    {
      status: "exact",
      given: [90000, 0.3],
      expected: {
        error: "#VALUE!",
        message:
          "panLoad must be large enough to make 10000 charges at most of 90000, the weight; got 0.3 (are both in the same unit?)",
      },
      working: "90000 / 0.3 = 300000 charges, more than 10000",
      ...exactly,
    },
    {
      status: "exact",
      given: [900, 320, null, 0.7],
      expected: {
        error: "#VALUE!",
        message: "weight must be a whole number of steps of 0.7; got 900 (the nearest are 899.5 and 900.2)",
      },
      working: "900 / 0.7 = 1285.71…, between 1285 × 0.7 = 899.5 and 1286 × 0.7 = 900.2",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

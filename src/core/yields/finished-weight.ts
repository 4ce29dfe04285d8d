import { defineFunction, exactly, type FunctionPage, measured, optional, setting } from "../define";
import { dryLoss, looseWeight, moisture, weight } from "../quantities";
import { irriMoisture, junshanProcess, silageShrink } from "../sources";
import { targetWeight } from "../targets/target-weight";
import { percent, step } from "../working";

/**
 * Finished weight to expect of fresh leaf, F(1 − Mf)(1 − ℓ) / (1 − Mp), ℓ being all dry matter lost, sift-outs
 * included. Source: IRRI Rice Knowledge Bank, "Moisture content calculations", with the loss added.
 */
export const finishedWeight = defineFunction({
  id: "FINISHEDWEIGHT",
  group: "yields",
  parameters: [
    measured("freshWeight", weight),
    measured("freshMoisture", moisture),
    setting("finishedMoisture", moisture),
    optional("dryLoss", dryLoss, 0),
  ],
  result: { shape: "cell", quantity: weight },
  smooth: true,
  calculate: (freshWeight, freshMoisture, finishedMoisture, dryLoss): number =>
    targetWeight.calculate(freshWeight, freshMoisture, finishedMoisture) * (1 - dryLoss),
});

export const finishedWeightPage = {
  summary: "Finished weight to expect from fresh leaf.",
  parameters: {
    freshWeight: "weight of the leaf as received",
    freshMoisture: "moisture of the fresh leaf, wet basis",
    finishedMoisture: "moisture that the tea is dried down to, wet basis",
    dryLoss: "share of the dry matter that is lost on the way, sift-outs and dust included; 0 when left out",
  },
  formula: "P = F × (1 − Mf) × (1 − ℓ) / (1 − Mp)",
  working: (F: number, Mf: number, Mp: number, ℓ: number) => {
    const D = F * (1 - Mf) * (1 - ℓ);
    return [
      step(
        "dry matter of the fresh leaf, less what is lost",
        "F × (1 − Mf) × (1 − ℓ)",
        { F, Mf: percent(Mf), ℓ: percent(ℓ) },
        D,
        looseWeight,
      ),
      step(
        "tea of which it is the dry share",
        "D / (1 − Mp)",
        { D, Mp: percent(Mp) },
        finishedWeight.calculate(F, Mf, Mp, ℓ),
        weight,
      ),
    ];
  },
  guide: [
    "Use it in the morning, to know how much tea the basket holds. Without dryLoss it is the most there can be: nothing sifted out, no dust, no sample.",
    "dryLoss is everything that leaves as dry matter. Take it from your own past lots: 1 less DRYRECOVERY, over those that went well. When sift-outs have been weighed, use FINISHEDBAND, which takes them with their own moisture, and DRYRECOVERY with removed and removedMoisture for the rest of the loss.",
    "Fresh moisture decides: at 76 %, one point up or down moves the answer by about 4 %. A moisture from a table or from last year gives an estimate, not a promise.",
  ],
  sources: [
    { work: irriMoisture, place: "final weight after drying" },
    { work: junshanProcess, place: "whole lot, fresh and finished" },
  ],
  cautions: [],
  examples: [
    { given: [1000, 0.76, 0.04], gives: 250, shows: "1000 g at 76 % holds 250 g of tea at 4 %" },
    { given: [1000, 0.76, 0.04, 0.06], gives: 235, shows: "with 6 % of the dry matter lost, 235 g" },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [100, 0.65, 65 / 94.75, 0.15],
      expected: 94.75,
      source: {
        work: silageShrink,
        place: "100 pounds at 65 % moisture lose 15 % of their dry matter, which is 5.25 pounds, and no water",
      },
      tolerance: { absolute: 1e-9 },
      because: "published exactly; the 65 pounds of water stay",
    },
    {
      status: "published",
      exercises: "calculation",
      given: [1000, 0.25, 0.14],
      expected: 872,
      source: { work: irriMoisture, place: "worked example, 1000 kg from 25 % to 14 %" },
      tolerance: { absolute: 0.5 },
      because: "published to the whole kilogram",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [2000, 0.7625, 0.05],
      expected: 500,
      working: "2000 × 0.2375 = 475; 475 / 0.95 = 500",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [2000, 0.75, 0.05, 0.05],
      expected: 500,
      working: "2000 × 0.25 = 500; 500 × 0.95 / 0.95 = 500",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [650, 0.78, 0.05],
      expected: 143 / 0.95,
      working: "650 × 0.22 = 143; 143 / 0.95 = 150.5263157895",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "input",
      given: [[[640], [null], [720]], 0.77, 0.05],
      expected: [[147.2 / 0.95], [""], [165.6 / 0.95]],
      working: "640 × 0.23 = 147.2; a lot not weighed yet waits; 720 × 0.23 = 165.6",
      ...exactly,
    },
    {
      status: "exact",
      given: [650, 0.78, null],
      expected: {
        error: "#VALUE!",
        message: "finishedMoisture must be from 0 up to, not including, 1 (76% or 0.76); got a blank",
      },
      working: "what to dry down to is the maker's decision, and it is not there",
      ...exactly,
    },
    {
      status: "exact",
      given: [650, 0.78, 0.05, 1],
      expected: {
        error: "#VALUE!",
        message: "dryLoss must be from 0 up to, not including, 1 (5% or 0.05); got 1",
      },
      working: "with all dry matter lost there is no tea",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

import { defineFunction, exactly, type FunctionPage, measured, optional, setting } from "../define";
import { dryLoss, looseWeight, moisture, weight } from "../quantities";
import { irriMoisture, silageShrink } from "../sources";
import { percent, step } from "../working";
import { finishedWeight } from "./finished-weight";

/**
 * Fresh leaf needed for a finished weight, P(1 − Mp) / ((1 − Mf)(1 − ℓ)): the inverse of FINISHEDWEIGHT, ℓ being all
 * dry matter lost. Source: as FINISHEDWEIGHT.
 */
export const freshNeeded = defineFunction({
  id: "FRESHNEEDED",
  group: "yields",
  parameters: [
    setting("finishedWeight", weight),
    measured("freshMoisture", moisture),
    setting("finishedMoisture", moisture),
    optional("dryLoss", dryLoss, 0),
  ],
  result: { shape: "cell", quantity: weight },
  smooth: true,
  calculate: (wanted, freshMoisture, finishedMoisture, dryLoss): number =>
    wanted / finishedWeight.calculate(1, freshMoisture, finishedMoisture, dryLoss),
});

export const freshNeededPage = {
  summary: "Fresh leaf to pluck or buy for a finished weight.",
  parameters: {
    finishedWeight: "weight of finished tea that is wanted",
    freshMoisture: "moisture of the fresh leaf, wet basis",
    finishedMoisture: "moisture that the tea is dried down to, wet basis",
    dryLoss: "share of the dry matter that is lost on the way, sift-outs and dust included; 0 when left out",
  },
  formula: "F = P × (1 − Mp) / ((1 − Mf) × (1 − ℓ))",
  working: (P: number, Mf: number, Mp: number, ℓ: number) => {
    const D = P * (1 - Mp);
    return [
      step("dry matter of the tea wanted", "P × (1 − Mp)", { P, Mp: percent(Mp) }, D, looseWeight),
      step(
        "fresh leaf that keeps as much",
        "D / ((1 − Mf) × (1 − ℓ))",
        { D, Mf: percent(Mf), ℓ: percent(ℓ) },
        freshNeeded.calculate(P, Mf, Mp, ℓ),
        weight,
      ),
    ];
  },
  guide: [
    "Use it when an order is written down: how much leaf has to come in. For a finished weight of 1 it is the leaf ratio that this moisture and this loss ask for.",
    "Without dryLoss it is the least leaf that can do, with nothing sifted out. Type the loss of your own past lots (1 less DRYRECOVERY), and remember that leaf after rain needs more: at 76 %, one point wetter takes about 4 % more leaf.",
  ],
  sources: [{ work: irriMoisture, place: "final weight after drying, solved for the first weight" }],
  cautions: [],
  examples: [
    { given: [235, 0.76, 0.04, 0.06], gives: 1000, shows: "235 g of tea at 4 % takes 1000 g of leaf, 6 % lost" },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [94.75, 0.65, 65 / 94.75, 0.15],
      expected: 100,
      source: {
        work: silageShrink,
        place:
          "100 pounds at 65 % moisture lose 15 % of their dry matter, which is 5.25 pounds, and no water; backwards",
      },
      tolerance: { absolute: 1e-9 },
      because: "published exactly; the 65 pounds of water stay",
    },
    {
      status: "published",
      exercises: "calculation",
      given: [872, 0.25, 0.14],
      expected: 1000,
      source: { work: irriMoisture, place: "worked example, 1000 kg from 25 % to 14 %, backwards" },
      tolerance: { absolute: 0.6 },
      because: "872 is published to the whole kilogram: half a kilogram of it is 0.57 of the start",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1, 0.75, 0.05],
      expected: 3.8,
      working: "0.95 / 0.25 = 3.8 of fresh leaf for 1 of tea",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1, 0.77, 0.05],
      expected: 0.95 / 0.23,
      working: "0.95 / 0.23 = 4.130434783",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1, 0.78, 0.05],
      expected: 0.95 / 0.22,
      working: "0.95 / 0.22 = 4.318181818",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [500, 0.75, 0.05, 0.05],
      expected: 2000,
      working: "500 × 0.95 = 475; 475 / (0.25 × 0.95) = 2000",
      ...exactly,
    },
    {
      status: "exact",
      given: [-5, 0.75, 0.05],
      expected: { error: "#VALUE!", message: "finishedWeight must be a weight above 0; got -5" },
      working: "−5 < 0",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

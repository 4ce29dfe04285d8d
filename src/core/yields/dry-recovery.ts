import { defineFunction, exactly, type FunctionPage, measured, optional } from "../define";
import { mustBe } from "../errors";
import { dryMatter } from "../moisture/dry-matter";
import { looseWeight, moisture, share, weight, within } from "../quantities";
import { iowaMoistureBasis, irriMoisture, silageShrink } from "../sources";
import { percent, step } from "../working";

/** A share that errors in the readings can carry past one. */
const recovery = within(share, { atLeast: 0 }, "0 or more");

/**
 * Dry matter found again in the finished tea, P(1 − Mp) / (F(1 − Mf) − S(1 − Ms)), with S taken out on the way. May pass
 * 1. Source: balance of dry matter.
 */
export const dryRecovery = defineFunction({
  id: "DRYRECOVERY",
  group: "yields",
  parameters: [
    measured("freshWeight", weight),
    measured("freshMoisture", moisture),
    measured("finishedWeight", weight),
    measured("finishedMoisture", moisture),
    optional("removed", looseWeight, 0),
    optional("removedMoisture", moisture),
  ],
  result: { shape: "cell", quantity: recovery },
  smooth: true,
  calculate: (
    freshWeight,
    freshMoisture,
    finishedWeight,
    finishedMoisture,
    removed,
    removedMoisture = freshMoisture,
  ): number =>
    dryMatter.calculate(finishedWeight, finishedMoisture) /
    wentOn(freshWeight, freshMoisture, removed, removedMoisture),
});

/** Dry matter of the fresh leaf less that of what was taken out. */
function wentOn(freshWeight: number, freshMoisture: number, removed: number, removedMoisture: number): number {
  const fresh = dryMatter.calculate(freshWeight, freshMoisture);
  const left = fresh - removed * (1 - removedMoisture);
  if (left > 0) return left;
  throw mustBe(
    "removed",
    {
      kind: "limit",
      is: "below",
      limit: fresh / (1 - removedMoisture),
      what: "which holds all the dry matter of the fresh leaf",
    },
    removed,
  );
}

export const dryRecoveryPage = {
  summary: "Share of the fresh leaf's dry matter that is found again in the finished tea.",
  parameters: {
    freshWeight: "weight of the leaf as received",
    freshMoisture: "moisture of the fresh leaf, wet basis",
    finishedWeight: "weight of the finished tea",
    finishedMoisture: "moisture of the finished tea, wet basis",
    removed: "weight of what was weighed and taken out on the way, such as sift-outs and samples; left out, 0",
    removedMoisture: "moisture of what was taken out, wet basis; left out, that of the fresh leaf",
  },
  formula: "P × (1 − Mp) / (F × (1 − Mf) − S × (1 − Ms)); Ms left out is Mf",
  working: (F: number, Mf: number, P: number, Mp: number, S = 0, Ms = Mf) => {
    const [out, come] = [dryMatter.calculate(P, Mp), wentOn(F, Mf, S, Ms)];
    const moistures = { F, Mf: percent(Mf) };
    return [
      S === 0
        ? step("dry matter in the fresh leaf", "F × (1 − Mf)", moistures, come, looseWeight)
        : step(
            "dry matter that went on",
            "F × (1 − Mf) − S × (1 − Ms)",
            { ...moistures, S, Ms: percent(Ms) },
            come,
            looseWeight,
          ),
      step("dry matter of the finished tea", "P × (1 − Mp)", { P, Mp: percent(Mp) }, out, looseWeight),
      step("found again", "Dp / Df", { Dp: out, Df: come }, dryRecovery.calculate(F, Mf, P, Mp, S, Ms), recovery),
    ];
  },
  guide: [
    "OUTTURN with the water taken out of it, so that lots plucked in dew and lots plucked in sun can stand beside each other. 1 less the answer is the share of dry matter that left with sift-outs, samples, dust and breathing.",
    "The answer may pass 1. No tea gains dry matter, so a reading was off. Look at the fresh moisture first: at 77 %, one point too many adds more than four points here. FINISHEDCHECK tells whether such an error explains it.",
    "Kept for the lots that went well, 1 less the answer, in the mean, gives the dryLoss for FINISHEDWEIGHT, and the lowLoss and highLoss alike for FINISHEDBAND and FINISHEDCHECK.",
    "Sift-outs and samples that were weighed go into removed, with their own moisture in removedMoisture: 20 g of dry sift-outs hold four times the dry matter of 20 g of fresh leaf. The answer is then about what went on, and 1 less it is the loss that nobody weighed, which is what FINISHEDBAND and FINISHEDCHECK ask for beside their own removed.",
  ],
  sources: [{ work: iowaMoistureBasis, place: "definition of wet basis" }],
  cautions: [],
  examples: [
    { given: [1000, 0.76, 240, 0.05], gives: 0.95, shows: "240 g of dry matter came in, 228 g went out: 95 %" },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [100, 0.65, 94.75, 65 / 94.75],
      expected: 0.85,
      source: {
        work: silageShrink,
        place: "100 pounds at 65 % moisture lose 5.25 pounds, all of it dry matter: 5.25 / 35 is a loss of 15 %",
      },
      tolerance: { absolute: 1e-9 },
      because: "published exactly; the 65 pounds of water stay",
    },
    {
      status: "published",
      exercises: "calculation",
      given: [1000, 0.25, 872, 0.14],
      expected: 1,
      source: { work: irriMoisture, place: "worked example, 1000 kg from 25 % to 14 %: nothing but water leaves" },
      tolerance: { absolute: 0.0006 },
      because: "half a kilogram of the 872 published makes that much",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [900, 0.765, 204, 0.045],
      expected: 194.82 / 211.5,
      working: "204 × 0.955 = 194.82; 900 × 0.235 = 211.5; 194.82 / 211.5 = 0.9211347518",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [640, 0.77, 158, 0.05],
      expected: 150.1 / 147.2,
      working: "158 × 0.95 = 150.1; 640 × 0.23 = 147.2; 150.1 / 147.2 = 1.0197010870, above 1",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [900, 0.765, 195.4, 0.045, 20, 0.045],
      expected: 186.607 / 192.4,
      working:
        "195.4 × 0.955 = 186.607; 900 × 0.235 − 20 × 0.955 = 211.5 − 19.1 = 192.4; 186.607 / 192.4 = 0.9698908524, 3.0 % lost; taken off the fresh weight, 880 × 0.235 = 206.8 would make it 9.8 %",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [900, 0.765, 195.4, 0.045, 20],
      expected: 186.607 / 206.8,
      working: "sift-outs as moist as the fresh leaf: 900 × 0.235 − 20 × 0.235 = 880 × 0.235 = 206.8",
      ...exactly,
    },
    {
      status: "exact",
      given: [900, 0.765, 195.4, 0.045, 230, 0.045],
      expected: {
        error: "#VALUE!",
        message: "removed must be below 221.46, which holds all the dry matter of the fresh leaf; got 230",
      },
      working: "230 × 0.955 = 219.65 is more than 211.5; 211.5 / 0.955 = 221.4659686",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [2000, 0.7625, 500, 0.05],
      expected: 1,
      working: "500 × 0.95 = 475 and 2000 × 0.2375 = 475: nothing lost",
      ...exactly,
    },
    {
      status: "exact",
      given: [900, 0.765, 204, null],
      expected: "",
      working: "not measured yet: the answer waits",
      ...exactly,
    },
    {
      status: "exact",
      given: [900, 76.5, 204, 0.045],
      expected: {
        error: "#VALUE!",
        message: "freshMoisture must be from 0 up to, not including, 1 (76% or 0.76); got 76.5",
      },
      working: "76.5 > 1",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

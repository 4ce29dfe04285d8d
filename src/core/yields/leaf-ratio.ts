import { defineFunction, exactly, type FunctionPage, measured } from "../define";
import { ratio, weight } from "../quantities";
import { junshanProcess, outturnCircular } from "../sources";
import { step } from "../working";
import { refuseAboveFresh } from "./not-above-fresh";

/** Fresh leaf for each weight of finished tea, F / P. Both in the same unit. Source: definition in the trade. */
export const leafRatio = defineFunction({
  id: "LEAFRATIO",
  group: "yields",
  parameters: [measured("freshWeight", weight), measured("finishedWeight", weight)],
  result: { shape: "cell", quantity: ratio },
  smooth: true,
  calculate: (freshWeight, finishedWeight): number => {
    refuseAboveFresh(freshWeight, finishedWeight);
    return freshWeight / finishedWeight;
  },
});

export const leafRatioPage = {
  summary: "How much fresh leaf went into one part of finished tea.",
  parameters: {
    freshWeight: "weight of the leaf as received, before anything was taken out",
    finishedWeight: "weight of the tea that was packed",
  },
  formula: "F / P",
  working: (F: number, P: number) => [
    step("fresh for one of finished", "F / P", { F, P }, leafRatio.calculate(F, P), ratio),
  ],
  guide: [
    "Kilograms of fresh leaf for a kilogram of tea: the same fact as OUTTURN, said the other way round. The two multiplied give 1.",
    "It rises with wet leaf as well as with losses. What water alone asks for at a given moisture is FRESHNEEDED for a finished weight of 1; what the ratio has beyond that is leaf and dust that were lost.",
    "Refused: more finished tea than fresh leaf, which comes from grams beside kilograms or from swapped cells.",
  ],
  sources: [{ work: junshanProcess, place: "whole lot, fresh and finished" }],
  cautions: [],
  examples: [{ given: [1250, 250], gives: 5, shows: "1250 g of fresh leaf made 250 g of tea: 5 to 1" }],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [1, [[0.2222], [0.215]]],
      expected: [[4.5], [4.65]],
      source: { work: outturnCircular, place: "4.5 kg of fresh leaf at 22.22 %, 4.65 kg at 21.5 %" },
      tolerance: { absolute: 0.005 },
      because: "published to a hundredth of a kilogram",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [2000, 500],
      expected: 4,
      working: "2000 / 500 = 4",
      ...exactly,
    },
    {
      status: "common practice",
      exercises: "calculation",
      given: [800, 170],
      expected: 4.7,
      fact: "800 g of fresh buds give about 170 g of tea, 4.7 to 1",
      tolerance: { absolute: 0.05 },
      because: "said to a tenth",
    },
    {
      status: "exact",
      given: [195, 900],
      expected: {
        error: "#VALUE!",
        message:
          "finishedWeight must be at most 195, the freshWeight; got 900 (are both in the same unit, and not swapped?)",
      },
      working: "900 > 195",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

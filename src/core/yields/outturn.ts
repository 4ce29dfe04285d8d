import { defineFunction, exactly, type FunctionPage, measured } from "../define";
import { share, weight } from "../quantities";
import { junshanProcess, outturnCircular } from "../sources";
import { step } from "../working";
import { refuseAboveFresh } from "./not-above-fresh";

/** Finished weight as a share of fresh weight, P / F. Both in the same unit. Source: definition in the trade. */
export const outturn = defineFunction({
  id: "OUTTURN",
  group: "yields",
  parameters: [measured("freshWeight", weight), measured("finishedWeight", weight)],
  result: { shape: "cell", quantity: share },
  smooth: true,
  calculate: (freshWeight, finishedWeight): number => {
    refuseAboveFresh(freshWeight, finishedWeight);
    return finishedWeight / freshWeight;
  },
});

export const outturnPage = {
  summary: "Finished weight as a share of the fresh weight it came from.",
  parameters: {
    freshWeight: "weight of the leaf as received, before anything was taken out",
    finishedWeight: "weight of the tea that was packed",
  },
  formula: "P / F",
  working: (F: number, P: number) => [
    step("finished as a share of fresh", "P / F", { P, F }, outturn.calculate(F, P), share),
  ],
  guide: [
    "The outturn of one lot. It holds everything at once: the water that left, the leaf that was sifted out, and the dust. Wet leaf gives a low outturn without any loss, so compare lots of different mornings with DRYRECOVERY instead.",
    "For a season, divide the sum of the finished weights by the sum of the fresh weights: =TEA.OUTTURN(SUM(B:B), SUM(C:C)). The mean of the lots' outturns is another number, in which a small lot counts as much as a large one. Leave a lot out of both sums until it is finished.",
    "Refused: more finished tea than fresh leaf, which comes from grams beside kilograms or from swapped cells.",
  ],
  sources: [{ work: junshanProcess, place: "whole lot, fresh and finished" }],
  cautions: [],
  examples: [{ given: [1250, 275], gives: 0.22, shows: "1250 g of fresh leaf and 275 g of tea: 22 %" }],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [4.5, 1],
      expected: 0.2222,
      source: { work: outturnCircular, place: "22.22 % for 4.5 kg of fresh leaf" },
      tolerance: { absolute: 0.00005 },
      because: "published to a hundredth of a percent",
    },
    {
      status: "published",
      exercises: "calculation",
      given: [4.65, 1],
      expected: 0.215,
      source: { work: outturnCircular, place: "21.5 % for 4.65 kg of fresh leaf" },
      tolerance: { absolute: 0.0005 },
      because: "published to a tenth of a percent",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [2000, 500],
      expected: 0.25,
      working: "500 / 2000 = 0.25",
      ...exactly,
    },
    {
      status: "common practice",
      exercises: "calculation",
      given: [800, 170],
      expected: 0.21,
      fact: "800 g of fresh buds give about 170 g of tea, an outturn of 21 %",
      tolerance: { absolute: 0.005 },
      because: "said to the whole percent",
    },
    {
      status: "exact",
      given: [1250, null],
      expected: "",
      working: "not finished yet: the answer waits",
      ...exactly,
    },
    {
      status: "exact",
      given: [0.9, 195],
      expected: {
        error: "#VALUE!",
        message:
          "finishedWeight must be at most 0.9, the freshWeight; got 195 (are both in the same unit, and not swapped?)",
      },
      working: "195 > 0.9",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

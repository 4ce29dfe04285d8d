import { saleLimit } from "../cautions";
import { defineFunction, exactly, type FunctionPage, measured, setting } from "../define";
import { content, moisture } from "../quantities";
import { iowaMoistureBasis, iso1572 } from "../sources";
import { percent, step } from "../working";

/**
 * A content stated at one moisture, restated to another: c(1 − to) / (1 − from), in the unit of the content.
 * Source: Iowa State University Extension PM 1625, "Moisture Basis Conversions".
 */
export const restateContent = defineFunction({
  id: "RESTATECONTENT",
  group: "moisture",
  parameters: [measured("content", content), measured("fromMoisture", moisture), setting("toMoisture", moisture)],
  result: { shape: "cell", quantity: content },
  smooth: true,
  calculate: (content, fromMoisture, toMoisture): number => (content * (1 - toMoisture)) / (1 - fromMoisture),
});

export const restateContentPage = {
  summary: "A content stated at one moisture, restated to another moisture.",
  parameters: {
    content: "what was found, as a share or in any unit for each unit of weight",
    fromMoisture: "moisture at which it was found, wet basis",
    toMoisture: "moisture at which it is wanted, wet basis; 0 for dry matter",
  },
  formula: "c′ = c × (1 − to) / (1 − from)",
  working: (c: number, from: number, to: number) => [
    step(
      "the same amount in leaf of another moisture",
      "c × (1 − to) / (1 − from)",
      { c, from: percent(from), to: percent(to) },
      restateContent.calculate(c, from, to),
      content,
    ),
  ],
  guide: [
    "Ash, extract or a residue found in tea as it is and the same thing stated on dry matter are two different numbers. Restate one of them before you compare a laboratory's report with a limit or with another report.",
    "Type 0 as toMoisture for dry matter. The drier the leaf, the higher the content, because the same amount stands in less weight.",
    "It restates; it does not correct. What is driven off together with the water is not put back.",
    "Refused: a negative content and a moisture of 100 % or more.",
  ],
  sources: [
    { work: iowaMoistureBasis, place: "worked example, 6.0 % at 20 % moisture" },
    { work: iso1572, place: "dry matter at 103 ± 2 °C as the basis of other determinations" },
  ],
  cautions: [saleLimit],
  examples: [
    { given: [0.0475, 0.05, 0], gives: 0.05, shows: "4.75 % ash in tea at 5 % moisture is 5 % of its dry matter" },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [0.06, 0.2, [[0.15], [0.13], [0]]],
      expected: [[0.064], [0.065], [0.075]],
      source: { work: iowaMoistureBasis, place: "6.0 % at 20 % moisture, restated to 15 %, 13 % and dry" },
      tolerance: { absolute: 0.0005 },
      because: "published to a tenth of a percent",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [0.06, 0.2, [[0.15], [0.13], [0]]],
      expected: [[0.06375], [0.06525], [0.075]],
      working: "6 × 0.85/0.8 = 6.375; 6 × 0.87/0.8 = 6.525; 6/0.8 = 7.5, in percent",
      ...exactly,
    },
    {
      status: "exact",
      given: [6, 20, 0],
      expected: {
        error: "#VALUE!",
        message: "fromMoisture must be from 0 up to, not including, 1 (76% or 0.76); got 20",
      },
      working: "20 is 2000 %, more water than leaf",
      ...exactly,
    },
    {
      status: "exact",
      given: [-0.01, 0.2, 0],
      expected: { error: "#VALUE!", message: "content must be 0 or more; got -0.01" },
      working: "no content is below nothing",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

import { hotPan } from "../cautions";
import {
  type Answer,
  defineFunction,
  exactly,
  explained,
  type FunctionPage,
  headers,
  measured,
  setting,
} from "../define";
import { DomainError } from "../errors";
import { dryMatter } from "../moisture/dry-matter";
import { Phrase } from "../phrases";
import { dryBasisMoisture, looseWeight, loss, moisture, text, weight } from "../quantities";
import { teaWaterLoss } from "../sources";
import { percent, step, workingNumber } from "../working";
import { firingMoisture } from "./firing-moisture";
import { firingTarget } from "./firing-target";
import type { LossOf } from "./loss-of";
import { lossSays, wholeSymbols } from "./loss-working";

/** In the order of what remains: water ≥ weight ≥ points. */
export const meanings: readonly LossOf[] = ["water", "weight", "points"];

/** The three meanings of one percentage side by side. A meaning that is impossible for this leaf holds its refusal. */
export const lossMeanings = defineFunction({
  id: "LOSSMEANINGS",
  group: "targets",
  parameters: [measured("weight", weight), measured("moisture", moisture), setting("loss", loss), headers],
  result: {
    shape: "table",
    columns: [
      { name: "meaning", quantity: text },
      { name: "scale reading", quantity: weight },
      { name: "weight off", quantity: looseWeight },
      { name: "moisture", quantity: moisture },
      { name: "dry basis", quantity: dryBasisMoisture },
    ],
    picture: explained({ shows: "meanings", name: "meaning", weight: "scale reading", moisture: "moisture" }),
  },
  calculate: (weight, moisture, loss): Answer[][] =>
    meanings.map((meaning) => [new Phrase(meaning), ...numbersOf(weight, moisture, loss, meaning)]),
});

function numbersOf(weight: number, moisture: number, loss: number, meaning: LossOf): Answer[] {
  try {
    const reading = firingTarget.calculate(weight, moisture, loss, meaning);
    const after = firingMoisture.calculate(moisture, loss, meaning);
    // Not from `after`: in leaf that is nearly all water it rounds to 1, which has no dry basis.
    const water = after * reading;
    return [reading, weight - reading, after, water / dryMatter.calculate(weight, moisture)];
  } catch (problem) {
    if (problem instanceof DomainError) return [problem, problem, problem, problem];
    throw problem;
  }
}

/** `320 − 272 = 48; …` for the meanings that are possible. */
const weightsOff = (W: number, rows: readonly (readonly Answer[])[]): string =>
  rows
    .flatMap(([, reading, off]) =>
      typeof reading === "number" && typeof off === "number"
        ? [`${workingNumber(W)} − ${workingNumber(reading)} = ${workingNumber(off)}`]
        : [],
    )
    .join("; ");

const headings = ["meaning", "scale reading", "weight off", "moisture", "dry basis"];

const impossible = (loss: string) =>
  new Array(4).fill({
    error: "#VALUE!",
    message: `loss must be at most 0.2, the moisture of the leaf, as a loss of ${loss}; got 0.3`,
  });

export const lossMeaningsPage = {
  summary: "The three meanings of one loss side by side: of the water, of the weight, in points.",
  parameters: {
    weight: "weight of the charge before firing",
    moisture: "moisture of the charge before firing, wet basis",
    loss: "the loss whose meaning is in question: 30 % or 0.3",
  },
  formula: "water: W × (1 − M × l); weight: W × (1 − l); points: W × (1 − M) / (1 − M + l)",
  working: (W: number, M: number, l: number) => {
    const rows = lossMeanings.calculate(W, M, l);
    return [
      ...meanings.flatMap((of, row) => {
        const reading = rows[row]?.[1];
        if (typeof reading !== "number") return [];
        return [step(lossSays[of], wholeSymbols[of], { W, M: percent(M), l: percent(l) }, reading, weight)];
      }),
      step("the three side by side", "weight off = W − reading", weightsOff(W, rows), rows),
    ];
  },
  guide: [
    "Somebody tells you to take the leaf down by so much percent and does not say of what. Put the charge in here and look at the three scale readings: see which of them can be what was meant, and ask about that one.",
    "Each row is one meaning: what the scale would read, what has gone, and the moisture left, on wet and on dry basis. The word in the first column is what FIRINGTARGET and FIRINGMOISTURE take as lossOf.",
    "When the loss is larger than the moisture, it can only be meant of the water: the other two rows hold an error that says so, and the first still stands.",
  ],
  sources: [],
  cautions: [hotPan],
  examples: [
    {
      given: [320, 0.75, 0.2],
      gives: [
        headings,
        ["water", 272, 48, 0.6 / 0.85, 2.4],
        ["weight", 256, 64, 0.6875, 2.2],
        ["points", 80 / 0.45, 64 / 0.45, 0.55, 0.55 / 0.45],
      ],
      shows: "20 % off 320 g at 75 %: from 272 g down to 177.8 g, by what it is meant of",
    },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [100, 0.78, 0.45, false],
      expected: [
        ["water", 64.9, 35.1, 0.429 / 0.649, 1.95],
        ["weight", 55, 45, 0.6, 1.5],
        ["points", 22 / 0.67, 45 / 0.67, 0.33, 33 / 67],
      ],
      source: {
        work: teaWaterLoss,
        place:
          "45 of 100 kg leave, from 78 to 60 %: the row of the weight. The others by hand: 78 − 35.1 = 42.9 of water in 64.9, and 22 dry / 0.67",
      },
      tolerance: { absolute: 1e-9 },
      because: "published exactly",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [400, 0.75, 0.3],
      expected: [
        headings,
        ["water", 310, 90, 21 / 31, 2.1],
        ["weight", 280, 120, 9 / 14, 1.8],
        ["points", 2000 / 11, 2400 / 11, 0.45, 9 / 11],
      ],
      working:
        "100 g dry. Water: 300 g less 90 g leaves 310 g, 210/310 and 210/100. Weight: 280 g, 180/280 and 180/100. Points: 100/0.55 = 181.8181818 g, 218.1818182 g off, 45 %, 45/55",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [500, 0.2, 0.3, false],
      expected: [
        ["water", 470, 30, 7 / 47, 0.175],
        ["weight", ...impossible("weight")],
        ["points", ...impossible("points")],
      ],
      working:
        "400 g dry, 100 g water; 30 g of it off leaves 470 g, 70/470 and 70/400. 30 % of the weight is 150 g, and 30 points are more than 20: both impossible",
      ...exactly,
    },
    {
      status: "exact",
      given: [400, 0.75, 30],
      expected: { error: "#VALUE!", message: "loss must be from 0 to 1 (30% or 0.3); got 30" },
      working: "30 is 3000 %",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

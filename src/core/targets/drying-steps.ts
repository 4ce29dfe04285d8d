import { carbonMonoxide, dust, hotPan, warmLeaf } from "../cautions";
import {
  type Answer,
  defineFunction,
  exactly,
  explained,
  type FunctionPage,
  headers,
  measured,
  optionalList,
  settingList,
} from "../define";
import { dryMatter } from "../moisture/dry-matter";
import { Phrase } from "../phrases";
import { dryBasisMoisture, looseWeight, moisture, share, text, weight } from "../quantities";
import { teaWaterLoss } from "../sources";
import { percent, step, workingNumber } from "../working";
import { dryingPath, type TargetKind, target, targetKind } from "./drying-path";

/**
 * The whole way down: a start row, then a row for each target. Only water leaves, so each row holds the dry matter of
 * the start. A target is a moisture to reach, or a loss on the step before. Moisture may stay but not rise.
 */
export const dryingSteps = defineFunction({
  id: "DRYINGSTEPS",
  group: "targets",
  parameters: [
    measured("weight", weight),
    measured("moisture", moisture),
    settingList("targets", target),
    optionalList("targetKinds", targetKind, { oneForAll: true, fallback: "moisture" }),
    optionalList("names", text, { gaps: true }),
    headers,
  ],
  result: {
    shape: "table",
    columns: [
      { name: "step", quantity: text },
      { name: "scale reading", quantity: weight },
      { name: "moisture", quantity: moisture },
      { name: "dry basis", quantity: dryBasisMoisture },
      { name: "water off this step", quantity: looseWeight },
      { name: "water off so far", quantity: looseWeight },
      { name: "share of start", quantity: share },
    ],
    picture: explained({ shows: "stages", name: "step", weight: "scale reading", moisture: "moisture" }),
  },
  calculate: (weight, moisture, targets, targetKinds, names): Answer[][] => {
    const start = { weight, moisture };
    const dry = dryMatter.calculate(weight, moisture);
    const leaves = [start, ...dryingPath(start, targets, targetKinds)];
    return leaves.map((leaf, index) => {
      const before = leaves[index - 1] ?? start;
      return [
        index === 0 ? new Phrase("start") : (names?.[index - 1] ?? new Phrase({ kind: "step", number: index })),
        leaf.weight,
        leaf.moisture,
        // Not from the moisture alone: in leaf that is nearly all water it rounds to 1, which has no dry basis.
        (leaf.weight * leaf.moisture) / dry,
        before.weight - leaf.weight,
        weight - leaf.weight,
        leaf.weight / weight,
      ];
    });
  },
});

/** `80 / (1 − 60 %) = 200; …`, a term for each target. */
const readingsInLine = (D: number, rows: readonly (readonly Answer[])[]): string =>
  rows
    .slice(1)
    .map((row) => {
      const [, reading, M] = row as [string, number, number];
      return `${workingNumber(D)} / (1 − ${percent(M)}) = ${workingNumber(reading)}`;
    })
    .join("; ");

const headings = [
  "step",
  "scale reading",
  "moisture",
  "dry basis",
  "water off this step",
  "water off so far",
  "share of start",
];

const finished = 143 / 0.95;

export const dryingStepsPage = {
  summary: "Scale reading, moisture and water off for each step from fresh leaf to finished tea.",
  parameters: {
    weight: "weight of the leaf at the start",
    moisture: "moisture of the leaf at the start, wet basis",
    targets: "one target for each step, a row or a column",
    targetKinds:
      'what the targets are, one word for all or a list: "moisture" to reach, or a loss on the step before of "water", of "weight", or in "points"; a blank is "moisture"',
    names: "what to call each step; a step without a name is called step 1, step 2 and so on",
  },
  formula: "each step: W′ = W × (1 − M) / (1 − M′), with M′ the target or what the loss leaves",
  working: (
    W: number,
    M: number,
    targets: readonly number[],
    kinds: readonly TargetKind[],
    names?: readonly (string | null)[],
  ) => {
    const rows = dryingSteps.calculate(W, M, targets, kinds, names);
    const D = W * (1 - M);
    const [, reading, last] = rows[rows.length - 1] as [string, number, number];
    return [
      step("dry matter, the same in every row", "W × (1 − M)", { W, M: percent(M) }, D, looseWeight),
      step(
        "scale reading of the last row, from its moisture",
        "D / (1 − M′)",
        { D, "M′": percent(last) },
        reading,
        weight,
      ),
      step("every row in the same way", "W′ = D / (1 − M′)", readingsInLine(D, rows), rows),
    ];
  },
  guide: [
    "One table carries a lot from the start to the last drying. Type the targets under each other, each with its kind beside it, and read off what the scale should show at the end of every firing.",
    "The moisture of each row is carried on to the next, so a loss is always a loss on the step before. A wrap, in which the leaf rests and loses nothing, is a step with the same moisture again, or one with a loss of 0 and a word for what it is a loss of.",
    "Every row holds the dry matter of the start. When leaf is sifted or sampled on the way, end the table there and begin a new one from the new weight.",
    "Nothing is rounded: set the number of decimals that your scale shows. A moisture that rises is refused, with the step named: begin a new table for leaf that was wetted. So is a loss of weight or of points that is larger than the moisture before it.",
  ],
  sources: [],
  cautions: [hotPan, carbonMonoxide, warmLeaf, dust],
  examples: [
    {
      given: [
        320,
        0.75,
        [[0.25], [0.6], [0], [0.2]],
        [["water"], ["moisture"], ["points"], [""]],
        [["pan"], [""], ["wrap"]],
      ],
      gives: [
        headings,
        ["start", 320, 0.75, 3, 0, 0, 1],
        ["pan", 260, 9 / 13, 2.25, 60, 60, 0.8125],
        ["step 2", 200, 0.6, 1.5, 60, 120, 0.625],
        ["wrap", 200, 0.6, 1.5, 0, 120, 0.625],
        ["step 4", 100, 0.2, 0.25, 100, 220, 0.3125],
      ],
      shows: "a quarter of the water off, down to 60 %, a wrap, and down to 20 %",
    },
    {
      given: [250, 0.6, [[0.5, 0.2]], null, null, false],
      gives: [
        ["start", 250, 0.6, 1.5, 0, 0, 1],
        ["step 1", 200, 0.5, 1, 50, 50, 0.8],
        ["step 2", 125, 0.2, 0.25, 75, 125, 0.5],
      ],
      shows: "moistures in a row, without the heading",
    },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [100, 0.78, 0.6, null, null, false],
      expected: [
        ["start", 100, 0.78, 39 / 11, 0, 0, 1],
        ["step 1", 55, 0.6, 1.5, 45, 45, 0.55],
      ],
      source: { work: teaWaterLoss, place: "the whole statement: 45 of 100 kg leave, from 78 to 60 %" },
      tolerance: { absolute: 1e-9 },
      because: "published exactly",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [650, 0.78, [[0.3], [0.45], [0.32], [0.05]], [["water"], ["moisture"], ["moisture"], ["moisture"]]],
      expected: [
        headings,
        ["start", 650, 0.78, 39 / 11, 0, 0, 1],
        ["step 1", 497.9, 0.546 / 0.766, 354.9 / 143, 152.1, 152.1, 0.766],
        ["step 2", 260, 0.45, 9 / 11, 237.9, 390, 0.4],
        ["step 3", 143 / 0.68, 0.32, 8 / 17, 49.70588235294118, 439.70588235294116, 0.22 / 0.68],
        ["step 4", finished, 0.05, 1 / 19, 59.76780185758514, 499.4736842105263, 0.22 / 0.95],
      ],
      working:
        "650 × 0.22 = 143 g dry, 507 g water. 30 % of the water is 152.1 g: 497.9 g, 354.9 g of it water. Then 143/0.55 = 260, 143/0.68 = 210.2941176471, 143/0.95 = 150.5263157895; off 237.9, 49.7058823529, 59.7678018576",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [400, 0.75, [[0.3], [0.3]], [["weight"], ["points"]], null, 0],
      expected: [
        ["start", 400, 0.75, 3, 0, 0, 1],
        ["step 1", 280, 9 / 14, 1.8, 120, 120, 0.7],
        ["step 2", 100 / (1 - 9 / 14 + 0.3), 9 / 14 - 0.3, 48 / 92, 280 - 1400 / 9.2, 400 - 1400 / 9.2, 7 / 18.4],
      ],
      working:
        "100 g dry. 400 × 0.7 = 280 g with 180 g water: 9/14. 9/14 − 0.3 = 4.8/14; 100/(9.2/14) = 1400/9.2 = 152.1739130 g, 52.1739130 g of it water; 280 − 152.1739130 = 127.8260870; 1400/9.2/400 = 7/18.4",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "input",
      given: [400, 0.75, [[0.2], [0.5]], "water", null, false],
      expected: [
        ["start", 400, 0.75, 3, 0, 0, 1],
        ["step 1", 340, 12 / 17, 2.4, 60, 60, 0.85],
        ["step 2", 220, 6 / 11, 1.2, 120, 180, 0.55],
      ],
      working: "one kind for all: 300 g water, 60 g off leaves 240 in 340; half of 240 g off leaves 120 in 220",
      ...exactly,
    },
    {
      status: "common practice",
      exercises: "calculation",
      given: [135, 0.76, [[0.6], [0.45], [0.3], [0.05]], null, null, false],
      expected: [
        ["start", 135, 0.76, 0.76 / 0.24, 0, 0, 1],
        ["step 1", 81, 0.6, 1.5, 54, 54, 0.6],
        ["step 2", 32.4 / 0.55, 0.45, 0.45 / 0.55, 81 - 32.4 / 0.55, 135 - 32.4 / 0.55, 0.24 / 0.55],
        ["step 3", 32.4 / 0.7, 0.3, 0.3 / 0.7, 32.4 / 0.55 - 32.4 / 0.7, 135 - 32.4 / 0.7, 0.24 / 0.7],
        ["step 4", 32.4 / 0.95, 0.05, 1 / 19, 32.4 / 0.7 - 32.4 / 0.95, 135 - 32.4 / 0.95, 0.24 / 0.95],
      ],
      fact: "a charge of buds, 120 to 150 g, goes to 55 to 60, 45, 30 to 35 and 5 % moisture: 135 × 0.24 = 32.4 g dry, over 0.4, 0.55, 0.7 and 0.95",
      ...exactly,
    },
    {
      status: "exact",
      given: [650, 0.78, [[0.45], [0.32], [0.45]]],
      expected: {
        error: "#VALUE!",
        message: "targets must not rise; step 3 goes from 0.32 to 0.45, begin a new table for leaf that was wetted",
      },
      working: "0.45 > 0.32",
      ...exactly,
    },
    {
      status: "exact",
      given: [400, 0.75, [[0.25], [0.3]], [["moisture"], ["weight"]]],
      expected: {
        error: "#VALUE!",
        message: "targets must be at most 0.25, the moisture of the leaf, as a loss of weight; got 0.3 in step 2",
      },
      working: "at 25 % moisture no more than 25 % of the weight is water",
      ...exactly,
    },
    {
      status: "exact",
      given: [400, 0.75, [[0.6], [45]]],
      expected: {
        error: "#VALUE!",
        message: "targets must be from 0 to 1 (45% or 0.45); got 45 in place 2 of the list",
      },
      working: "45 is 4500 %",
      ...exactly,
    },
    {
      status: "exact",
      given: [400, 0.75, [[0.6], [0.5], [0.4]], [["moisture"], ["water"]]],
      expected: { error: "#VALUE!", message: "targetKinds must have as many rows as targets; got 2 and 3" },
      working: "three targets, two kinds: the third is unknown",
      ...exactly,
    },
    {
      status: "exact",
      given: [400, 0.75, [[0.6], [0.3]], [["含水率"], ["水分"]]],
      expected: {
        error: "#VALUE!",
        message:
          'targetKinds must be one of "moisture", "water", "weight", "points"; got the text "水分" (it may mean moisture or water: write 含水率 or 水) in place 2 of the list',
      },
      working:
        "read as a moisture 100/0.7 = 142.9 g remain, read as a loss of the water 250 − 0.3 × 150 = 205 g: not to be guessed",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

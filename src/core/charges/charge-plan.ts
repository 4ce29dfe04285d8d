import { carbonMonoxide, hotPan } from "../cautions";
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
import { Phrase } from "../phrases";
import { count, looseWeight, moisture, weight, weight as weightQuantity } from "../quantities";
import { irriMoisture, teaWaterLoss } from "../sources";
import type { Leaf } from "../targets/drying-path";
import { dryingPath, type TargetKind, target, targetKind } from "../targets/drying-path";
import { percent, step, sumOf, workingNumber } from "../working";
import { maxLoad, panAndScale, panLoad, readability } from "./charge-parameters";
import { chargeSplit } from "./charge-split";
import { weightOfSteps, wholeSteps } from "./whole-steps";

/**
 * The pan charges of a lot, and what the scale reads for each after every target. Only the loads are rounded, to steps
 * of the scale; the readings are not, so each charge keeps its dry matter. Last the total, as if fired as one.
 */
export const chargePlan = defineFunction({
  id: "CHARGEPLAN",
  group: "charges",
  parameters: [
    measured("weight", weight),
    measured("moisture", moisture),
    panLoad,
    settingList("targets", target),
    optionalList("targetKinds", targetKind, { oneForAll: true, fallback: "moisture" }),
    maxLoad,
    readability,
    headers,
  ],
  result: {
    shape: "table",
    columns: [
      { name: "charge", quantity: count },
      { name: "load", quantity: weight },
      { name: "reading after target", quantity: weight, repeats: true },
    ],
    picture: explained({ shows: "charges", name: "charge", load: "load" }),
  },
  calculate: (weight, moisture, panLoad, targets, targetKinds, maxLoad, readability): Answer[][] => {
    const loads = chargeSplit.calculate(weight, panLoad, maxLoad, readability);
    const total = readability === undefined ? weight : weightOfSteps(wholeSteps(weight, readability), readability);
    const row = (name: number | Phrase, load: number): Answer[] => [
      name,
      load,
      ...dryingPath({ weight: load, moisture }, targets, targetKinds).map((leaf) => leaf.weight),
    ];
    return [...loads.map((load, charge) => row(charge + 1, load)), row(new Phrase("total"), total)];
  },
});

const headings = ["charge", "load", "reading after target 1", "reading after target 2"];

export const chargePlanPage = {
  summary: "Every pan charge with its load and what the scale reads after each target.",
  parameters: {
    weight: "weight of the leaf to be fired",
    moisture: "moisture of that leaf, wet basis",
    panLoad: panAndScale.panLoad,
    targets: "one target for each step, a row or a column",
    targetKinds:
      'what the targets are, one word for all or a list: "moisture" to reach, or a loss on the step before of "water", of "weight", or in "points"; "moisture" when left out',
    maxLoad: panAndScale.maxLoad,
    readability: panAndScale.readability,
  },
  formula: "loads as in CHARGESPLIT; each step W′ = W × (1 − M) / (1 − M′), as in DRYINGSTEPS",
  working: (
    W: number,
    M: number,
    L: number,
    targets: readonly number[],
    kinds: readonly TargetKind[],
    most?: number,
    d?: number,
  ) => {
    const rows = chargePlan.calculate(W, M, L, targets, kinds, most, d);
    const [, load] = rows[0] as [number, number];
    const leaves = dryingPath({ weight: load, moisture: M }, targets, kinds);
    const last = leaves[leaves.length - 1] as Leaf;
    const D = load * (1 - M);
    return [
      step("dry matter in the first charge", "load × (1 − M)", { load, M: percent(M) }, D, looseWeight),
      step(
        "its reading after the last target",
        "D / (1 − M′)",
        { D, "M′": percent(last.moisture) },
        last.weight,
        weightQuantity,
      ),
      step(
        "every charge in the same way",
        "load 1 + load 2 + … = total",
        sumOf(rows.slice(0, -1).map((row) => workingNumber(row[1] as number))),
        rows,
      ),
    ];
  },
  guide: [
    "The card for the pan: weigh out the load, fire until the scale shows the first reading, and so on along the row. One formula replaces CHARGESPLIT and a DRYINGSTEPS for each charge.",
    "Loads are weights that your scale can show, and they add up to the weight exactly. Readings are not rounded: let the cells show as many decimals as your scale has. Each reading then still holds all the dry matter of its load, and a rounding never builds up from step to step.",
    "The last row is the total, the reading if all the leaf lay on the scale together. It holds as long as only water leaves; when leaf is sifted or spilled between two firings, begin a new plan from the new weight.",
    "The answer spills, a row for each charge and one for the total, and a spill cannot stand inside a worksheet table. There ask for one cell of it: =INDEX(TEA.CHARGEPLAN(A2, B2, 320, D2:D4, E2:E4, , 1, FALSE), 1, 3) is the first charge after the first target.",
    "Refused: what CHARGESPLIT refuses of the weight and the loads, and what DRYINGSTEPS refuses of the targets, such as a moisture that rises.",
  ],
  sources: [],
  cautions: [hotPan, carbonMonoxide],
  examples: [
    {
      given: [600, 0.75, 320, [[0.2], [0.6]], [["water"], ["moisture"]], null, 1],
      gives: [headings, [1, 300, 255, 187.5], [2, 300, 255, 187.5], ["total", 600, 510, 375]],
      shows: "600 g in two pans: a fifth of the water off, then down to 60 %",
    },
    {
      given: [601, 0.75, 320, 0.6, null, null, 1, false],
      gives: [
        [1, 301, 188.125],
        [2, 300, 187.5],
        ["total", 601, 375.625],
      ],
      shows: "one target and no headings; the first charge is a step heavier",
    },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [1000, 0.25, 350, 0.14, null, null, 1, false],
      expected: [
        [1, 334, 291.248],
        [2, 333, 290.376],
        [3, 333, 290.376],
        ["total", 1000, 872],
      ],
      source: {
        work: irriMoisture,
        place:
          "worked example, 1000 kg from 25 % to 14 % are 872 kg, the total; the charges are whole steps of a third, with their share of the 872",
      },
      tolerance: { absolute: 0.5 },
      because: "published to the whole kilogram",
    },
    {
      status: "published",
      exercises: "calculation",
      degenerate: "one charge: nothing is split",
      given: [100, 0.78, 100, 0.6, null, null, null, false],
      expected: [
        [1, 100, 55],
        ["total", 100, 55],
      ],
      source: {
        work: teaWaterLoss,
        place: "45 of 100 kg leave, from 78 to 60 %, taken for one charge; of charges the work says nothing",
      },
      tolerance: { absolute: 1e-9 },
      because: "published exactly",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [
        1300,
        0.78,
        640,
        [[0.3], [0.45], [0.32], [0.05]],
        [["water"], ["moisture"], ["moisture"], ["moisture"]],
        null,
        1,
        false,
      ],
      expected: [
        [1, 650, 497.9, 260, 143 / 0.68, 143 / 0.95],
        [2, 650, 497.9, 260, 143 / 0.68, 143 / 0.95],
        ["total", 1300, 995.8, 520, 286 / 0.68, 286 / 0.95],
      ],
      working:
        "two charges of 650: 650 × 0.22 = 143 dry, 507 water; 650 − 0.3 × 507 = 497.9; 143 / 0.55 = 260; 143 / 0.68 = 210.2941176471; 143 / 0.95 = 150.5263157895; the total is twice that",
      ...exactly,
    },
    {
      status: "common practice",
      exercises: "calculation",
      given: [700, 0.76, 135, [[0.575], [0.45], [0.325], [0.05]], null, 150, 1, false],
      expected: [
        ...new Array(5)
          .fill([140, 33.6 / 0.425, 33.6 / 0.55, 33.6 / 0.675, 33.6 / 0.95])
          .map((row, charge) => [charge + 1, ...row]),
        ["total", 700, 168 / 0.425, 168 / 0.55, 168 / 0.675, 168 / 0.95],
      ],
      fact: "buds are fired in charges of 120 to 150 g, down to 55 to 60, 45, 30 to 35 and 5 % moisture; 700 g at about 135 g make five of 140, each with 140 × 0.24 = 33.6 g of dry matter",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [1000, 0.75, 340, [[0.5, 0.2]], null, null, 1],
      expected: [
        headings,
        [1, 334, 167, 104.375],
        [2, 333, 166.5, 104.0625],
        [3, 333, 166.5, 104.0625],
        ["total", 1000, 500, 312.5],
      ],
      working: "334, 333, 333; × 0.25 / 0.5 = half of each; × 0.25 / 0.8 = 0.3125 of each",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      idle: ["moisture"],
      given: [1000, 0.75, 340, 0.3, "weight", null, null, false],
      expected: [
        [1, 1000 / 3, 700 / 3],
        [2, 1000 / 3, 700 / 3],
        [3, 1000 / 3, 700 / 3],
        ["total", 1000, 700],
      ],
      working: "without readability three equal parts; 30 % of the weight off leaves 0.7 of it",
      ...exactly,
    },
    {
      status: "exact",
      given: [null, 0.75, 340, 0.5],
      expected: "",
      working: "not weighed yet: the answer waits",
      ...exactly,
    },
    {
      status: "exact",
      given: [1000, 0.75, 340, [[0.5], [0.6]]],
      expected: {
        error: "#VALUE!",
        message: "targets must not rise; step 2 goes from 0.5 to 0.6, begin a new table for leaf that was wetted",
      },
      working: "0.6 > 0.5",
      ...exactly,
    },
    {
      status: "exact",
      given: [1000.5, 0.75, 340, 0.5, null, null, 1],
      expected: {
        error: "#VALUE!",
        message: "weight must be a whole number of steps of 1; got 1000.5 (the nearest are 1000 and 1001)",
      },
      working: "1000.5 / 1 is no whole number",
      ...exactly,
    },
    {
      status: "exact",
      given: [1000, 0.75, null, 0.5],
      expected: { error: "#VALUE!", message: "panLoad must be a weight above 0; got a blank" },
      working: "the pan load is the maker's decision, and it is not there",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

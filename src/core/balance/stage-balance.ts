import {
  type Answer,
  defineFunction,
  exactly,
  explained,
  type FunctionPage,
  headers,
  measuredList,
  optionalList,
  settingList,
} from "../define";
import { must } from "../errors";
import { dryMatter } from "../moisture/dry-matter";
import { Phrase } from "../phrases";
import { looseWeight, moisture, share, text, weight, weightDifference } from "../quantities";
import { silageShrink, teaWaterLoss } from "../sources";
import { percent, step, workingNumber } from "../working";
import { type Stage, stagesOf } from "./stage";

/** Dry matter that grows by less than this share of the start is rounding. */
export const rounding = 1e-9;
/** A smaller share than this is what doubles leave of a difference that is none. */
export const speck = 1e-12;

export const beforeStart = new Phrase("no moisture: the balance starts at the first row with one");
export const carried = new Phrase("no moisture: the next row with one covers this stage");
export const afterEnd = new Phrase("no moisture: the balance ends at the last row with one");

/** A row whose moisture was measured, and all that left since the last such row. */
interface Closed {
  readonly dry: number;
  readonly waterOff: number;
  readonly dryRemoved: number;
  readonly unaccounted: number;
}

/**
 * Where the grams of a lot went, stage by stage: water, leaf taken out, and what no book explains.
 * Water off W₋₁M₋₁ − WM − rm, unaccounted D₋₁ − D − r(1−m), signed. Two sums hold: W₁ = Wₙ + Σ water off + Σ leaf removed
 * + Σ unaccounted, and D₁ = Dₙ + Σ dry matter removed + Σ unaccounted.
 */
export const stageBalance = defineFunction({
  id: "STAGEBALANCE",
  group: "balance",
  parameters: [
    settingList("stages", text),
    measuredList("weights", weight),
    { ...measuredList("moistures", moisture), gaps: true },
    optionalList("removed", looseWeight, { gaps: true }),
    optionalList("removedMoistures", moisture, { gaps: true }),
    headers,
  ],
  result: {
    shape: "table",
    columns: [
      { name: "stage", quantity: text },
      { name: "weight", quantity: weight },
      { name: "moisture", quantity: moisture },
      { name: "dry matter", quantity: looseWeight },
      { name: "water off", quantity: weightDifference },
      { name: "dry matter removed", quantity: looseWeight },
      { name: "unaccounted", quantity: weightDifference },
      { name: "kept", quantity: share },
      { name: "note", quantity: text },
      { name: "leaf removed", quantity: looseWeight },
    ],
    picture: explained({ shows: "stages", name: "stage", weight: "weight", moisture: "moisture" }),
  },
  calculate: (stages, weights, moistures, removed, removedMoistures): Answer | Answer[][] => {
    const book = stagesOf(stages, weights, moistures, removed, removedMoistures);
    const first = book.findIndex(({ moisture }) => moisture !== null);
    // Without any moisture there is nothing to balance yet.
    if (first === -1) return "";
    const end = book.findLastIndex(({ moisture }) => moisture !== null);
    const start = dryOf(book[first] as Stage);
    let last = book[first] as Stage;
    let since: Stage[] = [];
    const closed: Closed[] = [];
    const rows = book.map((stage, row): Answer[] => {
      const { name, weight, moisture } = stage;
      if (row <= first) refuseEarly(stage);
      if (moisture === null) {
        if (row > first) since.push(stage);
        // What was taken out of leaf of an unknown moisture is refused in the last rows as well.
        if (row > end) removedMoistureOf(stage);
        const isBetween = row > first && row < end;
        const note = isBetween ? carried : row < first ? beforeStart : afterEnd;
        return [name, weight, "", "", "", "", "", "", note, isBetween ? stage.removed : ""];
      }
      if (row === first) return [name, weight, moisture, start, "", "", "", 1, "", ""];
      const close = closing(last, since, stage);
      closed.push(close);
      last = stage;
      since = [];
      const { dry, waterOff, dryRemoved, unaccounted } = close;
      const note = growth(unaccounted, start);
      return [name, weight, moisture, dry, waterOff, dryRemoved, unaccounted, dry / start, note, stage.removed];
    });
    const total = (part: "waterOff" | "dryRemoved" | "unaccounted"): number =>
      withoutSpeck(
        closed.reduce((sum, close) => sum + close[part], 0),
        start,
      );
    const kept = dryOf(last) / start;
    const leafRemoved = book.slice(first + 1, end + 1).reduce((sum, { removed }) => sum + removed, 0);
    const [waterOff, dryRemoved, unaccounted] = [total("waterOff"), total("dryRemoved"), total("unaccounted")];
    return [...rows, [new Phrase("total"), "", "", "", waterOff, dryRemoved, unaccounted, kept, "", leafRemoved]];
  },
});

const dryOf = ({ weight, moisture }: Stage): number => dryMatter.calculate(weight, moisture as number);

/** What left between two measured rows, through rows without a moisture between them. */
function closing(before: Stage, between: readonly Stage[], stage: Stage): Closed {
  const dry = dryOf(stage);
  const taken = [...between, stage].map((row) => ({ weight: row.removed, moisture: removedMoistureOf(row) }));
  const dryRemoved = taken.reduce((sum, part) => sum + part.weight * (1 - part.moisture), 0);
  const waterRemoved = taken.reduce((sum, part) => sum + part.weight * part.moisture, 0);
  return {
    dry,
    waterOff: withoutSpeck(
      before.weight * (before.moisture as number) - stage.weight * (stage.moisture as number) - waterRemoved,
      before.weight,
    ),
    dryRemoved,
    unaccounted: withoutSpeck(dryOf(before) - dry - dryRemoved, dryOf(before)),
  };
}

const withoutSpeck = (difference: number, whole: number): number =>
  Math.abs(difference) <= speck * whole ? 0 : difference;

function removedMoistureOf(stage: Stage): number {
  if (stage.removed === 0) return 0;
  const known = stage.removedMoisture ?? stage.moisture;
  if (known !== null) return known;
  throw must(
    "removedMoistures",
    { be: "filled where leaf was removed and the moisture is blank" },
    { kind: "neither", stage: stage.name },
  );
}

function refuseEarly(stage: Stage): void {
  if (stage.removed === 0) return;
  throw must(
    "removed",
    { be: "blank or 0 up to the first moisture" },
    { kind: "value at", value: stage.removed, stage: stage.name },
  );
}

const growth = (unaccounted: number, start: number): Answer =>
  unaccounted < -rounding * start ? new Phrase({ kind: "grows", by: -unaccounted }) : "";

const headings = [
  "stage",
  "weight",
  "moisture",
  "dry matter",
  "water off",
  "dry matter removed",
  "unaccounted",
  "kept",
  "note",
  "leaf removed",
];

export const stageBalancePage = {
  summary: "Where the grams of a lot went: water, leaf taken out, and what no weighing explains.",
  parameters: {
    stages: "what each weighing is called, in the order of the work",
    weights: "weight on the scale when the stage closed",
    moistures: "moisture of the leaf at that weighing, wet basis; blank where none was measured",
    removed: "leaf weight taken out (sift-outs, samples) just before that weighing; blank or 0 in the first row",
    removedMoistures: "moisture of the leaf taken out; left out, it is the moisture of its row",
  },
  formula:
    "water off = W₁M₁ − W₂M₂ − r·m; removed = r(1 − m); unaccounted = D₁ − D₂ − r(1 − m); kept = D / D of the first row; first weight = last weight + water off + leaf removed + unaccounted; first dry matter = last dry matter + dry matter removed + unaccounted",
  working: (
    stages: readonly string[],
    weights: readonly number[],
    moistures: readonly (number | null)[],
    removed?: readonly (number | null)[],
    removedMoistures?: readonly (number | null)[],
  ) => {
    const rows = stageBalance.calculate(stages, weights, moistures, removed, removedMoistures);
    if (!Array.isArray(rows)) return [step("without a moisture there is nothing to balance yet", "—", "—", rows, text)];
    const book = stagesOf(stages, weights, moistures, removed, removedMoistures).filter(
      ({ moisture }) => moisture !== null,
    );
    const [first, last] = [book[0] as Stage, book[book.length - 1] as Stage];
    const [, , , , waterOff, dryRemoved, unaccounted] = rows[rows.length - 1] as [
      string,
      "",
      "",
      "",
      number,
      number,
      number,
    ];
    const [start, end] = [dryOf(first), dryOf(last)];
    return [
      step(
        "dry matter at the first moisture",
        "W₁ × (1 − M₁)",
        { "W₁": first.weight, "M₁": percent(first.moisture as number) },
        start,
        looseWeight,
      ),
      step(
        "dry matter at the last moisture",
        "Wₙ × (1 − Mₙ)",
        { Wₙ: last.weight, Mₙ: percent(last.moisture as number) },
        end,
        looseWeight,
      ),
      step(
        "dry matter that no book explains",
        "D₁ − Dₙ − removed",
        { "D₁": start, Dₙ: end, removed: dryRemoved },
        unaccounted,
        weightDifference,
      ),
      step(
        "stage by stage; together with the leaf taken out it adds up",
        "water off = ΣW₋₁M₋₁ − WM − rm; unaccounted = ΣD₋₁ − D − r(1 − m)",
        `${workingNumber(waterOff)}; ${workingNumber(unaccounted)}`,
        rows,
      ),
    ];
  },
  guide: [
    "Use it when a lot is finished, or half way, to close its book. Every gram of the first weight stands in one of four places: still on the scale, gone as water, taken out by hand, or unaccounted. The total row adds them up: the weight at the first moisture is the weight at the last one, with water off, leaf removed (as it was weighed, the last column) and unaccounted. The dry matter adds up as well: that of the first is that of the last, with dry matter removed and unaccounted.",
    "Unaccounted is what to read first. A small positive number is dust, leaf left in the pan, and the little that live leaf loses by breathing. A large one is leaf that was taken out and not written down, or a wrong reading.",
    "A negative number means more dry matter after a stage than before it. Leaf makes none while it dries, so a weight or a moisture of that row or of the row before it is off, and the note says by how much the dry matter grows. It is never hidden in another column. When moistures are known to about one point, a growth of some percent at the wet end is no more than that: BALANCEFIT weighs the readings by their errors.",
    "Kept is the share of the first dry matter that is still there. Its last value is the lot's own recovery.",
    "A blank moisture does not stop the table: the row shows its weight, and the next row with a moisture accounts for both stages. Leaf taken out in such a row needs its own moisture in removedMoistures. The balance starts at the first row that has a moisture and ends at the last one.",
    "The answer spills: a heading, a row for each stage and a total. Inside a worksheet table, where nothing can spill, ask for one cell: INDEX(TEA.STAGEBALANCE(A2:A5, B2:B5, C2:C5, , , FALSE), 5, 7) is the unaccounted weight of a lot of four weighings.",
  ],
  sources: [],
  cautions: [],
  examples: [
    {
      given: [
        [["fresh"], ["withered"], ["finished"]],
        [[600], [375], [150]],
        [[0.75], [0.6], [0.05]],
        [[null], [0], [6]],
      ],
      gives: [
        headings,
        ["fresh", 600, 0.75, 150, "", "", "", 1, "", ""],
        ["withered", 375, 0.6, 150, 225, 0, 0, 1, "", 0],
        ["finished", 150, 0.05, 142.5, 217.2, 5.7, 1.8, 0.95, "", 6],
        ["total", "", "", "", 442.2, 5.7, 1.8, 0.95, "", 6],
      ],
      shows: "600 g of an invented lot: 442.2 g of water off, 6 g taken out, 1.8 g unaccounted, 150 g of tea",
    },
    {
      given: [[["fresh", "withered", "finished"]], [[600, 375, 150]], [[0.75, null, 0.05]], null, null, false],
      gives: [
        ["fresh", 600, 0.75, 150, "", "", "", 1, "", ""],
        ["withered", 375, "", "", "", "", "", "", "no moisture: the next row with one covers this stage", 0],
        ["finished", 150, 0.05, 142.5, 442.5, 0, 7.5, 0.95, "", 0],
        ["total", "", "", "", 442.5, 0, 7.5, 0.95, "", 0],
      ],
      shows: "no moisture for the withered leaf: the last row accounts for both stages",
    },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [[["packed"], ["fed"]], [[100], [94.75]], [[0.65], [65 / 94.75]], null, null, false],
      expected: [
        ["packed", 100, 0.65, 35, "", "", "", 1, "", ""],
        ["fed", 94.75, 65 / 94.75, 29.75, 0, 0, 5.25, 0.85, "", 0],
        ["total", "", "", "", 0, 0, 5.25, 0.85, "", 0],
      ],
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
      given: [[["fresh"], ["fired"]], [[100], [55]], [[0.78], [0.6]], null, null, false],
      expected: [
        ["fresh", 100, 0.78, 22, "", "", "", 1, "", ""],
        ["fired", 55, 0.6, 22, 45, 0, 0, 1, "", 0],
        ["total", "", "", "", 45, 0, 0, 1, "", 0],
      ],
      source: {
        work: teaWaterLoss,
        place: "the whole statement: 45 of 100 kg leave, from 78 to 60 %, and nothing else does",
      },
      tolerance: { absolute: 1e-9 },
      because: "published exactly",
    },
    {
      status: "exact",
      given: [
        [["fresh"], ["fired"]],
        [[500], [300]],
        [[null], [null]],
      ],
      expected: "",
      working: "without a moisture no dry matter is known, and there is nothing to balance",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [
        [["fresh"], ["withered"], ["fired"], ["finished"]],
        [[900], [755], [480], [204]],
        [[0.765], [0.725], [0.575], [0.045]],
        [[0], [25], [0], [3]],
      ],
      expected: [
        headings,
        ["fresh", 900, 0.765, 211.5, "", "", "", 1, "", ""],
        ["withered", 755, 0.725, 207.625, 123, 6.875, -3, 207.625 / 211.5, "dry matter grows by 3", 25],
        ["fired", 480, 0.575, 204, 271.375, 0, 3.625, 204 / 211.5, "", 0],
        ["finished", 204, 0.045, 194.82, 266.685, 2.865, 6.315, 194.82 / 211.5, "", 3],
        ["total", "", "", "", 661.06, 9.74, 6.94, 194.82 / 211.5, "", 28],
      ],
      working:
        "dry: 900 × 0.235 = 211.5, 755 × 0.275 = 207.625, 480 × 0.425 = 204, 204 × 0.955 = 194.82; water: 688.5, 547.375, 276, 9.18; off: 688.5 − 547.375 − 25 × 0.725 = 123, 547.375 − 276 = 271.375, 276 − 9.18 − 3 × 0.045 = 266.685; removed dry: 25 × 0.275 = 6.875, 3 × 0.955 = 2.865; unaccounted: 211.5 − 207.625 − 6.875 = −3, 3.625, 204 − 194.82 − 2.865 = 6.315; 204 + 661.06 + 28 + 6.94 = 900",
      tolerance: { relative: 1e-9 },
      because: "exact arithmetic; differences of weights lose digits of doubles",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [
        [["fresh"], ["fired"], ["finished"]],
        [[400], [200], [96]],
        [[0.75], [null], [0]],
        [[0], [20], [0]],
        [[null], [0.5], [null]],
        false,
      ],
      expected: [
        ["fresh", 400, 0.75, 100, "", "", "", 1, "", ""],
        ["fired", 200, "", "", "", "", "", "", "no moisture: the next row with one covers this stage", 20],
        ["finished", 96, 0, 96, 290, 10, -6, 0.96, "dry matter grows by 6", 0],
        ["total", "", "", "", 290, 10, -6, 0.96, "", 20],
      ],
      working:
        "dry 100 and 96, water 300 and 0; the 20 g taken out at 50 % are 10 water and 10 dry: water off 300 − 0 − 10 = 290, unaccounted 100 − 96 − 10 = −6; 96 + 290 + 20 − 6 = 400",
      tolerance: { relative: 1e-12 },
      because: "exact arithmetic; rounding of doubles only",
    },
    {
      status: "exact",
      given: [
        [["fresh"], ["finished"]],
        [[600], [150]],
        [[0.75], [0.05]],
        [[20], [0]],
      ],
      expected: {
        error: "#VALUE!",
        message: "removed must be blank or 0 in the first row, before which nothing was weighed; got 20",
      },
      working: "what was taken out before the first weighing is no part of it",
      ...exactly,
    },
    {
      status: "exact",
      given: [
        [["fresh"], ["fired"], ["finished"]],
        [[400], [200], [96]],
        [[0.75], [null], [0]],
        [[0], [20], [0]],
      ],
      expected: {
        error: "#VALUE!",
        message:
          'removedMoistures must be filled where leaf was removed and the moisture is blank; "fired" has neither',
      },
      working: "20 g of leaf of an unknown moisture hold an unknown dry matter",
      ...exactly,
    },
    {
      status: "exact",
      given: [
        [["fresh"], ["fired"], ["finished"]],
        [[900], [480], [204]],
        [[0.765], [0.575], [null]],
        [[0], [0], [10]],
      ],
      expected: {
        error: "#VALUE!",
        message:
          'removedMoistures must be filled where leaf was removed and the moisture is blank; "finished" has neither',
      },
      working: "no later row can account for the 10 g, in the last row as little as in the middle",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

import { paidWeight } from "../cautions";
import {
  type Answer,
  bookList,
  type Column,
  defineFunction,
  exactly,
  explained,
  type FunctionPage,
  headers,
} from "../define";
import { Phrase } from "../phrases";
import { area, looseWeight, ratio, share, tally, text, weight, weightForArea } from "../quantities";
import { berkeleyAdmissions } from "../sources";
import { step } from "../working";
import { type GroupAreas, groupAreas } from "./group-areas";
import { type SeasonBook, seasonBook, type Totals } from "./season-book";

const columns: readonly Column[] = [
  { name: "group", quantity: text },
  { name: "lots", quantity: tally },
  { name: "open", quantity: tally },
  { name: "left out", quantity: tally },
  { name: "fresh", quantity: looseWeight },
  { name: "finished", quantity: looseWeight },
  { name: "outturn", quantity: share },
  { name: "leaf ratio", quantity: ratio },
  { name: "area", quantity: area },
  { name: "finished per area", quantity: weightForArea },
  { name: "share of finished", quantity: share },
];

/**
 * A season by plots, flushes, pickers or whatever the groups are: Σ finished / Σ fresh for each and for all, never the
 * mean of the lots' outturns. Sums are compensated, so that the order of the rows does not matter.
 */
export const seasonTable = defineFunction({
  id: "SEASONTABLE",
  group: "season",
  parameters: [
    bookList("lots", "groups", text, { blank: "waits" }),
    bookList("lots", "freshWeights", weight, { blank: "waits" }),
    bookList("lots", "finishedWeights", weight, { blank: "waits" }),
    bookList("land", "areaNames", text, { optional: true }),
    bookList("land", "areas", area, { optional: true }),
    headers,
  ],
  result: {
    shape: "table",
    columns,
    lastRow: explained({ is: "total" }),
    picture: explained({
      shows: "lots",
      groups: "groups",
      fresh: "freshWeights",
      finished: "finishedWeights",
      chart: "outturn",
    }),
  },
  calculate: (groups, freshWeights, finishedWeights, areaNames, areas): Answer | Answer[][] => {
    const book = seasonBook(groups, freshWeights, finishedWeights);
    const land = groupAreas(areaNames, areas);
    // A heading alone: the season has not begun.
    if (book.groups.length === 0 && book.total.leftOut === 0) return "";
    return [...rowsOf(book, land), ...noteOf(book)];
  },
});

function rowsOf({ groups, total }: SeasonBook, land: GroupAreas): Answer[][] {
  const areas = groups.map(({ name }) => land.of(name));
  const all = total.finished.total;
  return [
    ...groups.map((group, index) => rowOf(group.name, group, areas[index], all)),
    rowOf(new Phrase("total"), total, land.shared ? areas[0] : sumOf(areas), all),
  ];
}

function rowOf(name: string | number | Phrase, totals: Totals, area: Answer | undefined, all: number): Answer[] {
  const fresh = totals.fresh.total;
  const finished = totals.finished.total;
  const hasLots = totals.lots > 0;
  return [
    name,
    totals.lots,
    totals.open,
    totals.leftOut,
    fresh,
    finished,
    hasLots ? finished / fresh : "",
    hasLots ? fresh / finished : "",
    area ?? "",
    typeof area === "number" ? finished / area : (area ?? ""),
    all > 0 ? finished / all : "",
  ];
}

/** The land of all groups, or the first reason why it is not known. */
function sumOf(areas: readonly (Answer | undefined)[]): Answer | undefined {
  let sum = 0;
  for (const area of areas) {
    if (typeof area !== "number") return area;
    sum += area;
  }
  return areas.length === 0 ? undefined : sum;
}

function noteOf({ total, firstLeftOut }: SeasonBook): Answer[][] {
  if (firstLeftOut === undefined) return [];
  const note = new Phrase({ kind: "left out", rows: total.leftOut, first: firstLeftOut.refusal });
  return [[note, ...new Array<string>(columns.length - 1).fill("")]];
}

/** The sums of the lots, never the mean of their outturns. */
function outturnOf<const Says extends string>(says: Says, { fresh, finished }: Totals) {
  const [F, P] = [fresh.total, finished.total];
  return step(says, "Σfinished / Σfresh", { Σfinished: P, Σfresh: F }, P / F, share);
}

const headings = /* @__PURE__ */ columns.map(({ name }) => name);

const noSlope = { error: "#N/A", message: 'areas must hold an area of "slope"; got none' };

export const seasonTablePage = {
  summary: "A season by plots, flushes or any groups: lots, weights, outturn, tea per area, shares.",
  parameters: {
    groups: "what each lot belongs to: a plot, a flush, a picker; whole columns may be given, with their heading",
    freshWeights: "fresh weight of each lot",
    finishedWeights: "finished weight of each lot; blank while the lot is not finished",
    areaNames: "the groups again, each once, in a list of its own beside the areas",
    areas: "the area of each of areaNames; or one number, without areaNames, for land that all groups share",
  },
  formula:
    "outturn = Σ finished / Σ fresh; leaf ratio = Σ fresh / Σ finished; finished per area = Σ finished / area; each over the finished lots of the group",
  working: (...given: Parameters<typeof seasonTable.calculate>) => {
    const [groups, fresh, finished] = given;
    const rows = seasonTable.calculate(...given);
    if (!Array.isArray(rows)) return [step("the season has not begun", "—", "—", rows, text)];
    const book = seasonBook(groups, fresh, finished);
    const first = book.groups[0];
    return [
      ...(first !== undefined && first.lots > 0 ? [outturnOf("the outturn of the first group", first)] : []),
      ...(book.total.lots > 0 ? [outturnOf("the outturn of the season", book.total)] : []),
      step("each group, and all of them", "P / F, F / P, P / area, P / all", "row by row", rows),
    ];
  },
  guide: [
    "Use it at the end of a week or a season, over the book of lots, to see what each plot gave. Give it the whole columns, heading and all, and it keeps up as lots are written below: =TEA.SEASONTABLE(A:A,B:B,C:C). Put it on another sheet or beside those columns, never in them.",
    "Read a row so: lots are the finished ones, and fresh and finished are their weights alone. Open lots have a fresh weight and no finished weight yet; they are counted and stay out of every other number until they are finished. Left out are rows that cannot be right: text among the weights, a finished weight without a fresh one or above it, a weight below 0, an error, a lot without a group. The line under the total names the first of them, with its row counted from the first row you gave. Mend it and the next one shows. Rows without any weight are passed over, so groups may be filled in ahead.",
    "The outturn of a group is the sum of its tea over the sum of its leaf, so that a large lot counts for more than a small one. The mean of the lots' outturns is another number and says nothing about the season's leaf.",
    "Groups that differ only in capital letters or in spaces around them are one group, as in SUMIFS, under the spelling that comes first.",
    "For tea per area give the areas in a small table of their own: areaNames beside areas. A group that is missing there, or spelled another way, shows #N/A where its area is needed, and so does the total; where it is named and its area is still blank, these cells wait. Where the groups are flushes or pickers on the same land, give one number as areas and no areaNames: it is the area of each, and of the total. Tea per area is in your own units, such as kilograms for each hectare when the weights are in kilograms.",
    "A group of open lots alone has no outturn yet, and its cells stay empty. Lots are all there once the number of open ones is 0.",
    "Inside a worksheet table, where nothing can spill, ask for one cell: =INDEX(TEA.SEASONTABLE(A:A,B:B,C:C),2,7) is the outturn of the first group, since row 1 holds the headings.",
    "Refused: lists of different lengths, a group named twice in areaNames, and several areas without names.",
  ],
  sources: [],
  cautions: [paidWeight],
  examples: [
    {
      given: [
        [["plot"], ["upper terrace"], ["stream"], ["upper terrace"], ["stream"]],
        [["fresh g"], [1500], [1250], [900], [1100]],
        [["finished g"], [315], [275], [195], [null]],
        [["upper terrace"], ["stream"]],
        [[0.3], [0.2]],
      ],
      gives: [
        headings,
        ["upper terrace", 2, 0, 0, 2400, 510, 0.2125, 2400 / 510, 0.3, 1700, 510 / 785],
        ["stream", 1, 1, 0, 1250, 275, 0.22, 1250 / 275, 0.2, 1375, 275 / 785],
        ["total", 3, 1, 0, 3650, 785, 785 / 3650, 3650 / 785, 0.5, 1570, 1],
      ],
      shows: "two plots of an invented farm, with the headings of the book, one lot still open, and areas in acres",
    },
    {
      given: [[["first flush"], ["second flush"]], [[1500], [800]], [[315], [176]], null, 0.5, false],
      gives: [
        ["first flush", 1, 0, 0, 1500, 315, 0.21, 1500 / 315, 0.5, 630, 315 / 491],
        ["second flush", 1, 0, 0, 800, 176, 0.22, 800 / 176, 0.5, 352, 176 / 491],
        ["total", 2, 0, 0, 2300, 491, 491 / 2300, 2300 / 491, 0.5, 982, 1],
      ],
      shows: "two flushes of the same half acre: one area for all, and for the total",
    },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [
        ["Male", "Female"].flatMap((gender) => new Array(6).fill([gender])),
        [[825], [560], [325], [417], [191], [373], [108], [25], [593], [375], [393], [341]],
        [[512], [353], [120], [138], [53], [22], [89], [17], [202], [131], [94], [24]],
        null,
        null,
        false,
      ],
      expected: [
        ["Male", 6, 0, 0, 2691, 1198, 0.445, 2691 / 1198, "", "", 1198 / 1755],
        ["Female", 6, 0, 0, 1835, 557, 0.304, 1835 / 557, "", "", 557 / 1755],
        ["total", 12, 0, 0, 4526, 1755, 1755 / 4526, 4526 / 1755, "", "", 1],
      ],
      source: {
        work: berkeleyAdmissions,
        place:
          "2691 male applicants, 1198 (44.5 %) admitted; 1835 female ones, 557 (30.4 %); six departments each, whose mean shares are 38.1 and 41.7 %. The other columns by hand",
      },
      tolerance: { absolute: 0.0005 },
      because: "shares are published to a tenth of a percent",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [
        [["North"], ["terrace"], [" north "], ["terrace"], ["NORTH"], ["slope"]],
        [[1000], [800], [600], [700], [500], [400]],
        [[210], [180], [120], [null], ["lost"], [90]],
        [["terrace"], ["north"]],
        [[0.25], [0.5]],
      ],
      expected: [
        headings,
        ["North", 2, 0, 1, 1600, 330, 0.20625, 1600 / 330, 0.5, 660, 0.55],
        ["terrace", 1, 1, 0, 800, 180, 0.225, 800 / 180, 0.25, 720, 0.3],
        ["slope", 1, 0, 0, 400, 90, 0.225, 400 / 90, noSlope, noSlope, 0.15],
        ["total", 4, 1, 1, 2800, 600, 600 / 2800, 2800 / 600, noSlope, noSlope, 1],
        [
          'rows left out: 1, the first because finishedWeights must be a weight above 0; got the text "lost" in place 5 of the list',
          .../* @__PURE__ */ new Array<string>(10).fill(""),
        ],
      ],
      working:
        "north 1000 + 600 = 1600 and 210 + 120 = 330, 330 / 1600 = 0.20625, 330 / 0.5 = 660; terrace 180 / 800 = 0.225, 180 / 0.25 = 720; slope 90 / 400 = 0.225; total 330 + 180 + 90 = 600 of 1600 + 800 + 400 = 2800; shares 330, 180 and 90 of 600",
      ...exactly,
    },
    {
      status: "exact",
      given: [
        [["north"], ["north"]],
        [[1000], [600]],
        [[210], [120]],
        [["north"], ["slope"], ["North "]],
        [[0.5], [0.2], [0.4]],
      ],
      expected: {
        error: "#VALUE!",
        message: 'areaNames must name each group once; "North" stands in rows 1 and 3',
      },
      working: "the two spellings are one group, which would have two areas",
      ...exactly,
    },
    {
      status: "exact",
      given: [
        [["plot"], [null]],
        [["fresh g"], [null]],
        [["finished g"], [null]],
      ],
      expected: "",
      working: "headings alone: the season has not begun",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

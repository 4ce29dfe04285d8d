import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bind } from "../../src/cells/bind";
import { CellError, type CellValue } from "../../src/cells/values";
import { CompensatedSum } from "../../src/core/numeric/compensated-sum";
import { finishedForecast } from "../../src/core/season/finished-forecast";
import { lotFlag } from "../../src/core/season/lot-flag";
import { lotFlags } from "../../src/core/season/lot-flags";
import { originRegression } from "../../src/core/season/origin-regression";
import { seasonTable } from "../../src/core/season/season-table";
import { seededNumbers } from "../../src/sample-books/season/seeded-numbers";
import { shownIn } from "../cells/call";
import { expectEqual } from "./compare";

const season = bind(seasonTable);
const forecast = bind(finishedForecast);
const flag = bind(lotFlag);
const flags = bind(lotFlags);

type Cell = CellValue | null;
const column = (cells: readonly Cell[]): Cell[][] => cells.map((cell) => [cell]);

/** A season table without headings, of lots as rows of group, fresh weight and finished weight. */
const seasonOf = (lots: readonly (readonly [Cell, Cell, Cell])[], areaNames: unknown = null, areas: unknown = null) =>
  shownIn(
    season(
      column(lots.map(([group]) => group)),
      column(lots.map(([, fresh]) => fresh)),
      column(lots.map(([, , finished]) => finished)),
      areaNames,
      areas,
      false,
    ),
  );

/** The counts of a season table's first row: lots, open, left out. */
const counts = (row: readonly unknown[] | undefined) => row?.slice(1, 4);
const noteOf = (table: readonly (readonly unknown[])[]) => String(table.at(-1)?.[0]);

const madeUp = { fresh: [1200, 840, 1000, 600, 1500], finished: [258, 178.5, 216, 126, 318] };
const past = [column(madeUp.fresh), column(madeUp.finished)] as const;

const lotOf = fc.record({
  plot: fc.constantFrom("upper terrace", "stream", "Slope"),
  fresh: fc.double({ min: 50, max: 50_000, noNaN: true }),
  outturn: fc.double({ min: 0.15, max: 0.3, noNaN: true }),
});
const seasons = fc.array(lotOf, { minLength: 5, maxLength: 60 });
const rowsFor = (lots: readonly { plot: string; fresh: number; outturn: number }[], scale = 1) =>
  lots.map(({ plot, fresh, outturn }) => [plot, fresh * scale, fresh * outturn * scale] as const);

describe("a season table", () => {
  test("of one lot has a row for its group and the total", () => {
    expect(seasonOf([["stream", 1250, 275]])).toEqual([
      ["stream", 1, 0, 0, 1250, 275, 0.22, 1250 / 275, "", "", 1],
      ["total", 1, 0, 0, 1250, 275, 0.22, 1250 / 275, "", "", 1],
    ]);
  });

  test("counts open lots and leaves them out of weights and ratios", () => {
    const table = seasonOf([
      ["stream", 1250, 275],
      ["stream", 900, null],
      ["slope", 700, ""],
    ]);
    expect(counts(table[0])).toEqual([1, 1, 0]);
    expect(table[0]?.slice(4, 7)).toEqual([1250, 275, 0.22]);
    expect(table[1]).toEqual(["slope", 0, 1, 0, 0, 0, "", "", "", "", 0]);
    expect(counts(table[2])).toEqual([1, 2, 0]);
  });

  test("takes whole columns with a heading and blanks below", () => {
    const whole = (cells: Cell[]) => column([...cells, ...new Array<null>(500).fill(null)]);
    const table = shownIn(
      season(whole(["plot", "slope"]), whole(["fresh g", 500]), whole(["tea g", 100]), null, null, false),
    );
    expect(table.map((row) => row.slice(0, 6))).toEqual([
      ["slope", 1, 0, 0, 500, 100],
      ["total", 1, 0, 0, 500, 100],
    ]);
  });

  test("takes for a heading only what is text in both lists of weights, and no digits stored as text", () => {
    expect(
      noteOf(
        seasonOf([
          ["plot", "fresh", 100],
          ["slope", 500, 100],
        ]),
      ),
    ).toBe(
      'rows left out: 1, the first because freshWeights must be a weight above 0; got the text "fresh" in place 1 of the list',
    );
    expect(
      noteOf(
        seasonOf([
          ["slope", "500", "100"],
          ["slope", 500, 100],
        ]),
      ),
    ).toContain(
      'got the text "500" (it looks like a number but is stored as text: type it again as a number) in place 1 of the list',
    );
  });

  test("waits while there is no lot, also under a heading", () => {
    expect(season(null, null, null)).toEqual([[""]]);
    expect(season([["plot"], [null]], [["fresh"], [null]], [["tea"], [null]])).toEqual([[""]]);
    expect(seasonOf([["slope", null, null]])).toEqual([[""]]);
  });

  test.each([
    ["text among the weights", ["slope", 500, "lost"], 'finishedWeights must be a weight above 0; got the text "lost"'],
    ["a weight below 0", ["slope", -500, 100], "freshWeights must be a weight above 0; got -500"],
    ["TRUE for a weight", ["slope", 500, true], "finishedWeights must be a weight above 0; got TRUE"],
    ["no fresh weight", ["slope", null, 100], "freshWeights must be a weight above 0; got a blank"],
    ["an error", ["slope", 500, new CellError("#DIV/0!")], "finishedWeights must be a weight above 0; got #DIV/0!"],
    ["no group", [" ", 500, 100], 'groups must be text or a number; got the text " "'],
    ["an error for a group", [new CellError("#N/A"), 500, 100], "groups must be text or a number; got #N/A"],
  ] as [string, [Cell, Cell, Cell], string][])("leaves out a row with %s and names it", (_, bad, message) => {
    const table = seasonOf([["stream", 1250, 275], bad, ["stream", 900, 190], bad]);
    expect(counts(table.at(-2))).toEqual([2, 0, 2]);
    expect(table.at(-2)?.slice(4, 6)).toEqual([2150, 465]);
    expect(noteOf(table)).toBe(`rows left out: 2, the first because ${message} in place 2 of the list`);
  });

  test("leaves out a lot with more tea than leaf", () => {
    expect(
      noteOf(
        seasonOf([
          ["slope", 500, 100],
          ["slope", 142, 700],
        ]),
      ),
    ).toBe(
      "rows left out: 1, the first because finishedWeights must be at most 142, the fresh weight; got 700 in place 2 of the list (are both in the same unit, and not swapped?)",
    );
  });

  test("shows a season of nothing but mistakes as such", () => {
    const table = seasonOf([[null, 500, 100]], null, 2);
    expect(table[0]).toEqual(["total", 0, 0, 1, 0, 0, "", "", "", "", ""]);
    expect(noteOf(table)).toContain("groups must be text or a number; got a blank in place 1 of the list");
  });

  test("tells groups apart as SUMIFS does, in the order and spelling that come first", () => {
    const table = seasonOf([
      ["  Stream", 500, 100],
      ["slope", 500, 110],
      ["STREAM ", 500, 120],
      [3, 500, 100],
      ["3", 500, 100],
    ]);
    expect(table.map(([name, lots]) => [name, lots])).toEqual([
      ["Stream", 2],
      ["slope", 1],
      [3, 2],
      ["total", 5],
    ]);
  });

  test("refuses lists that are not of one length", () => {
    expect(shownIn(season([["a"], ["b"]], [[500], [600]], [[100]]))).toEqual([
      ["#VALUE! finishedWeights must have as many rows as groups; got 1 and 2"],
    ]);
  });

  test("leaves out weights that no farm has, and says which", () => {
    const table = seasonOf([
      ["hill", 100, 20],
      ["hill", 1e300, 20],
      ["hill", 100, 1e-300],
    ]);
    expect(counts(table[0])).toEqual([1, 0, 2]);
    expect(noteOf(table)).toBe(
      "rows left out: 2, the first because freshWeights must be a weight above 0; got 1e+300 in place 2 of the list",
    );
  });

  test("leaves out a group whose name is a number that is none", () => {
    expect(
      noteOf(
        seasonOf([
          ["hill", 100, 20],
          [Number.NaN, 100, 20],
        ]),
      ),
    ).toBe("rows left out: 1, the first because groups must be text or a number; got NaN in place 2 of the list");
  });
});

describe("a lot", () => {
  test("may weigh as much when it is finished as it did fresh", () => {
    expect(counts(seasonOf([["stream", 100, 100]])[0])).toEqual([1, 0, 0]);
    expect(shownIn(forecast(10, column([100, 50, 20]), column([100, 50, 20])))).toEqual([[10, 10, 10]]);
  });

  test("is no heading for a space in its cells", () => {
    const table = shownIn(season(column(["plot", "stream"]), column([" ", 100]), column([" ", 20]), null, null, false));
    expect(counts(table.at(-2))).toEqual([1, 0, 1]);
  });
});

describe("the areas of a season table", () => {
  const lots = [
    ["stream", 1000, 200],
    ["slope", 500, 110],
  ] as const;
  const perArea = (table: readonly (readonly unknown[])[]) => table.map((row) => row.slice(8, 10));

  test("are found by name, whatever their order, heading or capitals", () => {
    const table = seasonOf(lots, column(["plot", "SLOPE", "unused", "stream "]), column(["ha", 0.5, 3, 2]));
    expect(perArea(table)).toEqual([
      [2, 100],
      [0.5, 220],
      [2.5, 124],
    ]);
  });

  test("may be one number for all, and for the total", () => {
    const shared = [
      [2, 100],
      [2, 55],
      [2, 155],
    ];
    expect(perArea(seasonOf(lots, null, 2))).toEqual(shared);
    expect(perArea(seasonOf(lots, null, [["ha"], [2]]))).toEqual(shared);
  });

  test("show #N/A where a group is not named, in its own cells and the total's alone", () => {
    const missing = '#N/A areas must hold an area of "slope"; got none';
    expect(perArea(seasonOf(lots, column(["stream"]), column([2])))).toEqual([
      [2, 100],
      [missing, missing],
      [missing, missing],
    ]);
  });

  test("wait where a group is named and its area still blank, in its own cells and the total's alone", () => {
    expect(perArea(seasonOf(lots, column(["stream", "slope"]), column([2, null])))).toEqual([
      [2, 100],
      ["", ""],
      ["", ""],
    ]);
  });

  test("that are none stand as errors in the cells that need them", () => {
    const broken = new CellError("#DIV/0!");
    expect(perArea(seasonOf(lots, column(["stream", "slope"]), column([broken, -2])))).toEqual([
      ["#DIV/0!", "#DIV/0!"],
      [
        "#VALUE! areas must be an area above 0; got -2 in place 2 of the list",
        "#VALUE! areas must be an area above 0; got -2 in place 2 of the list",
      ],
      ["#DIV/0!", "#DIV/0!"],
    ]);
  });

  test.each([
    [
      column(["slope", "stream", "Slope"]),
      column([1, 2, 3]),
      'areaNames must name each group once; "Slope" stands in rows 1 and 3',
    ],
    [column(["slope", null]), column([1, 2]), "areaNames must be filled in beside every area; row 2 is not"],
    [
      null,
      column([1, 2]),
      "areas must be one number for all groups, or have areaNames beside them; got 2 areas without names",
    ],
    [column(["slope"]), null, "areas must be given together with areaNames; got a blank"],
  ])("are refused with what is wrong: %#", (names, areas, message) => {
    expect(seasonOf(lots, names, areas)).toEqual([[`#VALUE! ${message}`]]);
  });

  test("are refused in a message of a bearable length, however long a name is", () => {
    const long = "leaf".repeat(8_000);
    expect(seasonOf(lots, column([long, long]), column([1, 2]))).toEqual([
      [`#VALUE! areaNames must name each group once; "${"leaf".repeat(10)}…" stands in rows 1 and 2`],
    ]);
  });

  test("may have rows between them that are blank", () => {
    expect(perArea(seasonOf(lots, column(["stream", null, "slope"]), column([2, null, 0.5])))[2]).toEqual([2.5, 124]);
  });

  test("count without their heading where they lack names", () => {
    expect(seasonOf(lots, null, column(["ha", 1, 2]))).toEqual([
      ["#VALUE! areas must be one number for all groups, or have areaNames beside them; got 2 areas without names"],
    ]);
  });

  test("are no heading where a text stands alone", () => {
    expect(perArea(seasonOf(lots, null, "ha"))[0]?.[0]).toContain('got the text "ha"');
  });

  test("are refused where a group is named twice and the first time without an area", () => {
    expect(seasonOf(lots, column(["slope", "slope"]), column([null, 2]))).toEqual([
      ['#VALUE! areaNames must name each group once; "slope" stands in rows 1 and 2'],
    ]);
  });
});

describe("sums of a season", () => {
  const byName = (table: readonly (readonly (string | number | boolean)[])[]) =>
    new Map(table.map(([name, ...numbers]) => [String(name).toLowerCase(), numbers]));

  test("do not depend on the order of the lots", () => {
    fc.assert(
      fc.property(
        seasons.chain((lots) =>
          fc.tuple(fc.constant(lots), fc.shuffledSubarray(lots, { minLength: lots.length, maxLength: lots.length })),
        ),
        ([lots, shuffled]) => {
          const before = byName(seasonOf(rowsFor(lots)));
          const after = byName(seasonOf(rowsFor(shuffled)));
          expect(after.size).toBe(before.size);
          for (const [name, numbers] of before) {
            numbers.forEach((number, index) => {
              if (typeof number === "number") expectEqual(after.get(name)?.[index] as number, number, 1e-12);
            });
          }
        },
      ),
    );
  });

  test("scale with the unit of weight, and ratios stay", () => {
    fc.assert(
      fc.property(seasons, fc.double({ min: 1e-3, max: 1e3, noNaN: true }), (lots, scale) => {
        const before = seasonOf(rowsFor(lots), null, 2);
        const after = seasonOf(rowsFor(lots, scale), null, 2);
        const scaled = new Set([4, 5, 9]);
        before.forEach((row, index) => {
          row.forEach((value, place) => {
            if (typeof value !== "number") return;
            expectEqual(after[index]?.[place] as number, scaled.has(place) ? value * scale : value, 1e-12);
          });
        });
      }),
    );
  });

  test("keep what a plain sum drops", () => {
    const sum = new CompensatedSum();
    for (const term of [1, 1e100, 1, -1e100]) sum.add(term);
    expect(sum.total).toBe(2);
  });

  test("of a million lots are right", () => {
    const rows = 1_000_000;
    const groups = Array.from({ length: rows }, (_, row) => [`plot ${row % 40}`]);
    const fresh = Array.from({ length: rows }, () => [0.3]);
    const finished = Array.from({ length: rows }, () => [0.1]);
    const table = season(groups, fresh, finished, null, null, false);
    expect(table.length).toBe(41);
    expect(table[40]?.slice(0, 4)).toEqual(["total", rows, 0, 0]);
    expectEqual(table[40]?.[4] as number, 300_000, 1e-15);
    expectEqual(table[0]?.[5] as number, 2_500, 1e-15);
  });
});

describe("the line through the origin", () => {
  test("reproduces NIST StRD NoInt1 where the variance does not grow", () => {
    const x = Array.from({ length: 11 }, (_, index) => 60 + index);
    const y = x.map((value) => value + 70);
    const { slope, slopeError, scatter, degrees } = originRegression(x, y, 0);
    expectEqual(slope, 2.07438016528926, 1e-14);
    expectEqual(slopeError, 0.0165289256198347, 1e-13);
    expectEqual(scatter, 3.56753034006338, 1e-13);
    expect(degrees).toBe(10);
  });

  test("is the outturn of the season where the variance grows with the weight", () => {
    const { slope, slopeError, scatter, predictionError } = originRegression([50, 100, 150], [12, 20, 28], 1);
    expectEqual(slope, 60 / 300);
    expectEqual(scatter, Math.sqrt(4 / 75));
    expectEqual(slopeError, Math.sqrt(4 / 75 / 300));
    expectEqual(predictionError(300), Math.sqrt((4 / 75) * 600));
  });
});

describe("a forecast", () => {
  const numbers = (...given: unknown[]) => forecast(...given)[0] as number[];

  // Seed 20261126, 20,000 books; the standard error of a share of 0.95 is 0.0016. With the one model that stood here
  // before, the range held the largest lot in 0.90 where lots scatter alike in percent. The right model's range is that
  // of the regression through the origin with the right power, which NIST NoInt1 checks elsewhere.
  test.each([
    ["by the same percent", 2, (fresh: number) => 0.05 * fresh],
    ["by less percent when they are large", 1, (fresh: number) => 0.05 * Math.sqrt(800 * fresh)],
  ] as const)(
    "of 95 % holds in 94 of 100 and is at most 1.25 times the right one in the median, where lots scatter %s",
    (_, power, scatter) => {
      const chance = seededNumbers(20261126);
      const normal = () => Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next());
      const made = (fresh: number) => 0.22 * (fresh + scatter(fresh) * normal());
      const t975 = 2.364624;
      const books = 20_000;
      const held = { largest: 0, within: 0 };
      const timesAsWide: number[] = [];
      for (let book = 0; book < books; book += 1) {
        const fresh = Array.from({ length: 8 }, () => 300 + 1200 * chance.next());
        const tea = fresh.map(made);
        const [least, largest] = [Math.min(...fresh), Math.max(...fresh)];
        const within = least + (largest - least) * chance.next();
        for (const [which, today] of [
          ["largest", largest],
          ["within", within],
        ] as const) {
          const given = [today, column(fresh), column(tea), 0.95] as const;
          const [low, , high] = finishedForecast.calculate(...given) as [number, number, number];
          const came = made(today);
          if (came >= low && came <= high) held[which] += 1;
          const right = 2 * t975 * originRegression(fresh, tea, power).predictionError(today);
          if (which === "within") timesAsWide.push((high - low) / right);
        }
      }
      expect(held.largest / books).toBeGreaterThan(0.94);
      expect(held.within / books).toBeGreaterThan(0.94);
      expect(timesAsWide.sort((one, other) => one - other)[books / 2]).toBeLessThan(1.25);
    },
  );

  test("has no width where all past lots are alike, however sure it should be", () => {
    const alike = [column([500, 1000, 1500]), column([100, 200, 300])];
    expect(numbers(750, ...alike)).toEqual([150, 150, 150]);
    expect(numbers(750, ...alike, 1 - 2 ** -53)).toEqual([150, 150, 150]);
  });

  test("is everything possible where it should be as good as certain", () => {
    expect(numbers(750, ...past, 1 - 2 ** -53)[0]).toBe(0);
    expect(numbers(750, ...past, 1 - 2 ** -53)[2]).toBe(750);
  });

  test("passes over headings, gaps, open lots and mistakes", () => {
    const messy = [
      column(["fresh", ...madeUp.fresh, 700, null, 142, 900, "x"]),
      column(["tea", ...madeUp.finished, null, null, 700, new CellError("#N/A"), 10]),
    ];
    expect(forecast(750, ...messy)).toEqual(forecast(750, ...past));
  });

  test("waits for today's leaf, one row for each", () => {
    expect(forecast(null, ...past)).toEqual([["", "", ""]]);
    expect(forecast(column([750, null]), ...past)).toEqual([forecast(750, ...past)[0], ["", "", ""]]);
  });

  test("needs three finished lots, and says what kept others out", () => {
    const none = "#N/A pastFreshWeights must hold at least 3 finished lots; got 0";
    expect(shownIn(forecast(750, null, null))[0]?.[0]).toBe(none);
    expect(shownIn(forecast(750, column(["fresh"]), column(["tea"])))[0]?.[0]).toBe(none);
    expect(shownIn(forecast(750, column([500, 600, 700]), column([100, "?", 140])))[0]?.[0]).toBe(
      '#N/A pastFreshWeights must hold at least 3 finished lots; got 2 (rows left out: 1, the first because pastFinishedWeights must be a weight above 0; got the text "?" in place 2 of the list)',
    );
  });

  test("refuses past lists of different lengths, and a confidence of 1", () => {
    expect(shownIn(forecast(750, column([500, 600, 700]), column([100, 120])))[0]?.[0]).toBe(
      "#VALUE! pastFinishedWeights must have as many rows as pastFreshWeights; got 2 and 3",
    );
    expect(shownIn(forecast(750, ...past, 1))[0]?.[0]).toBe(
      "#VALUE! confidence must be above 0 and below 1 (95% or 0.95); got 1",
    );
  });

  test("scales with the unit of weight and ignores the order of the past", () => {
    fc.assert(
      fc.property(seasons, fc.double({ min: 1e-3, max: 1e3, noNaN: true }), (lots, scale) => {
        const rows = rowsFor(lots);
        const today = 700;
        const before = numbers(today, column(rows.map(([, x]) => x)), column(rows.map(([, , y]) => y)));
        const reversed = [...rowsFor(lots, scale)].reverse();
        const after = numbers(today * scale, column(reversed.map(([, x]) => x)), column(reversed.map(([, , y]) => y)));
        before.forEach((value, place) => {
          expectEqual(after[place] as number, value * scale, 1e-9, today * scale * 1e-12);
        });
      }),
    );
  });
});

describe("flags", () => {
  test("stand beside an error of the book and never beside an object that is none", () => {
    const error = new CellError("#N/A", "made elsewhere");
    const grid = flags(
      column([...madeUp.fresh, 100, 100]),
      [...column(madeUp.finished), [error], [{ code: "#N/A" }]],
      null,
      false,
    );
    expect(grid[5]?.[0]).toBe(error);
    expect(shownIn(grid)[6]?.[0]).toBe(
      "#VALUE! finishedWeights must be a weight above 0; got a value of another type in place 7 of the list",
    );
  });

  const both = (fresh: Cell[], finished: Cell[], limit = 3.5) => ({
    one: flag(column(fresh), column(finished), column(fresh), column(finished), limit).map(([value]) => value),
    all: flags(column(fresh), column(finished), limit, false).map((row) => row[2]),
  });

  test("of one lot and of all lots agree beside one limit", () => {
    const fresh = [...madeUp.fresh, 900, 900, 142, 700];
    const finished = [...madeUp.finished, 150, 260, 700, null];
    const { one, all } = both(fresh, finished);
    expect(all).toEqual(["", "", "", "", "", "low", "high", "more out than in", ""]);
    expect(one).toEqual(all);
  });

  test("are none where all lots are alike, up to rounding", () => {
    const fresh = [1, 1.5, 2, 3, 7];
    const { one, all } = both(
      fresh,
      fresh.map((weight) => weight * 0.2),
    );
    expect(all).toEqual(["", "", "", "", ""]);
    expect(one).toEqual(all);
    const alike = [column([500, 500, 500, 500, 500]), column([100, 100, 100, 100, 100])];
    expect(flags(...alike, null, false).map((row) => row[1])).toEqual([0, 0, 0, 0, 0]);
    expect(flag(500, 300, ...alike)).toEqual([[""]]);
    expect(flag(300, 500, ...alike)).toEqual([["more out than in"]]);
  });

  test("stand in the rows of the book, under its heading", () => {
    const table = flags(
      column(["fresh", null, ...madeUp.fresh, 700, null]),
      column(["tea", null, ...madeUp.finished, null, null]),
    );
    expect(table.length).toBe(8);
    expect(table[0]).toEqual(["outturn", "z", "flag"]);
    expect(table[1]).toEqual(["", "", ""]);
    expect(table[2]?.[0]).toBe(258 / 1200);
    expect(table[7]).toEqual(["", "", ""]);
  });

  test("leave a mistake in its own row, and an error of the sheet as it was", () => {
    const broken = new CellError("#REF!");
    const table = flags(column([...madeUp.fresh, "x", 600]), column([...madeUp.finished, 100, broken]), null, false);
    const message = '#VALUE! freshWeights must be a weight above 0; got the text "x" in place 6 of the list';
    expect(shownIn(table)[5]).toEqual([message, message, message]);
    expect(table[6]).toEqual([broken, broken, broken]);
    expect(table[6]?.[0]).toBe(broken);
    expect(flag(900, 150, column([...madeUp.fresh, 600]), column([...madeUp.finished, broken]), 3.5)).toEqual([
      ["low"],
    ]);
  });

  test("wait while the book is empty, and need five finished lots", () => {
    expect(flags(null, null)).toEqual([[""]]);
    expect(flags([["fresh"], [null]], [["tea"], [null]])).toEqual([[""]]);
    expect(flag(900, null, ...past)).toEqual([[""]]);
    expect(shownIn(flag(900, 150, null, null))).toEqual([
      ["#N/A pastFreshWeights must hold at least 5 finished lots; got 0"],
    ]);
    expect(shownIn(flags([[900]], [[150]]))).toEqual([["#N/A freshWeights must hold at least 5 finished lots; got 1"]]);
  });

  test("refuse lists of different lengths and a limit that is none", () => {
    expect(shownIn(flags([[1], [2], [3]], [[1], [2]]))[0]?.[0]).toBe(
      "#VALUE! finishedWeights must have as many rows as freshWeights; got 2 and 3",
    );
    expect(shownIn(flag(900, 150, ...past, -1))[0]?.[0]).toBe(
      "#VALUE! limit must be a number above 0, such as 3.5; got -1",
    );
  });

  test("do not change with the unit of weight or the order of the lots", () => {
    fc.assert(
      fc.property(seasons, fc.integer({ min: -8, max: 8 }), (lots, power) => {
        const rows = rowsFor(lots);
        // A power of two scales without rounding, so that no lot at the limit can cross it.
        const scaled = [...rowsFor(lots, 2 ** power)].reverse();
        const before = both(
          rows.map(([, x]) => x),
          rows.map(([, , y]) => y),
        );
        const after = both(
          scaled.map(([, x]) => x),
          scaled.map(([, , y]) => y),
        );
        expect(after.all).toEqual([...before.all].reverse());
        expect(after.one).toEqual(after.all);
      }),
    );
  });
});

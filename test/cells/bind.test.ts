import { describe, expect, test } from "vitest";
import { bind } from "../../src/cells/bind";
import { CellError } from "../../src/cells/values";
import {
  type Answer,
  defineFunction,
  headers,
  measured,
  measuredList,
  optional,
  setting,
  settingList,
} from "../../src/core/define";
import { mustBe, noAnswer } from "../../src/core/errors";
import {
  choice,
  clock,
  count,
  dryLoss,
  looseWeight,
  moisture,
  plainNumber,
  text,
  weight,
  yesNo,
} from "../../src/core/quantities";
import { targetWeight } from "../../src/core/targets/target-weight";
import { boundByCall, cellFunction, only, shownIn } from "./call";

const target = boundByCall(targetWeight);
const difference = cellFunction(
  [measured("first", plainNumber), measured("second", plainNumber)],
  (first: number, second: number) => 100 * first + second,
);

const moistureRequirement = "must be from 0 up to, not including, 1 (76% or 0.76)";
const notAvailable = new CellError("#N/A", "made elsewhere");

describe("ranges", () => {
  test("one value gives one cell, also as a reference to one cell", () => {
    expect(target(320, 0.75, 0.6)).toEqual([[200]]);
    expect(target([[320]], [[0.75]], [[0.6]])).toEqual([[200]]);
  });

  test("a column gives a column and a row gives a row", () => {
    expect(difference([[1], [2], [3]], 5)).toEqual([[105], [205], [305]]);
    expect(difference(1, [[5, 6, 7]])).toEqual([[105, 106, 107]]);
  });

  test("a column with a row gives a table", () => {
    expect(difference([[1], [2]], [[5, 6, 7]])).toEqual([
      [105, 106, 107],
      [205, 206, 207],
    ]);
  });

  test("a table takes a column, a row or a cell beside it", () => {
    const table = [
      [1, 2],
      [3, 4],
    ];
    expect(difference(table, [[5], [6]])).toEqual([
      [105, 205],
      [306, 406],
    ]);
    expect(difference(table, [[5, 6]])).toEqual([
      [105, 206],
      [305, 406],
    ]);
    expect(difference(table, 9)).toEqual([
      [109, 209],
      [309, 409],
    ]);
  });

  test("sizes that do not match are refused with both of them", () => {
    expect(only(difference([[1], [2], [3]], [[5], [6]]))).toBe(
      "#VALUE! second must have the size of first; got 2 × 1 and 3 × 1 cells",
    );
    expect(only(difference([[1, 2]], [[5, 6, 7]]))).toBe(
      "#VALUE! second must have the size of first; got 1 × 3 and 1 × 2 cells",
    );
  });

  test("without rows or without cells hold a blank", () => {
    expect(target([], 0.75, 0.6)).toEqual([[""]]);
    expect(target([[]], 0.75, 0.6)).toEqual([[""]]);
    expect(only(target(320, 0.75, []))).toBe(`#VALUE! targetMoisture ${moistureRequirement}; got a blank`);
  });

  test("that are no rows of cells are refused by name", () => {
    const probe = cellFunction([measuredList("pastWeights", weight)], (past: number[]) => past.length);
    const otherForm = "must be a cell or rows of cells; got a list of another form";
    expect(only(probe([320]))).toBe(`#VALUE! pastWeights ${otherForm}`);
    expect(only(target([320, 340], 0.75, 0.6))).toBe(`#VALUE! weight ${otherForm}`);
    // A text has a length too, and is no row of letters.
    expect(only(target(320, ["leaf"], 0.6))).toBe(`#VALUE! moisture ${otherForm}`);
  });

  test("a list is taken whole beside cells of any size", () => {
    const probe = cellFunction(
      [measured("weight", weight), measuredList("pastWeights", weight)],
      (weight: number, past: number[]) => weight + past.length,
    );
    expect(probe([[10], [20]], [[1], [2], [3]])).toEqual([[13], [23]]);
    expect(probe(10, [[1, 2, 3]])).toEqual([[13]]);
  });
});

describe("blanks", () => {
  test.each([
    ["null", null],
    ["empty text", ""],
    ["undefined", undefined],
    ["the 0 of an older host", 0],
  ])("a measured cell that holds %s makes the answer wait", (_, blank) => {
    expect(target(blank, 0.75, 0.6)).toEqual([[""]]);
  });

  test("only the row with the blank waits", () => {
    expect(target([[320], [null], [640]], 0.75, 0.6)).toEqual([[200], [""], [400]]);
  });

  test("a blank setting is refused by name", () => {
    expect(only(target(320, 0.75, null))).toBe(`#VALUE! targetMoisture ${moistureRequirement}; got a blank`);
    expect(only(target(320, 0.75))).toBe(`#VALUE! targetMoisture ${moistureRequirement}; got a blank`);
  });

  test("a row that waits for its reading does not complain about a setting", () => {
    expect(target(null, 0.75, null)).toEqual([[""]]);
  });

  test("a value out of its bounds is refused even while another reading is missing", () => {
    expect(only(target(null, 76, 0.6))).toBe(`#VALUE! moisture ${moistureRequirement}; got 76`);
  });

  test("0 is 0 where the kind allows it", () => {
    expect(target(320, 0, 0)).toEqual([[320]]);
    const probe = cellFunction(
      [measured("dish", looseWeight), optional("clock", clock, 9)],
      (dish, clock) => dish + clock,
    );
    expect(probe(0, 0)).toEqual([[0]]);
  });

  test("a blank optional cell counts as left out, cell by cell", () => {
    const probe = cellFunction(
      [measured("weight", weight), optional("dryLoss", dryLoss, 0.5), optional("limit", weight)],
      (weight: number, loss: number, limit?: number) => `${weight} ${loss} ${limit}`,
    );
    expect(probe(8)).toEqual([["8 0.5 undefined"]]);
    expect(probe(8, null, null)).toEqual([["8 0.5 undefined"]]);
    expect(probe(8, [[0.1], [""], [0]], [[3], [0], [null]])).toEqual([
      ["8 0.1 3"],
      ["8 0.5 undefined"],
      ["8 0 undefined"],
    ]);
  });
});

describe("errors in arguments", () => {
  test("come back as they are", () => {
    expect(target(320, notAvailable, 0.6)[0]?.[0]).toBe(notAvailable);
    for (const code of ["#NAME?", "#REF!"]) {
      const error = new CellError(code);
      expect(target(320, 0.75, error)[0]?.[0]).toBe(error);
    }
  });

  test("stay in their row", () => {
    const grid = target([[320], [notAvailable], [640]], 0.75, 0.6);
    expect(grid[0]).toEqual([200]);
    expect(grid[1]?.[0]).toBe(notAvailable);
    expect(grid[2]).toEqual([400]);
  });

  test("win over blanks and refusals of the same row, wherever they stand", () => {
    expect(target(null, 0.75, notAvailable)[0]?.[0]).toBe(notAvailable);
    expect(target(320, 76, notAvailable)[0]?.[0]).toBe(notAvailable);
  });

  test("of a list win over a reading that is missing in a cell", () => {
    const probe = cellFunction(
      [measured("weight", weight), settingList("targets", moisture)],
      (weight: number, targets: number[]) => weight + targets.length,
    );
    expect(probe(null, [[0.5, notAvailable]])[0]?.[0]).toBe(notAvailable);
  });

  test("win over a refused list", () => {
    const probe = cellFunction(
      [measured("weight", weight), settingList("targets", moisture)],
      (weight: number, targets: number[]) => weight + targets.length,
    );
    expect(probe(notAvailable, [[76]])[0]?.[0]).toBe(notAvailable);
    expect(only(probe(1, [[76]]))).toBe(`#VALUE! targets ${moistureRequirement}; got 76 in place 1 of the list`);
  });

  test("a bad cell never blanks its neighbours", () => {
    expect(shownIn(target([[320], [-1], ["x"], [640]], 0.75, 0.6))).toEqual([
      [200],
      ["#VALUE! weight must be a weight above 0; got -1"],
      ['#VALUE! weight must be a weight above 0; got the text "x"'],
      [400],
    ]);
  });
});

describe("what is not a number of its kind", () => {
  test("76 for a moisture is refused and shown how to write it", () => {
    expect(only(target(320, 76, 0.6))).toBe(
      "#VALUE! moisture must be from 0 up to, not including, 1 (76% or 0.76); got 76",
    );
  });

  test("the bounds themselves are kept: 0 belongs to a moisture, 1 does not", () => {
    expect(only(target(320, 1, 0.6))).toBe(`#VALUE! moisture ${moistureRequirement}; got 1`);
    expect(only(target(320, -0.001, 0.6))).toBe(`#VALUE! moisture ${moistureRequirement}; got -0.001`);
    expect(target(320, 0.9999999, 0)[0]?.[0]).toBeCloseTo(0.000032, 9);
  });

  test("a moisture is any number below 1, however near", () => {
    // 320 × 2⁻⁵³ / 0.4 = 800 × 2⁻⁵³
    expect(only(target(320, 1 - 2 ** -53, 0.6))).toBeCloseTo(800 * 2 ** -53, 24);
  });

  test.each(["320", "3,5", "1 250.5", "76%", "-4", "76％", "１２", "1'000"])(
    "the text %j is refused with the hint that it is no number",
    (typed) => {
      expect(only(target(typed, 0.75, 0.6))).toBe(
        `#VALUE! weight must be a weight above 0; got the text "${typed}" (it looks like a number but is stored as text: type it again as a number)`,
      );
    },
  );

  test("other text is refused without the hint, and a lone space is named", () => {
    expect(only(target("320 g", 0.75, 0.6))).toBe('#VALUE! weight must be a weight above 0; got the text "320 g"');
    expect(only(target("  ", 0.75, 0.6))).toBe(
      '#VALUE! weight must be a weight above 0; got the text "  " (the cell looks empty but holds a space: clear it)',
    );
  });

  test("a boolean is no number", () => {
    expect(only(target(true, 0.75, 0.6))).toBe("#VALUE! weight must be a weight above 0; got TRUE");
    expect(only(target(320, false, 0.6))).toBe(`#VALUE! moisture ${moistureRequirement}; got FALSE`);
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])("%d is refused", (value) => {
    expect(only(target(value, 0.75, 0.6))).toBe(`#VALUE! weight must be a weight above 0; got ${value}`);
    expect(only(target(320, value, 0.6))).toBe(`#VALUE! moisture ${moistureRequirement}; got ${value}`);
  });

  test("an object of a host is refused, not turned into a number", () => {
    expect(only(target({ basicValue: 320 }, 0.75, 0.6))).toBe(
      "#VALUE! weight must be a weight above 0; got a value of another type",
    );
  });

  test("a date is its serial number: too large for a moisture, a time of day for a clock", () => {
    expect(only(target(320, 46_000, 0.6))).toBe(`#VALUE! moisture ${moistureRequirement}; got 46000`);
    const time = cellFunction([setting("start", clock)], (start: number) => start);
    expect(time(46_000.25)).toEqual([[46_000.25]]);
    expect(only(time("2027-04-05"))).toBe(
      '#VALUE! start must be a time such as 14:30; got the text "2027-04-05" (it looks like a number but is stored as text: type it again as a number)',
    );
  });

  test("pieces are whole", () => {
    const probe = cellFunction([setting("pieces", count)], (pieces: number) => pieces);
    expect(probe(3)).toEqual([[3]]);
    expect(only(probe(2.5))).toBe("#VALUE! pieces must be a whole number of 1 or more; got 2.5");
  });
});

describe("words", () => {
  const leaf = choice("part of the leaf", { bud: ["芽"], leaf: ["叶"] }, { stalk: "for twenty minutes type 0:20" });
  const chosen = cellFunction([setting("part", leaf)], (part: string) => part);

  test("ignore case and outer spaces, and Chinese is read as the same word", () => {
    expect([chosen("bud"), chosen(" BUD "), chosen("芽"), chosen(" 叶")]).toEqual([
      [["bud"]],
      [["bud"]],
      [["bud"]],
      [["leaf"]],
    ]);
  });

  test("a word that is not among them is refused with the list of them", () => {
    expect(only(chosen("root"))).toBe('#VALUE! part must be one of "bud", "leaf"; got the text "root"');
    expect(only(chosen(2))).toBe('#VALUE! part must be one of "bud", "leaf"; got 2');
    expect(only(chosen(true))).toBe('#VALUE! part must be one of "bud", "leaf"; got TRUE');
  });

  test("a word that looks right has its reason beside the refusal", () => {
    expect(only(chosen("Stalk"))).toBe(
      '#VALUE! part must be one of "bud", "leaf"; got the text "Stalk" (for twenty minutes type 0:20)',
    );
  });

  test("a word of JavaScript's own is no choice", () => {
    expect(only(chosen("constructor"))).toBe('#VALUE! part must be one of "bud", "leaf"; got the text "constructor"');
  });

  test("a blank choice is refused, and so is the 0 that an older host sends for it", () => {
    expect(only(chosen(null))).toBe('#VALUE! part must be one of "bud", "leaf"; got a blank');
    expect(only(chosen(0))).toBe('#VALUE! part must be one of "bud", "leaf"; got a blank');
  });

  test("yes or no is TRUE, FALSE, 1 or 0", () => {
    const probe = cellFunction([optional("tared", yesNo, true)], (tared: boolean) => (tared ? "yes" : "no"));
    expect([true, 1, null, false, 0].map((value) => only(probe(value)))).toEqual(["yes", "yes", "yes", "no", "no"]);
    expect(only(probe("yes"))).toBe('#VALUE! tared must be TRUE or FALSE (1 or 0); got the text "yes"');
    expect(only(probe(2))).toBe("#VALUE! tared must be TRUE or FALSE (1 or 0); got 2");
  });

  test("an object is no label, whatever text it would turn into", () => {
    const probe = cellFunction([setting("label", text)], (label: string) => `<${label}>`);
    for (const object of [{}, Object.create(null), { toString: () => "plot 3" }, Symbol("plot"), 3n]) {
      expect(only(probe(object))).toBe("#VALUE! label must be text; got a value of another type");
    }
  });

  test("an object with a code of its own is no error of the sheet", () => {
    expect(only(target({ code: "#N/A" }, 0.75, 0.6))).toBe(
      "#VALUE! weight must be a weight above 0; got a value of another type",
    );
  });

  test("a label may be any constant", () => {
    const probe = cellFunction([setting("label", text)], (label: string) => `<${label}>`);
    expect(["plot 3", 7, true].map((value) => only(probe(value)))).toEqual(["<plot 3>", "<7>", "<TRUE>"]);
  });
});

describe("what a host adds or leaves out", () => {
  const invocation = { address: "Sheet1!A1", setResult: () => undefined };
  const probe = cellFunction(
    [measured("weight", weight), optional("dryLoss", dryLoss, 0.5)],
    (...values: unknown[]) => `${values.length}: ${values.join(" ")}`,
  );

  test("the invocation object behind the arguments is not taken for one", () => {
    expect(probe(8, 0.1, invocation)).toEqual([["2: 8 0.1"]]);
    expect(target(320, 0.75, 0.6, invocation)).toEqual([[200]]);
  });

  test("arguments beyond those of the function are not read, be they errors", () => {
    const one = cellFunction([measured("weight", weight)], (...values: unknown[]) => values.length);
    expect(one(8, notAvailable, [[1], [2]])).toEqual([[1]]);
  });

  test("an omitted argument arrives as null and gets its default", () => {
    expect(probe(8, null, invocation)).toEqual([["2: 8 0.5"]]);
  });
});

describe("answers", () => {
  const ask = (calculate: () => unknown) => cellFunction([], calculate as () => Answer)();

  test("that are too large for a number become an error", () => {
    expect(only(ask(() => 1e308 * 10))).toBe("#VALUE! the numbers are too large or too small to calculate with");
  });

  test("stay within what a cell can hold, since weights that no farm has are refused by name", () => {
    expect(only(target(1e308, 0, 0.99))).toBe("#VALUE! weight must be a weight above 0; got 1e+308");
    expect(only(target(5e-324, 0, 0.99))).toBe("#VALUE! weight must be a weight above 0; got 5e-324");
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, null, undefined])("%s never reaches a cell", (nothing) => {
    const value = ask(() => nothing)[0]?.[0];
    expect(value).toBeInstanceOf(CellError);
    expect((value as CellError).code).toBe("#VALUE!");
  });

  test("a zero has no sign", () => {
    expect(Object.is(ask(() => -0)[0]?.[0], 0)).toBe(true);
  });

  test("a refusal keeps its code, and a mistake of ours does not throw", () => {
    const refuse = (problem: Error) =>
      ask(() => {
        throw problem;
      });
    expect(only(refuse(mustBe("loss", "0 or more", 3)))).toBe("#VALUE! loss must be 0 or more; got 3");
    expect(only(refuse(noAnswer("loss", { do: "not rise" }, { kind: "value", value: 3 })))).toBe(
      "#N/A loss must not rise; got 3",
    );
    expect(only(refuse(new RangeError("oops")))).toBe("#VALUE! this answer could not be worked out (RangeError: oops)");
  });
});

describe("tables", () => {
  const halves = bind(
    defineFunction({
      id: "HALVES",
      group: "moisture",
      parameters: [measured("weight", weight), headers],
      result: {
        shape: "table",
        columns: [
          { name: "part", quantity: text },
          { name: "reading", quantity: weight },
        ],
      },
      calculate: (weight: number): Answer[][] => [
        ["left", weight / 2],
        ["right", mustBe("weight", "a weight above 0", weight)],
      ],
    }),
  );
  const rows = [
    ["left", 4],
    ["right", "#VALUE! weight must be a weight above 0; got 8"],
  ];

  test("stand under their headings unless FALSE leaves them out", () => {
    expect(shownIn(halves(8))).toEqual([["part", "reading"], ...rows]);
    expect(shownIn(halves(8, null))).toEqual([["part", "reading"], ...rows]);
    expect(shownIn(halves(8, true))).toEqual([["part", "reading"], ...rows]);
    expect(shownIn(halves(8, false))).toEqual(rows);
    expect(shownIn(halves(8, [[0]]))).toEqual(rows);
  });

  test("refuse what is neither TRUE nor FALSE for headers", () => {
    expect(only(halves(8, "no"))).toBe('#VALUE! headers must be TRUE or FALSE (1 or 0); got the text "no"');
    expect(halves(8, notAvailable)[0]?.[0]).toBe(notAvailable);
  });

  test("wait, refuse and pass errors on in a single cell", () => {
    expect(halves(null)).toEqual([[""]]);
    expect(only(halves(-1))).toBe("#VALUE! weight must be a weight above 0; got -1");
    expect(halves(notAvailable)[0]?.[0]).toBe(notAvailable);
  });

  test("that are one row high or one cell wide have their headings too", () => {
    const tableOf = (columns: readonly string[], rows: Answer[][]) =>
      bind(
        defineFunction({
          id: "PROBE",
          group: "moisture",
          parameters: [headers],
          result: { shape: "table", columns: columns.map((name) => ({ name, quantity: text })) },
          calculate: () => rows,
        }),
      )();
    expect(tableOf(["a", "b"], [[1, 2]])).toEqual([
      ["a", "b"],
      [1, 2],
    ]);
    expect(tableOf(["a"], [[1], [2]])).toEqual([["a"], [1], [2]]);
  });

  test("give the calculation their arguments without headers", () => {
    const probe = bind(
      defineFunction({
        id: "PROBE",
        group: "moisture",
        parameters: [measured("weight", weight), headers],
        result: { shape: "table", columns: [{ name: "given", quantity: text }] },
        calculate: (...values: unknown[]): Answer[][] => [[values.length]],
      }),
    );
    expect(probe(8, false)).toEqual([[1]]);
  });

  test("refuse a range for any of their cells, also a row, and never for a list", () => {
    const probe = bind(
      defineFunction({
        id: "PROBE",
        group: "moisture",
        parameters: [measuredList("loads", weight), measured("weight", weight), headers],
        result: { shape: "table", columns: [{ name: "given", quantity: text }] },
        calculate: (loads, weight): Answer[][] => [[loads.length, weight]],
      }),
    );
    expect(probe([[1, 2, 3]], 8, false)).toEqual([[3, 8]]);
    expect(only(probe([[1, 2, 3]], [[8, 9]]))).toBe("#VALUE! weight must be one cell; got 1 × 2 cells");
    expect(only(probe([[1, 2, 3]], 8, [[true], [true]]))).toBe("#VALUE! headers must be one cell; got 2 × 1 cells");
  });

  test("take one cell where they take no list", () => {
    expect(only(halves([[8], [9]]))).toBe("#VALUE! weight must be one cell; got 2 × 1 cells");
  });
});

describe("rows", () => {
  const span = bind(
    defineFunction({
      id: "SPAN",
      group: "moisture",
      parameters: [measured("weight", weight), setting("share", dryLoss)],
      result: {
        shape: "row",
        columns: [
          { name: "low", quantity: weight },
          { name: "high", quantity: weight },
        ],
      },
      calculate: (weight: number, share: number): Answer[] => [weight * share, weight],
    }),
  );

  test("one call gives a row and a column gives a row each", () => {
    expect(span(8, 0.5)).toEqual([[4, 8]]);
    expect(span([[8], [6]], 0.5)).toEqual([
      [4, 8],
      [3, 6],
    ]);
  });

  test("an error or a wait fills its own row and no other", () => {
    const refusal = "#VALUE! weight must be a weight above 0; got -1";
    expect(shownIn(span([[8], [null], [-1], [notAvailable]], 0.5))).toEqual([
      [4, 8],
      ["", ""],
      [refusal, refusal],
      ["#N/A made elsewhere", "#N/A made elsewhere"],
    ]);
  });

  test("a row of arguments is refused, since answers could not stand beside each other", () => {
    expect(only(span([[8, 6]], 0.5))).toBe("#VALUE! weight must be one cell or one column; got 1 × 2 cells");
  });
});

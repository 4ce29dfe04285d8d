import { readFile } from "node:fs/promises";
import { describe, expect, test } from "vitest";
import { type DomainError, mustBe } from "../../../src/core/errors";
import { moisture } from "../../../src/core/quantities";
import { hindrances } from "../../../src/pages/workbook/hindrances";
import { KnownWorkbook, type Spot } from "../../../src/pages/workbook/known-workbook";
import { namedReason } from "../../../src/pages/workbook/named-reason";
import {
  hindranceAfterAddress,
  hindranceAtCell,
  hindranceInShort,
  waitsFor,
  words,
} from "../../../src/pages/workbook/words";
import { addressOf, placeOf } from "../../../src/workbook/addresses";
import type { Cell, Workbook } from "../../../src/workbook/workbook";
import { readWorkbook } from "../../../src/xlsx/read-workbook";

/** What each of these cells was refused. */
type Refused = Readonly<Record<string, DomainError>>;
type Cells = Readonly<Record<string, Omit<Cell, "row" | "column"> | string | number>>;

/** A workbook of these sheets; a text that begins with an equals sign is a formula without an answer. */
function book(sheets: Readonly<Record<string, Cells>>): Workbook {
  return {
    name: "a test",
    sheets: Object.entries(sheets).map(([name, cells]) => ({
      name,
      columnWidths: {},
      rowHeights: {},
      merges: [],
      cells: Object.entries(cells).map(([address, content]) => ({
        ...placeOf(address),
        ...(typeof content === "object"
          ? content
          : typeof content === "string" && content.startsWith("=")
            ? { formula: content, value: "" }
            : { value: content }),
      })),
    })),
  };
}

const at = ({ sheet, row, column }: Spot) => `${sheet}!${addressOf(row, column)}`;
const found = (sheets: Readonly<Record<string, Cells>>, refused: Refused = {}) =>
  hindrances(
    new KnownWorkbook(book(sheets)),
    (spot) => {
      const error = refused[at(spot)];
      return error && { message: error.message, reason: error.refusal };
    },
    (error, spot) => (at(spot) === "Lot!B7" ? "there is no function SUMM; did you mean SUM?" : words().meanings[error]),
  );
const said = (sheets: Readonly<Record<string, Cells>>, refused: Refused = {}) =>
  found(sheets, refused).map((each) => at(each) + hindranceAfterAddress(each));

describe("what holds answers up", () => {
  test("a blank is named with its label and with all that wait for it, on other sheets too", () => {
    const sheets = {
      Lot: { A9: "Fresh weight", B10: 0.2, C9: "=B9*2", C10: "=C9*B10" },
      Card: { A1: "=Lot!C10" },
    };
    expect(said(sheets)).toEqual(["Lot!B9, fresh weight, is blank: 3 cells wait for it"]);
    expect(found(sheets)[0]?.waiting.map(at)).toEqual(["Lot!C9", "Lot!C10", "Card!A1"]);
  });

  test("a blank that an answer does without is not named", () => {
    expect(said({ Lot: { C1: { formula: '=IF(B2="",B1,B2)', value: 5 }, B1: 5 } })).toEqual([]);
  });

  test("a blank that may stay blank is not named beside the one that matters", () => {
    const sheets = { Lot: { A1: "Load", A2: "Largest load", C1: "=TEA.CHARGECOUNT(B1,B2)", C2: '=IF(B1="","",B1)' } };
    expect(said(sheets)).toEqual(["Lot!B1, load, is blank: 2 cells wait for it"]);
  });

  test("an answer that is empty for another reason waits for nothing", () => {
    expect(said({ Lot: { B1: 4, C1: '=IF(B1<5,"","Charge 5")' } })).toEqual([]);
  });

  test("a text that begins as a number does is the cause, with what was said of it", () => {
    const sheets = {
      Lot: {
        A18: "Pan load wanted",
        B18: "350 g",
        F5: { formula: "=TEA.CHARGECOUNT(900,B18)", value: "#VALUE!" },
        F6: '=IF(ISTEXT(B18),"",B18*2)',
        F7: { formula: "=F5+1", value: "#VALUE!" },
      },
    };
    const refused = { "Lot!F5": mustBe("panLoad", "a number", "350 g") };
    expect(said(sheets, refused)).toEqual([
      'Lot!B18, pan load wanted, holds the text “350 g”: F5 and 2 more cells wait for it. “Pan load wanted” must be a number; got the text "350 g"',
    ]);
    const [cause] = found(sheets, refused);
    expect(cause && hindranceAtCell(cause)).toBe(
      'This holds the text “350 g”: F5 and 2 more cells wait for it. “Pan load wanted” must be a number; got the text "350 g"',
    );
    expect(cause && waitsFor(cause, { sheet: "Lot", ...placeOf("F7") })).toBe(
      "waits for B18, pan load wanted, which holds the text “350 g”",
    );
  });

  test("a number that a function refuses is the cause; its neighbours are not", () => {
    const sheets = { Lot: { B1: 500, B2: 76, C1: { formula: "=TEA.WATER(B1,B2)", value: "#VALUE!" } } };
    expect(said(sheets, { "Lot!C1": mustBe("moisture", moisture.requirement, 76) })).toEqual([
      "Lot!B2 holds 76: C1 waits for it. B2 must be from 0 up to, not including, 1 (76% or 0.76); got 76",
    ]);
  });

  test("the cause is where the number was typed, also when a formula passes it on", () => {
    const sheets = {
      Lot: {
        B15: 76,
        F12: { formula: '=IF(B15="",G12,B15)', value: 76 },
        G1: { formula: "=TEA.WATER(500,F12)", value: "#VALUE!" },
      },
    };
    expect(said(sheets, { "Lot!G1": mustBe("moisture", moisture.requirement, 76) })).toEqual([
      "Lot!B15 holds 76: G1 waits for it. B15 must be from 0 up to, not including, 1 (76% or 0.76); got 76",
    ]);
  });

  test("the cause is where the text was typed, also when a formula passes it on", () => {
    const sheets = {
      Lot: {
        A10: "After airing overnight",
        B10: "350 g",
        F12: 1240,
        F13: { formula: "=IF(ISBLANK(B10),F12,B10)", value: "350 g" },
        G13: { formula: "=TEA.MOISTURENOW(1240,0.76,F13)", value: "#VALUE!" },
        H13: { formula: "=F13*G13", value: "#VALUE!" },
      },
    };
    expect(said(sheets, { "Lot!G13": mustBe("weightNow", "a weight above 0", "350 g") })).toEqual([
      'Lot!B10, after airing overnight, holds the text “350 g”: G13 and 1 more cell wait for it. “After airing overnight” must be a weight above 0; got the text "350 g"',
    ]);
  });

  test("a mistake comes before a blank, and a formula may be its own mistake", () => {
    const sheets = {
      Lot: { A1: 1, C1: "=B1", C2: "=C1", C3: "=C1", D1: { formula: "=TEA.WATER(5,76)", value: "#VALUE!" } },
    };
    expect(said(sheets, { "Lot!D1": mustBe("moisture", moisture.requirement, 76) })).toEqual([
      "Lot!D1: moisture must be from 0 up to, not including, 1 (76% or 0.76); got 76",
      "Lot!B1 is blank: 3 cells wait for it",
    ]);
  });

  test("the cells that a formula spilled are answers, not blanks", () => {
    const sheets = {
      Lot: { A1: 5, C1: { formula: "=TEA.DRYINGSTEPS(B1)", value: "", spill: { rows: 3, columns: 1 } }, D1: "=C3*2" },
    };
    expect(said(sheets)).toEqual(["Lot!B1 is blank: 2 cells wait for it"]);
  });

  test("in a row that nobody has begun nothing is missing", () => {
    expect(said({ Lots: { A1: 12, B1: "=A1*2", B2: "=A2*2" } })).toEqual([]);
  });

  const wrong = (sheets: Readonly<Record<string, Cells>>, from: string) => {
    const [sheet = "", address = ""] = from.split("!");
    const there = { sheet, ...placeOf(address) };
    const before = found(sheets).find(({ waiting }) => waiting.some((spot) => at(spot) === from));
    return before && waitsFor(before, there);
  };

  test("in a chain of the spreadsheet's own errors the first cell is named, with what the error means", () => {
    const chain = {
      Lot: {
        A1: "Outturn",
        B1: { formula: "=5/0", value: "#DIV/0!" },
        C1: { formula: "=B1*2", value: "#DIV/0!" },
        D1: { formula: "=SUM(C1:C1)", value: "#DIV/0!" },
      },
    };
    const why = "waits for B1, outturn, which shows #DIV/0! (this divides by zero or by a blank cell)";
    expect(wrong(chain, "Lot!C1")).toBe(why);
    expect(wrong(chain, "Lot!D1")).toBe(why);
    expect(wrong(chain, "Lot!B1")).toBeUndefined();
    expect(said(chain)).toEqual([
      "Lot!B1, outturn, shows #DIV/0! (this divides by zero or by a blank cell): C1 and 1 more cell wait for it",
    ]);
    const alone = { Lot: { B1: { formula: "=5/0", value: "#DIV/0!" } } };
    expect(found(alone)).toEqual([]);
    const blank = { Lot: { A1: "Fresh weight", C1: { formula: "=5/B1", value: "#DIV/0!" }, C2: "=C1" } };
    expect(wrong(blank, "Lot!C2")).toBe("waits for B1, fresh weight, which is blank");
  });

  test("what a text spoils further on is no mistake of its own, by whichever way it comes there", () => {
    const sheets = {
      Lot: {
        A9: "Fresh weight",
        B9: "abc",
        F9: { formula: "=TEA.WATER(B9,0.76)", value: "#VALUE!" },
        F12: { formula: "=IF(ISBLANK(B10),B9,B10)", value: "abc" },
        F13: { formula: '=IF(ISNUMBER(F9),F9,"")', value: "" },
        F14: "=TEA.CHARGELOADS(F9,300)",
      },
      Proof: {
        B3: { formula: "=Lot!F12*0.24", value: "#VALUE!" },
        B4: { formula: "=Lot!F13-1", value: "#VALUE!" },
        B5: { formula: "=B3+B4", value: "#VALUE!" },
      },
    };
    const refused = { "Lot!F9": mustBe("weight", "a weight above 0", "abc") };
    expect(said(sheets, refused)).toEqual([
      'Lot!B9, fresh weight, holds the text “abc”: F9 and 5 more cells wait for it. “Fresh weight” must be a weight above 0; got the text "abc"',
    ]);
    // A text that nobody refuses may be meant.
    const meant = {
      Lot: { B1: "g", F1: { formula: "=B1&2+1", value: "#VALUE!" }, F2: { formula: "=F1", value: "#VALUE!" } },
    };
    expect(found(meant).map((each) => [at(each), each.is])).toEqual([["Lot!F1", "error"]]);
  });

  test("a text among the numbers of a list is the cause, also of what reads an answer that was spilled from the list", () => {
    const lots = { A4: "Fresh", A5: 800, A6: "abc", A7: 900 };
    expect(said({ Lots: { ...lots, C1: { formula: "=SUMPRODUCT(A4:A7*2)", value: "#VALUE!" } } })).toEqual([
      "Lots!A6 holds the text “abc”: C1 waits for it",
    ]);
    const spilled = {
      Lots: {
        ...{ A4: "Fresh", A5: "abc", A6: 800, A7: 900 },
        B4: { formula: '=IF(ISTEXT(A4),"Twice",A4:A7*2)', value: "Twice", spill: { rows: 4, columns: 1 } },
        ...{ B5: "#VALUE!", B6: 1600, B7: 1800 },
      },
      Flags: { C5: { formula: "=Lots!B5+1", value: "#VALUE!" }, C6: { formula: "=Lots!B6+1", value: 1601 } },
    };
    expect(said(spilled)[0]).toMatch(/^Lots!A5 holds the text “abc”: .*waits? for it/);
    expect(said(spilled)).toHaveLength(1);
    const byRow = {
      Lots: {
        ...{ A1: "Fresh", A2: 800, A3: "abc", A4: 900 },
        B1: { formula: '=IF(ISTEXT(A1:A4),"Twice",A1:A4*2)', value: "Twice", spill: { rows: 4, columns: 1 } },
        ...{ B2: 1600, B3: "#VALUE!", B4: 1800 },
      },
      Flags: { C3: { formula: "=INDEX(Lots!B:B,3)+1", value: "#VALUE!" } },
    };
    expect(said(byRow)).toEqual(["Lots!A3 holds the text “abc”: Flags C3 waits for it"]);
  });

  test("an error over an answer that shows nothing is not blamed while something else is waited for", () => {
    const sheets = {
      Lot: { A9: "Fresh weight", B10: 0.2, C9: "=B9*B10" },
      Proof: { C3: '=IF(Lot!F25=0,"",Lot!F25)', D3: { formula: "=ABS(4-C3)", value: "#VALUE!" } },
    };
    expect(said(sheets)).toEqual(["Lot!B9, fresh weight, is blank: 1 cell waits for it"]);
  });

  test("a blank that is refused is the one cause of all that wait for it, with one count", () => {
    const sheets = {
      Lot: {
        A18: "Pan load wanted",
        C18: "g",
        A19: "Largest pan load",
        F4: '=IF(B18="","",B18/2)',
        F5: { formula: "=TEA.CHARGECOUNT(900,B18,B19)", value: "#VALUE!" },
        F6: { formula: "=F5+1", value: "#VALUE!" },
      },
    };
    const refused = { "Lot!F5": mustBe("panLoad", "a weight above 0", null) };
    expect(said(sheets, refused)).toEqual([
      "Lot!B18, pan load wanted, is blank: F4 and 2 more cells wait for it. “Pan load wanted” must be a weight above 0; got a blank",
    ]);
  });

  test("a misspelt function is the cause, whatever its formula reads, also of answers that show nothing", () => {
    const sheets = {
      Lot: {
        A7: "After airing",
        B7: { formula: "=SUMM(B8,B9)", value: "#NAME?" },
        A8: "Fresh weight",
        B9: "350 g",
        F5: { formula: "=B7*2", value: "#NAME?" },
        F6: { formula: '=IF(ISNUMBER(B7),B7,"")', value: "" },
        F7: { formula: "=SUM(F5:F6)", value: "#NAME?" },
      },
    };
    const [cause] = found(sheets);
    expect(said(sheets)).toEqual([
      "Lot!B7, after airing, shows #NAME? (there is no function SUMM; did you mean SUM?): F5 and 2 more cells wait for it",
    ]);
    expect(cause && hindranceInShort(cause)).toBe(", after airing, shows #NAME?");
    expect(wrong(sheets, "Lot!F6")).toBe(
      "waits for B7, after airing, which shows #NAME? (there is no function SUMM; did you mean SUM?)",
    );
  });

  test("an error that was typed is the cause, and so is one that only some programs know", () => {
    const typed = { Lot: { B7: "#N/A", A8: "Airing", B8: "#N/A", F5: { formula: "=B8*2", value: "#N/A" } } };
    expect(said(typed)).toEqual([
      "Lot!B8, airing, shows #N/A (what is looked for is not there, or a function is given too few or too many arguments): F5 waits for it",
    ]);
    for (const value of ["#SPILL!", "#CYCLE!", "#CALC!"]) {
      const own = { Lot: { B8: { formula: "=B8:B9", value }, F5: { formula: "=B8*2", value } } };
      expect(found(own).map((each) => [at(each), each.is, each.waiting.map(at)])).toEqual([
        ["Lot!B8", "error", ["Lot!F5"]],
      ]);
    }
  });

  test("a row that a formula fills is not begun by it", () => {
    const spilled = { formula: "=TEA.DRYINGSTEPS(A1)", value: 5, spill: { rows: 2, columns: 1 } };
    expect(said({ Lot: { A1: 5, E1: spilled, E2: 4, B2: { formula: '=IF(A2="","",A2)', value: "" } } })).toEqual([]);
  });

  const english = ["one-lot", "season", "day-and-packing", "moisture-bench"];
  test.each([...english, ...english.map((file) => `zh/${file}`)])(
    "nothing is wrong or missing in %s as it comes",
    async (file) => {
      const workbook = readWorkbook(await readFile(`sample-workbooks/${file}.xlsx`));
      expect(
        hindrances(
          new KnownWorkbook(workbook),
          () => undefined,
          () => undefined,
        ),
      ).toEqual([]);
    },
  );
});

describe("what a refusal calls the cells that a formula reads", () => {
  const why = (cells: Cells, refusal: DomainError, formula: string, others: Readonly<Record<string, Cells>> = {}) =>
    namedReason(
      new KnownWorkbook(book({ Lot: { ...cells, Z9: { formula, value: "#VALUE!" } }, ...others })),
      { sheet: "Lot", ...placeOf("Z9") },
      refusal.refusal,
    );
  const text = mustBe("panLoad", "a number", "350 g");
  const said = (name: string) => `${name} must be a number; got the text "350 g"`;

  test("the word at the left, the heading above, both in a book with names, or the address", () => {
    expect(why({ A2: "Pan load", B2: "350 g" }, text, "=TEA.CHARGECOUNT(900,B2)")).toBe(said("“Pan load”"));
    expect(why({ A2: "锅量", B2: "350 g" }, text, "=TEA.CHARGECOUNT(900,$B$2)")).toBe(said("“锅量”"));
    expect(why({ B2: "350 g" }, text, "=TEA.CHARGECOUNT(900,B2)")).toBe(said("B2"));
    const book: Cells = { A1: "Lot", B1: "Fresh, g", C1: "Load, g", A2: "L1", B2: 900, C2: 300, A3: "L2", B3: 800 };
    expect(why({ ...book, C3: "350 g" }, text, "=TEA.CHARGECOUNT(B3,C3)")).toBe(said("“Load, g of L2”"));
    const unnamed: Cells = { A1: "No.", B1: "Load, g", A2: 1, B2: "350 g" };
    expect(why(unnamed, text, "=TEA.CHARGECOUNT(900,B2)")).toBe(said("“Load, g”"));
    const form: Cells = { B1: "Value", C1: "Unit", A2: "Pan load", B2: "350 g", C2: "g" };
    expect(why(form, text, "=TEA.CHARGECOUNT(900,B2)")).toBe(said("“Pan load”"));
    const apart: Cells = { A1: "Rooms", B1: "Beds", A3: "Pan load", B3: "350 g" };
    expect(why(apart, text, "=TEA.CHARGECOUNT(900,B3)")).toBe(said("“Pan load”"));
  });

  test("on another sheet, inside another formula, and of two arguments at once", () => {
    const card = { Card: { A1: "Pan load", B1: "350 g", B2: 7 } };
    expect(why({}, text, '=IF(1=1,TEA.CHARGECOUNT(900,Card!B1),"")', card)).toBe(said("“Pan load”"));
    expect(why({}, mustBe("panLoad", "a number", 7), "=TEA.CHARGECOUNT(900,Card!B2)", card)).toBe(
      "Card B2 must be a number; got 7",
    );
    const two = mustBe("panLoad", { kind: "at most", most: 800, argument: "weight" }, 900);
    const cells: Cells = { A1: "Fresh leaf", B1: 800, A2: "Pan load", B2: 900 };
    expect(why(cells, two, "=TEA.CHARGECOUNT(B1,B2)")).toBe(
      "“Pan load” must be at most 800, the “Fresh leaf”; got 900",
    );
  });

  test("the cell where a number was typed that other formulas passed on", () => {
    const cells: Cells = { A1: "Most in a pan", B1: 76, A2: "Load", B2: { formula: "=B1", value: 76 } };
    const workbook = new KnownWorkbook(
      book({ Lot: { ...cells, Z9: { formula: "=TEA.CHARGECOUNT(900,B2)", value: "#VALUE!" } } }),
    );
    const spot = { sheet: "Lot", ...placeOf("Z9") };
    const reason = mustBe("panLoad", "a number", 76).refusal;
    expect(namedReason(workbook, spot, reason)).toBe("“Load” must be a number; got 76");
    expect(namedReason(workbook, spot, reason, { sheet: "Lot", ...placeOf("B1") })).toBe(
      "“Most in a pan” must be a number; got 76",
    );
  });

  test("a list by its heading, a name of the maker's by itself", () => {
    const cells: Cells = { A2: "Round", B2: "Target", A3: "one", B3: 0.6, A4: "two", B4: 0.7 };
    const rise = mustBe("targets", "a number", 0.7);
    expect(why(cells, rise, "=TEA.DRYINGSTEPS(900,0.76,B3:B4)")).toBe("“Target” must be a number; got 0.7");
    expect(why({}, text, "=TEA.CHARGECOUNT(900,PanLoad)")).toBe(said("“PanLoad”"));
  });

  test("the argument itself, where no single cell stands for it", () => {
    expect(why({ A2: "Pan load", B2: 350 }, text, "=TEA.CHARGECOUNT(900,B2*2)")).toBe(said("panLoad"));
    expect(why({ A2: "Pan load" }, text, '=TEA.CHARGECOUNT(900,"350 g")')).toBe(said("panLoad"));
    const twice = "=TEA.CHARGECOUNT(900,B2)+TEA.CHARGECOUNT(800,B3)";
    expect(why({ A2: "One", B2: "350 g", A3: "Other", B3: 300 }, text, twice)).toBe(said("panLoad"));
  });
});

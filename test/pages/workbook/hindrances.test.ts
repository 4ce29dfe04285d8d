import { readFile } from "node:fs/promises";
import { describe, expect, test } from "vitest";
import { type DomainError, mustBe } from "../../../src/core/errors";
import { moisture } from "../../../src/core/quantities";
import { hindrances, type Spot } from "../../../src/pages/workbook/hindrances";
import { hindranceAfterAddress, hindranceAtCell, waitsFor } from "../../../src/pages/workbook/words";
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
  hindrances(book(sheets), (spot) => {
    const error = refused[at(spot)];
    return error && { message: error.message, reason: error.refusal };
  });
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
    const refused = { "Lot!F5": mustBe("load", "a number", "350 g") };
    expect(said(sheets, refused)).toEqual([
      'Lot!B18, pan load wanted, holds the text “350 g”: F5 and 2 more cells wait for it. load must be a number; got the text "350 g"',
    ]);
    const [cause] = found(sheets, refused);
    expect(cause && hindranceAtCell(cause)).toBe(
      'This holds the text “350 g”: F5 and 2 more cells wait for it. load must be a number; got the text "350 g"',
    );
    expect(cause && waitsFor(cause, { sheet: "Lot", ...placeOf("F7") })).toBe(
      "waits for B18, pan load wanted, which holds the text “350 g”",
    );
  });

  test("a number that a function refuses is the cause; its neighbours are not", () => {
    const sheets = { Lot: { B1: 500, B2: 76, C1: { formula: "=TEA.WATER(B1,B2)", value: "#VALUE!" } } };
    expect(said(sheets, { "Lot!C1": mustBe("moisture", moisture.requirement, 76) })).toEqual([
      "Lot!B2 holds 76: C1 waits for it. moisture must be from 0 up to, not including, 1 (76% or 0.76); got 76",
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
      "Lot!B15 holds 76: G1 waits for it. moisture must be from 0 up to, not including, 1 (76% or 0.76); got 76",
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

  test("the samples as they come have no mistake in them", async () => {
    for (const file of ["one-lot", "season"]) {
      const workbook = await readWorkbook(await readFile(`sample-workbooks/${file}.xlsx`));
      expect(hindrances(workbook, () => undefined).filter(({ is }) => is !== "blank")).toEqual([]);
    }
  });
});

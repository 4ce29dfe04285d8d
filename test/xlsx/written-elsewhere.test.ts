/** A small book as other programs write it: read as they mean it, worked out to the same, and changed without a trace elsewhere. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { recalculated } from "../../src/command-line/recalc/recalculated";
import { changesOf } from "../../src/command-line/round-trip/changes";
import {
  differencesOfCells,
  differencesOfParts,
  differencesOfText,
} from "../../src/command-line/round-trip/differences";
import type { Cell } from "../../src/workbook/workbook";
import { englishNotShown } from "../../src/xlsx/english-remarks";
import { PatchableBook } from "../../src/xlsx/patch/patchable-book";
import { readFile } from "../../src/xlsx/read-workbook";

const folder = "test/xlsx/written-elsewhere";
const versions = JSON.parse(readFileSync(`${folder}/versions.json`, "utf8")) as Record<
  string,
  { readonly writer: string; readonly version: string; readonly by: string }
>;

test("each file has its writer, the version of it, and what it was written from", () => {
  const files = readdirSync(folder);
  expect(Object.keys(versions)).toEqual(files.filter((file) => file.endsWith(".xlsx")).sort());
  for (const { version, by } of Object.values(versions)) {
    expect(version).toMatch(/^\d+(\.\d+)+$/);
    expect(files).toContain(by);
  }
});

describe.each(Object.entries(versions))("%s", (file, { writer }) => {
  const bytes = new Uint8Array(readFileSync(`${folder}/${file}`));
  const { workbook, notShown } = readFile(bytes);
  const lots = workbook.sheets[0];
  const cells = new Map<string, Cell>(lots?.cells.map((cell) => [`${cell.row},${cell.column}`, cell]));
  const at = (row: number, column: number) => cells.get(`${row},${column}`);
  const valuesIn = (row: number) => [0, 1, 2, 3].map((column) => at(row, column)?.value);

  test("has its values: days as numbers, digits that are text, letters of elsewhere, truth and an error", () => {
    expect(workbook.sheets.map(({ name, isHidden }) => [name, isHidden])).toEqual([
      ["Lots", undefined],
      ["Old book", true],
    ]);
    expect([1, 2, 3].map(valuesIn)).toEqual([
      ["a1", 45_386, 812.5, 178.75],
      ["a2", 45_387, 900, 198],
      ["a3", 45_388, 1040, undefined],
    ]);
    expect(at(1, 1)?.style?.format?.replaceAll("\\", "")).toBe("yyyy-mm-dd");
    expect(valuesIn(7)).toEqual(["007", "茶青 & <tea>", true, "#N/A"]);
  });

  test("has its formulas, and works them out to what the writer made of them", async () => {
    expect([1, 2, 3].map((row) => at(row, 4)?.formula)).toEqual(
      [2, 3, 4].map((row) => `=IF(D${row}="","",D${row}/C${row})`),
    );
    expect(at(5, 2)?.formula).toBe("=SUM(C2:C5)");
    expect(at(7, 4)?.formula).toBe("=usual*2");
    expect(workbook.names).toEqual([{ name: "usual", formula: "=Lots!$C$2" }]);
    const { sheets } = await recalculated(bytes, { set: [], keepsChanging: true });
    const changed = sheets.flatMap((sheet) => sheet.changed).map(({ at, now }) => [at, now]);
    // 178.75 / 812.5 = 198 / 900 = 0.22; 812.5 + 900 + 1040 = 2752.5. One of the writers stores no results.
    const all = [
      ["Lots!E2", 0.22],
      ["Lots!E3", 0.22],
      ["Lots!C6", 2752.5],
      ["Lots!E8", 1625],
    ];
    expect(changed).toEqual(writer === "openpyxl" ? all : []);
  });

  test("has its looks, notes, links and merges, and says what the page does not show", () => {
    expect(at(5, 0)?.style).toMatchObject({ bold: true, color: "#2e5e4e" });
    expect(at(5, 2)?.style?.fill).toBe("#f7efd3");
    expect(at(1, 4)?.style?.format).toBe("0.0%");
    expect(at(8, 1)?.note).toContain("Weighed again on Friday.");
    expect(lots?.links).toEqual([
      { area: { row: 8, column: 0, rows: 1, columns: 1 }, address: "https://farm.example/pan" },
    ]);
    expect(lots?.merges).toEqual([{ row: 8, column: 2, rows: 2, columns: 2 }]);
    expect(lots?.columnWidths[1]).toBeGreaterThan(12);
    const others = writer === "LibreOffice" ? [] : [/data validation \(Lots!C2/, /conditional formats \(Lots!E2:E4\)/];
    for (const words of others) expect(notShown.some((each) => words.test(englishNotShown(each)))).toBe(true);
    if (writer === "openpyxl") {
      expect(lots?.tables).toEqual([{ name: "Book", area: { row: 0, column: 0, rows: 4, columns: 5 } }]);
      // It hangs on one cell alone, which the page has no place for.
      expect(notShown.map(englishNotShown)).toContain("other kinds of charts");
    }
    if (writer === "LibreOffice") {
      expect(at(10, 0)).toMatchObject({ formula: "=C2:C3*2", value: 1625 });
      expect(at(11, 0)?.value).toBe(1800);
    }
  });

  test("is saved with changes, and nothing else moves", () => {
    const book = new PatchableBook(bytes);
    const edits = changesOf(workbook, book);
    expect(edits.length).toBeGreaterThanOrEqual(3);
    const after = book.saved(edits);
    const edited = new Map([[book.pathOf("Lots"), edits.filter(({ sheet }) => sheet === "Lots")]]);
    const saved = { before: bytes, after, edited };
    expect(differencesOfParts(saved)).toEqual([]);
    expect(differencesOfText(saved)).toEqual([]);
    expect(differencesOfCells(workbook, readFile(after).workbook, edits)).toEqual([]);
  });
});

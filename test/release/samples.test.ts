import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { faultsOfSample, staleSamples } from "../../src/release/samples";
import { writeSamples } from "../../src/sample-books/write-samples";
import type { Cell, Workbook } from "../../src/workbook/workbook";
import { readWorkbook } from "../../src/xlsx/read-workbook";
import { writeWorkbook } from "../../src/xlsx/write-workbook";

const built = mkdtempSync(join(tmpdir(), "tea-samples-"));
const committed = mkdtempSync(join(tmpdir(), "tea-committed-"));

const workbook = (...cells: Cell[]): Workbook => ({
  name: "Sample",
  sheets: [{ name: "Lot", cells, columnWidths: {}, rowHeights: {}, merges: [] }],
});
const bookOf = (...cells: Cell[]): Promise<Uint8Array> => writeWorkbook(workbook(...cells));

afterAll(() => {
  rmSync(built, { recursive: true });
  rmSync(committed, { recursive: true });
});

test("the samples are built, and those that were committed otherwise, or not at all, are named", async () => {
  const names = ["lot.xlsx", "zh/season.xlsx"];
  const written = await writeSamples(built, {
    "lot.xlsx": () => workbook({ row: 0, column: 0, formula: "=TEA.TARGETWEIGHT(320,0.75,0.6)" }),
    // Calls a function that has no named formula: there is none of it without the add-in.
    "zh/season.xlsx": () => workbook({ row: 0, column: 0, formula: "=TEA.PACKPLAN(500,100)" }),
  });
  expect(written).toEqual(["lot.xlsx", "without-the-add-in/lot.xlsx", "zh/season.xlsx"]);
  const [sheet] = readWorkbook(new Uint8Array(readFileSync(join(built, "lot.xlsx")))).sheets;
  expect(sheet?.cells[0]?.value).toBeCloseTo(200, 9);

  expect(await staleSamples(names, { committed, built })).toEqual(names);
  cpSync(built, committed, { recursive: true });
  expect(await staleSamples(names, { committed, built })).toEqual([]);
  writeFileSync(join(committed, "zh/season.xlsx"), await bookOf({ row: 0, column: 0, value: 1 }));
  expect(await staleSamples(names, { committed, built })).toEqual(["zh/season.xlsx"]);
});

test("a sample opens and calculates, also with functions of ours and with errors that it shows", async () => {
  const sound = await bookOf(
    { row: 0, column: 0, value: 320 },
    { row: 0, column: 1, formula: "=TEA.TARGETWEIGHT(A1,0.75,0.6)", value: 200 },
    { row: 1, column: 0, formula: "=1/0", value: "#DIV/0!" },
    { row: 2, column: 0, value: "#N/A", isText: true },
  );
  expect(await faultsOfSample(sound)).toEqual([]);
});

test.each([
  ["a function that nobody has", "=TEA.LOST(1)", "#NAME?"],
  ["a refusal", "=TEA.TARGETWEIGHT(320,75,0.6)", "#VALUE!"],
  ["a value that is not there", "=NA()", "#N/A"],
  ["a division", "=1/0", "#DIV/0!"],
])("%s is found where the sample shows a number", async (_, formula, error) => {
  const place = `Lot, row 2, column 3 (${formula})`;
  expect(await faultsOfSample(await bookOf({ row: 1, column: 2, formula, value: 200 }))).toEqual([
    `${place} calculates to ${error}`,
  ]);
});

test("what is no workbook is found", async () => {
  expect(await faultsOfSample(new Uint8Array([1, 2, 3]))).toEqual([expect.stringContaining("not an .xlsx workbook")]);
});

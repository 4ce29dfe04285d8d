import { readFile } from "node:fs/promises";
import { strFromU8, unzipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import { differencesOfText } from "../../src/command-line/round-trip/differences";
import type { Grid } from "../../src/pages/workbook/grid";
import { Archive, type Entry } from "../../src/xlsx/container/archive";
import type { Edit } from "../../src/xlsx/patch/edit";
import { readWorkbook } from "../../src/xlsx/read-workbook";
import { shown, typeOver, untilReady } from "../browser/workbook-driver";
import { workbookVisits } from "../browser/workbook-visits";
import { bookWithNames } from "../xlsx/book-with-names";

const found = await findBrowser();
const patience = { timeout: 30_000 };

describe.skipIf(!found)("a file with names and table references", { timeout: 180_000 }, () => {
  const visits = workbookVisits(found);

  test("opens, follows what is typed, is kept over a reload, and is downloaded with both", async () => {
    const { page, end } = await visits.begin();
    const given = await bookWithNames();
    await page.setInputFiles("#file", { name: "book.xlsx", mimeType: "", buffer: Buffer.from(given) });
    const question = await page.textContent(".question p");
    expect(question).toContain("Kept in the file, but not shown here: names gone; working out of the names above.");
    await page.getByRole("button", { name: "Open it" }).click();
    await page.waitForURL(/workbook=own-file/);
    await untilReady(page);
    expect(await shown(page, "Sums", "A2")).toBe("1.5");
    await typeOver(page, "Lots", "B2", "500");
    await expect.poll(() => shown(page, "Sums", "A1"), patience).toBe("2700");
    await expect.poll(() => shown(page, "Sums", "A6"), patience).toBe("501");
    await page.waitForTimeout(1000);
    await page.reload();
    await untilReady(page);
    await expect.poll(() => shown(page, "Sums", "A1"), patience).toBe("2700");
    const [download] = await Promise.all([page.waitForEvent("download"), page.click("#download")]);
    expect(download.suggestedFilename()).toBe("book.xlsx");
    const saved = await readFile(await download.path());
    const { names, sheets } = readWorkbook(saved);
    // The cells that follow from the typed one are on both sheets; of every other part the bytes are the same.
    const [before, after] = [new Archive(given), new Archive(new Uint8Array(saved))];
    const changed = before.entries.filter((entry) => {
      const now = after.entry(entry.path);
      return !now || !Buffer.from(raw(before, entry)).equals(raw(after, now));
    });
    expect(changed.map(({ path }) => path)).toEqual(["xl/worksheets/sheet1.xml", "xl/worksheets/sheet2.xml"]);
    expect(differencesOfText({ before: given, after: new Uint8Array(saved), edited: editedCells })).toEqual([]);
    expect(names).toContainEqual({ name: "usual", formula: "=0.5+0.25" });
    expect(names).toContainEqual({ name: "here", formula: "=Lots!$B$2", sheet: "Sums" });
    expect(sheets[1]?.cells.slice(0, 2)).toMatchObject([
      { formula: "=SUM(Lots[fresh])", value: 2700 },
      { formula: "=usual*2", value: 1.5 },
    ]);
    // 176/500.
    const share = sheets[0]?.cells.find(({ row, column }) => row === 1 && column === 3);
    expect(share).toMatchObject({ formula: "=Lots[[#This Row],[made]]/Lots[[#This Row],[fresh]]", value: 0.352 });
    await end();
  });

  test("with named formulas of ours works these out, lists none of them, and keeps its names", async () => {
    const { page, end } = await visits.begin();
    const given = new Uint8Array(await readFile("sample-workbooks/without-the-add-in/one-lot.xlsx"));
    await page.setInputFiles("#file", { name: "lot.xlsx", mimeType: "", buffer: Buffer.from(given) });
    expect(await page.textContent(".question")).not.toContain("TEA_");
    await page.getByRole("button", { name: "Open it" }).click();
    await page.waitForURL(/workbook=own-file/);
    await untilReady(page);
    const outturn = () =>
      page.evaluate(() => {
        const { sheets } = (globalThis as unknown as { workbookGrid: Grid }).workbookGrid.workbook();
        return sheets[0]?.cells.find(({ formula }) => formula === "=TEA_OUTTURN(B9,B13)")?.value;
      });
    const before = await outturn();
    expect(typeof before).toBe("number");
    // The fresh weight.
    await typeOver(page, "Lot", "B9", "1500");
    await expect.poll(outturn, patience).not.toBe(before);
    expect(typeof (await outturn())).toBe("number");
    const [download] = await Promise.all([page.waitForEvent("download"), page.click("#download")]);
    const saved = new Uint8Array(await readFile(await download.path()));
    const namesIn = (file: Uint8Array) =>
      /<definedNames>.*<\/definedNames>/s.exec(strFromU8(unzipSync(file)["xl/workbook.xml"] ?? new Uint8Array()))?.[0];
    expect(namesIn(saved)).toBe(namesIn(given));
    expect(formulasOf(saved)).toEqual(formulasOf(given));
    await end();
  });

  test("is refused what would move its cells about, with the reason", async () => {
    const { page, end } = await visits.begin();
    await page.setInputFiles("#file", { name: "book.xlsx", mimeType: "", buffer: Buffer.from(await bookWithNames()) });
    await page.getByRole("button", { name: "Open it" }).click();
    await page.waitForURL(/workbook=own-file/);
    await untilReady(page);
    const done = await page.evaluate(() => {
      const { api } = (globalThis as unknown as { workbookGrid: { api: InsertingApi } }).workbookGrid;
      return api.executeCommand("sheet.command.insert-row-before").catch(() => false);
    });
    expect(done).toBe(false);
    expect(await page.textContent("#status")).toContain(
      "In a file of your own, cells are changed and nothing is moved",
    );
    const heading = await shown(page, "Lots", "A1");
    await typeOver(page, "Lots", "A1", "batch");
    await expect.poll(() => page.textContent("#status"), patience).toContain("Lots!A1 is a heading of the table Lots");
    expect(await shown(page, "Lots", "A1")).toBe(heading);
    await end();
  });
});

const formulasOf = (file: Uint8Array): string[] =>
  readWorkbook(file).sheets.flatMap(({ cells }) => cells.flatMap(({ formula }) => formula ?? []));

interface InsertingApi {
  executeCommand(id: string): Promise<boolean>;
}

const raw = ({ bytes }: Archive, { localAt, dataAt, packedSize }: Entry): Uint8Array =>
  bytes.subarray(localAt, dataAt + packedSize);

const at = (row: number, column: number): Edit => ({ sheet: "", row, column });
/** The typed weight and its share; sums of the weights, and what is made of them. */
const editedCells = new Map([
  ["xl/worksheets/sheet1.xml", [at(1, 1), at(1, 3)]],
  ["xl/worksheets/sheet2.xml", [at(0, 0), at(3, 0), at(5, 0), at(6, 0)]],
]);

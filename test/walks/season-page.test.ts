import { readFile } from "node:fs/promises";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import { readWorkbook } from "../../src/xlsx/read-workbook";
import { shown, typeOver, untilReady } from "../browser/workbook-driver";
import { type Visit, workbookVisits } from "../browser/workbook-visits";

const found = await findBrowser();
const patience = { timeout: 30_000 };

describe.skipIf(!found)("the season on the workbook page", () => {
  const visits = workbookVisits(found);
  let visit: Visit;
  let page: Page;

  beforeAll(async () => {
    visit = await visits.begin();
    page = visit.page;
  });
  afterAll(() => visit?.end());

  test("opens beside the first workbook, and keeps its own work", async () => {
    expect(await page.locator("#workbooks a").allTextContents()).toEqual(["One lot", "Season"]);
    await page.click("#workbooks a:has-text('Season')");
    await page.waitForURL(/workbook=season/);
    await untilReady(page);
    expect(await page.textContent("#workbooks a[aria-current]")).toBe("Season");
    expect(await shown(page, "Season", "E12")).toBe("total");
    expect(await shown(page, "Proof", "C3")).toBe("every answer agrees to nine decimals");

    const before = await shown(page, "Season", "G21");
    await typeOver(page, "Season", "B21", "1500");
    await expect.poll(() => shown(page, "Season", "G21"), patience).not.toBe(before);
    await expect.poll(() => page.textContent("#status"), patience).toContain("Kept in this browser");

    await page.click("#workbooks a:has-text('One lot')");
    await page.waitForURL(/workbook=one-lot/);
    await untilReady(page);
    expect(await shown(page, "Lot", "F5")).toBe("4");
  });

  test("is downloaded after another visit with its table, its charts and what was typed", async () => {
    await page.click("#workbooks a:has-text('Season')");
    await page.waitForURL(/workbook=season/);
    await untilReady(page);
    expect(await shown(page, "Season", "B21")).toBe("1500.0");
    const [download] = await Promise.all([page.waitForEvent("download"), page.click("#download")]);
    const there = readWorkbook(await readFile(await download.path()));
    const sample = readWorkbook(await readFile("sample-workbooks/season.xlsx"));
    expect(there.sheets.map(({ tables }) => tables)).toEqual(sample.sheets.map(({ tables }) => tables));
    expect(there.sheets.map(({ charts }) => charts)).toEqual(sample.sheets.map(({ charts }) => charts));
    expect(there.sheets[1]?.cells.find(({ row, column }) => row === 20 && column === 1)?.value).toBe(1500);
  });
});

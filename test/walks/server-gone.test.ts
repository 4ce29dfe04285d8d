/** The program that serves the page has ended: what is on the screen can still be saved, and nothing is a dead button. */
import { readFile } from "node:fs/promises";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import { readWorkbook } from "../../src/xlsx/read-workbook";
import { shown, typeOver } from "../browser/workbook-driver";
import { workbookVisits } from "../browser/workbook-visits";

const found = await findBrowser();
const patience = { timeout: 20_000 };

describe.skipIf(!found)("once nobody serves the workbook page", () => {
  const visits = workbookVisits(found);
  let page: Page;
  const status = () => page.textContent("#status");

  beforeAll(async () => {
    const visit = await visits.begin();
    page = visit.page;
    await page.waitForSelector("html[data-fetched]", { timeout: 60_000, state: "attached" });
    // Cached files do not come from the server either.
    await page.route("**/*", (route) => route.abort("connectionrefused"));
  });
  afterAll(() => page?.context().close());

  test("work is kept, downloaded and printed", async () => {
    await typeOver(page, "Lot", "B9", "1300");
    await expect.poll(status, patience).toContain("Kept in this browser");
    const [download] = await Promise.all([page.waitForEvent("download"), page.click("#download")]);
    const workbook = readWorkbook(await readFile(await download.path()));
    const cells = workbook.sheets.find(({ name }) => name === "Lot")?.cells ?? [];
    expect(cells.find(({ row, column }) => row === 8 && column === 1)?.value).toBe(1300);
    await page.evaluate(() =>
      Object.assign(window, { print: () => document.body.setAttribute("data-printed", "yes") }),
    );
    await page.click("#print");
    await page.waitForSelector("[data-printed] #paper table", { state: "attached" });
  });

  test("a job is opened and every part of the pane", async () => {
    await page.click("#pane-button");
    await page.waitForSelector("#pane .jobs");
    for (const tab of await page.locator("#pane [role=tab]").all()) {
      await tab.click();
      await expect.poll(() => page.locator("#pane [role=tabpanel]").textContent(), patience).not.toBe("");
    }
    expect(await status()).not.toContain("could not be fetched");
  });

  test("another workbook is not opened, in words, and the one here stays", async () => {
    const before = await shown(page, "Lot", "B9");
    await page.click("#workbooks a:not([aria-current])");
    await expect.poll(status, patience).toContain("Nobody serves this page any more");
    await page.click("#menu summary");
    await page.click("#back");
    await page.click("dialog button:has-text('Start afresh')");
    await expect.poll(status, patience).toContain("Nobody serves this page any more");
    await page.setInputFiles("#file", "sample-workbooks/season.xlsx");
    await expect.poll(status, patience).toContain("Nobody serves this page any more");
    expect(await shown(page, "Lot", "B9")).toBe(before);
  });
});

import { readFile } from "node:fs/promises";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import type { Grid } from "../../src/pages/workbook/grid";
import { readWorkbook } from "../../src/xlsx/read-workbook";
import { select, shown, typeOver } from "../browser/workbook-driver";
import { type Visit, workbookVisits } from "../browser/workbook-visits";

declare const workbookGrid: Grid;

const found = await findBrowser();
const patience = { timeout: 30_000, interval: 200 };

describe.skipIf(!found)("the charts of a workbook on its page", () => {
  const visits = workbookVisits(found);
  let visit: Visit;
  let page: Page;

  beforeAll(async () => {
    visit = await visits.begin(undefined, undefined, "season");
    page = visit.page;
  });
  afterAll(() => visit?.end());

  const chart = (index: number) => page.locator(".chart[role=img]").nth(index);
  const words = (index: number) => chart(index).getAttribute("aria-label");
  const goTo = (cell: string) =>
    page.evaluate(
      (row) => workbookGrid.api.getActiveWorkbook()?.getActiveSheet().scrollToCell(row, 0),
      Number(cell) - 1,
    );

  test("are drawn over the cells that they lie over, and scroll with them", async () => {
    await select(page, "Season", "A1");
    await goTo("20");
    await expect.poll(() => page.locator(".chart svg").count(), patience).toBe(2);
    /** How far the chart lies from row 24, as the heights of the rows between it and the first one in sight have it. */
    const corners = (first: number) =>
      page.evaluate((first) => {
        const sheet = workbookGrid.api.getActiveWorkbook()?.getActiveSheet();
        let y = document.querySelector(".charts")?.getBoundingClientRect().y ?? 0;
        for (let row = first - 1; row < 23; row += 1) y += sheet?.getRowHeight(row) ?? 0;
        return Math.abs((document.querySelector(".chart")?.getBoundingClientRect().y ?? 0) - y);
      }, first);
    await expect.poll(() => corners(20), patience).toBeLessThan(2);
    await goTo("22");
    await expect.poll(() => corners(22), patience).toBeLessThan(2);
    // Headings stay free.
    await goTo("30");
    const top = await page.evaluate(() => document.querySelector(".charts")?.getBoundingClientRect().y ?? 0);
    await expect.poll(async () => (await chart(0).boundingBox())?.y ?? top, patience).toBeLessThan(top);
    // A click goes through to the cell below.
    await goTo("20");
    await page.waitForTimeout(300);
    const box = await chart(1).boundingBox();
    await page.mouse.click((box?.x ?? 0) + 30, (box?.y ?? 0) + 36);
    const selected = () =>
      page.evaluate(() => workbookGrid.api.getActiveWorkbook()?.getActiveRange()?.getA1Notation() ?? "");
    await expect.poll(selected, patience).toMatch(/^I2[56]$/);
  });

  test("leave the scrollbars in sight, for the mouse to drag", async () => {
    await goTo("1");
    await page.evaluate(() => workbookGrid.api.getActiveWorkbook()?.getActiveSheet().zoom(1.5));
    await goTo("24");
    const over = () => page.locator(".charts").boundingBox();
    const sheet = await page.locator("#grid canvas[id^=univer-sheet-main-canvas]").boundingBox();
    const free = async () => {
      const box = await over();
      if (!box || !sheet) return [0, 0];
      return [sheet.x + sheet.width - box.x - box.width, sheet.y + sheet.height - box.y - box.height];
    };
    await expect.poll(async () => Math.min(...(await free())), patience).toBeGreaterThanOrEqual(8);
    // The charts reach farther than that on their own.
    const [first, last] = [await chart(0).boundingBox(), await chart(1).boundingBox()];
    expect((last?.x ?? 0) + (last?.width ?? 0)).toBeGreaterThan((sheet?.x ?? 0) + (sheet?.width ?? 0));
    expect((first?.y ?? 0) + (first?.height ?? 0)).toBeGreaterThan((sheet?.y ?? 0) + (sheet?.height ?? 0));

    const firstRow = () =>
      page.evaluate(() => workbookGrid.api.getActiveWorkbook()?.getActiveSheet().getScrollState().sheetViewStartRow);
    await goTo("1");
    await expect.poll(firstRow, patience).toBe(0);
    const box = await over();
    const [x, y] = [(sheet?.x ?? 0) + (sheet?.width ?? 0) - 5, (box?.y ?? 0) + 12];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x, y + 100, { steps: 5 });
    await page.mouse.up();
    await expect.poll(firstRow, patience).toBeGreaterThan(5);
    await page.evaluate(() => workbookGrid.api.getActiveWorkbook()?.getActiveSheet().zoom(1));
    await goTo("20");
  });

  test("say what they show, and follow the numbers", async () => {
    expect(await words(0)).toContain("Outturn by day of picking.");
    expect(await words(1)).toContain("Wall 7.6");
    const before = await words(1);
    await typeOver(page, "Season", "B7", "90");
    await expect.poll(() => words(1), patience).not.toBe(before);
    await page.evaluate(() => workbookGrid.api.undo());
    await expect.poll(() => words(1), patience).toBe(before);
  });

  test("are not on the other sheets", async () => {
    await select(page, "Lots", "A1");
    await expect.poll(() => page.locator(".chart:visible").count(), patience).toBe(0);
  });

  test("follow rows with the table, and a download has both where they belong", async () => {
    const places = () =>
      page.evaluate(() =>
        workbookGrid
          .workbook()
          .sheets.map(({ tables, charts, page }) => ({ tables, charts, printed: page?.printArea })),
      );
    const before = await places();
    const rows = (action: "insert" | "delete", row: number) =>
      page.evaluate(
        ([action, row]) => {
          const sheet = workbookGrid.api.getActiveWorkbook()?.getSheetByName("Lots");
          if (action === "insert") sheet?.insertRowsBefore(row, 1);
          else sheet?.deleteRows(row, 1);
        },
        [action, row] as const,
      );
    const tableRows = async () => (await places())[0]?.tables?.[0]?.area.rows;

    // The first lot, one in the middle, the last row of the table; then one more in the middle.
    await rows("delete", 1);
    await expect.poll(tableRows, patience).toBe(120);
    await rows("delete", 40);
    await expect.poll(tableRows, patience).toBe(119);
    await rows("delete", 118);
    await expect.poll(tableRows, patience).toBe(118);
    await rows("insert", 30);
    await expect.poll(tableRows, patience).toBe(119);
    await expect.poll(() => shown(page, "Proof", "C3"), patience).toBe("every answer agrees to nine decimals");
    const sheets = await page.evaluate(() => workbookGrid.workbook().sheets);
    const errors = sheets.flatMap(({ name, cells }) =>
      cells
        .filter(({ value }) => typeof value === "string" && /^#(REF|VALUE|NAME|DIV|NUM|NULL)/.test(value))
        .map(({ value }) => `${name} ${value}`),
    );
    expect(errors).toEqual([]);

    const [download] = await Promise.all([page.waitForEvent("download"), page.click("#download")]);
    const there = readWorkbook(await readFile(await download.path()));
    expect(there.sheets[0]?.tables).toEqual([
      { name: "Lots_of_spring", area: { row: 0, column: 0, rows: 119, columns: 6 } },
    ]);
    expect(there.sheets.map(({ charts }) => charts)).toEqual((await places()).map(({ charts }) => charts));

    for (let step = 0; step < 4; step += 1) await page.evaluate(() => workbookGrid.api.undo());
    await expect.poll(places, patience).toEqual(before);
  });

  test("stand lower when rows are put in above them", async () => {
    await select(page, "Season", "A1");
    await page.evaluate(() => workbookGrid.api.getActiveWorkbook()?.getActiveSheet().insertRowsBefore(17, 2));
    const area = () => page.evaluate(() => workbookGrid.workbook().sheets[1]?.charts?.map((chart) => chart.area.row));
    await expect.poll(area, patience).toEqual([25, 25]);
    await page.evaluate(() => workbookGrid.api.undo());
    await expect.poll(area, patience).toEqual([23, 23]);
  });
});

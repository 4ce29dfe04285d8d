import type { Page } from "playwright-core";
import { beforeEach, describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import type { Grid } from "../../src/pages/workbook/grid";
import { placeOf } from "../../src/workbook/addresses";
import { select, typeOver } from "../browser/workbook-driver";
import { workbookVisits } from "../browser/workbook-visits";

declare const workbookGrid: Grid;

const found = await findBrowser();
const patience = { timeout: 20_000 };

describe.skipIf(!found)("the notes of cells", () => {
  const visits = workbookVisits(found);
  let page: Page;

  beforeEach(async () => {
    const visit = await visits.begin();
    ({ page } = visit);
    return visit.end;
  });

  /** Value and note of a cell of Lot, as they are kept. */
  const kept = (cell: string) =>
    page.evaluate(({ row, column }) => {
      const cells = workbookGrid.workbook().sheets[0]?.cells;
      const found = cells?.find((each) => each.row === row && each.column === column);
      return { value: found?.value, note: found?.note };
    }, placeOf(cell));
  const valueIn = async (cell: string) => (await kept(cell)).value;

  test("stay when a value is deleted, comes back, goes again and is typed anew", async () => {
    const before = await kept("B12");
    expect(before.note).toBeTruthy();
    await select(page, "Lot", "B12");
    await page.keyboard.press("Delete");
    await expect.poll(() => kept("B12"), patience).toEqual({ value: undefined, note: before.note });
    await page.keyboard.press("Control+z");
    await expect.poll(() => kept("B12"), patience).toEqual(before);
    await page.keyboard.press("Control+y");
    await expect.poll(() => kept("B12"), patience).toEqual({ value: undefined, note: before.note });
    await typeOver(page, "Lot", "B12", "800");
    await expect.poll(() => kept("B12"), patience).toEqual({ value: 800, note: before.note });
  });

  test("stay when Backspace empties a cell, and when everything of a cell is cleared", async () => {
    const { note } = await kept("B12");
    await select(page, "Lot", "B12");
    await page.keyboard.press("Backspace");
    await page.keyboard.press("Enter");
    await expect.poll(async () => (await valueIn("B12")) || undefined, patience).toBeUndefined();
    expect((await kept("B12")).note).toBe(note);
    await page.evaluate(() => workbookGrid.api.executeCommand("sheet.command.clear-selection-all"));
    await page.evaluate(() => workbookGrid.api.getActiveWorkbook()?.getActiveSheet().getRange("B13").clear());
    await expect.poll(() => valueIn("B13"), patience).toBeUndefined();
    expect((await kept("B13")).note).toBeTruthy();
  });

  test("stay when something is pasted over, and do not come along with what is copied", async () => {
    const { note } = await kept("B12");
    await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
    await select(page, "Lot", "B9");
    await page.keyboard.press("Control+c");
    await page.waitForTimeout(300);
    await select(page, "Lot", "B12");
    await page.keyboard.press("Control+v");
    await expect.poll(() => kept("B12"), patience).toEqual({ value: 1240, note });
    await select(page, "Lot", "B24");
    await page.keyboard.press("Control+v");
    await expect.poll(() => kept("B24"), patience).toEqual({ value: 1240, note: undefined });
    await page.keyboard.press("Control+z");
    await expect.poll(() => valueIn("B24"), patience).toBe(0.31);
  });
});

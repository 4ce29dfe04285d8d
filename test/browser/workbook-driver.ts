import type { Page } from "playwright-core";
import type { Grid } from "../../src/pages/workbook/grid";
import { addressOf, placeOf } from "../../src/workbook/addresses";

declare const workbookGrid: Grid;

/** Goes to the page and waits until the workbook is calculated. */
export async function openWorkbook(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await untilReady(page);
}

export async function untilReady(page: Page): Promise<void> {
  await page.waitForSelector("html[data-ready]", { timeout: 60_000 });
}

/** What a cell shows. */
export const shown = (page: Page, sheet: string, cell: string): Promise<string> =>
  page.evaluate(([sheet, { row, column }]) => workbookGrid.shown(sheet, row, column), [sheet, placeOf(cell)] as const);

/** What a cell holds, unrounded; undefined for a blank. */
export const value = (page: Page, sheet: string, cell: string): Promise<number | string | boolean | undefined> =>
  page.evaluate(
    ([name, { row, column }]) => {
      const sheet = workbookGrid.api.getActiveWorkbook()?.getSheetByName(name);
      if (!sheet) throw new Error(`there is no sheet "${name}"`);
      return workbookGrid.value(sheet.getSheetId(), row, column);
    },
    [sheet, placeOf(cell)] as const,
  );

/** What every cell of a sheet holds, by address, results of formulas included. */
export async function values(page: Page, sheet: string): Promise<Map<string, number | string | boolean>> {
  const cells = await page.evaluate(
    (sheet) => workbookGrid.workbook().sheets.find(({ name }) => name === sheet)?.cells ?? [],
    sheet,
  );
  return new Map(
    cells.flatMap(({ row, column, value }) => (value === undefined ? [] : [[addressOf(row, column), value]])),
  );
}

let clicks = 0;

/**
 * Gives the grid the keyboard with a click, then selects a cell in it. Two clicks soon after each other on one spot are
 * a double click, which opens a cell to be typed into: each goes to another spot than the last.
 */
export async function select(page: Page, sheet: string, cell: string): Promise<void> {
  clicks += 1;
  const position = { x: 100 + 60 * (clicks % 3), y: 60 };
  await page.locator("#grid canvas[id^=univer-sheet-main-canvas]").click({ position, delay: 50 });
  await page.evaluate(
    ([name, { row, column }]) => {
      const book = workbookGrid.api.getActiveWorkbook();
      const sheet = book?.getSheetByName(name);
      if (!book || !sheet) throw new Error(`there is no sheet "${name}"`);
      if (book.getActiveSheet().getSheetId() !== sheet.getSheetId()) book.setActiveSheet(sheet);
      sheet.getRange(row, column).activate();
    },
    [sheet, placeOf(cell)] as const,
  );
  await page.waitForTimeout(200);
}

/** Types over a cell as a maker does. */
export async function typeOver(page: Page, sheet: string, cell: string, text: string): Promise<void> {
  await select(page, sheet, cell);
  await page.keyboard.type(text, { delay: 20 });
  await page.keyboard.press("Enter");
}

/** Where a cell is drawn, in the window, as long as nothing is scrolled. */
export const placeOfCell = (page: Page, cell: string) =>
  page.evaluate(({ row, column }) => {
    const range = workbookGrid.api.getActiveWorkbook()?.getActiveSheet().getRange(row, column);
    const frame = document.querySelector("#grid canvas[id^=univer-sheet-main-canvas]")?.getBoundingClientRect();
    if (!range || !frame) throw new Error("no sheet is on the screen");
    const { x, y, width, height } = range.getCellRect();
    return { x: x + frame.x, y: y + frame.y, width, height };
  }, placeOf(cell));

/** Which of these cells lie under a bubble. */
export async function coveredOf(page: Page, cells: readonly string[]): Promise<string[]> {
  const bubbles = await Promise.all((await page.locator(".bubble:visible").all()).map((each) => each.boundingBox()));
  const covered: string[] = [];
  for (const cell of cells) {
    const { x, y, width, height } = await placeOfCell(page, cell);
    const isUnder = bubbles.some(
      (each) =>
        each && each.x < x + width && x < each.x + each.width && each.y < y + height && y < each.y + each.height,
    );
    if (isUnder) covered.push(cell);
  }
  return covered;
}

import type { Page } from "playwright-core";
import { mayCallOurs } from "../core/describe";

declare const workbookGrid: { workbook(): { sheets: readonly { cells: readonly SeenCell[] }[] } };
interface SeenCell {
  readonly formula?: string;
  readonly value?: unknown;
}

/** Opens a page and waits for what it shows; false when it fails, or does not show it in time. */
async function shows(page: Page, address: string, selector: string, timeout: number): Promise<boolean> {
  const failed = page.waitForEvent("pageerror", { timeout }).then(
    () => false,
    () => false,
  );
  const response = await page.goto(address);
  if (!response?.ok()) return false;
  const shown = page.waitForSelector(selector, { timeout }).then(
    () => true,
    () => false,
  );
  return Promise.race([failed, shown]);
}

export async function faultsOfPane(page: Page, address: string): Promise<string[]> {
  const isThere = await shows(page, `${address}pane.html`, "#pane .jobs", 30_000);
  return isThere ? [] : ["pane.html does not show its jobs"];
}

export async function faultsOfWorkbook(page: Page, address: string): Promise<string[]> {
  const isThere = await shows(page, `${address}workbook/index.html`, "html[data-ready]", 120_000);
  if (!isThere) return ["workbook/index.html does not get ready"];
  const cells = await page.evaluate(() => workbookGrid.workbook().sheets.flatMap((sheet) => sheet.cells));
  const answers = cells.filter(({ formula }) => formula !== undefined && mayCallOurs(formula));
  const errors = answers.filter(({ value }) => value === undefined || /^#/.test(String(value)));
  return [
    ...(answers.length > 20 ? [] : [`the sample shows ${answers.length} cells with functions`]),
    ...errors.map(({ formula, value }) => `${formula} shows ${value}`),
  ];
}

export async function faultsOfPhone(page: Page, address: string, keptWithin: number): Promise<string[]> {
  const isThere = await shows(page, `${address}phone/index.html`, "#phone .jobs", 30_000);
  if (!isThere) return ["phone/index.html does not show its jobs"];
  const isKept = await page.evaluate(async (patience) => {
    const isActive = navigator.serviceWorker.ready.then(() => true);
    return Promise.race([isActive, new Promise<boolean>((done) => setTimeout(done, patience, false))]);
  }, keptWithin);
  return isKept ? [] : ["phone/index.html cannot be kept for use without a connection"];
}

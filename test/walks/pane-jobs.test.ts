import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import { pagePolicy } from "../../src/build/page-policy";
import type { Grid } from "../../src/pages/workbook/grid";
import { addressOf } from "../../src/workbook/addresses";
import { servedPage, sharedBrowser } from "../browser/shared-browser";
import { openWorkbook, typeOver } from "../browser/workbook-driver";

declare const workbookGrid: Grid;

const found = await findBrowser();
const patience = { timeout: 20_000 };

/** Each job with a field that is typed over, and another number that is then typed into its cell. */
const jobs = [
  { job: "charges", field: "weight", typed: "812", changed: "655" },
  { job: "scale", field: "weight", typed: "312", changed: "268" },
  { job: "moisture", field: "weightNow", typed: "377", changed: "351" },
  { job: "route", field: "weight", typed: "1010", changed: "880" },
  { job: "finished", field: "freshWeight", typed: "1205", changed: "1168" },
  { job: "turns", field: "interval", typed: "0:30", changed: "0:40" },
  { job: "day", field: "weight", typed: "1540", changed: "1130" },
  { job: "ready", field: "weight", typed: "415", changed: "424" },
  { job: "tins", field: "finishedWeight", typed: "1503.5", changed: "1290" },
  { job: "season", field: "freshWeights-1", typed: "1405", changed: "1290" },
  { job: "balance", field: "weights-3", typed: "447", changed: "455" },
  { job: "fit", field: "weights-3", typed: "449", changed: "454" },
] as const;

interface Inserted {
  readonly formula: string;
  /** What is shown, row by row. */
  readonly rows: string[][];
}

/** The answers that a sheet shows: every TEA formula with the cells that it fills. */
const answersIn = (page: Page, sheet: string): Promise<Inserted[]> =>
  page.evaluate((name) => {
    const cells = workbookGrid.workbook().sheets.find((each) => each.name === name)?.cells ?? [];
    return cells
      .filter(({ formula }) => formula?.startsWith("=TEA."))
      .map(({ row, column, formula = "", spill = { rows: 1, columns: 1 } }) => ({
        formula,
        rows: Array.from({ length: spill.rows }, (_, down) =>
          Array.from({ length: spill.columns }, (_, right) => workbookGrid.shown(name, row + down, column + right)),
        ),
      }));
  }, sheet);

/** What the pane promises, answer by answer: single numbers first, then tables. */
const preview = (page: Page): Promise<string[][][]> =>
  page.evaluate(() => {
    const all = (selector: string, inside: ParentNode = document) => [
      ...inside.querySelectorAll<HTMLElement>(selector),
    ];
    const text = (element: HTMLElement) => element.textContent ?? "";
    const singles = all("#pane .preview [role=status] .single strong").map((element) => [[text(element)]]);
    const tables = all("#pane .preview .answer table").map((table) =>
      all("tbody tr", table).map((row) => all("td", row).map(text)),
    );
    const lists = all("#pane .preview .times").map((list) => all("li", list).map((item) => [text(item)]));
    return [...singles, ...tables, ...lists];
  });

/** As plain text: without the unit behind a number, and without blanks. */
const bare = (text: string): string => text.replace(/^(-?[\d.,:]+) ?(%?).*$/, "$1$2").trim();

/** Answers without their order: the pane says single numbers first. */
const sorted = (answers: readonly (readonly (readonly string[])[])[]): string[] =>
  answers.map((rows) => JSON.stringify(rows.map((row) => row.map(bare)))).sort();

/** The answers in the sheet. Below its table a fit has a verdict, which the pane says in a sentence of its own. */
async function computed(page: Page, sheet: string, promised: readonly string[][][]): Promise<string[]> {
  const longest = Math.max(...promised.map(({ length }) => length));
  const answers = (await answersIn(page, sheet)).map(({ rows }) => rows.slice(0, longest));
  // One that waits for a reading shows nothing here, and says so in the pane.
  return sorted(answers.filter((rows) => rows.flat().some((text) => text !== "")));
}

/** Goes from field to field with the keyboard, as long as that takes. */
async function tabTo(page: Page, selector: string, key = "Tab"): Promise<void> {
  for (let step = 0; step < 150; step += 1) {
    if (await page.evaluate((selector) => document.activeElement?.matches(selector), selector)) return;
    await page.keyboard.press(key);
  }
  throw new Error(`the keyboard does not reach ${selector}`);
}

describe.skipIf(!found)("the pane beside the grid, 350 pixels wide", () => {
  let browser: Browser;
  let address: string;
  let visitor: BrowserContext;
  let page: Page;
  const strangers: string[] = [];
  const complaints: string[] = [];

  beforeAll(async () => {
    address = await servedPage();
    if (!found) return;
    browser = await sharedBrowser(found);
    visitor = await browser.newContext({ viewport: { width: 350, height: 800 } });
    visitor.on("request", (request) => {
      if (!/^(data|blob):/.test(request.url()) && !request.url().startsWith(address)) strangers.push(request.url());
    });
    page = await visitor.newPage();
    page.on("pageerror", (error) => complaints.push(error.message));
    page.on("console", (message) => {
      if (message.type() === "error") complaints.push(message.text());
    });
    await openWorkbook(page, address);
    await page.focus("#pane-button");
    await page.keyboard.press("Enter");
    await page.waitForSelector("#pane .jobs");
  });

  afterAll(() => visitor?.close());

  const tabs = () => page.locator("#pane [role=tab]").evaluateAll((all) => all.map(({ id }) => id));
  /** A sheet with nothing in it, which is then shown. */
  const addSheet = (name: string) =>
    page.evaluate((name) => {
      workbookGrid.api.getActiveWorkbook()?.insertSheet(name);
    }, name);

  /** From the list, with the keyboard alone. */
  const openJob = async (job: string) => {
    await page.focus("#pane-button");
    await tabTo(page, "#pane .back, #pane .jobs button");
    if (await page.locator("#pane .back").count()) {
      await page.keyboard.press("Enter");
      await page.waitForSelector("#pane .jobs");
      await page.focus("#pane-button");
    }
    await tabTo(page, `#open-${job}`);
    await page.keyboard.press("Enter");
    await page.waitForSelector("#pane form.job");
  };
  const type = async (field: string, text: string) => {
    await tabTo(page, `#${field}`);
    await page.keyboard.press("Control+a");
    await page.keyboard.type(text);
  };
  const write = async () => {
    await tabTo(page, "#pane .write .primary");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.textContent("#pane .write [role=status]"), patience).not.toBe("");
  };

  test.each(jobs)("$job is filled in, inserted and computed as promised, and follows its inputs", async (given) => {
    const { job, field, typed, changed } = given;
    const sheet = `Job ${job}`;
    await addSheet(sheet);
    await openJob(job);
    await type(`${job}-${field}`, typed);
    const promised = await preview(page);
    expect(promised.length, "answers").toBeGreaterThan(0);
    await write();
    expect(await page.textContent("#pane .write .done")).toContain(sheet);

    await expect.poll(() => computed(page, sheet, promised), patience).toEqual(sorted(promised));

    // The cell that holds what was typed is found by its value, and typed over as a maker does.
    const place = await page.evaluate(
      ([sheet, typed]) => {
        const cells = workbookGrid.workbook().sheets.find(({ name }) => name === sheet)?.cells ?? [];
        const number = typed.includes(":")
          ? typed.split(":").reduce((sum, part, index) => sum + Number(part) / (index === 0 ? 24 : 1440), 0)
          : Number(typed);
        return cells.find(
          ({ value, formula }) => formula === undefined && typeof value === "number" && Math.abs(value - number) < 1e-9,
        );
      },
      [sheet, typed] as const,
    );
    if (place === undefined) throw new Error(`no cell of the block holds ${typed}`);
    await typeOver(page, sheet, addressOf(place.row, place.column), changed);
    await page.focus(`#${job}-${field}`);
    await page.keyboard.press("Control+a");
    await page.keyboard.type(changed);
    const changedPromise = await preview(page);
    expect(changedPromise).not.toEqual(promised);
    await expect.poll(() => computed(page, sheet, changedPromise), patience).toEqual(sorted(changedPromise));
  });

  test("a filled cell is not written over before someone says so", async () => {
    await addSheet("Filled");
    await openJob("moisture");
    await page.evaluate(() => workbookGrid.api.getActiveWorkbook()?.getActiveSheet().getRange("B1").setValue("mine"));
    await tabTo(page, "#pane .write .primary");
    await page.keyboard.press("Enter");
    await page.waitForSelector("#pane dialog[open]");
    expect(await page.textContent("#filled-cells")).toContain("B1");
    await page.keyboard.press("Escape");
    await page.waitForSelector("#pane dialog", { state: "detached" });
    expect(await answersIn(page, "Filled")).toEqual([]);
    await tabTo(page, "#pane .write .primary");
    await page.keyboard.press("Enter");
    await page.waitForSelector("#pane dialog[open]");
    await tabTo(page, "#pane dialog .plain");
    await page.keyboard.press("Enter");
    await expect.poll(async () => (await answersIn(page, "Filled")).length, patience).toBe(1);
  });

  test("what a cell holds is shown as text and never run", async () => {
    await addSheet("Hostile");
    const hostile = `<img src=x onerror="document.title='run'"><script>document.title='run'</script>`;
    await page.evaluate((hostile) => {
      const sheet = workbookGrid.api.getActiveWorkbook()?.getActiveSheet();
      sheet?.getRange("A1").setValue({ v: hostile });
      sheet?.getRange("A2").setValue({ f: `="<b id=bold>"&"${hostile.replaceAll('"', '""')}"` });
      sheet?.getRange("A3").setValue({ f: "=TEA.TARGETWEIGHT(A1,75%,60%)" });
      sheet?.getRange("A1").activate();
    }, hostile);
    await openJob("moisture");
    await tabTo(page, "#moisture-startWeight");
    await page.keyboard.press("Control+Enter");
    await expect.poll(() => page.textContent("#pane output.reference"), patience).toContain("<img src=x");
    for (const tab of await tabs()) {
      await page.click(`#${tab}`);
      for (const cell of ["A1", "A2", "A3"]) {
        await page.evaluate((cell) => {
          workbookGrid.api.getActiveWorkbook()?.getActiveSheet().getRange(cell).activate();
        }, cell);
        await page.waitForTimeout(400);
      }
    }
    await page.click("#tab-jobs");
    expect(await page.title()).not.toBe("run");
    expect(await page.locator("#pane img, #pane script, #bold").count()).toBe(0);
    await page.click("#pane .back");
  });

  test("asks for nothing elsewhere, under a policy without inline scripts or eval, and nothing complains", async () => {
    expect(strangers).toEqual([]);
    expect(complaints).toEqual([]);
    const scripts = pagePolicy.split("; ").find((part) => part.startsWith("script-src"));
    expect(scripts).toBe("script-src 'self' 'wasm-unsafe-eval'");
    const served = await fetch(address);
    expect(served.headers.get("content-security-policy")).toBe(pagePolicy);
  });
});

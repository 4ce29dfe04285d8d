import type { Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import type { Block, CellPlace, WorkbookHost } from "../../src/host/workbook-host";
import type { Grid } from "../../src/pages/workbook/grid";
import { select, shown, typeOver, untilReady, value, values } from "../browser/workbook-driver";
import { workbookVisits } from "../browser/workbook-visits";

declare const workbookGrid: Grid;
declare const workbookHost: WorkbookHost;

const found = await findBrowser();
const patience = { timeout: 20_000 };

/** Below the sample's own cells: a heading, two inputs, a formula on them, one that spills, and an error. */
const at: CellPlace = { sheet: "Lot", row: 59, column: 1 };
const block: Block = {
  rows: 5,
  columns: 2,
  cells: [
    { row: 0, column: 0, content: "What should the scale read", look: "heading" },
    { row: 1, column: 0, content: "1/2", look: "label" },
    { row: 1, column: 1, content: 320, format: "0.0", look: "input" },
    { row: 2, column: 1, content: 0.75, format: "0.0%", look: "input" },
    { row: 3, column: 1, content: "=TEA.TARGETWEIGHT(C61,C62,60%)", format: "0.00", look: "answer" },
    { row: 4, column: 0, content: "=TEA.CHARGESPLIT(C61,85,,0.1)", format: "0.0", spill: { rows: 4, columns: 1 } },
    { row: 4, column: 1, content: "=TEA.TARGETWEIGHT(C61,75,60%)" },
  ],
};

describe.skipIf(!found)("the grid as the pane sees it", () => {
  const visits = workbookVisits(found);
  let page: Page;
  let fetched: readonly string[];
  let end: () => Promise<void>;

  beforeAll(async () => {
    ({ page, fetched, end } = await visits.begin());
  });
  afterAll(() => end?.());

  // The page is opened once: each test finds the pane closed, and nothing in the cells that tests write.
  beforeEach(async () => {
    await page.setViewportSize({ width: 1280, height: 800 });
    if (await page.isVisible("#pane")) await page.click("#pane-button");
    await page.evaluate(() => {
      const book = workbookGrid.api.getActiveWorkbook();
      for (const name of ["Load", "Usual"]) book?.deleteDefinedName(name);
      for (const area of ["B60:C70", "M60"]) book?.getSheetByName("Lot")?.getRange(area).clear();
    });
  });

  const openPane = async () => {
    await page.click("#pane-button");
    await page.waitForSelector("#pane button");
  };
  const write = (over = false) =>
    page.evaluate(([block, at, over]) => workbookHost.write(block, at, { over }), [block, at, over] as const);
  const read = (reference: string) =>
    page.evaluate(([reference, at]) => workbookHost.read(reference, at), [reference, at] as const);
  const cells = () => values(page, "Lot");
  const holds = (cell: string) => value(page, "Lot", cell);

  test("the pane's script is fetched before it is wanted, and the pane is there again after a reload", async () => {
    await page.waitForSelector("html[data-fetched]", { timeout: 60_000, state: "attached" });
    expect(fetched.some((url) => /\/mount-pane\.\w+\.js$/.test(url))).toBe(true);
    const before = fetched.length;
    expect(await page.isVisible("#pane")).toBe(false);
    await openPane();
    expect(fetched.slice(before)).toEqual([]);
    expect(await page.getAttribute("#pane-button", "aria-expanded")).toBe("true");
    await page.reload();
    await untilReady(page);
    await page.waitForSelector("#pane button");
    await page.click("#pane-button");
    expect(await page.isVisible("#pane")).toBe(false);
  });

  test("there is nothing past the end of a sheet, and no problem either", async () => {
    await openPane();
    const { rows, columns } = await page.evaluate(() => {
      const sheet = workbookGrid.api.getActiveWorkbook()?.getSheetByName("Lot");
      return { rows: sheet?.getMaxRows() ?? 0, columns: sheet?.getMaxColumns() ?? 0 };
    });
    const area = await read(`A${rows - 1}:A${rows + 3}`);
    expect(area.values).toEqual([[""], [""], [""], [""], [""]]);
    expect(area.formulas).toEqual([[""], [""], [""], [""], [""]]);
    expect(area.formats.length).toBe(5);
    expect(columns).toBeGreaterThan(0);
  });

  test("a selection is heard of from the first moment", async () => {
    await openPane();
    await page.reload();
    await untilReady(page);
    await page.waitForSelector("#pane button");
    await page.evaluate(() => {
      (globalThis as { heard?: number }).heard = 0;
      workbookHost.onSelection(() => {
        (globalThis as { heard?: number }).heard = ((globalThis as { heard?: number }).heard ?? 0) + 1;
      });
      workbookGrid.api.getActiveWorkbook()?.getSheetByName("Lot")?.getRange("C7").activate();
    });
    await expect
      .poll(() => page.evaluate(() => (globalThis as { heard?: number }).heard), { timeout: 1_000 })
      .toBeGreaterThan(0);
  });

  test("a name that begins as a formula does stays a text", async () => {
    await openPane();
    const plot: Block = { rows: 1, columns: 1, cells: [{ row: 0, column: 0, content: "=1+1", isConstant: true }] };
    await page.evaluate(([block, at]) => workbookHost.write(block, at), [plot, at] as const);
    await page.waitForTimeout(500);
    expect(await shown(page, "Lot", "B60")).toBe("=1+1");
    expect((await read("B60")).formulas).toEqual([[""]]);
  });

  test("on a narrow screen the pane stands below the grid, and nothing is wider than the screen", async () => {
    await page.setViewportSize({ width: 350, height: 700 });
    await openPane();
    const [grid, pane] = [await page.locator("#grid").boundingBox(), await page.locator("#pane").boundingBox()];
    expect(pane?.y).toBeGreaterThanOrEqual((grid?.y ?? 0) + (grid?.height ?? 0));
    expect(grid?.height).toBeGreaterThanOrEqual(240);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(350);
  });

  test("a block that is written calculates, and its inputs are live", async () => {
    await openPane();
    expect(await write()).toEqual({ written: { ...at, rows: 5, columns: 2 } });
    await expect.poll(() => holds("C63"), patience).toBe(200);
    expect([await shown(page, "Lot", "C63"), await shown(page, "Lot", "B61")]).toEqual(["200.00", "1/2"]);
    const split = ["B64", "B65", "B66", "B67"];
    const grams = await cells();
    expect(split.reduce((sum, cell) => sum + Number(grams.get(cell)), 0)).toBeCloseTo(320, 9);
    await typeOver(page, "Lot", "C61", "640");
    await expect.poll(() => holds("C63"), patience).toBe(400);
  });

  test("it can be undone in one step, formats and colours as well", async () => {
    await openPane();
    const before = await page.evaluate(() => JSON.stringify(workbookGrid.workbook()));
    await write();
    await expect.poll(() => holds("C63"), patience).toBe(200);
    await select(page, "Lot", "A60");
    await page.keyboard.press("Control+z");
    await expect.poll(() => holds("C63"), patience).toBeUndefined();
    const after = JSON.parse(await page.evaluate(() => JSON.stringify(workbookGrid.workbook())));
    expect(after.sheets[0].cells).toEqual(JSON.parse(before).sheets[0].cells);
  });

  test("filled cells are named and left alone, also those that only the spill would reach", async () => {
    await openPane();
    await typeOver(page, "Lot", "B66", "mine");
    await typeOver(page, "Lot", "C61", "7");
    expect(await write()).toEqual({ filled: ["C61", "B66"] });
    expect([await holds("C61"), await holds("C63")]).toEqual([7, undefined]);
    await write(true);
    await expect.poll(() => holds("C63"), patience).toBe(200);
    expect(await holds("B66")).toBeTypeOf("number");
    // A spilled cell is filled, too.
    expect(
      await page.evaluate(([block, at]) => workbookHost.write(block, at), [block, { ...at, row: 66 }] as const),
    ).toEqual({ filled: ["B67"] });
  });

  test("references, other sheets, names, spills and whole columns are read", async () => {
    await openPane();
    await write();
    await expect.poll(() => holds("C63"), patience).toBe(200);
    await page.evaluate(() => workbookGrid.api.getActiveWorkbook()?.insertDefinedName("Load", "Lot!$C$61"));
    expect(await read("C61:C63")).toEqual({
      ...{ sheet: "Lot", row: 60, column: 2, rows: 3, columns: 1 },
      values: [[320], [0.75], [200]],
      formulas: [[""], [""], ["=TEA.TARGETWEIGHT(C61,C62,60%)"]],
      formats: [["0.0"], ["0.0%"], ["0.00"]],
    });
    expect(await read("Load")).toMatchObject({ row: 60, column: 2, values: [[320]] });
    expect(await read("B64#")).toMatchObject({ rows: 4, columns: 1 });
    expect(await read("'Past lots'!A:A")).toMatchObject({ sheet: "Past lots", row: 0, column: 0, columns: 1 });
    expect((await read("'Past lots'!A:A")).rows).toBeLessThan(60);
    await expect(read("Nowhere!A1")).rejects.toThrow("There is no Nowhere!A1 in this workbook.");
    const used = await page.evaluate(() => workbookHost.usedCells());
    expect([used.sheet, used.rows]).toEqual(["Lot", 75]);
  });

  test("a cell that an answer spills over is known with the whole of that answer", async () => {
    await openPane();
    await write();
    await expect.poll(() => holds("B66"), patience).toBe(80);
    const around = (row: number, column: number) =>
      page.evaluate((place) => workbookHost.spillAround(place), { sheet: "Lot", row, column });
    expect(await around(65, 1)).toEqual({ sheet: "Lot", row: 63, column: 1, rows: 4, columns: 1 });
    expect(await around(63, 1)).toEqual(await around(65, 1));
    expect(await around(65, 2)).toBeUndefined();
    expect(await around(60, 2)).toBeUndefined();
  });

  test("a block goes on a new sheet, which is shown and is there again after a reload", async () => {
    await openPane();
    const names = await page.evaluate(async () => [
      await workbookHost.addSheet("Job's plan"),
      await workbookHost.addSheet("Job's plan"),
    ]);
    expect(names).toEqual(["Job's plan", "Job's plan 2"]);
    await page.evaluate(async (block) => {
      const at = { sheet: "Job's plan 2", row: 0, column: 0 };
      await workbookHost.write(block, { ...at, row: 59, column: 1 });
      await workbookHost.goTo(at);
    }, block);
    await expect.poll(() => value(page, "Job's plan 2", "C63"), patience).toBe(200);
    expect(await page.evaluate(() => workbookGrid.api.getActiveWorkbook()?.getActiveSheet().getSheetName())).toBe(
      "Job's plan 2",
    );
    await expect.poll(() => page.textContent("#status"), patience).toContain("Kept in this browser");
    await page.reload();
    await untilReady(page);
    expect(await value(page, "Job's plan 2", "C61")).toBe(320);
    // The maker is where the maker was.
    expect(await page.evaluate(() => workbookGrid.api.getActiveWorkbook()?.getActiveSheet().getSheetName())).toBe(
      "Job's plan 2",
    );
  });

  test("the selection is told of and read, and an error comes with its message", async () => {
    await openPane();
    await write();
    await page.evaluate(() => {
      Object.assign(globalThis, { told: 0 });
      workbookHost.onSelection(() => {
        (globalThis as unknown as { told: number }).told += 1;
      });
    });
    await select(page, "Lot", "C64");
    const selected = await page.evaluate(() => workbookHost.selection());
    expect(selected).toMatchObject({ row: 63, column: 2, rows: 1, values: [["#VALUE!"]] });
    expect(await page.evaluate((place) => workbookHost.errorMessage(place), selected)).toContain("got 75");
    expect(await page.evaluate(() => (globalThis as unknown as { told: number }).told)).toBeGreaterThan(0);
    await page.evaluate(() => workbookGrid.api.getActiveWorkbook()?.getActiveSheet().getRange("B:B").activate());
    expect(await page.evaluate(() => workbookHost.selection())).toMatchObject({
      row: 0,
      column: 1,
      rows: 75,
      columns: 1,
    });
  });

  test("expressions are worked out as in a cell, and neither the grid nor what can be undone changes", async () => {
    await openPane();
    await write();
    await expect.poll(() => holds("C63"), patience).toBe(200);
    await page.evaluate(() => workbookGrid.api.getActiveWorkbook()?.insertDefinedName("Load", "Lot!$C$61"));
    await page.evaluate(() => workbookGrid.api.getActiveWorkbook()?.insertDefinedName("Usual", "=0.75"));
    await typeOver(page, "Lot", "M60", "mine");
    const refused = { ...at, row: 63, column: 2 };
    const state = () =>
      page.evaluate(
        (place) =>
          workbookHost
            .errorMessage(place)
            .then((message) => [
              message,
              JSON.stringify(workbookGrid.workbook()),
              JSON.stringify(workbookGrid.errors.all()),
              workbookGrid.api.getActiveWorkbook()?.getSheets().length,
            ]),
        refused,
      );
    const before = await state();
    expect(before[0]).toContain("got 75");
    const evaluate = (expression: string) =>
      page.evaluate(([expression, place]) => workbookHost.evaluate(expression, place), [expression, refused] as const);
    for (const [expression, value] of [
      ["ROUND(C61*1.05,0)", 336],
      ["IF(C61>300,0.750,70%)", 0.75],
      ["INDEX(C61:C63,2)", 0.75],
      ["LET(w,C61*2,LET(v,w/4,v+1))", 161],
      ["Load/2", 160],
      ["Usual*2", 1.5],
      ["IF(TEA.DRYBASIS(C62)>2,TEA.TARGETWEIGHT(C61,C62,60%),0)", 200],
      ["TEA.DRYBASIS(C61)", "#VALUE!"],
      ["C99", ""],
    ] as const) {
      expect([expression, await evaluate(expression)]).toEqual([expression, [[value]]]);
    }
    expect(await evaluate("COUNTA('Past lots'!A:A)")).toEqual([[expect.any(Number)]]);
    expect((await evaluate("SUM('Past lots'!B:B)"))[0]?.[0]).toBeGreaterThan(0);
    expect(await evaluate("C61:C62*2")).toEqual([[640], [1.5]]);
    await expect(evaluate("IF(")).rejects.toThrow("cannot work out IF(");
    expect(await state()).toEqual(before);
    // The last step to be undone is still what was typed.
    await select(page, "Lot", "A60");
    await page.keyboard.press("Control+z");
    await expect.poll(() => holds("M60"), patience).toBeUndefined();
    expect(await holds("C63")).toBe(200);
    await page.evaluate(() => workbookGrid.api.getActiveWorkbook()?.getDefinedName("Load")?.setRef("Lot!$C$62"));
    await expect.poll(() => evaluate("Load/2"), patience).toEqual([[0.375]]);
  });

  test("the working goes on from what the grid works out, and follows it", async () => {
    await openPane();
    await typeOver(page, "Lot", "C61", "320");
    await typeOver(page, "Lot", "C62", "=TEA.TARGETWEIGHT(ROUND(C61*1.05,0),IF(C61>300,75%,70%),60%)");
    await page.click("#tab-working");
    await select(page, "Lot", "C62");
    const working = () => page.locator("#pane .working").textContent();
    await expect.poll(working, patience).toContain("336 × (1 − 75 %) = 84");
    expect(await working()).toContain("ROUND(C61*1.05,0) = 336 (worked out by the workbook)");
    await page.evaluate(() => workbookGrid.api.getActiveWorkbook()?.getActiveSheet().getRange("C61").setValue(100));
    await expect.poll(working, patience).toContain("105 × (1 − 70 %) = 31.5");
    await expect.poll(working, patience).not.toContain("may be waiting");
  });

  test("the sheet grows to hold a block beyond its last row", async () => {
    await openPane();
    const far = { ...at, row: 400 };
    expect(await page.evaluate(([block, far]) => workbookHost.write(block, far), [block, far] as const)).toHaveProperty(
      "written",
    );
    await page.evaluate((place) => workbookHost.goTo(place), far);
    expect(await page.evaluate(() => workbookHost.selection())).toMatchObject({ row: 400, column: 1 });
  });

  test("what is half typed in a cell is kept when a block is written", async () => {
    await openPane();
    await select(page, "Lot", "M60");
    await page.keyboard.type("half", { delay: 20 });
    await write();
    await expect.poll(() => holds("C63"), patience).toBe(200);
    expect(await holds("M60")).toBe("half");
  });

  test("F6 goes from the grid to the pane, Shift+F6 back, and the keyboard reaches the pane from the header", async () => {
    await page.focus("#pane-button");
    await page.keyboard.press("Enter");
    await page.waitForSelector("#pane button");
    const inPane = () => page.evaluate(() => document.getElementById("pane")?.contains(document.activeElement));
    await expect.poll(inPane, patience).toBe(true);
    await select(page, "Lot", "M60");
    expect(await inPane()).toBe(false);
    await page.keyboard.press("F6");
    expect(await inPane()).toBe(true);
    await page.keyboard.press("Shift+F6");
    await page.keyboard.type("back", { delay: 20 });
    await page.keyboard.press("Enter");
    await expect.poll(() => holds("M60"), patience).toBe("back");
  });

  test("what is typed in the pane stays in the pane", async () => {
    await openPane();
    await typeOver(page, "Lot", "M60", "mine");
    const before = await cells();
    await page.click("#tab-functions");
    const field = page.locator("#pane input").first();
    await field.click();
    await page.keyboard.type("320", { delay: 20 });
    await page.keyboard.press("Backspace");
    expect(await field.inputValue()).toBe("32");
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.press("Delete");
    await page.keyboard.press("Control+z");
    await page.waitForTimeout(500);
    expect(await cells()).toEqual(before);
  });
});

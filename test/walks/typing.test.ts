import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import type { Grid } from "../../src/pages/workbook/grid";
import { Hands } from "../browser/typing/hands";
import { composeWords, places, typeInFormulaBar, typeNumbers } from "../browser/typing/trials";
import { openWorkbook, placeOfCell, select, shown, untilReady } from "../browser/workbook-driver";
import { workbookVisits } from "../browser/workbook-visits";

declare const workbookGrid: Grid;

const found = await findBrowser();

describe.skipIf(!found)("typing on the workbook page", { timeout: 180_000 }, () => {
  const visits = workbookVisits(found);
  let page: Page;
  let address: string;

  let end: () => Promise<void>;

  // The page is opened once; where a test needs it as it was, it opens it again itself.
  beforeAll(async () => {
    ({ page, address, end } = await visits.begin());
  });
  afterAll(() => end?.());

  // Where calculations write the cells that are typed into next; `npm run type-test` types more, and elsewhere too.
  test.each(places.slice(0, 2))("forty numbers typed at 60 ms a key into $name stand as typed", async (place) => {
    await place.open(page, address);
    expect(await typeNumbers(page, place, 40, 60)).toEqual([]);
  });

  test("what is typed over spills, into the formula bar and by a Chinese input method stands as typed", async () => {
    await openWorkbook(page, address);
    expect(await typeInFormulaBar(page, 6, 60)).toEqual([]);
    expect(await composeWords(page, 6, 60)).toEqual([]);
    const spills = places.find(({ name }) => name === "over spills");
    await spills?.open(page, address);
    expect(spills && (await typeNumbers(page, spills, 10, 60))).toEqual([]);
  });

  test("half-typed text survives a reload, and so does what was typed a moment before", async () => {
    const hands = await Hands.on(page);
    await select(page, "Lot", "B9");
    await hands.type("1211.5\n1187", 60);
    await page.reload();
    await untilReady(page);
    expect([await shown(page, "Lot", "B9"), await shown(page, "Lot", "B10")]).toEqual(["1211.5", "1187.0"]);
  });

  test("the way back to the sample leaves nothing half typed behind", async () => {
    const hands = await Hands.on(page);
    await select(page, "Lot", "B9");
    await hands.type("1399.5", 60);
    await page.click("#menu summary");
    await page.click("#back");
    await Promise.all([page.waitForEvent("load"), page.getByRole("button", { name: "Start afresh" }).click()]);
    await untilReady(page);
    expect(await shown(page, "Lot", "B9")).toBe("1240.0");
  });

  test("two clicks on a cell a while apart open it not, however busy the page was between them", async () => {
    const canvas = page.locator("#grid canvas[id^=univer-sheet-main-canvas]");
    const { x, y } = (await canvas.boundingBox()) ?? { x: 0, y: 0 };
    const click = () => page.mouse.click(x + 250, y + 200);
    const inCell = () => page.evaluate(() => workbookGrid.api.getActiveWorkbook()?.getActiveRange()?.getValue());
    await click();
    await page.evaluate(() => void workbookGrid.api.getActiveWorkbook()?.getActiveRange()?.setValue(1240));
    await page.waitForTimeout(1500);
    await click();
    await page.evaluate(() => {
      setTimeout(() => {
        const end = performance.now() + 1200;
        while (performance.now() < end);
      });
    });
    await page.waitForTimeout(700);
    await click();
    await page.keyboard.type("800", { delay: 60 });
    await page.keyboard.press("Enter");
    await page.keyboard.press("ArrowUp");
    await expect.poll(inCell, { timeout: 20_000 }).toBe(800);

    // Quick ones do, as the mouse has it.
    await canvas.evaluate(
      (sheet, at) => {
        for (const type of ["pointerdown", "pointerup", "pointerdown", "pointerup"]) {
          const buttons = type === "pointerdown" ? 1 : 0;
          sheet.dispatchEvent(new PointerEvent(type, { ...at, button: 0, buttons, isPrimary: true, bubbles: true }));
        }
      },
      { clientX: x + 250, clientY: y + 200 },
    );
    const isEditing = () => page.evaluate(() => workbookGrid.api.getActiveWorkbook()?.isCellEditing());
    await expect.poll(isEditing, { timeout: 20_000 }).toBe(true);
  });

  test("Enter goes below the cell that was clicked, wherever Tab was pressed before, and ends a row of Tabs", async () => {
    const selected = () =>
      page.evaluate(() => workbookGrid.api.getActiveWorkbook()?.getActiveSheet().getActiveRange()?.getA1Notation());
    await select(page, "Lot", "A6");
    await page.keyboard.press("Tab");
    const { x, y, width, height } = await placeOfCell(page, "B9");
    await page.mouse.click(x + width / 2, y + height / 2, { delay: 40 });
    await page.keyboard.type("1233", { delay: 60 });
    await page.keyboard.press("Enter");
    await expect.poll(selected).toBe("B10");
    await page.keyboard.type("1180", { delay: 60 });
    await page.keyboard.press("Tab");
    await page.keyboard.press("Tab");
    await expect.poll(selected).toBe("D10");
    await page.keyboard.press("Enter");
    await expect.poll(selected).toBe("B11");
    expect([await shown(page, "Lot", "B9"), await shown(page, "Lot", "B10")]).toEqual(["1233.0", "1180.0"]);
  });

  test("a sheet that is left ends the typing in it", async () => {
    const hands = await Hands.on(page);
    await select(page, "Lot", "B9");
    await hands.type("1244", 60);
    await page.getByText("Past lots", { exact: true }).click();
    await expect.poll(() => shown(page, "Lot", "B9")).toBe("1244.0");
  });
});

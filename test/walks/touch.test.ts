/** Fingers on the sheet, as the browser itself makes them, on a telephone's screen. */
import type { CDPSession, Page } from "playwright-core";
import { beforeEach, describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import type { Grid } from "../../src/pages/workbook/grid";
import { placeOf } from "../../src/workbook/addresses";
import { shown } from "../browser/workbook-driver";
import { workbookVisits } from "../browser/workbook-visits";

declare const workbookGrid: Grid;

const found = await findBrowser();
const patience = { timeout: 20_000 };
const telephone = { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true };

type Spot = readonly [x: number, y: number];

describe.skipIf(!found)("a finger on the sheet", () => {
  const visits = workbookVisits(found);
  let page: Page;
  let fingers: CDPSession;

  beforeEach(async () => {
    const visit = await visits.begin(undefined, telephone);
    page = visit.page;
    fingers = await page.context().newCDPSession(page);
    return visit.end;
  });

  const down = (...spots: Spot[]) => touch("touchStart", spots);
  const move = (...spots: Spot[]) => touch("touchMove", spots);
  const up = () => touch("touchEnd", []);
  async function touch(type: "touchStart" | "touchMove" | "touchEnd", spots: readonly Spot[]): Promise<void> {
    await fingers.send("Input.dispatchTouchEvent", { type, touchPoints: spots.map(([x, y], id) => ({ x, y, id })) });
    await page.waitForTimeout(30);
  }
  const tap = async (spot: Spot) => {
    await down(spot);
    await up();
    await page.waitForTimeout(400);
  };
  const draw = async (from: Spot, to: Spot) => {
    for (let step = 1; step <= 10; step++) {
      await move([from[0] + ((to[0] - from[0]) * step) / 10, from[1] + ((to[1] - from[1]) * step) / 10]);
    }
  };

  /** The middle of a cell on the screen, as long as nothing is scrolled. */
  const cell = async (address: string): Promise<Spot> => {
    const canvas = await page.locator("#grid canvas[id^=univer-sheet-main-canvas]").boundingBox();
    const middle = await page.evaluate(({ row, column }) => {
      const rect = workbookGrid.api.getActiveWorkbook()?.getActiveSheet().getRange(row, column).getCellRect();
      return rect && { x: rect.x + rect.width / 2, y: rect.y + rect.height / 2 };
    }, placeOf(address));
    if (!canvas || !middle) throw new Error("the sheet is not on the screen");
    return [canvas.x + middle.x, canvas.y + middle.y];
  };

  const sheet = () =>
    page.evaluate(() => {
      const book = workbookGrid.api.getActiveWorkbook();
      const sheet = book?.getActiveSheet();
      const scrolled = sheet?.getScrollState();
      return {
        selected: sheet?.getActiveRange()?.getA1Notation(),
        isTyping: book?.isCellEditing(),
        scrolled: scrolled && [scrolled.sheetViewStartRow, scrolled.sheetViewStartColumn, scrolled.offsetX > 0],
        page: [scrollX, scrollY],
      };
    });
  const field = () => page.evaluate(() => (document.activeElement as HTMLElement).inputMode);

  test("taps to select, without the keyboard on the screen, and taps again to type, with it", async () => {
    expect(await shown(page, "Lot", "B9")).toBe("1240.0");
    await tap(await cell("B9"));
    expect(await sheet()).toMatchObject({ selected: "B9", isTyping: false });
    expect(await field()).toBe("none");
    await tap(await cell("B9"));
    expect(await sheet()).toMatchObject({ selected: "B9", isTyping: true });
    expect(await field()).toBe("");
    expect(await page.evaluate(() => (document.activeElement as HTMLElement).isContentEditable)).toBe(true);
    // Typing goes on behind what is there.
    await page.keyboard.type("5", { delay: 60 });
    await page.keyboard.press("Enter");
    await expect.poll(() => shown(page, "Lot", "B9"), patience).toBe("12405.0");
    // Another cell is selected only, however soon the next tap comes.
    await down(await cell("B11"));
    await up();
    await tap(await cell("A14"));
    expect(await sheet()).toMatchObject({ selected: "A14", isTyping: false });
    expect(await field()).toBe("none");
  });

  test("swipes to scroll, down and across, and neither selects nor types nor moves the page", async () => {
    await tap(await cell("A6"));
    const [from, to] = [await cell("A14"), await cell("A6")];
    await down(from);
    await draw(from, to);
    await up();
    await expect.poll(async () => (await sheet()).scrolled?.[0], patience).toBeGreaterThan(3);
    const across = from;
    await down(across);
    await draw(across, [across[0] - 120, across[1]]);
    await up();
    await expect
      .poll(async () => (await sheet()).scrolled?.slice(1).some((part) => part !== 0 && part !== false), patience)
      .toBe(true);
    expect(await sheet()).toMatchObject({ selected: "A6", isTyping: false, page: [0, 0] });
  });

  test("presses long to select, and goes on to select a range", async () => {
    const [from, to] = [await cell("A9"), await cell("B12")];
    await down(from);
    await page.waitForTimeout(700);
    expect(await sheet()).toMatchObject({ selected: "A9", isTyping: false });
    await draw(from, to);
    await up();
    await expect.poll(async () => (await sheet()).selected, patience).toBe("A9:B12");
    expect(await sheet()).toMatchObject({ isTyping: false, scrolled: [0, 0, false], page: [0, 0] });
    // From inside a range too: nothing is moved.
    const before = await shown(page, "Lot", "B10");
    await down(await cell("B10"));
    await page.waitForTimeout(700);
    await draw(await cell("B10"), await cell("B14"));
    await up();
    await expect.poll(async () => (await sheet()).selected, patience).toBe("B10:B14");
    expect(await shown(page, "Lot", "B10")).toBe(before);
  });

  test("with a second one enlarges the page, and leaves the sheet as it is", async () => {
    await tap(await cell("A6"));
    const [x, y] = await cell("A12");
    await down([x, y - 10]);
    await down([x, y - 10], [x, y + 10]);
    for (let apart = 20; apart <= 120; apart += 10) await move([x, y - apart], [x, y + apart]);
    await up();
    await expect.poll(() => page.evaluate(() => visualViewport?.scale), patience).toBeGreaterThan(1.5);
    expect(await sheet()).toMatchObject({ selected: "A6", isTyping: false, scrolled: [0, 0, false] });
  });

  test("closes the menu with a tap beside it, which does nothing else, and finds each entry inside it", async () => {
    await tap(await cell("A6"));
    const menu = page.locator("#menu");
    await menu.locator("summary").tap();
    expect(await menu.getAttribute("open")).toBe("");
    const widths = await page
      .locator("#menu-items button")
      .evaluateAll((buttons) => buttons.map(({ scrollWidth, clientWidth }) => scrollWidth - clientWidth));
    expect(Math.max(...widths)).toBe(0);
    await tap([60, 760]);
    expect(await menu.getAttribute("open")).toBe(null);
    expect(await sheet()).toMatchObject({ selected: "A6", isTyping: false });
    await tap(await cell("A9"));
    expect(await sheet()).toMatchObject({ selected: "A9" });
  });

  test("is told on the page what it can do", async () => {
    const words = (await page.locator(".touch-help").textContent())?.replace(/\s+/g, " ");
    expect(words).toContain("Swipe to scroll, tap a cell to select it, tap it again to type");
  });
});

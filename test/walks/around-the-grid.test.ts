import type { BrowserContextOptions, Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import type { Grid } from "../../src/pages/workbook/grid";
import { violations } from "../browser/axe";
import { coveredOf, select, shown, typeOver } from "../browser/workbook-driver";
import { type Visit, workbookVisits } from "../browser/workbook-visits";

declare const workbookGrid: Grid;

const found = await findBrowser();
const patience = { timeout: 20_000 };

const desk = { viewport: { width: 1280, height: 800 } };
const phone = (width: number) => ({ viewport: { width, height: 844 }, hasTouch: true, isMobile: true });

describe.skipIf(!found)("around the grid", () => {
  const visits = workbookVisits(found);

  async function visit(screen: BrowserContextOptions, look: (page: Page) => Promise<void>): Promise<void> {
    const { page, end }: Visit = await visits.begin(undefined, screen);
    await look(page);
    await end();
  }

  const height = async (page: Page, part: string) => (await page.locator(part).boundingBox())?.height ?? 0;
  const sheetInView = (page: Page) =>
    page.evaluate(() => workbookGrid.api.getActiveWorkbook()?.getActiveSheet().getSheetName());

  test("the header is one row at a desk", () =>
    visit(desk, async (page) => {
      expect(await height(page, ".page-header")).toBeLessThanOrEqual(50);
      expect(await page.isVisible("#print")).toBe(true);
      expect(await page.isVisible("#workbooks a")).toBe(true);
      const status = page.locator("#status");
      expect(await status.evaluate((each) => each.scrollWidth <= each.clientWidth && each.clientHeight < 40)).toBe(
        true,
      );
      // Where it has less room, buttons go into the menu.
      await page.setViewportSize({ width: 1024, height: 768 });
      expect(await height(page, ".page-header")).toBeLessThanOrEqual(50);
      expect(await page.isVisible("#print")).toBe(false);
      expect(await status.evaluate((each) => each.getBoundingClientRect().right <= innerWidth)).toBe(true);
      expect(await status.evaluate((each) => each.scrollWidth <= each.clientWidth && each.clientHeight < 40)).toBe(
        true,
      );
    }));

  test.each([390, 350])("on a phone of %i pixels it is at most 60 high, and what is tapped is 44", (width) =>
    visit(phone(width), async (page) => {
      expect(await height(page, ".page-header")).toBeLessThanOrEqual(60);
      for (const part of ["#card", "#pane-button", "#menu summary"]) {
        expect(await height(page, part), part).toBeGreaterThanOrEqual(44);
      }
      for (const tab of await page.locator("#grid footer [role=tab]").all()) {
        expect((await tab.boundingBox())?.height).toBeGreaterThanOrEqual(44);
      }
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      await page.tap("#card");
      await expect.poll(() => sheetInView(page), patience).toBe("Firing card");
      expect(await page.getAttribute("#card", "aria-pressed")).toBe("true");
      await page.tap("#card");
      await expect.poll(() => sheetInView(page), patience).toBe("Lot");
      await page.tap("#menu summary");
      for (const part of ["#workbooks a", "#print", "#download", "#open", "#back"]) {
        expect(await height(page, `${part} >> nth=0`), part).toBeGreaterThanOrEqual(44);
      }
      // Beside the menu.
      await page.touchscreen.tap(20, 700);
      expect(await page.isVisible("#back")).toBe(false);
      await sayEverything(page);
    }),
  );

  /** What there is to say is whole and in sight, and leaves free what is typed into next. */
  async function sayEverything(page: Page): Promise<void> {
    const isWhole = () => page.locator("#line").evaluate((line) => line.scrollHeight <= line.clientHeight + 2);
    await select(page, "Lot", "B10");
    const note = "Airing takes water only";
    await expect.poll(() => page.locator(".bubble:visible").allTextContents(), patience).toHaveLength(1);
    expect(await page.textContent(".bubble:visible")).toContain(note);
    expect(await isWhole()).toBe(true);
    expect(await coveredOf(page, ["B10", "B11", "C10"])).toEqual([]);
    await typeOver(page, "Lot", "B9", "350 g");
    const error = page.locator(".bubble.has-error");
    await expect.poll(() => error.isVisible(), patience).toBe(true);
    await page.waitForTimeout(300);
    const kept = ["B9", "B10", "B11", "C9", "C10"];
    expect(await coveredOf(page, kept)).toEqual([]);
    await page.keyboard.type("75", { delay: 60 });
    expect(await coveredOf(page, kept)).toEqual([]);
    expect(await page.locator(".bubble:visible").allTextContents()).toEqual([
      expect.stringContaining("holds the text “350 g”"),
      expect.stringContaining(note),
    ]);
    expect(await page.textContent("#line")).toContain("B9, fresh weight, holds the text “350 g”");
    expect(await isWhole()).toBe(true);
  }

  const selected = (page: Page) =>
    page.evaluate(() => workbookGrid.api.getActiveWorkbook()?.getActiveSheet().getActiveRange()?.getA1Notation());

  const where = (page: Page) =>
    page.evaluate(() =>
      [".page-header", "#pane", "#grid footer", "#grid"].find((part) =>
        document.querySelector(part)?.contains(document.activeElement),
      ),
    );

  /** What a screen reader says of the field that has the keyboard, beside its name. */
  async function described(page: Page): Promise<string> {
    const session = await page.context().newCDPSession(page);
    const { result } = await session.send("Runtime.evaluate", { expression: "document.activeElement" });
    const { nodes } = await session.send("Accessibility.getPartialAXTree", {
      objectId: result.objectId ?? "",
      fetchRelatives: false,
    });
    return String(nodes[0]?.description?.value ?? "");
  }

  test("Tab leaves the sheet after Escape, and only then", () =>
    visit(desk, async (page) => {
      await select(page, "Lot", "B9");
      const wayOut = "Escape, then Tab leaves the sheet";
      expect(await described(page)).toContain(wayOut);
      expect(await page.textContent("#line")).not.toContain(wayOut);
      await page.keyboard.press("Tab");
      expect(await where(page)).toBe("#grid");
      expect(await page.textContent("#line")).toContain(wayOut);
      await page.keyboard.press("Escape");
      await page.keyboard.press("Tab");
      expect(await where(page)).toBe("#grid footer");
      expect(await selected(page)).toBe("C9");
      await page.keyboard.press("F6");
      expect(await where(page)).toBe(".page-header");
      await page.keyboard.press("F6");
      expect(await where(page)).toBe("#grid");
      await page.keyboard.press("Escape");
      await page.keyboard.press("Shift+Tab");
      expect(await where(page)).toBe(".page-header");
      expect(await selected(page)).toBe("C9");
      expect(await shown(page, "Lot", "B9")).toBe("1240.0");
    }));

  test("F6 goes around header, sheet and pane, Shift+F6 the other way", () =>
    visit(desk, async (page) => {
      await page.click("#pane-button");
      await page.waitForSelector("#pane .jobs");
      await select(page, "Lot", "B9");
      const stops: (string | undefined)[] = [];
      for (const key of ["F6", "F6", "F6", "Shift+F6", "Shift+F6"]) {
        await page.keyboard.press(key);
        stops.push(await where(page));
      }
      expect(stops).toEqual(["#pane", ".page-header", "#grid", ".page-header", "#pane"]);
    }));

  test.each<[string, BrowserContextOptions]>([
    ["at a desk", desk],
    ["at a desk in the dark", { ...desk, colorScheme: "dark" }],
    ["on a phone", phone(390)],
    ["on a narrow phone in the dark", { ...phone(350), colorScheme: "dark" }],
  ])("axe has nothing against it %s", (_, screen) =>
    visit(screen, async (page) => {
      await page.click("#menu summary");
      expect(await violations(page, { met: "button-name" })).toEqual([]);
      const nameless = await page.evaluate(() =>
        [...document.querySelectorAll("button, [role=button], summary")]
          .filter((each) => !each.textContent?.trim() && !each.getAttribute("aria-label"))
          .map((each) => each.outerHTML.slice(0, 200)),
      );
      expect(nameless).toEqual([]);
    }),
  );
});

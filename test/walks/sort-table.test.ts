import type { Page } from "playwright-core";
import { beforeEach, describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import type { Grid } from "../../src/pages/workbook/grid";
import { addressOf } from "../../src/workbook/addresses";
import { violations } from "../browser/axe";
import { select, shown, typeOver } from "../browser/workbook-driver";
import { workbookVisits } from "../browser/workbook-visits";

declare const workbookGrid: Grid;

const found = await findBrowser();
const patience = { timeout: 30_000, interval: 200 };

describe.skipIf(!found)("sorting a table on the workbook page", () => {
  const visits = workbookVisits(found);
  let page: Page;

  beforeEach(async () => {
    const visit = await visits.begin(undefined, undefined, "season");
    ({ page } = visit);
    return visit.end;
  });

  const askToSort = async () => {
    await page.click("#menu summary");
    await page.click("#sort");
  };
  /** What the cells of a sheet hold, formulas and notes with them, numbers to ten digits. */
  const cells = async (sheet: string) => {
    const all = await page.evaluate(
      (sheet) => workbookGrid.workbook().sheets.find(({ name }) => name === sheet)?.cells ?? [],
      sheet,
    );
    return all.map(({ row, column, value, formula, note }) => ({
      at: addressOf(row, column),
      value: typeof value === "number" ? Number(value.toPrecision(10)) : value,
      ...{ formula, note },
    }));
  };
  /** The numbers of the season's table by group and column. */
  const table = async () => {
    const season = await cells("Season");
    const at = (address: string) => season.find((cell) => cell.at === address)?.value;
    const rows = [7, 8, 9, 10, 11, 12].map(
      (row) => [String(at(`E${row}`)), [..."FGHIJKLMNO"].map((column) => at(`${column}${row}`))] as const,
    );
    return Object.fromEntries(rows);
  };

  test("is offered where there is one, done with the keyboard, and taken back in one step", async () => {
    await select(page, "Proof", "A1");
    await page.click("#menu summary");
    expect(await page.isVisible("#sort")).toBe(false);
    await page.keyboard.press("Escape");
    await select(page, "Lots", "E5");
    const [lots, season, weights] = [await cells("Lots"), await cells("Season"), await table()];
    expect(Object.keys(weights)).toContain("total");

    await askToSort();
    expect(await page.textContent("dialog p")).toBe("Rows 2 to 81 of Lots. Blanks come last.");
    // The column of the selected cell is offered; the other direction is an arrow key away.
    expect(
      await page.locator("dialog select").evaluate((list: HTMLSelectElement) => list.selectedOptions[0]?.label),
    ).toBe("Fresh, g");
    await page.keyboard.press("Tab");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator("dialog").count(), patience).toBe(0);
    await expect.poll(() => shown(page, "Lots", "E2"), patience).toBe("2069.4");
    expect(await page.textContent("#line")).toContain("Lots is sorted by Fresh, g, largest first.");
    await expect.poll(table, patience).toEqual(weights);
    await expect.poll(() => shown(page, "Proof", "C3"), patience).toBe("every answer agrees to nine decimals");
    await expect.poll(() => page.textContent("#status"), patience).toContain("Kept in this browser");

    // The keyboard is back in the sheet.
    await page.keyboard.press("Control+z");
    await expect.poll(() => cells("Lots"), patience).toEqual(lots);
    await expect.poll(() => cells("Season"), patience).toEqual(season);
    expect(await page.textContent("#line")).not.toContain("is sorted");
    await page.keyboard.press("Control+y");
    await expect.poll(() => shown(page, "Lots", "E2"), patience).toBe("2069.4");
  });

  test("has the selected cell opened with what it holds now", async () => {
    await select(page, "Lots", "E5");
    const lookInto = async () => {
      await page.keyboard.press("F2");
      await expect.poll(() => page.evaluate(() => workbookGrid.api.getActiveWorkbook()?.isCellEditing())).toBe(true);
      await page.keyboard.press("Enter");
      await page.keyboard.press("ArrowUp");
      await page.waitForTimeout(500);
      return (await cells("Lots")).find(({ at }) => at === "E5")?.value;
    };
    await askToSort();
    // Enter in a list that is open takes what is chosen there, and in a closed one it sorts.
    await page.locator("dialog select").focus();
    await page.keyboard.press("Space");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    expect(await page.locator("dialog").count()).toBe(1);
    await page.keyboard.press("ArrowUp");
    await page.click("dialog label:has-text('Largest')");
    await page.locator("dialog select").focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator("dialog").count(), patience).toBe(0);
    await expect.poll(() => shown(page, "Lots", "E5"), patience).toBe("1856.3");
    expect(await lookInto()).toBe(1856.3);
  });

  test("has formulas that were filled down follow their rows", async () => {
    await select(page, "Lots", "A1");
    // As the engine fills down: one text, which the cells below name by its id. One cell stands below the lots.
    await page.evaluate(() => {
      const sheet = workbookGrid.api.getActiveWorkbook()?.getActiveSheet();
      sheet?.getRange("D2:D121").clearContent();
      sheet?.getRange("D2").setValue({ f: '=IF(F2="","",E2-F2)', si: "filled" });
      for (let row = 3; row <= 90; row += 1) sheet?.getRange(`D${row}`).setValue({ si: "filled" });
    });
    await expect.poll(() => shown(page, "Lots", "D40"), patience).not.toBe("");
    const before = await cells("Lots");
    const lost = (all: typeof before) => {
      const at = (address: string) => all.find((cell) => cell.at === address)?.value;
      return Object.fromEntries(
        Array.from({ length: 80 }, (_, index) => [String(at(`A${index + 2}`)), at(`D${index + 2}`)]),
      );
    };
    const answers = lost(before);
    expect(answers["1"]).toBe(1057.5);
    await askToSort();
    await page.selectOption("dialog select", { label: "Plot" });
    await page.click("dialog button:has-text('Sort')");
    await expect.poll(() => shown(page, "Lots", "C2"), patience).toBe("Cherry");
    await expect.poll(async () => lost(await cells("Lots")), patience).toEqual(answers);
    const formula = (await cells("Lots")).find(({ at }) => at === "D40")?.formula;
    expect(formula).toBe('=IF(F40="","",E40-F40)');
    expect((await cells("Lots")).find(({ at }) => at === "D90")?.formula).toBe('=IF(F90="","",E90-F90)');
    await page.click("#line button:has-text('Undo')");
    await expect.poll(() => cells("Lots"), patience).toEqual(before);
    expect(await page.locator("#line button:has-text('Undo')").count()).toBe(0);
    // And on: what is typed is followed.
    await typeOver(page, "Lots", "F3", "50.8");
    await expect.poll(() => shown(page, "Lots", "D3"), patience).toBe("1000");
  });

  test("says why not, before anything has changed, and fits a small screen", async () => {
    await page.setViewportSize({ width: 350, height: 600 });
    await select(page, "Lots", "A1");
    await page.evaluate(() => {
      const sheet = workbookGrid.api.getActiveWorkbook()?.getActiveSheet();
      sheet?.getRange("D4").setValue({ f: "=E4-E3" });
      sheet?.getRange("J2").setValue({ v: "a remark" });
    });
    await expect.poll(() => shown(page, "Lots", "D4"), patience).toBe("40.8");
    const before = await cells("Lots");
    await askToSort();
    const inside = async (locator: string) => {
      const box = await page.locator(locator).boundingBox();
      return box !== null && box.x >= 0 && box.x + box.width <= 350 && box.y >= 0 && box.y + box.height <= 600;
    };
    expect(await page.textContent("dialog form")).toContain(
      "Take along what is typed beside the table, in columns G to K",
    );
    await page.click("dialog button:has-text('Sort')");
    expect(await page.textContent("dialog [role=alert]")).toBe(
      "D4 takes other rows of the table (E3): it would change, so nothing was sorted.",
    );
    for (const part of ["dialog", "dialog select", "dialog button:has-text('Sort')"])
      expect(await inside(part)).toBe(true);
    expect(await violations(page, { within: "dialog", met: "select-name" })).toEqual([]);
    await page.keyboard.press("Escape");
    await expect.poll(() => page.locator("dialog").count(), patience).toBe(0);
    expect(await cells("Lots")).toEqual(before);
  });
});

import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import { select, shown, typeOver, value } from "../browser/workbook-driver";
import { workbookVisits } from "../browser/workbook-visits";

const found = await findBrowser();
const patience = { timeout: 20_000 };

describe.skipIf(!found)("numbers typed into cells", () => {
  const visits = workbookVisits(found);

  /** A visit by someone whose browser speaks the language. */
  async function visited(language: string, act: (page: Page) => Promise<void>): Promise<void> {
    const { page, end } = await visits.begin(undefined, { locale: language });
    await act(page);
    await end();
  }

  test("with decimal commas, where the browser's language has them, are read so and leave no format", async () => {
    await visited("de-DE", async (page) => {
      await typeOver(page, "Lot", "B14", "5,4%");
      await expect.poll(() => value(page, "Lot", "B14"), patience).toBe(0.054);
      await typeOver(page, "Lot", "B24", "0,305");
      await expect.poll(() => value(page, "Lot", "B24"), patience).toBe(0.305);
      expect(await shown(page, "Lot", "B24")).toBe("30.5%");
      await typeOver(page, "Lot", "B9", "1.234,5");
      await expect.poll(() => value(page, "Lot", "B9"), patience).toBe(1234.5);
      expect(await shown(page, "Lot", "B9")).toBe("1234.5");
      await typeOver(page, "Lot", "B9", "1.240");
      await expect.poll(() => value(page, "Lot", "B9"), patience).toBe("1.240");
      await expect.poll(() => page.textContent("#line"), patience).toContain("1.240 can mean 1240 or 1,240");
      // Thousands elsewhere: how it was read is said, until the cell holds something else.
      await typeOver(page, "Lot", "B9", "1,240");
      await expect.poll(() => value(page, "Lot", "B9"), patience).toBe(1.24);
      await expect
        .poll(() => page.textContent("#line"), patience)
        .toContain("B9: 1,240 is read as 1,24, with decimals");
      await select(page, "Lot", "B9");
      await page.keyboard.press("Delete");
      await expect.poll(() => page.textContent("#line"), patience).not.toContain("is read as");
      await typeOver(page, "Lot", "M40", "0,755");
      await expect.poll(() => shown(page, "Lot", "M40"), patience).toBe("0.755");
      await typeOver(page, "Lot", "M42", "1,234");
      await expect.poll(() => shown(page, "Lot", "M42"), patience).toBe("1.234");
      await select(page, "Lot", "M42");
      await page.keyboard.press("F2");
      await page.keyboard.press("Enter");
      await expect.poll(() => value(page, "Lot", "M42"), patience).toBe(1.234);
      await typeOver(page, "Lot", "M41", "=TEA.TARGETWEIGHT(320;0,75;0,6)");
      await expect.poll(() => shown(page, "Lot", "M41"), patience).toBe("200");
    });
  });

  test("with decimal commas elsewhere are read so and said; what can mean two numbers stays a text", async () => {
    await visited("en-GB", async (page) => {
      await typeOver(page, "Lot", "B14", "5,4%");
      await expect.poll(() => value(page, "Lot", "B14"), patience).toBe(0.054);
      await expect.poll(() => page.textContent("#line"), patience).toContain("B14: 5,4% is read as 5.4%");
      await typeOver(page, "Lot", "M40", "1,234");
      await expect.poll(() => value(page, "Lot", "M40"), patience).toBe("1,234");
      await expect.poll(() => page.textContent("#line"), patience).toContain("1,234 can mean 1234 or 1.234");
      await typeOver(page, "Lot", "M40", "5%");
      await expect.poll(() => shown(page, "Lot", "M40"), patience).toBe("5%");
      await typeOver(page, "Lot", "M41", "7.5%");
      await expect.poll(() => shown(page, "Lot", "M41"), patience).toBe("7.5%");
      await typeOver(page, "Lot", "B9", "50%");
      await expect.poll(() => value(page, "Lot", "B9"), patience).toBe(0.5);
      expect(await shown(page, "Lot", "B9")).toBe("0.5");
      await expect.poll(() => page.textContent("#line"), patience).not.toContain("can mean");
      await typeOver(page, "Lot", "B6", "13.4.2025");
      await expect.poll(() => shown(page, "Lot", "B6"), patience).toBe("2025-04-13");
      await typeOver(page, "Lot", "B6", "5/4/2025");
      await expect.poll(() => shown(page, "Lot", "B6"), patience).toBe("2025-04-05");
      await expect.poll(() => page.textContent("#line"), patience).toContain("B6: 5/4/2025 is read as April 5, 2025");
      await typeOver(page, "Lot", "B6", "31.2.2025");
      await expect.poll(() => page.textContent("#line"), patience).toContain("31.2.2025 is no day of the calendar");
    });
  });
});

import { readFile } from "node:fs/promises";
import { describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import { readWorkbook } from "../../src/xlsx/read-workbook";
import { bookWithNames } from "../xlsx/book-with-names";
import { shown, typeOver, untilReady } from "./workbook-driver";
import { workbookVisits } from "./workbook-visits";

const found = await findBrowser();
const patience = { timeout: 30_000 };

describe.skipIf(!found)("a file with names and table references", { timeout: 180_000 }, () => {
  const visits = workbookVisits(found);

  test("opens, follows what is typed, is kept over a reload, and is downloaded with both", async () => {
    const { page, end } = await visits.begin();
    await page.setInputFiles("#file", { name: "book.xlsx", mimeType: "", buffer: Buffer.from(await bookWithNames()) });
    const question = await page.textContent(".question p");
    expect(question).toContain("names gone, working out of the names above.");
    await page.getByRole("button", { name: "Open it" }).click();
    await page.waitForURL(/workbook=own-file/);
    await untilReady(page);
    expect(await shown(page, "Sums", "A2")).toBe("1.5");
    await typeOver(page, "Lots", "B2", "500");
    await expect.poll(() => shown(page, "Sums", "A1"), patience).toBe("2700");
    await expect.poll(() => shown(page, "Sums", "A6"), patience).toBe("501");
    await page.waitForTimeout(1000);
    await page.reload();
    await untilReady(page);
    await expect.poll(() => shown(page, "Sums", "A1"), patience).toBe("2700");
    const [download] = await Promise.all([page.waitForEvent("download"), page.click("#download")]);
    const { names, sheets } = readWorkbook(await readFile(await download.path()));
    expect(names).toContainEqual({ name: "usual", formula: "=0.5+0.25" });
    expect(names).toContainEqual({ name: "here", formula: "=Lots!$B$2", sheet: "Sums" });
    expect(sheets[1]?.cells.slice(0, 2)).toMatchObject([
      { formula: "=SUM(Lots[fresh])", value: 2700 },
      { formula: "=usual*2", value: 1.5 },
    ]);
    // 176/500.
    const share = sheets[0]?.cells.find(({ row, column }) => row === 1 && column === 3);
    expect(share).toMatchObject({ formula: "=Lots[[#This Row],[made]]/Lots[[#This Row],[fresh]]", value: 0.352 });
    await end();
  });
});

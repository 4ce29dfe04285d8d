/** What a file of the maker's own does not take is refused when it is tried, and its links lead where they say. */
import { readFile } from "node:fs/promises";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import type { Grid } from "../../src/pages/workbook/grid";
import { readWorkbook } from "../../src/xlsx/read-workbook";
import { select, shown, typeOver, untilReady } from "../browser/workbook-driver";
import { workbookVisits } from "../browser/workbook-visits";
import { handwritten } from "../xlsx/handwritten-book";

declare const workbookGrid: Grid;

const found = await findBrowser();
const patience = { timeout: 30_000 };

const text = (at: string, words: string) => `<c r="${at}" t="inlineStr"><is><t>${words}</t></is></c>`;

/** An array formula over B1:B3, links in column C, and merged cells. */
const book = Buffer.from(
  handwritten({
    sheets: {
      Lots: `<sheetData>
        <row r="1"><c r="A1"><v>10</v></c><c r="B1"><f t="array" ref="B1:B3">A1:A3*2</f><v>20</v></c>${text("C1", "the pan")}${text("D1", "merged")}</row>
        <row r="2"><c r="A2"><v>20</v></c><c r="B2"><v>40</v></c>${text("C2", "the other sheet")}</row>
        <row r="3"><c r="A3"><v>30</v></c><c r="B3"><v>60</v></c>${text("C3", "by a name")}</row>
        <row r="4">${text("A4", "plain")}${text("C4", "a program")}</row><row r="5"><c r="A5"><f>A2*2</f><v>40</v></c></row></sheetData>
        <mergeCells count="1"><mergeCell ref="D1:E2"/></mergeCells>
        <hyperlinks><hyperlink ref="C1" r:id="rId1"/><hyperlink ref="C2" location="Other!B2"/><hyperlink ref="C3" location="usual"/><hyperlink ref="C4" r:id="rId2"/></hyperlinks>`,
      Other: `<sheetData><row r="2"><c r="B2"><v>7</v></c></row></sheetData>`,
    },
    behind: '<definedNames><definedName name="usual">Other!$B$3</definedName></definedNames>',
    ofSheets: {
      Lots: [
        ["rId1", "hyperlink", "https://example.org/pan"],
        ["rId2", "hyperlink", "file:///bin/sh"],
      ],
    },
  }),
);

const status = (page: Page) => page.textContent("#status");

async function openBook(page: Page): Promise<void> {
  await page.setInputFiles("#file", { name: "limits.xlsx", mimeType: "", buffer: book });
  await page.getByRole("button", { name: "Open it" }).click();
  await page.waitForURL(/workbook=own-file/);
  await untilReady(page);
}

describe.skipIf(!found)("a file of one's own", { timeout: 180_000 }, () => {
  const visits = workbookVisits(found);

  test("refuses at once what cannot be saved into it, and goes on with what can", async () => {
    const { page, end } = await visits.begin();
    await openBook(page);
    await typeOver(page, "Lots", "B2", "5");
    await expect.poll(() => status(page), patience).toContain("Lots!B2 belongs to the array formula in B1");
    expect(await shown(page, "Lots", "B2")).toBe("40");
    await select(page, "Lots", "B3");
    await page.keyboard.press("Delete");
    await expect.poll(() => status(page), patience).toContain("Lots!B3 belongs to the array formula in B1");
    expect(await shown(page, "Lots", "B3")).toBe("60");
    // As a paste over several cells, or a job, would write.
    await page.evaluate(() =>
      workbookGrid.api
        .getActiveWorkbook()
        ?.getSheetByName("Lots")
        ?.getRange("A3:B3")
        .setValues([[1, 2]]),
    );
    expect(await shown(page, "Lots", "A3")).toBe("30");
    // A look is another matter.
    await page.evaluate(() =>
      workbookGrid.api.getActiveWorkbook()?.getSheetByName("Lots")?.getRange("B2").setFontWeight("bold"),
    );
    const run = (id: string, params: object = {}) =>
      page.evaluate(([id, params]) => workbookGrid.api.executeCommand(id, params).catch(() => false), [
        id,
        params,
      ] as const);
    expect(await run("sheet.command.set-range-underline", { value: 1 })).toBe(false);
    expect(await status(page)).toContain("This look is not written into a file of your own");
    expect(await run("sheet.command.set-worksheet-col-width", { value: 200 })).toBe(true);
    expect(await status(page)).toContain("in a file of your own, widths, heights and what is hidden stay as they are");
    await typeOver(page, "Lots", "A2", "25");
    await expect.poll(() => shown(page, "Lots", "A5"), patience).toBe("50");
    const [download] = await Promise.all([page.waitForEvent("download"), page.click("#download")]);
    const cells = readWorkbook(await readFile(await download.path())).sheets[0]?.cells ?? [];
    const at = (row: number, column: number) => cells.find((cell) => cell.row === row && cell.column === column);
    expect([at(1, 0)?.value, at(4, 0)?.value, at(2, 0)?.value, at(2, 1)?.value]).toEqual([25, 50, 30, 60]);
    expect(at(1, 1)?.style?.bold).toBe(true);
    await end();
  });

  test("shows where a selected cell leads to, and goes there, also after a reload", async () => {
    const { page, end } = await visits.begin();
    await openBook(page);
    await page.waitForTimeout(1000);
    await page.reload();
    await untilReady(page);
    const link = page.locator("#cell-link");
    await select(page, "Lots", "A4");
    expect(await link.isVisible()).toBe(false);
    await select(page, "Lots", "C1");
    const outside = link.locator("a");
    expect(await outside.textContent()).toBe("leads to https://example.org/pan");
    expect(await outside.getAttribute("href")).toBe("https://example.org/pan");
    expect([await outside.getAttribute("target"), await outside.getAttribute("rel")]).toEqual([
      "_blank",
      "noopener noreferrer",
    ]);
    // What a page must not open is shown alone.
    await select(page, "Lots", "C4");
    expect(await link.textContent()).toBe("leads to file:///bin/sh");
    expect(await link.locator("a, button").count()).toBe(0);
    for (const [from, label, to] of [
      ["C2", "leads to Other!B2", "Other B2"],
      ["C3", "leads to usual", "Other B3"],
    ] as const) {
      await select(page, "Lots", from);
      await link.getByRole("button", { name: label }).click();
      const here = await page.evaluate(() => {
        const sheet = workbookGrid.api.getActiveWorkbook()?.getActiveSheet();
        return `${sheet?.getSheetName()} ${sheet?.getSelection()?.getActiveRange()?.getA1Notation()}`;
      });
      expect(here).toBe(to);
    }
    await end();
  });
});

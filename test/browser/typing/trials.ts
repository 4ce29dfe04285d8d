import type { Page } from "playwright-core";
import { openInNode } from "../../../src/engine/node-workbook";
import type { Grid } from "../../../src/pages/workbook/grid";
import { addressOf, placeOf } from "../../../src/workbook/addresses";
import type { Workbook } from "../../../src/workbook/workbook";
import { writeWorkbook } from "../../../src/xlsx/write-workbook";
import { openWorkbook, select, untilReady } from "../workbook-driver";
import { chance, Hands, weights } from "./hands";

declare const workbookGrid: Grid;

/** Where numbers are typed, one under the other. */
export interface Place {
  readonly name: string;
  readonly sheet: string;
  readonly first: string;
  readonly rows: number;
  open(page: Page, address: string): Promise<void>;
}

const lot: Place = {
  name: "Lot, B9:B13",
  sheet: "Lot",
  first: "B9",
  rows: 5,
  open: openWorkbook,
};

const lots: Place = {
  name: "Lots, E2:E31",
  sheet: "Lots",
  first: "E2",
  rows: 30,
  open: (page, address) => openWorkbook(page, `${address}?workbook=season`),
};

export const feeding: Place = {
  name: "a sheet that feeds 300 formulas",
  sheet: "Weights",
  first: "A2",
  rows: 30,
  open: async (page, address) => {
    await openWorkbook(page, address);
    await openOwn(page, "feeding.xlsx", feedingBook());
  },
};

const spills: Place = {
  name: "over spills",
  sheet: "Spills",
  first: "B2",
  rows: 100,
  open: async (page, address) => {
    await openWorkbook(page, address);
    await addSpills(page);
  },
};

export const places: readonly Place[] = [lot, lots, feeding, spills];

/**
 * A sheet of a hundred rows, each with a formula that fills the two cells beside it. Not in a file of one's own, which
 * refuses to be typed over there.
 */
async function addSpills(page: Page): Promise<void> {
  await page.evaluate(() => {
    const sheet = workbookGrid.api.getActiveWorkbook()?.create("Spills", 120, 10);
    for (let row = 1; row <= 100; row += 1) sheet?.getRange(row, 0).setValue({ f: "={1,2,3}*ROW()" });
  });
  await page.waitForFunction(() => workbookGrid.shown("Spills", 100, 2) === "303");
}

/** Thirty weights, each with ten formulas that hang on it, beside it and at the same place of another sheet. */
function feedingBook(): Workbook {
  const sheet = { columnWidths: {}, rowHeights: {}, merges: [] };
  const rows = Array.from({ length: 30 }, (_, index) => index + 1);
  return {
    name: "feeding",
    sheets: [
      {
        ...sheet,
        name: "Weights",
        cells: rows.flatMap((row) => [
          { row, column: 0, value: 1000 + row },
          ...[1, 2, 3, 4, 5].map((column) => ({
            row,
            column,
            formula: `=TEA.WATER(A${row + 1},${column}/10)+SUM($A$2:$A$31)`,
          })),
        ]),
      },
      {
        ...sheet,
        name: "Elsewhere",
        cells: rows.flatMap((row) =>
          [0, 1, 2, 3, 4].map((column) => ({ row, column, formula: `=SUM(Weights!$A$2:$A$31)*${column + 1}` })),
        ),
      },
    ],
  };
}

/** Opens a workbook as a file of the visitor's own. */
export async function openOwn(page: Page, name: string, book: Workbook): Promise<void> {
  const open = openInNode(book);
  await open.calculate();
  const buffer = Buffer.from(await writeWorkbook(open.toWorkbook()));
  open.close();
  await page.setInputFiles("#file", { name, mimeType: "", buffer });
  await page.getByRole("button", { name: "Open it" }).click();
  await page.waitForURL(/workbook=own-file/);
  await untilReady(page);
}

/** What a cell that was typed into should hold and does not. */
export interface Wrong {
  readonly cell: string;
  readonly typed: string;
  readonly holds: unknown;
}

/** Types so many numbers down the cells of the place, again and again over what was typed before. */
export async function typeNumbers(page: Page, place: Place, count: number, pace: number): Promise<Wrong[]> {
  const hands = await Hands.on(page);
  const typed = weights(count, chance(pace * 7919));
  const wrong: Wrong[] = [];
  for (let start = 0; start < count; start += place.rows) {
    const round = typed.slice(start, start + place.rows);
    await select(page, place.sheet, place.first);
    await hands.type(round.map((number) => `${number}\n`).join(""), pace);
    await page.waitForTimeout(300);
    wrong.push(...(await wrongOf(page, place.sheet, place.first, round)));
  }
  return wrong;
}

/** Types a number into the formula bar for each of the five weights of Lot, in turn. */
export async function typeInFormulaBar(page: Page, count: number, pace: number): Promise<Wrong[]> {
  const hands = await Hands.on(page);
  const wrong: Wrong[] = [];
  for (const [index, number] of weights(count, chance(pace)).entries()) {
    const cell = addressOf(8 + (index % 5), 1);
    await select(page, "Lot", cell);
    await page
      .locator("#grid [data-u-comp=formula-bar] canvas")
      .first()
      .click({ position: { x: 60, y: 12 } });
    await page.waitForTimeout(200);
    await page.keyboard.press("Control+a");
    await hands.type(`${number}\n`, pace);
    await page.waitForTimeout(300);
    wrong.push(...(await wrongOf(page, "Lot", cell, [number])));
  }
  return wrong;
}

const teas = [
  { steps: ["c", "ch", "cha"], chosen: "茶" },
  { steps: ["l", "lv", "lv c", "lv cha"], chosen: "绿茶" },
  { steps: ["h", "hu", "huang", "huang y", "huang ya"], chosen: "黄芽" },
];

/** Writes words by an input method down a column of Lot, two compositions to a cell. */
export async function composeWords(page: Page, count: number, pace: number): Promise<Wrong[]> {
  const hands = await Hands.on(page);
  await select(page, "Lot", "N2");
  const typed = Array.from({ length: count }, (_, index) => [teas[index % 3], teas[(index + 1) % 3]] as const);
  for (const words of typed) {
    for (const word of words) if (word) await hands.compose(word.steps, word.chosen, pace);
    await hands.type("\n", pace);
  }
  await page.waitForTimeout(300);
  const texts = typed.map((words) => words.map((word) => word?.chosen).join(""));
  return wrongOf(page, "Lot", "N2", texts, String);
}

/** Of texts typed down from a cell, those that the cells do not hold: as numbers, if nothing else is meant. */
export async function wrongOf(
  page: Page,
  sheet: string,
  first: string,
  typed: readonly string[],
  meant: (text: string) => unknown = Number,
): Promise<Wrong[]> {
  const { row, column } = placeOf(first);
  const held = await page.evaluate(
    ([name, row, column, count]) => {
      const id = workbookGrid.api.getActiveWorkbook()?.getSheetByName(name)?.getSheetId() ?? "";
      return Array.from({ length: count }, (_, index) => workbookGrid.value(id, row + index, column) ?? null);
    },
    [sheet, row, column, typed.length] as const,
  );
  return typed.flatMap((text, index) =>
    held[index] === meant(text) ? [] : [{ cell: addressOf(row + index, column), typed: text, holds: held[index] }],
  );
}

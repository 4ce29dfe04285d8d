import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import { CellError, type CellValue } from "../../src/cells/values";
import { sheetId } from "../../src/engine/snapshot";
import type { Grid } from "../../src/pages/workbook/grid";
import { readWorkbook } from "../../src/xlsx/read-workbook";
import { writeWorkbook } from "../../src/xlsx/write-workbook";
import { answerIn, type CallInSheet, callsWorkbook } from "../hosts/calls-workbook";
import { expectSameAnswer } from "../hosts/same-answer";
import { type Visit, workbookVisits } from "./workbook-visits";

declare const workbookGrid: Grid;

/** What the page hands over of a cell: its value, an error as its code, and why it shows an error. */
type ShownCell = readonly [value: number | string | boolean | undefined, message: string | undefined];

const found = await findBrowser();

describe.skipIf(!found)("the table of calls in the grid of the browser", () => {
  const { workbook, calls } = callsWorkbook();
  const visits = workbookVisits(found);
  let visit: Visit;
  let page: Page;

  beforeAll(async () => {
    // In the place of the sample, and by the same way: written as a file, and read from it.
    const json = readWorkbook(Buffer.from(await writeWorkbook(workbook)));
    visit = await visits.begin((page) => page.route("**/one-lot*.json", (route) => route.fulfill({ json })));
    page = visit.page;
  });
  afterAll(() => visit?.end());

  const idOf = (sheet: string) => sheetId(workbook.sheets.findIndex(({ name }) => name === sheet));

  /** The rows of a sheet as the page holds them. */
  const rowsOf = (sheet: string, placed: readonly CallInSheet[]): Promise<ShownCell[][]> => {
    const last = placed.at(-1);
    const rows = (last?.row ?? 0) + (last?.expected.length ?? 0);
    const columns = Math.max(...placed.map(({ expected }) => expected[0]?.length ?? 1));
    return page.evaluate(
      ([id, rows, columns]) =>
        Array.from({ length: rows }, (_, row) =>
          Array.from(
            { length: columns },
            (_, column): ShownCell => [
              workbookGrid.value(id, row, column),
              workbookGrid.errors.at(id, row, column)?.message,
            ],
          ),
        ),
      [idOf(sheet), rows, columns] as const,
    );
  };

  const sizesOf = (sheet: string, placed: readonly CallInSheet[]) =>
    page.evaluate(
      ([id, rows]) => rows.map((row) => workbookGrid.spills.sizeAt(id, row, 0) ?? { rows: 1, columns: 1 }),
      [idOf(sheet), placed.map(({ row }) => row)] as const,
    );

  const cellValue = ([value, message]: ShownCell): CellValue | undefined =>
    typeof value === "string" && /^#[A-Z/0!?]+$/.test(value) ? new CellError(value, message) : value;

  test.each(["typed", "in cells"] as const)("gives what the bare binding gives, arguments %s", async (form) => {
    const placed = calls.filter((each) => each.form === form);
    expect(placed.length).toBeGreaterThan(300);
    const rows = await rowsOf(placed[0]?.sheet ?? "", placed);
    expect(await sizesOf(placed[0]?.sheet ?? "", placed)).toEqual(
      placed.map(({ expected }) => ({ rows: expected.length, columns: expected[0]?.length })),
    );
    for (const each of placed) {
      const answer = answerIn(each, (row, column) => {
        const cell = rows[row]?.[column];
        return cell && cellValue(cell);
      });
      expectSameAnswer(each.call, answer);
    }
  });
});

import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import { HostProblem } from "../../src/host/host-problem";
import type { WorkbookHost } from "../../src/host/workbook-host";
import type { Grid } from "../../src/pages/workbook/grid";
import { addressOf, placeOf } from "../../src/workbook/addresses";
import { areaWithin } from "../../src/workbook/references";
import { book, type HostAtWork, hostContract, type Put, spilling } from "../host/contract";
import { workbookVisits } from "./workbook-visits";

declare const workbookGrid: Grid;
declare const workbookHost: WorkbookHost;

const found = await findBrowser();

/** The host of the page, asked from here: problems come back as problems. */
function hostOf(page: Page, flags: Pick<WorkbookHost, "drawsCharts" | "changesFormulas" | "language">): WorkbookHost {
  const ask = async <Answer>(method: keyof WorkbookHost, ...given: readonly unknown[]): Promise<Answer> => {
    const outcome = await page.evaluate(
      async ([method, given]) => {
        try {
          const act = workbookHost[method] as (...given: readonly unknown[]) => Promise<unknown>;
          return { answer: await act.apply(workbookHost, [...given]) };
        } catch (thrown) {
          const { name, message, reason, trouble } = thrown as HostProblem;
          return { problem: { name, message, reason, trouble } };
        }
      },
      [method, given] as const,
    );
    if (!outcome.problem) return outcome.answer as Answer;
    const { name, message, reason, trouble } = outcome.problem;
    throw name === "HostProblem" ? new HostProblem(reason, trouble) : new Error(message);
  };
  let listeners = 0;
  return {
    ...flags,
    evaluatesUntouched: true,
    selection: () => ask("selection"),
    read: (address, beside) => ask("read", address, beside),
    usedCells: (...sheet) => ask("usedCells", ...sheet),
    evaluate: (expression, beside) => ask("evaluate", expression, beside),
    errorMessage: (place) => ask("errorMessage", place),
    write: (block, at, options) => ask("write", block, at, options ?? {}),
    addSheet: (wish) => ask("addSheet", wish),
    spillAround: (place) => ask("spillAround", place),
    goTo: (place) => ask("goTo", place),
    addChart: (chart) => ask("addChart", chart),
    formulasWith: (text) => ask("formulasWith", text),
    changeFormulas: (sheet, changes) => ask("changeFormulas", sheet, changes),
    putNames: (names) => ask("putNames", names),
    takeNames: (names) => ask("takeNames", names),
    onSelection: (listener) => {
      listeners += 1;
      const name = `listener${listeners}of${Date.now()}`;
      const stopName = `${name}Stop`;
      const begun = page.exposeFunction(name, listener).then(() =>
        page.evaluate(
          ([name, stopName]) => {
            const page = globalThis as unknown as Record<string, () => void>;
            page[stopName] = workbookHost.onSelection(() => page[name]?.());
          },
          [name, stopName] as const,
        ),
      );
      return () => {
        void begun.then(() =>
          page.evaluate((stopName) => (globalThis as unknown as Record<string, () => void>)[stopName]?.(), stopName),
        );
      };
    },
  };
}

describe.skipIf(!found)("the grid's host", () => {
  const visits = workbookVisits(found);
  let page: Page;
  let host: WorkbookHost;
  let end: () => Promise<void>;
  let times = 0;

  beforeAll(async () => {
    ({ page, end } = await visits.begin());
    await page.click("#pane-button");
    await page.waitForSelector("#pane button");
    const flags = await page.evaluate(() => {
      const { drawsCharts, changesFormulas, language } = workbookHost;
      return { drawsCharts, changesFormulas, language };
    });
    host = hostOf(page, flags);
  });
  afterAll(() => end());

  // The page is opened once: each line has sheets of its own.
  hostContract(async (): Promise<HostAtWork> => {
    times += 1;
    const [here, there, name] = [`Lot ${times}`, `Past lots ${times}`, `Pan_${times}`];
    const { row, column } = placeOf(spilling.at);
    const withSpill = { ...book.here, [addressOf(row, column)]: { content: spilling.formula } };
    const cellsOf = (cells: Readonly<Record<string, Put>>) =>
      Object.entries(cells).map(([address, cell]) => {
        const { content, format } = typeof cell === "object" ? cell : { content: cell, format: undefined };
        return { ...placeOf(address), content, format: format ?? null };
      });
    await page.evaluate(
      async ([sheets, name]) => {
        const workbook = workbookGrid.api.getActiveWorkbook();
        for (const [sheetName, cells] of sheets) {
          const sheet = workbook?.insertSheet(sheetName);
          for (const { row, column, content, format } of cells) {
            const range = sheet?.getRange(row, column);
            range?.setValue(String(content).startsWith("=") ? { f: String(content) } : content);
            if (format) range?.setNumberFormat(format);
          }
        }
        workbook?.insertDefinedName(name, `'${sheets[0][0]}'!$A$1`);
        const shown = workbook?.getSheetByName(sheets[1][0]);
        if (shown) workbook?.setActiveSheet(shown);
      },
      [
        [
          [there, cellsOf(book.there)],
          [here, cellsOf(withSpill)],
        ],
        name,
      ] as const,
    );
    const corner = { sheet: here, row: row + spilling.values.length - 1, column };
    while ((await host.spillAround(corner)) === undefined) await page.waitForTimeout(50);
    return {
      host,
      here,
      there,
      name,
      select: async (sheet, address) => {
        const area = areaWithin(address, { rows: 0, columns: 0 });
        const whole = /^[A-Z]+:[A-Z]+$|^\d+:\d+$/.test(address);
        await page.evaluate(
          ([name, address, area]) => {
            const workbook = workbookGrid.api.getActiveWorkbook();
            const sheet = workbook?.getSheetByName(name);
            if (!workbook || !sheet) throw new Error(`there is no sheet "${name}"`);
            if (workbook.getActiveSheet().getSheetName() !== name) workbook.setActiveSheet(sheet);
            const range = area
              ? sheet.getRange(area.row, area.column, area.rows, area.columns)
              : sheet.getRange(address);
            range.activate();
          },
          [sheet, address, whole ? undefined : area] as const,
        );
        await page.waitForTimeout(100);
      },
      type: async (sheet, address, content) => {
        await page.evaluate(
          ([name, { row, column }, content]) =>
            void workbookGrid.api.getActiveWorkbook()?.getSheetByName(name)?.getRange(row, column).setValue(content),
          [sheet, placeOf(address), content] as const,
        );
      },
      // Its formulas are not changed, on no sheet.
      protect: async () => {},
    };
  });
});

import type { Page } from "playwright-core";
import type { Grid } from "../../../src/pages/workbook/grid";
import { placeOf } from "../../../src/workbook/addresses";
import { chance, Hands, weights } from "../typing/hands";
import { select } from "../workbook-driver";

declare const workbookGrid: Grid;

/** A column of numbers, and the formulas that all follow each of them. */
export interface Fed {
  readonly sheet: string;
  readonly first: string;
  readonly rows: number;
  readonly followers: readonly { readonly sheet: string; readonly first: string; readonly last: string }[];
}

/** In milliseconds. */
export interface CalculationTimes {
  /** From Enter until every formula that follows the number is calculated and drawn. */
  readonly standing: readonly number[];
  /** The same from the moment when the engine begins to calculate: it lets 100 ms pass, should more be changed. */
  readonly calculating: readonly number[];
  /** How long keys waited that were pressed one after the other, calculations between them. */
  readonly waits: readonly number[];
}

const single = 10;
const pace = 60;

export async function timesOfCalculation(page: Page, fed: Fed): Promise<CalculationTimes> {
  await select(page, fed.sheet, fed.first);
  const hands = await Hands.on(page);
  await watchKeys(page);
  await watchCalculations(page);
  const next = chance(7919);
  const standing: number[] = [];
  const calculating: number[] = [];
  for (const number of weights(single, next)) {
    await hands.type(number, pace);
    await page.waitForTimeout(500);
    const stands = untilStanding(page, fed);
    await page.waitForTimeout(200);
    await hands.type("\n", pace);
    const times = await stands;
    standing.push(times.fromEnter);
    calculating.push(times.fromStart);
    await page.waitForTimeout(700);
  }
  await select(page, fed.sheet, fed.first);
  await page.evaluate(() => performance.clearMarks("key"));
  await hands.type(
    weights(fed.rows, next)
      .map((number) => `${number}\n`)
      .join(""),
    pace,
  );
  await page.waitForTimeout(1000);
  const waits = await page.evaluate(() =>
    performance.getEntriesByName("key").map((each) => (each as PerformanceMark).detail as number),
  );
  return { standing, calculating, waits };
}

/** Marks each key with the time that it waited until the page heard of it. */
const watchKeys = (page: Page): Promise<void> =>
  page.evaluate(() =>
    addEventListener(
      "keydown",
      ({ timeStamp }) => performance.mark("key", { detail: performance.now() - timeStamp }),
      true,
    ),
  );

/** Marks each beginning of a calculation. */
const watchCalculations = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const { api } = workbookGrid;
    api.addEvent(api.Event.CommandExecuted, ({ id }) => {
      if (id === "formula.mutation.set-formula-calculation-start") performance.mark("calculation");
    });
  });

/** Settles with the time from the next Enter, and the calculation after it, until no follower shows what it showed before. */
function untilStanding(page: Page, { followers }: Fed): Promise<{ fromEnter: number; fromStart: number }> {
  const areas = followers.map(({ sheet, first, last }) => ({ sheet, first: placeOf(first), last: placeOf(last) }));
  return page.evaluate(
    (areas) =>
      new Promise<{ fromEnter: number; fromStart: number }>((done) => {
        const places = areas.flatMap(({ sheet, first, last }) => {
          const id = workbookGrid.api.getActiveWorkbook()?.getSheetByName(sheet)?.getSheetId() ?? "";
          return Array.from({ length: last.row - first.row + 1 }, (_, down) =>
            Array.from({ length: last.column - first.column + 1 }, (_, right) => {
              const [row, column] = [first.row + down, first.column + right];
              return { id, row, column, before: workbookGrid.value(id, row, column) };
            }),
          ).flat();
        });
        addEventListener(
          "keydown",
          ({ timeStamp }) => {
            const looking = setInterval(() => {
              if (places.some(({ id, row, column, before }) => workbookGrid.value(id, row, column) === before)) return;
              clearInterval(looking);
              // After the next frame they are on the screen.
              requestAnimationFrame(() =>
                setTimeout(() => {
                  const now = performance.now();
                  const start = performance.getEntriesByName("calculation").at(-1)?.startTime ?? Number.NaN;
                  done({ fromEnter: now - timeStamp, fromStart: now - start });
                }),
              );
            }, 5);
          },
          { capture: true, once: true },
        );
      }),
    areas,
  );
}

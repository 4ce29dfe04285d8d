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
  /** How long keys waited that were pressed one after the other, calculations between them. */
  readonly waits: readonly number[];
}

const single = 10;
const pace = 60;

export async function timesOfCalculation(page: Page, fed: Fed): Promise<CalculationTimes> {
  await select(page, fed.sheet, fed.first);
  const hands = await Hands.on(page);
  await watchKeys(page);
  const next = chance(7919);
  const standing: number[] = [];
  for (const number of weights(single, next)) {
    await hands.type(number, pace);
    await page.waitForTimeout(500);
    const stands = untilStanding(page, fed);
    await page.waitForTimeout(200);
    await hands.type("\n", pace);
    standing.push(await stands);
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
  return { standing, waits };
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

/** Settles with the time from the next Enter until no follower shows what it showed before. */
function untilStanding(page: Page, { followers }: Fed): Promise<number> {
  const areas = followers.map(({ sheet, first, last }) => ({ sheet, first: placeOf(first), last: placeOf(last) }));
  return page.evaluate(
    (areas) =>
      new Promise<number>((done) => {
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
              requestAnimationFrame(() => setTimeout(() => done(performance.now() - timeStamp)));
            }, 5);
          },
          { capture: true, once: true },
        );
      }),
    areas,
  );
}

/** `npm run type-test`: types numbers into the running page at the pace of hands, and counts what comes out wrong. */
import { parseArgs } from "node:util";
import type { Browser, Page } from "playwright-core";
import { findBrowser, openBrowser } from "../../../src/build/open-browser";
import { serve } from "../../../src/build/serve";
import { buildPageOnce, pageFolder } from "../../../src/build/workbook-page-build";
import { openWorkbook } from "../workbook-driver";
import { composeWords, places, typeInFormulaBar, typeNumbers, type Wrong } from "./trials";

const { values: wanted } = parseArgs({
  options: {
    only: { type: "string", default: "" },
    pace: { type: "string", multiple: true, default: ["60", "90", "150"] },
    count: { type: "string", default: "300" },
  },
});
const count = Number(wanted.count);

interface Trial {
  readonly name: string;
  open(page: Page, address: string): Promise<void>;
  type(page: Page, count: number, pace: number): Promise<Wrong[]>;
}

const trials: readonly Trial[] = [
  ...places.map((place): Trial => ({ ...place, type: (page, count, pace) => typeNumbers(page, place, count, pace) })),
  { name: "the formula bar", open: openWorkbook, type: typeInFormulaBar },
  { name: "Chinese, by an input method", open: openWorkbook, type: composeWords },
];

async function run(): Promise<void> {
  const found = await findBrowser();
  if (found === undefined) throw new Error("typing needs a browser");
  await buildPageOnce();
  const { server, address } = await serve(pageFolder, 0);
  const browser = await openBrowser(found);
  let failed = 0;
  try {
    for (const trial of trials.filter(({ name }) => name.includes(wanted.only))) {
      // Side by side, as several tabs: it takes less time, and keeps the pages busier than a maker does.
      const counts = await Promise.all(wanted.pace.map((pace) => tried(browser, address, trial, Number(pace))));
      failed += counts.reduce((sum, each) => sum + each, 0);
    }
  } finally {
    await browser.close();
    server.close();
  }
  if (failed > 0) process.exitCode = 1;
}

/** Says how many came out wrong, and shows the first. */
async function tried(browser: Browser, address: string, trial: Trial, pace: number): Promise<number> {
  const visitor = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  const page = await visitor.newPage();
  await trial.open(page, address);
  const wrong = await trial.type(page, count, pace);
  await visitor.close();
  const examples = wrong.slice(0, 3).map(({ cell, typed, holds }) => `${cell}: ${typed} became ${holds}`);
  const line = `${trial.name.padEnd(32)} ${String(pace).padStart(4)} ms a key  ${String(wrong.length).padStart(4)}/${count} wrong`;
  console.log([line, ...examples].join("\n    "));
  return wrong.length;
}

run().catch((problem: unknown) => {
  console.error(problem);
  process.exitCode = 1;
});

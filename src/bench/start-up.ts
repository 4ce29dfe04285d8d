import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { buildFunctions, buildPane } from "../build/add-in";
import { findBrowser, openBrowser } from "../build/open-browser";
import { officeOrigin } from "../build/page-policy";
import { serve } from "../build/serve";
import { type Comparison, comparison } from "./side-by-side";

const rounds = 12;

/** In the place of Office.js: takes functions, and is an Excel that answers nothing. */
const officeStandIn = `
  window.CustomFunctions = { associate: () => undefined };
  window.Office = {
    HostType: { Excel: "Excel" },
    context: { displayLanguage: "en-US" },
    onReady: () => Promise.resolve({ host: "Excel" }),
  };
  window.Excel = { run: () => new Promise(() => undefined) };
`;

const pageOf = (...tags: string[]): string =>
  `<!doctype html><meta charset="utf-8"><title>start</title>${tags.join("")}<main id="pane"></main>`;
const script = (name: string): string => `<script src="${name}"></script>`;

interface StartUp {
  readonly ratios: readonly Comparison[];
  /** From the arrival of the pane's script until its first tab can be used, in milliseconds; the best and the middle round. */
  readonly paneInteractive: { readonly best: number; readonly middle: number };
}

/** How long pages take until they are loaded, in a browser and in turn; undefined where there is no browser. */
export async function measureStartUp(): Promise<StartUp | undefined> {
  const found = await findBrowser();
  if (found === undefined) return undefined;
  const folder = mkdtempSync(join(tmpdir(), "tea-start-"));
  await buildFunctions(folder);
  const { scripts } = await buildPane(folder);
  writeFileSync(join(folder, "office.js"), officeStandIn);
  writeFileSync(join(folder, "empty.html"), pageOf(script("office.js")));
  writeFileSync(join(folder, "alone.html"), pageOf(script("office.js"), script("functions.js")));
  const pane = `<script type="module" src="${scripts[0]}"></script>`;
  writeFileSync(join(folder, "with-pane.html"), pageOf(script("office.js"), script("functions.js"), pane));
  const { server, address } = await serve(folder, 0, "");
  const browser = await openBrowser(found, [officeOrigin]);
  try {
    const times: Record<string, number[]> = { empty: [], alone: [], "with-pane": [] };
    const interactive: number[] = [];
    for (let round = 0; round < rounds; round += 1) {
      for (const [name, list] of Object.entries(times)) list.push(await timeToLoad(browser, `${address}${name}.html`));
      interactive.push(await timeToUse(browser, `${address}pane.html`));
    }
    interactive.sort((one, other) => one - other);
    const functions = { name: "the functions script", times: times.alone ?? [] };
    return {
      ratios: [
        comparison("start of a page until it is loaded", functions, {
          name: "an empty page",
          times: times.empty ?? [],
        }),
        comparison(
          "start of a page until it is loaded",
          functions,
          { name: "the functions and the pane", times: times["with-pane"] ?? [] },
          1,
        ),
      ],
      paneInteractive: { best: interactive[0] as number, middle: interactive[rounds / 2] as number },
    };
  } finally {
    await browser.close();
    server.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** In a context of its own: what the browser has compiled before must not count. */
async function timeToLoad(browser: Browser, address: string): Promise<number> {
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.goto(address, { waitUntil: "load" });
  const time = await page.evaluate(
    () => (performance.getEntriesByType("navigation")[0] as PerformanceNavigationTiming).loadEventStart,
  );
  await context.close();
  return time;
}

async function timeToUse(browser: Browser, address: string): Promise<number> {
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.route(`${officeOrigin}/**`, (route) =>
    route.fulfill({ contentType: "text/javascript", body: officeStandIn }),
  );
  await page.addInitScript(() => {
    const watch = new MutationObserver(() => {
      if (document.querySelector("#pane [role=tab]") === null) return;
      watch.disconnect();
      // After the next frame it is on the screen and takes clicks.
      requestAnimationFrame(() => setTimeout(() => performance.mark("usable")));
    });
    watch.observe(document, { childList: true, subtree: true });
  });
  await page.goto(address);
  await page.waitForFunction(() => performance.getEntriesByName("usable").length > 0);
  const time = await page.evaluate(() => {
    const script = performance.getEntriesByType("resource").find(({ name }) => /\/pane\.\w+\.js$/.test(name));
    const usable = performance.getEntriesByName("usable")[0];
    return (usable?.startTime ?? Number.NaN) - (script as PerformanceResourceTiming).responseEnd;
  });
  await context.close();
  return time;
}

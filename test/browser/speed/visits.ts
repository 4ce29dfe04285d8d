import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { BrowserContext, Page } from "playwright-core";
import { type findBrowser, openProfile } from "../../../src/build/open-browser";

type FoundBrowser = NonNullable<Awaited<ReturnType<typeof findBrowser>>>;

/** How the page comes to the visitor. */
export interface Network {
  readonly name: string;
  /** Undefined: as fast as the machine hands it to itself. */
  readonly megabits?: number;
}

/** Of one visit, in milliseconds since the address was asked for. */
export interface VisitTimes {
  /** Words of the sheet are on the screen. */
  readonly visible: number;
  /** The sheet is calculated, drawn, and takes clicks and keys. */
  readonly ready: number;
  /** The longest that a key would have waited in the seconds after. */
  readonly busyAfter: number;
}

/** Somebody who comes to the page twice. */
export interface Visits {
  readonly cold: VisitTimes;
  readonly second: VisitTimes;
}

/** The first visit of somebody, and the second on another day: the browser was closed and has kept what it keeps. */
export async function visitTwice(found: FoundBrowser, address: string, network: Network): Promise<Visits> {
  const folder = await mkdtemp(join(tmpdir(), "tea-visitor-"));
  try {
    return { cold: await visit(found, folder, address, network), second: await visit(found, folder, address, network) };
  } finally {
    await rm(folder, { recursive: true, force: true, maxRetries: 5 });
  }
}

async function visit(found: FoundBrowser, folder: string, address: string, network: Network): Promise<VisitTimes> {
  const visitor = await openProfile(found, folder);
  try {
    return await timesOf(visitor, address, network);
  } finally {
    await visitor.close();
  }
}

async function timesOf(visitor: BrowserContext, address: string, network: Network): Promise<VisitTimes> {
  const page = visitor.pages()[0] ?? (await visitor.newPage());
  // What a browser does as it starts is not the page's.
  await page.waitForTimeout(1500);
  await slowDown(page, network);
  await page.addInitScript(watch);
  await page.goto(address, { waitUntil: "commit" });
  await page.waitForFunction(() => performance.getEntriesByName("sheet drawn").length > 0, undefined, {
    timeout: 120_000,
  });
  await page.waitForSelector("html[data-fetched]", { timeout: 60_000 });
  await page.waitForTimeout(500);
  return page.evaluate(() => {
    const visible = performance.getEntriesByName("words drawn")[0]?.startTime ?? Number.NaN;
    const ready = performance.getEntriesByName("sheet drawn")[0]?.startTime ?? Number.NaN;
    const busy = performance.getEntriesByName("busy").filter(({ startTime }) => startTime > ready);
    return { visible, ready, busyAfter: Math.max(0, ...busy.map((each) => (each as PerformanceMark).detail)) };
  });
}

async function slowDown(page: Page, { megabits }: Network): Promise<void> {
  if (megabits === undefined) return;
  const session = await page.context().newCDPSession(page);
  await session.send("Network.emulateNetworkConditions", {
    offline: false,
    latency: 20,
    downloadThroughput: (megabits * 1e6) / 8,
    uploadThroughput: (megabits * 1e6) / 8,
  });
}

/**
 * Runs in the page before anything of its own: marks when words are seen, when all is ready, and what keeps it busy.
 * Its functions have no names, as the loader of the sources would wrap those in something that the page has not.
 */
function watch(): void {
  const awaited = new Map([
    ["#first-sight td:not(:empty)", "words drawn"],
    ["html[data-ready]", "sheet drawn"],
  ]);
  new MutationObserver(() => {
    for (const [selector, mark] of awaited) {
      if (!document.querySelector(selector)) continue;
      awaited.delete(selector);
      // After the next frame it is on the screen.
      requestAnimationFrame(() => setTimeout(() => performance.mark(mark)));
    }
  }).observe(document, { childList: true, subtree: true, attributes: true, attributeFilter: ["data-ready"] });
  new PerformanceObserver((list) => {
    for (const { startTime, duration } of list.getEntries()) performance.mark("busy", { startTime, detail: duration });
  }).observe({ type: "longtask", buffered: true });
}

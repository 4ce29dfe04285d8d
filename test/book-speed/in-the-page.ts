/** A book in the page: how long it takes to open and to be saved. */
import { readFileSync } from "node:fs";
import type { Browser } from "playwright-core";
import { typeOver, untilReady } from "../browser/workbook-driver";

export interface PageTimes {
  /** From the chosen file to the question, and from the answer until the sheet takes clicks; milliseconds. */
  readonly opened: number;
  /** From the click to the file. */
  readonly saved: number;
  /** What the processor did for each in the tab, whatever else it did. */
  readonly openedProcessor: number;
  readonly savedProcessor: number;
  /** Of the tab's own process, above what it had before; megabytes. */
  readonly memory: number;
}

export async function timesInPage(browser: Browser, address: string, file: string): Promise<PageTimes> {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  try {
    await page.goto(address);
    await untilReady(page);
    await page.waitForSelector("html[data-fetched]", { state: "attached", timeout: 60_000 });
    const { resident: before, processor: began } = tabs();
    let most = before;
    const watching = setInterval(() => {
      most = Math.max(most, tabs().resident);
    }, 50);
    const patience = { timeout: 180_000 };
    const chosen = performance.now();
    await page.setInputFiles("#file", file);
    await page.waitForSelector("dialog", patience);
    const asked = performance.now();
    await page.getByRole("button", { name: "Open it" }).click();
    const agreed = performance.now();
    await page.waitForURL(/workbook=own-file/, patience);
    await page.waitForSelector("html[data-ready]", patience);
    const opened = asked - chosen + performance.now() - agreed;
    clearInterval(watching);
    const openedProcessor = tabs().processor - began;
    await typeOver(page, "Lots", "B2", "512");
    await page.waitForTimeout(3000);
    const quiet = tabs().processor;
    const clicked = performance.now();
    const [download] = await Promise.all([page.waitForEvent("download", patience), page.click("#download")]);
    const saved = performance.now() - clicked;
    const savedProcessor = tabs().processor - quiet;
    await download.path();
    return {
      opened: Math.round(opened),
      saved: Math.round(saved),
      openedProcessor,
      savedProcessor,
      memory: most - before,
    };
  } finally {
    await page.close();
  }
}

/**
 * All processes that draw pages of the browsers that this one started: megabytes that they have, and milliseconds of the
 * processor that they used. Linux alone tells it so.
 */
function tabs(): { resident: number; processor: number } {
  let [kilobytes, ticks] = [0, 0];
  for (const pid of descendants(process.pid)) {
    try {
      if (!readFileSync(`/proc/${pid}/cmdline`, "utf8").includes("--type=renderer")) continue;
      kilobytes += Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, "utf8"))?.[1] ?? 0);
      // Behind the name in brackets, the 12th and 13th field, in hundredths of a second.
      const [, fields = ""] = /\) (.*)/.exec(readFileSync(`/proc/${pid}/stat`, "utf8")) ?? [];
      const [user = 0, system = 0] = fields.split(" ").slice(11, 13).map(Number);
      ticks += user + system;
    } catch {
      // It has ended since.
    }
  }
  return { resident: Math.round(kilobytes / 1024), processor: ticks * 10 };
}

function descendants(pid: number): number[] {
  try {
    const children = readFileSync(`/proc/${pid}/task/${pid}/children`, "utf8").trim().split(/\s+/).filter(Boolean);
    return children.map(Number).flatMap((child) => [child, ...descendants(child)]);
  } catch {
    return [];
  }
}

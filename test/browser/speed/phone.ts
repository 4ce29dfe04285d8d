import { type findBrowser, openBrowser } from "../../../src/build/open-browser";

type FoundBrowser = NonNullable<Awaited<ReturnType<typeof findBrowser>>>;

/** How much slower than this computer's the processor of a maker's phone is taken to be. */
export const slowness = 4;

/**
 * The first visit of the phone page at a slowed processor: the milliseconds from the arrival of the last of the scripts
 * that its address names until its list of jobs is on the screen, and from then the time until a job that was tapped
 * shows its answer.
 */
export async function timesOfPhone(found: FoundBrowser, address: string): Promise<{ usable: number; opened: number }> {
  const browser = await openBrowser(found);
  try {
    const page = await browser.newPage({ viewport: { width: 390, height: 780 } });
    await page.waitForTimeout(1000);
    const session = await page.context().newCDPSession(page);
    await session.send("Emulation.setCPUThrottlingRate", { rate: slowness });
    await page.addInitScript(watch);
    await page.goto(address, { waitUntil: "commit" });
    await page.waitForFunction(() => performance.getEntriesByName("jobs shown").length > 0, undefined, {
      timeout: 60_000,
    });
    const usable = await page.evaluate(() => {
      const named = [
        ...document.querySelectorAll<HTMLScriptElement | HTMLLinkElement>("script[src], link[rel=modulepreload]"),
      ];
      const addresses = named.map((element) => ("src" in element ? element.src : element.href));
      const arrivals = addresses.flatMap((each) => performance.getEntriesByName(each, "resource"));
      const last = Math.max(...arrivals.map((each) => (each as PerformanceResourceTiming).responseEnd));
      return (performance.getEntriesByName("jobs shown")[0]?.startTime ?? Number.NaN) - last;
    });
    const began = await page.evaluate(() => {
      const now = performance.now();
      document.querySelector<HTMLElement>("#open-scale")?.click();
      return now;
    });
    await page.waitForFunction(() => performance.getEntriesByName("answer shown").length > 0, undefined, {
      timeout: 60_000,
    });
    const opened = await page.evaluate(
      (from) => (performance.getEntriesByName("answer shown")[0]?.startTime ?? Number.NaN) - from,
      began,
    );
    return { usable, opened };
  } finally {
    await browser.close();
  }
}

/** Runs in the page before anything of its own. */
function watch(): void {
  const awaited = new Map([
    [".jobs button", "jobs shown"],
    [".headline strong", "answer shown"],
  ]);
  new MutationObserver(() => {
    for (const [selector, mark] of awaited) {
      if (!document.querySelector(selector)) continue;
      awaited.delete(selector);
      // After the next frame it is on the screen.
      requestAnimationFrame(() => setTimeout(() => performance.mark(mark)));
    }
  }).observe(document, { childList: true, subtree: true });
}

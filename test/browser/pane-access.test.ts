import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import { jobs } from "../../src/jobs/jobs";
import type { FakeWorkbookHost } from "../host/fake-workbook-host";
import { violations } from "./axe";
import { openFakePane } from "./fake-pane";
import { sharedBrowser } from "./shared-browser";

/** On the page. */
declare const host: FakeWorkbookHost;
declare const stops: string[];

const found = await findBrowser();

const narrowest = 320;
const widest = 600;
const widths = [narrowest, 350, widest];
const firstLook = "light";
const looks: Readonly<Record<string, BrowserContextOptions>> = {
  [firstLook]: { colorScheme: "light" },
  dark: { colorScheme: "dark" },
  "a contrast mode": { forcedColors: "active", colorScheme: "dark" },
};

const openTab = (tab: string) => (page: Page) => page.click(`#tab-${tab}`);

const openJob = (job: string) => async (page: Page) => {
  await openTab("jobs")(page);
  if (await page.locator(".back").count()) await page.click(".back");
  await page.click(`#open-${job}`);
};

const openWorking = (cell: string, waitFor: string) => async (page: Page) => {
  await page.evaluate((cell) => host.select("Slips", cell), cell);
  await openTab("working")(page);
  await page.waitForSelector(waitFor);
};

/** Everything that the pane can show, and the way there. */
const places: Readonly<Record<string, (page: Page) => Promise<unknown>>> = {
  "the list of jobs": openTab("jobs"),
  ...Object.fromEntries(jobs.map(({ id }) => [`the job ${id}`, openJob(id)])),
  "a job with a field that needs another look": async (page) => {
    await openJob("charges")(page);
    await page.fill("#charges-weight", "a few");
    await page.click(".write .primary");
    await page.waitForSelector(".write .problem");
  },
  "the working of no cell": openWorking("A1", "#pane-page"),
  "the working of a cell": openWorking("G2", ".steps"),
  "the working of an error": openWorking("E3", ".call .problem"),
  "the sheet check before it has run": openTab("check"),
  "the sheet check with findings": async (page) => {
    await openTab("check")(page);
    await page.click(".sheet-check .primary");
    await page.waitForSelector(".findings");
  },
  "a workbook without the add-in, asked": async (page) => {
    await openJob("without-add-in")(page);
    await page.click(".without-add-in .primary");
    await page.waitForSelector("#way-to-names");
  },
  "a workbook without the add-in, done": async (page) => {
    await page.evaluate(() => {
      host.stubborn.add("Slips!E4");
      host.calculation = (formula) => (formula.startsWith("=TEA_TARGET") ? "#NAME?" : 0.215);
    });
    await openJob("without-add-in")(page);
    await page.click(".without-add-in .primary");
    await page.click(".without-add-in .write .primary");
    await page.waitForSelector(".without-add-in .done");
  },
  // Some of them, with everything that a function's page has; the long list of all is more of the same.
  functions: async (page) => {
    await openTab("functions")(page);
    await page.fill('input[type="search"]', "moisture");
  },
  cautions: openTab("cautions"),
};

/** Notes of every element that takes the focus what a maker without a mouse would have against it; in the page. */
function watchFocus(): void {
  const stops: string[] = [];
  Object.assign(globalThis, { stops });
  const numbers = (color: string) => (color.match(/[\d.]+/g) ?? []).map(Number);
  const light = (color: string) => {
    const [red = 0, green = 0, blue = 0] = numbers(color).map((part) =>
      part / 255 <= 0.04045 ? part / 255 / 12.92 : ((part / 255 + 0.055) / 1.055) ** 2.4,
    );
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const contrast = (one: string, other: string) => {
    const [dark = 0, bright = 0] = [light(one), light(other)].sort((a, b) => a - b);
    return (bright + 0.05) / (dark + 0.05);
  };
  /** What is painted behind an element. */
  const behind = (element: Element | null): string => {
    if (element === null) return "rgb(255, 255, 255)";
    const { backgroundColor } = getComputedStyle(element);
    return numbers(backgroundColor)[3] === 0 ? behind(element.parentElement) : backgroundColor;
  };
  addEventListener("focusin", ({ target }) => {
    const element = target as HTMLElement;
    if (element.tabIndex < 0) return;
    const { outlineStyle, outlineWidth, outlineColor } = getComputedStyle(element);
    const { top, bottom, left, right } = element.getBoundingClientRect();
    const tabs = document.querySelector(".tabs")?.getBoundingClientRect();
    const isCovered = element.closest(".page") !== null && top < (tabs?.bottom ?? 0) - 1 && bottom < innerHeight;
    const trouble = [
      outlineStyle === "none" || Number.parseFloat(outlineWidth) < 2 ? "no outline" : "",
      contrast(outlineColor, behind(element.parentElement)) < 3 ? `a faint outline, ${outlineColor}` : "",
      isCovered ? "under the tabs" : "",
      top >= innerHeight || bottom <= 0 || left < 0 || right > innerWidth ? "out of sight" : "",
    ].filter((each) => each !== "");
    const name = element.id || element.getAttribute("aria-label") || element.textContent?.slice(0, 40);
    stops.push(trouble.length === 0 ? "" : `${element.tagName} ${name}: ${trouble.join(", ")}`);
  });
}

/** Goes through the page with the Tab key, and says what was found at each stop. */
async function walk(page: Page, most: number): Promise<string[]> {
  await page.evaluate(() => {
    stops.length = 0;
    const start = document.createElement("span");
    start.tabIndex = -1;
    document.body.prepend(start);
    start.focus();
    start.remove();
  });
  for (let step = 0; step < most; step += 1) await page.keyboard.press("Tab");
  return page.evaluate(() => stops);
}

/** Everything that the Tab key should come to. One tab of the tabs stands for all. */
const controls = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      [...document.querySelectorAll<HTMLElement>("a[href], button, input, select, summary, [tabindex='0']")].filter(
        (element) => element.tabIndex >= 0 && element.checkVisibility() && !element.matches(":disabled"),
      ).length,
  );

describe.skipIf(found === undefined)("the whole pane", () => {
  let browser: Browser;

  beforeAll(async () => {
    if (found) browser = await sharedBrowser(found);
  });

  describe.each(Object.keys(looks))("in %s meets WCAG 2.2 AA, scrolls in one way and shows its focus:", (look) => {
    let page: Page;

    beforeAll(async () => {
      page = await openFakePane(browser, looks[look]);
      await page.evaluate(watchFocus);
    });
    afterAll(() => page.context().close());

    test.each(Object.entries(places))("%s", async (_, goThere) => {
      for (const width of widths) {
        await page.setViewportSize({ width, height: 800 });
        await goThere(page);
        await page.evaluate(() => {
          for (const details of document.querySelectorAll("details")) details.open = true;
        });
        // What axe-core looks at beside the colours is the same in every look, and between the outer widths.
        if (look === firstLook && (width === narrowest || width === widest))
          expect(await violations(page), `at ${width} pixels`).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      }
      // The focus looks alike at every width, and is covered most easily at the narrowest.
      await page.setViewportSize({ width: narrowest, height: 800 });
      if (look !== firstLook) expect(await violations(page, { lookedFor: "colours" })).toEqual([]);
      const stops = await walk(page, await controls(page));
      expect(stops.filter((trouble) => trouble !== "")).toEqual([]);
      expect(stops.length, "stops of the Tab key").toBe(await controls(page));
    });
  });
});

import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import { jobs } from "../../src/jobs/jobs";
import { violations } from "../browser/axe";
import { openFakePane } from "../browser/fake-pane";
import { sharedBrowser } from "../browser/shared-browser";
import type { FakeWorkbookHost } from "../host/fake-workbook-host";

/** On the page. */
declare const host: FakeWorkbookHost;
declare const stops: string[];
declare const fetchParts: () => Promise<void>;

const found = await findBrowser();

const widest = 600;
const between = 350;
const narrowest = 320;
type Look = NonNullable<Parameters<Page["emulateMedia"]>[0]>;
const firstLook = "light";
const looks: Readonly<Record<string, Look>> = {
  [firstLook]: { forcedColors: "none", colorScheme: "light" },
  dark: { forcedColors: "none", colorScheme: "dark" },
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

/** Everything that the Tab key should come to. One tab of the tabs stands for all; in the page. */
const controls = (): HTMLElement[] =>
  [...document.querySelectorAll<HTMLElement>("a[href], button, input, select, summary, [tabindex='0']")].filter(
    (element) => element.tabIndex >= 0 && element.checkVisibility() && !element.matches(":disabled"),
  );

const countControls = (page: Page): Promise<number> => page.evaluate(`(${controls})().length`);

/** Goes through the page with the Tab key, which is held down, and says what was found at each stop. */
async function walk(page: Page): Promise<string[]> {
  await page.evaluate(() => {
    stops.length = 0;
    const start = document.createElement("span");
    start.tabIndex = -1;
    document.body.prepend(start);
    start.focus();
    start.remove();
  });
  await Promise.all(Array.from({ length: await countControls(page) }, () => page.keyboard.down("Tab")));
  await page.keyboard.up("Tab");
  return page.evaluate(() => stops);
}

/** Says the same of a page that the Tab key has been through in another look. */
async function lookAtEachFocus(page: Page): Promise<string[]> {
  // The focus shows because it was a key that moved it last.
  await page.keyboard.press("Tab");
  await page.evaluate(
    `stops.length = 0; document.activeElement.blur(); for (const each of (${controls})()) each.focus()`,
  );
  return page.evaluate(() => stops);
}

/** Where everything in the page is, before it is scrolled. */
const layout = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    scrollTo(0, 0);
    return [...document.body.querySelectorAll("*")].map((element) => {
      const { x, y, width, height } = element.getBoundingClientRect();
      return `${element.tagName} ${[x, y, width, height]}`;
    });
  });

/** Everything on which the contrast of a text depends. */
const colours = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.body.querySelectorAll("*")].map((element) => {
      const { color, backgroundColor, backgroundImage, opacity, fontSize, fontWeight } = getComputedStyle(element);
      const all = [color, backgroundColor, backgroundImage, opacity, fontSize, fontWeight, element.checkVisibility()];
      return `${element.tagName} ${all}`;
    }),
  );

/** Opens whatever can be opened, and waits for the pictures, which are drawn a moment after their place has its width. */
async function untilDrawn(page: Page): Promise<void> {
  await page.evaluate(async () => {
    for (const details of document.querySelectorAll("details")) details.open = true;
    for (let frame = 0; frame < 3; frame += 1) await new Promise(requestAnimationFrame);
  });
  await page.waitForFunction(() =>
    [...document.querySelectorAll(".drawing")].every(
      (place) => place.querySelector("svg")?.getAttribute("width") === `${Math.floor(place.clientWidth)}`,
    ),
  );
}

describe.skipIf(found === undefined)("the whole pane", () => {
  let page: Page;

  beforeAll(async () => {
    if (!found) return;
    page = await openFakePane(await sharedBrowser(found));
    await page.evaluate(watchFocus);
    await page.evaluate(() => fetchParts());
  });
  afterAll(() => page?.context().close());

  describe.each(Object.entries(places))("%s", (_, goThere) => {
    /** In the first look, at the narrowest. */
    let firstLayout: readonly string[];

    beforeAll(async () => {
      await page.emulateMedia(looks[firstLook]);
      await page.setViewportSize({ width: widest, height: 800 });
      await goThere(page);
      // What the mouse is above has a colour of its own.
      await page.mouse.move(0, 0);
    });

    test("meets WCAG 2.2 AA and scrolls in one way at every width", async () => {
      const go = async (width: number) => {
        await page.setViewportSize({ width, height: 800 });
        await untilDrawn(page);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      };
      await go(widest);
      const widestColours = await colours(page);
      expect(await violations(page, { lookedFor: "all but colours", met: "target-size" }), "widest").toEqual([]);
      // What axe-core looks at is the same between the outer widths, and colours are at all of them.
      await go(between);
      await go(narrowest);
      expect(await violations(page), "narrowest").toEqual([]);
      expect(await colours(page)).toEqual(widestColours);
    });

    // A look has other colours, and everything else at the same place: what else axe-core looks at, and how it scrolls,
    // is as it was. The focus looks alike at every width, and is covered most easily at the narrowest.
    test.each(Object.entries(looks))("in %s has enough contrast, and shows its focus", async (look, media) => {
      await page.emulateMedia(media);
      if (look === firstLook) firstLayout = await layout(page);
      else {
        expect(await layout(page)).toEqual(firstLayout);
        expect(await violations(page, { lookedFor: "colours" })).toEqual([]);
      }
      const stops = await (look === firstLook ? walk(page) : lookAtEachFocus(page));
      expect(stops.filter((trouble) => trouble !== "")).toEqual([]);
      expect(stops.length, "stops of the focus").toBe(await countControls(page));
    });
  });
});

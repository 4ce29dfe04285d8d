import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import type { FakeWorkbookHost } from "../host/fake-workbook-host";
import { openFakePane } from "./fake-pane";
import { sharedBrowser } from "./shared-browser";

/** On the page. */
declare const host: FakeWorkbookHost;

const found = await findBrowser();

describe.skipIf(!found)("the working beside a workbook that is touched when it works something out", () => {
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    if (found) browser = await sharedBrowser(found);
    page = await openFakePane(browser);
  });

  afterAll(() => page?.context().close());

  test("asks it on a click only, says what it refuses, then goes on, and keeps the keyboard", async () => {
    const [sheet] = await page.evaluate(() => {
      host.evaluatesUntouched = false;
      return host.usedCells().then(({ sheet }) => [sheet]);
    });
    await page.evaluate(
      ([sheet]) => {
        host.put(sheet, "K30", { formula: "=TEA.DRYBASIS(IF(A1,0.75,0.6))", value: 3 });
        host.select(sheet, "K30");
      },
      [sheet as string] as const,
    );
    await page.click("#tab-working");
    const button = page.getByRole("button", { name: "Let Excel work it out" });
    await button.focus();
    expect(await page.evaluate(() => host.evaluated)).toEqual([]);
    await page.keyboard.press("Enter");
    await page.waitForSelector(".working .problem:not(:empty)");
    expect(await page.textContent(".working .problem")).toContain("cannot work out");
    expect(await page.locator(".working .steps").count()).toBe(0);

    await page.evaluate(() => Object.assign(host.expressions, { "IF(A1,0.75,0.6)": 0.75 }));
    await page.keyboard.press("Enter");
    await page.waitForSelector(".working .steps");
    expect(await page.textContent(".working")).toContain("IF(A1,0.75,0.6) = 75 % (worked out by the workbook)");
    expect(await button.count()).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.className)).toBe("working");
  });
});

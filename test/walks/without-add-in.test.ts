/** In the pane beside a workbook: its formulas put into it, and back, by keyboard alone. */
import type { Browser, Page } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import type { HostProblem, Trouble } from "../../src/host/host-problem";
import { openFakePane } from "../browser/fake-pane";
import { sharedBrowser } from "../browser/shared-browser";
import type { FakeWorkbookHost } from "../host/fake-workbook-host";

/** On the page. */
declare const host: FakeWorkbookHost;
declare const fail: (reason: HostProblem["reason"], trouble: Trouble) => void;

const found = await findBrowser();

describe.skipIf(found === undefined)("a workbook without the add-in", () => {
  let browser: Browser;
  beforeAll(async () => {
    if (found) browser = await sharedBrowser(found);
  });

  /** The part, opened by keyboard. */
  async function open(locale = "en-US", prepare: () => void = () => {}): Promise<Page> {
    const page = await openFakePane(browser, { locale });
    await page.evaluate(prepare);
    if (locale === "zh-CN") await page.click(".settings button[lang=zh-Hans]");
    await page.focus("#open-without-add-in");
    await page.keyboard.press("Enter");
    await page.waitForSelector(".without-add-in h1");
    return page;
  }

  const focused = (page: Page) => page.evaluate(() => document.activeElement?.textContent ?? "");
  const text = (page: Page) => page.textContent(".without-add-in");
  const press = async (page: Page, ...keys: string[]) => {
    for (const key of keys) await page.keyboard.press(key);
  };
  const look = async (page: Page) => {
    await press(page, "Tab", "Enter");
    await page.waitForSelector(".without-add-in h2");
  };
  const formulas = (page: Page) =>
    page.evaluate(() => ["E2", "E6", "G2"].map((address) => host.cell("Slips", address)?.formula));
  const before = ["=TEA.OUTTURN(B2,D2)", "=TEA.OUTTURN(B6,D6)", "=TEA.TARGETWEIGHT(B2,C2,65%)"];

  test("says what will change, changes it, and changes it back, by keyboard alone", async () => {
    const page = await open();
    expect(await focused(page)).toBe("For phones and for people without the add-in");
    await look(page);
    expect(await focused(page)).toBe("Without the add-in");
    const asked = await text(page);
    expect(asked).toContain("5 formulas on 1 sheet will call formulas in the workbook");
    expect(asked).toMatch(/\d\d names that begin with TEA_ or _TEA_ come into the workbook\./);
    expect(asked).toContain("Save a copy of the file first.");
    expect(await formulas(page)).toEqual(before);

    await press(page, "Tab");
    expect(await focused(page)).toBe("Change 5 formulas");
    await press(page, "Enter");
    await page.waitForSelector(".without-add-in h2.done");
    expect(await focused(page)).toMatch(
      /^5 formulas call formulas in the workbook now\. Save the workbook\. \d\d names came in\. Each of these cells shows/,
    );
    expect(await formulas(page)).toEqual(before.map((formula) => formula.replace("TEA.", "TEA_")));

    expect(await text(page)).toContain("5 formulas on 1 sheet will call the functions of the add-in again.");
    await press(page, "Tab");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("keep-names");
    await press(page, "Tab", "Enter");
    await page.waitForFunction(() => document.querySelector(".done")?.textContent?.includes("again"));
    expect(await focused(page)).toMatch(/^5 formulas call functions of the add-in again\. \d\d names went out\.$/);
    expect(await formulas(page)).toEqual(before);
    expect(await page.evaluate(() => host.bookNames)).toEqual([]);

    await page.focus(".back");
    await press(page, "Enter");
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("open-without-add-in");
    await page.context().close();
  });

  test("leaves it as it is when told to", async () => {
    const page = await open();
    await look(page);
    await press(page, "Tab", "Tab", "Enter");
    expect(await page.locator(".without-add-in h2").count()).toBe(0);
    expect(await focused(page)).toBe("For phones and for people without the add-in");
    expect(await formulas(page)).toEqual(before);
    await page.context().close();
  });

  test("names what stays: protected sheets, names of the maker's, functions without a formula, cells that refuse", async () => {
    const page = await open("en-US", () => {
      host.put("Book", "C1", { value: 1, formula: "=TEA.LOTFLAG(A1,B1:B9,C1:C9)" });
      host.put("Book", "C2", { value: 1, formula: "=TEA.WATER(A1,0.7)" });
      host.protectedSheets.add("Book");
      host.bookNames = [{ name: "TEA_TARGETWEIGHT", formula: "=Slips!$G$2" }];
      host.stubborn.add("Slips!E4");
      host.calculation = (formula) =>
        formula === "=TEA_OUTTURN(B2,D2)" ? "#NAME?" : (host.cell("Slips", "E5")?.value ?? 0);
    });
    await look(page);
    const asked = await text(page);
    for (const said of [
      "1 function has no such formula and stays the add-in's: LOTFLAG.",
      "The sheet “Book” is protected: 1 formula there is not changed",
      "not touched: TEA_TARGETWEIGHT.",
      "What would need them stays the add-in's: TARGETWEIGHT.",
    ]) {
      expect(asked).toContain(said);
    }
    await press(page, "Tab", "Enter");
    await page.waitForSelector(".without-add-in h2.done");
    const came = await text(page);
    expect(came).toMatch(/Not changed\s*Slips!E4\s*Excel did not take the other formula here\./);
    expect(came).toMatch(/Other answers than before[\s\S]*Slips!E2\s*before: 0.215; now: #NAME\?/);
    await page.click('[aria-label="Go to Slips!E2"]');
    expect(await page.evaluate(() => host.visited.at(-1))).toEqual({ sheet: "Slips", row: 1, column: 4 });
    await page.context().close();
  });

  test("says why when Excel refuses, and that it may have stopped on the way", async () => {
    const page = await open();
    await page.evaluate(() => fail("not here", "not in this Excel"));
    await press(page, "Tab", "Enter");
    await page.waitForSelector(".without-add-in .problem");
    expect(await page.textContent(".without-add-in .problem")).toMatch(/^This Excel cannot do this/);
    await page.evaluate(() => (host.problem = undefined));
    await press(page, "Tab", "Enter");
    await page.waitForSelector(".without-add-in h2");
    await page.evaluate(() => {
      host.changeFormulas = async () => {
        throw new Error("gone");
      };
    });
    await press(page, "Tab", "Enter");
    await page.waitForSelector(".without-add-in .problem");
    expect(await page.textContent(".without-add-in .problem")).toMatch(/some formulas may have changed already/);
    await page.context().close();
  });

  test("says so where nothing calls the add-in", async () => {
    const page = await open("en-US", () => {
      for (const address of ["E2", "E3", "E4", "E6", "G2"]) host.put("Slips", address, 1);
    });
    await look(page);
    expect(await focused(page)).toBe("No formula in this workbook calls a function of the add-in.");
    await page.context().close();
  });

  test("speaks Chinese", async () => {
    const page = await open("zh-CN");
    await look(page);
    expect(await text(page)).toContain("1 张工作表上的 5 个公式将改用工作簿里的公式");
    await press(page, "Tab", "Enter");
    await page.waitForSelector(".without-add-in h2.done");
    expect(await text(page)).toContain("5 个公式现在使用工作簿里的公式");
    await page.context().close();
  });

  test("is not offered where the workbook's formulas are not changed as a whole", async () => {
    const page = await openFakePane(browser);
    await page.evaluate(() => (host.changesFormulas = false));
    await page.click("#tab-check");
    await page.click("#tab-jobs");
    expect(await page.locator(".jobs button").count()).toBeGreaterThan(5);
    expect(await page.locator("#open-without-add-in").count()).toBe(0);
    await page.context().close();
  });
});

import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildPane } from "../../src/build/add-in";
import { findBrowser } from "../../src/build/open-browser";
import { officeOrigin } from "../../src/build/page-policy";
import { sharedBrowser } from "../browser/shared-browser";

const found = await findBrowser();
const kinds: Record<string, string> = { ".html": "text/html", ".js": "text/javascript", ".css": "text/css" };

/** In the place of Office.js: an Excel in a theme and a language, which refuses everything with a code. */
const office = (background: string, language: string, code: string) => `
  const refuse = async () => { throw Object.assign(new Error(), { code: "${code}" }); };
  window.Excel = { run: refuse };
  window.Office = {
    HostType: { Excel: "Excel" },
    onReady: async () => ({ host: "Excel" }),
    context: { displayLanguage: "${language}", officeTheme: { bodyBackgroundColor: "${background}" } },
  };`;

describe.skipIf(found === undefined)("the pane in Excel", () => {
  const folder = mkdtempSync(join(tmpdir(), "tea-excel-pane-"));
  const complaints: string[] = [];
  let browser: Browser;

  beforeAll(async () => {
    // As it is shipped, since it is timed here.
    await buildPane(folder);
    if (found) browser = await sharedBrowser(found, [officeOrigin]);
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  async function openPane({ background = "#FFFFFF", language = "en-US", code = "InvalidSelection" }): Promise<Page> {
    const context = await browser.newContext({ viewport: { width: 350, height: 700 }, colorScheme: "light" });
    await context.route("**/*", (route) => {
      const url = new URL(route.request().url());
      const file = join(folder, url.pathname);
      if (url.host === "localhost" && existsSync(file)) {
        return route.fulfill({ body: readFileSync(file), contentType: kinds[extname(file)] ?? "" });
      }
      return route.fulfill({ body: office(background, language, code), contentType: "text/javascript" });
    });
    const page = await context.newPage();
    page.on("console", (message) => complaints.push(message.text()));
    page.on("pageerror", (problem) => complaints.push(problem.message));
    await page.goto("http://localhost/pane.html");
    await page.waitForSelector("#pane .jobs");
    return page;
  }

  test.each([
    ["#FFFFFF", "rgb(255, 255, 255)"],
    ["#262626", "rgb(41, 41, 41)"],
  ])("takes its theme from Office, %s, whatever the system has", async (background, shown) => {
    const page = await openPane({ background });
    const colour = await page.evaluate(
      () => getComputedStyle(document.getElementById("pane") as HTMLElement).backgroundColor,
    );
    expect(colour).toBe(shown);
    await page.context().close();
  });

  test("speaks Excel's language", async () => {
    const page = await openPane({ language: "zh-CN" });
    expect(await page.getAttribute("#pane [lang]", "lang")).toBe("zh-Hans");
    await page.context().close();
  });

  test.each([
    ["InvalidOperationInCellEditMode", "press Enter or Escape"],
    ["InvalidSelection", "select one cell"],
    ["AccessDenied", "may be protected"],
  ])("says in plain words that Excel refused (%s), and keeps what was typed", async (code, words) => {
    const page = await openPane({ code });
    await page.click("#open-scale");
    await page.fill("#scale-weight", "312");
    const answer = await page.textContent("#pane .preview");
    await page.click("#pane .write .primary");
    await expect.poll(() => page.textContent("#pane .write [role=status]")).toContain(words);
    expect(await page.inputValue("#scale-weight")).toBe("312");
    expect(await page.textContent("#pane .preview")).toBe(answer);
    await page.reload();
    expect(await page.inputValue("#scale-weight")).toBe("312");
    await page.context().close();
  });

  test("draws its pictures under the policy of its page, and nothing complains", async () => {
    const page = await openPane({});
    for (const job of ["charges", "scale", "route", "season", "balance"]) {
      await page.click(`#open-${job}`);
      await page.waitForSelector("#pane .preview");
      await page.waitForTimeout(200);
      await page.click("#pane .back");
    }
    await page.context().close();
    expect(complaints).toEqual([]);
  });
});

import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildPane } from "../../src/build/add-in";
import { findBrowser, forget } from "../../src/build/open-browser";
import { officeOrigin } from "../../src/build/page-policy";
import { catalogue } from "../../src/core/catalogue";
import { english } from "../../src/words/en/messages";
import { languages } from "../../src/words/languages";
import { chinese } from "../../src/words/zh/messages";
import { sharedBrowser } from "../browser/shared-browser";

const found = await findBrowser();
const folder = mkdtempSync(join(tmpdir(), "tea-pane-"));
const kinds: Record<string, string> = { ".html": "text/html", ".js": "text/javascript", ".css": "text/css" };

let browser: Browser;
let shared: Page | undefined;
/** Addresses that the page asked for, and what the browser complained about. */
const asked: string[] = [];
const complaints: string[] = [];

/** A window with the built pane at an address of its own, with nothing in the place of Office.js. */
async function openWindow(options: BrowserContextOptions = {}): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 320, height: 640 }, ...options });
  await context.route("**/*", (route) => {
    const url = new URL(route.request().url());
    asked.push(url.origin);
    const file = join(folder, url.pathname);
    if (url.host === "localhost" && existsSync(file)) {
      return route.fulfill({ body: readFileSync(file), contentType: kinds[extname(file)] ?? "" });
    }
    return route.fulfill({ body: "", contentType: "text/javascript" });
  });
  const page = await context.newPage();
  page.on("console", (message) => complaints.push(message.text()));
  page.on("pageerror", (problem) => complaints.push(problem.message));
  await goToPane(page);
  return page;
}

async function goToPane(page: Page): Promise<void> {
  await page.goto("http://localhost/pane.html");
  await page.waitForSelector(".jobs");
}

/** As a visitor finds it who has kept nothing, in the window that these tests share: it starts sooner there. */
async function openPane(): Promise<Page> {
  if (shared === undefined) {
    shared = await openWindow();
  } else {
    await shared.unrouteAll();
    await shared.emulateMedia({ colorScheme: "light", forcedColors: "none" });
    await forget(shared, "http://localhost/");
    await goToPane(shared);
  }
  return shared;
}

async function openFunctions(): Promise<Page> {
  const page = await openPane();
  await page.click("#tab-functions");
  await page.waitForSelector("summary");
  return page;
}

const focused = (page: Page) =>
  page.evaluate(() => {
    const element = document.activeElement as HTMLElement;
    return { tag: element.tagName, text: element.textContent, outline: getComputedStyle(element).outlineStyle };
  });

describe.skipIf(found === undefined)("the pane in a browser", () => {
  beforeAll(async () => {
    await buildPane(folder);
    if (found) browser = await sharedBrowser(found, [officeOrigin]);
  });
  afterAll(async () => {
    rmSync(folder, { recursive: true, force: true });
    await shared?.context().close();
  });

  test("lists every function, under its policy, and asks nobody but its host and Microsoft", async () => {
    const page = await openFunctions();
    expect(await page.locator("summary .name").allInnerTexts()).toEqual(catalogue.map(({ spec }) => spec.id));
    expect(complaints).toEqual([]);
    expect([...new Set(asked)].sort()).toEqual(["http://localhost", officeOrigin]);
  });

  test("is used with the keyboard alone, and shows where the focus is", async () => {
    const page = await openPane();
    // The unit, the language, the tabs.
    for (let step = 0; step < 3; step += 1) await page.keyboard.press("Tab");
    expect(await focused(page)).toMatchObject({ tag: "BUTTON", text: "Jobs", outline: "solid" });
    await page.keyboard.press("ArrowLeft");
    expect(await focused(page)).toMatchObject({ tag: "BUTTON", text: "Cautions", outline: "solid" });
    expect(await page.locator("h1").textContent()).toBe("Cautions");
    await page.keyboard.press("ArrowLeft");
    await page.waitForSelector("h1 >> text=Functions");

    await page.keyboard.press("Tab");
    expect(await focused(page)).toMatchObject({ tag: "INPUT", outline: "solid" });
    await page.keyboard.type("targetweight");
    expect(await page.locator('[role="status"]').textContent()).toBe("1 function");
    await page.keyboard.press("Tab");
    expect(await focused(page)).toMatchObject({ tag: "SUMMARY", outline: "solid" });
    await page.keyboard.press("Enter");
    expect(await page.locator("details[open] pre").first().textContent()).toBe(
      "TEA.TARGETWEIGHT(weight, moisture, targetMoisture)",
    );
  });

  test("has its first job typed into while what draws pictures is still on its way", async () => {
    const page = await openPane();
    let letGo = () => {};
    const held = new Promise<void>((done) => {
      letGo = done;
    });
    await page.route("**/answer-picture.*", async (route) => {
      await held;
      await route.fallback();
    });
    await page.click("#open-charges");
    await page.fill("#charges-weight", "820");
    await page.waitForSelector(".preview table");
    expect(await page.locator(".preview").textContent()).toMatch(/820|205/);
    expect(await page.locator(".picture").count()).toBe(0);
    letGo();
    await page.waitForSelector(".picture svg");
  });

  test("says of a part that cannot be fetched that it cannot, and goes on, until it is opened anew", async () => {
    const page = await openPane();
    await page.route("**/catalogue-parts.*", (route) => route.abort("connectionrefused"));
    await page.click("#tab-functions");
    await page.waitForSelector(`text=${english.shell.notFetched}`);
    await page.click("#tab-jobs");
    await page.waitForSelector(".jobs");
    await page.route("**/messages.*", (route) => route.abort("connectionrefused"));
    await page.click(`text=${languages.zh.name}`);
    await page.waitForSelector(`text=${english.shell.noWords(languages.zh.name)}`);
    await page.unroute("**/catalogue-parts.*");
    await page.unroute("**/messages.*");
    await page.reload();
    await page.click("#tab-functions");
    await page.waitForSelector("summary");
    await page.click(`text=${languages.zh.name}`);
    await page.waitForSelector(`h1 >> text=${chinese.tabs.functions}`);
    complaints.length = 0;
  });

  test("says so when a search finds nothing", async () => {
    const page = await openFunctions();
    await page.fill('input[type="search"]', "zebra");
    expect(await page.locator('[role="status"]').textContent()).toMatch(/^No function/);
  });

  test("speaks the language of its reader, and the other one at the press of a button, also after a reload", async () => {
    const page = await openWindow({ locale: "zh-CN" });
    expect(await page.locator("h1").textContent()).toBe(chinese.tabs.jobs);
    await page.click(`text=${languages.en.name}`);
    await page.waitForSelector(`h1 >> text=${english.tabs.jobs}`);
    await page.reload();
    await page.waitForSelector(".jobs");
    expect(await page.locator("h1").textContent()).toBe(english.tabs.jobs);
    await page.context().close();
  });

  test("keeps what was typed into a job over other tabs and a reload", async () => {
    const page = await openPane();
    await page.click("#open-turns");
    await page.fill("#turns-interval", "0:4");
    await page.click("#tab-cautions");
    await page.click("#tab-jobs");
    expect(await page.inputValue("#turns-interval")).toBe("0:4");
    await page.reload();
    await page.waitForSelector("#turns-interval");
    expect(await page.inputValue("#turns-interval")).toBe("0:4");
    expect(await page.getAttribute("#turns-interval", "aria-invalid")).toBe("true");
  });

  test("is light or dark as the system is, and keeps to the system's colours in a contrast mode", async () => {
    const page = await openPane();
    const colours = async (media: Parameters<Page["emulateMedia"]>[0]) => {
      await page.emulateMedia(media);
      await page.reload();
      await page.waitForSelector(".jobs");
      return page.evaluate(() => {
        const { backgroundColor, color } = getComputedStyle(document.getElementById("pane") as HTMLElement);
        const canvas = document.createElement("div");
        canvas.style.color = "CanvasText";
        document.body.append(canvas);
        return { backgroundColor, color, system: getComputedStyle(canvas).color };
      });
    };
    expect(await colours({ colorScheme: "light" })).toMatchObject({ backgroundColor: "rgb(255, 255, 255)" });
    expect(await colours({ colorScheme: "dark" })).toMatchObject({ backgroundColor: "rgb(41, 41, 41)" });
    const contrast = await colours({ forcedColors: "active", colorScheme: "dark" });
    expect(contrast.color).toBe(contrast.system);
  });
});

import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { bundlePage } from "../../src/build/bundle-pages";
import { forget } from "../../src/build/open-browser";

const project = resolve(dirname(fileURLToPath(import.meta.url)), "../..");

const address = "http://localhost/";

interface BuiltPane {
  readonly folder: string;
  readonly html: string;
}

let building: Promise<BuiltPane> | undefined;

async function build(): Promise<BuiltPane> {
  const folder = mkdtempSync(join(tmpdir(), "tea-fake-pane-"));
  process.on("exit", () => rmSync(folder, { recursive: true, force: true }));
  const { scripts, styles } = await bundlePage({
    project,
    folder,
    scripts: { pane: "test/browser/pane-with-fake-host.ts" },
  });
  const html = `<!doctype html><html lang="en"><meta charset="utf-8"><title>Pane</title><link rel="stylesheet" href="${styles.pane}"><body class="tea-pane-page"><main id="pane"></main><script type="module" src="${scripts.pane?.[0]}"></script></body></html>`;
  return { folder, html };
}

/**
 * The pane beside a workbook in memory (pane-with-fake-host.ts), built once for all test files of a process. In a
 * context of its own, so that nothing is kept from the page before; close that when done.
 */
export async function openFakePane(browser: Browser, options: BrowserContextOptions = {}): Promise<Page> {
  building ??= build();
  const { folder, html } = await building;
  const context = await browser.newContext({ viewport: { width: 350, height: 800 }, ...options });
  await context.route("**/*", (route) => {
    const { pathname } = new URL(route.request().url());
    if (pathname === "/") return route.fulfill({ body: html, contentType: "text/html" });
    const contentType = pathname.endsWith(".css") ? "text/css" : "text/javascript";
    return route.fulfill({ body: readFileSync(join(folder, pathname)), contentType });
  });
  const page = await context.newPage();
  page.setDefaultTimeout(10_000);
  await goToPane(page);
  return page;
}

/** The same beside a new workbook, in a window that has shown it before, where it starts sooner; nothing is kept. */
export async function openFakePaneAnew(page: Page): Promise<void> {
  await forget(page, address);
  await goToPane(page);
}

async function goToPane(page: Page): Promise<void> {
  await page.goto(address);
  await page.waitForSelector(".jobs");
}

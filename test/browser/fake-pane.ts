import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve as resolvePath } from "node:path";
import { fileURLToPath } from "node:url";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { runWebpack } from "../../src/build/run-webpack";
import { resolve, rulesWithStyleFiles } from "../../src/build/webpack-rules";

const project = resolvePath(dirname(fileURLToPath(import.meta.url)), "../..");

const html =
  '<!doctype html><html lang="en"><meta charset="utf-8"><title>Pane</title><link rel="stylesheet" href="pane.css"><body class="tea-pane-page"><main id="pane"></main><script src="pane.js"></script></body></html>';

/** The pane beside a workbook in memory (pane-with-fake-host.ts), built once and opened in as many pages as are asked. */
export class FakePane {
  readonly #folder = mkdtempSync(join(tmpdir(), "tea-fake-pane-"));

  async build(): Promise<void> {
    await runWebpack({
      mode: "production",
      context: project,
      entry: { pane: join(project, "test/browser/pane-with-fake-host.ts") },
      output: { path: this.#folder, filename: "[name].js", cssFilename: "[name].css" },
      module: { rules: rulesWithStyleFiles },
      experiments: { css: true },
      resolve,
      devtool: false,
      performance: false,
      optimization: { minimize: false },
    });
  }

  /** In a context of its own, so that nothing is kept from the page before; close that when done. */
  async open(browser: Browser, options: BrowserContextOptions = {}): Promise<Page> {
    const context = await browser.newContext({ viewport: { width: 350, height: 800 }, ...options });
    await context.route("**/*", (route) => {
      const { pathname } = new URL(route.request().url());
      if (pathname === "/") return route.fulfill({ body: html, contentType: "text/html" });
      const contentType = pathname.endsWith(".css") ? "text/css" : "text/javascript";
      return route.fulfill({ body: readFileSync(join(this.#folder, pathname)), contentType });
    });
    const page = await context.newPage();
    page.setDefaultTimeout(10_000);
    await page.goto("http://localhost/");
    await page.waitForSelector(".jobs");
    return page;
  }

  remove(): void {
    rmSync(this.#folder, { recursive: true, force: true });
  }
}

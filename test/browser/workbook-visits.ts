import type { Server } from "node:http";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, expect } from "vitest";
import { type findBrowser, openBrowser } from "../../src/build/open-browser";
import { serve } from "../../src/build/serve";
import { buildPageOnce, pageFolder } from "../../src/build/workbook-page-build";
import { openWorkbook } from "./workbook-driver";

export interface Visit {
  readonly page: Page;
  readonly address: string;
  /** Every address that the page has asked for. */
  readonly fetched: readonly string[];
  /** Fails when the page has complained of an error. */
  end(): Promise<void>;
}

/** Serves the built workbook page for the tests of a group. Each visit is that of a visitor who has kept nothing yet. */
export function workbookVisits(found: Awaited<ReturnType<typeof findBrowser>>): {
  /** `prepare` is done with the page before it opens. */
  begin(prepare?: (page: Page) => Promise<unknown>, screen?: BrowserContextOptions): Promise<Visit>;
} {
  let browser: Browser;
  let server: Server;
  let address: string;

  beforeAll(async () => {
    await buildPageOnce();
    ({ server, address } = await serve(pageFolder, 0));
    if (found) browser = await openBrowser(found);
  });

  afterAll(async () => {
    await browser?.close();
    server?.close();
  });

  return {
    async begin(prepare, screen = { viewport: { width: 1280, height: 800 } }) {
      const visitor = await browser.newContext(screen);
      const page = await visitor.newPage();
      const complaints: string[] = [];
      const fetched: string[] = [];
      page.on("pageerror", (error) => complaints.push(error.message));
      page.on("console", (message) => {
        if (message.type() === "error") complaints.push(message.text());
      });
      page.on("request", (request) => fetched.push(request.url()));
      await prepare?.(page);
      await openWorkbook(page, address);
      const end = async () => {
        await visitor.close();
        expect(complaints, "errors in the page").toEqual([]);
      };
      return { page, address, fetched, end };
    },
  };
}

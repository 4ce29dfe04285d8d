import type { Browser, BrowserContextOptions, ConsoleMessage, Page, Request } from "playwright-core";
import { beforeAll, expect } from "vitest";
import { endVisit, type findBrowser, forget } from "../../src/build/open-browser";
import { servedPage, sharedBrowser } from "./shared-browser";
import { openWorkbook } from "./workbook-driver";

export interface Visit {
  readonly page: Page;
  readonly address: string;
  /** Every address that the page has asked for. */
  readonly fetched: readonly string[];
  /** Fails when the page has complained of an error. */
  end(): Promise<void>;
}

const desk: BrowserContextOptions = { viewport: { width: 1280, height: 800 } };

/** Windows whose visit has ended, by their screen. A page starts in half the time where it has run before. */
const left = new Map<string, Page>();

/** Visits to the workbook page for the tests of a group. Each is that of a visitor who has kept nothing yet. */
export function workbookVisits(found: Awaited<ReturnType<typeof findBrowser>>): {
  /**
   * `prepare` is done with the page before it opens; that window is used for no other visit. `workbook`: of the samples,
   * another one than the first.
   */
  begin(prepare?: (page: Page) => Promise<unknown>, screen?: BrowserContextOptions, workbook?: string): Promise<Visit>;
} {
  let browser: Browser;
  let address: string;

  beforeAll(async () => {
    address = await servedPage();
    if (found) browser = await sharedBrowser(found);
  });

  return {
    async begin(prepare, screen = desk, workbook) {
      const kind = JSON.stringify(screen);
      const page = (!prepare && left.get(kind)) || (await (await browser.newContext(screen)).newPage());
      left.delete(kind);
      const complaints: string[] = [];
      const fetched: string[] = [];
      const onError = (error: Error) => complaints.push(error.message);
      const onMessage = (message: ConsoleMessage) => message.type() === "error" && complaints.push(message.text());
      const onRequest = (request: Request) => fetched.push(request.url());
      page.on("pageerror", onError).on("console", onMessage).on("request", onRequest);
      await prepare?.(page);
      await openWorkbook(page, workbook ? `${address}?workbook=${workbook}` : address);
      const end = async () => {
        page.off("pageerror", onError).off("console", onMessage).off("request", onRequest);
        if (prepare || left.has(kind)) await page.context().close();
        else {
          await leave(page, address, screen);
          left.set(kind, page);
        }
        expect(complaints, "errors in the page").toEqual([]);
      };
      return { page, address, fetched, end };
    },
  };
}

/** Ends a visit in a window: nothing that the page kept stays, and nothing that the test changed about the screen. */
async function leave(page: Page, address: string, screen: BrowserContextOptions): Promise<void> {
  await forget(page, address);
  if (screen.viewport) await page.setViewportSize(screen.viewport);
  await page.emulateMedia({ media: null, colorScheme: screen.colorScheme ?? "light" });
  endVisit(page.context());
}

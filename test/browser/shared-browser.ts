import type { Browser } from "playwright-core";
import { type findBrowser, openBrowser } from "../../src/build/open-browser";
import { serve } from "../../src/build/serve";
import { pageFolder } from "../../src/build/workbook-page-build";

/*
 * The test files that drive a browser share a process, and in it what takes long to start: the browser, and the server
 * of the workbook page, at one address, so that the browser has compiled the page's scripts already. Both end with the
 * process.
 */

const browsers = new Map<string, Promise<Browser>>();
let serving: Promise<string> | undefined;

/** One browser for all files that answer for the same origins. What a file opens in it, it closes. */
export function sharedBrowser(
  found: NonNullable<Awaited<ReturnType<typeof findBrowser>>>,
  answered: readonly string[] = [],
): Promise<Browser> {
  const kind = answered.join(" ");
  const opening = browsers.get(kind) ?? openBrowser(found, answered);
  browsers.set(kind, opening);
  return opening;
}

/** Where the workbook page is served, and the phone page under it; built-page.ts has built them. */
export function servedPage(): Promise<string> {
  serving ??= serve(pageFolder, 0).then(({ address }) => address);
  return serving;
}

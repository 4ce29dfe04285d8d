import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import type { Browser, BrowserContext } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { endVisit, findBrowser, openBrowser } from "../../src/build/open-browser";
import { officeOrigin } from "../../src/build/page-policy";

const found = await findBrowser();

describe.skipIf(!found)("a page that asks for what it may not", () => {
  let server: Server;
  let address: string;
  let browser: Browser;

  beforeAll(async () => {
    server = createServer((_, response) => response.end("<!doctype html><title>Page</title>"));
    await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
    address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
    if (found) browser = await openBrowser(found, [officeOrigin]);
  });
  afterAll(async () => {
    await browser.close();
    server.close();
  });

  /** A visit to the local page, which then asks for an address. */
  async function visit(asked: string, prepare: (context: BrowserContext) => Promise<unknown> = async () => {}) {
    const context = await browser.newContext();
    await prepare(context);
    const page = await context.newPage();
    await page.goto(address);
    await page.evaluate((asked) => fetch(asked, { mode: "no-cors" }).catch(() => undefined), asked);
    return context;
  }
  const answer = (context: BrowserContext) =>
    context.route(`${officeOrigin}/**`, (route) => route.fulfill({ body: "answered" }));

  test("fails the test when its visit ends", async () => {
    const context = await visit("https://elsewhere.example/usage");
    await expect(context.close()).rejects.toThrow("asked for what it may not: https://elsewhere.example/usage");
  });

  test("fails the test whose visitor comes again, once", async () => {
    const context = await visit("https://elsewhere.example/usage");
    expect(() => endVisit(context)).toThrow("asked for what it may not: https://elsewhere.example/usage");
    endVisit(context);
    await context.close();
  });

  test("fails it also where the test has answered in the place of a stranger", async () => {
    const context = await visit("https://elsewhere.example/usage", (context) =>
      context.route("**/usage", (route) => route.fulfill({ body: "answered" })),
    );
    await expect(context.close()).rejects.toThrow("elsewhere.example");
  });

  test("fails it for Microsoft's address when the test does not answer: nothing reaches the network", async () => {
    const context = await visit(`${officeOrigin}/lib/1/hosted/office.js`);
    await expect(context.close()).rejects.toThrow("appsforoffice.microsoft.com");
  });

  test("may have Microsoft's address answered, this computer, and what stands in the page", async () => {
    await (await visit(`${officeOrigin}/lib/1/hosted/office.js`, answer)).close();
    await (await visit(`${address}data`)).close();
    await (await visit("data:text/plain,tea")).close();
  });

  test("fails the test that closes the browser and not the visit", async () => {
    if (!found) return;
    const another = await openBrowser(found);
    const page = await another.newPage();
    await page.goto(address);
    await page.evaluate(() => fetch("https://elsewhere.example/late", { mode: "no-cors" }).catch(() => undefined));
    await expect(another.close()).rejects.toThrow("elsewhere.example/late");
  });
});

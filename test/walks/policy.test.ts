/** What the pages may not do, tried in a browser: whoever got a script into them would still get nowhere. */

import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import type { Server } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildFunctions, buildPane } from "../../src/build/add-in";
import { writeFunctionSite } from "../../src/build/function-site";
import { findBrowser } from "../../src/build/open-browser";
import { officeOrigin } from "../../src/build/page-policy";
import { serve } from "../../src/build/serve";
import { buildPageOnce, pageFolder } from "../../src/build/workbook-page-build";
import { sharedBrowser } from "../browser/shared-browser";

const found = await findBrowser();

/** On a page, filled by the browser: what its policy kept from happening. */
declare const refused: string[];
declare const ran: Record<string, boolean>;

describe.skipIf(found === undefined)("no page", () => {
  const folder = mkdtempSync(join(tmpdir(), "tea-policy-"));
  let browser: Browser;
  let page: Page;
  const servers: Server[] = [];
  const addresses: Record<string, string> = {};

  const served = async (from: string, policy?: string): Promise<string> => {
    const { server, address } = await serve(from, 0, policy);
    servers.push(server);
    return address;
  };

  beforeAll(async () => {
    await buildFunctions(folder);
    await buildPane(folder);
    writeFunctionSite(folder);
    writeFileSync(join(folder, "stranger.js"), "ran.stranger = true;");
    await buildPageOnce();
    // As a static host serves them: each page goes by what it says itself.
    const addIn = await served(folder, "");
    addresses.workbook = await served(pageFolder, "");
    addresses.phone = `${addresses.workbook}phone/`;
    addresses.pane = `${addIn}pane.html`;
    addresses.functions = `${addIn}functions.html`;
    addresses["help page"] = `${addIn}docs/functions/index.html`;
    addresses.elsewhere = await served(folder, "");
    if (found) browser = await sharedBrowser(found, [officeOrigin]);
  });
  afterAll(() => {
    for (const server of servers) server.close();
    rmSync(folder, { recursive: true, force: true });
  });

  const opened = async (name: string): Promise<Page> => {
    page = await browser.newPage();
    await page.route(`${officeOrigin}/**`, (route) =>
      route.fulfill({ contentType: "text/javascript", body: "window.CustomFunctions = { associate() {} };" }),
    );
    await page.addInitScript(() => {
      Object.assign(window, { refused: [], ran: {} });
      document.addEventListener("securitypolicyviolation", ({ effectiveDirective }) =>
        refused.push(effectiveDirective),
      );
    });
    await page.goto(addresses[name] as string);
    return page;
  };

  test.each(["workbook", "phone", "pane", "functions", "help page"])(
    "runs what is not its own, the %s least of all",
    async (name) => {
      const page = await opened(name);
      await page.evaluate((elsewhere) => {
        const script = (content: Partial<HTMLScriptElement>) =>
          document.head.append(Object.assign(document.createElement("script"), content));
        script({ textContent: "ran.inline = true" });
        script({ src: `${elsewhere}stranger.js` });
        document.body.insertAdjacentHTML("beforeend", '<img src="data:," onerror="ran.attribute = true">');
        // A text that is run later, outside whatever drives this test.
        setTimeout("ran.text = true");
        fetch(elsewhere).then(
          () => Object.assign(ran, { fetch: true }),
          () => undefined,
        );
        document.body.append(Object.assign(document.createElement("iframe"), { src: elsewhere }));
      }, addresses.elsewhere as string);
      await page.waitForFunction(() => refused.includes("connect-src") && refused.includes("frame-src"));
      const { happened, kept } = await page.evaluate(() => ({ happened: ran, kept: refused }));
      expect(happened).toEqual({});
      expect(new Set(kept)).toEqual(
        new Set([...kept, "script-src-elem", "script-src-attr", "script-src", "connect-src", "frame-src"]),
      );
      await page.context().close();
    },
  );

  test.each([
    ["workbook", "html[data-ready]"],
    ["phone", ".jobs"],
    ["pane", "#pane [role=tab]"],
    ["functions", "body"],
    ["help page", "h1"],
  ])("is kept from its own work by its policy, not the %s", async (name, shown) => {
    const page = await opened(name);
    await page.waitForSelector(shown, { timeout: 60_000, state: "attached" });
    expect(await page.evaluate(() => refused)).toEqual([]);
    await page.context().close();
  });
});

import { mkdtempSync } from "node:fs";
import { findBrowser, openBrowser } from "./src/build/open-browser";
import { serve } from "./src/build/serve";
import { buildPageOnce, pageFolder } from "./src/build/workbook-page-build";
import { openWorkbook, select } from "./test/browser/workbook-driver";
async function main() {
  const found = await findBrowser(); if (!found) throw new Error("none");
  await buildPageOnce();
  const { server, address } = await serve(pageFolder, 0);
  const browser = await openBrowser(found);
  for (const [name, options] of [["en-light", { colorScheme: "light", locale: "en-GB" as string }], ["zh-dark", { colorScheme: "dark", locale: "zh-CN" }]] as const) {
    const context = await browser.newContext({ viewport: { width: 350, height: 1300 }, ...options });
    const page = await context.newPage();
    await openWorkbook(page, address);
    const pane = page.locator("#pane"); await page.click("#pane-button"); await page.waitForSelector("#pane .jobs");
    console.log(await pane.boundingBox());
    await pane.screenshot({ path: `/tmp/shots/${name}-jobs.png` });
    for (const job of ["charges","scale","moisture","route","finished","turns","season","balance","fit"]) {
      await page.click("#tab-jobs");
      const links = page.locator(".jobs button, .jobs a");
      const index = ["charges","scale","moisture","route","finished","turns","season","balance","fit"].indexOf(job);
      await links.nth(index).click();
      await page.waitForTimeout(300);
      await pane.screenshot({ path: `/tmp/shots/${name}-${job}.png` });
      await page.locator("#pane button", { hasText: /All jobs|所有工作/ }).click();
    }
    await page.click("#tab-functions"); await page.waitForTimeout(200);
    await page.fill('#pane input[type=search]', name.startsWith("zh") ? "季" : "season");
    await page.waitForTimeout(200);
    await page.locator("#pane summary").first().click();
    await page.waitForTimeout(200);
    await pane.screenshot({ path: `/tmp/shots/${name}-functions.png` });
    await page.click("#tab-cautions"); await page.waitForTimeout(200);
    await pane.screenshot({ path: `/tmp/shots/${name}-cautions.png` });
    await page.screenshot({ path: `/tmp/shots/${name}-page.png` });
    await context.close();
  }
  await browser.close(); server.close();
}
main().catch((e) => { console.error(e); process.exit(1); });

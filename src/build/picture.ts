/** Takes docs/workbook-page.png from the running page, with the sample in it. */
import { join, resolve } from "node:path";
import { chromium } from "playwright-core";
import { serve } from "./serve";
import { buildPageOnce, pageFolder } from "./workbook-page-build";

async function takePicture(): Promise<void> {
  const { CHROME_PATH } = process.env;
  if (!CHROME_PATH) throw new Error("CHROME_PATH must name a Chromium, Chrome or Edge");
  await buildPageOnce();
  const { server, address } = await serve(pageFolder, 0);
  const args = process.getuid?.() === 0 ? ["--no-sandbox"] : [];
  const browser = await chromium.launch({ executablePath: CHROME_PATH, args });
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    await page.goto(address);
    await page.waitForSelector("html[data-ready]", { timeout: 120_000 });
    await page.waitForTimeout(1000);
    await page.screenshot({ path: join(resolve(), "docs", "workbook-page.png") });
  } finally {
    await browser.close();
    server.close();
  }
}

takePicture().catch((problem: unknown) => {
  console.error(problem);
  process.exitCode = 1;
});

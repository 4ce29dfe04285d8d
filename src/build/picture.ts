/** Takes docs/workbook-page.png from the running page, with the sample in it. */
import { join, resolve } from "node:path";
import { findBrowser, openBrowser } from "./open-browser";
import { serve } from "./serve";
import { buildPageOnce, pageFolder } from "./workbook-page-build";

async function takePicture(): Promise<void> {
  const found = await findBrowser();
  if (found === undefined) throw new Error("a picture of the page needs a browser");
  await buildPageOnce();
  const { server, address } = await serve(pageFolder, 0);
  const browser = await openBrowser(found);
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

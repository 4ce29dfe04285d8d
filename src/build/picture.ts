/**
 * Takes the pictures of the README and of the guide from the running page, and writes down what can be read in them: the
 * tests visit the same scenes, and fail when a picture shows what the page no longer says.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { languageIds } from "../words/languages";
import { findBrowser, openBrowser } from "./open-browser";
import { pictureFile, recordFile, takenOf } from "./pictures/record";
import { openWindow, visit, visits } from "./pictures/visit";
import { serve } from "./serve";
import { buildPageOnce, pageFolder } from "./workbook-page-build";

async function takePictures(): Promise<void> {
  const found = await findBrowser();
  if (found === undefined) throw new Error("pictures of the page need a browser");
  await buildPageOnce();
  const { server, address } = await serve(pageFolder, 0);
  const browser = await openBrowser(found);
  const project = resolve();
  mkdirSync(join(project, "docs", "guide"), { recursive: true });
  const record: Record<string, ReturnType<typeof takenOf>> = {};
  try {
    for (const language of languageIds) {
      const page = await openWindow(browser, language);
      for (const together of visits()) {
        await visit(page, address, together, async (scene, words) => {
          const file = pictureFile(scene, language);
          await page.waitForTimeout(1000);
          await page.locator(scene.part).screenshot({ path: join(project, file), animations: "disabled" });
          record[file] = takenOf(join(project, file), words);
          console.log(file);
        });
      }
      await page.context().close();
    }
    writeFileSync(join(project, recordFile), `${JSON.stringify(record, null, 1)}\n`);
  } finally {
    await browser.close();
    server.close();
  }
}

takePictures().catch((problem: unknown) => {
  console.error(problem);
  process.exitCode = 1;
});

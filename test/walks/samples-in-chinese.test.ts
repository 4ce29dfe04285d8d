import { expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import { pageWordsIn } from "../../src/words/in-every-language/page";
import { languages } from "../../src/words/languages";
import { shown, typeOver, untilReady } from "../browser/workbook-driver";
import { workbookVisits } from "../browser/workbook-visits";

const found = await findBrowser();
const visits = workbookVisits(found);
const { zh } = pageWordsIn;
const chinese = { locale: "zh-CN", viewport: { width: 1280, height: 800 } };

test.skipIf(!found)("a browser in Chinese begins with the samples in Chinese, and prints their card", async () => {
  const { page, address, end } = await visits.begin(undefined, chinese);
  expect(await shown(page, "这一批", "A9")).toBe("鲜叶重量");
  expect(await shown(page, "这一批", "F8")).toBe("相符");
  // What a function says in its last row, as the format of its cells shows it.
  expect(await shown(page, "这一批", "E24")).toBe("合计");
  expect(await shown(page, "这一批", "E20")).toBe("1");
  await page.evaluate(() => {
    globalThis.print = () => undefined;
  });
  await page.click("#print");
  await expect.poll(() => page.textContent("#paper")).toContain("第 1 锅");
  expect(await page.textContent("#paper")).not.toMatch(/[A-Za-z]{3}/);
  await page.goto(`${address}?workbook=season`);
  await untilReady(page);
  expect(await shown(page, "批次", "G1")).toBe("制成率");
  expect(await shown(page, "全季", "E6")).toBe("地块");
  await end();
});

test.skipIf(!found)("a lot begun in English stays as it is in a page that speaks Chinese, card and all", async () => {
  const { page, end } = await visits.begin();
  await typeOver(page, "Lot", "B9", "1303.5");
  await expect.poll(() => page.textContent("#status")).toContain("Kept in this browser");
  await page.click("#pane-button");
  await page.click(`#pane >> text=${languages.zh.name}`);
  await expect.poll(() => page.textContent("#open")).toBe(zh.parts.open);
  await page.reload();
  await untilReady(page);
  expect(await page.textContent("#open")).toBe(zh.parts.open);
  expect(await shown(page, "Lot", "B9")).toBe("1303.5");
  expect(await page.isEnabled("#print")).toBe(true);
  // Starting afresh takes the sample in the language that is spoken now.
  await page.click("summary");
  await page.click("#back");
  await Promise.all([page.waitForEvent("load"), page.getByRole("button", { name: zh.sample.agree }).click()]);
  await untilReady(page);
  expect(await shown(page, "这一批", "B9")).toBe("1240.0");
  await end();
});

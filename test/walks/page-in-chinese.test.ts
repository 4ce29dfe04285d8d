import { expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import { firstMessages } from "../../src/words/in-every-language/messages";
import { pageWordsIn } from "../../src/words/in-every-language/page";
import { languages } from "../../src/words/languages";
import { workbookVisits } from "../browser/workbook-visits";

const found = await findBrowser();
const visits = workbookVisits(found);
const en = { ...languages.en, page: pageWordsIn.en };
const zh = { ...languages.zh, page: pageWordsIn.zh };

test.skipIf(!found)("the workbook page speaks as its pane does, also after another visit", async () => {
  const { page, end } = await visits.begin();
  expect(await page.textContent("#open")).toBe(en.page.parts.open);
  expect(await page.textContent("#line")).toContain("Type over the tinted cells");
  await page.click("#pane-button");
  await page.click(`#pane >> text=${zh.name}`);
  await expect.poll(() => page.textContent("#open")).toBe(zh.page.parts.open);
  expect(await page.getAttribute("html", "lang")).toBe(zh.tag);
  expect(await page.title()).toBe(zh.page.parts.title);
  expect(await page.locator("#workbooks a").allTextContents()).toEqual(Object.values(zh.page.samples));
  await page.reload();
  await page.waitForSelector("html[data-ready]");
  expect(await page.textContent("#status")).toBe(zh.page.sample.shown);
  expect(await page.textContent("#line")).not.toMatch(/[A-Za-z]{4}/);
  await page.click("summary");
  await page.click("#back");
  const question = page.locator("dialog.question");
  expect(await question.textContent()).toContain(zh.page.sample.startAfresh(zh.page.samples["one-lot"]));
  await page.keyboard.press("Escape");
  await page.click(`#pane >> text=${en.name}`);
  await expect.poll(() => page.textContent("#open")).toBe(en.page.parts.open);
  await page.waitForSelector(`#pane >> text=${firstMessages.tabs.jobs}`);
  await end();
});

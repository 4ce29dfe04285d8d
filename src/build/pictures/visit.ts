import type { Browser, Page } from "playwright-core";
import { type Language, languages } from "../../words/languages";
import { forget } from "../open-browser";
import { type Scene, scenes, wordsIn } from "./scenes";

/** Scenes that one visit can show after each other. */
export function visits(): Scene[][] {
  const together = new Map<string, Scene[]>();
  for (const scene of scenes) together.set(scene.opens, [...(together.get(scene.opens) ?? []), scene]);
  return [...together.values()];
}

/** A window of somebody who speaks the language; who has opened it closes its context. */
export const openWindow = async (browser: Browser, language: Language): Promise<Page> =>
  (await browser.newContext({ locale: languages[language].locale })).newPage();

/**
 * Leads a visitor from scene to scene, and tells what can be read in each. Nothing is kept in the window from a visit
 * before, and it starts in half the time.
 */
export async function visit(
  page: Page,
  address: string,
  together: readonly Scene[],
  tell: (scene: Scene, words: readonly string[]) => Promise<void> | void,
): Promise<void> {
  const [first] = together;
  if (first === undefined) return;
  await forget(page, address);
  await page.setViewportSize(first);
  await page.goto(`${address}${first.opens}`);
  await page.waitForSelector(first.ready, { timeout: 120_000 });
  for (const scene of together) {
    await page.setViewportSize(scene);
    await scene.act(page);
    await tell(scene, await settled(page, scene));
  }
}

/** What can be read once it no longer changes: pictures and answers come a moment after the fields. */
async function settled(page: Page, scene: Scene): Promise<string[]> {
  let before = "";
  for (let look = 0; look < 40; look += 1) {
    const words = await wordsIn(page, scene);
    if (words.join("\n") === before) return words;
    before = words.join("\n");
    await page.waitForTimeout(500);
  }
  throw new Error(`the scene ${scene.name} does not come to rest`);
}

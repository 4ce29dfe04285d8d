import type { Browser, Page } from "playwright-core";
import { type Language, languages } from "../../words/languages";
import { type Scene, scenes, wordsIn } from "./scenes";

/** Scenes that one visit can show after each other. */
export function visits(): Scene[][] {
  const together = new Map<string, Scene[]>();
  for (const scene of scenes) {
    const key = `${scene.opens} ${scene.width} ${scene.height}`;
    together.set(key, [...(together.get(key) ?? []), scene]);
  }
  return [...together.values()];
}

/** Leads a visitor who speaks the language from scene to scene, and tells what can be read in each. */
export async function visit(
  browser: Browser,
  address: string,
  together: readonly Scene[],
  language: Language,
  tell: (scene: Scene, words: readonly string[], page: Page) => Promise<void> | void,
): Promise<void> {
  const [first] = together;
  if (first === undefined) return;
  const { width, height, opens, ready } = first;
  const visitor = await browser.newContext({ locale: languages[language].locale, viewport: { width, height } });
  try {
    const page = await visitor.newPage();
    await page.goto(`${address}${opens}`);
    await page.waitForSelector(ready, { timeout: 120_000 });
    for (const scene of together) {
      await scene.act(page);
      await tell(scene, await settled(page, scene), page);
    }
  } finally {
    await visitor.close();
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

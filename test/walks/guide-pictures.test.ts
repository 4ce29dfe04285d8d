import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { findBrowser } from "../../src/build/open-browser";
import { pictureFile, recordFile, sumOf, type Taken } from "../../src/build/pictures/record";
import { scenes } from "../../src/build/pictures/scenes";
import { openWindow, visit, visits } from "../../src/build/pictures/visit";
import { languageIds } from "../../src/words/languages";
import { servedPage, sharedBrowser } from "../browser/shared-browser";

const found = await findBrowser();
const record = JSON.parse(readFileSync(recordFile, "utf8")) as Record<string, Taken>;
const all = languageIds.flatMap((language) =>
  scenes.map((scene) => ({ file: pictureFile(scene, language), language, scene })),
);

test("every picture of the guide is one of a scene, as it was taken", () => {
  const kept = readdirSync(dirname(recordFile)).filter((name) => name.endsWith(".png"));
  expect(kept.map((name) => join(dirname(recordFile), name)).sort()).toEqual(all.map(({ file }) => file).sort());
  expect(Object.keys(record).sort()).toEqual(all.map(({ file }) => file).sort());
  for (const { file } of all) expect(sumOf(file), file).toBe(record[file]?.sha256);
});

test.each([
  ["docs/guide.md", "en"],
  ["docs/guide.zh.md", "zh"],
] as const)("%s shows every scene in its own language, and leads to files that are there", (guide, language) => {
  const links = [...readFileSync(guide, "utf8").matchAll(/\]\(([^)#]+)\)/g)].map(([, link]) => `docs/${link}`);
  for (const link of links) expect(existsSync(link), link).toBe(true);
  const pictures = links.filter((link) => link.endsWith(".png"));
  expect(pictures.sort()).toEqual(scenes.map((scene) => pictureFile(scene, language)).sort());
});

describe.skipIf(!found)("the pages", () => {
  describe.each(languageIds)("still say in %s", (language) => {
    let address: string;
    let page: Page;

    beforeAll(async () => {
      address = await servedPage();
      if (found) page = await openWindow(await sharedBrowser(found), language);
    });
    afterAll(() => page?.context().close());

    const tours = visits().map((together) => ({ together, names: together.map(({ name }) => name).join(", ") }));

    test.each(tours)("what is to be read in $names (else: npm run picture)", async ({ together }) => {
      const read: Record<string, readonly string[]> = {};
      await visit(page, address, together, ({ name }, words) => {
        read[name] = words;
      });
      const taken = together.map((scene) => [scene.name, record[pictureFile(scene, language)]?.words]);
      expect(read).toEqual(Object.fromEntries(taken));
    });
  });
});

/**
 * What a language lacks is found by the compiler, which reads this file in `npm run lint`: where it finds nothing, an
 * expected error is one itself.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import type { FixedSaying, Saying } from "../../src/core/phrases";
import type { Being, Doing, Finding, FixedBeing } from "../../src/core/refusals";
import type { ReleasedTwins, SomeTwins } from "../../src/words/function-texts";
import { chineseFileRefusal } from "../../src/words/zh/file-refusals";
import { chineseNotShown } from "../../src/words/zh/file-remarks";
import { chinesePhrase } from "../../src/words/zh/phrases";
import { chineseBeing } from "../../src/words/zh/refusals";
import type { FileRefusal } from "../../src/xlsx/refusals";
import type { NotShown } from "../../src/xlsx/remarks";

type Grown<Kinds> = Kinds | { readonly kind: "of another kind"; readonly leaves: number };

// @ts-expect-error A requirement that was added without its Chinese.
const being: (being: Grown<Being>) => string = chineseBeing;

// @ts-expect-error Something that functions say, likewise.
const phrase: (saying: Grown<Saying>) => string = chinesePhrase;

// @ts-expect-error Why a file is not opened, likewise.
const file: (refusal: Grown<FileRefusal>) => string = chineseFileRefusal;

// @ts-expect-error And what of it is not shown.
const unseen: (what: Grown<NotShown>) => string = chineseNotShown;

// @ts-expect-error A switch that leaves kinds out, as a folder of words that was left behind.
function doing(what: Exclude<Doing, string>): string {
  switch (what.kind) {
    case "lots":
      return `${what.least}`;
    case "agree within":
      return `${what.limit}`;
  }
}

const finding = (found: Extract<Finding, { kind: "rise" }>): string =>
  // @ts-expect-error A field that this refusal does not have.
  `${found.step} ${found.from} ${found.until}`;

// @ts-expect-error A text without numbers that was forgotten.
const fixedBeings: Readonly<Record<FixedBeing, string>> = { "a number": "是数字" };

// @ts-expect-error Likewise.
const fixedSayings: Readonly<Record<FixedSaying, string>> = { total: "合计" };

// @ts-expect-error The pages of released functions, but for one text.
const pages: ReleasedTwins = {
  "The times at which wrapped or resting leaf is turned.": "包裹或静置的茶叶该在哪些时刻翻动。",
};

const stale = {
  // @ts-expect-error A text that no page says any more.
  "The times at which the leaf was turned.": "茶叶翻动的时刻。",
} as const satisfies SomeTwins;

test("no language reads a sentence back to rewrite it", () => {
  const files = readdirSync("src/words/zh", { recursive: true, encoding: "utf8" }).filter((path) =>
    path.endsWith(".ts"),
  );
  expect(files.length).toBeGreaterThan(10);
  for (const file of files) {
    const code = readFileSync(join("src/words/zh", file), "utf8");
    expect(code, file).not.toMatch(/\.(replace|replaceAll|match|matchAll|exec|test|search)\(|RegExp|: Patterns/);
  }
});

test("nothing but the compiler minds what was forgotten", () => {
  expect([being, phrase]).toEqual([chineseBeing, chinesePhrase]);
  expect([file, unseen]).toEqual([chineseFileRefusal, chineseNotShown]);
  expect(doing({ kind: "room to change", argument: "moisture" })).toBeUndefined();
  expect(finding({ kind: "rise", step: 2, from: 0.3, to: 0.4 })).toBe("2 0.3 undefined");
  expect([fixedBeings, fixedSayings, pages, stale].map((texts) => Object.keys(texts).length)).toEqual([1, 1, 1, 1]);
});

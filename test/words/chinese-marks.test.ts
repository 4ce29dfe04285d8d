import { expect, test } from "vitest";

import { chineseNotShown } from "../../src/words/zh/file-remarks";
import { chinese } from "../../src/words/zh/messages";
import { chinesePage } from "../../src/words/zh/page";
import { everyRefusal, everythingUnseen } from "./sayings-of-files";

/** Where Chinese has marks of its own: beside its letters, and no space beside one of them. */
const foreign =
  /[\u4e00-\u9fff”][,:;()!?]|[,:;!?] ?[\u4e00-\u9fff]|[\u4e00-\u9fff，。：；（）、？！] +[，。：；（）、？！]|[，。：；（）、？！] +[\u4e00-\u9fff]/;

/** Every text, and every sentence with something put into it. */
function textsIn(words: unknown): string[] {
  if (typeof words === "string") return [words];
  if (typeof words === "function") return saidWith(words as (...given: unknown[]) => unknown);
  return typeof words === "object" && words !== null ? Object.values(words).flatMap(textsIn) : [];
}

/** What is put in, in the place of whatever a sentence takes. */
const given = "茶";

function saidWith(sentence: (...given: unknown[]) => unknown): string[] {
  const tried = [Array(8).fill(given), Array(8).fill([given, given]), Array(8).fill(2), [{ row: 1, rows: 2 }, given]];
  for (const each of tried) {
    try {
      return textsIn(sentence(...each));
    } catch {
      // It takes something else.
    }
  }
  return [];
}

test("Chinese has commas, colons, brackets and spaces of its own", () => {
  // Formats of times, `时:分`, are typed with a plain colon.
  const { unitWords: _, ...rest } = chinese;
  const texts = [...textsIn(rest), ...textsIn(chinesePage)];
  expect(texts.length).toBeGreaterThan(600);
  const fault = { is: "text", value: "茶", label: "鲜叶", reason: "茶", waiting: { first: "B4", count: 2 } } as const;
  const { afterAddress, inShort, atCell } = chinesePage.fault;
  texts.push(afterAddress(fault), inShort(fault), atCell(fault), chinesePage.fault.waitsFor("B4", fault));
  texts.push(...everyRefusal.map(chinesePage.file.refused), ...everythingUnseen.map(chineseNotShown));
  expect(texts.filter((text) => foreign.test(text.replaceAll(`${given},${given}`, given)))).toEqual([]);
});

test("items, headings and sentences are put side by side as each language does it", () => {
  const { joined } = chinese;
  expect([joined.list(["B4", "B5"]), joined.withUnit("重量", "g"), joined.told("取自 B4", "320 g")]).toEqual([
    "B4、B5",
    "重量（g）",
    "取自 B4：320 g",
  ]);
  expect([joined.sentences(["一。", "二。"]), joined.aside("320 g", "目标"), joined.parts(["一", "二"])]).toEqual([
    "一。二。",
    "320 g（目标）",
    "一；二",
  ]);
});

import fc from "fast-check";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, test } from "vitest";
import { bind } from "../../src/cells/bind";
import type { CellArgument } from "../../src/cells/values";
import { CellError } from "../../src/cells/values";
import { catalogue } from "../../src/core/catalogue";
import { inPlace, mustBe, mustBeNumber, noAnswer } from "../../src/core/errors";
import type { Reason } from "../../src/core/refusals";
import { FunctionEntry } from "../../src/pane/function-entry";
import { MessagesContext } from "../../src/pane/use-messages";
import { lastRelease } from "../../src/release/last-release";
import { textsOf, untranslated } from "../../src/words/untranslated";
import { chineseTexts } from "../../src/words/zh/function-texts";
import { chinese } from "../../src/words/zh/messages";
import { calls } from "../fuzz/junk";

const entries = Object.entries(chineseTexts);

/** A new function speaks English in the pane, marked as such, until it is released. */
const released = new Set(lastRelease()?.signatures.map(({ id }) => id));
const isReleased = ({ spec }: (typeof catalogue)[number]): boolean => released.has(spec.id);

/** Numbers, formulas, and the names of functions: what reads the same in every language. */
const figures = (text: string): string[] => text.match(/\d[\d.:]*\d|\d/g) ?? [];
const names = (text: string): string[] => text.match(/\b[A-Z]{5,}\b|=TEA\.\S+\)|#N\/A|"\w+"/g) ?? [];

describe("the Chinese of the catalogue", () => {
  test("is there for every function that was released", () => {
    expect(released.size).toBeGreaterThan(0);
    expect(untranslated(catalogue.filter(isReleased), chinese)).toEqual([]);
  });

  test("answers to a text that is still said", () => {
    const said = new Set(catalogue.flatMap(textsOf));
    expect(Object.keys(chineseTexts).filter((english) => !said.has(english))).toEqual([]);
  });

  test("knows what it lacks", () => {
    const [first] = catalogue;
    if (first === undefined) throw new Error("there is no function");
    const page = { ...first.page, summary: "A summary that nobody has put into Chinese." };
    expect(untranslated([{ ...first, page }], chinese)).toEqual([page.summary]);
  });

  test.each(entries)("keeps the numbers and names of: %s", (english, translated) => {
    expect(translated).toMatch(/[\u4e00-\u9fff]/);
    expect(figures(english).filter((figure) => !translated.includes(figure))).toEqual([]);
    expect(names(english).filter((name) => !translated.includes(name))).toEqual([]);
    expect(translated.endsWith("。"), translated).toBe(/[.?]$/.test(english) && !/：.*？$/.test(translated));
  });

  test("says of no lot that it is safe or fit for sale", () => {
    expect(entries.filter(([, translated]) => /安全|合格|可以出售|适合销售/.test(translated))).toEqual([]);
  });

  test.each(catalogue.filter(isReleased).map((entry) => ({ id: entry.spec.id, entry })))(
    "leaves no English on the page of $id",
    ({ entry }) => {
      const markup = renderToStaticMarkup(
        <MessagesContext.Provider value={chinese}>
          <FunctionEntry entry={entry} />
        </MessagesContext.Provider>,
      );
      expect(markup).not.toContain('lang="en"');
      // Formulas, answers, the names of columns and what is quoted from them are as the sheet shows them.
      const prose = markup.replaceAll(/<(pre|table|li|dt)\b.*?<\/\1>|<[^>]*>|“[^”]*”|&quot;.*?&quot;/gs, " ");
      expect(prose.match(/[a-z]{3,} [a-z]{3,} [a-z]{3,}/g)).toBeNull();
    },
  );
});

describe("refusals in Chinese", () => {
  test.each(catalogue.map((entry) => ({ id: entry.spec.id, entry })))(
    "keep the numbers and the names of whatever $id refuses, and leave no English",
    ({ entry }) => {
      const errors = errorsOf(entry);
      expect(errors.length).toBeGreaterThan(0);
      for (const { message, reason } of errors) {
        const translated = chinese.reason(reason as Reason);
        expect(figures(message).filter((figure) => !translated.includes(figure))).toEqual([]);
        expect(translated).toMatch(/[\u4e00-\u9fff]/);
        expect(translated.replaceAll(/"[^"]*"|“[^”]*”/gs, "")).not.toMatch(/[a-z]{2,} [a-z]{2,}/);
        if (/ must /.test(message)) expect(translated.split(" ")[0]).toBe(message.split(" ")[0]);
      }
    },
  );

  test("read as a sentence", () => {
    const dry = { kind: "limit", is: "at least", limit: 85.2, what: "the dry matter" } as const;
    expect(chinese.reason(mustBe("weightNow", dry, 80).refusal)).toBe(
      "weightNow 必须不小于 85.2（干物质）；得到的是 80",
    );
    expect(chinese.reason(inPlace(mustBeNumber("weights", "a weight above 0", "1,5"), 1).refusal)).toBe(
      "weights 必须是大于 0 的重量；得到的是文本“1,5”（看着像数字，其实存为文本：请重新输入为数字）（列表第 2 个）",
    );
    const area = { do: { kind: "area of", group: "well; north" } } as const;
    expect(chinese.reason(noAnswer("areas", area, "got none").refusal)).toBe(
      'areas 必须有 "well; north" 的面积；没有找到',
    );
  });

  test("call arguments by the labels of a form", () => {
    const pan = { kind: "at least", least: 350, argument: "panLoad" } as const;
    const labels: Readonly<Record<string, string>> = { maxLoad: "一锅最多能放", panLoad: "每锅想要的重量" };
    expect(chinese.reason(mustBe("maxLoad", pan, 250).refusal, (name) => `“${labels[name]}”`)).toBe(
      "“一锅最多能放”必须不小于 350（“每锅想要的重量”）；得到的是 250",
    );
  });
});

/** What a function refuses over a few hundred calls of junk. */
function errorsOf({ spec, page }: (typeof catalogue)[number]): CellError[] {
  const call = bind(spec);
  const given = [
    ...fc.sample(calls({ spec, page }), { numRuns: 400, seed: 20261125 }),
    ...[...page.checks, ...page.examples].map((worked) => worked.given as readonly CellArgument[]),
  ];
  return (
    given
      .flatMap((one) => call(...one).flat())
      .filter((cell) => cell instanceof CellError)
      // An error that was in the cells already.
      .filter(({ message }) => message && message !== "made elsewhere")
  );
}

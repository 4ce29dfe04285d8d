import fc from "fast-check";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, test } from "vitest";
import { bind } from "../../src/cells/bind";
import type { CellArgument } from "../../src/cells/values";
import { CellError } from "../../src/cells/values";
import { catalogue } from "../../src/core/catalogue";
import { FunctionEntry } from "../../src/pane/function-entry";
import { chinese } from "../../src/pane/messages/chinese";
import { chineseRefusal } from "../../src/pane/messages/chinese-refusals";
import { chineseTexts } from "../../src/pane/messages/chinese-texts";
import { MessagesContext } from "../../src/pane/messages/messages";
import { textsOf, untranslated } from "../../src/pane/messages/untranslated";
import { lastRelease } from "../../src/release/last-release";
import { calls } from "../fuzz/junk";

const entries = Object.entries(chineseTexts);

/** Numbers, formulas, and the names of functions: what reads the same in every language. */
const figures = (text: string): string[] => text.match(/\d[\d.:]*\d|\d/g) ?? [];
const names = (text: string): string[] => text.match(/\b[A-Z]{5,}\b|=TEA\.\S+\)|#N\/A|"\w+"/g) ?? [];

describe("the Chinese of the catalogue", () => {
  test("is there for every function that was released", () => {
    const released = new Set(lastRelease()?.signatures.map(({ id }) => id));
    expect(released.size).toBeGreaterThan(0);
    expect(untranslated(catalogue.filter(({ spec }) => released.has(spec.id)))).toEqual([]);
  });

  test("answers to a text that is still said", () => {
    const said = new Set(catalogue.flatMap(textsOf));
    expect(Object.keys(chineseTexts).filter((english) => !said.has(english))).toEqual([]);
  });

  test("knows what it lacks", () => {
    const [first] = catalogue;
    if (first === undefined) throw new Error("there is no function");
    const page = { ...first.page, summary: "A summary that nobody has put into Chinese." };
    expect(untranslated([{ ...first, page }])).toEqual([page.summary]);
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

  test.each(catalogue.map((entry) => ({ id: entry.spec.id, entry })))(
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
  const messagesOf = ({ spec, page }: (typeof catalogue)[number]): string[] => {
    const call = bind(spec);
    const given = [
      ...fc.sample(calls({ spec, page }), { numRuns: 400, seed: 20261125 }),
      ...[...page.checks, ...page.examples].map((worked) => worked.given as readonly CellArgument[]),
    ];
    return (
      given
        .flatMap((one) => call(...one).flat())
        .flatMap((cell) => (cell instanceof CellError ? [cell.message] : []))
        // An error that was in the cells already.
        .filter((message) => message && message !== "made elsewhere")
    );
  };

  test.each(catalogue.map((entry) => ({ id: entry.spec.id, entry })))(
    "are known, whatever $id refuses",
    ({ entry }) => {
      const messages = [...new Set(messagesOf(entry))];
      expect(messages.length).toBeGreaterThan(0);
      for (const message of messages) {
        const translated = chineseRefusal(message);
        expect(translated, message).toBeDefined();
        expect(figures(message).filter((figure) => !translated?.includes(figure))).toEqual([]);
        expect(translated?.split(" ")[0]).toBe(message.split(" ")[0]);
      }
    },
  );

  test("read as a sentence", () => {
    expect(chinese.refusal("weightNow must be at least 85.2, the dry matter; got 80")).toBe(
      "weightNow 必须不小于 85.2（干物质）；得到的是 80",
    );
    expect(
      chinese.refusal(
        'weights must be a weight above 0; got the text "1,5" (it looks like a number but is stored as text: type it again as a number) in place 2 of the list',
      ),
    ).toBe(
      "weights 必须是大于 0 的重量；得到的是文本“1,5”（看着像数字，其实存为文本：请重新输入为数字）（列表第 2 个）",
    );
    expect(chinese.refusal('areas must hold an area of "well; north"; got none')).toBe(
      'areas 必须有 "well; north" 的面积；没有找到',
    );
  });

  test("stay as they are where they are not known", () => {
    expect(chinese.refusal("something else")).toBe("something else");
    expect(chinese.refusal("weight must be green; got 5")).toBe("weight must be green; got 5");
  });
});

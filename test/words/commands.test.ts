/** What the commands say, in every language. */
import { describe, expect, test } from "vitest";
import type { SeasonCommandWords, WhyNotCounted } from "../../src/words/commands";
import { commandWordsIn } from "../../src/words/in-every-language/commands";
import { languageIds } from "../../src/words/languages";
import { few } from "../../src/xlsx/remarks";

type KindOf<Saying> = Saying extends string ? Saying : Saying extends { readonly kind: infer Kind } ? Kind : never;

const whys: { readonly [Kind in KindOf<WhyNotCounted> & string]: WhyNotCounted } = {
  "far apart": "far apart",
  hidden: "hidden",
  "own season": "own season",
  "no headings": "no headings",
  "no unit": "no unit",
  "same file": { kind: "same file", as: "X1" },
  refused: { kind: "refused", why: "many texts" },
  "not read": { kind: "not read", problem: "X1" },
  "rows of others": { kind: "rows of others", rows: 1200 },
  "more tea than leaf": { kind: "more tea than leaf", finished: "X440", fresh: "X200" },
  "no weight": { kind: "no weight", which: "fresh" },
  error: { kind: "error", which: "finished", code: "X1" },
  text: { kind: "text", which: "finished", text: "X1" },
  "not above 0": { kind: "not above 0", which: "fresh", value: "-5" },
};

const counts = { lots: 1200, books: 3, files: 4, open: 2, unit: undefined } as const;

const said = ({ workbook, table: _, ...words }: SeasonCommandWords): string[] => [
  ...Object.values(whys).map(words.why),
  words.readSoFar(2, 7),
  words.unknownHeading("X1", "fresh", few(["X2", "X3"])),
  words.tooMany(2000),
  words.nothingWritten,
  words.written("X1", 12),
  words.written("X1"),
  words.notWritten("X1"),
  words.summary(counts),
  words.summary({ ...counts, open: 0, unit: "kg" }),
  words.alike("X1", 3, "X2"),
  words.takenFrom(few(["X1", "X2"]), [{ as: "fresh", heading: "X3", unit: "kg", instead: ["X4", "X5"] }]),
  words.places({ file: "X1", sheet: "X2" }, few(["B2", "B3"]), "X4"),
  words.more(30),
  ...[words.taken, words.notCounted, words.countedTwice, words.noPlot],
  ...[workbook.title, workbook.byPlots, workbook.byBooks, workbook.closing, workbook.footer],
  ...[workbook.remark("kg"), workbook.remark(undefined), workbook.weight("fresh", "kg")],
  ...[workbook.sheets, workbook.leftOut, workbook.headings, workbook.columns].flatMap((each) => Object.values(each)),
];

const figures = (text: string) => text.match(/X?\d(?:[\d,]*\d)?/g)?.sort();
/** What is typed, names of units and what the examples put in, and the word of a function that is explained. */
const names = /--[a-z]+( [a-z]+(?:=…|\.[a-z]+)?)?|&[A-Z]|\b(?:kg|total)\b|[A-Z]\d+/g;

describe.each(languageIds.slice(1))("the commands in %s", (language) => {
  const [words, english] = [commandWordsIn[language], commandWordsIn[languageIds[0]]];

  test("say as much, with the same figures and names", () => {
    expect(said(words.season).map(figures)).toEqual(said(english.season).map(figures));
    expect(said(words.season).filter((text) => said(english.season).includes(text))).toEqual([]);
  });

  test("leave no English", () => {
    const { check } = words;
    const ofCheck = [check.found("X1", 9, 0), check.found("X1", 9, 2), check.inAll(2, 3), check.passedOver("X1")];
    for (const text of [...said(words.season), ...ofCheck, check.notLookedThrough("X1", "X2")]) {
      expect(text.replaceAll(names, "")).not.toMatch(/[A-Za-z]/);
    }
  });
});

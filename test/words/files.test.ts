/** What is said of files, in every language. */
import { describe, expect, test } from "vitest";
import { pageWordsIn } from "../../src/words/in-every-language/page";
import type { PageWords } from "../../src/words/page";
import { Refusal } from "../../src/xlsx/refusal";
import type { FileRefusal } from "../../src/xlsx/refusals";
import { everyRefusal, everyRemark, everythingUnseen } from "./sayings-of-files";

const [first, ...others] = Object.entries(pageWordsIn);
const figures = (text: string) => text.match(/X?\d(?:[\d,]*\d)?/g)?.sort();
/** Names of formats and units, which are the same everywhere, and what the examples above put in. */
const names = /\[Content_Types\]\.xml|\.xlsx|\.xlsb|\.xls|OpenDocument|UTF-8|XML|MB|X\d/g;

const refused = ({ file }: PageWords) => everyRefusal.map(file.refused);
const notShown = ({ ownFile }: PageWords) =>
  everythingUnseen.map((what) => ownFile.question("", [what], { keptSince: undefined, canSaveInto: false })[2]);

describe.each(others)("of files in %s", (_, words) => {
  const english = first?.[1] as PageWords;

  test("every refusal is said, with the same figures and names", () => {
    const [said, inEnglish] = [refused(words), refused(english)];
    expect(said.map(figures)).toEqual(inEnglish.map(figures));
    for (const each of [said, inEnglish]) expect(new Set(each).size).toBe(new Set(everyRefusal.map(keyOf)).size);
  });

  test("every remark is said, and all that is not shown", () => {
    const onSaving = ({ file }: PageWords) => everyRemark.map(file.onSaving);
    expect(new Set(onSaving(words)).size).toBe(everyRemark.length);
    for (const each of [words, english]) expect(new Set(notShown(each)).size).toBe(everythingUnseen.length);
    expect(onSaving(words).filter((text) => onSaving(english).includes(text))).toEqual([]);
  });

  test("no English is left", () => {
    for (const text of [...refused(words), ...everyRemark.map(words.file.onSaving), ...notShown(words)]) {
      expect(text?.replaceAll(names, "")).not.toMatch(/[A-Za-z]/);
    }
  });
});

test("an error says the English, as cells do", () => {
  expect(new Refusal("empty").message).toBe(pageWordsIn.en.file.refused("empty"));
});

const keyOf = (refusal: FileRefusal): string => JSON.stringify(refusal);

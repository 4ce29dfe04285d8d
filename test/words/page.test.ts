import { describe, expect, test } from "vitest";
import { pageWordsIn } from "../../src/words/in-every-language/page";
import type { Fault, PageWords } from "../../src/words/page";

const fault = (is: Fault["is"], rest: Partial<Fault> = {}): Fault => ({
  ...{ is, value: undefined, label: undefined, reason: undefined, waiting: undefined },
  ...rest,
});

const { en, zh } = pageWordsIn;

describe("what holds answers up", () => {
  const blank = fault("blank", { label: "Fresh weight", waiting: { first: "B9", count: 14 } });
  const typed = fault("text", {
    value: "350 g",
    label: "TEA weight",
    reason: "B4 must be",
    waiting: { first: "B9", count: 2 },
  });
  const formula = fault("formula", { reason: "B4 must be", waiting: { first: "B9", count: 1 } });

  test("is said in English", () => {
    const { afterAddress, atCell, waitsFor } = en.fault;
    expect(afterAddress(blank)).toBe(", fresh weight, is blank: 14 cells wait for it");
    expect(atCell({ ...blank, label: undefined })).toBe("This is blank: 14 cells wait for it");
    expect(afterAddress(typed)).toBe(
      ", TEA weight, holds the text “350 g”: B9 and 1 more cell wait for it. B4 must be",
    );
    expect(afterAddress(formula)).toBe(": B4 must be (B9 waits for it)");
    expect(waitsFor("B4", blank)).toBe("waits for B4, fresh weight, which is blank");
    expect(waitsFor("B4", fault("error", { value: "#REF!", reason: en.meanings["#REF!"] }))).toBe(
      "waits for B4, which shows #REF! (this refers to a cell that is no longer there)",
    );
  });

  test("is said in Chinese", () => {
    const { afterAddress, atCell, waitsFor } = zh.fault;
    expect(afterAddress({ ...blank, label: "鲜叶重量" })).toBe("（鲜叶重量）是空的：有 14 个单元格在等它");
    expect(atCell(fault("text", { value: "350 g" }))).toBe("这里是文本“350 g”");
    expect(waitsFor("B4", fault("value", { value: 3, label: "鲜叶重量" }))).toBe("在等 B4（鲜叶重量），它是 3");
  });
});

/** Every text, with what has to be filled in as X. */
function textsOf(node: unknown): string[] {
  if (typeof node === "string") return [node];
  if (typeof node === "function") return [];
  return Object.values(node as object).flatMap(textsOf);
}

test("the page has no English in Chinese, but for names of files, keys and programs", () => {
  const texts = textsOf(zh);
  expect(texts.length).toBe(textsOf(en).length);
  for (const text of texts)
    expect(text.replaceAll(/\.xlsx|Esc|Tab|Shift\+F6|F6|\b[AZ]\b/g, "")).not.toMatch(/[A-Za-z]/);
});

test("what has numbers and names in it keeps them", () => {
  const said = ({ keeping, sorting, typed, charts, ownFile, printing }: PageWords) => [
    keeping.kept("9:30"),
    keeping.notMade("X1"),
    sorting.rows("X1", 3, 17),
    sorting.lookers("“X1”", 2).replace("3", "2"),
    sorting.refused({ is: "hidden", row: 6 }, ""),
    sorting.refused({ is: "merged", at: { sheet: "Lot", row: 0, column: 0 } }, "A1"),
    typed.doubtful("1,234", ["1234", "1.234"]),
    typed.readAs("1,5", "1.5", "point"),
    typed.readAs("1,240", "1,24", "comma"),
    typed.readAsDay("5/4/2025", "X5"),
    typed.staysText("31.2.2025", true),
    typed.staysText("X1", false),
    charts.points("X1", "dots", 40, "2", "9"),
    ownFile
      .question(
        "X1",
        [
          { kind: "part", path: "X2" },
          { kind: "part", path: "X3" },
        ],
        { keptSince: "4", canSaveInto: true },
      )
      .join(" "),
    ownFile.savedInto("X1", "9:30"),
    ownFile.askIntoFile("X1"),
    ...(["not allowed", "changed", "gone"] as const).map((because) => ownFile.notInto("X1", because)),
    printing.withoutNumbers("X1"),
  ];
  const figures = (text: string) => text.match(/[A-Z]?\d(?:[\d.,:]*\d)?/g)?.sort();
  expect(said(zh).map(figures)).toEqual(said(en).map(figures));
});

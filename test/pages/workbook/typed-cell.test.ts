import { describe, expect, test } from "vitest";
import { decimalMarkOf, typedCell } from "../../../src/pages/workbook/typed-cell";

/** What a cell holds after the text: a number, a share, or the text. */
function held(text: string, mark: string): number | string {
  const read = typedCell(text, mark);
  if (read.is !== "number") return read.is;
  return Number(read.isPercent ? `${read.plain}e-2` : read.plain);
}
const remarkOn = (text: string, mark: string) => {
  const read = typedCell(text, mark);
  return read.is === "other" ? undefined : read.remark;
};

describe("a number typed where decimals have a comma", () => {
  test.each([
    ["5,2%", 0.052],
    ["5,8 %", 0.058],
    ["0,755", 0.755],
    ["1,2345", 1.2345],
    ["1.234,5", 1234.5],
    ["1.234.567", 1234567],
    ["-12,5", -12.5],
    ["7５，5％", 0.755],
    ["1106.6", 1106.6],
    ["76%", 0.76],
  ])("%s is %d, without a word", (text, number) => {
    expect(held(text, ",")).toBe(number);
    expect(remarkOn(text, ",")).toBeUndefined();
  });

  test.each([
    ["1,240", 1.24, "1,24"],
    ["-12,500", -12.5, "-12,5"],
  ])("%s is %d, and said: elsewhere it would be thousands", (text, number, said) => {
    expect(held(text, ",")).toBe(number);
    expect(remarkOn(text, ",")).toBe(`${text} is read as ${said}, with decimals behind the comma`);
  });

  test.each([
    ["1.240", "1240 or 1,240"],
    ["-12.500", "-12500 or -12,500"],
  ])(
    "%s may be thousands or thousandths: it stays a text, and both are offered as they are typed here",
    (text, both) => {
      expect(held(text, ",")).toBe("doubtful");
      expect(remarkOn(text, ",")).toBe(`${text} can mean ${both}, so it stays a text: type one of them`);
    },
  );
});

describe("a number typed where decimals have a point", () => {
  test.each([
    ["5.2%", 0.052],
    ["0.755", 0.755],
    ["1.234", 1.234],
    ["1,234.5", 1234.5],
    ["1,234,567", 1234567],
    ["1 234.5", 1234.5],
    ["1e3", 1000],
  ])("%s is %d, without a word", (text, number) => {
    expect(held(text, ".")).toBe(number);
    expect(remarkOn(text, ".")).toBeUndefined();
  });

  test.each([
    ["5,2%", 0.052, "5.2%"],
    ["0,755", 0.755, "0.755"],
    ["1.234,5", 1234.5, "1234.5"],
    ["1,234%", 0.01234, "1.234%"],
  ])("%s is %d, and said", (text, number, said) => {
    expect(held(text, ".")).toBe(number);
    expect(remarkOn(text, ".")).toBe(`${text} is read as ${said}, with decimals behind the point`);
  });

  test("what may be thousands or thousandths stays a text, and why is said", () => {
    expect(held("1,234", ".")).toBe("doubtful");
    expect(remarkOn("1,234", ".")).toBe("1,234 can mean 1234 or 1.234, so it stays a text: type one of them");
  });
});

test.each(["350 g", "9:30", "31.12.2024", "1/2", "second", "1,2,3", ""])("%s is no number to read", (text) => {
  for (const mark of [",", "."]) expect(typedCell(text, mark)).toEqual({ is: "other" });
});

test.each([
  ["de", ","],
  ["fr-FR", ","],
  ["en-GB", "."],
  ["zh-CN", "."],
])("in %s the decimal mark is %s", (language, mark) => {
  expect(decimalMarkOf(language)).toBe(mark);
});

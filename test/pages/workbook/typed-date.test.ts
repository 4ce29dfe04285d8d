import { describe, expect, test } from "vitest";
import { dayInWordsOf, orderOf, typedDate } from "../../../src/pages/workbook/typed-date";

/** The day that a text is read as, with a question mark where that is said. */
function read(text: string, order: "day first" | "month first"): string {
  const date = typedDate(text, order);
  if (date.is !== "day") return date.is;
  return new Date((date.serial - 25_569) * 86_400_000).toISOString().slice(0, 10) + (date.isDoubted ? "?" : "");
}

describe("a day typed in figures", () => {
  test.each([
    ["13.4.2025", "2025-04-13", "2025-04-13"],
    ["05.04.2025", "2025-04-05", "2025-04-05"],
    ["2025.4.13", "2025-04-13", "2025-04-13"],
    ["5/4/2025", "2025-04-05?", "2025-05-04?"],
    ["5/5/2025", "2025-05-05", "2025-05-05"],
    ["13/4/2025", "2025-04-13", "2025-04-13?"],
    ["4/13/2025", "2025-04-13?", "2025-04-13"],
    ["13-4-2025", "2025-04-13", "2025-04-13?"],
    ["１３．４．２０２５", "2025-04-13", "2025-04-13"],
    ["31.2.2025", "no day", "no day"],
    ["29.2.2024", "2024-02-29", "2024-02-29"],
    ["4.13.2025", "no day", "no day"],
    ["2025-04-13", "2025-04-13", "2025-04-13"],
    ["2025/4/13", "2025-04-13", "2025-04-13"],
    ["1.2", "other", "other"],
    ["1.234", "other", "other"],
    ["1.234.567", "other", "other"],
    ["13.4.25", "other", "other"],
  ])("%s is %s where the day comes first, %s where the month does", (text, dayFirst, monthFirst) => {
    expect(read(text, "day first")).toBe(dayFirst);
    expect(read(text, "month first")).toBe(monthFirst);
  });

  test("is counted as the workbook counts, and said in words", () => {
    expect(typedDate("13.4.2025", "month first")).toMatchObject({ serial: 45_760 });
    expect(dayInWordsOf(45_760, "en-GB")).toBe("13 April 2025");
  });

  test.each([
    ["en-US", "month first"],
    ["en-GB", "day first"],
    ["de", "day first"],
    ["zh-CN", "month first"],
  ])("in %s the order is %s", (language, order) => {
    expect(orderOf(language)).toBe(order);
  });
});

import { expect, test } from "vitest";
import { freeSheetName } from "../../src/host/sheet-name";

test("a new sheet has the name wished for, with a number where it is taken in any letters", () => {
  expect(freeSheetName("Plan the charges", ["Lot"])).toBe("Plan the charges");
  expect(freeSheetName("Plan the charges", ["PLAN THE CHARGES", "Plan the charges 2"])).toBe("Plan the charges 3");
  expect(freeSheetName("安排锅次", ["安排锅次"])).toBe("安排锅次 2");
});

test("a new sheet has a name that spreadsheets take", () => {
  expect(freeSheetName("'a/b: [c]*?'", [])).toBe("a b   c");
  const long = "Will the finished weight add up so";
  expect(freeSheetName(long, [])).toBe("Will the finished weight add up");
  expect(freeSheetName(long, ["Will the finished weight add up"])).toBe("Will the finished weight add 2");
});

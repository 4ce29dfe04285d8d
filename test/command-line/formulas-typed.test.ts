import { expect, test } from "vitest";
import { formulasIn } from "../../src/command-line/formulas-typed";

test.each([
  [
    ["=1+1", "=2+2"],
    ["=1+1", "=2+2"],
  ],
  [
    ["TEA.DRYBASIS(0.75)", "tea.drybasis(0.6)"],
    ["TEA.DRYBASIS(0.75)", "tea.drybasis(0.6)"],
  ],
  [
    ['=TEA.LOSS("a (b")', "＝1+1"],
    ['=TEA.LOSS("a (b")', "＝1+1"],
  ],
  [["1", "+", "2"], ["1 + 2"]],
  [["=1", "+", "SUM(2,3)"], ["=1 + SUM(2,3)"]],
  [["TEA.TARGETWEIGHT(320,", "0.75,", "0.6)"], ["TEA.TARGETWEIGHT(320, 0.75, 0.6)"]],
  [["SUM(1,", "SUM(2,3))"], ["SUM(1, SUM(2,3))"]],
  [["=1", "=", "1"], ["=1 = 1"]],
  [["="], ["="]],
  [["", "  "], []],
])("of the words %j the formulas are %j", (words, formulas) => {
  expect(formulasIn(words)).toEqual(formulas);
});

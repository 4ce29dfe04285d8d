import { describe, expect, test } from "vitest";
import { quickPath } from "../../src/cells/quick-path";
import { type Calculation, measured, measuredList, optional, type Parameter } from "../../src/core/define";
import { mustBe } from "../../src/core/errors";
import { looseWeight, share, text, weight } from "../../src/core/quantities";

const dish = measured("dish", looseWeight);
const part = measured("part", share);
const load = measured("load", weight);
const nine = () => 9;

/** What a column of rows comes to, with "read" where a row is left to be read; undefined where there is no quick path. */
function column(parameters: readonly Parameter[], calculate: Calculation, given: readonly unknown[], rows = 1) {
  return quickPath<string>(parameters, calculate)?.(given, rows, () => "read").map((row) => {
    expect(row).toHaveLength(1);
    return row[0];
  });
}

describe("the quick path", () => {
  test("calculates from one, two or three numbers inside their bounds", () => {
    expect(column([part], (a) => a + 1, [0.25])).toEqual([1.25]);
    expect(column([part, dish], (a, b) => a + 10 * b, [0.25, 3])).toEqual([30.25]);
    expect(column([part, dish, load], (a, b, c) => a + 10 * b + 100 * c, [0.25, 3, 7])).toEqual([730.25]);
  });

  test("goes down columns, with one cell or a range of one for every row", () => {
    const sum: Calculation = (a, b, c) => a + 10 * b + 100 * c;
    const three = [dish, dish, dish];
    expect(column(three, sum, [[[1], [2]], 3, [[4]]], 2)).toEqual([431, 432]);
    expect(column(three, sum, [1, [[2], [3]], [[4], [5]]], 2)).toEqual([421, 531]);
    expect(column([dish], (a) => a, [[[1], [2], [3]]], 3)).toEqual([1, 2, 3]);
  });

  test("looks past what a host appends behind the arguments", () => {
    expect(column([part], (a) => a, [0.5, { address: "A1" }])).toEqual([0.5]);
    expect(column([part, part], (a, b) => a + b, [0.5, 0.25, [[7], [8]]])).toEqual([0.75]);
  });

  test("leaves one row of many to be read, and goes on behind it", () => {
    expect(column([dish, part], (a, b) => a * b, [[[2], [null], [4], []], 0.5], 4)).toEqual([1, "read", 2, "read"]);
    expect(column([dish], (a) => a, [[[2], undefined, [4]]], 3)).toEqual([2, "read", 4]);
  });

  test("includes the bounds themselves", () => {
    expect(column([part], (a) => a, [[[0], [1]]], 2)).toEqual([0, 1]);
  });

  test.each([
    ["a number below its bounds", -0.001],
    ["a number above its bounds", 1.001],
    ["no number", "0.5"],
    ["NaN", Number.NaN],
    ["a blank", null],
    ["nothing", undefined],
    ["TRUE", true],
  ])("leaves %s, wherever it stands, to be read", (_, cell) => {
    for (const count of [1, 2, 3]) {
      const parameters = new Array<Parameter>(count).fill(part);
      for (let place = 0; place < count; place += 1) {
        const given = parameters.map((_, at) => (at === place ? cell : 0.5));
        expect(column(parameters, nine, given)).toEqual(["read"]);
        const columns = parameters.map((_, at) => (at === place ? [[0.5], [cell]] : 0.5));
        expect(column(parameters, nine, columns, 2)).toEqual([9, "read"]);
      }
    }
  });

  test("leaves what comes to no number, and a refusal, to be said", () => {
    expect(column([part], () => "", [0.5])).toEqual(["read"]);
    expect(column([part], () => Number.POSITIVE_INFINITY, [0.5])).toEqual(["read"]);
    expect(column([part], () => Number.NaN, [0.5])).toEqual(["read"]);
    const refuses: Calculation = (a) => {
      if (a > 0.4) throw mustBe("part", "a number", a);
      return a;
    };
    expect(column([part], refuses, [[[0.5], [0.25]]], 2)).toEqual(["read", 0.25]);
  });

  test("gives a 0 without a sign", () => {
    expect(column([part], () => -0, [0.5])).toEqual([0]);
  });

  test("leaves words to be read", () => {
    expect(column([measured("name", text)], nine, ["hill"])).toEqual(["read"]);
    expect(column([measured("name", text)], nine, [1])).toEqual(["read"]);
  });

  test("is none for lists, for more than three cells and for no cell at all", () => {
    expect(column([measuredList("loads", weight)], nine, [1])).toBeUndefined();
    expect(column([part, measuredList("loads", weight)], nine, [1, 1])).toBeUndefined();
    expect(column([part, part, part, optional("dish", looseWeight)], nine, [1, 1, 1, 1])).toBeUndefined();
    expect(column([], nine, [])).toBeUndefined();
  });
});

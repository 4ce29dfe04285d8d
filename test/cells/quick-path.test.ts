import { describe, expect, test } from "vitest";
import { quickPath } from "../../src/cells/quick-path";
import { type Calculation, measured, measuredList, optional, type Parameter } from "../../src/core/define";
import { looseWeight, share, text, weight } from "../../src/core/quantities";

const path = (parameters: readonly Parameter[], calculate: Calculation) => quickPath(parameters, calculate);
const dish = measured("dish", looseWeight);
const part = measured("part", share);
const load = measured("load", weight);

describe("the quick path", () => {
  test("calculates from one, two or three numbers inside their bounds", () => {
    expect(path([part], (a) => a + 1)?.([0.25], 0, 0)).toBe(1.25);
    expect(path([part, dish], (a, b) => a + 10 * b)?.([0.25, 3], 0, 0)).toBe(30.25);
    expect(path([part, dish, load], (a, b, c) => a + 10 * b + 100 * c)?.([0.25, 3, 7], 0, 0)).toBe(730.25);
  });

  test("takes the cell of a range that stands at the row and column", () => {
    const sum = path([dish, load], (a, b) => a + 10 * b);
    expect(sum?.([[[1], [2]], [[3, 4]]], 1, 0)).toBe(32);
    expect(sum?.([[[1], [2]], [[3, 4]]], 0, 1)).toBe(41);
  });

  test("includes the bounds themselves", () => {
    const same = path([part], (a) => a);
    expect([0, 1].map((value) => same?.([value], 0, 0))).toEqual([0, 1]);
  });

  test.each([
    ["a number below its bounds", -0.001],
    ["a number above its bounds", 1.001],
    ["no number", "0.5"],
    ["NaN", Number.NaN],
    ["a blank", null],
    ["TRUE", true],
  ])("leaves %s, wherever it stands, to be read", (_, cell) => {
    const calculate = () => 9;
    expect(path([part], calculate)?.([cell], 0, 0)).toBeUndefined();
    for (const given of [
      [cell, 0.5],
      [0.5, cell],
    ]) {
      expect(path([part, part], calculate)?.(given, 0, 0)).toBeUndefined();
    }
    for (const given of [
      [cell, 0.5, 0.5],
      [0.5, cell, 0.5],
      [0.5, 0.5, cell],
    ]) {
      expect(path([part, part, part], calculate)?.(given, 0, 0)).toBeUndefined();
    }
  });

  test("leaves words to be read", () => {
    expect(path([measured("name", text)], () => 9)?.(["hill"], 0, 0)).toBeUndefined();
    expect(path([measured("name", text)], () => 9)?.([1], 0, 0)).toBeUndefined();
  });

  test("is none for lists, for more than three cells and for no cell at all", () => {
    const nine = () => 9;
    expect(path([measuredList("loads", weight)], nine)).toBeUndefined();
    expect(path([part, measuredList("loads", weight)], nine)).toBeUndefined();
    expect(path([part, part, part, optional("dish", looseWeight)], nine)).toBeUndefined();
    expect(path([], nine)).toBeUndefined();
  });
});

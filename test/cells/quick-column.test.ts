import { describe, expect, test } from "vitest";
import { bind } from "../../src/cells/bind";
import { quickColumn } from "../../src/cells/quick-column";
import { measured, measuredList, optional } from "../../src/core/define";
import { looseWeight, share, text, weight } from "../../src/core/quantities";
import { leafRatio } from "../../src/core/yields/leaf-ratio";
import { shownIn } from "./call";

const dish = measured("dish", looseWeight);
const part = measured("part", share);
const load = measured("load", weight);
const sum = (a: number, b = 0, c = 0) => a + 10 * b + 100 * c;

describe("the quick column", () => {
  test("calculates down one, two or three columns, with one cell for all rows where one is given", () => {
    expect(quickColumn([part], (a) => a)?.([[[0.1], [0.2]]])(1)).toBe(0.2);
    expect(
      quickColumn(
        [dish, load],
        sum as never,
      )?.([
        [[1], [2]],
        [[3], [4]],
      ])(1),
    ).toBe(42);
    expect(quickColumn([dish, load, load], sum as never)?.([[[1], [2]], 3, [[5]]])(1)).toBe(532);
  });

  test.each([-0.001, 1.001, "0.5", Number.NaN, null, true, undefined])("leaves %s to be read", (cell) => {
    expect(quickColumn([part], () => 9)?.([[[0.5], [cell]]])(1)).toBeUndefined();
    expect(quickColumn([part, part], () => 9)?.([[[0.5], [0.5]], cell])(1)).toBeUndefined();
  });

  test("looks at no argument behind those of the function", () => {
    expect(quickColumn([part], () => 9)?.([[[0.5], [0.5]], { of: "the host" }])(0)).toBe(9);
  });

  test("leaves a row without cells to be read", () => {
    expect(quickColumn([part], () => 9)?.([[[0.5], []]])(1)).toBeUndefined();
  });

  test("is none for lists, words, more than three cells and no cell at all", () => {
    expect(quickColumn([measuredList("loads", weight)], () => 9)).toBeUndefined();
    expect(quickColumn([part, part, part, optional("dish", looseWeight)], () => 9)).toBeUndefined();
    expect(quickColumn([], () => 9)).toBeUndefined();
    expect(quickColumn([measured("name", text)], () => 9)?.([[["hill"], ["slope"]]])(0)).toBeUndefined();
  });

  test("goes on below a row that is refused, one that waits and one that holds text", () => {
    const answers = bind(leafRatio)([[1000], [195], [1000], [1000], [1000]], [[250], [900], [null], ["250"], [500]]);
    expect(shownIn(answers).map(([answer]) => String(answer).slice(0, 7))).toEqual([
      "4",
      "#VALUE!",
      "",
      "#VALUE!",
      "2",
    ]);
    expect(shownIn(answers)[1]).toEqual(shownIn(bind(leafRatio)(195, 900))[0]);
  });
});

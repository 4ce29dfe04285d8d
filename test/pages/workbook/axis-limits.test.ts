import { describe, expect, test } from "vitest";
import { axisLimits } from "../../../src/pages/workbook/axis-limits";

describe("where an axis ends", () => {
  test("all values are within, with a little room", () => {
    // From 10 to 20, and six hundredths of ten on either side.
    expect(axisLimits([10, 12, 14, 16, 20])).toEqual({ from: 9.4, to: 20.6 });
  });

  test("one wild value does not count, however wild", () => {
    // Quartiles of 20 21 22 23 24 4300: 21.25 and 23.75, so that the fences stand at 13.75 and 31.25.
    const limits = axisLimits([22, 4300, 20, 24, 21, 23]);
    expect(limits.from).toBeCloseTo(20 - 0.24, 10);
    expect(limits.to).toBeCloseTo(24 + 0.24, 10);
    expect(axisLimits([22, 4.3e9, 20, 24, 21, 23])).toEqual(limits);
    // 31.2 lies within the fences.
    expect(axisLimits([22, 31.2, 20, 24, 21, 23]).to).toBeGreaterThan(31.2);
  });

  test("a wild value counts where nothing says what is usual", () => {
    expect(axisLimits([20, 21, 22, 4300]).to).toBeGreaterThan(4300);
  });

  test("an end that the workbook gives stands", () => {
    expect(axisLimits([10, 12, 14, 16, 20], { least: 0, most: 15 })).toEqual({ from: 0, to: 15 });
    expect(axisLimits([10, 12, 14, 16, 20], { least: 0 })).toEqual({ from: 0, to: 20.6 });
  });

  test("columns begin at zero", () => {
    expect(axisLimits([10, 20], {}, 0)).toEqual({ from: 0, to: 21.2 });
    expect(axisLimits([-10, -20], {}, 0)).toEqual({ from: -21.2, to: 0 });
  });

  test("an axis has a length whatever there is", () => {
    for (const values of [[], [0], [5], [7, 7, 7, 7, 7, 7], [0, 0, 0, 0, 0, 9], [Number.NaN]]) {
      const { from, to } = axisLimits(values);
      expect(to).toBeGreaterThan(from);
    }
    expect(axisLimits([1, 2], { least: 100 })).toEqual({ from: 100, to: 200 });
  });

  test("values that are nearly all one and the same keep what differs a little", () => {
    // Quartiles and middle are 10: half of it, three times, is how far the fences stand.
    expect(axisLimits([10, 10, 10, 10, 10, 24]).to).toBeGreaterThan(24);
    expect(axisLimits([10, 10, 10, 10, 10, 26]).to).toBeLessThan(11);
  });
});

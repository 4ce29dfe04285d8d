import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bind } from "../../src/cells/bind";
import { CellError, type Grid } from "../../src/cells/values";
import { catalogue } from "../../src/core/catalogue";
import { combinedError } from "../../src/core/uncertainty/combined-error";
import { scaleError } from "../../src/core/uncertainty/scale-error";
import { slope } from "../../src/core/uncertainty/slope";
import { expectEqual } from "./compare";

const specs = catalogue.map(({ spec }) => spec);
const uncertainty = bind(specs.find(({ id }) => id === "UNCERTAINTY") as (typeof specs)[0]);
const column = (values: readonly (number | string | null)[]) => values.map((value) => [value]);

function refusal(grid: Grid): string {
  const [[error]] = grid as [[CellError]];
  expect(error).toBeInstanceOf(CellError);
  return `${error.code} ${error.message}`;
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const weight = between(1, 1e5);
const wet = between(0.02, 0.95);
const loss = between(0, 0.5);
const shareOfOne = between(0.05, 0.95);

/** Slopes by hand: the derivative of the closed form along each argument. */
interface ByHand {
  readonly given: fc.Arbitrary<number[]>;
  readonly slopes: (...values: number[]) => number[];
}

const moistureFromWeights: ByHand["slopes"] = (w0, m0, w, l) =>
  [(-(1 - m0) * (1 - l)) / w, (w0 * (1 - l)) / w, (w0 * (1 - m0) * (1 - l)) / w ** 2, (w0 * (1 - m0)) / w] as number[];

const byHand: Record<string, ByHand> = {
  DRYBASIS: { given: fc.tuple(wet), slopes: (m) => [1 / (1 - m) ** 2] },
  WETBASIS: { given: fc.tuple(between(0, 20)), slopes: (x) => [1 / (1 + x) ** 2] },
  OVENMOISTURE: {
    given: fc.tuple(weight, shareOfOne, shareOfOne).map(([b, a, d]) => [b, b * a, b * a * d]),
    slopes: (b, a, d) => [(a - d) / (b - d) ** 2, -1 / (b - d), (b - a) / (b - d) ** 2],
  },
  MOISTURENOW: {
    given: fc.tuple(weight, wet, between(1.05, 5), loss).map(([w, m, r, l]) => [w, m, w * (1 - m) * (1 - l) * r, l]),
    slopes: moistureFromWeights,
  },
  FRESHMOISTURE: {
    given: fc.tuple(weight, shareOfOne, wet, loss).map(([f, p, m, l]) => [f, (f * p * (1 - l)) / (1 - m), m, l]),
    slopes: (f, p, m, l) => [
      (p * (1 - m)) / (f ** 2 * (1 - l)),
      -(1 - m) / (f * (1 - l)),
      p / (f * (1 - l)),
      (-p * (1 - m)) / (f * (1 - l) ** 2),
    ],
  },
  DRYMATTER: { given: fc.tuple(weight, wet), slopes: (w, m) => [1 - m, -w] },
  WATER: { given: fc.tuple(weight, wet), slopes: (w, m) => [m, w] },
  RESTATECONTENT: {
    given: fc.tuple(between(0.001, 100), wet, wet),
    slopes: (c, from, to) => [(1 - to) / (1 - from), (c * (1 - to)) / (1 - from) ** 2, -c / (1 - from)],
  },
  TARGETWEIGHT: {
    given: fc.tuple(weight, wet, wet),
    slopes: (w, m, t) => [(1 - m) / (1 - t), -w / (1 - t), (w * (1 - m)) / (1 - t) ** 2],
  },
  WATERTOREMOVE: {
    given: fc.tuple(weight, wet, shareOfOne).map(([w, m, t]) => [w, m, m * t]),
    slopes: (w, m, t) => [(m - t) / (1 - t), w / (1 - t), (-w * (1 - m)) / (1 - t) ** 2],
  },
  OUTTURN: {
    given: fc.tuple(weight, shareOfOne).map(([f, p]) => [f, f * p]),
    slopes: (f, p) => [-p / f ** 2, 1 / f],
  },
  LEAFRATIO: {
    given: fc.tuple(weight, shareOfOne).map(([f, p]) => [f, f * p]),
    slopes: (f, p) => [1 / p, -f / p ** 2],
  },
  DRYRECOVERY: {
    given: fc.tuple(weight, wet, weight, wet),
    slopes: (f, mf, p, mp) => [
      (-p * (1 - mp)) / (f ** 2 * (1 - mf)),
      (p * (1 - mp)) / (f * (1 - mf) ** 2),
      (1 - mp) / (f * (1 - mf)),
      -p / (f * (1 - mf)),
    ],
  },
  FINISHEDWEIGHT: {
    given: fc.tuple(weight, wet, wet, loss),
    slopes: (f, mf, mp, l) => [
      ((1 - mf) * (1 - l)) / (1 - mp),
      (-f * (1 - l)) / (1 - mp),
      (f * (1 - mf) * (1 - l)) / (1 - mp) ** 2,
      (-f * (1 - mf)) / (1 - mp),
    ],
  },
  FRESHNEEDED: {
    given: fc.tuple(weight, wet, wet, loss),
    slopes: (p, mf, mp, l) => [
      (1 - mp) / ((1 - mf) * (1 - l)),
      (p * (1 - mp)) / ((1 - mf) ** 2 * (1 - l)),
      -p / ((1 - mf) * (1 - l)),
      (p * (1 - mp)) / ((1 - mf) * (1 - l) ** 2),
    ],
  },
  LEAFCOST: {
    given: fc.tuple(between(0.1, 1000), weight, weight, between(0, 1e4)),
    slopes: (price, f, p, other) => [f / p, price / p, -(price * f + other) / p ** 2, 1 / p],
  },
};

describe("UNCERTAINTY of a function with a closed form", () => {
  test("is offered for every function of single numbers with one number as its result, and no other", () => {
    const eligible = specs.filter(
      ({ parameters, result }) =>
        result.shape === "cell" &&
        result.quantity.holds === "number" &&
        !result.quantity.bounds.whole &&
        parameters.every(
          ({ takes, quantity }) => takes === "cell" && quantity.holds === "number" && !quantity.bounds.whole,
        ),
    );
    expect(specs.filter(({ smooth }) => smooth).map(({ id }) => id)).toEqual(eligible.map(({ id }) => id));
    expect(Object.keys(byHand)).toEqual(eligible.map(({ id }) => id));
  });

  test.each(Object.entries(byHand))("%s: agrees with the slopes derived by hand", (id, { given, slopes }) => {
    fc.assert(
      fc.property(given, fc.array(between(0.0001, 0.02), { minLength: 4, maxLength: 4 }), (values, relative) => {
        const errors = values.map((value, place) => (relative[place] as number) * Math.max(value, 0.001));
        const grid = uncertainty(id, column(values), column(errors), false) as number[][];
        const parts = slopes(...values).map((along, place) => along * (errors[place] as number));
        const expected = Math.sqrt(parts.reduce((sum, part) => sum + part * part, 0));
        expect(Math.abs((grid[0]?.[2] as number) / expected - 1)).toBeLessThan(1e-6);
        parts.forEach((part, place) => {
          expect(Math.abs((grid[place + 1]?.[3] as number) - (part / expected) ** 2)).toBeLessThan(2e-6);
        });
      }),
    );
  });

  test("shares add up to 1", () => {
    fc.assert(
      fc.property(weight, wet, wet, (w, m, t) => {
        const grid = uncertainty("TARGETWEIGHT", column([w, m, t]), column([1, 0.01, 0.005]), false) as number[][];
        expectEqual(
          grid.slice(1).reduce((sum, row) => sum + (row[3] as number), 0),
          1,
        );
      }),
    );
  });
});

describe("UNCERTAINTY beside a bound", () => {
  const errorOf = (...given: unknown[]) => (uncertainty(...given) as number[][])[1]?.[2] as number;

  test("takes the slope from the side that there is", () => {
    expect(errorOf("DRYMATTER", column([500, 0]), column([0, 0.01]))).toBeCloseTo(5, 9);
    expect(errorOf("DRYBASIS", 0, 0.01)).toBeCloseTo(0.01, 9);
    expect(errorOf("DRYBASIS", 0.999, 0.0001)).toBeCloseTo(100, 5);
    expect(errorOf("WETBASIS", 0, 0.01)).toBeCloseTo(0.01, 9);
  });

  test("also where another argument sets the bound", () => {
    // As much tea as leaf: finished weight can only go down.
    expect(errorOf("OUTTURN", column([500, 500]), column([0, 1]))).toBeCloseTo(0.002, 9);
    expect(errorOf("OUTTURN", column([500, 500]), column([1, 0]))).toBeCloseTo(0.002, 9);
    expect(errorOf("WATERTOREMOVE", column([500, 0.6, 0.6]), column([0, 0, 0.01]))).toBeCloseTo(12.5, 6);
  });

  test("gives an optional argument that is 0 the slope of its error's size", () => {
    // (before − after) / (before − dish): 2.5 / 5 without a dish, slope 2.5/25 along its weight.
    expect(errorOf("OVENMOISTURE", column([5, 2.5]), column([0, 0, 0.001]))).toBeCloseTo(0.0001, 9);
    expect(errorOf("LEAFCOST", column([10, 500, 100]), column([0, 0, 0, 5]))).toBeCloseTo(0.05, 9);
  });

  test("takes finer steps where an error is larger than the room on either side", () => {
    // P/F = 20/100: the slope along P is 1/100, whatever its error; steps of its size would leave 0…F on both sides.
    const grid = uncertainty("OUTTURN", column([100, 20]), column([0, 60_000]), false);
    expectEqual(grid[0]?.[2] as number, 600, 1e-9);
  });

  test("refuses a value that has no room to change on any side", () => {
    // Finished weight may be at most the fresh weight and at least the smallest weight there is: here both are one.
    expect(refusal(uncertainty("OUTTURN", column([1e-12, 1e-12]), column([0, 1e-13])))).toBe(
      "#VALUE! values must leave finishedWeight room to change, on one side at least; got 1e-12",
    );
  });

  test("a slope at the top of a closed bound looks down", () => {
    expect(slope((x) => x * x, 1, 0.01, { atLeast: 0, atMost: 1 })).toBeCloseTo(2, 9);
  });
});

describe("UNCERTAINTY reads its arguments as the function named would", () => {
  test("whatever the case and the namespace of the name", () => {
    const plain = uncertainty("DRYMATTER", column([500, 0.6]), column([3, 0.008]));
    expect(uncertainty(" tea.DryMatter ", [[500, 0.6]], column([3, 0.008]))).toEqual(plain);
  });

  test("and refuses a function that has no slope, or is none", () => {
    expect(refusal(uncertainty("CHARGECOUNT", column([936, 320]), column([1, 1])))).toMatch(
      /^#VALUE! functionName must be one of DRYBASIS, .*LEAFCOST, whose result is one smooth number of single numbers; got the text "CHARGECOUNT"$/,
    );
    for (const name of ["FINISHEDCHECK", "DRYINGSTEPS", "OVENMEAN", "CONVERTWEIGHT", "UNCERTAINTY", "NOSUCH"]) {
      expect(refusal(uncertainty(name, 1, 1))).toMatch(/^#VALUE! functionName must be one of /);
    }
  });

  test("judges a value by the bounds of its argument and names it", () => {
    expect(refusal(uncertainty("OUTTURN", column([500, -1]), column([1, 1])))).toBe(
      "#VALUE! finishedWeight must be a weight above 0; got -1",
    );
    expect(refusal(uncertainty("OUTTURN", column([500, 600]), column([1, 1])))).toMatch(
      /^#VALUE! finishedWeight must be /,
    );
    expect(refusal(uncertainty("DRYBASIS", 1, 0.01))).toMatch(
      /^#VALUE! moisture must be from 0 up to, not including, 1/,
    );
  });

  test("waits for a reading and asks for a setting", () => {
    expect(uncertainty("OUTTURN", column([500, null]), column([1, 1]))).toEqual([[""]]);
    expect(uncertainty("OUTTURN", column([500]), column([1]))).toEqual([[""]]);
    expect(uncertainty("OUTTURN", column([null, null]), column([null, null]))).toEqual([[""]]);
    expect(uncertainty("OUTTURN", column([500, 0]), column([1, 0]))).toEqual([[""]]);
    expect(refusal(uncertainty("TARGETWEIGHT", column([500, 0.6]), column([1, 0.01])))).toBe(
      "#VALUE! targetMoisture must be from 0 up to, not including, 1 (76% or 0.76); got a blank",
    );
  });

  test("takes a blank optional argument as its default, with an error of its own", () => {
    const blank = uncertainty("FINISHEDWEIGHT", column([640, 0.77, 0.05, null]), column([0.5, 0.01, 0.003, 0.02]));
    const typed = uncertainty("FINISHEDWEIGHT", column([640, 0.77, 0.05, 0]), column([0.5, 0.01, 0.003, 0.02]));
    expect(blank).toEqual(typed);
    const shorter = uncertainty("FINISHEDWEIGHT", column([640, 0.77, 0.05]), column([0.5, 0.01, 0.003]));
    expect(shorter.at(-1)).toEqual(["dryLoss", 0, 0, 0]);
  });

  test("refuses errors that are missing, below 0, text or those of another moisture", () => {
    const call = (...errors: (number | string | null)[]) =>
      refusal(uncertainty("DRYMATTER", column([500, 0.6]), column(errors)));
    expect(call(1, null)).toBe(
      "#VALUE! valueErrors must be filled beside each value (0 for an exact one); the one of moisture is blank",
    );
    expect(call(-1, 0.01)).toMatch(/^#VALUE! valueErrors must be a standard uncertainty of 0 or more; got -1/);
    expect(call("some", 0.01)).toMatch(/^#VALUE! valueErrors must be .* got the text "some"/);
    expect(call(1, 0.21)).toBe(
      "#VALUE! valueErrors must be from 0 to 0.2 (0.5 points is 0.005) for moisture; got 0.21",
    );
  });

  test("refuses more values than the function takes", () => {
    expect(refusal(uncertainty("DRYMATTER", column([500, 0.6, 1]), column([1, 0.01, 0])))).toBe(
      "#VALUE! values must be 2 at most, as many as DRYMATTER takes; got 3",
    );
    expect(refusal(uncertainty("DRYMATTER", column([500, 0.6]), column([1, 0.01, 0])))).toMatch(
      /^#VALUE! valueErrors must be 2 at most, as many as DRYMATTER takes; got 3/,
    );
  });

  test("gives an error of 0 and no shares when every value is exact", () => {
    expect(uncertainty("DRYMATTER", column([500, 0.5]), column([0, 0]), false)).toEqual([
      ["result", 250, 0, 0],
      ["weight", 500, 0, 0],
      ["moisture", 0.5, 0, 0],
    ]);
  });
});

describe("the root of a sum of squares", () => {
  // NIST Technical Note 1297, table D.1: nine components in nanometres, 34 nm published.
  const parts = [25, 5.8, 3.9, 6.7, 1.7, 5.8, 10.2, 2.9, 16.6];

  test("is the published one of NIST TN 1297", () => {
    expect(Math.round(combinedError(parts))).toBe(34);
    expect(Math.abs(combinedError(parts) - 33.8124)).toBeLessThan(5e-5);
  });

  test("is what SCALEERROR makes of a scale that only scatters and is off", () => {
    expectEqual(scaleError.calculate(1, 5, 1, false, Math.sqrt(3) * 12), 13);
  });
});

describe("SCALEERROR", () => {
  test("never goes below the scatter of the mean, nor below the step of a display that stands still", () => {
    fc.assert(
      fc.property(between(0.01, 10), between(0, 10), fc.integer({ min: 1, max: 1e6 }), (step, scatter, readings) => {
        const error = scaleError.calculate(step, scatter, readings, false, 0);
        expect(error).toBeGreaterThanOrEqual((scatter / Math.sqrt(readings)) * (1 - 1e-15));
        expect(scaleError.calculate(step, 0, readings, false, 0)).toBeGreaterThanOrEqual(
          (step / Math.sqrt(12)) * (1 - 1e-15),
        );
        expect(error).toBeLessThanOrEqual(scaleError.calculate(step, scatter, 1, false, 0));
      }),
    );
  });

  test("refuses what is no scale", () => {
    const call = bind(scaleError);
    expect(refusal(call(null))).toMatch(/^#VALUE! readability must be a weight above 0; got a blank/);
    expect(refusal(call(-1))).toMatch(/^#VALUE! readability must be a weight above 0; got -1/);
    expect(refusal(call(1, 0, 1.5))).toMatch(/^#VALUE! readings must be a whole number of 1 or more; got 1.5/);
    expect(refusal(call(1, 0, 1, false, -0.1))).toMatch(/^#VALUE! accuracy must be a weight of 0 or more; got -0.1/);
  });
});

describe("UNCERTAINTY beside a 0 with a tiny error", () => {
  const call = uncertainty;

  test.each([1e-5, 1e-7, 1e-3, 1])(
    "carries an other cost of 0 ± %d through as what it is, error / finished weight",
    (error) => {
      const grid = call("LEAFCOST", [[120], [900], [200], [0]], [[0], [0], [0], [error]], false);
      expectEqual((grid[0] as number[])[2] as number, error / 200, 1e-6);
    },
  );

  test("takes the moisture of removed leaf where it is given, and leaves it out where it is not", () => {
    const without = call("DRYRECOVERY", [[900], [0.765], [195.4], [0.045], [20]], [[0], [0], [1], [0], [0]], false);
    expect(without.map((row) => row[0])).toEqual([
      "result",
      "freshWeight",
      "freshMoisture",
      "finishedWeight",
      "finishedMoisture",
      "removed",
    ]);
    // 0.955 / 206.8 for each gram of tea.
    expectEqual((without[0] as number[])[2] as number, 0.955 / 206.8, 1e-9);
    const values = [[900], [0.765], [195.4], [0.045], [20], [0.045]];
    const given = call("DRYRECOVERY", values, [[0], [0], [1], [0], [0], [0]], false);
    expect(given).toHaveLength(7);
    expectEqual((given[0] as number[])[2] as number, 0.955 / 192.4, 1e-9);
  });
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { DomainError } from "../../src/core/errors";
import { approachFit } from "../../src/core/numeric/approach-fit";
import { dryingTime } from "../../src/core/time/drying-time";

describe("the fit of an approach to rest", () => {
  test("gives NIST's BoxBOD to every certified digit", () => {
    const fit = approachFit([1, 2, 3, 5, 7, 10], [109, 149, 149, 191, 213, 224]);
    expect(fit?.depth.toPrecision(11)).toBe("213.80940889");
    expect(fit?.rate.toPrecision(11)).toBe("0.54723748542");
    expect(fit?.squares.toPrecision(11)).toBe("1168.0088766");
  });

  test("is as good as Newton's method at 40 digits, as far as doubles go", () => {
    const fit = approachFit([1, 2, 3, 5, 7, 10], [109, 149, 149, 191, 213, 224]);
    expect(Math.abs((fit?.depth ?? 0) / 213.8094088903979 - 1)).toBeLessThan(1e-13);
    expect(Math.abs((fit?.rate ?? 0) / 0.5472374854191993 - 1)).toBeLessThan(1e-13);
  });

  test("finds the course that readings were made from", () => {
    const depths = fc.double({ min: 1, max: 1000, noNaN: true });
    const rates = fc.double({ min: 0.05, max: 8, noNaN: true });
    fc.assert(
      fc.property(depths, rates, fc.integer({ min: 4, max: 30 }), (depth, rate, count) => {
        const x = Array.from({ length: count }, (_, index) => index / (count - 1));
        const fit = approachFit(
          x,
          x.map((at) => depth * (1 - Math.exp(-rate * at))),
        );
        expect(Math.abs((fit?.rate ?? 0) / rate - 1)).toBeLessThan(1e-6);
        expect(Math.abs((fit?.depth ?? 0) / depth - 1)).toBeLessThan(1e-6);
      }),
    );
  });

  test("says nothing where readings fall steadily, or not at all", () => {
    expect(approachFit([0, 1, 2, 3], [0, 20, 40, 60])).toBeUndefined();
    expect(approachFit([0, 1, 2, 3], [0, 0, 0, 0])).toBeUndefined();
  });
});

/** "Drying tests with a foodstuff", Geankoplis, problem 9.7-2: hours and kilograms. */
const hours = [0, 0.4, 0.8, 1.4, 2.2, 3, 4.2, 5, 7, 9, 12];
const kilograms = [4.944, 4.885, 4.808, 4.699, 4.554, 4.404, 4.241, 4.15, 4.019, 3.978, 3.955];

test("of a published drying, 21 of 26 forecasts hold the time that was read, and those that miss were made by 3 h", () => {
  const forecasts = [2, 3, 4, 5, 6, 7, 8, 9].flatMap((count) =>
    hours.flatMap((observed, later) => {
      const target = kilograms[later] as number;
      if (later < count || target <= 3.955) return [];
      const row = dryingTime.calculate(hours.slice(0, count), kilograms.slice(0, count), target, 3.955);
      const [early, , late] = row;
      if (typeof early !== "number" || typeof late !== "number") return [];
      return [{ made: hours[count - 1] as number, holds: early <= observed && observed <= late }];
    }),
  );
  expect(forecasts.length).toBe(26);
  expect(forecasts.filter(({ holds }) => holds).length).toBe(21);
  expect(forecasts.filter(({ made, holds }) => made > 3 && !holds)).toEqual([]);
});

describe("a row of moments", () => {
  const step = fc.double({ min: 0.001, max: 0.2, noNaN: true });
  const fall = fc.double({ min: 0, max: 60, noNaN: true });
  const rows = fc
    .record({
      steps: fc.array(step, { minLength: 1, maxLength: 12 }),
      falls: fc.array(fall, { minLength: 12, maxLength: 12 }),
      target: fc.double({ min: 0.02, max: 1, noNaN: true }),
      end: fc.option(fc.double({ min: 0.01, max: 0.99, noNaN: true }), { nil: undefined }),
    })
    .map(({ steps, falls, target, end }) => {
      const times: number[] = [0.4];
      const weights: number[] = [800];
      steps.forEach((step, index) => {
        times.push((times[index] as number) + step);
        weights.push((weights[index] as number) - (falls[index] as number));
      });
      const wanted = 800 * target;
      return { times, weights, target: wanted, end: end === undefined ? undefined : end * wanted };
    });

  test("never has early after likely or likely after late, nor any of them before the last reading unless it is reached", () => {
    fc.assert(
      fc.property(rows, ({ times, weights, target, end }) => {
        const [early, likely, late] = dryingTime.calculate(times, weights, target, end);
        const moments = [early, likely, late].filter((moment) => typeof moment === "number") as number[];
        expect(moments).toEqual([...moments].sort((one, other) => one - other));
        const last = times[times.length - 1] as number;
        if ((weights[weights.length - 1] as number) <= target) {
          expect(new Set([early, likely, late]).size).toBe(1);
          expect(early as number).toBeLessThanOrEqual(last);
        } else for (const moment of moments) expect(moment).toBeGreaterThanOrEqual(last);
        for (const cell of [early, likely, late]) {
          expect(typeof cell === "number" || cell === "" || cell instanceof DomainError).toBe(true);
        }
      }),
      { numRuns: 2000 },
    );
  });

  test("keeps late from falling before early where weights differ by their last bit", () => {
    const times = [0.4, 0.401, 0.402, 0.403, 0.404];
    const weights = [800, 800, 800, 800, 799.9999999999998];
    const [early, , late] = dryingTime.calculate(times, weights, 799.9999999999916, 7.999999999999916);
    expect(late as number).toBeGreaterThanOrEqual(early as number);
  });

  test("does not change with rows that are ruled ahead", () => {
    fc.assert(
      fc.property(rows, ({ times, weights, target, end }) => {
        const ahead = [...times, (times[times.length - 1] as number) + 0.1];
        const plain = dryingTime.calculate(times, weights, target, end).map(String);
        expect(dryingTime.calculate(ahead, [...weights, null], target, end).map(String)).toEqual(plain);
      }),
      { numRuns: 200 },
    );
  });
});

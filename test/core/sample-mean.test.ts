import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { meanAndScatter } from "../../src/core/numeric/mean-and-scatter";
import { studentQuantile } from "../../src/core/numeric/student";
import { mavroReadings } from "../../src/core/published-readings";
import { sampleMean } from "../../src/core/uncertainty/sample-mean";

/** NIST's readings in units of the last digit read: whole numbers, which doubles hold as they are. */
const steps = mavroReadings.map((reading) => Math.round(reading * 1e5));

test("NIST's readings of a filter give the mean and the deviation to every certified digit", () => {
  const { mean, scatter } = meanAndScatter(steps);
  expect(mean).toBe(200185.6);
  expect(scatter.toPrecision(15)).toBe("42.9123454003053");
  // As they are written, the readings themselves are rounded to doubles: thirteen digits are left.
  expect(meanAndScatter(mavroReadings).mean).toBe(2.001856);
  expect(meanAndScatter(mavroReadings).scatter.toPrecision(13)).toBe("0.0004291234540031");
});

test("summed in one pass they would lose digits of the deviation: why there are two", () => {
  const n = mavroReadings.length;
  const sum = mavroReadings.reduce((total, reading) => total + reading, 0);
  const squares = mavroReadings.reduce((total, reading) => total + reading * reading, 0);
  const inOnePass = Math.sqrt((squares - (sum * sum) / n) / (n - 1));
  expect(Math.abs(inOnePass / 0.000429123454003053 - 1)).toBeGreaterThan(1e-11);
});

describe("the readings needed", () => {
  const readings = fc.array(fc.double({ min: -1000, max: 1000, noNaN: true }), { minLength: 2, maxLength: 30 });
  const sure = fc.double({ min: 0.5, max: 0.999, noNaN: true });

  test("are the least number that makes the range as narrow as asked", () => {
    fc.assert(
      fc.property(readings, fc.double({ min: 0.05, max: 5, noNaN: true }), sure, (repeats, share, confidence) => {
        const { scatter } = meanAndScatter(repeats);
        fc.pre(scatter > 1e-6);
        const halfWidth = share * scatter;
        const needed = sampleMean.calculate(repeats, halfWidth, confidence)[6] as number;
        const widthOf = (n: number) => (studentQuantile((1 + confidence) / 2, n - 1) * scatter) / Math.sqrt(n);
        expect(widthOf(needed)).toBeLessThanOrEqual(halfWidth * (1 + 1e-11));
        if (needed > 2) expect(widthOf(needed - 1)).toBeGreaterThan(halfWidth);
      }),
      { numRuns: 60 },
    );
  });

  test("are no more than there are exactly when the range is narrow enough already", () => {
    fc.assert(
      fc.property(readings, fc.double({ min: 0.05, max: 20, noNaN: true }), sure, (repeats, share, confidence) => {
        const { mean, scatter } = meanAndScatter(repeats);
        fc.pre(scatter > 1e-6);
        const halfWidth = share * scatter;
        const [, , high, , , n, needed] = sampleMean.calculate(repeats, halfWidth, confidence) as number[];
        const margin = (high as number) - mean;
        fc.pre(Math.abs(margin / halfWidth - 1) > 1e-6);
        expect((needed as number) <= (n as number)).toBe(margin < halfWidth);
      }),
      { numRuns: 60 },
    );
  });
});

test("the same readings in any order have the same mean and range", () => {
  const forth = sampleMean.calculate(mavroReadings, 0.0001, 0.95) as number[];
  const back = sampleMean.calculate([...mavroReadings].reverse(), 0.0001, 0.95) as number[];
  forth.forEach((value, column) => {
    expect(Math.abs(value - (back[column] as number))).toBeLessThanOrEqual(1e-15 * Math.abs(value));
  });
});

import { expect, test } from "vitest";
import { ovenMean } from "../../src/core/moisture/oven-mean";
import { rangeFactor } from "../../src/core/numeric/normal-range";

const step = 0.002;
const reach = 8.5;
const density = (x: number): number => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);

/** Φ at −8.5, −8.498, …, by Simpson's rule from the density alone. */
const below: number[] = [0];
for (let index = 1; index <= (4 * reach) / step; index += 1) {
  const x = -reach + (index - 1) * step;
  const piece = (step / 6) * (density(x) + 4 * density(x + step / 2) + density(x + step));
  below.push((below[index - 1] as number) + piece);
}

/** P(range of n ≤ w) = n ∫ φ(x) (Φ(x + w) − Φ(x))ⁿ⁻¹ dx. */
function rangeWithin(n: number, w: number): number {
  const whole = Math.floor(w / step);
  const part = w / step - whole;
  let sum = 0;
  for (let index = 0; index <= (2 * reach) / step; index += 1) {
    const [left, right] = [below[index + whole] as number, below[index + whole + 1] as number];
    const between = left + part * (right - left) - (below[index] as number);
    sum += density(-reach + index * step) * between ** (n - 1) * step;
  }
  return n * sum;
}

function quantile(n: number): number {
  let [low, high] = [0, 8];
  for (let halving = 0; halving < 40; halving += 1) {
    const middle = (low + high) / 2;
    if (rangeWithin(n, middle) < 0.95) low = middle;
    else high = middle;
  }
  return low;
}

test("the factors are the quantiles of the range of normal values, worked out anew from the definition", () => {
  const two = quantile(2);
  expect(two).toBeCloseTo(1.959964 * Math.SQRT2, 5);
  for (const n of [2, 3, 4, 5, 6, 10, 20]) expect(rangeFactor(n)).toBeCloseTo(quantile(n) / two, 5);
});

test("they are those of printed tables of the range, as recalled: 2.77, 3.31, 3.63, 3.86, 4.03 … 4.47, 5.01", () => {
  const printed: [number, number][] = [
    [2, 2.77],
    [3, 3.31],
    [4, 3.63],
    [5, 3.86],
    [6, 4.03],
    [10, 4.47],
    [20, 5.01],
  ];
  for (const [n, value] of printed) expect(Math.abs(rangeFactor(n) * 2.77181 - value)).toBeLessThanOrEqual(0.0051);
  expect(rangeFactor(50)).toBe(rangeFactor(20));
});

/** Mulberry32. */
function uniform(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

test.each([2, 3, 4, 6])("good sets of %d readings are refused 5 times in 100", (n) => {
  const next = uniform(20260 + n);
  const count = 20_000;
  const deviation = 0.003 / 2.77181;
  const reading = () => 0.05 + deviation * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
  let refused = 0;
  for (let set = 0; set < count; set += 1) {
    const readings = Array.from({ length: n }, reading);
    try {
      ovenMean.calculate(readings, 0.003);
    } catch {
      refused += 1;
    }
  }
  // Seed 20260 + n; the standard error of 5 in 100 is √(0.05 × 0.95 / 20,000) = 0.0015, and three of them are allowed.
  expect(Math.abs(refused / count - 0.05)).toBeLessThan(0.0046);
});

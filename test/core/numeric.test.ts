import { describe, expect, test } from "vitest";
import { chiSquareTail } from "../../src/core/numeric/chi-square";
import { leastAdjustment } from "../../src/core/numeric/least-adjustment";
import { linearReconciliation } from "../../src/core/numeric/linear-reconciliation";
import { normalQuantile, normalTail } from "../../src/core/numeric/normal";
import { factored } from "../../src/core/numeric/semidefinite";
import { studentQuantile } from "../../src/core/numeric/student";

function expectNear(actual: number, expected: number, relative: number): void {
  const message = `${actual} against ${expected}`;
  expect(Math.abs(actual - expected), message).toBeLessThanOrEqual(relative * Math.abs(expected));
}

const probabilities = [0.001, 0.01, 0.05, 0.3, 0.5, 0.75, 0.9, 0.975, 0.999];

describe("chi-square", () => {
  test("with two and four degrees of freedom has a tail in closed form", () => {
    for (const value of [0.001, 0.3, 1, 5, 14, 100, 700]) {
      expectNear(chiSquareTail(value, 2), Math.exp(-value / 2), 1e-13);
      expectNear(chiSquareTail(value, 4), Math.exp(-value / 2) * (1 + value / 2), 1e-13);
    }
  });

  test("with one and three degrees of freedom follows from the normal tail", () => {
    for (const value of [0.01, 1, 4, 9, 30]) {
      const z = Math.sqrt(value);
      expectNear(chiSquareTail(value, 1), 2 * normalTail(z), 1e-13);
      const rest = Math.sqrt((2 * value) / Math.PI) * Math.exp(-value / 2);
      expectNear(chiSquareTail(value, 3), 2 * normalTail(z) + rest, 1e-13);
    }
  });

  // Upper percentage points as printed statistical tables give them, to five decimals.
  test.each([
    [0.95, 1, 3.84146],
    [0.95, 3, 7.81473],
    [0.95, 4, 9.48773],
    [0.95, 10, 18.30704],
    [0.99, 5, 15.08627],
    [0.995, 2, 10.59663],
    [0.05, 9, 3.32511],
  ])("passes its printed point: %d with %d degrees of freedom", (probability, degrees, printed) => {
    expect(chiSquareTail(printed - 6e-6, degrees)).toBeGreaterThan(1 - probability);
    expect(chiSquareTail(printed + 6e-6, degrees)).toBeLessThan(1 - probability);
  });

  test("has the 95 % point of four degrees of freedom to all digits", () => {
    expectNear(chiSquareTail(9.487729036781156, 4), 0.05, 1e-13);
  });

  test("of many degrees is that of a cubed normal, nearly", () => {
    // Wilson and Hilferty: Abramowitz and Stegun 26.4.17, good to some thousandths here.
    for (const [degrees, z] of [
      [400, 1.5],
      [2001, -1],
      [2001, 2],
    ] as const) {
      const cube = 1 - 2 / (9 * degrees) + z * Math.sqrt(2 / (9 * degrees));
      expectNear(chiSquareTail(degrees * cube ** 3, degrees), normalTail(z), 2e-3);
    }
  });

  test("stays a probability far out and at the edge", () => {
    expect(chiSquareTail(0, 3)).toBe(1);
    expect(chiSquareTail(0, 0)).toBe(1);
    expect(chiSquareTail(1e9, 3)).toBe(0);
    expect(chiSquareTail(1e-9, 5001)).toBe(1);
  });
});

describe("the normal distribution", () => {
  // Four decimals in every printed table; the digits beyond them are the ones that are quoted for 95 % everywhere.
  test("has its well-known quantiles", () => {
    expectNear(normalQuantile(0.975), 1.959963984540054, 1e-14);
    expectNear(normalQuantile(0.95), 1.644853626951473, 1e-14);
    expect(normalQuantile(0.5)).toBe(0);
  });

  test("has a tail without a step where two formulas meet", () => {
    const [before, after] = [normalTail(2.5 - 1e-9), normalTail(2.5)];
    const density = Math.exp(-(2.5 ** 2) / 2) / Math.sqrt(2 * Math.PI);
    expectNear((before - after) / 1e-9, density, 1e-4);
  });

  test("is symmetric", () => {
    for (const probability of [0.001, 0.2, 0.4]) {
      expectNear(normalQuantile(probability), -normalQuantile(1 - probability), 1e-12);
    }
    expectNear(normalTail(-1.3) + normalTail(1.3), 1, 1e-15);
  });

  test("gives the probability back, far into the tails", () => {
    for (const probability of [1e-300, 1e-20, 1e-6, ...probabilities]) {
      expectNear(normalTail(-normalQuantile(probability)), probability, 1e-11);
    }
  });
});

describe("Student's t", () => {
  // The finite sum of Abramowitz and Stegun 26.7.4, worked out to 40 digits and turned round by halving.
  test.each([
    [0.975, 1.961942838780299],
    [0.9999, 3.730539368953782],
    [0.99999999, 5.650215682442182],
  ])("of 1200 degrees stays below %d as the long sum says", (probability, exact) => {
    // The last one is worth its digits: what is left beyond it is known to eight digits only.
    expectNear(studentQuantile(probability, 1200), exact, probability > 0.9999 ? 2e-9 : 3e-12);
  });

  test("with one, two and four degrees of freedom has quantiles in closed form", () => {
    for (const probability of probabilities.filter((value) => value !== 0.5)) {
      const middle = 2 * probability - 1;
      expectNear(studentQuantile(probability, 1), Math.tan((Math.PI * middle) / 2), 1e-11);
      expectNear(studentQuantile(probability, 2), middle * Math.sqrt(2 / (1 - middle * middle)), 1e-11);
      const root = Math.sqrt(4 * probability * (1 - probability));
      const q = Math.cos(Math.acos(root) / 3) / root;
      expectNear(studentQuantile(probability, 4), Math.sign(middle) * 2 * Math.sqrt(q - 1), 1e-9);
    }
  });

  // Critical values as the NIST/SEMATECH e-Handbook of Statistical Methods prints them, to three decimals.
  test.each([
    [0.95, 5, 2.015],
    [0.975, 5, 2.571],
    [0.975, 10, 2.228],
    [0.99, 10, 2.764],
    [0.995, 30, 2.75],
    [0.999, 7, 4.785],
    [0.975, 100, 1.984],
  ])("has its printed quantile: %d with %d degrees of freedom", (probability, degrees, printed) => {
    expect(Math.abs(studentQuantile(probability, degrees) - printed)).toBeLessThanOrEqual(6e-4);
  });

  test("goes on smoothly where the sum hands over to the expansion", () => {
    for (const probability of [0.6, 0.975, 0.999]) {
      const [a, b, c, d] = [999, 1000, 1001, 1002].map((degrees) => studentQuantile(probability, degrees)) as Four;
      expect(Math.abs(a - 3 * b + 3 * c - d)).toBeLessThan(1e-10 * a);
    }
  });

  test("becomes normal with many degrees of freedom", () => {
    expectNear(studentQuantile(0.975, 1e12), normalQuantile(0.975), 1e-11);
  });

  test("is symmetric about 0", () => {
    expect(studentQuantile(0.5, 7)).toBe(0);
    expectNear(studentQuantile(0.1, 7), -studentQuantile(0.9, 7), 1e-13);
  });
});

type Four = [number, number, number, number];

describe("a factored matrix", () => {
  const matrix = [
    [4, 2, 0, 0],
    [2, 5, 3, 0],
    [0, 3, 6, 1],
    [0, 0, 1, 2],
  ];
  const entry = (row: number, column: number): number => matrix[row]?.[column] as number;

  test.each([1, 2, 3])("solves within a band of %d", (band) => {
    const x = [1, -2, 3, 0.5];
    const right = matrix.map((row) => row.reduce((sum, value, place) => sum + value * (x[place] as number), 0));
    const { solution, leftovers } = factored(4, band, entry).solve(right);
    solution.forEach((value, place) => {
      expectNear(value, x[place] as number, 1e-14);
    });
    expect(leftovers).toEqual([0, 0, 0, 0]);
  });

  test("passes over a row that follows from the others and tells what contradicts it", () => {
    const rows = [
      [1, 1, 0],
      [1, 1, 0],
      [0, 0, 2],
    ];
    const singular = factored(3, 2, (row, column) => rows[row]?.[column] as number);
    expect(singular.rank).toBe(2);
    expect(singular.solve([3, 3, 8])).toEqual({ solution: [3, 0, 4], leftovers: [0, 0, 0] });
    expect(singular.solve([3, 4, 8]).leftovers).toEqual([0, 1, 0]);
  });
});

describe("reconciled flows", () => {
  // Narasimhan and Jordache, Data Reconciliation and Gross Error Detection: six flows, four balances, σ = 1.
  const balances = [
    [1, -1, -1, 0, 0, 0],
    [0, 1, 0, -1, 0, 0],
    [0, 0, 1, 0, -1, 0],
    [0, 0, 0, 1, 1, -1],
  ];
  const variances = [1, 1, 1, 1, 1, 1];
  const measured = [101.91, 64.45, 34.65, 64.2, 36.44, 98.88];

  test("are the published ones, to their two decimals", () => {
    const { fitted } = linearReconciliation(balances, variances, measured);
    [100.22, 64.5, 35.72, 64.5, 35.72, 100.22].forEach((published, place) => {
      expect(Math.abs((fitted[place] as number) - published)).toBeLessThanOrEqual(0.005 + 1e-9);
    });
  });

  test("have the hand-derived test value and standard deviations", () => {
    const result = linearReconciliation(balances, variances, measured);
    expect(Math.abs(result.gamma - 6.4075)).toBeLessThan(5e-5);
    expect(result.degreesOfFreedom).toBe(4);
    expect(chiSquareTail(result.gamma, 4)).toBeGreaterThan(0.05);
    for (const deviation of result.fittedDeviations) expectNear(deviation, Math.sqrt(1 / 3), 1e-12);
    for (const deviation of result.adjustmentDeviations) expectNear(deviation, Math.sqrt(2 / 3), 1e-12);
  });

  test("show the biased stream, by the largest score", () => {
    const biased = linearReconciliation(balances, variances, [101.91, 68.45, 34.65, 64.2, 36.44, 98.88]);
    expect(Math.abs(biased.gamma - 16.674167)).toBeLessThan(1e-6);
    expect(chiSquareTail(biased.gamma, 4)).toBeLessThan(0.05);
    const sizes = biased.scores.map(Math.abs);
    expect(sizes.indexOf(Math.max(...sizes))).toBe(1);
    expect(Math.abs((sizes[1] as number) - 3.2047)).toBeLessThan(5e-5);
  });

  test("do not change when a balance that follows from the others is added", () => {
    const more = linearReconciliation([...balances, [1, 0, 0, 0, 0, -1]], variances, measured);
    const plain = linearReconciliation(balances, variances, measured);
    expect(more.degreesOfFreedom).toBe(4);
    more.fitted.forEach((value, place) => {
      expectNear(value, plain.fitted[place] as number, 1e-12);
    });
  });

  test("leave an exact reading alone, and a reading in no balance", () => {
    const result = linearReconciliation([[1, -1, 0]], [0, 4, 1], [10, 12, 7]);
    expect(result.fitted).toEqual([10, 10, 7]);
    expect(result.scores[1]).toBe(-1);
    expect(result.scores[2]).toBeNaN();
  });

  test("are refused where exact readings contradict each other", () => {
    expect(() => linearReconciliation([[1, -1]], [0, 0], [10, 12])).toThrow(
      "readings must agree where they are exact; balance 1 cannot close",
    );
    expect(linearReconciliation([[1, -1]], [0, 0], [10, 10]).degreesOfFreedom).toBe(0);
  });

  test("are refused where the sizes do not match", () => {
    expect(() => linearReconciliation([[1, -1, 0]], [1, 1], [10, 12])).toThrow(
      "matrix must be a column for each reading; got 3",
    );
    expect(() => linearReconciliation([[1, -1]], [1], [10, 12])).toThrow(
      "variances must be one for each reading; got 1",
    );
  });

  test("weigh one thing twice into the mean weighed by the variances", () => {
    const { changes } = leastAdjustment(
      [
        new Map([
          [0, 1],
          [1, -1],
        ]),
      ],
      [1, 4],
      [100 - 104],
    );
    expectNear(100 + (changes[0] as number), 100.8, 1e-14);
    expectNear(104 + (changes[1] as number), 100.8, 1e-14);
  });
});

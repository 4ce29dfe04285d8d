import { expect } from "vitest";
import { CellError, type CellValue, type Grid } from "../../src/cells/values";
import type { Check, Expected } from "../../src/core/define";

/** Largest difference that a check allows at an expected value. */
function allowed(tolerance: Check["tolerance"], expected: number): number {
  return "absolute" in tolerance ? tolerance.absolute : tolerance.relative * Math.max(Math.abs(expected), 1e-300);
}

function expectValue(actual: CellValue | undefined, expected: number | string, tolerance: Check["tolerance"]): void {
  if (actual instanceof CellError && typeof expected === "string" && expected.startsWith("#")) {
    expect(actual.code).toBe(expected);
  } else if (typeof expected === "number") {
    expect(actual, `expected ${expected}, got ${String(actual)}`).toBeTypeOf("number");
    expect(Math.abs((actual as number) - expected), `${String(actual)} against ${expected}`).toBeLessThanOrEqual(
      allowed(tolerance, expected),
    );
  } else {
    expect(actual).toBe(expected);
  }
}

/** Compares what a cell function gave with what its page says it gives. */
export function expectGrid(actual: Grid, expected: Expected, tolerance: Check["tolerance"]): void {
  if (typeof expected === "object" && "error" in expected) {
    const error = actual[0]?.[0];
    expect(error).toBeInstanceOf(CellError);
    expect((error as CellError).code).toBe(expected.error);
    if (expected.message !== undefined) expect((error as CellError).message).toBe(expected.message);
    return;
  }
  const rows = typeof expected === "object" ? expected : [[expected]];
  expect(actual.map((row) => row.length)).toEqual(rows.map((row) => row.length));
  rows.forEach((row, rowIndex) => {
    row.forEach((value, column) => {
      expectValue(actual[rowIndex]?.[column], value, tolerance);
    });
  });
}

/** Two numbers that arithmetic makes equal, up to the rounding of doubles. */
export function expectEqual(actual: number, expected: number, relative = 1e-12, smallest = 0): void {
  const difference = Math.abs(actual - expected);
  expect(difference, `${actual} against ${expected}`).toBeLessThanOrEqual(relative * Math.abs(expected) + smallest);
}

import { expect } from "vitest";
import { CellError, type CellValue, type Grid } from "../../src/cells/values";
import type { Check, Expected, ExpectedRefusal } from "../../src/core/define";
import { cellsOf } from "../../src/core/describe";

/** Largest difference that a check allows at an expected value. */
function allowed(tolerance: Check["tolerance"], expected: number): number {
  return "absolute" in tolerance ? tolerance.absolute : tolerance.relative * Math.max(Math.abs(expected), 1e-300);
}

function expectValue(
  actual: CellValue | undefined,
  expected: number | string | ExpectedRefusal,
  tolerance: Check["tolerance"],
): void {
  if (typeof expected === "object") {
    // With its whole sentence, in a table as well: none is expected only of an error that is not ours.
    const { code, message } = actual instanceof CellError ? actual : { code: `no refusal, but ${actual}`, message: "" };
    expect({ error: code, message }).toEqual({ message: "", ...expected });
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
  // A refusal of the whole answer stands in each of its cells.
  const isRefused = typeof expected === "object" && "error" in expected;
  const rows = isRefused ? actual.map((row) => row.map(() => expected)) : cellsOf(expected);
  expect(rows.length).toBeGreaterThan(0);
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

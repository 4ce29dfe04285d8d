import { expect } from "vitest";
import type { CellValue, Grid } from "../../src/cells/values";
import { bareAnswer, type Call, lastDigits } from "./calls";

/** Holds what a host gave against the bare binding: every error, text and number the same, to the last digit. */
export function expectSameAnswer(call: Call, answer: Grid | undefined): void {
  const expected = bareAnswer(call);
  if (lastDigits[call.spec.id] === undefined || answer === undefined) {
    // Compares numbers with Object.is.
    expect(answer, call.name).toStrictEqual(expected);
    return;
  }
  const settled = answer.map((row, down) => row.map((value, right) => settledBy(expected[down]?.[right], value)));
  expect(settled, call.name).toStrictEqual(expected);
}

/** A number within the freedom that the language leaves counts as the one expected. */
function settledBy(expected: CellValue | undefined, value: CellValue): CellValue {
  if (typeof expected !== "number" || typeof value !== "number") return value;
  return Math.abs(value - expected) <= 1e-12 * Math.max(1, Math.abs(expected)) ? expected : value;
}

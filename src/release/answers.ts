import type { Check, Expected } from "../core/define";
import { rowsOf } from "../core/describe";

/** An error as it comes out of the functions script: its code, and the message that it carries. */
export interface AnsweredError {
  readonly code: string;
  readonly message?: string;
}

/** What a function of the functions script gave: rows of values, or the error that it threw. */
export type Answered = readonly (readonly unknown[])[] | AnsweredError;

/** Excel takes a message with these two alone. */
const carriesMessage = ["#VALUE!", "#N/A"];

const isError = (value: unknown): value is AnsweredError =>
  typeof value === "object" && value !== null && typeof (value as AnsweredError).code === "string";

/** Whether an answer is the one that a page promises: numbers within the tolerance, all else to the letter. */
export function isAsExpected(answered: Answered, expected: Expected, tolerance: Check["tolerance"]): boolean {
  const answer = isError(answered) ? [[answered]] : answered;
  if (typeof expected === "object" && "error" in expected) {
    const error = answer[0]?.[0];
    if (!isError(error) || error.code !== expected.error) return false;
    return expected.message === undefined || !carriesMessage.includes(error.code) || error.message === expected.message;
  }
  const rows = rowsOf(expected);
  return (
    answer.length === rows.length &&
    rows.every((row, down) => {
      const given = answer[down] ?? [];
      return given.length === row.length && row.every((value, right) => isSame(given[right], value, tolerance));
    })
  );
}

function isSame(given: unknown, expected: number | string, tolerance: Check["tolerance"]): boolean {
  if (isError(given)) return given.code === expected;
  if (typeof expected !== "number") return given === expected;
  const allowed =
    "absolute" in tolerance ? tolerance.absolute : tolerance.relative * Math.max(Math.abs(expected), 1e-300);
  return typeof given === "number" && Math.abs(given - expected) <= allowed;
}

import type { Check, Expected, ExpectedRefusal } from "../core/define";
import { cellsOf } from "../core/describe";

/** An error as it comes out of the functions script: its code, and the message that it carries. */
interface AnsweredError {
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
  if (typeof expected === "object" && "error" in expected) return isSame(answer[0]?.[0], expected, tolerance);
  const rows = cellsOf(expected);
  return (
    answer.length === rows.length &&
    rows.every((row, down) => {
      const given = answer[down] ?? [];
      return given.length === row.length && row.every((value, right) => isSame(given[right], value, tolerance));
    })
  );
}

function isSame(given: unknown, expected: number | string | ExpectedRefusal, tolerance: Check["tolerance"]): boolean {
  if (typeof expected === "object") return isError(given) && isRefusedAs(given, expected);
  if (typeof expected !== "number") return given === expected;
  const allowed =
    "absolute" in tolerance ? tolerance.absolute : tolerance.relative * Math.max(Math.abs(expected), 1e-300);
  return typeof given === "number" && Math.abs(given - expected) <= allowed;
}

const isRefusedAs = ({ code, message }: AnsweredError, expected: ExpectedRefusal): boolean =>
  code === expected.error &&
  (expected.message === undefined || !carriesMessage.includes(code) || message === expected.message);

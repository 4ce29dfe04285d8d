import { readFileSync } from "node:fs";
import { createContext, runInContext } from "node:vm";
import type { Check, Expected, Given } from "../core/define";
import { cellsOf, plainName } from "../core/describe";
import { type Answered, isAsExpected } from "./answers";
import { trials } from "./trials";

/** Google hands a cell alone over as its value; what is left out, and a blank cell, as an empty text. */
function asPassed(given: Given): unknown {
  if (given === null) return "";
  if (typeof given !== "object") return given;
  return given.map((row) => row.map((cell) => cell ?? ""));
}

/** What the script for Google Sheets does otherwise than the pages of the functions say. */
export function faultsInGoogleSheets(script: string): string[] {
  const context = createContext({}) as Record<string, (...given: readonly unknown[]) => unknown>;
  try {
    runInContext(readFileSync(script, "utf8"), context);
  } catch (problem) {
    return [`the script for Google Sheets does not run: ${String(problem)}`];
  }
  return trials.flatMap(({ id, says, given, expected, tolerance }) => {
    const answer = answerOf(context[plainName(id)], given.map(asPassed));
    return isAsPromised(answer, expected, tolerance)
      ? []
      : [`${says} gives ${JSON.stringify(answer)} in Google Sheets`];
  });
}

type InGoogleSheets = Answered | { readonly thrown: string };

function answerOf(
  call: ((...given: readonly unknown[]) => unknown) | undefined,
  given: readonly unknown[],
): InGoogleSheets {
  if (call === undefined) return { thrown: "there is no such function" };
  try {
    const answer = call(...given);
    return Array.isArray(answer) ? answer : [[answer]];
  } catch (problem) {
    return { thrown: (problem as Error).message };
  }
}

/** A refusal alone has lost its code and kept its words; in rows it is the other way round. */
function isAsPromised(answer: InGoogleSheets, expected: Expected, tolerance: Check["tolerance"]): boolean {
  const rows = cellsOf(expected);
  if ("thrown" in answer) {
    const refusal = rows[0]?.[0];
    if (typeof refusal !== "object") return false;
    return refusal.message === undefined || answer.thrown === (refusal.message || refusal.error);
  }
  const asTexts = rows.map((row) => row.map((value) => (typeof value === "object" ? value.error : value)));
  // What a page says of a whole answer stands for each of its cells.
  const isOneForAll = typeof expected === "object" && "error" in expected;
  return isOneForAll ? answerIsAll(answer, expected.error) : isAsExpected(answer, asTexts, tolerance);
}

const answerIsAll = (answer: Answered, text: string): boolean =>
  Array.isArray(answer) &&
  answer.length > 0 &&
  answer.every((row: readonly unknown[]) => row.length > 0 && row.every((value) => value === text));

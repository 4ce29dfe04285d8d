import { expect, test } from "vitest";
import type { Check, Expected } from "../../src/core/define";
import { type Answered, isAsExpected } from "../../src/release/answers";

type Line = [name: string, answered: Answered, expected: Expected, tolerance?: Check["tolerance"]];

const exact = { relative: 0 };
const refused = { code: "#VALUE!", message: "moisture must be below 1" };

test.each<Line>([
  ["a number", [[200]], 200],
  ["a number within its tolerance", [[200.5]], 200, { absolute: 0.5 }],
  ["a number within its share", [[202]], 200, { relative: 0.01 }],
  ["a text", [["enough"]], "enough"],
  ["a cell that waits", [[""]], ""],
  ["a table with a text and an error", [["z"], [{ code: "#N/A" }]], [["z"], [{ error: "#N/A" }]]],
  [
    "a table with a refusal in its words",
    [["z"], [refused]],
    [["z"], [{ error: "#VALUE!", message: refused.message }]],
  ],
  ["a refusal", refused, { error: "#VALUE!" }],
  ["a refusal in its words", refused, { error: "#VALUE!", message: refused.message }],
  ["a refusal inside a grid", [[refused]], { error: "#VALUE!", message: refused.message }],
  // Excel takes no message with it.
  ["an error that carries no message", { code: "#NUM!" }, { error: "#NUM!", message: "no such number" }],
])("%s is as expected", (_, answered, expected, tolerance = exact) => {
  expect(isAsExpected(answered, expected, tolerance)).toBe(true);
});

test.each<Line>([
  ["another number", [[199]], 200],
  ["a number beyond its tolerance", [[200.6]], 200, { absolute: 0.5 }],
  ["a number beyond its share", [[203]], 200, { relative: 0.01 }],
  ["no number", [[Number.NaN]], 200],
  ["a text that reads like the number", [["200"]], 200],
  ["nothing", [], 200],
  ["a number more", [[200, 1]], 200],
  ["a row more", [[200], [1]], [[200]]],
  ["an error instead of a number", refused, 200],
  ["another error", { code: "#N/A" }, { error: "#VALUE!" }],
  ["a refusal in other words", refused, { error: "#VALUE!", message: "weight must be above 0" }],
  ["a refusal in a table in other words", [["z"], [refused]], [["z"], [{ error: "#VALUE!", message: "x" }]]],
  ["a text instead of an error", [["#VALUE!"]], { error: "#VALUE!" }],
])("%s is not", (_, answered, expected, tolerance = exact) => {
  expect(isAsExpected(answered, expected, tolerance)).toBe(false);
});

import type { Check, Citation, Exercise, ExpectedRefusal, FunctionSpec } from "../core/define";
import { cellsOf, formula, shownNumber } from "../core/describe";
import type { Block } from "./blocks";

const statusInWords = {
  read: "read in the work",
  restated: "as restated by another work",
  "from memory": "from memory",
} as const;

export const cited = ({ work, place }: Citation): string =>
  `${work.authors}: ${work.title}. ${work.published}; ${place} (${statusInWords[work.status]}).`;

export const cellText = (cell: number | string): string => (typeof cell === "number" ? shownNumber(cell) : cell);

/** Facts of the trade without a source stay with the tests: a page names what a reader can look up or redo. */
export const isTold = ({ status }: Check): boolean => status !== "common practice";

/** The checks of a function that a page tells of. */
export const checksTable = (spec: FunctionSpec, checks: readonly Check[]): Block => ({
  table: ["Formula", "Expected", "Exercises", "Status", "From", "Tolerance"],
  rows: checks
    .filter(isTold)
    .map((check) => [
      formula(spec, check.given),
      expectedText(check),
      exercisesText(check),
      check.status,
      origin(check),
      tolerance(check),
    ]),
});

/** What a check puts to work; that it is refused or waits follows from what is expected. */
export function exerciseOf({ exercises, expected }: Check): Exercise | "refusal" | "waiting" | undefined {
  const cells = cellsOf(expected).flat();
  if (typeof expected === "object" && "error" in expected) return "refusal";
  return cells.every((cell) => cell === "") ? "waiting" : exercises;
}

const exercisesText = (check: Check): string => {
  const { degenerate, idle } = check;
  const [apart, beside] = [degenerate && `degenerate: ${degenerate}`, idle && `idle: ${idle.join(", ")}`];
  return [exerciseOf(check), apart, beside].filter((part) => part !== undefined).join("; ");
};

/** A value that a work states, and that puts the function to work: what counts as published. */
export const isPublished = ({ status, degenerate }: Check): boolean =>
  (status === "published" || status === "certified") && degenerate === undefined;

/** Where the expected value of a check comes from. */
function origin(check: Check): string {
  switch (check.status) {
    case "published":
    case "certified":
      return cited(check.source);
    case "exact":
      return check.working;
    case "memory":
      return check.recalls;
    case "common practice":
      return check.fact;
  }
}

/** Refusals with their messages, in rows as well: that is what a check of them holds the function to. */
function expectedText({ expected }: Check): string {
  const rows = cellsOf(expected).map((row) =>
    row.map((cell) => (typeof cell === "object" ? refusalText(cell) : cellText(cell))).join(", "),
  );
  return rows.join("; ") || "a blank";
}

const refusalText = ({ error, message }: ExpectedRefusal): string =>
  message === undefined ? error : `${error} ${message}`;

const holdsNumber = ({ expected }: Check): boolean =>
  cellsOf(expected).some((row) => row.some((cell) => typeof cell === "number"));

/** Texts and refusals compare letter by letter: a tolerance is for numbers. */
function tolerance(check: Check): string {
  if (!holdsNumber(check)) return "none: the same to the letter";
  const { tolerance, because } = check;
  const allowed = "absolute" in tolerance ? `${tolerance.absolute}` : `${tolerance.relative} of the value`;
  return `${allowed}: ${because}`;
}

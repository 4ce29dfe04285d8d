import { addressOf } from "../../workbook/addresses";
import type { Finding } from "../finding";
import type { At } from "../headed-cells";
import type { TeaFormula } from "../known-cell";
import type { KnownSheet } from "../known-sheet";
import { isReading } from "../roles";

/**
 * Rows in which something was begun and a weight is still to come: a fresh weight without a finished one, and a formula
 * that waits for one of its cells while others are filled. Formulas filled down ahead of the season are no findings.
 */
export function waitsForWeight({ lots, formulas, valueAt, formulaAt, isSpilled }: KnownSheet): Finding[] {
  const found = new Map<string, Finding>();
  const isOpen = (at: At) => valueAt(at) === "" && formulaAt(at) === "" && !isSpilled(at);
  for (const { fresh, finished } of lots) {
    if (typeof fresh.value !== "number" || !isOpen(finished)) continue;
    const { row, column } = finished;
    found.set(`${row} ${column}`, { rule: "waits for a weight", row, column, details: {} });
  }
  for (const formula of formulas) {
    const missing = missingIn(formula, isOpen, (at) => typeof valueAt(at) === "number" && formulaAt(at) === "");
    if (missing === undefined || found.has(`${missing.row} ${missing.column}`)) continue;
    const cell = addressOf(formula.row, formula.column);
    const { row, column } = missing;
    found.set(`${row} ${column}`, { rule: "waits for a weight", row, column, details: { cell } });
  }
  return [...found.values()];
}

/** The blank cell that a waiting formula reads, where it reads a number beside it in the same row as the blank one. */
function missingIn(
  { value, reads }: TeaFormula,
  isOpen: (at: At) => boolean,
  isTyped: (at: At) => boolean,
): At | undefined {
  if (value !== "" || reads.length > 50) return undefined;
  const blank = reads.find((read) => isReading(read.role) && isOpen(read));
  if (blank === undefined) return undefined;
  return reads.some((read) => isTyped(read) && isNear(read, blank)) ? blank : undefined;
}

/** In the row, or in the column of a form; a setting far away is filled all season. */
const isNear = (one: At, other: At): boolean => one.row === other.row || one.column === other.column;

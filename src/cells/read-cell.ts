import type { Parameter } from "../core/define";
import { DomainError, mustBe, shown } from "../core/errors";
import type { Bounds, Quantity } from "../core/quantities";
import { CellError, isBlank } from "./values";

/** A blank cell, as readers report it. */
export const blank: unique symbol = Symbol("blank");

export type Read = number | string | boolean | typeof blank | CellError;

/**
 * Reads one cell for a parameter. An error in the cell comes back as it is; what breaks the bounds of the
 * quantity is thrown as a DomainError that names the parameter. Compiled once for each parameter, since this
 * stands in the path of every cell.
 */
export type CellReader = (value: unknown) => Read;

export function cellReader({ name, quantity }: Parameter): CellReader {
  switch (quantity.holds) {
    case "number":
      return numberReader(name, quantity);
    case "yesNo":
      return yesNoReader(name, quantity);
    case "choice":
      return choiceReader(name, quantity);
    case "text":
      return textReader;
  }
}

function numberReader(name: string, quantity: Quantity): CellReader {
  const keepsTo = boundsCheck(quantity.bounds);
  // Older hosts send 0 for a blank cell. Where 0 can be no reading, it is one.
  const zeroIsBlank = !keepsTo(0);
  return (value) => {
    if (typeof value === "number") {
      if (keepsTo(value)) return value;
      if (value === 0 && zeroIsBlank) return blank;
      throw mustBe(name, quantity.requirement, value);
    }
    if (isBlank(value)) return blank;
    if (value instanceof CellError) return value;
    if (typeof value === "string") throw mustBeNumber(name, quantity, value);
    throw mustBe(name, quantity.requirement, value);
  };
}

function boundsCheck({ above, atLeast, below, atMost, whole }: Bounds): (value: number) => boolean {
  const low = atLeast ?? above ?? -Number.MAX_VALUE;
  const high = atMost ?? below ?? Number.MAX_VALUE;
  return (value) =>
    value >= low && value <= high && value !== above && value !== below && (whole !== true || Number.isInteger(value));
}

/** Text is never guessed into a number: 1.234 is one thing in one country and another in the next. */
function mustBeNumber(name: string, quantity: Quantity, value: string): DomainError {
  const looksLikeNumber = /\d/.test(value) && /^[\d\s.,'%+\-:/]+$/.test(value);
  const hint = looksLikeNumber
    ? " (it looks like a number but is stored as text: type it again as a number)"
    : value.trim() === ""
      ? " (the cell looks empty but holds a space: clear it)"
      : "";
  return new DomainError(name, `${name} must be ${quantity.requirement}; got ${shown(value)}${hint}`);
}

function yesNoReader(name: string, quantity: Quantity): CellReader {
  return (value) => {
    if (typeof value === "boolean") return value;
    if (value === 1) return true;
    if (value === 0) return false;
    if (isBlank(value)) return blank;
    if (value instanceof CellError) return value;
    throw mustBe(name, quantity.requirement, value);
  };
}

function choiceReader(name: string, quantity: Quantity): CellReader {
  const canonical = new Map<string, string>();
  for (const [word, aliases] of Object.entries(quantity.choices ?? {})) {
    for (const spelling of [word, ...aliases]) canonical.set(spelling.toLowerCase(), word);
  }
  const refused = new Map(Object.entries(quantity.refusedChoices ?? {}));
  return (value) => {
    if (isBlank(value)) return blank;
    if (value instanceof CellError) return value;
    if (typeof value !== "string") throw mustBe(name, quantity.requirement, value);
    const spelling = value.trim().toLowerCase();
    const word = canonical.get(spelling);
    if (word !== undefined) return word;
    const reason = refused.get(spelling);
    throw new DomainError(
      name,
      `${name} must be ${quantity.requirement}; got ${shown(value)}${reason === undefined ? "" : ` (${reason})`}`,
    );
  };
}

/** A label may be any constant. */
const textReader: CellReader = (value) => {
  if (isBlank(value)) return blank;
  if (value instanceof CellError) return value;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return String(value);
};

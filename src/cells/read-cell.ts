import { limits } from "../core/bounds";
import type { Parameter } from "../core/define";
import { type DomainError, mustBe, mustBeNumber } from "../core/errors";
import type { Quantity } from "../core/quantities";
import { CellError, isBlank } from "./values";

/** A blank cell, as readers report it. */
export const blank: unique symbol = Symbol("blank");

/**
 * What a cell holds for a parameter: a value inside its bounds, a blank, the error that stood in the cell, or the
 * refusal that is due. Refusals are returned rather than thrown: a column may hold thousands.
 */
type Read = number | string | boolean | typeof blank | CellError | DomainError;

export interface CellReader {
  readonly read: (value: unknown) => Read;
  /**
   * A number from `low` to `high`, both included, needs no reading: the path of nearly every cell. Empty (low above
   * high) where only `read` can tell.
   */
  readonly low: number;
  readonly high: number;
}

/** Compiled once for each parameter, since it stands in the path of every cell. */
export function cellReader({ name, quantity }: Parameter): CellReader {
  switch (quantity.holds) {
    case "number":
      return numberReader(name, quantity);
    case "yesNo":
      return onlyReading(yesNoReader(name, quantity));
    case "choice":
      return onlyReading(choiceReader(name, quantity));
    case "text":
      return onlyReading(textReader(name, quantity));
  }
}

const onlyReading = (read: CellReader["read"]): CellReader => ({ read, low: 1, high: 0 });

function numberReader(name: string, quantity: Quantity): CellReader {
  const { low, high } = limits(quantity.bounds);
  const whole = quantity.bounds.whole === true;
  // Older hosts send 0 for a blank cell. Where 0 can be no reading, it is one.
  const zeroIsBlank = low > 0;
  const read = (value: unknown): Read => {
    if (typeof value === "number") {
      if (value >= low && value <= high && (!whole || Number.isInteger(value))) return value;
      if (value === 0 && zeroIsBlank) return blank;
      return mustBe(name, quantity.requirement, value);
    }
    if (isBlank(value)) return blank;
    if (value instanceof CellError) return value;
    if (typeof value === "string") return mustBeNumber(name, quantity.requirement, value);
    return mustBe(name, quantity.requirement, value);
  };
  return whole ? onlyReading(read) : { read, low, high };
}

function yesNoReader(name: string, quantity: Quantity): CellReader["read"] {
  return (value) => {
    if (typeof value === "boolean") return value;
    if (value === 1) return true;
    if (value === 0) return false;
    if (isBlank(value)) return blank;
    if (value instanceof CellError) return value;
    return mustBe(name, quantity.requirement, value);
  };
}

function choiceReader(name: string, quantity: Quantity): CellReader["read"] {
  const canonical = new Map<string, string>();
  for (const [word, aliases] of Object.entries(quantity.choices ?? {})) {
    for (const spelling of [word, ...aliases]) canonical.set(spelling.toLowerCase(), word);
  }
  const refused = new Map(Object.entries(quantity.refusedChoices ?? {}));
  return (value) => {
    // 0 is no word: from an older host it is a blank cell.
    if (isBlank(value) || value === 0) return blank;
    if (value instanceof CellError) return value;
    if (typeof value !== "string") return mustBe(name, quantity.requirement, value);
    const spelling = value.trim().toLowerCase();
    const word = canonical.get(spelling);
    if (word !== undefined) return word;
    return mustBe(name, quantity.requirement, value, { hint: refused.get(spelling) });
  };
}

/** A label may be any constant. */
function textReader(name: string, quantity: Quantity): CellReader["read"] {
  return (value) => {
    if (isBlank(value)) return blank;
    if (typeof value === "string" || value instanceof CellError) return value;
    if (typeof value === "number") return String(value);
    if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
    return mustBe(name, quantity.requirement, value);
  };
}

/** The order in which rows stand once they are sorted by what they hold in a column. */
import { type Cell, isErrorAnswer } from "../workbook/workbook";

/** `up`: the smallest first. */
export type Direction = "up" | "down";

/**
 * The places that the values come from, in their new order. Numbers come before text and blanks last whatever the
 * direction, so that a slip never stands above the largest weight; what is alike keeps its order.
 */
export function rowOrder(values: readonly Cell["value"][], direction: Direction, language: string): number[] {
  const { compare } = new Intl.Collator(language, { numeric: true, sensitivity: "base" });
  const sign = direction === "up" ? 1 : -1;
  const keys = values.map((value, place) => ({ value, kind: kindOf(value), place }));
  return keys
    .sort((one, other) => {
      if (one.kind !== other.kind) return kinds.indexOf(one.kind) - kinds.indexOf(other.kind);
      if (one.kind === "blank" || one.kind === "error") return 0;
      if (one.kind === "text") return sign * compare(String(one.value), String(other.value));
      return sign * (Number(one.value) - Number(other.value));
    })
    .map(({ place }) => place);
}

const kinds = ["number", "text", "boolean", "error", "blank"] as const;

function kindOf(value: Cell["value"]): (typeof kinds)[number] {
  if (typeof value === "number") return "number";
  if (typeof value === "boolean") return "boolean";
  if (value === undefined || value.trim() === "") return "blank";
  return isErrorAnswer(value) ? "error" : "text";
}

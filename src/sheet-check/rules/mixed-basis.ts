import type { Finding } from "../finding";
import type { KnownSheet } from "../known-sheet";
import { isMoisture } from "../roles";
import { percent } from "../shown";

/** Dry basis where wet basis is taken, and the reverse: by the heading, or by a percentage above 100. */
export const mixedBasis = ({ area, cells }: KnownSheet): Finding[] =>
  cells.flatMap((cell) => {
    const { role, fedAs, value, row, column, heading } = cell;
    if (typeof value !== "number") return [];
    const rule = "wet and dry basis mixed" as const;
    const format = area.formats[row - area.row]?.[column - area.column] ?? "";
    const saysDry = role === "dry-basis moisture";
    const takesDry = fedAs === "dry-basis moisture";
    if (
      heading !== undefined &&
      fedAs !== undefined &&
      saysDry !== takesDry &&
      (isMoisture(role) || isMoisture(fedAs))
    ) {
      return [{ rule, row, column, details: { value: percent(value), heading } }];
    }
    const isWet = isMoisture(role) && role !== "finished moisture" && !takesDry;
    if (isWet && format.includes("%") && value >= 1 && value < 10) {
      return [{ rule, row, column, details: { value: percent(value) } }];
    }
    return [];
  });

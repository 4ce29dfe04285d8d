import { looksLikeNumber } from "../../../core/errors";
import type { Finding } from "../finding";
import type { KnownSheet } from "../known-sheet";

/** Text made of digits, in a place that is known to hold numbers or between numbers. */
export function textNumber({ area, cells, valueAt, formulaAt }: KnownSheet): Finding[] {
  const numeric = new Set(
    cells.filter(({ role }) => role !== "stage" && role !== "lot").map(({ row, column }) => `${row} ${column}`),
  );
  const found: Finding[] = [];
  area.values.forEach((values, down) => {
    values.forEach((value, right) => {
      if (typeof value !== "string" || !meantAsNumber(value)) return;
      const [row, column] = [area.row + down, area.column + right];
      if (formulaAt({ row, column }) !== "") return;
      const isBetween = [row - 1, row + 1].some((near) => typeof valueAt({ row: near, column }) === "number");
      if (!numeric.has(`${row} ${column}`) && !isBetween) return;
      found.push({ rule: "text that looks like a number", row, column, details: { value: value.slice(0, 40) } });
    });
  });
  return found;
}

/** Digits, with or without a unit of weight behind them. */
const meantAsNumber = (value: string): boolean =>
  looksLikeNumber(value) || /^\s*\d[\d.,\s]*\s*(g|kg|克|公斤|斤|两)\s*$/i.test(value);

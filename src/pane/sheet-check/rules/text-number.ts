import { looksLikeNumber } from "../../../core/errors";
import type { Finding } from "../finding";
import type { KnownSheet } from "../known-sheet";
import { isOfNames } from "../roles";
import { isWords } from "../row-kinds";

/** Text made of digits, in a place that is known to hold numbers or between numbers that are no names. */
export function textNumber({ area, cells, valueAt, formulaAt, isSpilled }: KnownSheet): Finding[] {
  const numeric = new Set(
    cells.filter(({ role }) => role !== "stage" && role !== "lot").map(({ row, column }) => `${row} ${column}`),
  );
  const isName = (row: number, column: number): boolean => {
    for (let above = row - 1; above >= area.row; above -= 1) {
      const value = valueAt({ row: above, column });
      if (value === "#" || isWords(value)) return isOfNames(value);
    }
    return false;
  };
  const found: Finding[] = [];
  area.values.forEach((values, down) => {
    values.forEach((value, right) => {
      if (typeof value !== "string" || !meantAsNumber(value)) return;
      const [row, column] = [area.row + down, area.column + right];
      if (formulaAt({ row, column }) !== "" || isSpilled({ row, column })) return;
      const isBetween = [row - 1, row + 1].some((near) => typeof valueAt({ row: near, column }) === "number");
      if (!numeric.has(`${row} ${column}`) && (!isBetween || isName(row, column))) return;
      found.push({ rule: "text that looks like a number", row, column, details: { value: value.slice(0, 40) } });
    });
  });
  return found;
}

/** Digits, with or without a unit of weight behind them. */
const meantAsNumber = (value: string): boolean =>
  looksLikeNumber(value) || /^\s*\d[\d.,\s]*\s*(g|kg|克|公斤|斤|两)\s*$/i.test(value);

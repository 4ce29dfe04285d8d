import type { Finding } from "../finding";
import type { KnownSheet } from "../known-sheet";
import { isWords, meantAsNumber } from "../meant-as-number";
import { isOfNames } from "../roles";

/** Text made of digits, in a place that is known to hold numbers or between numbers that are no names. */
export function textNumber({ area, cells, valueAt, formulaAt, isSpilled }: KnownSheet): Finding[] {
  const numeric = new Set(
    cells.filter(({ role }) => role !== "stage" && role !== "lot").map(({ row, column }) => `${row} ${column}`),
  );
  const isName = (row: number, column: number): boolean => {
    const label = valueAt({ row, column: column - 1 });
    if (isWords(label) && isOfNames(label)) return true;
    for (let above = row - 1; above >= area.row; above -= 1) {
      const value = valueAt({ row: above, column });
      if (value === "#" || isWords(value)) return isOfNames(value);
    }
    return false;
  };
  const found: Finding[] = [];
  area.values.forEach((values, down) => {
    values.forEach((value, right) => {
      if (!meantAsNumber(value)) return;
      const [row, column] = [area.row + down, area.column + right];
      if (formulaAt({ row, column }) !== "" || isSpilled({ row, column })) return;
      const isBetween = [row - 1, row + 1].some((near) => typeof valueAt({ row: near, column }) === "number");
      if (!numeric.has(`${row} ${column}`) && (!isBetween || isName(row, column))) return;
      found.push({ rule: "text that looks like a number", row, column, details: { value: value.slice(0, 40) } });
    });
  });
  return found;
}

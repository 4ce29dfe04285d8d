import { errorCauses, followersInDetails } from "../error-causes";
import type { Finding } from "../finding";
import type { At } from "../headed-cells";
import type { KnownSheet } from "../known-sheet";
import { isWords, meantAsNumber } from "../meant-as-number";
import { isOfNames } from "../roles";

/**
 * Text made of digits, in a place that is known to hold numbers or between numbers that are no names; and any text that
 * a function refused, with what follows from it.
 */
export function textNumber(sheet: KnownSheet): Finding[] {
  const { area, cells, valueAt, formulaAt, isSpilled } = sheet;
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
  const causes = errorCauses(sheet).filter(({ text }) => text !== undefined);
  for (const cause of causes) found.push(findingAt(cause, cause.text ?? "", followersInDetails(cause)));
  const isFound = (at: At) => causes.some(({ row, column }) => row === at.row && column === at.column);
  area.values.forEach((values, down) => {
    values.forEach((value, right) => {
      if (!meantAsNumber(value)) return;
      const [row, column] = [area.row + down, area.column + right];
      if (formulaAt({ row, column }) !== "" || isSpilled({ row, column }) || isFound({ row, column })) return;
      const isBetween = [row - 1, row + 1].some((near) => typeof valueAt({ row: near, column }) === "number");
      if (!numeric.has(`${row} ${column}`) && (!isBetween || isName(row, column))) return;
      found.push(findingAt({ row, column }, value));
    });
  });
  return found;
}

function findingAt({ row, column }: At, value: string, followers: Finding["details"] = {}): Finding {
  return {
    rule: "text that looks like a number",
    ...{ row, column },
    details: { value: value.slice(0, 40), ...followers },
  };
}

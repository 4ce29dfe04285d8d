/** Which of a workbook's names the embedded engine can work out. */
import { tokenize } from "./formula";
import type { DefinedName } from "./workbook";

/**
 * The engine puts the text of a name into the formula: what a name means by a cell without dollars, by being called, or
 * by standing for one thing here and another there, is lost on it.
 */
export function workableNames(names: readonly DefinedName[]): ReadonlySet<DefinedName> {
  const timesSaid = new Map<string, number>();
  for (const { name } of names) timesSaid.set(keyOf(name), (timesSaid.get(keyOf(name)) ?? 0) + 1);
  return new Set(
    names.filter(
      ({ name, formula }) =>
        timesSaid.get(keyOf(name)) === 1 && !/\bLAMBDA\s*\(/i.test(formula) && !hasRelative(formula),
    ),
  );
}

const keyOf = (name: string): string => name.toUpperCase();

/** Cells without dollars mean others in each place. */
function hasRelative(formula: string): boolean {
  return tokenize(formula, { mergeRefs: false, withLocation: false }).some(
    ({ type, value }) =>
      (type === "range" && !/^\$[A-Z]+\$\d+$/i.test(value)) ||
      (type === "range_beam" && !/^\$([A-Z]+):\$[A-Z]+$|^\$\d+:\$\d+$/i.test(value)),
  );
}

/** Which of a workbook's names the embedded engine can work out. */
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

function hasRelative(formula: string): boolean {
  const bare = formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'!?/g, " ").replace(/\[[^\]]*\]/g, " ");
  const cell = /(?<![\p{L}\p{N}_.$])(\$?)[A-Z]{1,3}(\$?)[1-9]\d{0,6}(?![\p{L}\p{N}_.(])/giu;
  const wholeColumns = /(?<![\p{L}\p{N}_.$])[A-Z]{1,3}:\$?[A-Z]{1,3}(?![\p{L}\p{N}_.(])/iu;
  const wholeRows = /(?<![\p{L}\p{N}_.$:])\d+:\$?\d+(?![\p{L}\p{N}_.])/u;
  return (
    [...bare.matchAll(cell)].some(([, one, other]) => !one || !other) || wholeColumns.test(bare) || wholeRows.test(bare)
  );
}

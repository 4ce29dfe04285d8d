/** Which names of an open workbook are our named formulas, and which only look like them. */
import type { BookName } from "../host/workbook-host";
import { asTyped, namedFormulas } from "../named-formulas/named-formulas";
import { formulaPieces } from "../workbook/formula";

export interface OwnNames {
  /** In capitals. */
  readonly ours: ReadonlySet<string>;
  /** Called like one of ours, but standing for something else: the maker's, or of another version. */
  readonly taken: ReadonlySet<string>;
}

export function ownNames(names: readonly BookName[]): OwnNames {
  const ours = new Set<string>();
  const taken = new Set<string>();
  for (const { name, formula, sheet } of names) {
    const key = name.toUpperCase();
    const own = namedFormulas.get(key);
    if (own === undefined) continue;
    if (sheet === undefined && plain(formula) === plain(own.formula)) ours.add(key);
    else taken.add(key);
  }
  return { ours: new Set([...ours].filter((name) => !taken.has(name))), taken };
}

/** A spreadsheet may give a formula back with other spaces and capitals, and its numbers written otherwise. */
const plain = (formula: string): string =>
  formulaPieces(asTyped(formula))
    .filter(({ kind }) => kind !== "gap")
    .map(({ text }) => (/^[.\d]/.test(text) ? String(Number(text)) : text.startsWith('"') ? text : text.toUpperCase()))
    .join("");

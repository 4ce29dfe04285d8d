/** Which names of a workbook are our named formulas, and which only look like them. */
import { plainName } from "../core/describe";
import { formulaPieces } from "../workbook/formula";
import type { DefinedName } from "../workbook/workbook";
import { asTyped, namedFormulas, namedIds, neededFor } from "./named-formulas";

interface OwnNames {
  /** In capitals. */
  readonly ours: ReadonlySet<string>;
  /** Called like one of ours, but standing for something else: the maker's, or of another version. */
  readonly taken: ReadonlySet<string>;
}

export function ownNames(names: readonly DefinedName[]): OwnNames {
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

/** The functions, by id, that a workbook can call by name: the name is there, and all that it calls, each with our text. */
export function idsByName(names: readonly DefinedName[] = []): ReadonlySet<string> {
  const { ours } = ownNames(names);
  if (ours.size === 0) return ours;
  return new Set([...namedIds].filter((id) => neededFor([plainName(id)]).every(({ name }) => ours.has(name))));
}

/** A spreadsheet may give a formula back with other spaces and capitals, and its numbers written otherwise. */
const plain = (formula: string): string =>
  formulaPieces(asTyped(formula))
    .filter(({ kind }) => kind !== "gap")
    .map(({ text }) => (/^[.\d]/.test(text) ? String(Number(text)) : text.startsWith('"') ? text : text.toUpperCase()))
    .join("");

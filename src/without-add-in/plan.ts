/** What is to become of an open workbook, so that it needs no add-in, or that the add-in works it out again. */
import { idInCell, idInPlainName, mayCallOurs, plainName } from "../core/describe";
import { namespace } from "../core/namespace";
import type { BookFormulas, BookName, CellFormula, FormulaChange } from "../host/workbook-host";
import { asTyped, callsOf, namedIds, neededFor } from "../named-formulas/named-formulas";
import { ownNames } from "../named-formulas/own-names";
import { withOtherCalls } from "../workbook/formula-names";

/** To the named formulas, or back to the functions of the add-in. */
export type Way = "to names" | "back";

/** A formula that is to change, with what its cell shows before. */
export type PlannedChange = FormulaChange & Pick<CellFormula, "value">;

export interface Plan {
  readonly way: Way;
  /** Only sheets with something to change. */
  readonly sheets: readonly { readonly sheet: string; readonly changes: readonly PlannedChange[] }[];
  /** Protected sheets with formulas that would change. */
  readonly locked: readonly { readonly sheet: string; readonly formulas: number }[];
  /** Names of the maker's whose formulas change. */
  readonly changed: readonly BookName[];
  /** Names of ours that have to come in. */
  readonly put: readonly BookName[];
  /** Names of ours that no cell and no other name calls any more. */
  readonly uncalled: readonly string[];
  /** What is called and has no named formula, by id, in the order of the alphabet. */
  readonly without: readonly string[];
  /** Names like ours that stand for something else, and what is called that would need them, by id. */
  readonly taken: readonly string[];
  readonly blocked: readonly string[];
}

export const formulasIn = ({ sheets }: Plan): number => sheets.reduce((sum, { changes }) => sum + changes.length, 0);

export function planOf({ sheets, names }: BookFormulas, way: Way): Plan {
  const { ours, taken } = ownNames(names);
  const needsTaken = (called: string): boolean =>
    taken.size > 0 && neededFor([called]).some(({ name }) => taken.has(name));
  const instead = (name: string): string | undefined => {
    const id = way === "to names" ? idInCell(name) : idInPlainName(name);
    if (id === undefined || !namedIds.has(id) || needsTaken(plainName(id))) return undefined;
    return way === "to names" ? plainName(id) : `${namespace}.${id}`;
  };
  const called = new Set<string>();
  const renamed = (formula: string, isChanged = true): string | undefined => {
    if (!mayCallOurs(formula)) return undefined;
    const after = withOtherCalls(formula, instead);
    for (const name of callsOf(isChanged ? after : formula)) called.add(name);
    return after === formula ? undefined : after;
  };

  const planned = sheets.map(({ sheet, isProtected, cells }) => ({
    sheet,
    isProtected,
    changes: cells.flatMap(({ row, column, formula: was, value }): PlannedChange[] => {
      const formula = renamed(was, !isProtected);
      return formula === undefined ? [] : [{ row, column, was, formula, value }];
    }),
  }));
  const changed = names.flatMap((each): BookName[] => {
    if (ours.has(each.name.toUpperCase()) && each.sheet === undefined) return [];
    const formula = renamed(each.formula);
    return formula === undefined ? [] : [{ ...each, formula }];
  });
  const needed = neededFor([...called].filter((name) => !needsTaken(name)));
  const ids = [...called].flatMap((name) => idInCell(name) ?? []).sort();
  return {
    way,
    sheets: planned.filter(({ isProtected, changes }) => !isProtected && changes.length > 0),
    locked: planned
      .filter(({ isProtected, changes }) => isProtected && changes.length > 0)
      .map(({ sheet, changes }) => ({ sheet, formulas: changes.length })),
    changed,
    put: needed
      .filter(({ name }) => !ours.has(name))
      .map(({ name, formula, comment }) => ({ name, comment, formula: asTyped(formula) })),
    uncalled: uncalled(ours, called),
    without: ids.filter((id) => !namedIds.has(id)),
    taken: [...taken].sort(),
    blocked: ids.filter((id) => namedIds.has(id) && needsTaken(plainName(id))),
  };
}

/** Names of ours that nothing calls in the workbook as it is. */
export function uncalledIn({ sheets, names }: BookFormulas): readonly string[] {
  const { ours } = ownNames(names);
  const others = names.filter(({ name, sheet }) => sheet !== undefined || !ours.has(name.toUpperCase()));
  const formulas = [...sheets.flatMap(({ cells }) => cells), ...others].map(({ formula }) => formula);
  return uncalled(ours, formulas.flatMap(callsOf));
}

function uncalled(ours: ReadonlySet<string>, called: Iterable<string>): readonly string[] {
  const needed = new Set(neededFor(called).map(({ name }) => name));
  return [...ours].filter((name) => !needed.has(name));
}

/** Where the errors of a sheet begin. One wrong text can make a sheet of them, and only the text is to be mended. */
import { addressOf, areaOf } from "../workbook/addresses";
import { isErrorAnswer } from "../workbook/workbook";
import { cellsIn, rangesIn } from "./formula-forms";
import { type At, keyOf } from "./headed-cells";
import type { TeaFormula } from "./known-cell";
import type { KnownSheet } from "./known-sheet";
import { meantAsNumber } from "./meant-as-number";
import { roleOfHeading } from "./roles";
import { isHeadings } from "./row-kinds";

interface ErrorCause extends At {
  /** The text that stands where a number belongs; undefined where a formula is the cause. */
  readonly text: string | undefined;
  /** The formula with functions of ours that is the cause, or the first that hands one on. */
  readonly formula: TeaFormula | undefined;
  /** The formulas that show an error because of it, without itself, one of ours among them. */
  readonly followers: readonly At[];
}

export function errorCauses(sheet: KnownSheet): ErrorCause[] {
  const search = new Search(sheet);
  const groups = new Map<number, { readonly cause: At; readonly shown: At[] }>();
  for (const at of search.errors) {
    const cause = search.causeOf(at);
    const group = groups.get(keyOf(cause)) ?? { cause, shown: [] };
    groups.set(keyOf(cause), group);
    group.shown.push(at);
  }
  return [...groups.values()].flatMap(({ cause, shown }): ErrorCause[] => {
    const firstOfOurs = shown.find((at) => search.ofOurs(at) !== undefined);
    if (firstOfOurs === undefined) return [];
    const value = sheet.valueAt(cause);
    const text = sheet.formulaAt(cause) === "" && typeof value === "string" ? value : undefined;
    // A formula without our functions is not ours to judge: the first of ours that it spoils stands for it.
    const head = text !== undefined || search.ofOurs(cause) ? cause : firstOfOurs;
    const followers = shown.filter((at) => keyOf(at) !== keyOf(head));
    return [{ row: head.row, column: head.column, text, formula: search.ofOurs(head), followers }];
  });
}

/** How many follow, and the first of them, for the words of a finding. */
export const followersInDetails = ({ followers }: ErrorCause): Readonly<Record<string, string>> => {
  const [first] = followers;
  return first === undefined ? {} : { first: addressOf(first.row, first.column), followers: String(followers.length) };
};

class Search {
  readonly errors: readonly At[];
  readonly #sheet: KnownSheet;
  readonly #isError: ReadonlySet<number>;
  readonly #ours: ReadonlyMap<number, TeaFormula>;
  readonly #known = new Map<number, At>();

  constructor(sheet: KnownSheet) {
    const { area, formulas } = sheet;
    this.#sheet = sheet;
    this.errors = area.values.flatMap((values, down) =>
      values.flatMap((value, right) => {
        const at = { row: area.row + down, column: area.column + right };
        return isErrorAnswer(value) && sheet.formulaAt(at) !== "" && !sheet.isSpilled(at) ? [at] : [];
      }),
    );
    this.#isError = new Set(this.errors.map(keyOf));
    this.#ours = new Map(formulas.map((formula) => [keyOf(formula), formula]));
  }

  ofOurs = (at: At): TeaFormula | undefined => this.#ours.get(keyOf(at));

  /** The cell at which the error begins, be it this one. */
  causeOf(at: At): At {
    const before = this.#known.get(keyOf(at));
    if (before) return before;
    // In a circle the first that is looked at counts.
    this.#known.set(keyOf(at), at);
    const text = this.#textIn(at);
    const error = text === undefined ? this.#errorsIn(at)[0] : undefined;
    const cause = text ?? (error === undefined ? at : this.causeOf(error));
    this.#known.set(keyOf(at), cause);
    return cause;
  }

  /** The text that the formula takes for a number. */
  #textIn(at: At): At | undefined {
    if (this.#sheet.valueAt(at) !== "#VALUE!") return undefined;
    const taken = this.#ours.get(keyOf(at))?.reads.filter(({ takesNumber }) => takesNumber);
    const read = taken ?? cellsIn(this.#sheet.formulaAt(at)).filter((cell) => meantAsNumber(this.#sheet.valueAt(cell)));
    for (const cell of read) {
      const typed = this.#typed(cell, new Set());
      if (typed !== undefined) return typed;
    }
    return undefined;
  }

  /** Where a text was typed, also when formulas pass it on as it is. */
  #typed(at: At, seen: Set<number>): At | undefined {
    const value = this.#sheet.valueAt(at);
    if (typeof value !== "string" || value === "" || isErrorAnswer(value) || seen.has(keyOf(at))) return undefined;
    if (this.#sheet.isSpilled(at)) return undefined;
    seen.add(keyOf(at));
    const formula = this.#sheet.formulaAt(at);
    // A formula that reads a heading reads the wrong row, and is itself to be mended.
    if (formula === "") return this.#isHeading(at) ? undefined : at;
    return cellsIn(formula)
      .filter((cell) => this.#sheet.valueAt(cell) === value)
      .map((cell) => this.#typed(cell, seen))
      .find((cell) => cell !== undefined);
  }

  /** Among words alone, and none of them at its left a label for a number. */
  #isHeading({ row, column }: At): boolean {
    const { area, valueAt } = this.#sheet;
    const label = valueAt({ row, column: column - 1 });
    const role = typeof label === "string" ? roleOfHeading(label) : undefined;
    const isLabelled = role !== undefined && role !== "stage" && role !== "lot";
    return !isLabelled && isHeadings(area.values[row - area.row] ?? []);
  }

  #errorsIn(at: At): At[] {
    const formula = this.#sheet.formulaAt(at);
    const isOther = (cell: At) => keyOf(cell) !== keyOf(at);
    const single = cellsIn(formula).filter((cell) => this.#isError.has(keyOf(cell)) && isOther(cell));
    if (single.length > 0) return single;
    const areas = rangesIn(formula).map((range) => areaOf(range.replaceAll("$", "")));
    return this.errors.filter(
      (cell) =>
        isOther(cell) &&
        areas.some(
          ({ row, rows, column, columns }) =>
            cell.row >= row && cell.row < row + rows && cell.column >= column && cell.column < column + columns,
        ),
    );
  }
}

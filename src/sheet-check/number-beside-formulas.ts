import { cellsIn, formByWords, relativeForm } from "./formula-forms";
import { type At, keyOf } from "./headed-cells";
import type { KnownSheet } from "./known-sheet";
import { rowKinds } from "./row-kinds";

/** A typed number, and a formula that stands where it may have stood. */
export interface Overwritten extends At {
  readonly formula: string;
}

const fewestAlike = 3;
const fewestInColumn = 5;
/** So many rows that agree outweigh one that does not. */
const outweigh = 4;

/** Numbers typed over formulas as the cells beside them show it, where no column of formulas does. */
export function numbersBesideFormulas(sheet: KnownSheet): Overwritten[] {
  if (sheet.area.formulas.every((row) => row.every((formula) => formula === ""))) return [];
  const view = new FormulaView(sheet);
  return [
    ...view.inRows(),
    ...view.atRowEnds(),
    ...view.betweenTwo(),
    ...view.besidePartners(),
    ...view.alone(),
    ...view.amongWords(),
  ];
}

class FormulaView {
  readonly #sheet: KnownSheet;
  readonly #kinds: ReturnType<typeof rowKinds>;
  /** The cells that a formula of the sheet names one by one. */
  readonly #read = new Set<number>();
  readonly #rows: readonly number[];
  readonly #columns: readonly number[];
  /** Of each cell the form of its formula, relative to its place, and "" where it has none: asked for again and again. */
  readonly #forms: readonly (readonly string[])[];
  /** Where somebody typed a number. */
  readonly #numbers: readonly At[];

  constructor(sheet: KnownSheet) {
    const { area } = sheet;
    this.#sheet = sheet;
    this.#kinds = rowKinds(area);
    this.#rows = Array.from({ length: area.rows }, (_, down) => area.row + down);
    this.#columns = Array.from({ length: area.columns }, (_, right) => area.column + right);
    this.#forms = this.#rows.map((row) => this.#columns.map((column) => formAt(sheet, { row, column })));
    this.#numbers = this.#rows.flatMap((row) =>
      this.#columns.map((column) => ({ row, column })).filter((at) => this.#isTyped(at)),
    );
    for (const formula of area.formulas.flat()) {
      if (formula !== "") for (const at of cellsIn(formula)) this.#read.add(keyOf(at));
    }
  }

  /** One number in a row of formulas that are alike. */
  inRows(): Overwritten[] {
    return this.#rows.flatMap((row) =>
      this.#runsOf(
        this.#columns.map((column) => ({ row, column })),
        this.#form,
      ),
    );
  }

  /** A number before the first or behind the last of a row of formulas that are alike and read their own columns. */
  atRowEnds(): Overwritten[] {
    return this.#numbers.flatMap((at) =>
      [1, -1].flatMap((step) => {
        const near = { row: at.row, column: at.column + step };
        const form = this.#form(near);
        if (form === "") return [];
        const beside = Array.from({ length: fewestAlike }, (_, index) => at.column + step * (index + 1));
        if (beside.some((column) => this.#form({ row: at.row, column }) !== form)) return [];
        const own = cellsIn(this.#sheet.formulaAt(near)).filter(({ isColumnFixed }) => !isColumnFixed);
        const readsOwn = own.length > 0 && own.every(({ column }) => column === near.column);
        return readsOwn && this.#wouldCalculate(at, near) ? this.#found(at, near) : [];
      }),
    );
  }

  /** One number in a column of long formulas that are alike in their words; nothing on the sheet calculates from it. */
  amongWords(): Overwritten[] {
    const forms = new Map<string, string>();
    const form = (at: At) => {
      const formula = this.#sheet.formulaAt(at);
      const known = forms.get(formula) ?? formByWords(formula) ?? "";
      forms.set(formula, known);
      return known;
    };
    return this.#columns.flatMap((column) =>
      this.#runsOf(
        this.#rows.map((row) => ({ row, column })),
        form,
      ).filter((at) => !this.#read.has(keyOf(at))),
    );
  }

  /** A number between, above or below two formulas that are alike, where there are no more. */
  betweenTwo(): Overwritten[] {
    return this.#numbers.flatMap((at) => {
      const { row, column } = at;
      const [above2, above, below, below2] = [row - 2, row - 1, row + 1, row + 2].map((near) => ({
        row: near,
        column,
      }));
      const isLike = (one?: At, other?: At) =>
        one !== undefined && other !== undefined && this.#form(one) !== "" && this.#form(one) === this.#form(other);
      const isNumber = [above2, below2].some((near) => near !== undefined && this.#isNumber(near));
      if (isLike(above, below) && !isNumber && this.#wouldCalculate(at, above as At)) return this.#found(at, above);
      const [near] = isLike(above, above2) ? [above] : isLike(below, below2) ? [below] : [];
      return near && this.#readsOwnRowOnly(near) && this.#wouldCalculate(at, near) ? this.#found(at, near) : [];
    });
  }

  /** A number beside a formula, in two columns whose formulas are alike row by row. */
  besidePartners(): Overwritten[] {
    return this.#columns.flatMap((column) =>
      [1, 2].flatMap((step) => {
        const rows = this.#rows.map(
          (row) =>
            [
              { row, column },
              { row, column: column + step },
            ] as const,
        );
        const alike = rows.filter(([one, other]) => this.#form(one) !== "" && this.#form(one) === this.#form(other));
        const odd = rows.flatMap(([one, other]) =>
          this.#isTyped(one) && this.#form(other) !== ""
            ? [[one, other] as const]
            : this.#isTyped(other) && this.#form(one) !== ""
              ? [[other, one] as const]
              : [],
        );
        if (alike.length < Math.max(fewestAlike, outweigh * odd.length)) return [];
        return odd.flatMap(([number, beside]) =>
          this.#wouldCalculate(number, beside) ? this.#found(number, beside) : [],
        );
      }),
    );
  }

  /** A number in a row of its own, in a column whose formulas are all alike and read their own rows. */
  alone(): Overwritten[] {
    return this.#columns.flatMap((column) => {
      const cells = this.#rows.map((row) => ({ row, column }));
      const byForm = new Map<string, At[]>();
      for (const at of cells) {
        const form = this.#form(at);
        if (form !== "") byForm.set(form, [...(byForm.get(form) ?? []), at]);
      }
      const usual = [...byForm.values()].sort((one, other) => other.length - one.length)[0] ?? [];
      const model = usual[0];
      if (model === undefined || usual.length < fewestInColumn || !this.#readsOwnRowOnly(model)) return [];
      const numbers = cells.filter((at) => this.#isNumber(at));
      if (outweigh * numbers.length > usual.length) return [];
      return numbers.flatMap((at) =>
        this.#isTyped(at) && this.#wouldCalculate(at, model) ? this.#found(at, model) : [],
      );
    });
  }

  /** Numbers one by one between formulas of one form, in a line of cells without a gap. */
  #runsOf(line: readonly At[], formOf: (at: At) => string): Overwritten[] {
    return line.flatMap((at, index) => {
      if (!this.#isTyped(at)) return [];
      const [before, after] = [line[index - 1], line[index + 1]];
      const form = before === undefined ? "" : formOf(before);
      if (before === undefined || after === undefined || form === "" || formOf(after) !== form) return [];
      let count = 0;
      for (let near = index - 1; near >= 0 && formOf(line[near] as At) === form; near -= 1) count += 1;
      for (let near = index + 1; near < line.length && formOf(line[near] as At) === form; near += 1) count += 1;
      const reads = [before, after].some((near) => this.#reads(near, at));
      return count >= fewestAlike && !reads ? this.#found(at, before) : [];
    });
  }

  #found = (at: At, like: At | undefined): Overwritten[] => [
    { ...at, formula: like ? this.#sheet.formulaAt(like) : "" },
  ];

  #form = ({ row, column }: At): string =>
    this.#forms[row - this.#sheet.area.row]?.[column - this.#sheet.area.column] ?? "";

  #isNumber = (at: At): boolean =>
    this.#sheet.formulaAt(at) === "" && typeof this.#sheet.valueAt(at) === "number" && !this.#sheet.isSpilled(at);

  /** A number that somebody typed into a row of a book, no total of it. */
  #isTyped = (at: At): boolean => this.#isNumber(at) && this.#kinds[at.row - this.#sheet.area.row] === undefined;

  #reads = (formula: At, at: At): boolean =>
    cellsIn(this.#sheet.formulaAt(formula)).some(({ row, column }) => row === at.row && column === at.column);

  /**
   * Whether a formula of another cell, filled to a number's, would have only numbers to calculate with: not the number
   * itself, and nothing that the formula holds fast in the number's row, which others are then a share of.
   */
  #wouldCalculate(number: At, like: At): boolean {
    const isBase = cellsIn(this.#sheet.formulaAt(like)).some(({ row, isFixed }) => isFixed && row === number.row);
    if (isBase || this.#reads(like, number)) return false;
    return movedCells(this.#sheet.formulaAt(like), like, number).every(
      (at) => typeof this.#sheet.valueAt(at) === "number" && !(at.row === number.row && at.column === number.column),
    );
  }

  #readsOwnRowOnly(at: At): boolean {
    const cells = cellsIn(this.#sheet.formulaAt(at)).filter(({ isFixed }) => !isFixed);
    return cells.length > 0 && cells.every(({ row }) => row === at.row);
  }
}

const formAt = (sheet: KnownSheet, at: At): string => {
  const formula = sheet.isSpilled(at) ? "" : sheet.formulaAt(at);
  return formula === "" ? "" : relativeForm(formula, at);
};

/** The cells that a formula would read from its new place; those with a fixed row are the same for both and left out. */
const movedCells = (formula: string, from: At, to: At): At[] =>
  cellsIn(formula)
    .filter(({ isFixed }) => !isFixed)
    .map(({ row, column, isColumnFixed }) => ({
      row: row + to.row - from.row,
      column: isColumnFixed ? column : column + to.column - from.column,
    }));

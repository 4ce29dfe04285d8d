/** The cells that formulas name, as areas: addresses, columns of tables, and what defined names stand for. */
import { parseA1Ref, type Token, tokenize } from "../workbook/formula";
import { type TableColumns, tablesIn, withAddresses } from "../workbook/table-references";
import type { Cell, Sheet, Workbook } from "../workbook/workbook";

/** Of a cell. Sheets by name, rows and columns from 0. */
export interface Spot {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** Up to and with `bottom` and `right`; whole columns and rows reach to infinity. */
export interface Read {
  readonly sheet: string;
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
  /** As the formula writes it; of a name, the name. */
  readonly text: string;
  readonly isNamed: boolean;
}

/** A workbook whose cells are found by their place. */
export class BookOfCells {
  readonly #workbook: Workbook;
  readonly #cells = new Map<string, ReadonlyMap<string, Cell>>();
  readonly #tables: readonly TableColumns[];

  constructor(workbook: Workbook) {
    this.#workbook = workbook;
    this.#tables = tablesIn(workbook.sheets);
    for (const { name, cells } of workbook.sheets) {
      this.#cells.set(keyOf(name), new Map(cells.map((cell) => [`${cell.row},${cell.column}`, cell])));
    }
  }

  cellAt({ sheet, row, column }: Spot): Cell | undefined {
    return this.#cells.get(keyOf(sheet))?.get(`${row},${column}`);
  }

  sheetNamed(name: string): Sheet | undefined {
    return this.#workbook.sheets.find((sheet) => keyOf(sheet.name) === keyOf(name));
  }

  /** Everything that a formula in this cell names. */
  readsOf(formula: string, home: Spot): Read[] {
    return this.#reads(formula, home, new Set());
  }

  /** What one token names; nothing where it is no reference, or names a sheet that is not there. */
  readsOfToken(token: Token, home: Spot): Read[] {
    return this.#readsOfToken(token, home, new Set());
  }

  #reads(formula: string, home: Spot, names: ReadonlySet<string>): Read[] {
    const addresses = withAddresses(formula, home, this.#tables) ?? formula;
    return tokensOf(addresses).flatMap((token) => this.#readsOfToken(token, home, names));
  }

  #readsOfToken({ type, value }: Token, home: Spot, names: ReadonlySet<string>): Read[] {
    if (type === "range_named") return this.#readsOfName(value, home, names);
    if (type !== "range" && type !== "range_beam") return [];
    const reference = parseA1Ref(value);
    if (!reference || !("range" in reference) || !reference.range) return [];
    const { context = [], range } = reference;
    const sheet = this.sheetNamed(context.length === 0 ? home.sheet : String(context.at(-1)));
    // Of two sheets or more the first and the last are named: no formula of the engine reads that.
    if (!sheet || context.length > 1) return [];
    const [top, bottom] = inOrder(range.top, range.bottom);
    const [left, right] = inOrder(range.left, range.right);
    return [{ sheet: sheet.name, top, bottom, left, right, text: value, isNamed: false }];
  }

  #readsOfName(text: string, home: Spot, names: ReadonlySet<string>): Read[] {
    const key = keyOf(text.slice(text.lastIndexOf("!") + 1));
    const all = (this.#workbook.names ?? []).filter(({ name }) => keyOf(name) === key);
    const name =
      all.find(({ sheet }) => sheet && keyOf(sheet) === keyOf(home.sheet)) ?? all.find(({ sheet }) => !sheet);
    if (!name || names.has(key)) return [];
    const reads = this.#reads(name.formula, home, new Set([...names, key]));
    return reads.map((read) => ({ ...read, text, isNamed: true }));
  }
}

const keyOf = (name: string): string => name.toUpperCase();

/** `F9:F2` is written as well; a whole column has neither first nor last row. */
function inOrder(one: number | null | undefined, other: number | null | undefined): [number, number] {
  const [first, last] = [one ?? 0, other ?? Number.POSITIVE_INFINITY];
  return first <= last ? [first, last] : [last, first];
}

export const tokensOf = (formula: string): readonly Token[] => tokenize(formula, { withLocation: false });

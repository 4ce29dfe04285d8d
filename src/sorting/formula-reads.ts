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

  /** Rows that a formula takes out of an area by their number, as `INDEX(B:B,3)` does, with what it writes. */
  rowsByNumber(formula: string, home: Spot): Read[] {
    if (!mayTakeRows.test(formula)) return [];
    const tokens = tokensOf(withAddresses(formula, home, this.#tables) ?? formula).filter(
      ({ type }) => !type.startsWith("whitespace"),
    );
    return tokens.flatMap((token, at) => {
      const name = token.type === "func" ? token.value.toUpperCase() : "";
      const [reference, comma, number] = [tokens[at + 2], tokens[at + 3], tokens[at + 4]];
      if (!rowTakers.has(name) || reference === undefined || comma?.value !== ",") return [];
      const row = number?.type === "number" ? Number(number.value) : undefined;
      // Row 0 of INDEX is all of them, and one that is looked for goes by what stands in it.
      if (name === "INDEX" && !row) return [];
      const text = `${name}(${reference.value},${number?.value ?? ""}…)`.replace(
        /…(?=\))/,
        tokens[at + 5]?.value === ")" ? "" : "…",
      );
      return this.readsOfToken(reference, home).map((read) => {
        const only = name === "INDEX" && row ? { top: read.top + row - 1, bottom: read.top + row - 1 } : {};
        return { ...read, ...only, text };
      });
    });
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

/** Taking formulas apart is slow, and few call one of these with a number. */
const mayTakeRows = /\bINDEX\s*\([^()]*,\s*\d|\b(?:TAKE|DROP|CHOOSEROWS)\s*\(/i;

/** Functions that take rows of an area by their number or their order. */
const rowTakers: ReadonlySet<string> = new Set(["INDEX", "TAKE", "DROP", "CHOOSEROWS"]);

const keyOf = (name: string): string => name.toUpperCase();

/** `F9:F2` is written as well; a whole column has neither first nor last row. */
function inOrder(one: number | null | undefined, other: number | null | undefined): [number, number] {
  const [first, last] = [one ?? 0, other ?? Number.POSITIVE_INFINITY];
  return first <= last ? [first, last] : [last, first];
}

export const tokensOf = (formula: string): readonly Token[] => tokenize(formula, { withLocation: false });

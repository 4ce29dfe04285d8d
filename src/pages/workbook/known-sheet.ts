import { placeNumber } from "../../workbook/sheet-size";
import { type Area, type Cell, isErrorAnswer, type Sheet } from "../../workbook/workbook";

/** Of a cell. Sheets by name, rows and columns from 0. */
export interface Spot {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** What somebody typed into a cell. */
export type Constant = Spot & { readonly value: Cell["value"] };

/** The cells of a sheet by their places. */
export class KnownSheet {
  readonly name: string;
  /** How far cells hold something. */
  readonly used: { readonly rows: number; readonly columns: number };
  readonly constants: readonly Constant[];
  readonly #cells = new Map<number, Cell>();
  readonly #spilled = new Set<number>();
  readonly #spilling: readonly Cell[];
  /** Rows that hold something written by hand, be it a label. In any other nothing is missing yet. */
  readonly #begun = new Set<number>();
  /** By row, the cells that hold something, from the left. */
  readonly #rows = new Map<number, Cell[]>();
  /** By row, the rows of headings in its block of rows without an empty one. */
  readonly #headings: readonly (readonly number[])[];

  constructor({ name, cells }: Sheet) {
    this.name = name;
    let [rows, columns] = [1, 1];
    for (const cell of cells) for (const place of placesOf(cell)) this.#spilled.add(place);
    for (const cell of cells) {
      rows = Math.max(rows, cell.row + 1);
      columns = Math.max(columns, cell.column + 1);
      this.#cells.set(placeNumber(cell.row, cell.column), cell);
      if (cell.value === undefined || cell.value === "") continue;
      if (cell.formula === undefined && !this.isSpilled(cell.row, cell.column)) this.#begun.add(cell.row);
      const row = this.#rows.get(cell.row);
      if (row) row.push(cell);
      else this.#rows.set(cell.row, [cell]);
    }
    this.used = { rows, columns };
    this.#spilling = cells.filter(({ spill }) => spill);
    for (const row of this.#rows.values()) row.sort((one, other) => one.column - other.column);
    this.constants = cells
      .filter(({ row, column, formula, value }) => {
        return formula === undefined && value !== undefined && !this.#spilled.has(placeNumber(row, column));
      })
      .map(({ row, column, value }) => ({ sheet: name, row, column, value }));
    this.#headings = this.#findHeadings();
  }

  cellAt = (row: number, column: number): Cell | undefined => this.#cells.get(placeNumber(row, column));

  /** Whether a formula fills the cell, its own or one beside it. */
  isSpilled = (row: number, column: number): boolean => this.#spilled.has(placeNumber(row, column));

  /** Whether the cell is blank in a row that somebody has begun. */
  isMissing(row: number, column: number): boolean {
    const cell = this.cellAt(row, column);
    const isBlank = cell?.formula === undefined && (cell?.value === undefined || cell.value === "");
    return isBlank && this.#begun.has(row) && !this.isSpilled(row, column);
  }

  /** The formulas that fill some of these cells beside their own. */
  spillingInto = ({ row, column, rows, columns }: Area): readonly string[] =>
    this.#spilling.flatMap(({ formula, spill, ...first }) => {
      const isBeside = first.row >= row + rows || first.column >= column + columns;
      const endsBefore = first.row + (spill?.rows ?? 1) <= row || first.column + (spill?.columns ?? 1) <= column;
      return formula === undefined || isBeside || endsBefore ? [] : [formula];
    });

  rowOf = (row: number): readonly Cell[] => this.#rows.get(row) ?? [];

  /** Rows above of two words or more and nothing else, with no empty row between, the nearest first. */
  headingsOver = (row: number): readonly number[] => (this.#headings[row] ?? []).filter((each) => each < row).reverse();

  #findHeadings(): number[][] {
    let block: number[] = [];
    return Array.from({ length: this.used.rows }, (_, row) => {
      const there = this.rowOf(row);
      if (there.length === 0) block = [];
      const here = block;
      const written = there.filter(({ formula }) => formula === undefined);
      if (written.length >= 2 && there.every(({ value }) => isWords(value))) block.push(row);
      return here;
    });
  }
}

/** The cells that a formula fills, if it fills more than its own or may. */
function* placesOf({ row, column, spill }: Cell): Generator<number> {
  if (spill) yield* placesIn({ row, column, ...spill });
}

export function* placesIn({ row, column, rows, columns }: Area): Generator<number> {
  for (let down = 0; down < rows; down += 1) {
    for (let right = 0; right < columns; right += 1) yield placeNumber(row + down, column + right);
  }
}

/** A text that is no number with a unit, as in `350 g`. */
const isWords = (value: Cell["value"]): boolean =>
  typeof value === "string" && !isErrorAnswer(value) && !/^[\s\d.,~≈<>+-]+\p{L}{0,3}\s*$/u.test(value);

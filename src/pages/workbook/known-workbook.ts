/** The cells of a workbook as far as they matter for what waits: who reads whom, what was typed, what is still blank. */
import { tokenize } from "@borgar/fx";
import { areaWithin, partsOf } from "../../workbook/references";
import { type Area, type Cell, isErrorCode, type Sheet, type Workbook } from "../../workbook/workbook";

/** Of a cell. Sheets by name, rows and columns from 0. */
export interface Spot {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

export type SheetArea = Area & { readonly sheet: string };

/** A formula that shows nothing or an error. */
export interface StuckCell extends Spot {
  readonly value: Cell["value"];
  readonly reads: readonly SheetArea[];
}

export class KnownWorkbook {
  readonly stuck: readonly StuckCell[];
  readonly #sheets: ReadonlyMap<string, { sheet: Sheet; cells: ReadonlyMap<string, Cell>; used: Used }>;
  readonly #constants: ReadonlyMap<string, readonly (Spot & { readonly value: Cell["value"] })[]>;
  /** Which stuck cells read a cell, or what spills from it. */
  readonly #readers = new Map<StuckCell, Set<StuckCell>>();
  /** Rows that hold something written by hand, be it a label. In any other nothing is missing yet. */
  readonly #begun = new Set<string>();
  /** By sheet and row, the cells that hold something, from the left. */
  readonly #rows = new Map<string, Cell[]>();
  /** By sheet and row, the rows of headings in its block of rows without an empty one. */
  readonly #headings = new Map<string, number[]>();
  readonly #spilled = new Set<string>();
  readonly #handedOn = new Set<StuckCell>();

  constructor({ sheets }: Workbook) {
    this.#sheets = new Map(
      sheets.map((sheet) => [
        sheet.name,
        { sheet, cells: new Map(sheet.cells.map((cell) => [`${cell.row},${cell.column}`, cell])), used: usedIn(sheet) },
      ]),
    );
    const areas = new Map<StuckCell, Area>();
    const stuck: StuckCell[] = [];
    for (const sheet of sheets) {
      for (const { row, column, value, formula, spill } of sheet.cells) {
        const area = { row, column, rows: spill?.rows ?? 1, columns: spill?.columns ?? 1 };
        if (spill) for (const spot of spotsIn(area, sheet.name)) this.#spilled.add(keyOf(spot));
        const isStuck = value === undefined || value === "" || isErrorCode(value);
        if (formula === undefined || !isStuck) continue;
        const cell = { sheet: sheet.name, row, column, value: value ?? "", reads: this.#areasIn(formula, sheet.name) };
        stuck.push(cell);
        areas.set(cell, area);
      }
    }
    this.stuck = stuck;
    this.#constants = new Map(
      sheets.map(({ name, cells }) => [
        name,
        cells
          .filter(({ formula, value }) => formula === undefined && value !== undefined)
          .map(({ row, column, value }) => ({ sheet: name, row, column, value }))
          .filter((spot) => !this.#spilled.has(keyOf(spot))),
      ]),
    );
    for (const sheet of sheets) {
      for (const cell of sheet.cells) {
        if (cell.value === undefined || cell.value === "") continue;
        const key = `${sheet.name}!${cell.row}`;
        if (cell.formula === undefined) this.#begun.add(key);
        const row = this.#rows.get(key);
        if (row) row.push(cell);
        else this.#rows.set(key, [cell]);
      }
    }
    for (const row of this.#rows.values()) row.sort((one, other) => one.column - other.column);
    for (const sheet of sheets) this.#findHeadings(sheet);
    this.#findReaders(areas);
  }

  /** Sees which stuck cells read which. Formulas share their areas, so each is looked at once. */
  #findReaders(areas: ReadonlyMap<StuckCell, Area>): void {
    const readersOf = new Map<string, { read: SheetArea; readers: StuckCell[] }>();
    for (const reader of this.stuck) {
      for (const read of reader.reads) {
        const key = `${keyOf(read)}:${read.rows},${read.columns}`;
        const known = readersOf.get(key) ?? { read, readers: [] };
        known.readers.push(reader);
        readersOf.set(key, known);
      }
    }
    const bySpot = new Map<string, StuckCell>();
    for (const [stuck, area] of areas) {
      for (const spot of spotsIn(area, stuck.sheet)) bySpot.set(keyOf(spot), stuck);
    }
    const perSheet = new Map<string, (readonly [StuckCell, Area])[]>();
    for (const pair of areas) {
      const there = perSheet.get(pair[0].sheet);
      if (there) there.push(pair);
      else perSheet.set(pair[0].sheet, [pair]);
    }
    for (const { read, readers } of readersOf.values()) {
      const one = isOneCell(read) ? bySpot.get(keyOf(read)) : undefined;
      const within = isOneCell(read)
        ? one
          ? [one]
          : []
        : (perSheet.get(read.sheet) ?? []).filter(([, area]) => overlap(read, area)).map(([stuck]) => stuck);
      for (const before of within) {
        const all = this.#readers.get(before) ?? new Set();
        this.#readers.set(before, all);
        for (const reader of readers) {
          all.add(reader);
          if (before.value !== "" && reader !== before) this.#handedOn.add(reader);
        }
      }
    }
  }

  #findHeadings({ name, cells }: Sheet): void {
    const rows = usedIn({ cells }).rows;
    let block: number[] = [];
    for (let row = 0; row < rows; row += 1) {
      const there = this.rowOf({ sheet: name, row });
      if (there.length === 0) block = [];
      this.#headings.set(`${name}!${row}`, block);
      const written = there.filter(({ formula }) => formula === undefined);
      if (written.length >= 2 && there.every(({ value }) => isWords(value))) block.push(row);
    }
  }

  /** The cells that stumble over a cause, and all that wait for these. */
  waitingFor(cause: Spot, stumbling: ReadonlySet<StuckCell>): Set<StuckCell> {
    const waiting = new Set(stumbling);
    for (const each of waiting) for (const reader of this.#readers.get(each) ?? []) waiting.add(reader);
    for (const each of waiting) if (keyOf(each) === keyOf(cause)) waiting.delete(each);
    return waiting;
  }

  /** Whether an error may have come from another cell. */
  isHandedOn = (stuck: StuckCell): boolean => this.#handedOn.has(stuck);

  constantsIn(area: SheetArea) {
    if (isOneCell(area)) {
      const cell = this.cellAt(area);
      const spot = { sheet: area.sheet, row: area.row, column: area.column, value: cell?.value };
      return cell && cell.formula === undefined && !this.#spilled.has(keyOf(spot)) ? [spot] : [];
    }
    return (this.#constants.get(area.sheet) ?? []).filter(({ row, column }) =>
      overlap(area, { row, column, rows: 1, columns: 1 }),
    );
  }

  /** The constants that a formula passes on as they are, such as one of two weights. */
  originsOf(area: SheetArea): (Spot & { readonly value: Cell["value"] })[] {
    const passed = isOneCell(area) ? this.cellAt(area)?.value : undefined;
    if (typeof passed !== "number") return [];
    const seen = new Map([[keyOf(area), area]]);
    for (const at of seen.values()) {
      const { formula, value } = this.cellAt(at) ?? {};
      if (formula === undefined || value !== passed) continue;
      for (const read of this.#areasIn(formula, at.sheet)) if (isOneCell(read)) seen.set(keyOf(read), read);
    }
    return [...seen.values()]
      .filter((at) => at !== area)
      .flatMap((at) => this.constantsIn(at))
      .filter(({ value }) => value === passed);
  }

  blankAt({ sheet, row, column }: SheetArea): Spot | undefined {
    const cell = this.cellAt({ sheet, row, column });
    const isBlank = cell?.formula === undefined && (cell?.value === undefined || cell.value === "");
    const spot = { sheet, row, column };
    return isBlank && this.#begun.has(`${sheet}!${row}`) && !this.#spilled.has(keyOf(spot)) ? spot : undefined;
  }

  /** What the cell holds, whoever put it there. */
  cellAt = ({ sheet, row, column }: Spot): Cell | undefined => this.#sheets.get(sheet)?.cells.get(`${row},${column}`);

  /** The cells of a row that hold something, from the left. */
  rowOf({ sheet, row }: Pick<Spot, "sheet" | "row">): readonly Cell[] {
    return this.#rows.get(`${sheet}!${row}`) ?? [];
  }

  /** Rows above of two words or more and nothing else, with no empty row between, the nearest first. */
  headingsOver = ({ sheet, row }: Spot): readonly number[] =>
    (this.#headings.get(`${sheet}!${row}`) ?? []).filter((each) => each < row).reverse();

  /** The area that a reference in a formula of that sheet covers; undefined for a name, and for a sheet that is not there. */
  areaOf(reference: string, home: string): SheetArea | undefined {
    const { sheet = home, cells } = partsOf(reference);
    const there = this.#sheets.get(sheet);
    const area = there && areaWithin(cells, there.used);
    return area && { ...area, sheet: there.sheet.name };
  }

  #areasIn(formula: string, home: string): SheetArea[] {
    return referencesIn(formula).flatMap((reference) => this.areaOf(reference, home) ?? []);
  }
}

interface Used {
  readonly rows: number;
  readonly columns: number;
}

const usedIn = ({ cells }: Pick<Sheet, "cells">): Used => ({
  rows: 1 + cells.reduce((last, { row }) => Math.max(last, row), 0),
  columns: 1 + cells.reduce((last, { column }) => Math.max(last, column), 0),
});

export const isOneCell = ({ rows, columns }: Area): boolean => rows === 1 && columns === 1;

const overlap = (one: Area, other: Area): boolean =>
  one.row < other.row + other.rows &&
  other.row < one.row + one.rows &&
  one.column < other.column + other.columns &&
  other.column < one.column + one.columns;

function* spotsIn({ row, column, rows, columns }: Area, sheet: string): Generator<Spot> {
  for (let down = 0; down < rows; down += 1) {
    for (let right = 0; right < columns; right += 1) yield { sheet, row: row + down, column: column + right };
  }
}

/** A text that is no number with a unit, as in `350 g`. */
const isWords = (value: Cell["value"]): boolean =>
  typeof value === "string" && !isErrorCode(value) && !/^[\s\d.,~≈<>+-]+\p{L}{0,3}\s*$/u.test(value);

export const keyOf = ({ sheet, row, column }: Spot): string => `${sheet}!${row},${column}`;

/** Taking formulas apart is slow, and they seldom change. */
const known = new Map<string, readonly string[]>();

function referencesIn(formula: string): readonly string[] {
  const before = known.get(formula);
  if (before) return before;
  const references = tokenize(formula)
    .filter(({ type }) => type.startsWith("range"))
    .map(({ value }) => value);
  if (known.size > 20_000) known.clear();
  known.set(formula, references);
  return references;
}

/** The cells of a workbook as far as they matter for what waits: who reads whom, what was typed, what is still blank. */
import { areaWithin, partsOf } from "../../workbook/references";
import { placeNumber } from "../../workbook/sheet-size";
import { type Area, type Cell, isErrorAnswer, type Sheet, type Workbook } from "../../workbook/workbook";
import { referencesOf, type SheetArea } from "./cell-references";
import { type Constant, KnownSheet, placesIn, type Spot } from "./known-sheet";

export type { SheetArea } from "./cell-references";
export type { Spot } from "./known-sheet";

/** A formula that shows nothing or an error. */
export interface StuckCell extends Spot {
  readonly value: Cell["value"];
  /** The cell and what spills from it. */
  readonly area: Area;
  readonly reads: readonly SheetArea[];
}

/** The stuck cells that read an area. */
type Readers = readonly StuckCell[];

export class KnownWorkbook {
  readonly stuck: readonly StuckCell[];
  readonly #sheets: ReadonlyMap<string, KnownSheet>;
  /** What reads a stuck cell, or what spills from it. */
  readonly #readers = new Map<StuckCell, Readers[]>();
  readonly #handedOn = new Set<StuckCell>();
  // Formulas share the areas that they read: each is looked at once.
  readonly #constants = new Map<SheetArea, readonly Constant[]>();
  readonly #halfNumbers = new Map<SheetArea, readonly Constant[]>();
  readonly #errors = new Map<SheetArea, readonly Constant[]>();
  readonly #blanks = new Map<SheetArea, Spot | undefined>();
  readonly #wholeLines = new Map<string, SheetArea | undefined>();

  constructor({ sheets }: Workbook) {
    this.#sheets = new Map(sheets.map((sheet) => [sheet.name, new KnownSheet(sheet)]));
    this.stuck = sheets.flatMap((sheet) => this.#stuckIn(sheet));
    this.#findReaders();
  }

  #stuckIn({ name, cells }: Sheet): StuckCell[] {
    return cells.flatMap(({ row, column, value = "", formula, spill }) => {
      if (formula === undefined || (value !== "" && !isErrorAnswer(value))) return [];
      const area = { row, column, rows: spill?.rows ?? 1, columns: spill?.columns ?? 1 };
      return [{ sheet: name, row, column, value, area, reads: this.#areasIn(formula, name) }];
    });
  }

  #findReaders(): void {
    const readersOf = new Map<SheetArea, StuckCell[]>();
    for (const reader of this.stuck) {
      for (const read of reader.reads) {
        const readers = readersOf.get(read);
        if (readers) readers.push(reader);
        else readersOf.set(read, [reader]);
      }
    }
    const stuckIn = new Map([...this.#sheets.keys()].map((name) => [name, new StuckCells()]));
    for (const each of this.stuck) stuckIn.get(each.sheet)?.add(each);
    for (const [read, readers] of readersOf) {
      const within = stuckIn.get(read.sheet)?.within(read) ?? [];
      for (const before of within) {
        const all = this.#readers.get(before);
        if (all) all.push(readers);
        else this.#readers.set(before, [readers]);
      }
      const errors = within.filter(({ value }) => value !== "");
      if (errors.length === 0) continue;
      for (const reader of readers) if (errors.length > 1 || errors[0] !== reader) this.#handedOn.add(reader);
    }
  }

  /** The cells that stumble over a cause, and all that wait for these. */
  waitingFor(cause: Spot, stumbling: ReadonlySet<StuckCell>): Set<StuckCell> {
    const waiting = new Set(stumbling);
    const heard = new Set<Readers>();
    for (const each of waiting) {
      for (const readers of this.#readers.get(each) ?? []) {
        if (heard.has(readers)) continue;
        heard.add(readers);
        for (const reader of readers) waiting.add(reader);
      }
    }
    for (const each of waiting) if (isSame(each, cause)) waiting.delete(each);
    return waiting;
  }

  /** Whether an error may have come from another cell. */
  isHandedOn = (stuck: StuckCell): boolean => this.#handedOn.has(stuck);

  constantsIn(area: SheetArea): readonly Constant[] {
    const before = this.#constants.get(area);
    if (before) return before;
    const sheet = this.#sheets.get(area.sheet);
    const constants = sheet ? constantsWithin(area, sheet) : [];
    this.#constants.set(area, constants);
    return constants;
  }

  /** Texts among them that begin as a number does, such as `350 g`. */
  halfNumbersIn = (area: SheetArea): readonly Constant[] => this.#someIn(area, isHalfNumber, this.#halfNumbers);

  /** Errors among them that somebody typed, or that a file holds without a formula. */
  errorsIn = (area: SheetArea): readonly Constant[] => this.#someIn(area, isErrorAnswer, this.#errors);

  #someIn(
    area: SheetArea,
    isMeant: (value: Cell["value"]) => boolean,
    known: Map<SheetArea, readonly Constant[]>,
  ): readonly Constant[] {
    const before = known.get(area);
    if (before) return before;
    const some = this.constantsIn(area).filter(({ value }) => isMeant(value));
    known.set(area, some);
    return some;
  }

  /** The constants that a formula passes on as they are, such as one of two weights, or a text in the place of one. */
  originsOf(area: SheetArea): readonly Constant[] {
    const passed = isOneCell(area) ? this.cellAt(area)?.value : undefined;
    const isPassable =
      typeof passed === "number" || (typeof passed === "string" && passed !== "" && !isErrorAnswer(passed));
    if (!isPassable) return [];
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

  /** The texts in a single cell, or passed on to it, that were typed. */
  textsBefore(area: SheetArea): readonly Constant[] {
    if (!isOneCell(area)) return [];
    return [...this.constantsIn(area), ...this.originsOf(area)].filter(({ value }) => typeof value === "string");
  }

  /**
   * The texts that a formula stumbles over though nobody says so: in a list of numbers, below one of them; and in the
   * lists that an answer was spilled from, for one such answer in its row. A text in a single cell may be meant.
   */
  misfitsOf({ reads }: StuckCell): readonly Constant[] {
    return reads.flatMap((area) => {
      const spilling = this.#sheets.get(area.sheet)?.spillingInto(area) ?? [];
      const lists = spilling.flatMap((formula) => this.#areasIn(formula, area.sheet));
      const listed = lists.flatMap((list) => this.constantsIn(list));
      if (isOneCell(area)) return listed.filter(({ row, value }) => row === area.row && typeof value === "string");
      return [this.constantsIn(area), listed].flatMap(textsBelowNumbers);
    });
  }

  /** Whether it reads a cell whose formula shows nothing. */
  readsEmptyAnswer = ({ reads }: StuckCell): boolean =>
    reads.some(
      (area) => isOneCell(area) && this.cellAt(area)?.formula !== undefined && this.cellAt(area)?.value === "",
    );

  /** The cell itself where it is blank and somebody has begun its row. */
  blankAt(area: SheetArea): Spot | undefined {
    if (this.#blanks.has(area)) return this.#blanks.get(area);
    const { sheet, row, column } = area;
    const blank = this.#sheets.get(sheet)?.isMissing(row, column) ? { sheet, row, column } : undefined;
    this.#blanks.set(area, blank);
    return blank;
  }

  /** What the cell holds, whoever put it there. */
  cellAt = ({ sheet, row, column }: Spot): Cell | undefined => this.#sheets.get(sheet)?.cellAt(row, column);

  /** The cells of a row that hold something, from the left. */
  rowOf({ sheet, row }: Pick<Spot, "sheet" | "row">): readonly Cell[] {
    return this.#sheets.get(sheet)?.rowOf(row) ?? [];
  }

  /** Rows above of two words or more and nothing else, with no empty row between, the nearest first. */
  headingsOver({ sheet, row }: Spot): readonly number[] {
    return this.#sheets.get(sheet)?.headingsOver(row) ?? [];
  }

  /** The area that a reference in a formula of that sheet covers; undefined for a name, and for a sheet that is not there. */
  areaOf(reference: string, home: string): SheetArea | undefined {
    const { sheet = home, cells } = partsOf(reference);
    const there = this.#sheets.get(sheet);
    const area = there && areaWithin(cells, there.used);
    return area && { ...area, sheet };
  }

  #areasIn(formula: string, home: string): SheetArea[] {
    return referencesOf(formula, home).flatMap((reference) => {
      if (!this.#sheets.has(reference.sheet)) return [];
      if (!("cells" in reference)) return [reference];
      const { sheet, cells } = reference;
      const key = `${sheet}!${cells}`;
      const lines = this.#wholeLines.get(key) ?? this.areaOf(cells, sheet);
      this.#wholeLines.set(key, lines);
      return lines ? [lines] : [];
    });
  }
}

/** The stuck cells of a sheet, to find those that an area covers. */
class StuckCells {
  readonly #all: StuckCell[] = [];
  readonly #byPlace = new Map<number, StuckCell>();

  add(stuck: StuckCell): void {
    this.#all.push(stuck);
    for (const place of placesIn(stuck.area)) this.#byPlace.set(place, stuck);
  }

  within(area: Area): readonly StuckCell[] {
    if (!isOneCell(area)) return this.#all.filter((each) => overlap(area, each.area));
    const one = this.#byPlace.get(placeNumber(area.row, area.column));
    return one ? [one] : [];
  }
}

function constantsWithin(area: SheetArea, sheet: KnownSheet): readonly Constant[] {
  const { row, column } = area;
  if (!isOneCell(area)) {
    return sheet.constants.filter(({ row, column }) => overlap(area, { row, column, rows: 1, columns: 1 }));
  }
  const cell = sheet.cellAt(row, column);
  if (cell === undefined || cell.formula !== undefined || sheet.isSpilled(row, column)) return [];
  return [{ sheet: sheet.name, row, column, value: cell.value }];
}

/** A text above them may be a heading. */
const textsBelowNumbers = (constants: readonly Constant[]): readonly Constant[] =>
  constants.filter(
    ({ row, column, value }) =>
      typeof value === "string" &&
      constants.some((other) => other.column === column && other.row < row && typeof other.value === "number"),
  );

export const isHalfNumber = (value: Cell["value"]): boolean =>
  typeof value === "string" && /^\s*[-+.,~≈<>]*\s*\d/.test(value);

const isSame = (one: Spot, other: Spot): boolean =>
  one.row === other.row && one.column === other.column && one.sheet === other.sheet;

export const isOneCell = ({ rows, columns }: Area): boolean => rows === 1 && columns === 1;

const overlap = (one: Area, other: Area): boolean =>
  one.row < other.row + other.rows &&
  other.row < one.row + one.rows &&
  one.column < other.column + other.columns &&
  other.column < one.column + one.columns;

export const keyOf = ({ sheet, row, column }: Spot): string => `${sheet}!${row},${column}`;

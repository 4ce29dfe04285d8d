/**
 * What holds answers up: a blank reading, a text where a number belongs, a value that a function refuses. Found by
 * following references back from cells that show nothing or an error; labels only give what was found a name.
 */
import { tokenize } from "@borgar/fx";
import type { Reason } from "../../core/refusals";
import type { ErrorMessage } from "../../engine/error-messages";
import { areaWithin, partsOf } from "../../workbook/references";
import { type Area, type Cell, isErrorCode, type Sheet, type Workbook } from "../../workbook/workbook";

/** Of a cell. Sheets by name, rows and columns from 0. */
export interface Spot {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

export interface Hindrance extends Spot {
  /** `formula`: the mistake is in the cell's own formula, not in what it refers to. */
  readonly is: "blank" | "text" | "value" | "formula";
  /** What the cell holds; undefined for a blank. */
  readonly value: Cell["value"];
  /** The text to the left of the cell. */
  readonly label: string | undefined;
  /** What the first function said that stumbled over it. */
  readonly reason: string | undefined;
  /** The formulas that show no answer because of it, those of its own sheet first. */
  readonly waiting: readonly Spot[];
}

/** What is known of the error that a cell shows: its words, and as data what a function of ours refused. */
export type ErrorAt = (spot: Spot) => Pick<ErrorMessage, "message" | "reason"> | undefined;

/** Mistakes come before blanks, and among them what most cells wait for. */
export function hindrances(workbook: Workbook, errorAt: ErrorAt): Hindrance[] {
  const book = new Book(workbook);
  const found = new Map<string, Cause & { readonly stumbling: Set<StuckCell> }>();
  for (const stuck of book.stuck) {
    for (const cause of causesOf(stuck, book, errorAt)) {
      const key = keyOf(cause);
      const before = found.get(key) ?? { ...cause, stumbling: new Set() };
      before.stumbling.add(stuck);
      found.set(key, before);
    }
  }
  const all = [...found.values()]
    .map(({ stumbling, ...cause }) => ({ cause, waiting: book.waitingFor(cause, stumbling) }))
    .sort(
      (one, other) =>
        Number(one.cause.is === "blank") - Number(other.cause.is === "blank") || other.waiting.size - one.waiting.size,
    );
  return all
    .filter(({ cause, waiting }, place) => cause.is !== "blank" || !isExplained(waiting, all.slice(0, place)))
    .map(({ cause, waiting }) => ({ ...cause, label: book.labelOf(cause), waiting: ownSheetFirst(cause, waiting) }));
}

/** A blank that may stay blank, or cannot be filled in yet: everything that waits for it waits for another as well. */
const isExplained = (waiting: ReadonlySet<Spot>, others: readonly { readonly waiting: ReadonlySet<Spot> }[]): boolean =>
  others.some((other) => other.waiting.size > waiting.size && [...waiting].every((spot) => other.waiting.has(spot)));

const ownSheetFirst = ({ sheet }: Spot, waiting: ReadonlySet<Spot>): Spot[] => [
  ...[...waiting].filter((spot) => spot.sheet === sheet),
  ...[...waiting].filter((spot) => spot.sheet !== sheet),
];

type Cause = Omit<Hindrance, "label" | "waiting">;

/** The cells right before a stuck one that explain it, with no other stuck one between. */
function causesOf(stuck: StuckCell, book: Book, errorAt: ErrorAt): Cause[] {
  const spot = { sheet: stuck.sheet, row: stuck.row, column: stuck.column };
  const error = stuck.value === "" ? undefined : errorAt(spot);
  const reason = error?.message;
  const causes: Cause[] = [];
  for (const area of stuck.reads) {
    const origins = reason === undefined ? [] : book.originsOf(area);
    for (const { value, ...place } of [...book.constantsIn(area), ...origins]) {
      const isRefused = value !== undefined && value !== "" && refuses(error?.reason, value);
      // Of texts that nobody complains of only those which begin as a number does; any other may be meant.
      if (typeof value === "string" && value !== "") {
        if (isRefused || isHalfNumber(value)) causes.push({ ...place, is: "text", value, reason });
      } else if (isRefused) causes.push({ ...place, is: "value", value, reason });
    }
    const blank = isOneCell(area) ? book.blankAt(area) : undefined;
    if (blank) causes.push({ ...blank, is: "blank", value: undefined, reason: undefined });
  }
  if (reason !== undefined && causes.every(({ is }) => is === "blank") && !book.isHandedOn(stuck)) {
    return [{ ...spot, is: "formula", value: stuck.value, reason }];
  }
  return causes;
}

const isHalfNumber = (text: string): boolean => /^\s*[-+.,~≈<>]*\s*\d/.test(text);

/** Whether it is this value that was refused, also as the first reason why a row of a book is left out. */
function refuses(reason: Reason | undefined, value: Cell["value"]): boolean {
  if (typeof reason !== "object" || !("found" in reason) || typeof reason.found === "string") return false;
  const { found } = reason;
  if (found.kind === "lots") return refuses(found.leftOut?.first, value);
  return (found.kind === "value" || found.kind === "value at") && found.value === value;
}

type SheetArea = Area & { readonly sheet: string };

interface StuckCell extends Spot {
  readonly value: Cell["value"];
  readonly reads: readonly SheetArea[];
}

/** The cells of a workbook, as far as they matter for what waits. */
class Book {
  readonly stuck: readonly StuckCell[];
  readonly #sheets: ReadonlyMap<string, { sheet: Sheet; cells: ReadonlyMap<string, Cell>; used: Used }>;
  readonly #constants: ReadonlyMap<string, readonly (Spot & { readonly value: Cell["value"] })[]>;
  /** Which stuck cells read a cell, or what spills from it. */
  readonly #readers = new Map<StuckCell, Set<StuckCell>>();
  /** Rows that hold something written by hand, be it a label. In any other nothing is missing yet. */
  readonly #begun = new Set<string>();
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
      for (const { row, formula, value } of sheet.cells) {
        if (formula === undefined && value !== undefined && value !== "") this.#begun.add(`${sheet.name}!${row}`);
      }
    }
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
      const cell = this.#sheets.get(area.sheet)?.cells.get(`${area.row},${area.column}`);
      const spot = { sheet: area.sheet, row: area.row, column: area.column, value: cell?.value };
      return cell && cell.formula === undefined && !this.#spilled.has(keyOf(spot)) ? [spot] : [];
    }
    return (this.#constants.get(area.sheet) ?? []).filter(({ row, column }) =>
      overlap(area, { row, column, rows: 1, columns: 1 }),
    );
  }

  /** The constants that a formula passes on as they are, such as one of two weights. */
  originsOf(area: SheetArea): (Spot & { readonly value: Cell["value"] })[] {
    const cellAt = (at: SheetArea) => this.#sheets.get(at.sheet)?.cells.get(`${at.row},${at.column}`);
    const passed = isOneCell(area) ? cellAt(area)?.value : undefined;
    if (typeof passed !== "number") return [];
    const seen = new Map([[keyOf(area), area]]);
    for (const at of seen.values()) {
      const { formula, value } = cellAt(at) ?? {};
      if (formula === undefined || value !== passed) continue;
      for (const read of this.#areasIn(formula, at.sheet)) if (isOneCell(read)) seen.set(keyOf(read), read);
    }
    return [...seen.values()]
      .filter((at) => at !== area)
      .flatMap((at) => this.constantsIn(at))
      .filter(({ value }) => value === passed);
  }

  blankAt({ sheet, row, column }: SheetArea): Spot | undefined {
    const cell = this.#sheets.get(sheet)?.cells.get(`${row},${column}`);
    const isBlank = cell?.formula === undefined && (cell?.value === undefined || cell.value === "");
    const spot = { sheet, row, column };
    return isBlank && this.#begun.has(`${sheet}!${row}`) && !this.#spilled.has(keyOf(spot)) ? spot : undefined;
  }

  /** The nearest text to the left that somebody wrote, at most three cells away. */
  labelOf({ sheet, row, column }: Spot): string | undefined {
    for (let left = column - 1; left >= Math.max(0, column - 3); left -= 1) {
      const cell = this.#sheets.get(sheet)?.cells.get(`${row},${left}`);
      if (cell?.value === undefined || cell.value === "") continue;
      return typeof cell.value === "string" && cell.formula === undefined ? cell.value.trim() : undefined;
    }
    return undefined;
  }

  #areasIn(formula: string, home: string): SheetArea[] {
    return referencesIn(formula).flatMap((reference) => {
      const { sheet = home, cells } = partsOf(reference);
      const there = this.#sheets.get(sheet);
      const area = there && areaWithin(cells, there.used);
      return area ? [{ ...area, sheet: there.sheet.name }] : [];
    });
  }
}

interface Used {
  readonly rows: number;
  readonly columns: number;
}

const usedIn = ({ cells }: Sheet): Used => ({
  rows: 1 + cells.reduce((last, { row }) => Math.max(last, row), 0),
  columns: 1 + cells.reduce((last, { column }) => Math.max(last, column), 0),
});

const isOneCell = ({ rows, columns }: Area): boolean => rows === 1 && columns === 1;

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

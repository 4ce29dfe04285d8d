/** What is wrong in the workbook at the moment, looked up by cell. */
import { IFunctionService } from "@univerjs/preset-sheets-core";
import { unknownFunction } from "../../cells/unknown-function";
import { addressOf } from "../../workbook/addresses";
import type { Workbook } from "../../workbook/workbook";
import { goToCell } from "./go-to-cell";
import type { Grid } from "./grid";
import { type ErrorAt, type Hindrance, hindrances, type MeaningOf } from "./hindrances";
import { KnownWorkbook, keyOf, type Spot } from "./known-workbook";
import { namedReason } from "./named-reason";
import { words } from "./words";

/** The engine lets 100 ms pass before it calculates, in case more is typed. */
const pauseOfEngine = 150;
/** What has not ended by then may never do so. */
const longestCalculation = 5000;

export class Problems {
  readonly #grid: Grid;
  readonly #listeners = new Set<(newest: Hindrance | undefined) => void>();
  /** What each formula last spilled: its cells are answers also while they are empty. */
  readonly #spills = new Map<string, { rows: number; columns: number }>();
  #all: readonly Hindrance[] = [];
  #workbook: KnownWorkbook | undefined;
  #byCell = new Map<string, Hindrance>();
  #waiting = new Map<string, Hindrance>();
  #isDue = false;

  constructor(grid: Grid) {
    this.#grid = grid;
    grid.errors.subscribe(() => this.#lookSoon());
    grid.onChange(() => this.#lookSoon());
    this.#lookSoon();
  }

  /** Mistakes come first, those of this sheet before others. */
  mistakes(sheet: string): readonly Hindrance[] {
    const mistakes = this.#all.filter((each) => each.is !== "blank");
    return [...mistakes.filter((each) => each.sheet === sheet), ...mistakes.filter((each) => each.sheet !== sheet)];
  }

  /** The blank that most answers wait for, of those that concern this sheet. */
  blank(sheet: string): Hindrance | undefined {
    return this.#all.find(
      (each) => each.is === "blank" && (each.sheet === sheet || each.waiting.some((spot) => spot.sheet === sheet)),
    );
  }

  /** What the cell itself does to others, or to itself. */
  at = (spot: Spot): Hindrance | undefined => this.#byCell.get(keyOf(spot));

  /** What the cell waits for. */
  before = (spot: Spot): Hindrance | undefined => this.#waiting.get(keyOf(spot));

  /** Why the cell shows an error of ours, by what the sheet calls the cells that its formula reads. */
  reasonAt(spot: Spot): string | undefined {
    const error = this.#errorAt(spot);
    if (error?.reason === undefined || this.#workbook === undefined) return error?.message;
    return namedReason(this.#workbook, spot, error.reason, this.before(spot));
  }

  /** What an error of the spreadsheet's own means in this cell; of a misspelt function, what may be meant. */
  meaningOf: MeaningOf = (error, spot) => {
    const formula = error === "#NAME?" ? this.#workbook?.cellAt(spot)?.formula : undefined;
    const unknown = formula === undefined ? undefined : unknownFunction(formula, this.#knownFunctions());
    return unknown ? words().unknownFunction(unknown.name, unknown.nearest) : words().meanings[error];
  };

  #knownFunctions(): ReadonlySet<string> {
    const functions = this.#grid.injector.get(IFunctionService).getExecutors();
    return new Set([...functions.keys()].map((name) => String(name).toUpperCase()));
  }

  /** Calls back when anything has changed, with the mistake that was not there before. */
  subscribe(listener: (newest: Hindrance | undefined) => void): void {
    this.#listeners.add(listener);
  }

  /** As it is now, at once. */
  look(): void {
    const before = this.#byCell;
    this.#workbook = new KnownWorkbook(this.#withSpills(this.#grid.workbook()));
    this.#all = hindrances(this.#workbook, this.#errorAt, this.meaningOf);
    this.#byCell = new Map(this.#all.map((each) => [keyOf(each), each]));
    this.#waiting = new Map();
    for (const each of this.#all) {
      for (const spot of each.waiting) if (!this.#waiting.has(keyOf(spot))) this.#waiting.set(keyOf(spot), each);
    }
    const newest = this.#all.find(
      (each) => each.is !== "blank" && (before.get(keyOf(each))?.is ?? "blank") === "blank",
    );
    for (const listener of this.#listeners) listener(newest);
  }

  #errorAt: ErrorAt = ({ sheet, row, column }) => {
    const id = this.#grid.api.getActiveWorkbook()?.getSheetByName(sheet)?.getSheetId();
    return id === undefined ? undefined : this.#grid.errors.at(id, row, column);
  };

  /**
   * Not between two keys: reading a large workbook takes longer than a key may wait. And not before what follows from a
   * change stands in the cells: what is mended by then would be blamed on cells that have nothing to do with it.
   */
  #lookSoon(): void {
    if (this.#isDue) return;
    this.#isDue = true;
    const latest = performance.now() + longestCalculation;
    const look = () => {
      this.#isDue = false;
      this.look();
    };
    const wait = () => {
      if (this.#grid.isCalculating() && performance.now() < latest) setTimeout(wait, 50);
      else if ("requestIdleCallback" in globalThis) requestIdleCallback(look, { timeout: 500 });
      else look();
    };
    setTimeout(wait, pauseOfEngine);
  }

  #withSpills(workbook: Workbook): Workbook {
    return {
      ...workbook,
      sheets: workbook.sheets.map((sheet) => ({
        ...sheet,
        cells: sheet.cells.map((cell) => {
          if (cell.formula === undefined) return cell;
          const key = `${sheet.name}!${cell.row},${cell.column} ${cell.formula}`;
          const spill = cell.spill ?? this.#spills.get(key);
          if (spill === undefined) return cell;
          this.#spills.set(key, spill);
          return { ...cell, spill };
        }),
      })),
    };
  }
}

/** A button that goes to the cell, which it names. */
export function linkTo(grid: Grid, { sheet, row, column }: Spot, fromSheet: string): HTMLElement {
  const go = document.createElement("button");
  go.type = "button";
  go.textContent = sheet === fromSheet ? addressOf(row, column) : `${sheet} ${addressOf(row, column)}`;
  go.title = words().goToCell;
  go.addEventListener("click", () => {
    const id = grid.api.getActiveWorkbook()?.getSheetByName(sheet)?.getSheetId();
    if (id !== undefined) goToCell(grid, id, row, column);
  });
  return go;
}

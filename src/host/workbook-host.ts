import type { Trouble } from "./host-problem";

/**
 * The only way in which the pane sees a workbook. Excel, the embedded grid and the tests each have one of their own.
 * Rows and columns count from 0.
 */
export type CellContent = number | string | boolean;

export interface CellPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

export interface CellArea extends CellPlace {
  readonly rows: number;
  readonly columns: number;
}

/** A range as it is now, row by row. A blank is "", an error its code, such as "#N/A". */
export interface ReadArea extends CellArea {
  readonly values: readonly (readonly CellContent[])[];
  /** The formula of a cell, `=…`, and "" where it holds a constant or nothing. */
  readonly formulas: readonly (readonly string[])[];
  readonly formats: readonly (readonly string[])[];
}

/** What is written into one cell; a cell that is left out of a block stays as it is. */
export interface WrittenCell {
  readonly row: number;
  readonly column: number;
  /** A constant, or a formula that begins with an equals sign; "" leaves the cell blank, with its format and look. */
  readonly content: CellContent;
  /** A constant whatever it begins with: someone may call a plot "=1". */
  readonly isConstant?: true;
  /** Format and look are also those of the cells that the answer spills into. */
  readonly format?: string;
  readonly look?: "heading" | "label" | "input" | "answer" | "caution";
  /** How far the answer of the formula spills, where it does. */
  readonly spill?: { readonly rows: number; readonly columns: number };
}

/** Cells to write, relative to the place where the block goes. */
export interface Block {
  readonly rows: number;
  readonly columns: number;
  /** From its first column on, how many characters a column has to show. Narrower ones are widened, none is narrowed. */
  readonly widths?: readonly number[];
  readonly cells: readonly WrittenCell[];
}

/** One column of numbers as upright bars, in a chart of the workbook's own that follows its cells. */
export interface Chart {
  readonly title: string;
  readonly names: CellArea;
  readonly values: CellArea;
  /** The cells that it stands at the right of. */
  readonly beside: CellArea;
}

export type WriteOutcome =
  | { readonly written: CellArea }
  /** Nothing was written: these cells are filled already. */
  | { readonly filled: readonly string[] };

/** A formula of a cell, `=…`, with what it shows. */
export interface CellFormula {
  readonly row: number;
  readonly column: number;
  readonly formula: string;
  readonly value: CellContent;
}

export interface SheetFormulas {
  readonly sheet: string;
  readonly isProtected: boolean;
  readonly cells: readonly CellFormula[];
}

/** A name and what it stands for, `=…`, as it is typed. One with a sheet belongs to that sheet alone. */
export interface BookName {
  readonly name: string;
  readonly formula: string;
  readonly sheet?: string;
  readonly comment?: string;
}

export interface BookFormulas {
  readonly sheets: readonly SheetFormulas[];
  readonly names: readonly BookName[];
}

/** Another formula for a cell that holds `was`. */
export interface FormulaChange {
  readonly row: number;
  readonly column: number;
  readonly was: string;
  readonly formula: string;
}

/** A cell that does not have its other formula, and why. */
export interface FormulaLeft {
  readonly row: number;
  readonly column: number;
  readonly trouble: Trouble;
}

export interface WorkbookHost {
  /** What is selected now. Reads only the used part of whole rows and columns. */
  selection(): Promise<ReadArea>;
  /** Calls back after the selection or what it holds has changed; gives the way to stop it. */
  onSelection(listener: () => void): () => void;
  /** `A1:C9`, `Lot!A1`, a defined name; throws HostProblem when there is none. Read from `beside`'s sheet. */
  read(address: string, beside: CellPlace): Promise<ReadArea>;
  /** The used cells of a sheet; of the sheet that is shown when none is named. */
  usedCells(sheet?: string): Promise<ReadArea>;
  /**
   * What an expression comes to as a part of the formula in `beside`, whose row and sheet count: rows of values, a blank
   * as "", an error as its code. Without an equals sign. Throws HostProblem where the host cannot say.
   */
  evaluate(expression: string, beside: CellPlace): Promise<readonly (readonly CellContent[])[]>;
  /**
   * Whether `evaluate` leaves the workbook untouched. Where it does not, only the maker's own click may lead to it.
   */
  readonly evaluatesUntouched: boolean;
  /** The message of the error that a cell shows, where the host knows it. */
  errorMessage(place: CellPlace): Promise<string | undefined>;
  /** Writes a block at a place, in one step that the host can undo where it can. Filled cells only with `over`. */
  write(block: Block, at: CellPlace, options?: { readonly over?: boolean }): Promise<WriteOutcome>;
  /** Adds an empty sheet behind the others, and gives its name: the one wished for, or the like where that is taken. */
  addSheet(wish: string): Promise<string>;
  /** The cells of an answer that spills over this cell, its formula first; undefined for any other cell. */
  spillAround(place: CellPlace): Promise<CellArea | undefined>;
  /** Shows a cell and selects it. */
  goTo(place: CellPlace): Promise<void>;
  /** Whether `addChart` draws here; where it does not, it throws HostProblem. */
  readonly drawsCharts: boolean;
  addChart(chart: Chart): Promise<void>;
  /** Whether the formulas of the whole workbook are changed here. Where not, all that follow here throw HostProblem. */
  readonly changesFormulas: boolean;
  /**
   * What holds this text, in capitals or not: every formula, on every sheet, row by row; of an answer that spills its
   * first cell alone; and every name, by its own text or its formula's.
   */
  formulasWith(text: string): Promise<BookFormulas>;
  /**
   * Puts other formulas into cells of a sheet, which keep their formats; a cell that holds another one than `was` by now
   * stays as it is. Gives the cells that could not be changed. Throws HostProblem where the sheet is protected or gone.
   */
  changeFormulas(sheet: string, changes: readonly FormulaChange[]): Promise<readonly FormulaLeft[]>;
  /** Puts names into the workbook, or other formulas into names that it has: all of them, or none and HostProblem. */
  putNames(names: readonly BookName[]): Promise<void>;
  /** Takes names of the whole workbook out of it; one that is not there is none to take. */
  takeNames(names: readonly string[]): Promise<void>;
  /** The language of the host, such as "zh-CN". */
  readonly language: string;
}

/** What it takes to look at a workbook, and no more: a file has it as well. */
export type WorkbookReader = Pick<WorkbookHost, "read" | "evaluate" | "evaluatesUntouched" | "errorMessage">;

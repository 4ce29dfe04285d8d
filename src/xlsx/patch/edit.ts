/** What is changed in a file, cell by cell. */
import type { Cell, Style } from "../../workbook/workbook";

export interface Edit {
  readonly sheet: string;
  /** Counted from 0. */
  readonly row: number;
  readonly column: number;
  /** What the cell comes to hold; absent, it keeps what it has. */
  readonly content?: Content;
  /** How the cell is to look, all of it; absent, it keeps its look. */
  readonly style?: Style;
}

export type Content =
  | { readonly is: "blank" }
  /** A text that reads like an error is an error, unless it says that it is a text. */
  | { readonly is: "constant"; readonly value: number | string | boolean; readonly isText?: true }
  | { readonly is: "formula"; readonly formula: string; readonly value?: Cell["value"]; readonly spill?: Size }
  /** The formula stays, or the formula that spills here: what it comes to is another. undefined for a blank. */
  | { readonly is: "result"; readonly value: Cell["value"]; readonly isText?: true; readonly spill?: Size };

export interface Size {
  readonly rows: number;
  readonly columns: number;
}

/** What a maker does to cells, as opposed to what the formulas make of it. */
export const isByHand = ({ content }: Edit): boolean => content !== undefined && content.is !== "result";

import type { CellError } from "../cells/values";

/** The rules of the sheet check, in the order in which their findings are shown. */
export const rules = [
  "text that looks like a number",
  "a TEA function with an error",
  "moisture typed as a number of percent",
  "a moisture ten times off",
  "a dry basis above 500 %",
  "wet and dry basis mixed",
  "a time typed as a number",
  "kilograms among grams",
  "finished above fresh",
  "heavier after than before",
  "more dry matter out than in",
  "most of the dry matter gone",
  "usual loss outside its limits",
  "outturn far from the others",
  "not a step of the scale",
  "a number among formulas",
  "a formula that reads another row",
  "waits for a weight",
] as const;
export type Rule = (typeof rules)[number];

/** Something that deserves another look. Rows and columns are those of the sheet. */
export interface Finding {
  readonly rule: Rule;
  readonly row: number;
  readonly column: number;
  /** What the words of the rule are filled in with; text from cells is only ever shown as text. */
  readonly details: Readonly<Record<string, string>>;
  /** What the sheet calls the arguments of the formula in the cell, as far as it does, in quotes. */
  readonly names?: Readonly<Record<string, string>>;
  /** The error that the cell shows, where that is what was found. */
  readonly error?: CellError;
}

/** The rules of the sheet check, in the order in which their findings are shown. */
export const rules = [
  "a TEA function with an error",
  "text that looks like a number",
  "moisture typed as a number of percent",
  "wet and dry basis mixed",
  "finished above fresh",
  "more dry matter out than in",
  "outturn far from the others",
  "not a step of the scale",
  "a number among formulas",
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
}

/** How the names inside these formulas are spelled, and how values of the core are written into them. */
import { Phrase, type Saying } from "../core/phrases";
import { formulaPieces } from "../workbook/formula";

/** Functions of spreadsheets that a word of ours would be taken for; a test looks for others. */
const functionWords: ReadonlySet<string> = new Set([
  "column",
  "confidence",
  "count",
  "duration",
  "floor",
  "left",
  "nominal",
  "product",
  "right",
  "row",
  "rows",
  "sum",
  "value",
]);

/**
 * `targetMoisture` becomes `target_moisture`, `value` becomes `value_`: in small letters no name is taken for a cell,
 * and no name may be that of a function.
 */
export function spelled(name: string): string {
  const small = name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
  return functionWords.has(small) ? `${small}_` : small;
}

/** The formula with each of its own names as a spreadsheet takes it. Functions and TEA_ names are in capitals. */
export const withSpelledNames = (formula: string): string =>
  formulaPieces(formula)
    .map(({ kind, text }) => {
      const [mark = ""] = /^_xlop\./.exec(text) ?? [];
      const word = text.slice(mark.length);
      return kind === "name" && /^[a-z]/.test(word) ? mark + spelled(word) : text;
    })
    .join("");

/** A value as a formula writes it. */
export function literal(value: number | string | boolean): string {
  if (typeof value === "string") return `"${value.replaceAll('"', '""')}"`;
  return String(value).toUpperCase().replace("E+", "E");
}

/** Words of an answer, as a text in a formula. */
export const said = (saying: Saying | Phrase): string =>
  literal((saying instanceof Phrase ? saying : new Phrase(saying)).toString());

/** A row of constants. */
export const rowOf = (values: readonly (number | string)[]): string => `{${values.map(literal).join(",")}}`;

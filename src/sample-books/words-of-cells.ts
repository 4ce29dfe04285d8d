/** What functions say in cells, in the language of the book. */
import type { FixedSaying } from "../core/phrases";
import { textInFormula } from "../words/in-formula";
import type { SampleWords } from "../words/samples";
import type { Style } from "../workbook/workbook";

/** What a cell says, as an expression: what other words are known of in these, all else as it is. */
export const inWords = (cell: string, others: Readonly<Record<string, string>> = {}): string =>
  Object.entries(others).reduceRight(
    (rest, [told, words]) => `IF(${cell}=${textInFormula(told)},${textInFormula(words)},${rest})`,
    cell,
  );

/** Sayings of functions by their own words; none where cells speak this language by themselves. */
export const sayings = (told: readonly FixedSaying[], { inCells }: SampleWords): Readonly<Record<string, string>> =>
  Object.fromEntries(inCells === undefined ? [] : told.map((saying) => [saying, inCells.phrase(saying)]));

/** Cells that say nothing but this: their format shows it in other words, and they keep what the function gave. */
export const saying = (style: Style, what: FixedSaying, { inCells }: SampleWords): Style =>
  inCells === undefined ? style : { ...style, format: textAs(inCells.phrase(what), style.format) };

/** The format that shows every text as these words, and numbers as another format does. */
export const textAs = (words: string, numbers = "General"): string => `${numbers};-${numbers};${numbers};"${words}"`;

/** Whether a cell holds this choice, in the words of the book or in those of the functions. */
export function isChoice(cell: string, choice: string, { choices }: SampleWords): string {
  const said = choices[choice] ?? choice;
  return said === choice
    ? `${cell}=${textInFormula(choice)}`
    : `OR(${cell}=${textInFormula(said)},${cell}=${textInFormula(choice)})`;
}

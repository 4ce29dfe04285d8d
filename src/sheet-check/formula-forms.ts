import { placeOf } from "../workbook/addresses";
import type { At } from "./headed-cells";

/** References between texts and names of sheets, which stay as they are; `LOG10(` and `L2.weight` are none. */
const texts = /("[^"]*"|'[^']*'!)/;
const reference = /(?<![\w$.])(\$?)([A-Z]{1,3})(\$?)([1-9]\d{0,6})(?![\w(.!])/gi;
const literal = /(?<![\w$.\]])\d+(\.\d+)?(?![\w.[])/g;

const outsideTexts = (formula: string, change: (part: string) => string): string =>
  formula
    .split(texts)
    .map((part, index) => (index % 2 === 1 ? part : change(part)))
    .join("");

/** A formula as it would be anywhere it is filled to: with its references as steps from its own cell, but for those held by a dollar. */
export const relativeForm = (formula: string, { row, column }: At): string =>
  outsideTexts(formula, (part) =>
    part.replace(reference, (_, heldColumn: string, letters: string, heldRow: string, digits: string) => {
      const to = placeOf(`${letters}${digits}`);
      const across = heldColumn ? letters : `[${to.column - column}]`;
      return `${across}${heldRow ? `$${digits}` : `[${to.row - row}]`}`;
    }),
  );

/** A formula without the rows of its references; a long one without its numbers as well, which count the rows of many. */
export function formByRows(formula: string): string {
  const form = outsideTexts(formula, (part) => part.replaceAll(/(\$?\b[A-Z]{1,3}\$?)\d+\b/gi, "$1#"));
  return isLong(formula) ? outsideTexts(form, (part) => part.replace(literal, "#")) : form;
}

/** A long formula without what its references and numbers are; undefined for a short one, which says too little. */
export const formByWords = (formula: string): string | undefined =>
  isLong(formula) ? outsideTexts(formula, (part) => part.replace(reference, "@").replace(literal, "#")) : undefined;

/** Two functions and two references or more. */
const isLong = (formula: string): boolean =>
  [...formula.matchAll(/[A-Z]\(/gi)].length >= 2 && [...formula.matchAll(reference)].length >= 2;

/** A formula without texts, and without what it reads on other sheets. */
const ownPart = (formula: string): string => formula.replace(/"[^"]*"|('[^']*'|[\p{L}\p{N}_.]+)!\$?[\w$:]+/gu, " ");

/** The ranges that a formula names on its own sheet. */
export const rangesIn = (formula: string): string[] =>
  ownPart(formula).match(/\$?\b[A-Z]{1,3}\$?[1-9]\d{0,6}:\$?[A-Z]{1,3}\$?[1-9]\d{0,6}\b/gi) ?? [];

/** The single cells that a formula names on its own sheet. */
export const cellsIn = (formula: string): (At & { readonly isFixed: boolean; readonly isColumnFixed: boolean })[] =>
  [...ownPart(formula).matchAll(/(?<![\w$.:])\$?[A-Z]{1,3}\$?[1-9]\d{0,6}(?![\w.:(!])/gi)].map(([text]) => ({
    ...placeOf(text),
    isFixed: /\$\d/.test(text),
    isColumnFixed: text.startsWith("$"),
  }));

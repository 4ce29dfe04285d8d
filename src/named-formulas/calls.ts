/** Formulas as they are typed, with functions of the add-in called by their named formulas. */
import { idInCell, idInPlainName, plainName } from "../core/describe";
import { formulaPieces } from "../workbook/formula";
import { namedIds } from "./named-formulas";

/** `=TEA.OUTTURN(A1,A2)` becomes `=TEA_OUTTURN(A1,A2)`; undefined where it calls a function without a named formula. */
export function calledByName(formula: string): string | undefined {
  const pieces = formulaPieces(formula).map(({ kind, text }) => {
    const id = kind === "name" ? idInCell(text) : undefined;
    if (id === undefined) return text;
    return namedIds.has(id) ? plainName(id) : undefined;
  });
  return pieces.includes(undefined) ? undefined : pieces.join("");
}

/** Whether a formula calls a function by its named formula. */
export const callsByName = (formula: string): boolean =>
  formulaPieces(formula).some(({ kind, text }) => kind === "name" && namedIds.has(idInPlainName(text) ?? ""));

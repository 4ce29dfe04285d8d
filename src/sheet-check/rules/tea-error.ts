import { argumentNames } from "../argument-names";
import { errorCauses, followersInDetails } from "../error-causes";
import type { Finding } from "../finding";
import type { KnownSheet } from "../known-sheet";

/** A formula with a TEA function in which an error begins, with what follows from it. Its message is the host's to tell. */
export const teaError = (sheet: KnownSheet): Finding[] =>
  errorCauses(sheet).flatMap((cause): Finding[] => {
    const { row, column, text, formula } = cause;
    if (text !== undefined) return [];
    const details = { code: String(sheet.valueAt(cause)), ...followersInDetails(cause) };
    const names = formula && argumentNames(formula, sheet);
    return [{ rule: "a TEA function with an error", row, column, details, ...(names && { names }) }];
  });

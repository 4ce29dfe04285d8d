import { isErrorAnswer } from "../../workbook/workbook";
import type { Finding } from "../finding";
import type { KnownSheet } from "../known-sheet";

/** A formula with a TEA function that shows an error. Its message is the host's to tell. */
export const teaError = ({ formulas }: KnownSheet): Finding[] =>
  formulas.flatMap(({ value, row, column }) =>
    isErrorAnswer(value) ? [{ rule: "a TEA function with an error", row, column, details: { code: value } }] : [],
  );

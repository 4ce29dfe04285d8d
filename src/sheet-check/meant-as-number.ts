import { looksLikeNumber } from "../core/shown";
import type { CellContent } from "../host/workbook-host";
import { isErrorAnswer } from "../workbook/workbook";

/** Digits with a unit of weight behind them. */
const isWeightInText = (value: CellContent): value is string =>
  typeof value === "string" && /^\s*\d[\d.,\s]*\s*(g|kg|克|公斤|斤|两)\s*$/i.test(value);

/** Digits among which a letter slipped that looks like one, such as 12O0, 1l40 and 3S0 g; `L12` and `1B` are names. */
const isSlipAmongDigits = (value: CellContent): value is string =>
  typeof value === "string" &&
  /^\s*\d+[.,]?\d*(?:[OoIlSs]\d+|[OoIlSs]*\d*[.,]\d+|\d[Oo]+)\s*(?:g|kg|克|公斤|斤|两)?\s*$/.test(value) &&
  /[OoIlSs]/.test(value);

/** Digits that somebody typed with something else behind or among them. */
const isNumberInText = (value: CellContent): value is string => isWeightInText(value) || isSlipAmongDigits(value);

/** Digits, with or without a unit of weight behind them. */
export const meantAsNumber = (value: CellContent): value is string =>
  typeof value === "string" && (looksLikeNumber(value) || isNumberInText(value));

/** A number, a text that was meant as one, or an answer that is an error: a row with one of these heads no column. */
export const standsForNumber = (value: CellContent): boolean =>
  typeof value === "number" || isNumberInText(value) || isErrorAnswer(value);

/** Text with letters: neither digits stored as text, with or without a unit, nor an error. */
export const isWords = (value: CellContent): value is string =>
  typeof value === "string" && /\p{L}/u.test(value) && !isNumberInText(value) && !isErrorAnswer(value);

import { CellError } from "../cells/values";
import { isErrorAnswer } from "../workbook/workbook";

/** As the functions take what a host read: an error is one, and a blank is no text. */
export const asArgument = (value: unknown): unknown =>
  isErrorAnswer(value) ? new CellError(value) : value === "" ? null : value;

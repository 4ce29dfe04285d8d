import { CellError } from "../cells/values";

const errorCode =
  /^#(NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|SPILL!|CALC!|FIELD!|BLOCKED!|BUSY!|GETTING_DATA|CONNECT!|UNKNOWN!)$/;

/** Whether a cell that a host read shows an error; hosts give its code, as the port says. */
export const isErrorCode = (value: unknown): value is string => typeof value === "string" && errorCode.test(value);

/** As the functions take what a host read: an error is one, and a blank is no text. */
export const asArgument = (value: unknown): unknown =>
  isErrorCode(value) ? new CellError(value) : value === "" ? null : value;

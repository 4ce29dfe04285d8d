/// <reference types="custom-functions-runtime" />
import { bind } from "../../cells/bind";
import { CellError, type CellValue } from "../../cells/values";
import type { FunctionSpec } from "../../core/define";

/** What goes back to Excel: rows of values, with errors as Excel's own objects. */
type ExcelGrid = (number | string | boolean | CustomFunctions.Error)[][];

/**
 * A cell that holds an error, as Excel passes it when functions.json allows errors: an error object with a `code`,
 * or, where data types are passed too, a plain object with the code as its `basicValue`.
 */
function errorCode(given: unknown): string | undefined {
  if (typeof given !== "object" || given === null) return undefined;
  const { code, basicValue, basicType } = given as { code?: unknown; basicValue?: unknown; basicType?: unknown };
  if (typeof code === "string" && code.startsWith("#")) return code;
  return basicType === "Error" && typeof basicValue === "string" ? basicValue : undefined;
}

/** Keeps Excel's own error object, so that it can be handed back as it came. */
class IncomingError extends CellError {
  readonly original: unknown;
  constructor(code: string, original: unknown) {
    super(code);
    this.original = original;
  }
}

const asCellValue = (given: unknown): unknown => {
  const code = errorCode(given);
  return code === undefined ? given : new IncomingError(code, given);
};

const isObject = (value: unknown): boolean => typeof value === "object" && value !== null;

/**
 * Microsoft's runtime appends an object of its own right behind what Excel sent, also where Excel sent fewer arguments
 * than there are parameters: it must not pass for one of them.
 */
function sentByExcel(given: readonly unknown[]): readonly unknown[] {
  const last = given[given.length - 1];
  return isObject(last) && !Array.isArray(last) && errorCode(last) === undefined ? given.slice(0, -1) : given;
}

/** Ranges without an error, nearly all of them, are taken as they come: they may be whole columns. */
function fromExcel(given: unknown): unknown {
  if (!Array.isArray(given)) return asCellValue(given);
  const rows = given as readonly (readonly unknown[])[];
  return rows.some((row) => row.some(isObject)) ? rows.map((row) => row.map(asCellValue)) : rows;
}

/** Excel shows a message beside #VALUE! and #N/A alone. */
function excelError(error: CellError): CustomFunctions.Error {
  if (error instanceof IncomingError && error.original instanceof CustomFunctions.Error) return error.original;
  const code = error.code as CustomFunctions.ErrorCode;
  const carriesMessage = error.code === "#VALUE!" || error.code === "#N/A";
  return carriesMessage && error.message !== ""
    ? new CustomFunctions.Error(code, error.message)
    : new CustomFunctions.Error(code);
}

const toExcel = (value: CellValue) => (value instanceof CellError ? excelError(value) : value);

/** Excel gives any other error that is thrown as #VALUE!; inside a grid it keeps its code. */
const throwable = new Set(["#VALUE!", "#N/A", "#DIV/0!", "#NUM!", "#NULL!"]);

/**
 * A function of the catalogue as Excel calls it: always a grid, as functions.json declares, except that an error
 * that is the whole answer is thrown. That is the documented way to give a single cell an error with its message.
 */
export function excelFunction(spec: FunctionSpec): (...given: unknown[]) => ExcelGrid {
  const call = bind(spec);
  return (...given) => {
    const grid = call(...sentByExcel(given).map(fromExcel));
    const only = grid.length === 1 && grid[0]?.length === 1 ? grid[0][0] : undefined;
    if (only instanceof CellError && throwable.has(only.code)) throw excelError(only);
    return grid.map((row) => row.map(toExcel));
  };
}

import { bind } from "../cells/bind";
import { CellError, type CellValue } from "../cells/values";
import { wrongCount } from "../cells/wrong-count";
import type { FunctionSpec } from "../core/define";
import { plainName } from "../core/describe";
import { namespace } from "../core/namespace";
import { daysByTheSheet } from "./days";

type SheetValue = number | string | boolean;

/** What goes back to the sheet: one value, or rows of them. An error inside rows is the text of its code. */
export type SheetAnswer = SheetValue | SheetValue[][];

/** A cell that holds an error arrives as the text that it shows. */
const shownError = /^#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|ERROR!)$/;

/** Also of another realm, whose Date is not this one's. */
const isDate = (value: unknown): value is Date => Object.prototype.toString.call(value) === "[object Date]";

/** Google has no error for a function to give but one that is thrown: its words then stand beside #ERROR!. */
const thrown = ({ code, message }: CellError): Error => new Error(message === "" ? code : message);

const inRows = (value: CellValue): SheetValue => (value instanceof CellError ? value.code : value);

/** A function of the catalogue as a sheet calls it: a cell alone is a value, a range is rows of values. */
export function sheetFunction(spec: FunctionSpec): (given: readonly unknown[]) => SheetAnswer {
  const call = bind(spec);
  return (given) => {
    const miscounted = wrongCount(spec, given.length);
    if (miscounted !== undefined) throw thrown(named(miscounted, spec));
    const days = daysByTheSheet();
    const fromSheet = (value: unknown): unknown => {
      if (typeof value === "string" && shownError.test(value)) return new CellError(value);
      return isDate(value) ? days(value) : value;
    };
    const grid = call(
      ...given.map((argument) =>
        Array.isArray(argument)
          ? argument.map((row: unknown) => (Array.isArray(row) ? row.map(fromSheet) : row))
          : fromSheet(argument),
      ),
    );
    const [row = [], ...more] = grid;
    const [only = ""] = row;
    if (row.length > 1 || more.length > 0) return grid.map((values) => values.map(inRows));
    if (only instanceof CellError) throw thrown(only);
    return only;
  };
}

/** A refusal that names the function, by the name that it has here. */
const named = ({ code, message }: CellError, { id }: FunctionSpec): CellError =>
  new CellError(code, message.split(`${namespace}.${id}`).join(plainName(id)));

import type { Parameter } from "../core/define";
import { type DomainError, must } from "../core/errors";
import type { CellArgument } from "./values";

export interface Shape {
  readonly rows: number;
  readonly columns: number;
}

export function shapeOf(given: CellArgument): Shape {
  if (!Array.isArray(given)) return { rows: 1, columns: 1 };
  // Text has a length too, and is no row of cells.
  return { rows: given.length, columns: Array.isArray(given[0]) ? given[0].length : 0 };
}

/**
 * The shape of the answer when ranges are taken element by element, as the spreadsheet itself does:
 * a column with a row gives a table, one cell serves for all, and any other mismatch is refused. Lists are taken
 * whole and have no say.
 */
export function shapeOfAll(parameters: readonly Parameter[], given: readonly CellArgument[]): Shape {
  let rows = 1;
  let columns = 1;
  let tallest = 0;
  let widest = 0;
  for (let index = 0; index < parameters.length; index += 1) {
    const argument = given[index];
    if (!Array.isArray(argument) || parameters[index]?.takes === "list") continue;
    if (argument.length > 0 && !Array.isArray(argument[0])) throw notRows(parameters[index] as Parameter);
    const shape = shapeOf(argument);
    if (!fits(shape.rows, rows)) throw mismatch(parameters, given, index, tallest);
    if (!fits(shape.columns, columns)) throw mismatch(parameters, given, index, widest);
    if (shape.rows > rows) [rows, tallest] = [shape.rows, index];
    if (shape.columns > columns) [columns, widest] = [shape.columns, index];
  }
  return { rows, columns };
}

/** The refusal of a range of another form, which no host sends. */
export const notRows = ({ name }: Parameter): DomainError =>
  must(name, { be: "a cell or rows of cells" }, "got a list of another form");

const fits = (size: number, sizeSoFar: number): boolean => size === 1 || sizeSoFar === 1 || size === sizeSoFar;

function mismatch(parameters: readonly Parameter[], given: readonly CellArgument[], one: number, other: number) {
  const name = (index: number) => parameters[index]?.name ?? "";
  return must(
    name(one),
    { do: { kind: "size of", argument: name(other) } },
    { kind: "sizes", one: shapeOf(given[one]), other: shapeOf(given[other]) },
  );
}

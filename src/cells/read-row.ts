import type { Argument, Parameter } from "../core/define";
import { DomainError, mustBe } from "../core/errors";
import { blank, type CellReader, cellReader } from "./read-cell";
import { CellError } from "./values";

/** Why a row has no answer: the error that stood in a cell, the refusal that is due, or a reading still to come. */
export type Hurdle = CellError | DomainError | "waits";

/** Reads the cell arguments of one row into `values`, each at the place of its parameter; undefined when all are there. */
type RowReader = (given: readonly unknown[], row: number, column: number, values: Argument[]) => Hurdle | undefined;

/**
 * An error in a cell wins over all, then a value out of its bounds. A reading that is missing makes the row wait,
 * whatever setting is still blank beside it: formulas are filled down ahead of the season.
 */
export function rowReader(parameters: readonly Parameter[]): RowReader {
  const places = parameters.flatMap((parameter, place) => (parameter.takes === "cell" ? [place] : []));
  const readers = places.map((place) => cellReader(parameters[place] as Parameter));
  // Typed arrays keep the bounds of every cell's path as bare doubles.
  const lows = Float64Array.from(readers, ({ low }) => low);
  const highs = Float64Array.from(readers, ({ high }) => high);

  return (given, row, column, values) => {
    let hurdle: Hurdle | undefined;
    let blankSetting: Parameter | undefined;
    let blankCell: unknown;
    for (let index = 0; index < places.length; index += 1) {
      const place = places[index] as number;
      const cell = cellAt(given[place], row, column);
      if (typeof cell === "number" && cell >= (lows[index] as number) && cell <= (highs[index] as number)) {
        values[place] = cell;
        continue;
      }
      const value = (readers[index] as CellReader).read(cell);
      if (value instanceof CellError) return value;
      if (value instanceof DomainError) {
        if (!(hurdle instanceof DomainError)) hurdle = value;
      } else if (value !== blank) {
        values[place] = value;
      } else {
        const parameter = parameters[place] as Parameter;
        if (parameter.optional) values[place] = parameter.fallback;
        else if (parameter.blank === "waits") hurdle ??= "waits";
        else if (blankSetting === undefined) {
          blankSetting = parameter;
          // A 0 that was typed for a weight is shown as such; for a word it is how older hosts send a blank.
          blankCell = parameter.quantity.holds === "number" ? cell : undefined;
        }
      }
    }
    if (hurdle === undefined && blankSetting !== undefined) {
      return mustBe(blankSetting.name, blankSetting.quantity.requirement, blankCell);
    }
    return hurdle;
  };
}

/** The cell of a range that stands for this row and column; one row, one column or one cell serves for all. */
export function cellAt(given: unknown, row: number, column: number): unknown {
  if (!Array.isArray(given)) return given;
  // A range without rows, or a row without cells, holds a blank.
  const cells = (given.length === 1 ? given[0] : given[row]) as readonly unknown[] | undefined;
  return cells?.length === 1 ? cells[0] : cells?.[column];
}

import { bind } from "../../src/cells/bind";
import { CellError, type Grid } from "../../src/cells/values";
import { type Calculation, defineFunction, type Parameter } from "../../src/core/define";
import { plainNumber } from "../../src/core/quantities";

/** A function of a single cell, for the rules of cells rather than those of the trade. */
export const cellFunction = (parameters: readonly Parameter[], calculate: Calculation) =>
  bind(
    defineFunction({
      id: "PROBE",
      group: "moisture",
      parameters,
      result: { shape: "cell", quantity: plainNumber },
      calculate,
    }),
  );

/** What stands in the cells: an error as its code and its message. */
export const shownIn = (grid: Grid): (number | string | boolean)[][] =>
  grid.map((row) => row.map((value) => (value instanceof CellError ? `${value.code} ${value.message}`.trim() : value)));

/** The single cell of an answer. */
export const only = (grid: Grid): number | string | boolean | undefined => {
  const shown = shownIn(grid);
  return shown.length === 1 && shown[0]?.length === 1 ? shown[0][0] : `${JSON.stringify(shown)} is not one cell`;
};

import { bind, type CellFunction } from "../../src/cells/bind";
import { CellError, type Grid } from "../../src/cells/values";
import { type Calculation, defineFunction, type FunctionSpec, type Parameter } from "../../src/core/define";
import { plainNumber } from "../../src/core/quantities";

/** Bound anew by every call: mutation testing sees only what runs inside a test. */
export const boundByCall =
  (spec: FunctionSpec): CellFunction =>
  (...given) =>
    bind(spec)(...given);

/** A function of a single cell, for the rules of cells rather than those of the trade. */
export const cellFunction = (parameters: readonly Parameter[], calculate: Calculation): CellFunction =>
  boundByCall(
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

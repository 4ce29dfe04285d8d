import type { Answer, Argument, Parameter } from "../core/define";
import { type CellReader, cellReader } from "./read-cell";
import { cellAt } from "./read-row";

/** Calculates in a row of the columns given, where its cells hold plain numbers inside their bounds; else undefined. */
export type QuickRow = (row: number) => Answer | undefined;

/**
 * As quickPath, for a call on columns. Whether an argument is a column or one cell for all rows is settled once for
 * the call: asked again in every row, it would cost as much as the arithmetic.
 */
export function quickColumn(
  parameters: readonly Parameter[],
  calculate: (...values: Argument[]) => unknown,
): ((given: readonly unknown[]) => QuickRow) | undefined {
  const count = parameters.length;
  if (count === 0 || count > 3 || parameters.some(({ takes }) => takes === "list")) return undefined;
  // A calculation of fewer than three numbers is handed zeros behind them, which it does not look at.
  const call = calculate as (one: number, two: number, three: number) => Answer;
  const [first = alwaysZero, second = alwaysZero, third = alwaysZero] = parameters.map(cellReader).map(isWithin);
  return (given) => {
    const [ones, one] = columnOrCell(given[0]);
    const [twos, two] = count > 1 ? columnOrCell(given[1]) : zero;
    const [threes, three] = count > 2 ? columnOrCell(given[2]) : zero;
    return (row) => {
      const a = ones === undefined ? one : ones[row]?.[0];
      const b = twos === undefined ? two : twos[row]?.[0];
      const c = threes === undefined ? three : threes[row]?.[0];
      return first(a) && second(b) && third(c) ? call(a, b, c) : undefined;
    };
  };
}

type Cells = readonly (readonly unknown[])[];

const zero: [undefined, 0] = [undefined, 0];

const columnOrCell = (given: unknown): [Cells, undefined] | [undefined, unknown] =>
  Array.isArray(given) && given.length > 1 ? [given as Cells, undefined] : [undefined, cellAt(given, 0, 0)];

const isWithin =
  ({ low, high }: Pick<CellReader, "low" | "high">) =>
  (cell: unknown): cell is number =>
    typeof cell === "number" && cell >= low && cell <= high;

const alwaysZero = isWithin({ low: 0, high: 0 });

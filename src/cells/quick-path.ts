import type { Answer, Argument, Parameter } from "../core/define";
import { type CellReader, cellReader } from "./read-cell";
import { cellAt } from "./read-row";

/** Calculates where every cell holds a plain number inside its bounds; undefined where a cell has to be read first. */
export type QuickPath = (given: readonly unknown[], row: number, column: number) => Answer | undefined;

/** Up to three numbers go straight from their cells into the calculation: a list of them would cost more than most arithmetic. */
export function quickPath(
  parameters: readonly Parameter[],
  calculate: (...values: Argument[]) => unknown,
): QuickPath | undefined {
  if (parameters.some(({ takes }) => takes === "list")) return undefined;
  const [one, two, three, ...more] = parameters.map(cellReader);
  if (one === undefined || more.length > 0) return undefined;
  const call = calculate as (...values: number[]) => Answer;
  const first = isWithin(one);
  if (two === undefined) {
    return (given, row, column) => {
      const a = cellAt(given[0], row, column);
      return first(a) ? call(a) : undefined;
    };
  }
  const second = isWithin(two);
  if (three === undefined) {
    return (given, row, column) => {
      const a = cellAt(given[0], row, column);
      const b = cellAt(given[1], row, column);
      return first(a) && second(b) ? call(a, b) : undefined;
    };
  }
  const third = isWithin(three);
  return (given, row, column) => {
    const a = cellAt(given[0], row, column);
    const b = cellAt(given[1], row, column);
    const c = cellAt(given[2], row, column);
    return first(a) && second(b) && third(c) ? call(a, b, c) : undefined;
  };
}

const isWithin =
  ({ low, high }: CellReader) =>
  (cell: unknown): cell is number =>
    typeof cell === "number" && cell >= low && cell <= high;

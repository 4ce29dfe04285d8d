import type { Argument, Parameter } from "../core/define";
import { cellReader } from "./read-cell";
import { cellAt } from "./read-row";

/**
 * Answers a call whose ranges are single cells and columns: at once where a row holds plain numbers inside their bounds
 * and comes to one, and by `otherwise` where something has to be read or said.
 */
type QuickPath<Value> = (
  given: readonly unknown[],
  rows: number,
  otherwise: (row: number) => Value,
) => (Value | number)[][];

/** Stands for a parameter that a function has not: its cell is a 0. */
const absent = { low: 0, high: 0 };

/**
 * For functions of up to three numbers: reading a row into a list costs more than most arithmetic. The whole loop is
 * written out, for a call of its own at each step makes it slower: `npm run bench` holds it to its limit.
 */
export function quickPath<Value>(
  parameters: readonly Parameter[],
  calculate: (...values: Argument[]) => unknown,
): QuickPath<Value> | undefined {
  const [one, two = absent, three = absent] = parameters.map(cellReader);
  if (one === undefined || parameters.length > 3 || parameters.some(({ takes }) => takes === "list")) return undefined;
  const { low: lowA, high: highA } = one;
  const { low: lowB, high: highB } = two;
  const { low: lowC, high: highC } = three;
  const count = parameters.length;

  return (given, rows, otherwise) => {
    // Not what a host appends behind the arguments.
    const second = count > 1 ? given[1] : 0;
    const third = count > 2 ? given[2] : 0;
    const listA = columnIn(given[0]);
    const listB = columnIn(second);
    const listC = columnIn(third);
    const soleA = cellAt(given[0], 0, 0);
    const soleB = cellAt(second, 0, 0);
    const soleC = cellAt(third, 0, 0);
    const grid: (Value | number)[][] = [];
    for (let row = 0; row < rows; row += 1) {
      const a = listA === undefined ? soleA : listA[row]?.[0];
      const b = listB === undefined ? soleB : listB[row]?.[0];
      const c = listC === undefined ? soleC : listC[row]?.[0];
      let answer: unknown;
      if (typeof a === "number" && typeof b === "number" && typeof c === "number") {
        if (a >= lowA && a <= highA && b >= lowB && b <= highB && c >= lowC && c <= highC) {
          try {
            answer = count === 1 ? calculate(a) : count === 2 ? calculate(a, b) : calculate(a, b, c);
          } catch {
            // A refusal, which is found again and said there.
          }
        }
      }
      // With 0 added, as −0 would show its sign.
      grid.push([typeof answer === "number" && answer - answer === 0 ? answer + 0 : otherwise(row)]);
    }
    return grid;
  };
}

/** The rows of a column; undefined of what is one cell for all. */
const columnIn = (argument: unknown): readonly (readonly unknown[])[] | undefined =>
  Array.isArray(argument) && argument.length > 1 ? argument : undefined;

/** What the second engine makes of calls, held against the binding. */
import { CellError, type CellValue, type Grid } from "../../src/cells/values";
import { differences } from "../../src/named-formulas/differences";
import type { Call } from "../hosts/calls";
import { answerTo } from "./random-calls";
import { answersOf } from "./second-engine";

/** More formulas than this make one sheet slow. */
const atOnce = 150;

/** Each call whose answers differ by more than `differences` allow, with both. */
export function disagreements(calls: readonly Call[]): string[] {
  const found: string[] = [];
  for (let from = 0; from < calls.length; from += atOnce) {
    const some = calls.slice(from, from + atOnce).map((call) => {
      const expected = answerTo(call);
      return { ...call, expected, rows: expected.length, columns: expected[0]?.length ?? 0 };
    });
    const answers = answersOf(some);
    some.forEach(({ name, spec, expected }, index) => {
      const answer = answers[index] as Grid;
      const margin = framedByBlanks(expected);
      const differs = margin.some((row, down) => !isSameRow(spec.id, row, answer[down] as CellValue[]));
      if (differs) found.push(`${name}: expected ${shown(margin)}, got ${shown(answer)}`);
    });
  }
  return found;
}

/** Beside and below an answer nothing may stand. */
const framedByBlanks = (grid: Grid): Grid => [
  ...grid.map((row) => [...row, ""]),
  new Array<CellValue>((grid[0]?.length ?? 0) + 1).fill(""),
];

/** The column of the readings needed, of SAMPLEMEAN. */
const needed = 6;

function isSameRow(id: string, expected: readonly CellValue[], answer: readonly CellValue[]): boolean {
  const largest = Math.max(0, ...expected.map((value) => (typeof value === "number" ? Math.abs(value) : 0)));
  const allowed = (differences[id]?.share ?? 0) * largest;
  return expected.every((value, column) => {
    const other = answer[column];
    if (id === "SAMPLEMEAN" && column === needed && typeof value === "number" && value > 1_000) {
      return typeof other === "number" && Math.abs(other / value - 1) <= 1e-5;
    }
    if (typeof value === "number") return typeof other === "number" && Math.abs(value - other) <= allowed;
    if (value instanceof CellError) return other instanceof CellError && value.code === other.code;
    return value === other || (id === "STAGEBALANCE" && isSameNote(String(value), String(other)));
  });
}

/** Both end with a number, to ten digits. */
function isSameNote(one: string, other: string): boolean {
  const [a, b] = [one, other].map((note) => /^(\D+ )(\d[\d.e-]*)$/.exec(note));
  return !!a && !!b && a[1] === b[1] && Math.abs(Number(a[2]) / Number(b[2]) - 1) < 2e-9;
}

const shown = (grid: Grid): string =>
  JSON.stringify(grid.map((row) => row.map((value) => (value instanceof CellError ? value.code : value))));

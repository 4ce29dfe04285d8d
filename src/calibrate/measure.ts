import { hashOf, type MeasuredRow, type MeasuredStudy, shownCell } from "../generate/measured";
import { randomFrom } from "./random";
import type { Measurement, Situation, Study, StudyTable } from "./study";

/** Every row has numbers of its own, so that a table may grow without the others changing. */
const seedOf = (study: Study, table: number, row: number): number => study.seed + 1009 * table + 9176 * row;

interface Sums {
  readonly sums: readonly number[];
  readonly squares: readonly number[];
}

/** What `count` trials of a situation add up to, from the start of its numbers. */
export function sumsOf(study: Study, table: number, row: number, count: number): Sums {
  const { columns, situations } = study.tables[table] as StudyTable;
  const { trial } = situations[row] as Situation;
  const random = randomFrom(seedOf(study, table, row));
  const sums = columns.map(() => 0);
  const squares = columns.map(() => 0);
  for (let done = 0; done < count; done += 1) {
    trial(random).forEach((value, column) => {
      sums[column] = (sums[column] as number) + value;
      squares[column] = (squares[column] as number) + value * value;
    });
  }
  return { sums, squares };
}

/** Whether a study has the tables that were measured, and comes to the same sums in the first tenth of every row. */
export function isTheSame(study: Study, kept: MeasuredStudy): boolean {
  const layout = [
    study.seed,
    study.tables.map(({ situations, ...table }) => [table, situations.map(({ label }) => label)]),
  ];
  const layoutThen = [kept.seed, kept.tables.map(({ rows, ...table }) => [table, rows.map(({ label }) => label)])];
  return (
    JSON.stringify(layout) === JSON.stringify(layoutThen) &&
    // Up to the first row that differs.
    study.tables.every(({ situations, trials }, table) =>
      situations.every((_, row) =>
        areNear(sumsOf(study, table, row, trials / 10).sums, kept.tables[table]?.rows[row]?.tenth ?? []),
      ),
    )
  );
}

/** Sums of numbers that are no counts may differ by their rounding. */
const areNear = (sums: readonly number[], others: readonly number[]): boolean =>
  sums.every((sum, column) => Math.abs(sum - (others[column] ?? Number.NaN)) <= 1e-9 * (1 + Math.abs(sum)));

/** All of a study. */
export function measured(study: Study, file: string): MeasuredStudy {
  const { functions, seed, says, picture } = study;
  return {
    functions,
    file,
    hash: hashOf(".", file),
    seed,
    says,
    tables: study.tables.map(({ title, rowsAre, columns, trials, situations }, table) => ({
      title,
      rowsAre,
      columns,
      trials,
      rows: situations.map(({ label }, row): MeasuredRow => {
        const { sums, squares } = sumsOf(study, table, row, trials);
        return { label, sums, squares, tenth: sumsOf(study, table, row, trials / 10).sums };
      }),
    })),
    picture,
  };
}

/** Finds what a cell of a measured table shows. */
export const measurementOf =
  ({ tables }: MeasuredStudy): Measurement =>
  (place, label, name) => {
    const table = tables[place];
    const row = table?.rows.find((one) => one.label === label);
    const column = table?.columns.findIndex((one) => one.name === name) ?? -1;
    if (table === undefined || row === undefined || column < 0) throw new Error(`${label}, ${name} was not measured`);
    return shownCell(table, row, column).value;
  };

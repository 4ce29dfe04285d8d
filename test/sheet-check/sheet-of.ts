import type { CellContent, ReadArea } from "../../src/host/workbook-host";

/** A cell of a sheet in a test: a value, or a formula that shows one, with a format where it matters. */
export type Cell = CellContent | { readonly formula?: string; readonly value: CellContent; readonly format?: string };
export type Rows = readonly (readonly Cell[])[];

/** The sheet as a host would read it. */
export function sheetOf(rows: Rows): ReadArea {
  const columns = Math.max(...rows.map((row) => row.length));
  const grid = <Content>(of: (cell: Exclude<Cell, CellContent>) => Content): Content[][] =>
    rows.map((row) =>
      Array.from({ length: columns }, (_, column) => {
        const cell = row[column] ?? "";
        return of(typeof cell === "object" ? cell : { value: cell });
      }),
    );
  return {
    ...{ sheet: "Book", row: 0, column: 0, rows: rows.length, columns },
    values: grid(({ value }) => value),
    formulas: grid(({ formula }) => formula ?? ""),
    formats: grid(({ format }) => format ?? "General"),
  };
}

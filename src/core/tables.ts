import type { FunctionSpec, TableResult } from "./define";

/** The rows of a table that its columns speak of, without its last one and a note behind it. */
export function ownRows<Row extends readonly unknown[]>(
  { lastRow }: TableResult,
  rows: readonly Row[],
): readonly Row[] {
  if (lastRow === undefined) return rows;
  const isNote = (row: Row): boolean => row.length > 1 && row.slice(1).every((cell) => cell === "");
  const last = rows.findLastIndex((row) => lastRow.is === "verdict" || !isNote(row));
  return rows.slice(0, Math.max(last, 0));
}

/** The column of a function's answer that a chart in the workbook can show. */
export function chartedColumn({ result }: Pick<FunctionSpec, "result">): string | undefined {
  const picture = result.shape === "table" ? result.picture : undefined;
  return picture?.shows === "lots" ? picture.chart : undefined;
}

import { CellError, type CellValue, type Grid } from "../cells/values";
import { shownWidth } from "../core/shown";

interface WrittenAnswer {
  /** For the standard output. */
  readonly text: string;
  /** For the standard error: what is wrong, a line each. */
  readonly problems: string;
}

/** A value alone, or rows that line up; numbers to the 15 digits that a double is good for. */
export function writtenAnswer(grid: Grid): WrittenAnswer {
  const messages = new Set(grid.flat().flatMap((value) => (value instanceof CellError ? [errorLine(value)] : [])));
  const problems = [...messages].join("\n");
  const single = singleOf(grid);
  if (single instanceof CellError) return { text: "", problems };
  return { text: single === undefined ? alignedRows(grid) : shown(single) || "(empty)", problems };
}

/** The same for another program. Numbers in full; an error is an object with its code and message. */
export function jsonAnswer(typed: string, grid: Grid): string {
  const single = singleOf(grid);
  const answer = single === undefined ? { rows: grid.map((row) => row.map(jsonValue)) } : jsonSingle(single);
  return JSON.stringify({ formula: typed, ...answer });
}

export const holdsError = (grid: Grid): boolean => grid.flat().some((value) => value instanceof CellError);

const singleOf = (grid: Grid): CellValue | undefined =>
  grid.length === 1 && grid[0]?.length === 1 ? grid[0][0] : undefined;

const jsonValue = (value: CellValue): unknown =>
  value instanceof CellError ? { error: value.code, message: value.message } : value;

const jsonSingle = (value: CellValue): object =>
  value instanceof CellError ? { error: value.code, message: value.message } : { value };

const errorLine = ({ code, message }: CellError): string => (message === "" ? code : `${code} ${message}`);

function shown(value: CellValue): string {
  if (typeof value === "number") return String(Number(value.toPrecision(15)));
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return value instanceof CellError ? value.code : value;
}

/** Columns of numbers end together, columns of text begin together. */
function alignedRows(grid: Grid): string {
  const columns = Array.from({ length: grid[0]?.length ?? 0 }, (_, column) => {
    const values = grid.map((row) => row[column] ?? "");
    const width = Math.max(...values.map((value) => shownWidth(shown(value))));
    return { width, holdsNumbers: values.some((value) => typeof value === "number") };
  });
  return grid
    .map((row) =>
      columns
        .map(({ width, holdsNumbers }, column) => {
          const text = shown(row[column] ?? "");
          return holdsNumbers
            ? " ".repeat(width - shownWidth(text)) + text
            : text + " ".repeat(width - shownWidth(text));
        })
        .join("  ")
        .trimEnd(),
    )
    .join("\n");
}

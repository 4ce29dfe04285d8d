import type { Argument, Parameter } from "../core/define";
import { DomainError, must } from "../core/errors";
import { blank, type CellReader, cellReader } from "./read-cell";
import type { Hurdle } from "./read-row";
import { CellError, isBlank } from "./values";

/** Reads every list of a call into `values`, each at the place of its parameter; undefined when all are there. */
export type ListsReader = (given: readonly unknown[], values: Argument[]) => Hurdle | undefined;

interface RawList {
  readonly parameter: Parameter;
  readonly place: number;
  readonly reader: CellReader;
  /** undefined where an optional list was left out. */
  readonly cells: readonly unknown[] | undefined;
}

/**
 * The lists of a call stand for the rows of one table: blanks at the end of all of them are no rows; a row blank in
 * every measured list is passed over; a row blank in some of them waits for its reading, and so does the call.
 */
export function listsReader(parameters: readonly Parameter[]): ListsReader {
  const places = parameters.flatMap((parameter, place) => (parameter.takes === "list" ? [place] : []));
  if (places.length === 0) return () => undefined;
  const readers = places.map((place) => cellReader(parameters[place] as Parameter));

  return (given, values) => {
    const lists: RawList[] = places.map((place, index) => {
      const parameter = parameters[place] as Parameter;
      return { parameter, place, reader: readers[index] as CellReader, cells: asList(parameter, given[place]) };
    });
    for (const { cells } of lists) {
      const error = cells?.find((cell) => cell instanceof CellError);
      if (error instanceof CellError) return error;
    }
    const rows = rowCount(lists);
    const keepsRow = rowsToKeep(lists, rows);
    let waits = rows === 0 && lists.some(({ parameter }) => parameter.blank === "waits" && !parameter.optional);
    for (const list of lists) {
      const read = readValues(list, rows, keepsRow);
      if (read === "waits") waits = true;
      else values[list.place] = read;
    }
    return waits ? "waits" : undefined;
  };
}

/** A row or a column as a list; a constant is a list of one. */
function asList({ name, optional }: Parameter, given: unknown): readonly unknown[] | undefined {
  if (isBlank(given)) return optional ? undefined : [];
  if (!Array.isArray(given)) return [given];
  const grid = given as readonly (readonly unknown[])[];
  const columns = grid[0]?.length ?? 0;
  if (grid.length > 1 && columns > 1) {
    throw must(name, "be one row or one column", `got ${grid.length} × ${columns} cells`);
  }
  const cells = grid.length === 1 ? (grid[0] as readonly unknown[]) : grid.map((row) => row[0]);
  return optional && cells.every(isBlank) ? undefined : cells;
}

const standsForAll = ({ parameter, cells }: RawList): boolean => parameter.oneForAll === true && cells?.length === 1;

/** How many rows the call has: up to the last row that is filled in some list. Refuses lists that do not match. */
function rowCount(lists: readonly RawList[]): number {
  const ruling = lists.filter((list) => list.cells !== undefined && !standsForAll(list));
  const filled = ruling.map(({ cells }) => filledLength(cells ?? []));
  const rows = Math.max(0, ...ruling.map((list, index) => (list.parameter.gaps ? 0 : (filled[index] ?? 0))));
  const longest = ruling[filled.findIndex((length, index) => length === rows && !ruling[index]?.parameter.gaps)];
  ruling.forEach(({ parameter, cells = [] }, index) => {
    const tooShort = !parameter.gaps && cells.length < rows;
    const tooLong = (filled[index] ?? 0) > rows;
    if (!tooShort && !tooLong) return;
    const other = longest === undefined ? "the other list" : longest.parameter.name;
    throw must(parameter.name, `have as many rows as ${other}`, `got ${filled[index]} and ${rows}`);
  });
  return rows;
}

function filledLength(cells: readonly unknown[]): number {
  let length = cells.length;
  while (length > 0 && isBlank(cells[length - 1])) length -= 1;
  return length;
}

/** Passed over: rows in which every measured list is blank. Lists with gaps decide nothing. */
function rowsToKeep(lists: readonly RawList[], rows: number): (row: number) => boolean {
  const deciding = lists.filter(({ parameter, cells }) => parameter.blank === "waits" && !parameter.gaps && cells);
  if (deciding.length === 0) return () => true;
  const kept = Array.from({ length: rows }, (_, row) => deciding.some(({ cells }) => !isBlank(cells?.[row])));
  return (row) => kept[row] === true;
}

function readValues(list: RawList, rows: number, keepsRow: (row: number) => boolean): Argument | "waits" {
  const { parameter, reader, cells } = list;
  if (cells === undefined) return undefined;
  const values: (number | string | boolean | null)[] = [];
  let waits = false;
  for (let row = 0; row < rows; row += 1) {
    if (!keepsRow(row)) continue;
    const value = readItem(reader, standsForAll(list) ? cells[0] : cells[row], row);
    if (value !== blank) values.push(value);
    else if (parameter.gaps) values.push(null);
    else if (parameter.blank === "waits") waits = true;
    else throw must(parameter.name, "be filled in every row", `row ${row + 1} is blank`);
  }
  if (values.length === 0 && !waits && parameter.blank === "is refused" && !parameter.optional) {
    throw must(parameter.name, "hold at least one value", "got a blank");
  }
  return waits ? "waits" : values;
}

/** Reads one item, with the row in the message: "moistures must be from 0 …; got 76 in row 3". */
function readItem(reader: CellReader, cell: unknown, row: number): number | string | boolean | typeof blank {
  const value = reader.read(cell);
  if (value instanceof DomainError) throw new DomainError(value.argument, `${value.message} in row ${row + 1}`);
  // Errors in cells were found before the first item was read.
  return value as Exclude<typeof value, CellError | DomainError>;
}

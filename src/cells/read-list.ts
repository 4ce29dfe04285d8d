import type { Argument, Parameter } from "../core/define";
import { DomainError, inPlace, must } from "../core/errors";
import type { Doing } from "../core/refusals";
import { blank, type CellReader, cellReader } from "./read-cell";
import type { Hurdle } from "./read-row";
import { CellError, isBlank } from "./values";

/** Reads every list of a call, other than those of a book, into `values`, each at the place of its parameter; undefined when all are there. */
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
  const places = parameters.flatMap(({ takes, book }, place) =>
    takes === "list" && book === undefined ? [place] : [],
  );
  if (places.length === 0) return () => undefined;
  const readers = places.map((place) => cellReader(parameters[place] as Parameter));

  return (given, values) => {
    const lists: RawList[] = places.map((place, index) => {
      const parameter = parameters[place] as Parameter;
      const reader = readers[index] as CellReader;
      return { parameter, place, reader, cells: asList(parameter, reader, given[place]) };
    });
    for (const { cells } of lists) {
      const error = cells?.find((cell) => cell instanceof CellError);
      if (error instanceof CellError) return error;
    }
    const rows = rowCount(lists);
    const kept = rowsToKeep(lists, rows);
    let waits = kept.length === 0 && lists.some(({ parameter }) => parameter.blank === "waits" && !parameter.optional);
    // Nothing is measured yet: settings beside it may still be blank as well.
    if (waits) return "waits";
    for (const list of lists) {
      const read = readValues(list, kept);
      if (read === "waits") waits = true;
      else values[list.place] = read;
    }
    return waits ? "waits" : undefined;
  };
}

/** Also 0, where the kind of quantity excludes it: older hosts send it for a blank cell. */
const isBlankFor = (reader: CellReader, cell: unknown): boolean =>
  isBlank(cell) || (cell === 0 && reader.read(cell) === blank);

/** A row or a column as a list; a constant is a list of one. */
function asList({ name, optional }: Parameter, reader: CellReader, given: unknown): readonly unknown[] | undefined {
  if (isBlankFor(reader, given)) return optional ? undefined : [];
  if (!Array.isArray(given)) return [given];
  const grid = given as readonly (readonly unknown[])[];
  const columns = grid[0]?.length ?? 0;
  if (grid.length > 1 && columns > 1) {
    throw must(name, { be: "one row or one column" }, { kind: "cells", size: { rows: grid.length, columns } });
  }
  const cells = grid.length === 1 ? (grid[0] as readonly unknown[]) : grid.map((row) => row[0]);
  return optional && cells.every((cell) => isBlankFor(reader, cell)) ? undefined : cells;
}

const standsForAll = ({ parameter, cells }: RawList): boolean => parameter.oneForAll === true && cells?.length === 1;

/** How many rows the call has: up to the last row that is filled in some list. Refuses lists that do not match. */
function rowCount(lists: readonly RawList[]): number {
  const ruling = lists.filter((list) => list.cells !== undefined && !standsForAll(list));
  const filled = ruling.map(filledLength);
  const someWithoutGaps = ruling.some(({ parameter }) => !parameter.gaps);
  const counts = (list: RawList): boolean => !(someWithoutGaps && list.parameter.gaps);
  const rows = Math.max(0, ...ruling.map((list, index) => (counts(list) ? (filled[index] ?? 0) : 0)));
  const longest = ruling[filled.findIndex((length, index) => length === rows && !ruling[index]?.parameter.gaps)];
  ruling.forEach(({ parameter, cells = [] }, index) => {
    const tooShort = !parameter.gaps && cells.length < rows;
    const tooLong = (filled[index] ?? 0) > rows;
    if (!tooShort && !tooLong) return;
    const as: Doing =
      longest === undefined
        ? "have as many rows as the other list"
        : { kind: "rows as", argument: longest.parameter.name };
    throw must(parameter.name, { do: as }, { kind: "lengths", one: filled[index] ?? 0, other: rows });
  });
  return rows;
}

function filledLength({ cells = [], reader }: RawList): number {
  let length = cells.length;
  while (length > 0 && isBlankFor(reader, cells[length - 1])) length -= 1;
  return length;
}

/**
 * Passed over: rows in which every measured list is blank and no optional number is above 0: leaf that was taken out
 * is never lost from sight with its row. Where all measured lists may have gaps, a gap keeps its place and is the
 * function's own to read.
 */
function rowsToKeep(lists: readonly RawList[], rows: number): readonly number[] {
  const all = Array.from({ length: rows }, (_, row) => row);
  const deciding = lists.filter(({ parameter, cells }) => parameter.blank === "waits" && cells);
  if (deciding.every(({ parameter }) => parameter.gaps)) return all;
  const beside = lists.filter(({ parameter }) => parameter.optional && parameter.quantity.holds === "number");
  return all.filter(
    (row) =>
      deciding.some(({ cells, reader }) => !isBlankFor(reader, cells?.[row])) ||
      beside.some((list) => !standsForAll(list) && Number(list.cells?.[row]) > 0),
  );
}

function readValues(list: RawList, kept: readonly number[]): Argument | "waits" {
  const { parameter, reader, cells } = list;
  const { fallback } = parameter;
  if (cells === undefined && fallback === undefined) return undefined;
  const values: (number | string | boolean | null)[] = [];
  let waits = false;
  for (const row of kept) {
    const value = readItem(reader, standsForAll(list) ? cells?.[0] : cells?.[row], row);
    if (value !== blank) values.push(value);
    else if (fallback !== undefined) values.push(fallback);
    else if (parameter.gaps) values.push(null);
    else if (parameter.blank === "waits") waits = true;
    else throw must(parameter.name, { be: "filled in every row" }, { kind: "blank row", row: row + 1 });
  }
  if (values.length === 0 && !waits && parameter.blank === "is refused" && !parameter.optional) {
    throw must(parameter.name, { do: "hold at least one value" }, { kind: "value", value: null });
  }
  return waits ? "waits" : values;
}

/** Reads one item, with the row in the message: "moistures must be from 0 …; got 76 in place 3 of the list". */
function readItem(reader: CellReader, cell: unknown, row: number): number | string | boolean | typeof blank {
  const value = reader.read(cell);
  if (value instanceof DomainError) throw inPlace(value, row);
  // Errors in cells were found before the first item was read.
  return value as Exclude<typeof value, CellError | DomainError>;
}

import type { Argument, BookCell, BookColumn, Parameter } from "../core/define";
import { must } from "../core/errors";
import { cellReader } from "./read-cell";
import type { ListsReader } from "./read-list";
import { CellError, isBlank } from "./values";

/** A list of a call that is a column of a book, and its place among the arguments. */
interface Column {
  readonly parameter: Parameter;
  readonly place: number;
  /** Older hosts send 0 for a blank cell: where 0 can be no value, it is one. */
  readonly zeroIsBlank: boolean;
}

/**
 * Hands the columns of each book of a call to `values` unread, cut after the last row that is filled in one of them.
 * Rows are passed on as they came, for copying a million cells takes longer than adding them up.
 */
export function booksReader(parameters: readonly Parameter[]): ListsReader {
  const names = new Set(parameters.map(({ book }) => book).filter((book) => book !== undefined));
  const books = [...names].map((name) => columnsOf(name, parameters));

  return (given, values) => {
    let waits = false;
    for (const columns of books) {
      for (const { place } of columns) {
        const argument = given[place];
        if (argument instanceof CellError) return argument;
      }
      const isEmpty = readBook(columns, given, values);
      if (isEmpty && columns.some(({ parameter }) => parameter.blank === "waits")) waits = true;
    }
    return waits ? "waits" : undefined;
  };
}

const columnsOf = (name: string, parameters: readonly Parameter[]): readonly Column[] =>
  parameters.flatMap((parameter, place) =>
    parameter.book === name
      ? [{ parameter, place, zeroIsBlank: parameter.quantity.holds === "number" && cellReader(parameter).low > 0 }]
      : [],
  );

/** Whether the book is empty. */
function readBook(columns: readonly Column[], given: readonly unknown[], values: Argument[]): boolean {
  const lists = columns.map((column) => asColumn(column, given[column.place]));
  const filled = lists.map((list, index) => filledLength(list, (columns[index] as Column).zeroIsBlank));
  const rows = Math.max(...filled);
  const longest = columns[filled.indexOf(rows)] as Column;
  columns.forEach(({ parameter, place }, index) => {
    const list = lists[index] as BookColumn;
    if (parameter.optional && filled[index] === 0) {
      values[place] = undefined;
      return;
    }
    if (list.length < rows) {
      throw must(
        parameter.name,
        { do: { kind: "rows as", argument: longest.parameter.name } },
        { kind: "lengths", one: list.length, other: rows },
      );
    }
    values[place] = list.length === rows ? list : list.slice(0, rows);
  });
  return rows === 0;
}

/** A row, a column or a constant as rows of one cell. */
function asColumn({ parameter: { name } }: Column, given: unknown): BookColumn {
  if (!Array.isArray(given)) return isBlank(given) ? [] : [[given as BookCell]];
  const grid = given as BookColumn;
  const width = grid[0]?.length ?? 0;
  if (width <= 1) return grid;
  if (grid.length > 1)
    throw must(name, { be: "one row or one column" }, { kind: "cells", size: { rows: grid.length, columns: width } });
  return (grid[0] as readonly BookCell[]).map((cell) => [cell]);
}

/** Written out rather than asked of isBlank: a whole column has a million cells. */
function filledLength(list: BookColumn, zeroIsBlank: boolean): number {
  let length = list.length;
  for (; length > 0; length -= 1) {
    const cell = list[length - 1]?.[0];
    const cellIsBlank = cell === null || cell === undefined || cell === "" || (zeroIsBlank && cell === 0);
    if (!cellIsBlank) break;
  }
  return length;
}

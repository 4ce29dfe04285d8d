import { type Argument, type FunctionSpec, headers } from "../core/define";
import { DomainError } from "../core/errors";
import { booksReader } from "./read-book";
import { listsReader } from "./read-list";
import { rowReader } from "./read-row";
import { CellError, refusedCell } from "./values";

type CheckedArguments =
  /** As the calculation is called with them. */
  | { readonly values: readonly Argument[] }
  /** Why the calculation is not asked: an error, or "" where the answer waits for a reading. */
  | { readonly instead: CellError | "" };

/** The arguments of a call as bind() hands them to the calculation at one row and column of the ranges given. */
export function checkedArguments(
  { parameters }: FunctionSpec,
  given: readonly unknown[],
  row = 0,
  column = 0,
): CheckedArguments {
  const read = parameters.filter((parameter) => parameter !== headers);
  const values: Argument[] = read.map(() => undefined);
  try {
    const lists = booksReader(read)(given, values) ?? listsReader(read)(given, values);
    const cells = rowReader(read)(given, row, column, values);
    const hurdle = cells === undefined || cells === "waits" ? (lists ?? cells) : cells;
    if (hurdle === undefined) return { values };
    return { instead: hurdle === "waits" ? "" : asCellError(hurdle) };
  } catch (problem) {
    if (problem instanceof DomainError) return { instead: asCellError(problem) };
    throw problem;
  }
}

const asCellError = (problem: CellError | DomainError): CellError =>
  problem instanceof CellError ? problem : refusedCell(problem);

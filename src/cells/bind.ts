import type { Answer, Argument, FunctionSpec, Parameter } from "../core/define";
import { headers } from "../core/define";
import { DomainError, must } from "../core/errors";
import { blank, type CellReader, cellReader } from "./read-cell";
import { listsReader } from "./read-list";
import { type Shape, shapeOf, shapeOfAll } from "./shape";
import { type CellArgument, CellError, type CellValue, type Grid } from "./values";

/** A function as cells call it. It never throws: a refusal is a CellError in the grid. */
export type CellFunction = (...given: CellArgument[]) => Grid;

/** The single cell that waits for a reading. */
const waiting: Grid = [[""]];

/** Makes a function of the catalogue callable from cells, by the rules of a spreadsheet. */
export function bind(spec: FunctionSpec): CellFunction {
  const evaluate = evaluatorOf(spec);
  // Excel appends an object of its own behind the arguments: no more are taken than the function declares.
  const count = spec.parameters.length;
  return (...given) => {
    try {
      return evaluate(given.length > count ? given.slice(0, count) : given);
    } catch (problem) {
      return [[asCellError(problem)]];
    }
  };
}

function evaluatorOf(spec: FunctionSpec): (given: readonly CellArgument[]) => Grid {
  const call = callOf(spec);
  switch (spec.result.shape) {
    case "cell":
      return (given) => call(given, "element by element", (answer) => [[asCellValue(answer as Answer)]]);
    case "row":
      return (given) => call(given, "row by row", (answer) => [(answer as Answer[]).map(asCellValue)]);
    case "column":
      return (given) => call(given, "once", (answer) => (answer as Answer[]).map((value) => [asCellValue(value)]));
    case "table":
      return (given) => call(given, "once", tableRenderer(spec, given));
  }
}

type Repetition = "element by element" | "row by row" | "once";

/** An error or a wait stands in every cell of its row, so that a spill keeps its width. */
const filled = (row: CellValue[], width: number): CellValue[] =>
  row.length === width ? row : new Array<CellValue>(width).fill(row[0] as CellValue);

/** Reads lists once and cells as often as their ranges ask, and calculates each time. */
function callOf(spec: FunctionSpec) {
  const calculate = spec.calculate as (...values: unknown[]) => Answer | Answer[] | Answer[][];
  const parameters = spec.parameters.filter((parameter) => parameter !== headers);
  const isList = parameters.map((parameter) => parameter.takes === "list");
  const cellParameters = parameters.filter((parameter) => parameter.takes === "cell");
  const readLists = listsReader(parameters.filter((parameter) => parameter.takes === "list"));
  const readCells = cellParameters.map(cellReader);
  const width = spec.result.shape === "row" ? spec.result.columns.length : 1;

  return (
    given: readonly CellArgument[],
    repetition: Repetition,
    render: (answer: Answer | Answer[] | Answer[][]) => Grid,
  ): Grid => {
    const cells: CellArgument[] = [];
    const rawLists: CellArgument[] = [];
    for (const [index, list] of isList.entries()) (list ? rawLists : cells).push(given[index]);
    const shape = repetition === "once" ? single(cellParameters, cells) : shapeOfAll(cellParameters, cells);
    if (repetition === "row by row" && shape.columns > 1) throw notAColumn(cellParameters, cells);

    const lists = readLists(rawLists);
    if (lists instanceof CellError) return [[lists]];

    const answerAt = (row: number, column: number): Grid => {
      const read = readRow(cellParameters, readCells, cells, row, column);
      if (read instanceof CellError) return [[read]];
      if (read === "waits" || lists === "waits") return waiting;
      let nextCell = 0;
      let nextList = 0;
      const values = isList.map((list) => (list ? lists[nextList++] : read[nextCell++]));
      return render(calculate(...values));
    };
    if (shape.rows === 1 && shape.columns === 1) return answerAt(0, 0);

    const safely = (row: number, column: number): Grid => {
      try {
        return answerAt(row, column);
      } catch (problem) {
        return [[asCellError(problem)]];
      }
    };
    return Array.from({ length: shape.rows }, (_, row) => {
      if (repetition === "row by row") return filled(safely(row, 0)[0] as CellValue[], width);
      return Array.from(
        { length: shape.columns },
        (_, column) => (safely(row, column)[0] as CellValue[])[0] as CellValue,
      );
    });
  };
}

/**
 * One row of cell arguments. An error in a cell wins over all; a value out of bounds is thrown; a reading that is
 * missing makes the row wait, whatever setting is still blank beside it.
 */
function readRow(
  parameters: readonly Parameter[],
  readers: readonly CellReader[],
  given: readonly CellArgument[],
  row: number,
  column: number,
): Argument[] | "waits" | CellError {
  const values: Argument[] = [];
  let waits = false;
  let blankSetting: Parameter | undefined;
  for (let index = 0; index < parameters.length; index += 1) {
    const parameter = parameters[index] as Parameter;
    const value = (readers[index] as CellReader)(cellAt(given[index], row, column));
    if (value === blank) {
      if (parameter.optional) values.push(parameter.fallback);
      else if (parameter.blank === "waits") waits = true;
      else blankSetting ??= parameter;
    } else if (value instanceof CellError) return value;
    else values.push(value);
  }
  if (waits) return "waits";
  if (blankSetting !== undefined) {
    throw must(blankSetting.name, `be ${blankSetting.quantity.requirement}`, "got a blank");
  }
  return values;
}

/** The cell of a range that stands for this row and column; one row, one column or one cell serves for all. */
function cellAt(given: CellArgument, row: number, column: number): unknown {
  if (!Array.isArray(given)) return given;
  const cells = (given.length === 1 ? given[0] : given[row]) as readonly unknown[];
  return cells.length === 1 ? cells[0] : cells[column];
}

function single(parameters: readonly Parameter[], given: readonly CellArgument[]): Shape {
  for (let index = 0; index < parameters.length; index += 1) {
    const { rows, columns } = shapeOf(given[index]);
    if (rows !== 1 || columns !== 1) {
      throw must((parameters[index] as Parameter).name, "be one cell", `got ${rows} × ${columns} cells`);
    }
  }
  return { rows: 1, columns: 1 };
}

function notAColumn(parameters: readonly Parameter[], given: readonly CellArgument[]): DomainError {
  const index = given.findIndex((argument) => shapeOf(argument).columns > 1);
  const { rows, columns } = shapeOf(given[index]);
  return must((parameters[index] as Parameter).name, "be one cell or one column", `got ${rows} × ${columns} cells`);
}

function tableRenderer(spec: FunctionSpec, given: readonly CellArgument[]) {
  if (spec.result.shape !== "table") throw new TypeError(`${spec.id} gives no table`);
  const { columns } = spec.result;
  const position = spec.parameters.indexOf(headers);
  const wanted = cellReader(headers)(cellAt(given[position], 0, 0));
  return (answer: Answer | Answer[] | Answer[][]): Grid => {
    if (wanted instanceof CellError) return [[wanted]];
    const rows = (answer as Answer[][]).map((row) => row.map(asCellValue));
    return wanted === false ? rows : [headings(columns, rows[0]?.length ?? columns.length), ...rows];
  };
}

/** The names of the columns; the one that repeats is numbered for as often as the rows are wide. */
function headings(columns: readonly { name: string; repeats?: boolean }[], width: number): string[] {
  return Array.from({ length: width }, (_, index) => {
    const column = columns[Math.min(index, columns.length - 1)];
    if (column === undefined) return "";
    return column.repeats ? `${column.name} ${index - columns.length + 2}` : column.name;
  });
}

/** Hosts turn a value that is no number into 0, which would be a lie: it becomes an error first. */
function asCellValue(answer: Answer): CellValue {
  if (typeof answer === "number") {
    if (Number.isFinite(answer)) return answer === 0 ? 0 : answer;
    return new CellError("#VALUE!", "the numbers are too large or too small to calculate with");
  }
  return typeof answer === "string" ? answer : asCellError(answer);
}

function asCellError(problem: unknown): CellError {
  if (problem instanceof DomainError) return new CellError(problem.code, problem.message);
  return new CellError("#VALUE!", `this answer could not be worked out (${String(problem)})`);
}

import { type Answer, type Argument, type Column, type FunctionSpec, headers, type Parameter } from "../core/define";
import { DomainError, must } from "../core/errors";
import { Phrase } from "../core/phrases";
import type { Being } from "../core/refusals";
import { quickPath } from "./quick-path";
import { booksReader } from "./read-book";
import { cellReader } from "./read-cell";
import { listsReader } from "./read-list";
import { cellAt, type Hurdle, rowReader } from "./read-row";
import { notRows, type Shape, shapeOf, shapeOfAll } from "./shape";
import { type CellArgument, CellError, type CellValue, cellErrorOf, type Grid, refusedCell } from "./values";

/** A function as cells call it. It never throws: a refusal is a CellError in the grid. */
export type CellFunction = (...given: CellArgument[]) => Grid;

/** Makes a function of the catalogue callable from cells, by the rules of a spreadsheet. Cells speak English. */
export const bind = (spec: FunctionSpec): CellFunction => bound(spec, asCellValue) as CellFunction;

/** As cells hold it, but with what the function says in phrases, for whoever speaks another language. */
export type PhraseGrid = (CellValue | Phrase)[][];

/** As bind, for those who do. */
export const bindInPhrases = (spec: FunctionSpec): ((...given: CellArgument[]) => PhraseGrid) =>
  bound(spec, (answer) => (answer instanceof Phrase ? answer : asCellValue(answer)));

/** Makes of an answer what stands in its cell. */
type InCell = (answer: unknown) => CellValue | Phrase;

function bound(spec: FunctionSpec, inCell: InCell): (...given: CellArgument[]) => PhraseGrid {
  // Excel appends an object of its own behind the arguments: only the places of declared parameters are read.
  const answer = answererOf(spec, inCell);
  return (...given) => {
    try {
      return answer(given);
    } catch (problem) {
      return [[asCellValue(problem instanceof DomainError ? problem : (malformed(spec, given) ?? problem))]];
    }
  };
}

/** The refusal of a range that is no rows of cells: looked for in lists only when something broke. */
function malformed({ parameters }: FunctionSpec, given: readonly CellArgument[]): DomainError | undefined {
  const isMalformed = (argument: CellArgument): boolean =>
    Array.isArray(argument) && argument.some((row) => !Array.isArray(row));
  const broken = parameters.find((_, place) => isMalformed(given[place]));
  return broken && notRows(broken);
}

/** Answers a call; may throw a DomainError. */
type Answerer = (given: readonly CellArgument[]) => PhraseGrid;

/** What a calculation gave, or why it was not asked. */
type Calculated = Answer | Answer[] | Answer[][] | Hurdle;

function answererOf(spec: FunctionSpec, inCell: InCell): Answerer {
  const { result } = spec;
  switch (result.shape) {
    case "cell":
      return elementByElement(spec, inCell);
    case "row":
      return rowByRow(spec, result.columns.length, inCell);
    case "column":
      return once(spec, (answer) => (answer as Answer[]).map((value) => [inCell(value)]));
    case "table":
      return table(spec, result.columns, inCell);
  }
}

/** A value for each element of the ranges given. */
function elementByElement(spec: FunctionSpec, inCell: InCell): Answerer {
  const prepare = preparer(spec);
  const quickly = quickPath<CellValue | Phrase>(spec.parameters, spec.calculate);
  return (given) => {
    const { rows, columns } = shapeOfAll(spec.parameters, given);
    let calculateAt: ReturnType<typeof prepare> | undefined;
    const at = (row: number, column: number): CellValue | Phrase => {
      calculateAt ??= prepare(given);
      return inCell(calculateAt(row, column));
    };
    if (columns === 1 && quickly !== undefined) return quickly(given, rows, (row) => at(row, 0));
    return Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (_, column) => at(row, column)));
  };
}

/** A row of values for each row of the columns given. */
function rowByRow(spec: FunctionSpec, width: number, inCell: InCell): Answerer {
  const prepare = preparer(spec);
  return (given) => {
    const { rows, columns } = shapeOfAll(spec.parameters, given);
    if (columns > 1) throw mustBeNarrower(spec.parameters, given, "one cell or one column", isWide);
    const calculateAt = prepare(given);
    return Array.from({ length: rows }, (_, row) => {
      const calculated = calculateAt(row, 0);
      // An error or a wait stands in every cell of its row, so that a spill keeps its width.
      if (!Array.isArray(calculated)) return new Array<CellValue>(width).fill(asCellValue(calculated));
      return calculated.map(inCell);
    });
  };
}

/** One answer of several cells, from single cells and lists. */
function once(spec: FunctionSpec, render: (answer: Answer[] | Answer[][]) => PhraseGrid): Answerer {
  const prepare = preparer(spec);
  const takesCell = spec.parameters.map((parameter) => parameter.takes === "cell");
  return (given) => {
    if (given.some((argument, place) => takesCell[place] && isLarge(shapeOf(argument)))) {
      throw mustBeNarrower(spec.parameters, given, "one cell", isLarge);
    }
    const calculated = prepare(given)(0, 0);
    return Array.isArray(calculated) ? render(calculated) : [[asCellValue(calculated)]];
  };
}

function table(spec: FunctionSpec, columns: readonly Column[], inCell: InCell): Answerer {
  const answerWithout = once(spec, (answer) => (answer as Answer[][]).map((row) => row.map(inCell)));
  const place = spec.parameters.indexOf(headers);
  const { read } = cellReader(headers);
  return (given) => {
    const rows = answerWithout(given);
    const wanted = read(cellAt(given[place], 0, 0));
    if (wanted instanceof CellError || wanted instanceof DomainError) return [[asCellValue(wanted)]];
    const isTable = rows.length > 1 || (rows[0]?.length ?? 0) > 1;
    return wanted === false || !isTable ? rows : [headings(columns, rows[0]?.length ?? 0), ...rows];
  };
}

/** The names of the columns; the one that repeats is numbered for as often as the rows are wide. */
function headings(columns: readonly Column[], width: number): string[] {
  return Array.from({ length: width }, (_, index) => {
    const column = columns[Math.min(index, columns.length - 1)] as Column;
    return column.repeats ? `${column.name} ${index - columns.length + 2}` : column.name;
  });
}

/** Reads the lists of a call once; what it gives then calculates at any row and column of the cells. */
function preparer(spec: FunctionSpec) {
  const calculate = spec.calculate as (...values: Argument[]) => Answer | Answer[] | Answer[][];
  const parameters = spec.parameters.filter((parameter) => parameter !== headers);
  const readRow = rowReader(parameters);
  const readLists = listsReader(parameters);
  const readBooks = booksReader(parameters);

  return (given: readonly CellArgument[]) => {
    const values: Argument[] = parameters.map(() => undefined);
    let listHurdle: Hurdle | undefined;
    try {
      listHurdle = readBooks(given, values) ?? readLists(given, values);
    } catch (problem) {
      listHurdle = asRefusal(problem);
    }
    return (row: number, column: number): Calculated => {
      const cellHurdle = readRow(given, row, column, values);
      const hurdle = cellHurdle === undefined || cellHurdle === "waits" ? (listHurdle ?? cellHurdle) : cellHurdle;
      if (hurdle !== undefined) return hurdle === "waits" ? "" : hurdle;
      try {
        return calculate(...values);
      } catch (problem) {
        return asRefusal(problem);
      }
    };
  };
}

/** A refusal is an answer; anything else that was thrown is a mistake of ours and goes on. */
function asRefusal(problem: unknown): DomainError {
  if (problem instanceof DomainError) return problem;
  throw problem;
}

const isWide = ({ columns }: Shape): boolean => columns > 1;
const isLarge = ({ rows, columns }: Shape): boolean => rows !== 1 || columns !== 1;

function mustBeNarrower(
  parameters: readonly Parameter[],
  given: readonly CellArgument[],
  be: Being,
  isRefused: (shape: Shape) => boolean,
): DomainError {
  const place = given.findIndex(
    (argument, index) => parameters[index]?.takes === "cell" && isRefused(shapeOf(argument)),
  );
  return must((parameters[place] as Parameter).name, { be }, { kind: "cells", size: shapeOf(given[place]) });
}

/** Hosts turn a value that is no number into 0, which would be a lie: it becomes an error first. */
function asCellValue(answer: unknown): CellValue {
  if (typeof answer === "number") {
    if (answer - answer === 0) return answer === 0 ? 0 : answer;
    return cellErrorOf("#VALUE!", "the numbers are too large or too small to calculate with");
  }
  if (typeof answer === "string" || answer instanceof CellError) return answer;
  if (answer instanceof Phrase) return answer.toString();
  if (answer instanceof DomainError) return refusedCell(answer);
  return cellErrorOf("#VALUE!", { kind: "not worked out", problem: String(answer) });
}

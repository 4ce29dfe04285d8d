import type { CellValue, Grid } from "../../src/cells/values";
import type { Given } from "../../src/core/define";
import { typed } from "../../src/core/describe";
import { namespace } from "../../src/core/namespace";
import { addressOf } from "../../src/workbook/addresses";
import type { Cell, Sheet, Workbook } from "../../src/workbook/workbook";
import { bareAnswer, type Call, type CallArgument, type Content, calls, isErrorCell, isRange } from "./calls";

/** How the arguments stand in the formula: typed into it, or in cells that it refers to. */
export type Form = "typed" | "in cells";

/** A call as a formula of the workbook. */
export interface CallInSheet {
  readonly call: Call;
  readonly form: Form;
  readonly sheet: string;
  readonly row: number;
  readonly formula: string;
  /** What the bare binding gives. */
  readonly expected: Grid;
}

/** The errors of the spreadsheet itself, as formulas that give them. */
const formulaOf: Readonly<Record<string, string>> = {
  "#N/A": "NA()",
  "#DIV/0!": "1/0",
  "#NUM!": "SQRT(-1)",
  "#VALUE!": 'VALUE("leaf")',
};

const formulaOfError = (code: string): string => {
  const formula = formulaOf[code];
  if (formula === undefined) throw new Error(`there is no formula that gives ${code}`);
  return formula;
};

const hasErrorInside = (argument: CallArgument): boolean =>
  isRange(argument) && argument.some((row) => row.some(isErrorCell));

/** Typed as a maker would; an array constant holds no error and no blank but "". */
function typedArgument(argument: CallArgument): string {
  return isErrorCell(argument) ? formulaOfError(argument.error) : typed(argument as Given);
}

const formulaWith = (call: Call, written: readonly string[]): string =>
  `=${namespace}.${call.spec.id}(${written.join(",")})`;

/** The arguments of a call beside each other from a row on, in the number format of their quantity. */
function argumentsInCells(call: Call, top: number): { cells: Cell[]; rows: number; references: string[] } {
  const cells: Cell[] = [];
  let left = 0;
  let rows = 0;
  const references = call.given.map((argument, index) => {
    if (argument === null) return "";
    const format = call.spec.parameters[index]?.quantity.format;
    const range = isRange(argument) ? argument : [[argument]];
    range.forEach((contents, down) => {
      contents.forEach((content, right) => {
        const cell = cellWith(content, { row: top + down, column: left + right }, format);
        if (cell) cells.push(cell);
      });
    });
    const first = addressOf(top, left);
    left += range[0]?.length ?? 0;
    rows = Math.max(rows, range.length);
    const last = addressOf(top + range.length - 1, left - 1);
    return `Given!${first === last ? first : `${first}:${last}`}`;
  });
  return { cells, rows, references };
}

/** Every call of the table in both forms, with the answers below each other, one row apart. */
export function callsWorkbook(): { workbook: Workbook; calls: readonly CallInSheet[] } {
  const given: Cell[] = [];
  const placed: CallInSheet[] = [];
  const nextRow = { typed: 0, "in cells": 0, given: 0 };

  const place = (call: Call, form: Form, expected: Grid, written: readonly string[]) => {
    const sheet = form === "typed" ? "Typed" : "In cells";
    placed.push({ call, form, sheet, row: nextRow[form], formula: formulaWith(call, written), expected });
    nextRow[form] += expected.length + 1;
  };

  for (const call of calls) {
    const expected = bareAnswer(call);
    if (!call.given.some(hasErrorInside)) place(call, "typed", expected, call.given.map(typedArgument));

    const inCells = argumentsInCells(call, nextRow.given);
    given.push(...inCells.cells);
    nextRow.given += inCells.rows;
    place(call, "in cells", expected, inCells.references);
  }

  const formulas = (wanted: Form): Cell[] =>
    placed
      .filter(({ form }) => form === wanted)
      .map(({ row, formula, expected }) => ({
        row,
        column: 0,
        formula,
        spill: { rows: expected.length, columns: expected[0]?.length ?? 1 },
      }));
  const sheetOf = (name: string, cells: Cell[]): Sheet => ({
    name,
    cells,
    columnWidths: {},
    rowHeights: {},
    merges: [],
  });
  const sheets = [
    sheetOf("Given", given),
    sheetOf("Typed", formulas("typed")),
    sheetOf("In cells", formulas("in cells")),
  ];
  return { workbook: { name: "Calls", sheets }, calls: placed };
}

function cellWith(
  content: Content,
  place: { row: number; column: number },
  format: string | undefined,
): Cell | undefined {
  if (content === null || content === "") return undefined;
  if (isErrorCell(content)) return { ...place, formula: `=${formulaOfError(content.error)}` };
  return { ...place, value: content, ...(typeof content === "number" && format && { style: { format } }) };
}

/** The answer of a call where it stands; a blank cell as the empty text that a cell function gives for it. */
export function answerIn(
  { row, expected }: CallInSheet,
  valueAt: (row: number, column: number) => CellValue | undefined,
): Grid {
  return expected.map((values, down) => values.map((_, right) => valueAt(row + down, right) ?? ""));
}

/**
 * A spreadsheet engine that is not ours, in another language than ours (Rust), which knows LAMBDA in names: it works out
 * calls of the named formulas, given as the table of calls of all hosts has them.
 */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { initSync, Model } from "@ironcalc/wasm";
import { CellError, type CellValue, type Grid } from "../../src/cells/values";
import { plainName } from "../../src/core/describe";
import { neededFor } from "../../src/named-formulas/named-formulas";
import { literal } from "../../src/named-formulas/words";
import { addressOf } from "../../src/workbook/addresses";
import { tablesIn, withAddresses } from "../../src/workbook/table-references";
import { type Cell, isErrorCode, type Workbook } from "../../src/workbook/workbook";
import { type Call, type CallArgument, type Content, isErrorCell, isRange } from "../hosts/calls";

const path = createRequire(import.meta.url).resolve("@ironcalc/wasm/wasm_bg.wasm");
initSync({ module: readFileSync(path) });

/** A call with the size of the answer that is expected. */
export interface SizedCall extends Pick<Call, "spec" | "given"> {
  readonly rows: number;
  readonly columns: number;
}

const [answers, data, digits] = [0, 1, 2];

/** What each call gives, one row and one column larger than expected where something stands there. */
export function answersOf(calls: readonly SizedCall[]): Grid[] {
  const model = new Model("book", "en", "UTC", "en");
  model.pauseEvaluation();
  model.newSheet();
  model.newSheet();
  for (const { name, formula } of neededFor(new Set(calls.map(({ spec }) => plainName(spec.id))))) {
    model.newDefinedName(name, null, withBrackets(formula));
  }
  let nextRow = 1;
  let nextColumn = 1;
  const places = calls.map(({ spec, given, rows, columns }) => {
    const place = { row: nextRow, rows: rows + 1, columns: columns + 1 };
    nextRow += rows + 2;
    const written = given.map((argument) => {
      if (!isRange(argument)) return constant(argument);
      const start = nextColumn;
      nextColumn += (argument[0]?.length ?? 0) + 1;
      if (nextColumn > 16_000) throw new Error("too many calls for one sheet");
      return asWritten(model, argument, start);
    });
    while (written.at(-1) === "" && spec.parameters[written.length - 1]?.optional) written.pop();
    model.setUserInput(answers, place.row, 1, `=${plainName(spec.id)}(${written.join(",")})`);
    for (let row = 0; row < place.rows; row += 1) {
      for (let column = 0; column < place.columns; column += 1) {
        const at = addressOf(place.row + row - 1, column);
        model.setUserInput(digits, place.row + row, column + 1, `=IF(ISNUMBER(Sheet1!${at}),Sheet1!${at}&"","")`);
      }
    }
    return place;
  });
  model.resumeEvaluation();
  model.evaluate();
  const grids = places.map(({ row, rows, columns }) =>
    Array.from({ length: rows }, (_, down) =>
      Array.from({ length: columns }, (_, along) => valueAt(model, row + down, along + 1)),
    ),
  );
  model.free();
  return grids;
}

/** As the engine's own cells write a parameter that may be left out. */
const withBrackets = (formula: string): string => formula.replace(/_xlop\.(\w+)/g, "[$1]");

function asWritten(model: Model, range: readonly (readonly Content[])[], start: number): string {
  range.forEach((row, down) => {
    row.forEach((content, along) => {
      if (content === null) return;
      // Text would be read as what it looks like.
      const input = typeof content === "number" ? String(content) : `=${constant(content)}`;
      model.setUserInput(data, down + 1, start + along, input);
    });
  });
  const [top, bottom] = [addressOf(0, start - 1), addressOf(range.length - 1, start + (range[0]?.length ?? 1) - 2)];
  return top === bottom ? `Sheet2!${top}` : `Sheet2!${top}:${bottom}`;
}

function constant(content: CallArgument): string {
  if (content === null) return "";
  if (isErrorCell(content)) return content.error;
  return literal(content as number | string | boolean);
}

const [number, text, boolean, error] = [1, 2, 4, 16];

function valueAt(model: Model, row: number, column: number): CellValue {
  const shown = model.getFormattedCellValue(answers, row, column);
  switch (model.getCellType(answers, row, column)) {
    case number:
      return shown === "" ? "" : Number(model.getFormattedCellValue(digits, row, column));
    case text:
      return shown;
    case boolean:
      return shown === "TRUE";
    case error:
      return new CellError(shown);
    default:
      throw new Error(`the engine says a type of its own of ${shown}`);
  }
}

/**
 * A whole book in the engine: the cells that call a named formula and come to something else than the book has. Cells that
 * call what the engine has not hold the value that came with them.
 */
export function answersInBook({ sheets, names = [] }: Workbook): string[] {
  const model = new Model("book", "en", "UTC", "en");
  model.pauseEvaluation();
  model.renameSheet(0, sheets[0]?.name ?? "");
  sheets.slice(1).forEach(({ name }, index) => {
    model.newSheet();
    model.renameSheet(index + 1, name);
  });
  const own = new Set(names.map(({ name }) => name.toUpperCase()));
  for (const { name, formula, sheet } of names) {
    if (sheet === undefined) model.newDefinedName(name, null, withBrackets(formula));
  }
  const tables = tablesIn(sheets);
  const looked: { sheet: number; cell: Cell }[] = [];
  // The engine knows ROWS of references alone.
  const isCalling = (formula: string | undefined): boolean =>
    formula !== undefined &&
    !/\bROWS\(TEA_/.test(formula) &&
    [...own].some((name) => name.startsWith("TEA_") && formula.includes(`${name}(`));
  sheets.forEach(({ name, cells }, sheet) => {
    const filled = new Set(
      cells.flatMap(({ row, column, formula, spill }) =>
        spill && isCalling(formula)
          ? Array.from({ length: spill.rows * spill.columns }, (_, place) =>
              addressOf(row + Math.floor(place / spill.columns), column + (place % spill.columns)),
            )
          : [],
      ),
    );
    for (const cell of cells) {
      const { row, column, formula, value } = cell;
      const written = formula && withAddresses(formula, { sheet: name, row }, tables);
      const isOurs = written !== undefined && isCalling(written);
      if (isOurs) looked.push({ sheet, cell });
      if (!isOurs && filled.has(addressOf(row, column))) continue;
      const input = isOurs ? written : inputOf(value);
      if (input !== undefined) model.setUserInput(sheet, row + 1, column + 1, input);
    }
  });
  model.resumeEvaluation();
  model.evaluate();
  const found = looked.flatMap(({ sheet, cell }) => {
    const { row, column, value = "" } = cell;
    const shown = model.getFormattedCellValue(sheet, row + 1, column + 1);
    const isNumber = typeof value === "number" && shown !== "";
    // Nine digits are shown.
    const isSame = isNumber ? Math.abs(Number(shown) - value) <= 1e-8 * Math.abs(value) : shown === inWords(value);
    return isSame ? [] : [`${sheets[sheet]?.name}!${addressOf(row, column)} ${cell.formula}: ${value}, got ${shown}`];
  });
  model.free();
  return found;
}

function inputOf(value: Cell["value"]): string | undefined {
  if (value === undefined) return undefined;
  if (typeof value === "number") return String(value);
  return isErrorCode(value) ? `=${value}` : `=${literal(value)}`;
}

const inWords = (value: Cell["value"]): string =>
  typeof value === "boolean" ? String(value).toUpperCase() : String(value ?? "");

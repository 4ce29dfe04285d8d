import { bind } from "../cells/bind";
import { calledNames, hasDecimalCommas, plainCall, worksheetFormula } from "../cells/formula-text";
import { nearestNames } from "../cells/nearest-names";
import { CellError, type CellValue, type Grid } from "../cells/values";
import { wrongCount } from "../cells/wrong-count";
import { catalogue } from "../core/catalogue";
import { namespace } from "../core/namespace";
import type { NodeWorkbook } from "../engine/node-workbook";
import { cellIn } from "./cell-address";

const specs = new Map(catalogue.map(({ spec }) => [`${namespace}.${spec.id}`, spec]));

/** Answers formulas one after the other. */
export class Calculator {
  #book: NodeWorkbook | undefined;

  /** Whatever was typed gets an answer: one that cannot be read, too. */
  async answer(typed: string): Promise<Grid> {
    try {
      const grid = await this.#answerFormula(worksheetFormula(typed));
      return hasDecimalCommas(typed) ? grid.map((row) => row.map(withCommaHint)) : grid;
    } catch (problem) {
      return [[new CellError("#VALUE!", (problem as Error).message)]];
    }
  }

  async #answerFormula(formula: string): Promise<Grid> {
    const unknown = calledNames(formula).find((name) => name.startsWith(`${namespace}.`) && !specs.has(name));
    if (unknown !== undefined) return [[unknownFunction(unknown)]];
    const plain = answerOfPlainCall(formula);
    if (plain !== undefined) return plain;
    const cell = cellIn(formula);
    if (cell !== undefined)
      throw new Error(`a value must stand in the place of a cell, no workbook is open; got ${cell}`);
    return this.#worksheetAnswer(formula);
  }

  close(): void {
    this.#book?.close();
    this.#book = undefined;
  }

  /** The engine takes some seconds to start: it is asked only for what needs a worksheet. */
  async #worksheetAnswer(formula: string): Promise<Grid> {
    const { openInNode } = await import("../engine/node-workbook");
    this.#book ??= openInNode(emptyBook);
    const book = this.#book;
    book.set(sheetName, "A1", formula);
    await book.calculate();
    const { rows, columns } = sizeOf(book);
    const { addressOf } = await import("../workbook/addresses");
    const grid = Array.from({ length: rows }, (_, row) =>
      Array.from({ length: columns }, (_, column) => book.value(sheetName, addressOf(row, column)) ?? ""),
    );
    return grid.map((row) => row.map((value) => explained(value, formula)));
  }
}

/** A function of constants needs no worksheet, and most questions are such. */
function answerOfPlainCall(formula: string): Grid | undefined {
  const call = plainCall(formula);
  const spec = call && specs.get(call.name);
  if (!call || !spec) return undefined;
  const refusal = wrongCount(spec, call.given.length);
  return refusal ? [[refusal]] : bind(spec)(...call.given);
}

/** An answer that has no room leaves the size that it asked for, and its cells blank. */
function sizeOf(book: NodeWorkbook): { rows: number; columns: number } {
  const first = book.value(sheetName, "A1");
  return first instanceof CellError && first.code === "#SPILL!" ? { rows: 1, columns: 1 } : book.size(sheetName, "A1");
}

/** Decimal commas make two arguments of a number: too many, then. */
function withCommaHint(value: CellValue): CellValue {
  if (!(value instanceof CellError) || !hasTooManyArguments(value)) return value;
  const hint = "a comma separates arguments: write decimals with a point, and thousands without a separator";
  return new CellError(value.code, `${value.message}; ${hint}, or put semicolons between arguments: (320; 0,75; 0,6)`);
}

function hasTooManyArguments({ reason }: CellError): boolean {
  if (typeof reason !== "object" || !("must" in reason) || !("do" in reason.must)) return false;
  const { do: asked } = reason.must;
  return typeof asked === "object" && asked.kind === "few arguments";
}

const sheetName = "Sheet";

/** With room for the longest answers. */
const emptyBook = {
  name: "Calculator",
  sheets: [
    {
      name: sheetName,
      cells: [{ row: 0, column: 0, formula: "=0", spill: { rows: 1000, columns: 50 } }],
      columnWidths: {},
      rowHeights: {},
      merges: [],
    },
  ],
};

function unknownFunction(name: string): CellError {
  const ids = catalogue.map(({ spec }) => spec.id);
  const nearest = nearestNames(name.replace(`${namespace}.`, ""), ids).map((id) => `${namespace}.${id}`);
  const hint = nearest.length > 0 ? `did you mean ${nearest.join(" or ")}?` : "type help for the list";
  return new CellError("#NAME?", `there is no function ${name}; ${hint}`);
}

/** The engine's own errors come without words. */
const errorWords: Readonly<Record<string, string>> = {
  "#VALUE!": "a value of the wrong kind, or a formula that cannot be read",
  "#DIV/0!": "a division by zero",
  "#NUM!": "a number out of the range of its function",
  "#N/A": "no answer, or the wrong number of arguments",
  "#REF!": "a reference to a cell that does not exist",
  "#CYCLE!": "a formula that refers to itself",
  "#SPILL!": "an answer too large for the sheet",
};

function explained(value: CellValue, formula: string): CellValue {
  if (!(value instanceof CellError) || value.message !== "") return value;
  if (value.code !== "#NAME?") return new CellError(value.code, errorWords[value.code] ?? "an error of the worksheet");
  const ours = calledNames(formula).find((name) => nearestOurs(name) !== undefined);
  return ours === undefined
    ? new CellError("#NAME?", "a name in the formula is not known")
    : new CellError("#NAME?", `a name in the formula is not known; did you mean ${nearestOurs(ours)}?`);
}

/** One of our functions, typed without its namespace. */
const nearestOurs = (name: string): string | undefined =>
  name.startsWith(`${namespace}.`) || !specs.has(`${namespace}.${name}`) ? undefined : `${namespace}.${name}`;

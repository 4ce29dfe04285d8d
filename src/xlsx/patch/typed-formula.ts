/** A formula that was typed, as a file takes it. What would make the file unreadable for a spreadsheet is refused. */

import { addressOf } from "../../workbook/addresses";
import { parse, parseStructRef, stringifyStructRef, type Token, tokenize } from "../../workbook/formula";
import { toFileFormula } from "../../workbook/formula-names";
import { partsOf, sheetInFormula } from "../../workbook/references";
import { type TableColumns, withAddresses } from "../../workbook/table-references";
import { longestFormula } from "../read/limits";
import { Refusal } from "../refusal";
import type { FormulaProblem } from "../refusals";

interface FormulaPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

interface FormulaSurroundings {
  /** In capitals. */
  readonly sheets: ReadonlySet<string>;
  readonly tables: readonly TableColumns[];
}

/** `=[@fresh]*2` becomes `=Lots[[#This Row],[fresh]]*2`. */
export function typedFormula(formula: string, place: FormulaPlace, { sheets, tables }: FormulaSurroundings): string {
  const at = `${sheetInFormula(place.sheet)}!${addressOf(place.row, place.column)}`;
  const refuse = (problem: FormulaProblem) => new Refusal({ kind: "formula", place: at, problem });
  const tokens: readonly Token[] = tokenize(formula, { withLocation: false });
  if (!isWhole(tokens)) throw refuse("not whole");
  const written = tokens.map(({ type, value }) => {
    if (value === "@" || (value === "#" && type === "operator")) {
      throw refuse({ kind: "sign", sign: value });
    }
    if (type.startsWith("range") || type === "context") {
      const { sheet } = partsOf(value);
      if (sheet?.includes("[")) throw refuse("another workbook");
      for (const name of sheet?.split(":") ?? []) {
        if (!sheets.has(name.toUpperCase())) throw refuse({ kind: "sheet", name });
      }
    }
    if (type !== "structured") return value;
    const whole = withTable(value, place, tables);
    if (whole === undefined || withAddresses(whole, place, tables) === undefined) {
      throw refuse({ kind: "table", reference: value });
    }
    return whole;
  });
  const result = written.join("");
  if (toFileFormula(result).length > longestFormula + 1) throw refuse("too long");
  return result;
}

function isWhole(tokens: readonly Token[]): boolean {
  try {
    parse([...tokens]);
    return true;
  } catch {
    return false;
  }
}

/** Inside a table a formula may leave its name out, and write `@` for its own row: a file has both in full. */
function withTable(reference: string, place: FormulaPlace, tables: readonly TableColumns[]): string | undefined {
  const parsed = parseStructRef(reference);
  if (!parsed) return undefined;
  const table = parsed.table || tableAround(place, tables);
  return table === undefined ? undefined : stringifyStructRef({ ...parsed, table }, { thisRow: true });
}

const tableAround = ({ sheet, row, column }: FormulaPlace, tables: readonly TableColumns[]): string | undefined =>
  tables.find(
    ({ sheet: its, area }) =>
      its === sheet &&
      row >= area.row &&
      row < area.row + area.rows &&
      column >= area.column &&
      column < area.column + area.columns,
  )?.name;

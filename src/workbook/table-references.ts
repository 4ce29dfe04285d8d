/** References to the columns of tables, `Lots[fresh]` and `Lots[[#This Row],[fresh]]`, and the cells they stand for. */
import { addressOf } from "./addresses";
import { formulaPieces } from "./formula";
import { sheetInFormula } from "./references";
import type { Area, Sheet } from "./workbook";

export interface TableColumns {
  readonly name: string;
  readonly sheet: string;
  readonly area: Area;
  readonly headings: readonly string[];
  /** Whether a row of totals follows the area. */
  readonly hasTotals?: boolean;
}

/** The tables of a workbook, with the headings that stand in their cells. */
export const tablesIn = (sheets: readonly Sheet[]): TableColumns[] =>
  sheets.flatMap(({ name: sheet, cells, tables = [] }) =>
    tables.map(({ name, area, hasTotals }) => {
      const headings = Array.from({ length: area.columns }, () => "");
      for (const { row, column, value } of cells) {
        const index = column - area.column;
        if (row === area.row && index >= 0 && index < area.columns) headings[index] = String(value ?? "");
      }
      return { name, sheet, area, headings, ...(hasTotals && { hasTotals }) };
    }),
  );

/** The tables that a formula names, as it writes them. */
export function tableNamesIn(formula: string): string[] {
  if (!formula.includes("[")) return [];
  const pieces = formulaPieces(formula);
  return pieces.flatMap(({ kind, text }, index) =>
    kind === "name" && pieces[index + 1]?.text.startsWith("[") ? [text] : [],
  );
}

/**
 * The formula with addresses instead of table references. undefined where one cannot be followed: its table or its
 * column is not there, or it asks for the row of a cell that is not beside the table.
 */
export function withAddresses(
  formula: string,
  at: { readonly sheet?: string; readonly row?: number },
  tables: readonly TableColumns[],
): string | undefined {
  if (!formula.includes("[")) return formula;
  const pieces = formulaPieces(formula);
  let written = "";
  for (const [index, { kind, text }] of pieces.entries()) {
    const next = pieces[index + 1]?.text ?? "";
    const isTable = kind === "name" && next.startsWith("[");
    if (isTable) {
      const table = tables.find(({ name }) => name.toUpperCase() === text.toUpperCase());
      const area = table && areaOf(table, next, at.row);
      if (!area) return undefined;
      written += (table.sheet === at.sheet ? "" : `${sheetInFormula(table.sheet)}!`) + area;
    } else if (!text.startsWith("[") || isOtherWorkbook(text)) written += text;
    else if (pieces[index - 1]?.kind !== "name") return undefined;
  }
  return written;
}

/** `[1]Book!A1` names another workbook by its number. */
const isOtherWorkbook = (text: string): boolean => /^\[\d+\]/.test(text);

function areaOf({ area, headings, hasTotals }: TableColumns, inBrackets: string, row?: number): string | undefined {
  const asked = askedFor(inBrackets);
  if (!asked) return undefined;
  const rows = rowsOf(area, asked.parts, hasTotals === true, row);
  const placeOf = (name: string) => headings.findIndex((heading) => heading.toUpperCase() === name.toUpperCase());
  const columns = asked.columns.length > 0 ? asked.columns.map(placeOf) : [0, area.columns - 1];
  if (!rows || columns.includes(-1)) return undefined;
  const [left, right] = [area.column + Math.min(...columns), area.column + Math.max(...columns)];
  // The row of the formula's own cell goes along when the formula is copied.
  const corner = (atRow: number, column: number) =>
    addressOf(atRow, column).replace(/^([A-Z]+)/, asked.parts.includes("#THIS ROW") ? "$$$1" : "$$$1$$");
  const [first, last] = [corner(rows[0], left), corner(rows[1], right)];
  return first === last ? first : `${first}:${last}`;
}

/** What stands in the brackets: parts of the table such as `#HEADERS`, and the first and last column. */
function askedFor(inBrackets: string): { parts: string[]; columns: string[] } | undefined {
  let inner = inBrackets.slice(1, -1).trim();
  const parts: string[] = [];
  const columns: string[] = [];
  if (inner.startsWith("@")) {
    parts.push("#THIS ROW");
    inner = inner.slice(1);
  }
  if (inner === "") return { parts, columns };
  const items = inner.startsWith("[")
    ? [...inner.matchAll(/\[((?:'.|[^'[\]])*)\]/g)].map(([, item = ""]) => item)
    : [inner];
  for (const item of items) {
    if (item.startsWith("#")) parts.push(item.toUpperCase());
    else columns.push(item.replace(/'(.)/g, "$1"));
  }
  return columns.length > 2 ? undefined : { parts, columns };
}

/** The first and the last row. */
function rowsOf(area: Area, parts: readonly string[], hasTotals: boolean, row?: number): [number, number] | undefined {
  const end = area.row + area.rows - 1;
  const rows: number[] = [];
  for (const part of parts.length > 0 ? parts : ["#DATA"]) {
    if (part === "#DATA") rows.push(area.row + 1, end);
    else if (part === "#HEADERS") rows.push(area.row);
    else if (part === "#ALL") rows.push(area.row, end + (hasTotals ? 1 : 0));
    else if (part === "#TOTALS" && hasTotals) rows.push(end + 1);
    else if (part === "#THIS ROW" && row !== undefined && row > area.row && row <= end) rows.push(row);
    else return undefined;
  }
  return [Math.min(...rows), Math.max(...rows)];
}

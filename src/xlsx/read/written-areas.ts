import { addressOf } from "../../workbook/addresses";
import { sheetInFormula } from "../../workbook/references";
import { sheetColumns, sheetRows } from "../../workbook/sheet-size";
import type { Area } from "../../workbook/workbook";

/** `Lots!B2:B90`, `Lots!D:D`. */
export const writtenAreas = (sheets: readonly { readonly name: string; readonly areas: readonly Area[] }[]): string[] =>
  sheets.flatMap(({ name, areas }) => areas.map((area) => `${sheetInFormula(name)}!${written(area)}`));

function written({ row, column, rows, columns }: Area): string {
  const [first, last] = [addressOf(row, column), addressOf(row + rows - 1, column + columns - 1)];
  if (rows === sheetRows && columns < sheetColumns) return `${first.replace(/\d+$/, "")}:${last.replace(/\d+$/, "")}`;
  return first === last ? first : `${first}:${last}`;
}

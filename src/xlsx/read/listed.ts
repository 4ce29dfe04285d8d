import { addressOf } from "../../workbook/addresses";
import { sheetInFormula } from "../../workbook/references";
import type { Area } from "../../workbook/workbook";
import { sheetColumns, sheetRows } from "./limits";

/** The first few of what was found, and how many more there are. */
export function listed(found: readonly string[], most = 3): string {
  const more = found.length > most ? ` and ${(found.length - most).toLocaleString("en")} more` : "";
  return `${found.slice(0, most).join(" and ")}${more}`;
}

/** `Lots!B2:B90 and Lots!D:D and 3 more`. */
export const listedAreas = (sheets: readonly { readonly name: string; readonly areas: readonly Area[] }[]): string =>
  listed(sheets.flatMap(({ name, areas }) => areas.map((area) => `${sheetInFormula(name)}!${written(area)}`)));

function written({ row, column, rows, columns }: Area): string {
  const [first, last] = [addressOf(row, column), addressOf(row + rows - 1, column + columns - 1)];
  if (rows === sheetRows && columns < sheetColumns) return `${first.replace(/\d+$/, "")}:${last.replace(/\d+$/, "")}`;
  return first === last ? first : `${first}:${last}`;
}

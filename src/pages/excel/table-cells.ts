/// <reference types="office-js" />

import type { CellPlace } from "../../host/workbook-host";
import { parseStructRef } from "../../workbook/formula";

/** Only beside the formula itself does this mean anything: a part of the table that it stands in, or of its row. */
export function isOwnPart(text: string): boolean {
  const part = parseStructRef(text);
  return part !== undefined && (part.table === "" || part.sections?.includes("this row") === true);
}

/**
 * The cells that a formula at a place means by a table or a part of one: `lots`, `lots[kg]`, `[@kg]`. undefined where
 * there is no such table, column or row.
 */
export async function tableCells(
  context: Excel.RequestContext,
  text: string,
  beside: CellPlace,
): Promise<Excel.Range | undefined> {
  const { table: name = "", columns = [], sections = [] } = parseStructRef(text) ?? { table: text };
  const table = name === "" ? await tableAround(context, beside) : await tableNamed(context, name);
  if (table === undefined) return undefined;
  const whole = table.getRange();
  whole.load("rowIndex,columnIndex,rowCount,columnCount,worksheet/name");
  table.load("showHeaders,showTotals");
  table.columns.load("items/name");
  await context.sync();

  const rows = rowsOf(table, whole, sections, beside);
  const names = table.columns.items.map((column) => column.name.toLowerCase());
  const places =
    columns.length === 0 ? [0, names.length - 1] : columns.map((each) => names.indexOf(each.toLowerCase()));
  const [left, right] = [Math.min(...places), Math.max(...places)];
  if (rows === undefined || left < 0) return undefined;
  return whole.worksheet.getRangeByIndexes(rows.first, whole.columnIndex + left, rows.count, right - left + 1);
}

async function tableNamed(context: Excel.RequestContext, name: string): Promise<Excel.Table | undefined> {
  const table = context.workbook.tables.getItemOrNullObject(name);
  table.load("name");
  await context.sync();
  return table.isNullObject ? undefined : table;
}

async function tableAround(context: Excel.RequestContext, { sheet, row, column }: CellPlace) {
  const { tables } = context.workbook.worksheets.getItem(sheet);
  tables.load("items/name");
  await context.sync();
  const ranges = tables.items.map((table) => table.getRange());
  for (const range of ranges) range.load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  const isIn = ({ rowIndex, columnIndex, rowCount, columnCount }: Excel.Range): boolean =>
    row >= rowIndex && row < rowIndex + rowCount && column >= columnIndex && column < columnIndex + columnCount;
  return tables.items[ranges.findIndex(isIn)];
}

/** Without a section the rows between the headings and the totals are meant. */
function rowsOf(
  { showHeaders, showTotals }: Excel.Table,
  { rowIndex, rowCount, worksheet }: Excel.Range,
  sections: readonly string[],
  { sheet, row }: CellPlace,
): { first: number; count: number } | undefined {
  const end = rowIndex + rowCount;
  const body = { first: rowIndex + (showHeaders ? 1 : 0), end: end - (showTotals ? 1 : 0) };
  if (sections.includes("this row")) {
    const isInside = sheet === worksheet.name && row >= body.first && row < body.end;
    return isInside ? { first: row, count: 1 } : undefined;
  }
  const wants = (section: string) => sections.includes("all") || sections.includes(section);
  const wantsBody = sections.length === 0 || wants("data");
  const first = wants("headers") ? rowIndex : wantsBody ? body.first : body.end;
  const last = wants("totals") ? end : wantsBody ? body.end : body.first;
  return last > first ? { first, count: last - first } : undefined;
}

import type { Grid } from "./grid";

/** Shows a cell with something above and before it, and selects it. False when its sheet is gone. */
export function goToCell({ api }: Grid, sheetId: string, row: number, column: number): boolean {
  const book = api.getActiveWorkbook();
  const sheet = book?.getSheetBySheetId(sheetId);
  if (!book || !sheet) return false;
  if (book.getActiveSheet().getSheetId() !== sheetId) book.setActiveSheet(sheet);
  sheet.getRange(row, column).activate();
  sheet.scrollToCell(Math.max(0, row - 3), Math.max(0, column - 2));
  return true;
}

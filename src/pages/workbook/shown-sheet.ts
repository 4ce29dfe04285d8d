import type { Grid } from "./grid";

/** Shows the sheet that this tab last showed of the workbook, and remembers from now on which one is shown. */
export function keepShownSheet(key: string, { api }: Grid): void {
  const book = api.getActiveWorkbook();
  if (!book) return;
  const place = `shown sheet of ${key}`;
  const name = read(place);
  const sheet = name === null ? undefined : book.getSheetByName(name);
  if (sheet && sheet.getSheetId() !== book.getActiveSheet().getSheetId()) book.setActiveSheet(sheet);
  api.addEvent(api.Event.ActiveSheetChanged, () => write(place, book.getActiveSheet().getSheetName()));
}

function read(place: string): string | null {
  try {
    return sessionStorage.getItem(place);
  } catch {
    // The browser forbids storage: the first sheet is shown.
    return null;
  }
}

function write(place: string, sheet: string): void {
  try {
    sessionStorage.setItem(place, sheet);
  } catch {
    // As above.
  }
}

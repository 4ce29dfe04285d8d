import type * as Library from "wasm-xlsxwriter";
import type { Area, Sheet, Table } from "../workbook/workbook";
import type { SpreadsheetWriter } from "./spreadsheet-writer";

/**
 * A table as the file has it. Where its cells have changed so that they are no table any more, it is left out and the
 * cells stay: a file with a table that its cells contradict is refused or repaired when it is opened.
 */
export function writeTable(writer: SpreadsheetWriter, target: Library.Worksheet, sheet: Sheet, table: Table): void {
  const { row, column, rows, columns } = table.area;
  const headings = headingsOf(sheet, table.area);
  if (headings === undefined || !canBeWritten(sheet, table)) return;
  const written = new writer.Table()
    .setName(table.name)
    .setStyle(writer.TableStyle.Light1)
    .setColumns(headings.map((heading) => new writer.TableColumn().setHeader(heading)));
  target.addTable(row, column, row + rows - 1, column + columns - 1, written);
}

export const canBeWritten = (sheet: Sheet, { area }: Table): boolean =>
  area.rows >= 2 && headingsOf(sheet, area) !== undefined && !spillsInto(sheet, area);

/** The texts in the first row; undefined where a cell holds none, or the same as another. */
function headingsOf({ cells }: Sheet, area: Area): string[] | undefined {
  const headings: string[] = [];
  for (let column = area.column; column < area.column + area.columns; column += 1) {
    const cell = cells.find((each) => each.row === area.row && each.column === column);
    if (typeof cell?.value !== "string" || cell.value === "" || cell.formula !== undefined) return undefined;
    headings.push(cell.value);
  }
  const different = new Set(headings.map((heading) => heading.toLowerCase()));
  return different.size === headings.length ? headings : undefined;
}

const spillsInto = ({ cells }: Sheet, area: Area): boolean =>
  cells.some(
    ({ row, column, spill }) =>
      spill !== undefined &&
      row < area.row + area.rows &&
      row + spill.rows > area.row &&
      column < area.column + area.columns &&
      column + spill.columns > area.column,
  );

import { clock, timeSpan } from "../core/quantities";
import { shownDay, shownTime } from "../core/shown";
import type { Cell, Sheet, Workbook } from "../workbook/workbook";

/**
 * What a workbook shows, as rows with tabs between the cells: pasted into any spreadsheet they stand in cells of their
 * own. Answers come as they are now, without their formulas, which need the add-in.
 */
export const rowsToPaste = (workbook: Workbook, decimalSign: "," | "."): string =>
  workbook.sheets.map((sheet) => rowsOf(sheet, decimalSign).join("\n")).join("\n\n");

function rowsOf({ cells }: Sheet, decimalSign: "," | "."): string[] {
  const rows: string[][] = [];
  for (const cell of cells) {
    const row = rows[cell.row] ?? [];
    row[cell.column] = shownCell(cell, decimalSign);
    rows[cell.row] = row;
  }
  return Array.from(rows, (row) =>
    Array.from(row ?? [], (text) => text ?? "")
      .join("\t")
      .trimEnd(),
  );
}

function shownCell({ value, style }: Cell, decimalSign: "," | "."): string {
  if (typeof value !== "number") return onOneLine(String(value ?? ""));
  const { format = "General" } = style ?? {};
  if (format === "yyyy-mm-dd hh:mm") return `${shownDay(value)} ${shownTime(value % 1, clock)}`;
  if (format === "hh:mm") return shownTime(value % 1, clock);
  if (format === "[h]:mm") return shownTime(value, timeSpan);
  const [, places, percent] = /^0(?:\.(0+))?(%?)$/.exec(format) ?? [];
  if (percent === undefined) return String(Number(value.toPrecision(10))).replace(".", decimalSign);
  const number = (percent === "%" ? value * 100 : value).toFixed(places?.length ?? 0);
  return `${number.replace(".", decimalSign)}${percent}`;
}

/** A line break or a tab in a name would begin another cell; an equals sign in front, a formula. */
const onOneLine = (text: string): string => {
  const line = text.replaceAll(/[\t\r\n]+/g, " ");
  return /^[=+@]|^-(?![\d.,]+$)/.test(line) ? `'${line}` : line;
};

/** The lots as comma-separated values (RFC 4180), for other programs: numbers in full, with points, days as 2024-04-05. The
 * headings are the same in every language: programs go by them. */
import { shownDay } from "../../core/shown";
import type { Season } from "./season";

/** Without this mark in front, spreadsheet programs take the letters for those of another alphabet. */
const utf8Mark = "\uFEFF";

export function csvOf({ lots, unit }: Season): string {
  const heading = [
    "file",
    "sheet",
    "row",
    "lot",
    "date",
    "plot",
    ...["fresh", "finished"].map((weight) => (unit === undefined ? weight : `${weight} ${unit}`)),
    "outturn",
  ];
  const rows = lots.map(({ file, sheet, row, lot, date, plot, fresh, finished }) => [
    file,
    sheet,
    row,
    lot,
    typeof date === "number" ? shownDay(date) : date,
    plot,
    fresh,
    finished ?? "",
    finished === undefined ? "" : finished / fresh,
  ]);
  return utf8Mark + [heading, ...rows].map((row) => `${row.map(field).join(",")}\r\n`).join("");
}

/** A text that a spreadsheet program would work out, or run, gets an apostrophe in front. */
function field(value: string | number): string {
  if (typeof value === "number") return String(value);
  const harmless = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

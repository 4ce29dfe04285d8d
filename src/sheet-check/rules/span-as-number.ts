import type { Finding } from "../finding";
import { isTimeFormat } from "../formats";
import type { KnownSheet } from "../known-sheet";

/** So many times in a column make it a column of times. */
const fewestTimes = 3;

/**
 * A wrap of 9.30 that counts as nine days and more: a plain number of a day or longer where a function takes a time
 * span, or in a column of times.
 */
export function spanAsNumber({ area, cells, valueAt, formulaAt, isSpilled }: KnownSheet): Finding[] {
  const found = new Map<string, Finding>();
  const formatAt = (row: number, column: number) => area.formats[row - area.row]?.[column - area.column] ?? "";
  const look = (row: number, column: number) => {
    const value = valueAt({ row, column });
    if (typeof value !== "number" || value < 1 || formulaAt({ row, column }) !== "") return;
    if (isSpilled({ row, column }) || isTimeFormat(formatAt(row, column)) || value > 24) return;
    const details = { value: String(value), hours: String(Math.round(value * 24)), meant: meantBy(value) };
    found.set(`${row} ${column}`, { rule: "a time typed as a number", row, column, details });
  };
  for (const { row, column, fedAs } of cells) if (fedAs === "time span") look(row, column);
  for (let column = area.column; column < area.column + area.columns; column += 1) {
    let run: number[] = [];
    const end = () => {
      const times = run.filter((row) => isTimeFormat(formatAt(row, column)));
      const plain = run.filter((row) => !times.includes(row));
      if (times.length >= fewestTimes && plain.length * 3 <= times.length) for (const row of plain) look(row, column);
      run = [];
    };
    for (let row = area.row; row < area.row + area.rows; row += 1) {
      const value = valueAt({ row, column });
      if (typeof value === "number" && formulaAt({ row, column }) === "") run.push(row);
      else if (value !== "") end();
    }
    end();
  }
  return [...found.values()];
}

/** As the clock writes it: 9.3 and 9.30 are one number, so it is read as hours and minutes. */
function meantBy(value: number): string {
  const minutes = Math.round((value % 1) * 100);
  return minutes < 60 ? `${Math.floor(value)}:${String(minutes).padStart(2, "0")}` : `${Math.floor(value)}:00`;
}

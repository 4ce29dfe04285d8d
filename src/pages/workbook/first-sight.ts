/**
 * What is seen of a workbook until the grid is there: the words of its first sheet, pale and without its numbers, so
 * that nobody takes it for the sheet itself. A small script of its own, as the grid's takes seconds.
 */

import { sampleKeys } from "../../words/page";
import type { Sheet, Workbook } from "../../workbook/workbook";
import { fileOf } from "./sample-workbooks";

const rows = 40;
const columns = 12;

const key = new URLSearchParams(location.search).get("workbook") ?? sampleKeys[0];
const sample = sampleKeys.find((each) => each === key);
const place = document.getElementById("first-sight");

// Where this fails the page says why, as it reads the same.
if (sample && place) {
  fetch(fileOf(sample))
    .then((response) => response.json() as Promise<Workbook>)
    .then(
      ({ sheets: [sheet] }) => sheet && place.append(wordsOf(sheet)),
      () => undefined,
    );
}

function wordsOf(sheet: Sheet): HTMLTableElement {
  const table = document.createElement("table");
  const widths = table.createTHead().insertRow();
  const lines = Array.from({ length: rows }, () => table.insertRow());
  for (let column = 0; column < columns; column++) {
    widths.insertCell().style.minWidth = `${sheet.columnWidths[column] ?? 10}ch`;
    for (const line of lines) line.insertCell();
  }
  for (const { row, column, value, formula, style } of sheet.cells) {
    const cell = lines[row]?.cells[column];
    if (!cell || typeof value !== "string" || formula !== undefined) continue;
    cell.textContent = value;
    if (style?.bold) cell.style.fontWeight = "600";
    if (style?.size) cell.style.fontSize = `${style.size}pt`;
  }
  return table;
}

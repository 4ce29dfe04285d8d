import { pageWordsIn } from "../../words/in-every-language/page";
import { languageIds } from "../../words/languages";
import type { Area, Cell, Sheet, Style } from "../../workbook/workbook";
import type { Grid } from "./grid";
import { words } from "./words";

/**
 * The sheets that are printed for use at the pan: "Firing card", and further ones that continue it. In any language:
 * whoever began a lot in another one goes on with it.
 */
export const isCard = ({ name }: Sheet): boolean =>
  languageIds.some((language) => name.startsWith(pageWordsIn[language].parts.card));

/** A card that continues the first stays blank while the plan does not need it. */
const hasNumbers = ({ cells }: Sheet): boolean => cells.some(({ value }) => typeof value === "number");

/** Whether the first card has anything to go by at the pan. */
export const hasCardNumbers = (grid: Grid): boolean =>
  grid.workbook().sheets.filter(isCard).slice(0, 1).some(hasNumbers);

/** Prints the cards as tables of their own: a print of the grid would be a picture of the screen. */
export function printFiringCard(grid: Grid, paper: HTMLElement): void {
  const cards = grid.workbook().sheets.filter(isCard);
  const needed = cards.filter((sheet, index) => index === 0 || hasNumbers(sheet));
  const caption = document.createElement("p");
  caption.className = "printed";
  caption.textContent = words().printing.printed(
    new Date().toLocaleString([], { dateStyle: "medium", timeStyle: "short" }),
  );
  const tables = needed.map((sheet) => tableOf(sheet, (row, column) => grid.shown(sheet.name, row, column)));
  paper.replaceChildren(...tables, caption);
  fitToPage(paper, tables);
  window.print();
}

/** The height of A5 inside its margins, less the line below the card; in the browser's pixels, 96 to the inch. */
const pageHeight = ((190 - 8) * 96) / 25.4;

/** A card is one page: it gets smaller rather than longer. */
function fitToPage(paper: HTMLElement, tables: readonly HTMLTableElement[]): void {
  paper.classList.add("measured");
  for (const table of tables) {
    const { height } = table.getBoundingClientRect();
    if (height > pageHeight) table.style.setProperty("zoom", String(pageHeight / height));
  }
  paper.classList.remove("measured");
}

function tableOf(sheet: Sheet, shown: (row: number, column: number) => string): HTMLTableElement {
  const cells = new Map(sheet.cells.map((cell) => [`${cell.row},${cell.column}`, cell]));
  const area = sheet.page?.printArea ?? usedArea(sheet.cells);
  const table = document.createElement("table");
  table.append(columnWidths(sheet, area));
  for (let row = area.row; row < area.row + area.rows; row += 1) {
    const answers = sheet.cells.filter((cell) => cell.row === row && cell.formula !== undefined);
    // A charge that the plan does not have needs no boxes.
    if (answers.length > 0 && answers.every(({ column }) => shown(row, column) === "")) continue;
    const line = table.insertRow();
    const height = sheet.rowHeights[row];
    if (height !== undefined) line.style.height = `${height}pt`;
    for (let column = area.column; column < area.column + area.columns; column += 1) {
      const merge = sheet.merges.find((merge) => contains(merge, row, column));
      if (merge && (merge.row !== row || merge.column !== column)) continue;
      const cell = line.insertCell();
      if (merge) {
        cell.colSpan = merge.columns;
        cell.rowSpan = merge.rows;
      }
      cell.textContent = shown(row, column);
      const model = cells.get(`${row},${column}`);
      if (model) applyStyle(cell, model);
    }
  }
  return table;
}

function columnWidths(sheet: Sheet, { column, columns }: Area): HTMLElement {
  const usualWidth = 9;
  const widths = Array.from({ length: columns }, (_, index) => sheet.columnWidths[column + index] ?? usualWidth);
  const sum = widths.reduce((total, width) => total + width, 0);
  const group = document.createElement("colgroup");
  for (const width of widths) {
    const line = document.createElement("col");
    line.style.width = `${(100 * width) / sum}%`;
    group.append(line);
  }
  return group;
}

function applyStyle(element: HTMLTableCellElement, { style = {}, value }: Cell): void {
  const { style: css } = element;
  if (style.bold) css.fontWeight = "bold";
  if (style.italic) css.fontStyle = "italic";
  if (style.size) css.fontSize = `${style.size}pt`;
  if (style.color) css.color = style.color;
  if (style.fill) css.backgroundColor = style.fill;
  css.textAlign = alignment(style, value);
  if (!style.wrap) css.whiteSpace = "nowrap";
  if (style.border === "thin") css.border = "0.5pt solid #555";
  if (style.border === "bottom") css.borderBottom = "0.5pt solid #555";
}

const alignment = ({ align }: Style, value: Cell["value"]): string =>
  align ?? (typeof value === "number" ? "right" : "left");

function usedArea(cells: readonly Cell[]): Area {
  const rows = 1 + cells.reduce((last, { row }) => Math.max(last, row), 0);
  const columns = 1 + cells.reduce((last, { column }) => Math.max(last, column), 0);
  return { row: 0, column: 0, rows, columns };
}

const contains = (area: Area, row: number, column: number): boolean =>
  row >= area.row && row < area.row + area.rows && column >= area.column && column < area.column + area.columns;

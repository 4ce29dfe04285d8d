import type * as Library from "wasm-xlsxwriter";
import { toFileFormula } from "../workbook/formula-names";
import { sheetInFormula } from "../workbook/references";
import { defaultColumnPixels, defaultRowPixels, pixelsOfCharacters } from "../workbook/sizes";
import { tableNamesIn, tablesIn, withAddresses } from "../workbook/table-references";
import {
  type Area,
  type Cell,
  isErrorCode,
  type PageSetup,
  type Sheet,
  type Style,
  usualFont,
  type Workbook,
} from "../workbook/workbook";
import { fittingText, longestNote } from "./fitting-text";
import { emptyText, noFormula, reproducible } from "./reproducible";
import { type SpreadsheetWriter, spreadsheetWriter } from "./spreadsheet-writer";
import { writeChart } from "./write-charts";
import { canBeWritten, writeTable } from "./write-tables";

/**
 * The workbook as the bytes of an .xlsx file, with live formulas and their cached results. The same workbook gives
 * the same bytes, in Node and in a browser.
 */
export async function writeWorkbook(given: Workbook): Promise<Uint8Array> {
  const workbook = { ...given, sheets: sheetsToWrite(given.sheets) };
  const writer = await spreadsheetWriter();
  const file = new writer.Workbook();
  file.setProperties(new writer.DocProperties().setTitle(workbook.name));
  file.setDefaultFormat(plainFormat(writer), defaultRowPixels, defaultColumnPixels);
  const formats = formatsOf(writer);
  const shownFirst = workbook.sheets.find(({ isHidden }) => !isHidden);
  for (const sheet of workbook.sheets) {
    const target = file.addWorksheet().setName(sheet.name);
    if (sheet.isHidden) target.setHidden(true);
    // The first sheet is what a file opens on, unless it says otherwise.
    if (sheet === shownFirst && sheet !== workbook.sheets[0]) target.setActive(true);
    writeSheet(writer, target, sheet, formats);
  }
  for (const { name, formula, sheet } of workbook.names ?? []) {
    const known = sheet === undefined ? name : `${sheetInFormula(sheet)}!${name}`;
    const written = formulaToWrite(formula, {}, workbook.sheets);
    if (written !== undefined) file.defineName(known, toFileFormula(written));
  }
  return reproducible(file.saveToBufferSync());
}

/**
 * Spreadsheets refuse a file with a formula that names a table or a column that the file does not have: such a
 * reference is written as addresses, and where it leads nowhere the value alone is written.
 */
const sheetsToWrite = (sheets: readonly Sheet[]): Sheet[] =>
  sheets.map((sheet) => ({
    ...sheet,
    cells: sheet.cells.map((cell) => {
      if (!cell.formula?.includes("[")) return cell;
      const formula = formulaToWrite(cell.formula, { sheet: sheet.name, row: cell.row }, sheets);
      const { formula: _, spill: __, ...value } = cell;
      return formula === undefined ? value : { ...cell, formula };
    }),
  }));

function formulaToWrite(
  formula: string,
  at: { readonly sheet?: string; readonly row?: number },
  sheets: readonly Sheet[],
): string | undefined {
  const withAddressesOnly = withAddresses(formula, at, tablesIn(sheets));
  const written = sheets.flatMap((sheet) => (sheet.tables ?? []).filter((table) => canBeWritten(sheet, table)));
  const isWritten = (name: string) => written.some((table) => table.name.toUpperCase() === name.toUpperCase());
  // What is typed with @ is another text in a file; a row of totals is not written as part of its table.
  const isFileText = !/\[@|#(?:Totals|All)/i.test(formula) && tableNamesIn(formula).every(isWritten);
  return withAddressesOnly !== undefined && isFileText ? formula : withAddressesOnly;
}

/** Office suites everywhere have this font or one of the same widths, so that a page breaks alike in all of them. */
const plainFormat = (writer: SpreadsheetWriter): Library.Format =>
  new writer.Format().setFontName(usualFont.name).setFontSize(usualFont.size);

type FormatOf = (style: Style | undefined) => Library.Format;

function writeSheet(writer: SpreadsheetWriter, target: Library.Worksheet, sheet: Sheet, formatOf: FormatOf): void {
  for (const [column, width] of Object.entries(sheet.columnWidths)) {
    // Set in pixels, since the library adds the cell's padding to a width in characters and readers do not take it off.
    target.setColumnWidthPixels(Number(column), pixelsOfCharacters(width));
  }
  for (const [row, height] of Object.entries(sheet.rowHeights)) target.setRowHeight(Number(row), height);
  // Of no size is how the library says hidden; the size that was set before stays.
  for (const column of sheet.hiddenColumns ?? []) target.setColumnWidthPixels(column, 0);
  for (const row of sheet.hiddenRows ?? []) target.setRowHeight(row, 0);
  if (sheet.frozenRows) target.setFreezePanes(sheet.frozenRows, 0);
  if (sheet.page) setUpPage(target, sheet.page);
  const byPlace = new Map(
    sheet.merges.length > 0 ? sheet.cells.map((cell) => [`${cell.row},${cell.column}`, cell] as const) : [],
  );
  for (const { row, column, rows, columns } of sheet.merges) {
    const format = formatOf(byPlace.get(`${row},${column}`)?.style);
    target.mergeRange(row, column, row + rows - 1, column + columns - 1, "", format);
  }
  // A table writes its headings without a style: the cells go in after it.
  for (const table of sheet.tables ?? []) writeTable(writer, target, sheet, table);
  // A formula that spills fills its whole area with zeros: the cached values go in after it.
  for (const cell of sheet.cells) if (cell.spill) writeFormula(writer, target, cell, formatOf);
  for (const cell of sheet.cells) if (!cell.spill) writeCell(writer, target, cell, formatOf);
  for (const { row, column, note } of sheet.cells) if (note) target.insertNote(row, column, noteOf(writer, note));
  for (const chart of sheet.charts ?? []) writeChart(writer, target, sheet, chart);
}

function writeCell(writer: SpreadsheetWriter, target: Library.Worksheet, cell: Cell, formatOf: FormatOf): void {
  const { row, column, value, isText, formula, style } = cell;
  const format = formatOf(style);
  if (formula !== undefined) writeFormula(writer, target, cell, formatOf);
  else if (typeof value === "number") target.writeNumberWithFormat(row, column, value, format);
  else if (typeof value === "boolean") target.writeBooleanWithFormat(row, column, value, format);
  else if (isErrorCode(value) && !isText) {
    target.writeFormulaWithFormat(row, column, new writer.Formula(noFormula).setResult(value), format);
  } else if (typeof value === "string") {
    target.writeStringWithFormat(row, column, fittingText(value) || emptyText, format);
  } else if (style !== undefined) target.writeBlank(row, column, format);
}

function writeFormula(writer: SpreadsheetWriter, target: Library.Worksheet, cell: Cell, formatOf: FormatOf): void {
  const { row, column, spill, style } = cell;
  const formula = new writer.Formula(toFileFormula(cell.formula ?? "")).setResult(cachedResult(cell.value));
  const format = formatOf(style);
  if (spill === undefined) target.writeFormulaWithFormat(row, column, formula, format);
  else {
    const lastRow = row + spill.rows - 1;
    const lastColumn = column + spill.columns - 1;
    target.writeDynamicArrayFormulaWithFormat(row, column, lastRow, lastColumn, formula, format);
  }
}

function cachedResult(value: Cell["value"]): string {
  if (value === undefined) return "0";
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return value === "" ? emptyText : fittingText(String(value));
}

/** The library counts paper as the file format does. */
const paperSizes = { A4: 9, A5: 11 } as const;

/** In inches: left, right, top, bottom, header, footer. A small sheet is held in the hand and has room for little. */
const margins: Record<PageSetup["paper"], readonly [number, number, number, number, number, number]> = {
  A4: [0.5, 0.5, 0.5, 0.6, 0.25, 0.3],
  A5: [0.4, 0.4, 0.35, 0.5, 0.2, 0.25],
};

function setUpPage(target: Library.Worksheet, page: PageSetup): void {
  target.setPaperSize(paperSizes[page.paper]).setMargins(...margins[page.paper]);
  if (page.landscape) target.setLandscape();
  if (page.fitToOnePageWide) target.setPrintFitToPages(1, 0);
  if (page.footer) target.setFooter(page.footer);
  if (page.printArea) target.setPrintArea(...corners(page.printArea));
  if (page.repeatedRow !== undefined) target.setRepeatRows(page.repeatedRow, page.repeatedRow);
}

const corners = ({ row, column, rows, columns }: Area) => [row, column, row + rows - 1, column + columns - 1] as const;

/** Tall enough for its text, at about 38 characters a line of 17 pixels. */
function noteOf(writer: SpreadsheetWriter, note: string): Library.Note {
  const text = fittingText(note, longestNote);
  const lines = text.split("\n").reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / 38)), 0);
  return new writer.Note(text)
    .addAuthorPrefix(false)
    .setWidth(240)
    .setHeight(20 + lines * 17);
}

/** Equal styles share one format, and a style that many cells have is looked for once. */
function formatsOf(writer: SpreadsheetWriter): FormatOf {
  const formats = new Map<string, Library.Format>();
  const known = new Map<Style, Library.Format>();
  const plain: Style = {};
  return (style = plain) => {
    const before = known.get(style);
    if (before) return before;
    const key = JSON.stringify(style);
    const format = formats.get(key) ?? formatOf(writer, style);
    formats.set(key, format);
    known.set(style, format);
    return format;
  };
}

function formatOf(writer: SpreadsheetWriter, style: Style): Library.Format {
  const { Color, FormatAlign, FormatBorder } = writer;
  let format = plainFormat(writer);
  if (style.format) format = format.setNumFormat(style.format);
  if (style.bold) format = format.setBold();
  if (style.italic) format = format.setItalic();
  if (style.size) format = format.setFontSize(style.size);
  if (style.color) format = format.setFontColor(Color.parse(style.color));
  if (style.fill) format = format.setBackgroundColor(Color.parse(style.fill));
  if (style.align === "left") format = format.setAlign(FormatAlign.Left);
  if (style.align === "center") format = format.setAlign(FormatAlign.Center);
  if (style.align === "right") format = format.setAlign(FormatAlign.Right);
  // Wrapped text grows downwards: read from the top.
  if (style.wrap) format = format.setTextWrap().setAlign(FormatAlign.Top);
  if (style.border === "thin") format = format.setBorder(FormatBorder.Thin).setBorderColor(Color.parse(borderColor));
  if (style.border === "bottom") {
    format = format.setBorderBottom(FormatBorder.Thin).setBorderBottomColor(Color.parse(borderColor));
  }
  return format;
}

const borderColor = "#8a8f86";

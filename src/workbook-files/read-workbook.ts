import ExcelJS from "exceljs";
import { areaOf } from "./addresses";
import { fromFileFormula } from "./formula-names";
import { leftOut } from "./left-out";
import { readCharts } from "./read-charts";
import {
  type Area,
  type Cell,
  type Chart,
  isErrorCode,
  type PageSetup,
  type Sheet,
  type Style,
  type Table,
  usualFont,
  type Workbook,
} from "./workbook";

/** The workbook in the bytes of an .xlsx file, with the cached results of its formulas. */
export const readWorkbook = async (bytes: Uint8Array): Promise<Workbook> => (await readFile(bytes)).workbook;

export interface ReadFile {
  readonly workbook: Workbook;
  /** What the file has and the workbook does not, in words. */
  readonly leftOut: readonly string[];
}

export async function readFile(bytes: Uint8Array): Promise<ReadFile> {
  const file = new ExcelJS.Workbook();
  try {
    // The library's own type asks for Node's Buffer; it reads any bytes.
    await file.xlsx.load(bytes as unknown as ExcelJS.Buffer);
  } catch (problem) {
    throw new Error("the file must be an .xlsx workbook; it could not be read as one", { cause: problem });
  }
  const charts = await readCharts(bytes);
  const firstDay = file.properties.date1904 ? firstDay1904 : firstDay1900;
  const sheets = file.worksheets.map((sheet) => sheetOf(sheet, firstDay, charts.get(sheet.name) ?? []));
  return { workbook: { name: file.title || "Workbook", sheets }, leftOut: leftOut(file) };
}

/** Day 0 of the spreadsheet's calendar, in milliseconds as dates count them. */
const firstDay1900 = Date.UTC(1899, 11, 30);
const firstDay1904 = Date.UTC(1904, 0, 1);
const dayLength = 24 * 60 * 60 * 1000;

function sheetOf(sheet: ExcelJS.Worksheet, firstDay: number, charts: readonly Chart[]): Sheet {
  const cells: Cell[] = [];
  const rowHeights: Record<number, number> = {};
  const hiddenRows: number[] = [];
  sheet.eachRow({ includeEmpty: true }, (row, number) => {
    if (row.hidden) hiddenRows.push(number - 1);
    if (row.height) rowHeights[number - 1] = row.height;
    row.eachCell({ includeEmpty: true }, (cell) => {
      const read = cellOf(cell, firstDay);
      if (read) cells.push(read);
    });
  });
  const columnWidths: Record<number, number> = {};
  const hiddenColumns: number[] = [];
  (sheet.columns ?? []).forEach(({ width, hidden }, column) => {
    if (width) columnWidths[column] = width;
    if (hidden) hiddenColumns.push(column);
  });
  // The library's types hide that a file may say nothing of views, columns, and headers and footers.
  const view = (sheet.views as ExcelJS.WorksheetView[] | null)?.[0];
  const frozenRows = view?.state === "frozen" ? view.ySplit : undefined;
  const page = pageOf(sheet);
  const tables = tablesOf(sheet);
  return {
    name: sheet.name,
    cells,
    columnWidths,
    rowHeights,
    merges: sheet.model.merges.map(areaOf),
    ...(sheet.state !== "visible" && { isHidden: true }),
    ...(hiddenRows.length > 0 && { hiddenRows }),
    ...(hiddenColumns.length > 0 && { hiddenColumns }),
    ...(frozenRows && { frozenRows }),
    ...(page && { page }),
    ...(tables.length > 0 && { tables }),
    ...(charts.length > 0 && { charts }),
  };
}

/** A row of totals under a table stays as cells, without being part of it. */
function tablesOf(sheet: ExcelJS.Worksheet): Table[] {
  const found = sheet.getTables() as unknown as readonly {
    table: { name: string; tableRef: string; totalsRow?: boolean };
  }[];
  return found.map(({ table: { name, tableRef, totalsRow } }) => {
    const area = areaOf(tableRef);
    return { name, area: totalsRow ? { ...area, rows: area.rows - 1 } : area };
  });
}

function cellOf(cell: ExcelJS.Cell, firstDay: number): Cell | undefined {
  // The cells that a merge covers repeat the first one's value.
  if (cell.isMerged && cell.master !== cell) return undefined;
  const formula = cell.formula ? `=${fromFileFormula(cell.formula)}` : undefined;
  // The library reads an empty result as none.
  const value = formula === undefined ? constantOf(cell.value, firstDay) : (constantOf(cell.result, firstDay) ?? "");
  const isText = formula === undefined && isErrorCode(value) && typeof cell.value === "string";
  const area = formula === undefined ? undefined : spillOf(cell);
  const style = styleOf(cell);
  const note = noteOf(cell);
  if (formula === undefined && value === undefined && !style && note === undefined) return undefined;
  return {
    row: cell.fullAddress.row - 1,
    column: cell.fullAddress.col - 1,
    ...(value !== undefined && { value }),
    ...(isText && { isText }),
    ...(formula !== undefined && { formula }),
    ...(area && { spill: { rows: area.rows, columns: area.columns } }),
    ...(style && { style }),
    ...(note !== undefined && { note }),
  };
}

function spillOf({ value }: ExcelJS.Cell): Area | undefined {
  const { shareType, ref } = value as { shareType?: string; ref?: string };
  return shareType === "array" && ref ? areaOf(ref) : undefined;
}

/** A constant, whatever the library makes of it; a date as the day that the spreadsheet counts. */
function constantOf(value: unknown, firstDay: number): Cell["value"] {
  if (typeof value === "number" || typeof value === "string" || typeof value === "boolean") return value;
  if (value instanceof Date) return (value.getTime() - firstDay) / dayLength;
  if (typeof value !== "object" || value === null) return undefined;
  if ("error" in value) return String(value.error);
  if ("richText" in value) return plainText(value.richText as RichText);
  if ("text" in value) return constantOf(value.text, firstDay);
  return undefined;
}

type RichText = readonly { readonly text: string }[];
const plainText = (parts: RichText): string => parts.map(({ text }) => text).join("");

function noteOf({ note }: ExcelJS.Cell): string | undefined {
  return typeof note === "object" ? plainText(note.texts ?? []) : note;
}

/** What cells have when nobody chose a size: in our files, and in those of other programs. */
const usualSizes: readonly number[] = [usualFont.size, 11];

function styleOf({ numFmt, font, fill, alignment, border }: ExcelJS.Cell): Style | undefined {
  const style: { -readonly [Key in keyof Style]: Style[Key] } = {};
  if (numFmt && numFmt !== "General") style.format = numFmt;
  if (font?.bold) style.bold = true;
  if (font?.italic) style.italic = true;
  if (font?.size && !usualSizes.includes(font.size)) style.size = font.size;
  const color = colorOf(font?.color);
  if (color) style.color = color;
  const filled = fill?.type === "pattern" && fill.pattern === "solid" ? colorOf(fill.fgColor) : undefined;
  if (filled) style.fill = filled;
  const align = alignment?.horizontal;
  if (align === "left" || align === "center" || align === "right") style.align = align;
  if (alignment?.wrapText) style.wrap = true;
  if (border?.bottom?.style) style.border = border.top?.style ? "thin" : "bottom";
  return Object.keys(style).length > 0 ? style : undefined;
}

/** Colours of a theme are left to the page that shows the workbook. */
const colorOf = (color: Partial<ExcelJS.Color> | undefined): string | undefined =>
  color?.argb ? `#${color.argb.slice(-6).toLowerCase()}` : undefined;

/** The numbers that files have for papers. */
const papers: Readonly<Record<number, PageSetup["paper"]>> = { 9: "A4", 11: "A5" };

const isArea = (reference: string): boolean => /^\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?$/i.test(reference);

/** undefined where nobody set up the page. */
function pageOf({ pageSetup, headerFooter }: ExcelJS.Worksheet): PageSetup | undefined {
  const paper = papers[(pageSetup.paperSize as number | undefined) ?? 0];
  const footer = (headerFooter as ExcelJS.HeaderFooter | null)?.oddFooter as string | undefined;
  const landscape = pageSetup.orientation === "landscape";
  const fitToOnePageWide = pageSetup.fitToPage === true && pageSetup.fitToWidth === 1;
  // Whole columns and rows print as far as the sheet is used, which is what prints without an area as well.
  const [printed = ""] = ((pageSetup.printArea as string | undefined) ?? "").split("&&");
  const printArea = isArea(printed) ? areaOf(printed) : undefined;
  const repeatedRow = Number((pageSetup.printTitlesRow as string | undefined)?.split(":")[0] ?? 0);
  if (!paper && !footer && !landscape && !fitToOnePageWide && !printArea && !repeatedRow) return undefined;
  return {
    paper: paper ?? "A4",
    landscape,
    fitToOnePageWide,
    ...(footer && { footer }),
    ...(printArea && { printArea }),
    ...(repeatedRow && { repeatedRow: repeatedRow - 1 }),
  };
}

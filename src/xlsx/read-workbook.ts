import ExcelJS from "exceljs";
import { addressOf, areaOf } from "../workbook/addresses";
import { fromFileFormula } from "../workbook/formula-names";
import { tablesIn, withAddresses } from "../workbook/table-references";
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
} from "../workbook/workbook";
import { canBeWorkedOut, readNames } from "./defined-names";
import { leftOut } from "./left-out";
import { forLibrary, notRead } from "./library-parts";
import { Parts } from "./parts";
import { readCharts } from "./read-charts";

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
    const parts = await Parts.of(bytes);
    // The library's own type asks for Node's Buffer; it reads any bytes.
    const given = (await forLibrary(bytes, parts)) as unknown as ExcelJS.Buffer;
    await file.xlsx.load(given, { ignoreNodes: notRead });
    return await readFrom(file, parts);
  } catch (problem) {
    throw new Error("the file must be an .xlsx workbook; it could not be read as one", { cause: problem });
  }
}

async function readFrom(file: ExcelJS.Workbook, parts: Parts): Promise<ReadFile> {
  const charts = await readCharts(parts);
  const firstDay = file.properties.date1904 ? firstDay1904 : firstDay1900;
  const read = file.worksheets.map((sheet) => sheetOf(sheet, firstDay, charts.get(sheet.name) ?? []));
  const { sheets, lost } = withTableReferences(read, tablesWithTotals(file));
  const { names, leftOut: namesLost } = await readNames(
    parts,
    sheets.map(({ name }) => name),
  );
  const tables = tablesIn(sheets);
  const notWorkedOut = names.filter(
    (name) => !canBeWorkedOut(name, names) || withAddresses(name.formula, {}, tables) === undefined,
  );
  return {
    workbook: { name: file.title || "Workbook", sheets, ...(names.length > 0 && { names }) },
    leftOut: [
      ...listed("names", namesLost),
      ...listed("working out of the names", [...new Set(notWorkedOut.map(({ name }) => name))]),
      ...listed("formulas with table columns that are not there, whose last values stay, in", lost),
      ...(await leftOut(parts, sheets)),
    ],
  };
}

/** The first few by name. */
const listed = (words: string, found: readonly string[]): string[] => {
  if (found.length === 0) return [];
  const more = found.length > 3 ? ` and ${found.length - 3} more` : "";
  return [`${words} ${found.slice(0, 3).join(" and ")}${more}`];
};

const tablesWithTotals = (file: ExcelJS.Workbook): ReadonlySet<string> =>
  new Set(
    file.worksheets.flatMap((sheet) =>
      librarysTables(sheet).flatMap(({ table: { displayName, totalsRow } }) => (totalsRow ? [displayName] : [])),
    ),
  );

/**
 * A formula that names table columns stays as it is where it can be followed in our model. A row of totals is not part
 * of a table there: what names it gets addresses. What leads nowhere would make the downloaded file unreadable: the
 * last value stays without the formula.
 */
function withTableReferences(read: readonly Sheet[], totals: ReadonlySet<string>): { sheets: Sheet[]; lost: string[] } {
  const tables = tablesIn(read);
  const all = tables.map((table) => ({ ...table, hasTotals: totals.has(table.name) }));
  const lost: string[] = [];
  const sheets = read.map((sheet) => ({
    ...sheet,
    cells: sheet.cells.map((cell) => {
      if (!cell.formula?.includes("[")) return cell;
      const at = { sheet: sheet.name, row: cell.row };
      if (withAddresses(cell.formula, at, tables) !== undefined && !/#All/i.test(cell.formula)) return cell;
      const formula = withAddresses(cell.formula, at, all);
      if (formula !== undefined) return { ...cell, formula };
      lost.push(`${sheet.name}!${addressOf(cell.row, cell.column)}`);
      const { formula: _, spill: __, ...rest } = cell;
      return rest;
    }),
  }));
  return { sheets, lost };
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

/** The library's types leave out some of what it reads. Formulas name a table as it is shown; some files say no more. */
const librarysTables = (sheet: ExcelJS.Worksheet) =>
  sheet.getTables() as unknown as readonly { table: { displayName: string; tableRef: string; totalsRow?: boolean } }[];

/** A row of totals under a table stays as cells, without being part of it. */
function tablesOf(sheet: ExcelJS.Worksheet): Table[] {
  return librarysTables(sheet).map(({ table: { displayName: name, tableRef, totalsRow } }) => {
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

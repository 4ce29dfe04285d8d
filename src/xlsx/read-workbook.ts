/** The workbook in the bytes of an .xlsx file, with the cached results of its formulas. */
import { addressOf } from "../workbook/addresses";
import { AreaIndex } from "../workbook/area-index";
import { tablesIn, withAddresses } from "../workbook/table-references";
import { workableNames } from "../workbook/workable-names";
import type { Cell, Link, Sheet, Workbook } from "../workbook/workbook";
import { openArchive } from "./container/kind-of-file";
import { PackageParts } from "./container/package-parts";
import { elementAt } from "./container/xml-tree";
import { type Book, type BookSheet, isWorksheet, readBook } from "./read/book";
import { readCharts } from "./read/charts";
import { countCells } from "./read/count-cells";
import { readNames } from "./read/names";
import { notShown, type ReadSheetPart } from "./read/not-shown";
import { type Note, readNotes } from "./read/notes";
import { pageOf } from "./read/page-setup";
import { sharedStrings } from "./read/shared-strings";
import { type ColumnRun, readSheet, type SheetContext, type SheetPart } from "./read/sheet";
import { readStyles } from "./read/styles";
import { readTables } from "./read/tables";
import { few, type NotShown } from "./remarks";

export interface ReadFile {
  readonly workbook: Workbook;
  /** What the file has and the grid does not show. */
  readonly notShown: readonly NotShown[];
  /** Names that the engine does not work out as names; it may know what they stand for as functions. */
  readonly notWorkedOut: readonly string[];
}

export const readWorkbook = (bytes: Uint8Array): Workbook => readFile(bytes).workbook;

/** Throws a Refusal for what is no .xlsx, damaged, locked, too large or made to do harm. The bytes stay as they are. */
export function readFile(bytes: Uint8Array): ReadFile {
  const parts = new PackageParts(openArchive(bytes));
  const book = readBook(parts);
  const worksheets = book.sheets.filter(isWorksheet);
  countCells(
    parts.archive,
    worksheets.map(({ path }) => parts.entryOf(path)),
  );
  const { strings, hasRichText } = sharedStrings(parts, book.strings);
  const context: SheetContext = { strings, styles: readStyles(parts, book), counts1904: book.counts1904 };
  const read = worksheets.map((sheet) => ({ sheet, part: readSheet(parts, sheet.path, context) }));
  return assembled(parts, book, read, hasRichText);
}

type Read = { readonly sheet: BookSheet; readonly part: SheetPart };

function assembled(parts: PackageParts, book: Book, read: readonly Read[], hasRichText: boolean): ReadFile {
  const allNames = book.sheets.map(({ name }) => name);
  const { names, leftOut, printAreas, printTitles } = readNames(
    book.content,
    allNames,
    new Set(read.map(({ sheet }) => sheet.name)),
  );
  const sheets = read.map(({ sheet, part }): Sheet => {
    const index = book.sheets.indexOf(sheet);
    const page = pageOf(part.page, printAreas.get(index), printTitles.get(index));
    return { ...sheetOf(parts, sheet, part), ...(page && { page }) };
  });
  const tables = tablesIn(sheets);
  const workable = workableNames(names);
  const notWorkedOut = names.filter(
    (name) => !workable.has(name) || withAddresses(name.formula, {}, tables) === undefined,
  );
  const forNotShown = read.map(
    ({ sheet: { name }, part }, index): ReadSheetPart => ({
      name,
      part,
      charts: sheets[index]?.charts?.length ?? 0,
    }),
  );
  return {
    workbook: { name: titleOf(parts) || "Workbook", sheets, ...(names.length > 0 && { names }) },
    notShown: [
      ...found("names", leftOut),
      ...found("lost table columns", lostIn(sheets)),
      ...notShown(parts, forNotShown, hasRichText),
    ],
    notWorkedOut: [...new Set(notWorkedOut.map(({ name }) => name))],
  };
}

const found = (kind: "names" | "lost table columns", names: readonly string[]): NotShown[] =>
  names.length > 0 ? [{ kind, found: few(names) }] : [];

/** Cells whose formulas name table columns that are not there. */
function lostIn(sheets: readonly Sheet[]): string[] {
  const tables = tablesIn(sheets);
  return sheets.flatMap(({ name: sheet, cells }) =>
    cells.flatMap(({ row, column, formula }) =>
      formula?.includes("[") && withAddresses(formula, { sheet, row }, tables) === undefined
        ? [`${sheet}!${addressOf(row, column)}`]
        : [],
    ),
  );
}

function sheetOf(parts: PackageParts, { name, path, isHidden }: BookSheet, part: SheetPart): Sheet {
  const tables = readTables(parts, path);
  const charts = readCharts(parts, path);
  const cells = withNotes(withoutCovered(part), readNotes(parts, path));
  const links = linksOf(parts, path, part);
  const { hiddenRows, frozenRows, rowHeights, merges } = part;
  const { columnWidths, hiddenColumns } = columnsOf(part.columns, cells);
  return {
    name,
    cells,
    columnWidths,
    rowHeights,
    merges,
    ...(isHidden && { isHidden }),
    ...(hiddenRows.length > 0 && { hiddenRows }),
    ...(hiddenColumns.length > 0 && { hiddenColumns }),
    ...(frozenRows > 0 && { frozenRows }),
    ...(tables.length > 0 && { tables }),
    ...(charts.length > 0 && { charts }),
    ...(links.length > 0 && { links }),
  };
}

/** Under a merge, a look alone is none: what cells hold there stays. */
function withoutCovered({ cells, merges }: SheetPart): readonly Cell[] {
  if (merges.length === 0) return cells;
  const index = new AreaIndex(merges);
  return cells.filter(({ row, column, value, formula }) => {
    if (value !== undefined || formula !== undefined) return true;
    const merge = index.at(row, column);
    return !merge || (merge.row === row && merge.column === column);
  });
}

/** How far beyond its cells a sheet is shown. */
const columnsBeyond = 30;

/** A run may reach to the end of the sheet: what is beyond the cells and their margin is left out. */
function columnsOf(runs: readonly ColumnRun[], cells: readonly Cell[]) {
  const lastUsed = cells.reduce((last, { column }) => Math.max(last, column), 0) + columnsBeyond;
  const columnWidths: Record<number, number> = {};
  const hiddenColumns: number[] = [];
  for (const { first, last, width, isHidden } of runs) {
    for (let column = first; column <= Math.min(last, lastUsed); column += 1) {
      if (width) columnWidths[column] = width;
      if (isHidden) hiddenColumns.push(column);
    }
  }
  return { columnWidths, hiddenColumns };
}

/** A note may hang on a cell that holds nothing. */
function withNotes(cells: readonly Cell[], notes: readonly Note[]): readonly Cell[] {
  if (notes.length === 0) return cells;
  const keyOf = ({ row, column }: { row: number; column: number }) => `${row},${column}`;
  const texts = new Map(notes.map((note) => [keyOf(note), note.text]));
  const withText = cells.map((cell) => {
    const note = texts.get(keyOf(cell));
    return note !== undefined && texts.delete(keyOf(cell)) ? { ...cell, note } : cell;
  });
  const alone = notes.flatMap((note): Cell[] =>
    texts.delete(keyOf(note)) ? [{ row: note.row, column: note.column, note: note.text }] : [],
  );
  return [...withText, ...alone].sort((one, other) => one.row - other.row || one.column - other.column);
}

function linksOf(parts: PackageParts, path: string, { links }: SheetPart): Link[] {
  if (links.length === 0) return [];
  const targets = new Map(parts.relations(path).map(({ id, target }) => [id, target]));
  return links.flatMap(({ area, relation, place }): Link[] => {
    const address = relation === undefined ? undefined : targets.get(relation);
    if (address === undefined && place === undefined) return [];
    return [{ area, ...(address !== undefined && { address }), ...(place !== undefined && { place }) }];
  });
}

function titleOf(parts: PackageParts): string | undefined {
  const path = parts.related("", "core-properties");
  return path === undefined ? undefined : elementAt(parts.tree(path), "title")?.text;
}

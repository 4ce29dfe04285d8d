/**
 * A workbook as the engine loads and saves it. What the engine has no place for (notes, page set-up, tables, charts, links,
 * the size of a spill, exact widths and heights) is kept in the `custom` fields that it leaves to its users.
 */
import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IColumnData,
  type IRange,
  type IRowData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
  LocaleType,
} from "@univerjs/core";
import { LexerTreeBuilder } from "@univerjs/engine-formula";
import { AreaIndex } from "../workbook/area-index";
import { pixelsOfCharacters, pixelsOfPoints, pixelsPerCharacter } from "../workbook/sizes";
import { type TableColumns, tablesIn, withAddresses } from "../workbook/table-references";
import {
  type Area,
  type Cell,
  isErrorCode,
  type Sheet,
  type Style,
  usualFont,
  type Workbook,
} from "../workbook/workbook";
import type { LeftFormulas } from "./left-formulas";
import { namesInEngine, namesOf } from "./names";
import type { Spills } from "./spills";
import { engineStyle, modelStyle } from "./style";

/** Room to write in, whatever the sheet holds. */
const leastRows = 100;
const leastColumns = 26;
const spareRows = 20;
const spareColumns = 5;

const engineVersion = "0.25.1";

/**
 * `id`: engines of one process share what they know of ranges by it, so that two open workbooks need two. `left`:
 * formulas that are given as the results that they came with.
 */
export function snapshotOf(workbook: Workbook, id = "workbook", left: LeftFormulas = new Map()): IWorkbookData {
  const styles = new StyleTable();
  const tables = tablesIn(workbook.sheets);
  const sheets = workbook.sheets.map((sheet, index) => worksheetOf(sheet, sheetId(index), styles, tables, left));
  return {
    id,
    name: workbook.name,
    appVersion: engineVersion,
    locale: LocaleType.EN_US,
    styles: styles.byId,
    defaultStyle: { ff: usualFont.name, fs: usualFont.size },
    sheetOrder: sheets.map(({ id }) => id),
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id, sheet])),
    ...namesInEngine(workbook, tables),
  };
}

/** The id that the engine knows a sheet by, from its place in the workbook. */
export const sheetId = (index: number): string => `sheet-${index + 1}`;

/**
 * The other way. Spilled values are not in a snapshot: given the spills of the running engine, the workbook has them
 * and the sizes of today; without, it has the sizes that it came with.
 */
export function workbookOf(snapshot: IWorkbookData, spills?: Spills): Workbook {
  const names = namesOf(snapshot);
  const styleOf = styleReader(snapshot.styles);
  return {
    name: snapshot.name,
    ...(names.length > 0 && { names }),
    sheets: snapshot.sheetOrder.flatMap((id) => {
      const sheet = snapshot.sheets[id];
      return sheet ? [sheetOf(sheet, id, styleOf, spills)] : [];
    }),
  };
}

/** Styles are kept once in a snapshot, and cells name them. */
class StyleTable {
  readonly byId: Record<string, IStyleData> = {};
  readonly #ids = new Map<string, string>();

  idOf(style: IStyleData): string {
    const key = JSON.stringify(style);
    const known = this.#ids.get(key);
    if (known !== undefined) return known;
    const id = `style-${this.#ids.size + 1}`;
    this.#ids.set(key, id);
    this.byId[id] = style;
    return id;
  }
}

function worksheetOf(
  sheet: Sheet,
  id: string,
  styles: StyleTable,
  tables: readonly TableColumns[],
  left: LeftFormulas,
): Partial<IWorksheetData> & { id: string } {
  const isSpilled = spilledPlaces(sheet.cells, left);
  const merges = mergesFor(sheet.merges);
  const cellData: Record<number, Record<number, ICellData>> = {};
  for (const cell of sheet.cells) {
    const here = left.has(cell) ? undefined : formulaHere(cell, sheet.name, tables);
    const data = cellDataOf(cell, isSpilled(cell), styles, here);
    const row = cellData[cell.row] ?? {};
    cellData[cell.row] = row;
    row[cell.column] = data;
  }
  let lastRow = 0;
  let lastColumn = 0;
  for (const { row, column, spill } of sheet.cells) {
    lastRow = Math.max(lastRow, row + (spill?.rows ?? 1));
    lastColumn = Math.max(lastColumn, column + (spill?.columns ?? 1));
  }
  return {
    id,
    name: sheet.name,
    rowCount: Math.max(leastRows, lastRow + spareRows),
    columnCount: Math.max(leastColumns, lastColumn + spareColumns),
    cellData,
    ...(sheet.isHidden && { hidden: BooleanNumber.TRUE }),
    columnData: withHidden(mapValues(sheet.columnWidths, columnDataOf), sheet.hiddenColumns),
    rowData: withHidden(mapValues(sheet.rowHeights, rowDataOf), sheet.hiddenRows),
    mergeData: merges.given.map(rangeOf),
    ...(sheet.frozenRows && {
      freeze: { xSplit: 0, ySplit: sheet.frozenRows, startRow: sheet.frozenRows, startColumn: 0 },
    }),
    custom: { ...keptOf(sheet), ...(merges.kept.length > 0 && { merges: merges.kept }) },
  };
}

/** The engine keeps an entry for each cell under a merge: a merge of the whole sheet would take all memory. */
const mostMergedCells = 500_000;

/** As many merges as there is room for; the others are kept for the file. */
function mergesFor(merges: readonly Area[]): { given: readonly Area[]; kept: readonly Area[] } {
  let room = mostMergedCells;
  const given = merges.filter(({ rows, columns }) => {
    const fits = rows * columns <= room;
    if (fits) room -= rows * columns;
    return fits;
  });
  return { given, kept: given.length === merges.length ? [] : merges.filter((merge) => !given.includes(merge)) };
}

/** What a sheet has that the engine does not. */
export type Kept = Pick<Sheet, "page" | "tables" | "charts" | "links">;

/** What the engine keeps for us of a sheet. */
export const keptIn = (sheet: Partial<IWorksheetData>): Kept => (sheet.custom ?? {}) as Kept;

const keptOf = ({ page, tables, charts, links }: Sheet): Kept => ({
  ...(page && { page }),
  ...(tables && { tables }),
  ...(charts && { charts }),
  ...(links && { links }),
});

/** A value that stands where a formula spills would block the spill. */
function spilledPlaces(cells: readonly Cell[], left: LeftFormulas): (cell: Cell) => boolean {
  const areas = cells.flatMap((cell): Area[] => {
    const { row, column, spill } = cell;
    return spill && !left.has(cell) ? [{ row, column, rows: spill.rows, columns: spill.columns }] : [];
  });
  const spilled = new AreaIndex(areas);
  return ({ row, column, formula }) => formula === undefined && spilled.at(row, column) !== undefined;
}

/** The engine knows no tables: it is given the addresses, and the cell keeps what it names the columns by. */
const formulaHere = ({ formula, row }: Cell, sheet: string, tables: readonly TableColumns[]): string | undefined =>
  formula && (withAddresses(formula, { sheet, row }, tables) ?? formula);

/** A formula as a cell that is there already gets it; `custom` is what is kept of that cell. */
export function formulaData(
  formula: string,
  at: { readonly sheet: string; readonly row: number },
  tables: readonly TableColumns[],
  custom: ICellData["custom"],
): Required<Pick<ICellData, "f" | "si" | "custom">> {
  const here = withAddresses(formula, at, tables) ?? formula;
  const { named: _, ...others } = custom ?? {};
  const kept = here === formula ? others : { ...others, named: { here, formula } };
  return { f: here, si: null, custom: Object.keys(kept).length > 0 ? kept : null };
}

/** What a cell has that the engine does not. */
interface KeptOfCell extends Pick<Cell, "spill" | "note" | "isText"> {
  /** A formula that the engine was not given. Holds as long as the cell has the value and no formula. */
  readonly left?: { readonly formula: string; readonly value?: Cell["value"] };
  /** Holds as long as the formula in the engine is still `here`. */
  readonly named?: { readonly here: string; readonly formula: string };
}

function cellDataOf(cell: Cell, isSpilled: boolean, styles: StyleTable, here: string | undefined): ICellData {
  const { value, isText, formula, spill, style, note } = cell;
  const data: ICellData = {};
  // A formula with a value would not be calculated when the workbook opens.
  if (here !== undefined) data.f = here;
  else if (value !== undefined && !isSpilled) Object.assign(data, constantData(value));
  if (style !== undefined) data.s = styles.idOf(engineStyle(style));
  const kept: KeptOfCell = {
    ...(spill && { spill }),
    ...(note !== undefined && { note }),
    ...(isText && { isText }),
    ...(formula !== undefined && here !== undefined && here !== formula && { named: { here, formula } }),
    ...(formula !== undefined && here === undefined && { left: { formula, ...(value !== undefined && { value }) } }),
  };
  if (Object.keys(kept).length > 0) data.custom = { ...kept };
  return data;
}

/** A constant as the engine holds it. */
export function constantData(value: number | string | boolean): ICellData {
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: value, t: CellValueType.STRING };
}

/** The constant in a cell, or the result of its formula; undefined for a blank. An error is its code. */
export function constantOf(cell: ICellData): number | string | boolean | undefined {
  if (cell.p?.body) return cell.p.body.dataStream.replace(/\r\n$/, "").replaceAll("\r", "\n");
  const { v, t } = cell;
  if (v === null || v === undefined) return undefined;
  if (t === CellValueType.BOOLEAN) return v === 1 || v === true || v === "1" || v === "TRUE";
  if (t === CellValueType.NUMBER) return Number(v);
  return v;
}

function sheetOf(sheet: Partial<IWorksheetData>, id: string, styleOf: StyleReader, spills: Spills | undefined): Sheet {
  const formulaOf = formulaReader(sheet);
  const cells = new Map<string, Cell>();
  for (const [row, column, data] of entries(sheet.cellData)) {
    const cell = cellOf(row, column, data, formulaOf(row, column, data), styleOf);
    if (cell) cells.set(`${row},${column}`, cell);
  }
  if (spills) addSpills(cells, spills, id);
  const { page, tables, charts, links } = keptIn(sheet);
  const { merges: keptMerges = [] } = (sheet.custom ?? {}) as { merges?: readonly Area[] };
  const frozenRows = sheet.freeze?.ySplit;
  const hiddenRows = hiddenIn(sheet.rowData);
  const hiddenColumns = hiddenIn(sheet.columnData);
  return {
    name: sheet.name ?? id,
    cells: [...cells.values()].sort((one, other) => one.row - other.row || one.column - other.column),
    columnWidths: mapValues(sheet.columnData ?? {}, characters),
    rowHeights: mapValues(sheet.rowData ?? {}, points),
    merges: [...(sheet.mergeData ?? []).map(areaOfRange), ...keptMerges],
    ...(sheet.hidden === BooleanNumber.TRUE && { isHidden: true }),
    ...(hiddenRows.length > 0 && { hiddenRows }),
    ...(hiddenColumns.length > 0 && { hiddenColumns }),
    ...(frozenRows && { frozenRows }),
    ...(page && { page }),
    ...(tables && { tables }),
    ...(charts && { charts }),
    ...(links && { links }),
  };
}

function cellOf(
  row: number,
  column: number,
  data: ICellData,
  here: string | undefined,
  styleOf: StyleReader,
): Cell | undefined {
  const value = constantOf(data);
  const style = styleOf(data.s);
  const { spill, note, isText, named, left } = (data.custom ?? {}) as KeptOfCell;
  const isLeft = left !== undefined && here === undefined && left.value === value;
  const known = here !== undefined && named?.here === here ? named.formula : here;
  const formula = isLeft ? left.formula : known;
  const cell = {
    row,
    column,
    ...(value !== undefined && { value }),
    // It stays with the cell when something else is typed there.
    ...(isText && formula === undefined && isErrorCode(value) && { isText }),
    ...(formula !== undefined && { formula }),
    ...(formula !== undefined && spill && { spill }),
    ...(style && { style }),
    ...(note !== undefined && { note }),
  };
  return Object.keys(cell).length > 2 ? cell : undefined;
}

type StyleReader = (style: ICellData["s"]) => Style | undefined;

/** Many cells name the same style: each is read once. */
function styleReader(styles: IWorkbookData["styles"]): StyleReader {
  const read = new Map<string, Style | undefined>();
  return (style) => {
    if (!style) return undefined;
    if (typeof style !== "string") return modelStyle(style);
    if (!read.has(style)) read.set(style, styles[style] ? modelStyle(styles[style]) : undefined);
    return read.get(style);
  };
}

/** Formulas that were filled down share one text, kept where it was written: the others name it by its id. */
function formulaReader(sheet: Partial<IWorksheetData>) {
  const written = new Map<string, { row: number; column: number; formula: string }>();
  for (const [row, column, { f, si }] of entries(sheet.cellData)) {
    if (f && si) written.set(si, { row, column, formula: f });
  }
  const lexer = new LexerTreeBuilder();
  return (row: number, column: number, { f, si }: ICellData): string | undefined => {
    if (f) return f;
    const source = si ? written.get(si) : undefined;
    return source && lexer.moveFormulaRefOffset(source.formula, column - source.column, row - source.row);
  };
}

/** Puts in the sizes of today and the spilled values. */
function addSpills(cells: Map<string, Cell>, spills: Spills, sheet: string): void {
  for (const [key, cell] of cells) {
    const { spill: _, ...rest } = cell;
    if (cell.formula === undefined) continue;
    const size = spills.sizeAt(sheet, cell.row, cell.column) ?? { rows: 1, columns: 1 };
    // A formula that may spill stays one, also while its answer is a single value.
    const spill = size.rows > 1 || size.columns > 1 || cell.spill ? size : undefined;
    cells.set(key, spill ? { ...rest, spill } : rest);
  }
  for (const { row, column, cell: data } of spills.cells(sheet)) {
    const key = `${row},${column}`;
    const cell = cells.get(key);
    const value = constantOf(data);
    if (cell?.formula === undefined && value !== undefined) cells.set(key, { ...cell, row, column, value });
  }
}

function* entries(cellData: IWorksheetData["cellData"] = {}): Generator<[number, number, ICellData]> {
  for (const [row, cells] of Object.entries(cellData)) {
    for (const [column, data] of Object.entries(cells ?? {})) {
      if (data) yield [Number(row), Number(column), data as ICellData];
    }
  }
}

const rangeOf = ({ row, column, rows, columns }: Area): IRange => ({
  startRow: row,
  startColumn: column,
  endRow: row + rows - 1,
  endColumn: column + columns - 1,
});

const areaOfRange = ({ startRow, startColumn, endRow, endColumn }: IRange): Area => ({
  row: startRow,
  column: startColumn,
  rows: endRow - startRow + 1,
  columns: endColumn - startColumn + 1,
});

// The engine counts pixels. Rounding loses a little, so the exact size goes along, and holds until someone drags the
// column or row to another.
const columnDataOf = (width: number): Partial<IColumnData> => ({ w: pixelsOfCharacters(width), custom: { width } });
const rowDataOf = (height: number): Partial<IRowData> => ({ h: pixelsOfPoints(height), ia: 0, custom: { height } });

/** Rows or columns, hidden where they are to be. */
function withHidden<Data extends Partial<IRowData | IColumnData>>(
  sized: Readonly<Record<number, Data>>,
  hidden: readonly number[] = [],
): Record<number, Data | { hd: BooleanNumber }> {
  const all: Record<number, Data | { hd: BooleanNumber }> = { ...sized };
  for (const index of hidden) all[index] = { ...sized[index], hd: BooleanNumber.TRUE };
  return all;
}

const hiddenIn = (data: Readonly<Record<number, Partial<IRowData | IColumnData>>> = {}): number[] =>
  Object.entries(data).flatMap(([index, { hd }]) => (hd === BooleanNumber.TRUE ? [Number(index)] : []));

function characters({ w, custom }: Partial<IColumnData>): number | undefined {
  if (w === undefined) return undefined;
  const exact = custom?.width as number | undefined;
  return exact !== undefined && pixelsOfCharacters(exact) === w ? exact : w / pixelsPerCharacter;
}

function points({ h, custom }: Partial<IRowData>): number | undefined {
  if (h === undefined) return undefined;
  const exact = custom?.height as number | undefined;
  return exact !== undefined && pixelsOfPoints(exact) === h ? exact : (h * 3) / 4;
}

function mapValues<From, To>(
  values: { readonly [key: number]: From },
  change: (value: From) => To | undefined,
): Record<number, To> {
  const changed: Record<number, To> = {};
  for (const [key, value] of Object.entries(values)) {
    const result = change(value as From);
    if (result !== undefined) changed[Number(key)] = result;
  }
  return changed;
}

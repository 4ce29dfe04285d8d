import type { ICellData, IStyleData } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/preset-sheets-core";
import { CellError } from "../../cells/values";
import { constantData, constantOf } from "../../engine/snapshot";
import { engineStyle } from "../../engine/style";
import { holdsFormula, placesOf } from "../../host/block-cells";
import { HostProblem } from "../../host/host-problem";
import { looks } from "../../host/looks";
import { freeSheetName } from "../../host/sheet-name";
import type {
  Block,
  CellArea,
  CellContent,
  CellPlace,
  ReadArea,
  WorkbookHost,
  WriteOutcome,
  WrittenCell,
} from "../../host/workbook-host";
import { addressOf } from "../../workbook/addresses";
import { areaWithin, partsOf } from "../../workbook/references";
import { pixelsOfCharacters } from "../../workbook/sizes";
import { goToCell } from "./go-to-cell";
import type { Grid } from "./grid";

/** The grid of the workbook page as the pane sees it. */
export class EmbeddedWorkbookHost implements WorkbookHost {
  readonly changesFormulas = false;
  readonly drawsCharts = false;
  readonly evaluatesUntouched = true;
  readonly language = navigator.language;
  readonly #grid: Grid;

  constructor(grid: Grid) {
    this.#grid = grid;
  }

  async selection(): Promise<ReadArea> {
    const sheet = this.#shownSheet();
    const range = sheet.getSelection()?.getActiveRange();
    if (!range) throw new HostProblem("gone", "no cell selected in the grid");
    const { startRow, startColumn, endRow, endColumn } = range.getRange();
    const used = this.#used(sheet);
    // Whole rows and columns are read as far as their sheet is used; where they start or end is then not a number.
    const isWholeColumn = !(endRow < sheet.getMaxRows() - 1) && !(startRow > 0);
    const isWholeRow = !(endColumn < sheet.getMaxColumns() - 1) && !(startColumn > 0);
    const [row, column] = [startRow || 0, startColumn || 0];
    return this.#read(sheet, {
      sheet: sheet.getSheetName(),
      row,
      column,
      rows: isWholeColumn ? used.rows : endRow - row + 1,
      columns: isWholeRow ? used.columns : endColumn - column + 1,
    });
  }

  onSelection(listener: () => void): () => void {
    const { api, errors } = this.#grid;
    const stops = [api.addEvent(api.Event.ActiveSheetChanged, () => listener())];
    const stopHearingSelections = this.#grid.onSelect(listener);
    const stopHearingChanges = this.#grid.onChange(listener);
    const stopHearingErrors = errors.subscribe(listener);
    return () => {
      for (const stop of stops) stop.dispose();
      stopHearingSelections();
      stopHearingChanges();
      stopHearingErrors();
    };
  }

  async read(address: string, beside: CellPlace): Promise<ReadArea> {
    const named = this.#book().getDefinedName(address.trim())?.getFormulaOrRefString();
    const { sheet: name = beside.sheet, cells } = partsOf(named ?? address);
    const sheet = this.#book().getSheetByName(name);
    const area = sheet && (this.#spilled(sheet, cells) ?? areaWithin(cells, this.#used(sheet)));
    if (!sheet || !area) throw new HostProblem("not here", { kind: "no such place", address });
    return this.#read(sheet, { sheet: name, ...area });
  }

  async usedCells(name?: string): Promise<ReadArea> {
    const sheet = name === undefined ? this.#shownSheet() : this.#sheet(name);
    return this.#read(sheet, { sheet: sheet.getSheetName(), row: 0, column: 0, ...this.#used(sheet) });
  }

  async evaluate(expression: string, { sheet, row, column }: CellPlace): Promise<CellContent[][]> {
    const place = { sheet: this.#sheet(sheet).getSheetId(), row, column };
    try {
      const rows = await this.#grid.evaluation(expression, place);
      return rows.map((line) => line.map((value) => (value instanceof CellError ? value.code : (value ?? ""))));
    } catch {
      throw new HostProblem("unknown", { kind: "grid cannot work out", expression });
    }
  }

  async errorMessage({ sheet, row, column }: CellPlace): Promise<string | undefined> {
    return this.#grid.errors.at(this.#sheet(sheet).getSheetId(), row, column)?.message;
  }

  async write(block: Block, at: CellPlace, { over = false } = {}): Promise<WriteOutcome> {
    // What is half typed in a cell counts, and is not lost.
    await this.#grid.finishTyping();
    const { api, value } = this.#grid;
    const sheet = this.#sheet(at.sheet);
    const id = sheet.getSheetId();
    const places = placesOf(block, at);
    const filled = places.filter(
      ({ row, column }) => value(id, row, column) !== undefined || formulaAt(sheet, row, column) !== "",
    );
    if (filled.length > 0 && !over) return { filled: filled.map(({ row, column }) => addressOf(row, column)) };

    makeRoom(this.#grid, sheet, at, block);
    widen(this.#grid, sheet, at, block);
    const data: Record<number, Record<number, ICellData>> = {};
    const put = (row: number, column: number, cell: ICellData) => {
      const line = data[row] ?? {};
      data[row] = line;
      line[column] = { ...line[column], ...cell };
    };
    for (const { row, column } of filled) put(row, column, empty);
    for (const cell of block.cells) {
      const style = styleOf(cell);
      for (const { row, column } of placesOf({ ...block, cells: [cell] }, at)) put(row, column, style);
      if (cell.content !== "") put(at.row + cell.row, at.column + cell.column, contentOf(cell));
    }
    // One command, and so one step to undo.
    const isDone = await api.executeCommand("sheet.command.set-range-values", {
      unitId: this.#book().getId(),
      subUnitId: id,
      value: data,
    });
    if (!isDone) throw new HostProblem("protected", "not allowed by the grid");
    return { written: { ...at, rows: block.rows, columns: block.columns } };
  }

  async addSheet(wish: string): Promise<string> {
    await this.#grid.finishTyping();
    const taken = this.#book()
      .getSheets()
      .map((sheet) => sheet.getSheetName());
    const name = freeSheetName(wish, taken);
    this.#insertSheet(name);
    return name;
  }

  /** A file of the maker's own takes none (own-limits.ts). */
  #insertSheet(name: string): void {
    try {
      this.#book().insertSheet(name);
    } catch {
      // Said below.
    }
    if (!this.#book().getSheetByName(name)) throw new HostProblem("not here", "not allowed by the grid");
  }

  async spillAround({ sheet, row, column }: CellPlace): Promise<CellArea | undefined> {
    const area = this.#grid.spills.areaAround(this.#sheet(sheet).getSheetId(), row, column);
    return area && { sheet, ...area };
  }

  async goTo({ sheet, row, column }: CellPlace): Promise<void> {
    goToCell(this.#grid, this.#sheet(sheet).getSheetId(), row, column);
  }

  async addChart(): Promise<void> {
    throw new HostProblem("not here", "grid draws no charts");
  }

  formulasWith = savesCopy;
  changeFormulas = savesCopy;
  putNames = savesCopy;
  takeNames = savesCopy;

  #book() {
    const book = this.#grid.api.getActiveWorkbook();
    if (!book) throw new HostProblem("gone", "no workbook open");
    return book;
  }

  #shownSheet(): FWorksheet {
    return this.#book().getActiveSheet();
  }

  #sheet(name: string): FWorksheet {
    const sheet = this.#book().getSheetByName(name);
    if (!sheet) throw new HostProblem("not here", { kind: "no such sheet", sheet: name });
    return sheet;
  }

  /** How far the cells of a sheet hold something; at least one cell. */
  #used(sheet: FWorksheet): { rows: number; columns: number } {
    const size = { rows: 1, columns: 1 };
    const count = (row: number, column: number) => {
      size.rows = Math.max(size.rows, row + 1);
      size.columns = Math.max(size.columns, column + 1);
    };
    sheet
      .getSheet()
      .getCellMatrix()
      .forValue((row, column, cell) => {
        if (cell && (cell.f || cell.si || constantOf(cell) !== undefined)) count(row, column);
      });
    for (const { row, column } of this.#grid.spills.cells(sheet.getSheetId())) count(row, column);
    return size;
  }

  /** What `B4#` stands for. */
  #spilled(sheet: FWorksheet, cells: string) {
    const first = cells.endsWith("#") ? areaWithin(cells.slice(0, -1), { rows: 1, columns: 1 }) : undefined;
    return first && { ...first, ...this.#grid.spills.sizeAt(sheet.getSheetId(), first.row, first.column) };
  }

  #read(sheet: FWorksheet, area: CellArea): ReadArea {
    const id = sheet.getSheetId();
    // A formula may reach past the last row: there is nothing there.
    const rows = Math.min(area.rows, sheet.getMaxRows() - area.row);
    const columns = Math.min(area.columns, sheet.getMaxColumns() - area.column);
    const isThere = rows > 0 && columns > 0;
    const formulas = isThere ? sheet.getRange(area.row, area.column, rows, columns).getFormulas() : [];
    return {
      ...area,
      values: grid(area, (row, column) => this.#grid.value(id, row, column) ?? ""),
      formulas: grid(area, (row, column) => formulas[row - area.row]?.[column - area.column] ?? ""),
      formats: grid(area, (row, column) => {
        if (row >= area.row + rows || column >= area.column + columns) return "General";
        const style = sheet.getSheet().getComposedCellStyle(row, column);
        return style.n?.pattern || "General";
      }),
    };
  }
}

/** The page never changes a file of the maker's own as a whole: its menu saves another one. */
async function savesCopy(): Promise<never> {
  throw new HostProblem("not here", "grid saves a copy instead");
}

const empty: ICellData = { v: null, f: null, si: null, p: null };

const formulaAt = (sheet: FWorksheet, row: number, column: number): string =>
  row < sheet.getMaxRows() && column < sheet.getMaxColumns() ? sheet.getRange(row, column).getFormula() : "";

function contentOf(cell: WrittenCell): ICellData {
  return holdsFormula(cell) ? { ...empty, f: String(cell.content) } : { ...empty, ...constantData(cell.content) };
}

function styleOf({ format, look }: WrittenCell): { s?: IStyleData } {
  const style = { ...(look && looks[look]), ...(format !== undefined && { format }) };
  return Object.keys(style).length === 0 ? {} : { s: engineStyle(style) };
}

/** Lets the sheet grow to hold the block and its spills. That is no change of the workbook, and nothing to undo. */
function makeRoom({ api }: Grid, sheet: FWorksheet, at: CellPlace, block: Block): void {
  const places = placesOf(block, at);
  const rows = Math.max(sheet.getMaxRows(), ...places.map(({ row }) => row + 1));
  const columns = Math.max(sheet.getMaxColumns(), ...places.map(({ column }) => column + 1));
  const where = { unitId: sheet.getWorkbook().getUnitId(), subUnitId: sheet.getSheetId() };
  if (rows > sheet.getMaxRows()) {
    api.syncExecuteCommand("sheet.mutation.set-worksheet-row-count", { ...where, rowCount: rows });
  }
  if (columns > sheet.getMaxColumns()) {
    api.syncExecuteCommand("sheet.mutation.set-worksheet-column-count", { ...where, columnCount: columns });
  }
}

/** As making room, nothing to undo: columns that are too narrow for what they are to show get wider. */
function widen({ api }: Grid, sheet: FWorksheet, at: CellPlace, { widths = [] }: Block): void {
  const wider = widths.flatMap((characters, index) => {
    const width = pixelsOfCharacters(characters + 1);
    const column = at.column + index;
    return sheet.getColumnWidth(column) < width ? [[column, width] as const] : [];
  });
  if (wider.length === 0) return;
  api.syncExecuteCommand("sheet.mutation.set-worksheet-col-width", {
    unitId: sheet.getWorkbook().getUnitId(),
    subUnitId: sheet.getSheetId(),
    ranges: wider.map(([column]) => ({ startRow: 0, endRow: 0, startColumn: column, endColumn: column })),
    colWidth: Object.fromEntries(wider),
  });
}

function grid<Content>(
  { row, column, rows, columns }: CellArea,
  pick: (row: number, column: number) => Content,
): Content[][] {
  return Array.from({ length: rows }, (_, down) =>
    Array.from({ length: columns }, (_, right) => pick(row + down, column + right)),
  );
}

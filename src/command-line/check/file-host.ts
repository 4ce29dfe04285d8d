/** A workbook of a file as the port shows one: to read, with the results that are stored. Nothing else is done here. */
import { HostProblem } from "../../host/host-problem";
import type { CellContent, CellPlace, ReadArea, WorkbookReader } from "../../host/workbook-host";
import { areaWithin, partsOf } from "../../workbook/references";
import { placeNumber } from "../../workbook/sheet-size";
import type { Area, Cell, Sheet, Workbook } from "../../workbook/workbook";

/** Cells that a sheet reaches over, filled or not. */
const mostReached = 5_000_000;

export class FileHost implements WorkbookReader {
  readonly evaluatesUntouched = true;
  readonly #workbook: Workbook;
  readonly #sheets: ReadonlyMap<string, KnownCells>;

  constructor(workbook: Workbook) {
    this.#workbook = workbook;
    this.#sheets = new Map(workbook.sheets.map((sheet) => [sheet.name.toUpperCase(), new KnownCells(sheet)]));
  }

  /** The part of a sheet that is used; undefined where it is empty, or too wide to be looked through. */
  used(sheet: string): ReadArea | undefined {
    const { used } = this.#sheet(sheet);
    const { rows, columns } = used;
    return rows * columns === 0 || rows * columns > mostReached ? undefined : this.#read(sheet, used);
  }

  /** What the formulas of a sheet fill. */
  spills(sheet: string): Area[] {
    return this.#sheet(sheet).cells.flatMap(({ row, column, spill }) =>
      spill && (spill.rows > 1 || spill.columns > 1) ? [{ row, column, rows: spill.rows, columns: spill.columns }] : [],
    );
  }

  async read(address: string, beside: CellPlace): Promise<ReadArea> {
    const named = this.#workbook.names?.find(({ name }) => name.toUpperCase() === address.toUpperCase());
    const { sheet = beside.sheet, cells } = partsOf(named ? named.formula.slice(1) : address);
    const { used } = this.#sheet(sheet);
    const area = areaWithin(cells, { rows: used.row + used.rows, columns: used.column + used.columns });
    if (!area || area.rows * area.columns > mostReached)
      throw new HostProblem("gone", { kind: "no such place", address });
    return this.#read(sheet, area);
  }

  /** Files hold no messages. */
  async errorMessage(): Promise<undefined> {
    return undefined;
  }

  async evaluate(expression: string): Promise<never> {
    throw new HostProblem("not here", { kind: "grid cannot work out", expression });
  }

  #sheet(name: string): KnownCells {
    const sheet = this.#sheets.get(name.toUpperCase());
    if (!sheet) throw new HostProblem("gone", { kind: "no such sheet", sheet: name });
    return sheet;
  }

  #read(sheet: string, area: Area): ReadArea {
    const known = this.#sheet(sheet);
    const grid = <Content>(of: (cell: Cell | undefined) => Content): Content[][] =>
      Array.from({ length: area.rows }, (_, row) =>
        Array.from({ length: area.columns }, (__, column) => of(known.at(area.row + row, area.column + column))),
      );
    return {
      sheet: known.name,
      ...area,
      values: grid((cell): CellContent => cell?.value ?? ""),
      formulas: grid((cell) => cell?.formula ?? ""),
      formats: grid((cell) => cell?.style?.format ?? "General"),
    };
  }
}

class KnownCells {
  readonly name: string;
  readonly cells: readonly Cell[];
  readonly used: Area;
  readonly #byPlace = new Map<number, Cell>();

  constructor({ name, cells }: Sheet) {
    this.name = name;
    this.cells = cells;
    let [top, left, bottom, right] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, -1, -1];
    for (const cell of cells) {
      this.#byPlace.set(placeNumber(cell.row, cell.column), cell);
      if (cell.value === undefined && cell.formula === undefined) continue;
      [top, left] = [Math.min(top, cell.row), Math.min(left, cell.column)];
      [bottom, right] = [Math.max(bottom, cell.row), Math.max(right, cell.column)];
    }
    this.used =
      bottom < 0
        ? { row: 0, column: 0, rows: 0, columns: 0 }
        : { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
  }

  at(row: number, column: number): Cell | undefined {
    return this.#byPlace.get(placeNumber(row, column));
  }
}

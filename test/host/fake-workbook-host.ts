import { holdsFormula, placesOf } from "../../src/host/block-cells";
import { HostProblem } from "../../src/host/host-problem";
import { freeSheetName } from "../../src/host/sheet-name";
import type {
  Block,
  BookFormulas,
  BookName,
  CellArea,
  CellContent,
  CellPlace,
  Chart,
  FormulaChange,
  FormulaLeft,
  ReadArea,
  WorkbookHost,
  WriteOutcome,
} from "../../src/host/workbook-host";
import { addressOf, placeOf } from "../../src/workbook/addresses";
import { areaWithin, partsOf } from "../../src/workbook/references";

export interface FakeCell {
  readonly value: CellContent;
  readonly formula?: string;
  readonly format?: string;
  readonly look?: string;
  /** The message of the error that the cell shows. */
  readonly message?: string;
}

/** What a formula gives: one value, or the rows of a spill. */
export type Calculation = (
  formula: string,
  place: CellPlace,
  host: FakeWorkbookHost,
) => CellContent | readonly (readonly CellContent[])[];

type Sheets = Readonly<Record<string, Readonly<Record<string, CellContent | FakeCell>>>>;

/**
 * A workbook in memory, for tests: `new FakeWorkbookHost({ Lot: { A1: 12, B2: { value: 3, formula: "=A1/4" } } })`.
 * A formula keeps the value that it is given; written ones give what `calculation` says, or 0. The first sheet is shown
 * and its A1 selected.
 */
export class FakeWorkbookHost implements WorkbookHost {
  language = "en-US";
  changesFormulas = true;
  drawsCharts = true;
  evaluatesUntouched = true;
  /** What expressions come to; whatever is not among them is refused. */
  readonly expressions: Record<string, CellContent | readonly (readonly CellContent[])[]> = {};
  /** What was to be worked out, in order. */
  readonly evaluated: string[] = [];
  /** Defined names and what they refer to, such as `Pan` and `Lot!$B$3`. */
  readonly names: Record<string, string> = {};
  /** Names that stand for a formula. */
  bookNames: BookName[] = [];
  readonly protectedSheets = new Set<string>();
  /** Cells that take no other formula, as `Lot!B2`. */
  readonly stubborn = new Set<string>();
  /** What was asked of the host, in order. */
  readonly written: { block: Block; at: CellPlace; over: boolean }[] = [];
  readonly charts: Chart[] = [];
  /** Where answers spill, in the place of a formula that is worked out. */
  readonly spills: CellArea[] = [];
  readonly visited: CellPlace[] = [];
  /** When set, everything that is asked of the host fails with it. */
  problem: HostProblem | undefined;
  /** Where given, what formulas give. Cells are calculated when they are written, and by `calculate`. */
  calculation: Calculation | undefined;

  readonly #sheets = new Map<string, Map<string, FakeCell>>();
  readonly #listeners = new Set<() => void>();
  #selected: CellArea;

  constructor(sheets: Sheets = { Sheet1: {} }, calculation?: Calculation) {
    this.calculation = calculation;
    for (const [name, cells] of Object.entries(sheets)) {
      this.#sheets.set(name, new Map());
      for (const [address, cell] of Object.entries(cells)) this.put(name, address, cell);
    }
    this.#selected = { sheet: Object.keys(sheets)[0] ?? "", row: 0, column: 0, rows: 1, columns: 1 };
  }

  // For the tests.

  /** Puts something into a cell, as a maker's hand does, and tells whoever listens. */
  put(sheet: string, address: string, cell: CellContent | FakeCell): void {
    const { row, column } = placeOf(address);
    this.#sheet(sheet).set(`${row},${column}`, typeof cell === "object" ? cell : { value: cell });
    this.#tell();
  }

  /** The cell at an address; undefined for a blank one. */
  cell(sheet: string, address: string): FakeCell | undefined {
    const { row, column } = placeOf(address);
    return this.#sheet(sheet).get(`${row},${column}`);
  }

  /** Selects cells and tells whoever listens. */
  select(sheet: string, address: string): void {
    const area = areaWithin(address, this.#used(sheet));
    if (area === undefined) throw new Error(`"${address}" cannot be selected`);
    this.#selected = { sheet, ...area };
    this.#tell();
  }

  /** Works every formula out again, in the order of its sheet. */
  calculate(): void {
    for (const [sheet, cells] of this.#sheets) {
      for (const [key, cell] of [...cells]) {
        const [row = 0, column = 0] = key.split(",").map(Number);
        if (cell.formula !== undefined) this.#calculate(cell, { sheet, row, column });
      }
    }
  }

  // As the pane sees it.

  async selection(): Promise<ReadArea> {
    this.#failIfTold();
    return this.#read(this.#selected);
  }

  onSelection(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  async read(address: string, beside: CellPlace): Promise<ReadArea> {
    this.#failIfTold();
    const name = Object.keys(this.names).find((each) => each.toLowerCase() === address.trim().toLowerCase());
    const { sheet = beside.sheet, cells } = partsOf(name === undefined ? address : (this.names[name] as string));
    const area = this.#sheets.has(sheet) ? areaWithin(cells, this.#used(sheet)) : undefined;
    if (area === undefined) throw new HostProblem("not here", { kind: "no such place", address });
    return this.#read({ sheet, ...area });
  }

  async usedCells(sheet = this.#selected.sheet): Promise<ReadArea> {
    this.#failIfTold();
    if (!this.#sheets.has(sheet)) throw new HostProblem("not here", { kind: "no such sheet", sheet });
    const { rows, columns } = this.#used(sheet);
    return this.#read({ sheet, row: 0, column: 0, rows, columns });
  }

  async evaluate(expression: string): Promise<readonly (readonly CellContent[])[]> {
    this.#failIfTold();
    this.evaluated.push(expression);
    const value = this.expressions[expression];
    if (value === undefined) throw new HostProblem("unknown", { kind: "grid cannot work out", expression });
    return typeof value === "object" ? value : [[value]];
  }

  async errorMessage({ sheet, row, column }: CellPlace): Promise<string | undefined> {
    this.#failIfTold();
    return this.#sheet(sheet).get(`${row},${column}`)?.message;
  }

  async write(block: Block, at: CellPlace, { over = false } = {}): Promise<WriteOutcome> {
    this.#failIfTold();
    const cells = this.#sheet(at.sheet);
    const places = placesOf(block, at);
    const filled = places.filter(({ row, column }) => (cells.get(`${row},${column}`)?.value ?? "") !== "");
    if (filled.length > 0 && !over) return { filled: filled.map(({ row, column }) => addressOf(row, column)) };
    for (const { row, column } of places) cells.delete(`${row},${column}`);
    this.written.push({ block, at, over });
    for (const cell of block.cells) {
      const place = { sheet: at.sheet, row: at.row + cell.row, column: at.column + cell.column };
      const looks = {
        ...(cell.format !== undefined && { format: cell.format }),
        ...(cell.look !== undefined && { look: cell.look }),
      };
      for (const { row, column } of placesOf({ ...block, cells: [cell] }, at)) {
        cells.set(`${row},${column}`, { value: "", ...cells.get(`${row},${column}`), ...looks });
      }
      const kept: FakeCell = holdsFormula(cell)
        ? { value: 0, formula: String(cell.content), ...looks }
        : { value: cell.content, ...looks };
      if (cell.content !== "") cells.set(`${place.row},${place.column}`, kept);
      this.#calculate(kept, place);
    }
    this.#tell();
    return { written: { ...at, rows: block.rows, columns: block.columns } };
  }

  async addSheet(wish: string): Promise<string> {
    this.#failIfTold();
    const name = freeSheetName(wish, [...this.#sheets.keys()]);
    this.#sheets.set(name, new Map());
    return name;
  }

  async spillAround({ sheet, row, column }: CellPlace): Promise<CellArea | undefined> {
    this.#failIfTold();
    return this.spills.find(
      (each) =>
        each.sheet === sheet &&
        row >= each.row &&
        row < each.row + each.rows &&
        column >= each.column &&
        column < each.column + each.columns,
    );
  }

  async goTo(place: CellPlace): Promise<void> {
    this.#failIfTold();
    this.visited.push(place);
    this.select(place.sheet, addressOf(place.row, place.column));
  }

  async addChart(chart: Chart): Promise<void> {
    this.#failIfTold();
    this.charts.push(chart);
  }

  async formulasWith(text: string): Promise<BookFormulas> {
    this.#failIfTold();
    const holds = (formula = "") => formula.toUpperCase().includes(text.toUpperCase());
    const sheets = [...this.#sheets].map(([sheet, cells]) => ({
      sheet,
      isProtected: this.protectedSheets.has(sheet),
      cells: [...cells]
        .flatMap(([key, { formula, value }]) => {
          const [row = 0, column = 0] = key.split(",").map(Number);
          return formula !== undefined && holds(formula) ? [{ row, column, formula, value }] : [];
        })
        .sort((one, other) => one.row - other.row || one.column - other.column),
    }));
    return { sheets, names: this.bookNames.filter(({ name, formula }) => holds(name) || holds(formula)) };
  }

  async changeFormulas(sheet: string, changes: readonly FormulaChange[]): Promise<readonly FormulaLeft[]> {
    this.#failIfTold();
    const cells = this.#sheets.get(sheet);
    if (cells === undefined) throw new HostProblem("gone", { kind: "sheet gone", sheet });
    if (this.protectedSheets.has(sheet)) throw new HostProblem("protected", "sheet protected");
    const left: FormulaLeft[] = [];
    for (const { row, column, was, formula } of changes) {
      const cell = cells.get(`${row},${column}`);
      const isStubborn = this.stubborn.has(`${sheet}!${addressOf(row, column)}`);
      if (cell?.formula !== was) left.push({ row, column, trouble: "another formula by now" });
      else if (isStubborn) left.push({ row, column, trouble: "formula not taken" });
      else {
        const changed = { ...cell, formula };
        cells.set(`${row},${column}`, changed);
        this.#calculate(changed, { sheet, row, column });
      }
    }
    this.#tell();
    return left;
  }

  async putNames(names: readonly BookName[]): Promise<void> {
    this.#failIfTold();
    // As everywhere, a name that could be a reference is none.
    if (names.some(({ name }) => /^R\d*C\d*$/i.test(name))) {
      throw new HostProblem("not here", "place or formula not known");
    }
    const key = ({ name, sheet = "" }: BookName) => `${sheet}!${name.toUpperCase()}`;
    const put = new Map(names.map((each) => [key(each), each]));
    const kept = this.bookNames.map((each) => ({ ...each, ...put.get(key(each)) }));
    const known = new Set(kept.map(key));
    this.bookNames = [...kept, ...names.filter((each) => !known.has(key(each)))];
  }

  async takeNames(names: readonly string[]): Promise<void> {
    this.#failIfTold();
    const taken = new Set(names.map((name) => name.toUpperCase()));
    this.bookNames = this.bookNames.filter(({ name, sheet }) => sheet !== undefined || !taken.has(name.toUpperCase()));
  }

  #tell(): void {
    for (const listener of this.#listeners) listener();
  }

  #failIfTold(): void {
    if (this.problem) throw this.problem;
  }

  #calculate(cell: FakeCell, place: CellPlace): void {
    if (cell.formula === undefined || this.calculation === undefined) return;
    const answer = this.calculation(cell.formula, place, this);
    const rows: readonly (readonly CellContent[])[] = Array.isArray(answer) ? answer : [[answer as CellContent]];
    rows.forEach((values, down) => {
      values.forEach((value, right) => {
        const own = down === 0 && right === 0;
        this.#sheet(place.sheet).set(
          `${place.row + down},${place.column + right}`,
          own
            ? { ...cell, value }
            : { ...this.#sheet(place.sheet).get(`${place.row + down},${place.column + right}`), value },
        );
      });
    });
  }

  #sheet(name: string): Map<string, FakeCell> {
    const sheet = this.#sheets.get(name);
    if (sheet === undefined) throw new HostProblem("not here", { kind: "no such sheet", sheet: name });
    return sheet;
  }

  #used(name: string): { rows: number; columns: number } {
    const places = [...this.#sheet(name).keys()].map((key) => key.split(",").map(Number));
    return {
      rows: Math.max(1, ...places.map(([row = 0]) => row + 1)),
      columns: Math.max(1, ...places.map(([, column = 0]) => column + 1)),
    };
  }

  #read(area: CellArea): ReadArea {
    const cells = this.#sheet(area.sheet);
    const grid = <Content>(pick: (cell: FakeCell | undefined) => Content): Content[][] =>
      Array.from({ length: area.rows }, (_, down) =>
        Array.from({ length: area.columns }, (_, right) =>
          pick(cells.get(`${area.row + down},${area.column + right}`)),
        ),
      );
    return {
      ...area,
      values: grid((cell) => cell?.value ?? ""),
      formulas: grid((cell) => cell?.formula ?? ""),
      formats: grid((cell) => cell?.format ?? "General"),
    };
  }
}

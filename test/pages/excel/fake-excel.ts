import { addressOf, placeOf } from "../../../src/workbook/addresses";
import { areaWithin, sheetInFormula } from "../../../src/workbook/references";
import type { Area } from "../../../src/workbook/workbook";

interface FakeCell {
  formula: string | number | boolean;
  value?: string | number | boolean;
  format?: string;
  looks?: Record<string, unknown>;
}

interface FakeSheet {
  readonly cells: Map<string, FakeCell>;
  isProtected?: boolean;
  /** Sizes of spills, by the address of their formula. */
  readonly spills?: Readonly<Record<string, string>>;
}

/** A table: where it is, and whether it has a row of totals below. */
interface FakeTable {
  readonly sheet: string;
  readonly address: string;
  readonly columns: readonly string[];
  readonly showTotals?: boolean;
}

interface AddedName {
  readonly formula: string;
  readonly type: string;
  readonly value: unknown;
  readonly range?: readonly [sheet: string, address: string];
  readonly array?: readonly (readonly unknown[])[];
  visible: boolean;
}

/** A name of the whole workbook. */
interface BookNameInFake {
  readonly type: string;
  readonly value: unknown;
  readonly range?: readonly [sheet: string, address: string];
  formula?: string;
  readonly comment?: string;
}

/** Excel's own kind of refusal. */
export const refusal = (code: string): Error => Object.assign(new Error(code), { code });

const whole = { rows: 1_048_576, columns: 16_384 };

/**
 * What the Excel host asks of Excel, over cells in memory. As in Excel nothing happens before `sync`, and nothing can
 * be read that was not loaded: the mock of Office's own makers has no cells behind its ranges.
 */
export class FakeExcel {
  readonly sheets = new Map<string, FakeSheet>();
  readonly names = new Map<string, BookNameInFake>();
  /** Names of sheets, as `Lot!Name`, with what they stand for. */
  readonly sheetNames = new Map<string, AddedName>();
  /** What the formula of a name that is added comes to. */
  readonly formulas = new Map<string, Omit<AddedName, "visible" | "formula">>();
  readonly tables = new Map<string, FakeTable>();
  readonly charts: Record<string, unknown>[] = [];
  readonly handlers = new Map<string, Set<() => Promise<void>>>();
  selected: readonly [sheet: string, address: string] = ["Lot", "A1"];
  /** What each `sync` had to do that changes the workbook. */
  readonly batches: string[][] = [];
  /** Every property that was loaded. */
  readonly loads: string[] = [];
  /** When set, the next `sync` is refused with it. */
  refuse: string | undefined;
  /** When set, whatever is asked of a name is refused with it. */
  refuseNames: string | undefined;
  /** Cells into which Excel takes nothing, as `Lot!B2`: parts of an array formula, say. */
  readonly refusedCells = new Set<string>();
  /** How often something was asked of Excel. */
  syncs = 0;
  isReadOnly = false;

  readonly ClearApplyTo = { contents: "Contents" };
  readonly ChartType = { columnClustered: "ColumnClustered" };
  readonly ChartSeriesBy = { columns: "Columns" };
  readonly NamedItemType = { range: "Range" };

  addSheet(name: string, cells: Record<string, FakeCell | string | number>, more: Omit<FakeSheet, "cells"> = {}): void {
    const byPlace = Object.entries(cells).map(([address, cell]) => {
      const { row, column } = placeOf(address);
      return [`${row},${column}`, typeof cell === "object" ? cell : { formula: cell }] as const;
    });
    this.sheets.set(name, { cells: new Map(byPlace), ...more });
  }

  cell(sheet: string, address: string): FakeCell | undefined {
    const { row, column } = placeOf(address);
    return this.sheets.get(sheet)?.cells.get(`${row},${column}`);
  }

  /** `Excel.run`, with options, another context, or nothing before the batch. */
  run = async (...given: unknown[]): Promise<unknown> => {
    const batch = given.at(-1) as (context: unknown) => Promise<unknown>;
    return batch(this.#context());
  };

  #queue: (() => void)[] = [];
  #changes: string[] = [];

  #context() {
    return {
      workbook: {
        worksheets: {
          ...this.#worksheets(),
          getItem: (name: string) => this.#sheet(name),
          getItemOrNullObject: (name: string) => this.#sheet(name),
          getActiveWorksheet: () => this.#sheet(this.selected[0]),
          onActivated: this.#event("activated"),
          onChanged: this.#event("changed"),
        },
        names: this.#names(),
        tables: { getItemOrNullObject: (name: string) => this.#table(name) },
        onSelectionChanged: this.#event("selection"),
        getSelectedRange: () => this.#rangeAt(...this.selected),
      },
      sync: async () => {
        this.syncs += 1;
        const queue = this.#queue;
        this.#queue = [];
        if (this.refuse !== undefined) {
          const code = this.refuse;
          this.refuse = undefined;
          throw refusal(code);
        }
        for (const act of queue) act();
        if (this.#changes.length > 0) this.batches.push(this.#changes);
        this.#changes = [];
      },
    };
  }

  #worksheets() {
    const items: Record<string, unknown>[] = [];
    return {
      items,
      load: (names: string) => {
        for (const name of this.sheets.keys()) {
          const sheet = this.#sheet(name);
          (sheet as { load(names: string): void }).load(names.replaceAll("items/", ""));
          items.push(sheet);
        }
      },
      add: (name: string) =>
        this.#queue.push(() => {
          if (this.isReadOnly || this.sheets.has(name)) throw refusal("AccessDenied");
          this.#changes.push(`add ${name}`);
          this.sheets.set(name, { cells: new Map() });
        }),
    };
  }

  #event(name: string) {
    return {
      add: (handler: () => Promise<void>) => {
        const handlers = this.handlers.get(name) ?? new Set();
        this.handlers.set(name, handlers);
        this.#queue.push(() => handlers.add(handler));
        return { remove: () => this.#queue.push(() => handlers.delete(handler)) };
      },
    };
  }

  /** Properties can be read when they were loaded and synced, and written at the next sync. */
  #object(
    parts: object,
    read: Record<string, () => unknown>,
    write: Record<string, (value: unknown) => void> = {},
  ): Record<string, unknown> {
    const loaded = new Map<string, unknown>();
    const load = (names: string) => {
      for (const name of names.split(",")) {
        const [part = "", rest] = name.split("/");
        const inner = (parts as Record<string, { load(name: string): void }>)[part];
        // Of a collection the items come with what is asked of them.
        if (rest !== undefined && inner !== undefined) inner.load(rest);
        else this.#queue.push(() => loaded.set("isNullObject", isMissing(read)).set(part, read[part]?.()));
        this.loads.push(name);
      }
    };
    return new Proxy({ load, ...parts } as Record<string, unknown>, {
      get: (target, name: string) => {
        if (name in target || name === "then") return target[name];
        if (!loaded.has(name)) throw refusal("PropertyNotLoaded");
        return loaded.get(name);
      },
      set: (_, name: string, value) => {
        const change = write[name];
        if (change === undefined) throw new Error(`${name} cannot be written`);
        this.#queue.push(() => change(value));
        return true;
      },
    });
  }

  #sheet(name: string): Record<string, unknown> {
    const known = () => this.sheets.get(name);
    const protection = this.#object({}, { protected: () => known()?.isProtected ?? false });
    return this.#object(
      {
        protection,
        tables: this.#tablesOf(name),
        names: {
          items: [...this.sheetNames.keys()]
            .filter((key) => key.startsWith(`${name}!`))
            .map((key) => this.#sheetName(key)),
          load() {
            for (const item of this.items) (item as { load(names: string): void }).load("name,formula,comment");
          },
          getItemOrNullObject: (of: string) => this.#sheetName(`${name}!${of}`),
          add: (of: string, formula: string) => {
            this.#queue.push(() => {
              if (known()?.isProtected || this.isReadOnly) throw refusal("AccessDenied");
              const found = this.formulas.get(formula);
              if (found === undefined) throw refusal("InvalidArgument");
              this.#changes.push(`add ${name}!${of} ${formula}`);
              this.sheetNames.set(`${name}!${of}`, { ...found, formula, visible: true });
            });
            return this.#sheetName(`${name}!${of}`);
          },
        },
        activate: () => this.#queue.push(() => this.#changes.push(`show ${name}`)),
        getRange: (address: string) => this.#rangeAt(name, address),
        getCell: (row: number, column: number) => this.#range(name, { row, column, rows: 1, columns: 1 }),
        getRangeByIndexes: (row: number, column: number, rows: number, columns: number) =>
          this.#range(name, { row, column, rows, columns }),
        getUsedRangeOrNullObject: () => this.#range(name, used(known())),
        charts: {
          add: (type: string, range: Record<string, unknown>, seriesBy: string) => {
            const chart: Record<string, unknown> = { type, seriesBy, title: {}, legend: {}, over: range.at };
            chart.series = {
              getItemAt: () => ({
                setXAxisValues: (names: Record<string, unknown>) => {
                  chart.names = names.at;
                },
              }),
            };
            chart.setPosition = (cell: Record<string, unknown>) => {
              chart.position = cell.at;
            };
            this.charts.push(chart);
            return chart;
          },
        },
      },
      { name: () => name, isNullObject: () => known() === undefined },
    );
  }

  #table(name: string): Record<string, unknown> {
    const known = this.tables.get(name);
    const columns = (known?.columns ?? []).map((each) => ({ name: each }));
    return this.#object(
      {
        columns: this.#object({}, { items: () => columns }),
        getRange: () => this.#rangeAt(known?.sheet ?? "", known?.address ?? ""),
      },
      {
        name: () => name,
        showHeaders: () => true,
        showTotals: () => known?.showTotals === true,
        isNullObject: () => known === undefined,
      },
    );
  }

  #tablesOf(sheet: string): Record<string, unknown> {
    const names = [...this.tables].flatMap(([name, table]) => (table.sheet === sheet ? [name] : []));
    return this.#object({}, { items: () => names.map((name) => this.#table(name)) });
  }

  /** The names of the workbook. */
  #names(): Record<string, unknown> {
    const items: Record<string, unknown>[] = [];
    return {
      items,
      load: (names: string) => {
        for (const name of this.names.keys()) {
          const item = this.#name(name);
          (item as { load(names: string): void }).load(names.replaceAll("items/", ""));
          items.push(item);
        }
      },
      getItemOrNullObject: (name: string) => this.#name(name),
      add: (name: string, formula: string, comment: string) => {
        this.#queue.push(() => {
          if (this.isReadOnly) throw refusal("AccessDenied");
          if (/^R\d*C\d*$/i.test(name)) throw refusal("InvalidArgument");
          this.#changes.push(`add ${name}`);
          this.names.set(name, { type: "Error", value: "#VALUE!", formula, comment });
        });
        return this.#name(name);
      },
    };
  }

  /** Large or small letters make no difference. */
  #name(wanted: string): Record<string, unknown> {
    const name = [...this.names.keys()].find((each) => each.toUpperCase() === wanted.toUpperCase()) ?? wanted;
    const item = () => this.names.get(name);
    return this.#object(
      {
        getRange: () => this.#rangeAt(...(item()?.range ?? ["", ""])),
        delete: () => {
          this.#queue.push(() => {
            this.#changes.push(`delete ${name}`);
            this.names.delete(name);
          });
        },
      },
      {
        name: () => name,
        type: () => item()?.type,
        value: () => item()?.value,
        formula: () => item()?.formula,
        comment: () => item()?.comment ?? "",
        isNullObject: () => item() === undefined,
      },
      {
        formula: (formula) => {
          const known = item();
          if (known) known.formula = formula as string;
        },
      },
    );
  }

  #sheetName(key: string): Record<string, unknown> {
    const item = () => this.sheetNames.get(key);
    const value =
      <Content>(pick: (item: AddedName) => Content) =>
      () => {
        const found = item();
        if (found === undefined) return undefined;
        if (this.refuseNames !== undefined) throw refusal(this.refuseNames);
        return pick(found);
      };
    return this.#object(
      {
        arrayValues: this.#object({}, { values: value(({ array }) => array) }),
        getRange: () => this.#rangeAt(...(item()?.range ?? ["", ""])),
        delete: () => {
          this.#queue.push(() => {
            this.#changes.push(`delete ${key}`);
            this.sheetNames.delete(key);
          });
        },
      },
      {
        name: () => key.split("!").at(-1),
        type: value(({ type }) => type),
        formula: value(({ formula }) => formula),
        comment: () => "",
        value: value(({ value }) => value),
        isNullObject: () => item() === undefined,
      },
      {
        visible: (isVisible) => {
          const found = item();
          if (found) found.visible = isVisible as boolean;
        },
      },
    );
  }

  #rangeAt(sheet: string, address: string): Record<string, unknown> {
    const area = areaWithin(address, whole);
    if (area === undefined) throw refusal("InvalidArgument");
    return this.#range(sheet, area);
  }

  #range(sheet: string, area: Area | undefined): Record<string, unknown> {
    const { row, column, rows, columns } = area ?? { row: 0, column: 0, rows: 0, columns: 0 };
    const known = this.sheets.get(sheet);
    const at = `${sheet}!${addressOf(row, column)}:${addressOf(row + rows - 1, column + columns - 1)}`;
    const grid = (pick: (cell: FakeCell | undefined) => unknown) => () =>
      Array.from({ length: rows }, (_, down) =>
        Array.from({ length: columns }, (_, right) => pick(known?.cells.get(`${row + down},${column + right}`))),
      );
    const each = (change: (cell: FakeCell, down: number, right: number) => void) => {
      if (known?.isProtected || this.isReadOnly) throw refusal("AccessDenied");
      for (let down = 0; down < rows; down += 1) {
        for (let right = 0; right < columns; right += 1) {
          const key = `${row + down},${column + right}`;
          const cell = known?.cells.get(key) ?? { formula: "" };
          change(cell, down, right);
          known?.cells.set(key, cell);
        }
      }
    };
    const put = (what: string, apply: (cell: FakeCell, content: unknown) => void) => (value: unknown) => {
      this.#changes.push(`${what} ${at}`);
      each((cell, down, right) => {
        if (this.refusedCells.has(`${sheet}!${addressOf(row + down, column + right)}`))
          throw refusal("InvalidOperation");
        apply(cell, (value as unknown[][])[down]?.[right]);
      });
    };
    const look = (part: string) =>
      new Proxy({} as Record<string, unknown>, {
        set: (_, name: string, value) => {
          this.#queue.push(() => each((cell) => (cell.looks = { ...cell.looks, [`${part}${name}`]: value })));
          return true;
        },
      });
    const spill = known?.spills?.[addressOf(row, column)];
    const worksheet = this.#sheet(sheet);
    return this.#object(
      {
        at,
        worksheet,
        format: {
          font: look("font."),
          fill: look("fill."),
          borders: { getItem: (edge: string) => look(`${edge}.`) },
        },
        select: () =>
          this.#queue.push(() => {
            this.selected = [sheet, at.slice(sheet.length + 1)];
            this.#changes.push(`select ${at}`);
          }),
        clear: () => {
          this.#queue.push(() => {
            this.#changes.push(`clear ${at}`);
            each((cell) => {
              cell.formula = "";
              delete cell.value;
            });
          });
        },
        getSpillParentOrNullObject: () => {
          const first = Object.entries(known?.spills ?? {}).find(([, address]) => {
            const over = areaWithin(address, whole);
            const [down, right] = [row - (over?.row ?? 0), column - (over?.column ?? 0)];
            return down >= 0 && right >= 0 && down < (over?.rows ?? 0) && right < (over?.columns ?? 0);
          })?.[0];
          return first === undefined ? this.#object({}, { isNullObject: () => true }) : this.#rangeAt(sheet, first);
        },
        getSpillingToRangeOrNullObject: () =>
          spill === undefined ? this.#object({}, { isNullObject: () => true }) : this.#rangeAt(sheet, spill),
      },
      {
        address: () => `${sheetInFormula(sheet)}!${at.slice(sheet.length + 1)}`,
        rowIndex: () => row,
        columnIndex: () => column,
        rowCount: () => rows,
        columnCount: () => columns,
        formulas: grid((cell) => cell?.formula ?? ""),
        values: grid((cell) => cell?.value ?? (isFormula(cell?.formula) ? 0 : (cell?.formula ?? ""))),
        numberFormat: grid((cell) => cell?.format ?? "General"),
        isNullObject: () => area === undefined,
      },
      {
        formulas: put("formulas", (cell, content) => {
          // A mark that makes a text of whatever follows.
          const marked = typeof content === "string" && content.startsWith("'");
          cell.formula = marked ? content.slice(1) : (content as string);
          if (marked) cell.value = content.slice(1);
        }),
        numberFormat: put("formats", (cell, content) => {
          cell.format = content as string;
        }),
      },
    );
  }
}

const isFormula = (content: unknown): boolean => typeof content === "string" && content.startsWith("=");

const isMissing = (read: Record<string, () => unknown>): boolean => read.isNullObject?.() === true;

function used(sheet: FakeSheet | undefined): Area | undefined {
  const places = [...(sheet?.cells.keys() ?? [])].map((key) => key.split(",").map(Number) as [number, number]);
  if (places.length === 0) return undefined;
  const rows = places.map(([row]) => row);
  const columns = places.map(([, column]) => column);
  const [row, column] = [Math.min(...rows), Math.min(...columns)];
  return { row, column, rows: Math.max(...rows) - row + 1, columns: Math.max(...columns) - column + 1 };
}

import { LocaleType, LogLevel } from "@univerjs/core";
import { CalculationMode, UniverSheetsNodeCorePreset } from "@univerjs/preset-sheets-node-core";
import { CellError, type CellValue } from "../cells/values";
import { idsByName } from "../named-formulas/own-names";
import type { SortedTable, Sorting } from "../sorting/sorted-table";
import { placeOf } from "../workbook/addresses";
import { isErrorAnswer, type Workbook } from "../workbook/workbook";
import type { LeftFormulas } from "./left-formulas";
import { openEngine } from "./open-engine";
import { constantData, snapshotOf, workbookOf } from "./snapshot";
import { sortTable } from "./sort-table";

/** A workbook that calculates, without a page. */
export interface NodeWorkbook {
  /** Calculates every formula anew. Values read before the first calculation are blank. */
  calculate(): Promise<void>;
  /** What a cell holds, unrounded; undefined for a blank. Sheets by name, cells as `B4`. */
  value(sheet: string, address: string): CellValue | undefined;
  /** The size of what the formula in a cell gives. */
  size(sheet: string, address: string): { readonly rows: number; readonly columns: number };
  /** Puts in a constant, a formula (text that begins with an equals sign), or null to empty the cell. */
  set(sheet: string, address: string, content: number | string | boolean | null): void;
  /** Takes rows out or puts empty ones in, as its commands do for a maker. Rows count from 1. */
  deleteRows(sheet: string, row: number, count?: number): void;
  insertRows(sheet: string, row: number, count?: number): void;
  /** Sorts the rows of a table by what the last calculation has left in a column. */
  sort(sorting: Sorting): SortedTable;
  /** Takes back the last step of a maker. */
  undo(): void;
  redo(): void;
  /** What an expression would come to in a cell, which stays as it is; a blank is null. */
  evaluate(expression: string, sheet: string, address: string): Promise<readonly (readonly (CellValue | null)[])[]>;
  /** With the results of the last calculation and the sizes that spills have now. */
  toWorkbook(): Workbook;
  close(): void;
}

/** How many workbooks this process has opened: each needs an id of its own. */
let opened = 0;

/** `left`: formulas that keep the results that they came with. */
export function openInNode(workbook: Workbook, left?: LeftFormulas): NodeWorkbook {
  const { univer, api, book, injector, errors, spills, evaluation, rawValue } = openEngine({
    settings: { locale: LocaleType.EN_US, locales: { [LocaleType.EN_US]: {} }, logLevel: LogLevel.SILENT },
    plugins: (formula) => {
      const initialFormulaComputing = CalculationMode.NO_CALCULATION;
      return UniverSheetsNodeCorePreset({ formula: { ...formula, initialFormulaComputing } }).plugins;
    },
    snapshot: snapshotOf(workbook, `workbook-${++opened}`, left),
    byName: idsByName(workbook.names),
  });
  const formulas = api.getFormula();

  const facade = (name: string) => {
    const sheet = book.getSheetByName(name);
    if (!sheet) throw new Error(`there is no sheet "${name}"`);
    return sheet;
  };
  const sheetNamed = (name: string) => facade(name).getSheet();

  const calculateOnce = async () => {
    // Asked for beforehand: after the end, the engine would wait half a second for another calculation to begin.
    const applied = formulas.onCalculationResultApplied();
    formulas.executeCalculation();
    await applied;
  };

  return {
    async calculate() {
      // What depends on a spill sees the size that it had before: once more when a size has changed.
      const before = spills.sizes();
      await calculateOnce();
      if (spills.sizes() !== before) await calculateOnce();
      errors.settle(rawValue);
    },
    value(sheetName, address) {
      const { row, column } = placeOf(address);
      const sheetId = sheetNamed(sheetName).getSheetId();
      const value = rawValue(sheetId, row, column);
      if (typeof value !== "string" || !isErrorAnswer(value)) return value;
      const { message, reason } = errors.at(sheetId, row, column) ?? {};
      return new CellError(value, message, reason);
    },
    size(sheetName, address) {
      const { row, column } = placeOf(address);
      return spills.sizeAt(sheetNamed(sheetName).getSheetId(), row, column) ?? { rows: 1, columns: 1 };
    },
    set(sheetName, address, content) {
      const { row, column } = placeOf(address);
      const range = facade(sheetName).getRange(row, column);
      if (content === null) range.clearContent();
      else if (typeof content === "string" && content.startsWith("=")) range.setValue({ f: content, v: null, t: null });
      else range.setValue({ ...constantData(content), f: null, si: null });
    },
    deleteRows: (sheet, row, count = 1) => void facade(sheet).deleteRows(row - 1, count),
    insertRows: (sheet, row, count = 1) => void facade(sheet).insertRows(row - 1, count),
    sort: (sorting) => sortTable(injector, book.getId(), workbookOf(book.save(), spills), sorting),
    undo: () => void book.undo(),
    redo: () => void book.redo(),
    evaluate: (expression, sheet, address) =>
      evaluation(expression, { sheet: sheetNamed(sheet).getSheetId(), ...placeOf(address) }),
    toWorkbook: () => workbookOf(book.save(), spills),
    close: () => univer.dispose(),
  };
}

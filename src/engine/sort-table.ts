/** Sorts a table inside the engine, formulas included, as one step to undo. */
import {
  type Workbook as EngineWorkbook,
  type ICellData,
  ICommandService,
  type Injector,
  type IObjectMatrixPrimitiveType,
  IUniverInstanceService,
  type Worksheet,
} from "@univerjs/core";
import {
  type IReorderRangeCommandParams,
  ReorderRangeCommand,
  SetRangeValuesMutation,
  SheetInterceptorService,
} from "@univerjs/sheets";
import { isMoving, type Moving } from "../sorting/sorted-formulas";
import { type SortedTable, type Sorting, sortedTable } from "../sorting/sorted-table";
import { tablesIn } from "../workbook/table-references";
import type { Workbook } from "../workbook/workbook";
import { formulaData } from "./snapshot";

type Cells = IObjectMatrixPrimitiveType<ICellData>;

/** The engine's own command carries cells to other rows as they are; how formulas are written there goes with it. */
interface SortParams extends IReorderRangeCommandParams {
  readonly formulas?: { readonly before: Cells; readonly after: Cells };
}

/** Once for an engine, before the first table is sorted. */
export function prepareSorting(injector: Injector): void {
  injector.get(SheetInterceptorService).interceptCommand({
    getMutations({ id, params }) {
      const { unitId, subUnitId, formulas } = (params ?? {}) as Partial<SortParams>;
      if (id !== ReorderRangeCommand.id || !formulas) return { redos: [], undos: [] };
      const write = (cellValue: Cells) => [{ id: SetRangeValuesMutation.id, params: { unitId, subUnitId, cellValue } }];
      return { redos: write(formulas.after), undos: write(formulas.before) };
    },
  });
}

/** `workbook` is what the engine holds now, with the answers of the last calculation, which are sorted by. */
export function sortTable(injector: Injector, bookId: string, workbook: Workbook, sorting: Sorting): SortedTable {
  const sorted = sortedTable(workbook, sorting);
  if (sorted.is !== "sorted") return sorted;
  const book = injector.get(IUniverInstanceService).getUnit<EngineWorkbook>(bookId);
  const sheet = book?.getSheetBySheetName(sorting.sheet);
  if (!sheet) throw new Error(`there is no sheet "${sorting.sheet}"`);
  const { top, bottom, left, right } = sorted.moving;
  const params: SortParams = {
    unitId: bookId,
    subUnitId: sheet.getSheetId(),
    range: { startRow: top, endRow: bottom, startColumn: left, endColumn: right },
    order: Object.fromEntries(sorted.order),
    formulas: formulasOf(sorted, sheet, workbook),
  };
  if (!injector.get(ICommandService).syncExecuteCommand(ReorderRangeCommand.id, params)) {
    throw new Error("the engine did not sort the rows");
  }
  return sorted;
}

/**
 * The engine finds formulas by what is written, not by what is moved: every formula is written where it comes to stand,
 * and taken out where it stood. Formulas that were filled down share one text, told by its place: all get their own.
 */
function formulasOf(
  { formulas, order, moving }: Extract<SortedTable, { is: "sorted" }>,
  sheet: Worksheet,
  workbook: Workbook,
): { before: Cells; after: Cells } {
  const tables = tablesIn(workbook.sheets);
  const name = sheet.getName();
  const raw = (row: number, column: number): ICellData => sheet.getCellRaw(row, column) ?? {};
  const written = (formula: string, row: number, { custom }: ICellData) =>
    formulaData(formula, { sheet: name, row }, tables, custom);
  const [before, after]: [Cells, Cells] = [{}, {}];
  for (const { from, row, formula } of formulas) {
    const cell = raw(from.row, from.column);
    put(before, from.row, from.column, written(from.formula ?? formula, from.row, cell));
    put(after, row, from.column, written(formula, row, cell));
  }
  const none = ({ t }: ICellData): ICellData => ({ f: null, si: null, ...(t !== undefined && { t }) });
  for (const { from, row } of formulas) {
    if (!after[from.row]?.[from.column]) {
      put(after, from.row, from.column, none(raw(order.get(from.row) ?? from.row, from.column)));
    }
    if (!before[row]?.[from.column]) put(before, row, from.column, none(raw(row, from.column)));
  }
  for (const { row, column, formula } of sharingWith(moving, sheet, workbook)) {
    const own = written(formula, row, raw(row, column));
    put(before, row, column, own);
    put(after, row, column, { ...own });
  }
  return { before, after };
}

/** The formulas of cells that stay and share their text with one that moves. */
function sharingWith(moving: Moving, sheet: Worksheet, { sheets }: Workbook) {
  const name = sheet.getName();
  const cells = sheets.find((each) => each.name === name)?.cells ?? [];
  const shared = cells.flatMap(({ row, column, formula }) => {
    const id = formula === undefined ? undefined : sheet.getCellRaw(row, column)?.si;
    return formula !== undefined && id ? [{ row, column, formula, id }] : [];
  });
  const moves = ({ row, column }: { row: number; column: number }) => isMoving({ sheet: name, row, column }, moving);
  const ids = new Set(shared.filter(moves).map(({ id }) => id));
  return shared.filter((each) => ids.has(each.id) && !moves(each));
}

function put(cells: Cells, row: number, column: number, cell: ICellData): void {
  const inRow = cells[row] ?? {};
  cells[row] = inRow;
  inRow[column] = cell;
}

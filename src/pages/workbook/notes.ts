import { type ICellData, ICommandService, type Injector, RedoCommandId, UndoCommandId } from "@univerjs/core";
import { type ISetRangeValuesMutationParams, SetRangeValuesMutation } from "@univerjs/preset-sheets-core";
import type { Api } from "./grid";

/**
 * A note says what belongs into its cell: deleting, clearing, typing and pasting change what the cell holds, and leave
 * the note. Undoing and redoing bring back whole cells, such as those of a deleted row, and are left alone.
 */
export function keepNotes(api: Api, injector: Injector): void {
  injector.get(ICommandService).beforeCommandExecuted(({ id, params }, options) => {
    if (id !== SetRangeValuesMutation.id || options?.fromFormula) return;
    const { subUnitId, cellValue, trigger } = params as ISetRangeValuesMutationParams & { trigger?: string };
    if (trigger === UndoCommandId || trigger === RedoCommandId) return;
    const cells = api.getActiveWorkbook()?.getSheetBySheetId(subUnitId)?.getSheet().getCellMatrix();
    if (!cells || !cellValue) return;
    for (const [row, values] of Object.entries(cellValue)) {
      for (const [column, value] of Object.entries<ICellData | null | undefined>(values ?? {})) {
        values[Number(column)] = withNote(value, cells.getValue(Number(row), Number(column))?.custom?.note);
      }
    }
  });
}

/** What is about to be written over a cell, with the note that stands there: no other, and none where none stands. */
function withNote(written: ICellData | null | undefined, note: unknown): ICellData | null | undefined {
  if (!written) return note === undefined ? written : { ...blank, custom: { note } };
  if (written.custom === undefined) return written;
  const { note: _, ...others } = written.custom ?? {};
  const custom = note === undefined ? others : { ...others, note };
  return { ...written, custom: Object.keys(custom).length > 0 ? custom : null };
}

const blank: ICellData = { v: null, f: null, si: null, p: null, s: null };

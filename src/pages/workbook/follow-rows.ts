/** Tables, charts and pages follow rows and columns that are put in or taken out, in the same step to undo. */
import { CommandType, ICommandService, type IMutation, type IRange, IUniverInstanceService } from "@univerjs/core";
import {
  InsertColCommand,
  InsertRowCommand,
  RemoveColCommand,
  RemoveRowCommand,
  SheetInterceptorService,
} from "@univerjs/preset-sheets-core";
import { type Kept, keptIn } from "../../engine/snapshot";
import { movedParts, type Shift } from "../../workbook/moved-areas";
import type { Grid } from "./grid";

interface KeptParts {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly kept: Kept;
}

/** As the engine's own changes of a sheet: it is undone with the rows, and counts as a change by hand. */
const SetKeptParts: IMutation<KeptParts> = {
  id: "sheet.mutation.set-kept-parts",
  type: CommandType.MUTATION,
  handler: (accessor, { unitId, subUnitId, kept }) => {
    const book = accessor.get(IUniverInstanceService).getUnit(unitId) as Book | null;
    const sheet = book?.getSheetBySheetId(subUnitId);
    if (!sheet) return false;
    sheet.getConfig().custom = { ...kept };
    return true;
  },
};

interface Book {
  getSheetBySheetId(id: string): { getConfig(): { custom?: object } } | null;
}

export function followRows({ api, injector }: Pick<Grid, "api" | "injector">): void {
  injector.get(ICommandService).registerCommand(SetKeptParts);
  injector.get(SheetInterceptorService).interceptCommand({
    getMutations({ id, params }) {
      const book = api.getActiveWorkbook();
      const { range, subUnitId } = (params ?? {}) as { range?: IRange; subUnitId?: string };
      const sheet = subUnitId ? book?.getSheetBySheetId(subUnitId) : book?.getActiveSheet();
      const shift = sheet && range && shiftOf(id, range, sheet.getSheetName());
      if (!book || !shift) return { redos: [], undos: [] };
      const changes = book.getSheets().flatMap((each) => {
        const before = keptIn(each.getSheet().getConfig());
        const after = movedParts(before, each.getSheetName(), shift);
        if (JSON.stringify(after) === JSON.stringify(before)) return [];
        const place = { unitId: book.getId(), subUnitId: each.getSheetId() };
        return [{ redo: { ...place, kept: after }, undo: { ...place, kept: before } }];
      });
      return {
        redos: changes.map(({ redo }) => ({ id: SetKeptParts.id, params: redo })),
        undos: changes.map(({ undo }) => ({ id: SetKeptParts.id, params: undo })),
      };
    },
  });
}

function shiftOf(command: string, range: IRange, sheet: string): Shift | undefined {
  const rows = { sheet, along: "rows", at: range.startRow, count: range.endRow - range.startRow + 1 } as const;
  const columns = {
    sheet,
    along: "columns",
    at: range.startColumn,
    count: range.endColumn - range.startColumn + 1,
  } as const;
  if (command === InsertRowCommand.id) return rows;
  if (command === RemoveRowCommand.id) return { ...rows, count: -rows.count };
  if (command === InsertColCommand.id) return columns;
  if (command === RemoveColCommand.id) return { ...columns, count: -columns.count };
  return undefined;
}

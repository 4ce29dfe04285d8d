/** What is not offered for a file of the maker's own, since only cells are changed in it, and why. */
import type { ICellData, IExecutionOptions } from "@univerjs/core";
import { type ISetRangeValuesMutationParams, SetRangeValuesMutation } from "@univerjs/preset-sheets-core";
import type { FileRefusal } from "../../xlsx/refusals";
import type { Api } from "./grid";
import type { Original } from "./kept-work";
import { showStatus } from "./show";
import { words } from "./words";

/** Commands of the engine that move cells, sheets or names about; in a saved file other parts would still point to where they stood. */
const moving =
  /^sheet\.command\.(?:insert-(?:row|col|sheet|range|multi)|append-row|remove-(?:row|col|sheet|worksheet-merge)|delete-range|move-(?:rows|cols|range)|add-worksheet-merge|set-worksheet-(?:name|order)|copy-sheet|.*defined-name)/;

/** Looks that the files are not given. */
const unsavedLooks =
  /^sheet\.command\.set-(?:range-)?(?:underline|stroke|overline|font-family|subscript|superscript|border.*|vertical-text-align|text-rotation)$/;

/** Sizes, and what is hidden or stays in sight: the page shows it so, and the file keeps its own. */
const ofPage =
  /^sheet\.command\.(?:delta-(?:row-height|column-width)|set-(?:row-height|worksheet-col-width|col-auto-width|row-is-auto-height|col-is-auto-width|col-hidden|rows-hidden|selected-\w+-visible|specific-rows-visible|col-visible-on-cols|frozen|selection-frozen|row-frozen|col-frozen|first-row-frozen|first-column-frozen|tab-color|worksheet-hidden|worksheet-show)|hide-(?:row|col)-confirm|cancel-frozen|toggle-gridlines|paste-col-width)$/;

/** Why a cell of a sheet cannot be changed alone in the file; undefined where it can. */
type RefusalAt = (sheet: string, row: number, column: number) => FileRefusal | undefined;

/** What the file that is opened says of its cells. */
export async function refusalIn({ bytes }: Original): Promise<RefusalAt> {
  const { PatchableBook } = await import("../../xlsx/patch/patchable-book");
  const book = new PatchableBook(bytes);
  return (sheet, row, column) => book.refusal({ sheet, row, column, content: { is: "blank" } });
}

/** Refuses at once, in words, what a save could not write; says of the rest what becomes of it. */
export function keepInPlace(api: Api, refusalAt: RefusalAt): void {
  const refuse = (event: { cancel?: boolean }, why: string) => {
    event.cancel = true;
    showStatus(why, "warning");
  };
  api.addEvent(api.Event.BeforeCommandExecute, (event) => {
    const { staysInPlace, looksNotSaved, onPageOnly } = words().ownFile;
    if (moving.test(event.id)) return refuse(event, staysInPlace);
    if (unsavedLooks.test(event.id)) return refuse(event, looksNotSaved);
    if (ofPage.test(event.id)) return showStatus(onPageOnly, "answer");
    const why = event.id === SetRangeValuesMutation.id ? refusalOf(event, api, refusalAt) : undefined;
    if (why !== undefined) refuse(event, words().file.refused(why));
  });
  // Before anything is typed: what was typed would be lost.
  api.addEvent(api.Event.BeforeSheetEditStart, (event) => {
    const why = refusalAt(event.worksheet.getSheetName(), event.row, event.column);
    if (why !== undefined) refuse(event, words().file.refused(why));
  });
}

/** The first cell of a change by hand that cannot be changed, and why. */
function refusalOf(
  { params, options }: { readonly params?: unknown; readonly options?: IExecutionOptions | undefined },
  api: Api,
  refusalAt: RefusalAt,
): FileRefusal | undefined {
  if (options?.fromFormula) return undefined;
  const { subUnitId, cellValue } = params as ISetRangeValuesMutationParams;
  const sheet = api.getActiveWorkbook()?.getSheetBySheetId(subUnitId)?.getSheetName();
  if (sheet === undefined || !cellValue) return undefined;
  for (const [row, values] of Object.entries(cellValue)) {
    for (const [column, value] of Object.entries<ICellData | null | undefined>(values ?? {})) {
      const why = changesContent(value) ? refusalAt(sheet, Number(row), Number(column)) : undefined;
      if (why !== undefined) return why;
    }
  }
  return undefined;
}

/** A look alone changes nothing that a cell holds. */
const changesContent = (cell: ICellData | null | undefined): boolean =>
  !cell || ["v", "f", "p", "si"].some((part) => part in cell);

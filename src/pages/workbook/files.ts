import { handOut } from "../../pane/hand-out";
import type { Workbook } from "../../workbook/workbook";
import { xlsxMediaType } from "../../xlsx/media-type";
import type { SavingRemark } from "../../xlsx/remarks";
import type { Original } from "./kept-work";

// What writes .xlsx is large: each part is fetched when it is first wanted, or before that (fetch-ahead.ts).

export async function downloadXlsx(workbook: Workbook, fileName: string): Promise<void> {
  const { writeWorkbook } = await import("../../xlsx/write-workbook");
  handOut(new Blob([new Uint8Array(await writeWorkbook(workbook))], { type: xlsxMediaType }), fileName);
}

/**
 * The same with functions called by name, which are in the file: it needs no add-in. Gives the functions that still need
 * it. Throws a Refusal where that cannot be.
 */
export async function downloadWithoutAddIn(
  workbook: Workbook,
  original: Original | undefined,
  fileName: string,
): Promise<readonly string[]> {
  const [{ withNamedFunctions }, { writeWorkbook }] = await Promise.all([
    import("../../xlsx/named-functions"),
    import("../../xlsx/write-workbook"),
  ]);
  const saved = original ? (await savedOwn(original, workbook)).bytes : await writeWorkbook(workbook);
  const { bytes, left } = withNamedFunctions(saved);
  downloadBytes(bytes, fileName);
  return left;
}

/** What would be out of date in a file once it is saved with changes; throws a Refusal where a change cannot be saved. */
export async function savedOwn(original: Original, now: Workbook): Promise<SavedOwn> {
  const [{ PatchableBook }, { editsBetween }, { leftFormulas }] = await Promise.all([
    import("../../xlsx/patch/patchable-book"),
    import("../../xlsx/patch/edits-between"),
    import("../../engine/left-formulas"),
  ]);
  const before = original.asOpened ?? now;
  const book = new PatchableBook(original.bytes);
  const edits = editsBetween(before, now);
  const asksForCalculation = edits.length > 0 && leftFormulas(before, { keepsChanging: false }).size > 0;
  const bytes = edits.length > 0 ? book.saved(edits, { asksForCalculation }) : original.bytes;
  return { bytes, warnings: edits.length > 0 ? book.warnings() : [] };
}

export interface SavedOwn {
  readonly bytes: Uint8Array;
  readonly warnings: readonly SavingRemark[];
}

export const downloadBytes = (bytes: Uint8Array, fileName: string): void =>
  handOut(new Blob([new Uint8Array(bytes)], { type: xlsxMediaType }), fileName);

/** For kept work that this page cannot read: everything in it, as text. */
export function downloadAsText(content: unknown, fileName: string): void {
  handOut(new Blob([JSON.stringify(content, null, 1)], { type: "application/json" }), fileName);
}

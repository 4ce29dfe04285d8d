/** A workbook of the maker's own, opened from a file. */
import type { Workbook } from "../../workbook/workbook";
import type { ReadFile } from "../../xlsx/read-workbook";
import { Refusal } from "../../xlsx/refusal";
import { ask } from "./ask";
import { downloadBytes, readXlsx, type SavedOwn, savedOwn } from "./files";
import { keep, keepOriginal, type Original } from "./kept-work";
import { settle } from "./last-moment";
import { canLeave } from "./leave-page";
import { showStatus } from "./show";
import { words } from "./words";

/** What it is kept under, and its name in the page's address. */
export const ownKey = "own-file";

/** Says what becomes of the file here, then keeps its workbook beside the samples and goes there. */
export async function openOwn(file: File, hasOwn: boolean): Promise<void> {
  let read: ReadFile;
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
    read = await readXlsx(bytes, file.name.replace(/\.xls[xm]$/i, ""));
  } catch (problem) {
    showStatus(words().ownFile.notOpened(file.name, reasonFor(problem)), "warning");
    return;
  }
  const { question, agree, keepBefore } = words().ownFile;
  const asked = question(file.name, read.notShown, hasOwn).join("\n\n");
  if (!(await ask(asked, agree, hasOwn ? keepBefore : words().cancel))) return;
  if (!(await canLeave())) return;
  try {
    await keepOriginal(ownKey, { fileName: file.name, bytes });
    await keep(ownKey, read.workbook);
    settle(ownKey);
  } catch (problem) {
    const reason = isTooLarge(problem) ? words().ownFile.noRoom(file.name) : words().ownFile.keepsNothing;
    showStatus(reason, "warning");
    return;
  }
  location.assign(`?workbook=${ownKey}`);
}

/** Gives the file back with what was changed, under its own name; says first what will be out of date in it. */
export async function saveOwn(original: Original, now: Workbook): Promise<void> {
  let saved: SavedOwn;
  try {
    saved = await savedOwn(original, now);
  } catch (problem) {
    const reason = problem instanceof Refusal ? problem.message : String(problem);
    showStatus(words().ownFile.notSaved(reason), "warning");
    return;
  }
  const { bytes, warnings } = saved;
  if (warnings.length > 0 && !(await ask(warnings.join("\n\n"), words().ownFile.save, words().cancel))) return;
  downloadBytes(bytes, original.fileName);
}

function reasonFor(problem: unknown): string {
  if (problem instanceof Refusal) return problem.message;
  const { tooLarge, notRead } = words().ownFile;
  return isTooLarge(problem) ? tooLarge : notRead;
}

/** Whether memory or the browser's storage gave out, somewhere down the chain of causes. */
export function isTooLarge(problem: unknown): boolean {
  if (!(problem instanceof Error || problem instanceof DOMException)) return false;
  const isOutOfRoom = problem instanceof RangeError || problem.name === "QuotaExceededError";
  return isOutOfRoom || isTooLarge((problem as Error).cause);
}

/** A workbook of the maker's own, opened from a file. */
import type { ReadFile } from "../../xlsx/read-workbook";
import { Refusal } from "../../xlsx/refusal";
import { ask } from "./ask";
import { readXlsx } from "./files";
import { keep } from "./kept-work";
import { settle } from "./last-moment";
import { canLeave } from "./leave-page";
import { showStatus } from "./show";
import { words } from "./words";

/** What it is kept under, and its name in the page's address. */
export const ownKey = "own-file";

/** Says what becomes of the file here, then keeps its workbook beside the samples and goes there. */
export async function openOwn(file: File, hasOwn: boolean): Promise<void> {
  let read: ReadFile;
  try {
    read = await readXlsx(await file.arrayBuffer(), file.name.replace(/\.xlsx$/i, ""));
  } catch (problem) {
    showStatus(words().ownFile.notOpened(file.name, reasonFor(problem)), "warning");
    return;
  }
  const { question, agree, keepBefore } = words().ownFile;
  const asked = question(file.name, read.notShown, hasOwn).join("\n\n");
  if (!(await ask(asked, agree, hasOwn ? keepBefore : words().cancel))) return;
  if (!(await canLeave())) return;
  try {
    await keep(ownKey, read.workbook);
    settle(ownKey);
  } catch (problem) {
    const reason = isTooLarge(problem) ? words().ownFile.noRoom(file.name) : words().ownFile.keepsNothing;
    showStatus(reason, "warning");
    return;
  }
  location.assign(`?workbook=${ownKey}`);
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

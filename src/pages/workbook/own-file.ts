/** A workbook of the maker's own, opened from a file. */
import type { ReadFile } from "../../xlsx/read-workbook";
import { Refusal } from "../../xlsx/refusal";
import { ask } from "./ask";
import { readXlsx } from "./files";
import { keep } from "./kept-work";
import { settle } from "./last-moment";
import { canLeave } from "./leave-page";
import { showStatus } from "./show";

/** What it is kept under, and its name in the page's address. */
export const ownKey = "own-file";

/** Says what becomes of the file here, then keeps its workbook beside the samples and goes there. */
export async function openOwn(file: File, hasOwn: boolean): Promise<void> {
  let read: ReadFile;
  try {
    read = await readXlsx(await file.arrayBuffer(), file.name.replace(/\.xlsx$/i, ""));
  } catch (problem) {
    showStatus(`“${file.name}” was not opened. ${reasonFor(problem)}`, "warning");
    return;
  }
  const refuse = hasOwn ? "Keep the one before" : "Cancel";
  if (!(await ask(whatIsKept(file.name, read.notShown, hasOwn), "Open it", refuse))) return;
  if (!(await canLeave())) return;
  try {
    await keep(ownKey, read.workbook);
    settle(ownKey);
  } catch (problem) {
    const reason = isTooLarge(problem)
      ? `“${file.name}” is too large for this page: this browser has no room to keep it.`
      : "This browser keeps nothing for this page, so a file of your own cannot be opened here.";
    showStatus(reason, "warning");
    return;
  }
  location.assign(`?workbook=${ownKey}`);
}

function reasonFor(problem: unknown): string {
  if (problem instanceof Refusal) return problem.message;
  return isTooLarge(problem)
    ? "It is too large for this page: reading it needs more memory than the browser has for it."
    : "It could not be read as an .xlsx workbook.";
}

function whatIsKept(name: string, notShown: readonly string[], hasOwn: boolean): string {
  const paragraphs = [
    `Open “${name}” here? The page works on a copy: the file itself is not changed.`,
    "Kept: values, formulas, names, number formats, simple looks, notes, what is hidden, tables, and charts of " +
      "columns or dots. Formulas that name table columns show addresses here; a download has the names again.",
    "Left out of a download from here: data validation, conditional formats, links, pictures, shapes, other kinds of " +
      "charts, pivot tables, macros, and what else the grid has no place for.",
    notShown.length > 0
      ? `This file has some of what is left out: ${notShown.join(", ")}.`
      : "Of these, none was found in this file.",
  ];
  if (hasOwn) {
    paragraphs.push(
      "It takes the place of the file that you opened before: what you typed into that one is lost here.",
    );
  }
  return paragraphs.join("\n\n");
}

/** Whether memory or the browser's storage gave out, somewhere down the chain of causes. */
export function isTooLarge(problem: unknown): boolean {
  if (!(problem instanceof Error || problem instanceof DOMException)) return false;
  const isOutOfRoom = problem instanceof RangeError || problem.name === "QuotaExceededError";
  return isOutOfRoom || isTooLarge((problem as Error).cause);
}

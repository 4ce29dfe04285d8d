/** Workbooks of the maker's own, opened from files. */
import { ownNames } from "../../named-formulas/own-names";
import type { Workbook } from "../../workbook/workbook";
import { mostUnpacked } from "../../xlsx/container/limits";
import type { ReadFile } from "../../xlsx/read-workbook";
import { few, type NotShown } from "../../xlsx/remarks";
import { ask, choose } from "./ask";
import { type Chosen, checksumOf, writeInto } from "./file-access";
import { downloadBytes, type SavedOwn, savedOwn } from "./files";
import { forget, keep, keepOriginal, nextOwnKey, type Original, readOwnWorks } from "./kept-work";
import { settle } from "./last-moment";
import { canLeave } from "./leave-page";
import { readElsewhere } from "./reading";
import { showStatus, showWaiting } from "./show";
import { isTooLarge } from "./too-large";
import { dayInWords, problemInWords, timeInWords, words } from "./words";

/** Ends the reading of a file that another one is chosen after. */
let reading: AbortController | undefined;

/**
 * Says what becomes of the file here, then keeps its workbook beside the others and goes there. What the page shows is
 * kept before: it was changed earlier.
 */
export async function openOwn({ file, handle }: Chosen, keepShown: () => Promise<void>): Promise<void> {
  reading?.abort();
  if (!(await canLeave())) return;
  const found = await read(file);
  if (!found) return;
  const { workbook, notShown, bytes } = found;
  const before = (await readOwnWorks().catch(() => [])).find(({ name }) => name === workbook.name);
  const { question, agree } = words().ownFile;
  const asked = question(file.name, notShown, {
    keptSince: before && dayInWords(before.changedAt),
    canSaveInto: handle !== undefined,
  });
  if (!(await ask(asked.join("\n\n"), agree))) return;
  if (!(await canLeave())) return;
  await keepShown();
  let key: string | undefined;
  try {
    key = await nextOwnKey();
    await keepOriginal(key, { fileName: file.name, bytes, ...(handle && { handle }) });
    await keep(key, workbook);
  } catch (problem) {
    if (key !== undefined) await forget(key).catch(() => undefined);
    const reason = isTooLarge(problem) ? words().ownFile.noRoom(file.name) : words().ownFile.keepsNothing;
    showStatus(reason, "warning");
    return;
  }
  location.assign(`?workbook=${key}`);
}

type Found = Pick<ReadFile, "workbook" | "notShown"> & { readonly bytes: Uint8Array };

/** Named formulas of ours are worked out as the functions that they are. */
function notShownHere({ workbook, notShown, notWorkedOut }: ReadFile): readonly NotShown[] {
  const { ours } = ownNames(workbook.names ?? []);
  const names = notWorkedOut.filter((name) => !ours.has(name.toUpperCase()));
  return names.length > 0 ? [...notShown, { kind: "names worked out", found: few(names) }] : notShown;
}

/** undefined where it cannot be read, which is said, and where the maker ended it. */
async function read(file: File): Promise<Found | undefined> {
  const { notOpened, tooLarge, notRead, tooSlow } = words().ownFile;
  const refuse = (reason: string) => showStatus(notOpened(file.name, reason), "warning");
  if (file.size > mostUnpacked) return void refuse(tooLarge);
  let bytes: Uint8Array<ArrayBuffer>;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch (problem) {
    return void refuse(isTooLarge(problem) ? tooLarge : notRead);
  }
  const own = new AbortController();
  reading = own;
  const done = showWaiting(words().ownFile.reading(file.name), words().cancel, () => own.abort());
  const answer = await readElsewhere(bytes, own.signal).finally(done);
  switch (answer.is) {
    case "read": {
      const { workbook } = answer.read;
      const name = file.name.replace(/\.xls[xm]$/i, "");
      return { workbook: { ...workbook, name }, notShown: notShownHere(answer.read), bytes: answer.bytes };
    }
    case "ended":
      return undefined;
    case "refused":
      return void refuse(words().file.refused(answer.why));
    case "too large":
      return void refuse(tooLarge);
    case "too slow":
      return void refuse(tooSlow);
    case "not read":
      return void refuse(notRead);
  }
}

/** Removes what is kept of a file, after asking; says whether it did. */
export async function removeOwn(key: string, name: string): Promise<boolean> {
  const { removing, remove } = words().ownFile;
  if (!(await ask(removing(name), remove))) return false;
  settle(key);
  await forget(key);
  return true;
}

/** Whether the maker has agreed in this visit that the very file is written. */
let mayWrite = false;

/**
 * Gives the file back with what was changed, under its own name: into the very file, where the browser has a way back to it
 * and the maker agrees, else as a download. Says first what will be out of date in it. Gives what is known of the file
 * from now on.
 */
export async function saveOwn(key: string, original: Original, now: Workbook): Promise<Original> {
  let saved: SavedOwn;
  try {
    saved = await savedOwn(original, now);
  } catch (problem) {
    showStatus(words().ownFile.notSaved(problemInWords(problem)), "warning");
    return original;
  }
  const { bytes } = saved;
  const warnings = saved.warnings.map(words().file.onSaving);
  const { save, intoFile, asDownload, askIntoFile } = words().ownFile;
  const { fileName, handle } = original;
  if (!handle) {
    if (warnings.length > 0 && !(await ask(warnings.join("\n\n"), save))) return original;
    downloadBytes(bytes, fileName);
    return original;
  }
  if (!mayWrite || warnings.length > 0) {
    const answer = await choose([askIntoFile(fileName), ...warnings].join("\n\n"), [
      words().cancel,
      asDownload,
      intoFile,
    ]);
    if (answer === asDownload) downloadBytes(bytes, fileName);
    if (answer !== intoFile) return original;
    mayWrite = true;
  }
  return into(handle, key, original, bytes);
}

async function into(
  handle: FileSystemFileHandle,
  key: string,
  original: Original,
  bytes: Uint8Array,
): Promise<Original> {
  const { fileName } = original;
  const { notInto, savedInto, asDownload } = words().ownFile;
  const before = original.onDisk ?? (await checksumOf(original.bytes));
  const written = await writeInto(handle, bytes, before).catch(() => "not allowed" as const);
  if (written !== "written") {
    mayWrite = false;
    if (await ask(notInto(fileName, written), asDownload)) downloadBytes(bytes, fileName);
    return original;
  }
  const known = { ...original, onDisk: await checksumOf(bytes) };
  await keepOriginal(key, known).catch(() => undefined);
  showStatus(savedInto(fileName, timeInWords(new Date())), "answer");
  return known;
}

/** The workbook in the browser: what is kept or the sample, in the grid, under a header of our own. */
import "./workbook-page.css";
import type { Workbook } from "../workbook-files/workbook";
import { ask } from "./ask";
import { showCellMessages } from "./cell-messages";
import { downloadAsText, downloadXlsx, readXlsx } from "./files";
import { isCard, printFiringCard } from "./firing-card";
import { type Grid, openGrid } from "./grid";
import { forget, type KeptWork, keep, readKept, readSetAside, setAside } from "./kept-work";
import { preparePane } from "./pane-beside-grid";
import { type SampleWorkbook, sampleWorkbooks } from "./sample-workbooks";
import { startSaving } from "./saving";
import { byId, showNotice, showStatus } from "./show";

/** What a workbook of the maker's own, opened from a file, is kept under. */
const ownKey = "own-file";

const key = new URLSearchParams(location.search).get("workbook") ?? sampleWorkbooks[0].key;
const sample = sampleWorkbooks.find((each) => each.key === key);

try {
  await open();
} catch (problem) {
  showStatus("The workbook could not be opened. Is the program that serves this page still running?", "warning");
  throw problem;
}

async function open(): Promise<void> {
  const kept = await keptWork();
  const own =
    key === ownKey
      ? kept
      : await readKept(ownKey).then(
          (found) => (found.is === "work" ? found.work : undefined),
          () => undefined,
        );
  if (!sample && !kept) return location.replace(location.pathname);
  const workbook = kept?.workbook ?? (await readSample(sample ?? sampleWorkbooks[0]));
  showLinks(own);
  const grid = await openGrid("grid", workbook);
  showCellMessages(grid, byId("line"));
  startSaving(key, grid, kept?.savedAt);
  prepareActions(grid, own !== undefined);
  preparePane(grid);
  await offerSetAside();
  // For the tests, and for the curious in the browser's console.
  Object.assign(globalThis, { workbookGrid: grid });
  document.documentElement.dataset.ready = "yes";
}

/** What was kept, if it can be read. What cannot is set aside before anything else is kept in its place. */
async function keptWork(): Promise<KeptWork | undefined> {
  try {
    const kept = await readKept(key);
    if (kept.is === "work") return kept.work;
    if (kept.is === "unreadable") await setAside(key, kept.content);
  } catch {
    // The browser forbids storage; the first attempt to keep something will say so.
  }
  return undefined;
}

async function readSample({ file, title }: SampleWorkbook): Promise<Workbook> {
  const response = await fetch(file);
  if (!response.ok) throw new Error(`the sample workbook could not be fetched: ${response.status}`);
  return readXlsx(await response.arrayBuffer(), title);
}

function showLinks(own: KeptWork | undefined): void {
  const places = sampleWorkbooks.map(({ key, title }) => ({ key, title }));
  if (own) places.push({ key: ownKey, title: own.workbook.name });
  byId("workbooks").replaceChildren(
    ...places.map((place) => {
      const link = document.createElement("a");
      link.href = `?workbook=${place.key}`;
      link.textContent = place.title;
      if (place.key === key) link.setAttribute("aria-current", "page");
      return link;
    }),
  );
}

function prepareActions(grid: Grid, hasOwn: boolean): void {
  const name = sample?.key ?? grid.workbook().name;
  const hasCard = grid.workbook().sheets.some(isCard);
  onClick("print", hasCard, () => printFiringCard(grid, byId("paper")));
  onClick("download", true, async () => {
    await grid.finishTyping();
    await downloadXlsx(grid.workbook(), `${name} ${new Date().toLocaleDateString("sv")}.xlsx`);
  });
  onClick("back", sample !== undefined, async () => {
    const question = `Start afresh from the sample “${sample?.title}”?\nWhat you have typed here is lost; download it first if you want it.`;
    if (!(await ask(question, "Start afresh", "Keep my work"))) return;
    await forget(key);
    location.reload();
  });
  const chooser = byId("file") as HTMLInputElement;
  onClick("open", true, () => chooser.click());
  chooser.addEventListener("change", () => {
    const file = chooser.files?.[0];
    chooser.value = "";
    if (file) void openOwn(file, hasOwn);
  });
}

/** Keeps the file's workbook beside the samples, and goes there. */
async function openOwn(file: File, hasOwn: boolean): Promise<void> {
  let workbook: Workbook;
  try {
    workbook = await readXlsx(await file.arrayBuffer(), file.name.replace(/\.xlsx$/i, ""));
  } catch {
    showStatus(`“${file.name}” could not be read as an .xlsx workbook.`, "warning");
    return;
  }
  const question =
    "Open it in place of the file that you opened before?\nWhat you have typed into that one is lost here.";
  if (hasOwn && !(await ask(question, "Open it", "Keep that one"))) return;
  try {
    await keep(ownKey, workbook);
  } catch {
    showStatus("This browser keeps nothing for this page, so a file of your own cannot be opened here.", "warning");
    return;
  }
  location.assign(`?workbook=${ownKey}`);
}

/** Work that an earlier or later version kept and that cannot be read here stays until the maker has it. */
async function offerSetAside(): Promise<void> {
  const contents = await readSetAside(key).catch(() => []);
  if (contents.length === 0) return;
  showNotice("Work that was kept here could not be read, so the sample is shown. Nothing was deleted.", [
    ["Download what was kept", () => downloadAsText(contents, `${key} kept work.json`)],
  ]);
}

function onClick(id: string, enabled: boolean, action: () => unknown): void {
  const button = byId(id) as HTMLButtonElement;
  button.disabled = !enabled;
  button.addEventListener("click", action);
}

/** The workbook in the browser: what is kept or the sample, in the grid, under a header of our own. */
import "./workbook-page.css";
import { namespace } from "../../core/namespace";
import type { LeftFormulas } from "../../engine/left-formulas";
import { type SampleKey, sampleKeys } from "../../words/page";
import type { Workbook } from "../../workbook/workbook";
import { ask } from "./ask";
import { showCellLinks } from "./cell-links";
import { showCellMessages } from "./cell-messages";
import { showCharts } from "./charts";
import { nameEngineParts } from "./engine-names";
import { fetchAhead } from "./fetch-ahead";
import { type Chosen, droppedFile, pickFile, picksFiles } from "./file-access";
import { downloadAsText, downloadWithoutAddIn, downloadXlsx } from "./files";
import { hasCardNumbers, isCard, printFiringCard } from "./firing-card";
import { type Grid, openGrid } from "./grid";
import { prepareHeader } from "./header";
import {
  forget,
  isOwn,
  type KeptWork,
  keepOriginal,
  type Original,
  type OwnWork,
  readKept,
  readOriginal,
  readOwnWorks,
  readSetAside,
  setAside,
} from "./kept-work";
import { prepareKeys } from "./keys";
import { settle } from "./last-moment";
import { canLeave, goTo } from "./leave-page";
import { openOwn, saveOwn } from "./own-file";
import { keepInPlace, refusalIn } from "./own-limits";
import { showOwnFiles } from "./own-list";
import { preparePane } from "./pane-beside-grid";
import type { Problems } from "./problems";
import { readTyped } from "./read-typed";
import { fileOf, titleOf } from "./sample-workbooks";
import { startSaving } from "./saving";
import { byId, showNotice, showStatus } from "./show";
import { keepShownSheet } from "./shown-sheet";
import { prepareSortEntry } from "./sort-entry";
import { isTooLarge } from "./too-large";
import { cardWithoutNumbers, problemInWords, sayHeader, words } from "./words";

const key = new URLSearchParams(location.search).get("workbook") ?? sampleKeys[0];
const sample = sampleKeys.find((each) => each === key);

sayHeader();
showStatus(words().opening.now);
try {
  await open();
} catch (problem) {
  const reason = isTooLarge(problem) ? words().opening.tooLarge : words().opening.failed;
  document.getElementById("first-sight")?.remove();
  showStatus(reason, "warning");
  throw problem;
}

async function open(): Promise<void> {
  const kept = await keptWork();
  const own = await readOwnWorks().catch(() => []);
  if (!sample && !kept) return location.replace(location.pathname);
  const workbook = kept?.workbook ?? (await readSample(sample ?? sampleKeys[0]));
  showLinks(own);
  const original = isOwn(key) ? await readOriginal(key).catch(() => undefined) : undefined;
  const keys = prepareKeys();
  const grid = await openGrid("grid", workbook, original && (await leftIn(workbook)));
  byId("first-sight").remove();
  const { problems, remark, tellWayOut } = showCellMessages(grid, byId("line"), byId("said"));
  readTyped(grid, remark);
  const keepShown = startSaving(key, grid, kept?.savedAt);
  prepareActions(grid, problems, own.length > 0, original && (await openedFor(original, grid)));
  prepareOpening(keepShown);
  keepShownSheet(key, grid);
  prepareHeader(grid);
  prepareSortEntry(grid, remark);
  keys.follow(grid, tellWayOut);
  nameEngineParts(byId("grid"));
  preparePane(grid);
  showCharts(grid, byId("grid"));
  showCellLinks(grid, byId("work"));
  await offerSetAside();
  // For the tests, and for the curious in the browser's console.
  Object.assign(globalThis, { workbookGrid: grid });
  document.documentElement.dataset.ready = "yes";
  void fetchAhead();
}

async function leftIn(workbook: Workbook): Promise<LeftFormulas> {
  const { leftFormulas } = await import("../../engine/left-formulas");
  return leftFormulas(workbook, { keepsChanging: false });
}

/** A file of the maker's own: what it comes to before anything is changed is kept beside it. */
async function openedFor(original: Original, grid: Grid): Promise<Original> {
  keepInPlace(grid.api, await refusalIn(original));
  if (original.asOpened) return original;
  const opened = { ...original, asOpened: grid.workbook() };
  await keepOriginal(key, opened);
  return opened;
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

async function readSample(sample: SampleKey): Promise<Workbook> {
  const response = await fetch(fileOf(sample));
  if (!response.ok) throw new Error(`the sample workbook could not be fetched: ${response.status}`);
  return { ...(await response.json()), name: titleOf(sample) };
}

/** The samples, and of the maker's own files the one that is shown, or else the last changed; the menu has all. */
function showLinks(own: readonly OwnWork[]): void {
  const places = sampleKeys.map((each) => ({ key: each as string, title: titleOf(each) }));
  const shown = own.find((each) => each.key === key) ?? own[0];
  if (shown) places.push({ key: shown.key, title: shown.name });
  byId("workbooks").replaceChildren(
    ...places.map((place) => {
      const link = document.createElement("a");
      link.href = `?workbook=${place.key}`;
      link.textContent = place.title;
      // The name of a file may be longer than there is room for.
      if (place.key === shown?.key) link.title = place.title;
      if (place.key === key) link.setAttribute("aria-current", "page");
      link.addEventListener("click", (event) => {
        // With a key held down it opens elsewhere, and this page stays.
        if (event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
        event.preventDefault();
        void goTo(link.href);
      });
      return link;
    }),
  );
}

function prepareActions(grid: Grid, problems: Problems, hasOwn: boolean, opened: Original | undefined): void {
  let original = opened;
  const name = sample ?? grid.workbook().name;
  const hasCard = grid.workbook().sheets.some(isCard);
  onClick("print", hasCard, async () => {
    await grid.finishTyping();
    if (!hasCardNumbers(grid)) {
      problems.look();
      const card = grid.workbook().sheets.find(isCard);
      const question = cardWithoutNumbers(card && problems.blank(card.name));
      if (!(await ask(question, words().printing.agree, words().printing.refuse))) return;
    }
    printFiringCard(grid, byId("paper"));
  });
  onClick("download", true, async () => {
    await grid.finishTyping();
    if (original) {
      original = await saveOwn(key, original, grid.workbook());
      return;
    }
    try {
      await downloadXlsx(grid.workbook(), `${name} ${new Date().toLocaleDateString("sv")}.xlsx`);
    } catch (problem) {
      showStatus(words().keeping.notMade(problemInWords(problem)), "warning");
    }
  });
  onClick("download-named", true, async () => {
    await grid.finishTyping();
    const { madeWithoutAddIn, notMade } = words().keeping;
    try {
      const today = new Date().toLocaleDateString("sv");
      const left = await downloadWithoutAddIn(grid.workbook(), original, `${name} ${today} without the add-in.xlsx`);
      showStatus(madeWithoutAddIn(left.map((id) => `${namespace}.${id}`)), "answer");
    } catch (problem) {
      showStatus(notMade(problemInWords(problem)), "warning");
    }
  });
  onClick("back", sample !== undefined, async () => {
    const { startAfresh, agree, refuse } = words().sample;
    if (!(await ask(startAfresh(sample ? titleOf(sample) : ""), agree, refuse))) return;
    if (!(await canLeave())) return;
    settle(key);
    await forget(key);
    location.reload();
  });
  if (original) {
    document.documentElement.dataset.saves = "file";
    sayHeader();
  }
  byId("own-files").hidden = !hasOwn;
  onClick("own-files", hasOwn, () => showOwnFiles(key));
}

/** A file of the maker's own is chosen, or dropped on the page. */
function prepareOpening(keepShown: () => Promise<void>): void {
  const open = (chosen: Chosen) => openOwn(chosen, keepShown);
  const chooser = byId("file") as HTMLInputElement;
  onClick("open", true, async () => {
    if (!picksFiles()) return chooser.click();
    const chosen = await pickFile();
    if (chosen) await open(chosen);
  });
  chooser.addEventListener("change", () => {
    const file = chooser.files?.[0];
    chooser.value = "";
    if (file) void open({ file });
  });
  takeDropped(open);
}

/** Work that an earlier or later version kept and that cannot be read here stays until the maker has it. */
async function offerSetAside(): Promise<void> {
  const contents = await readSetAside(key).catch(() => []);
  if (contents.length === 0) return;
  showNotice(words().keeping.unreadable, [
    [words().keeping.downloadKept, () => downloadAsText(contents, `${key} kept work.json`)],
  ]);
}

/** A file that is dropped anywhere on the page is opened like one that is chosen. */
function takeDropped(open: (chosen: Chosen) => unknown): void {
  const hasFiles = ({ dataTransfer }: DragEvent) => dataTransfer?.types.includes("Files") === true;
  addEventListener("dragover", (event) => {
    if (hasFiles(event)) event.preventDefault();
  });
  addEventListener("drop", (event) => {
    if (!hasFiles(event)) return;
    event.preventDefault();
    void droppedFile(event.dataTransfer?.items).then((chosen) => chosen && open(chosen));
  });
}

function onClick(id: string, enabled: boolean, action: () => unknown): void {
  const button = byId(id) as HTMLButtonElement;
  button.disabled = !enabled;
  button.addEventListener("click", action);
}

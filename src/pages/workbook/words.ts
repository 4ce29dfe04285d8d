/** The words of the page, in the language that the pane is set to; until then in that of the browser. */
import { keptSettings } from "../../pane/settings";
import type { SortingRefusal } from "../../sorting/sorted-table";
import { pageWordsIn } from "../../words/in-every-language/page";
import { type Language, languageIds, languageOf, languages } from "../../words/languages";
import type { Fault, PageWords } from "../../words/page";
import { addressOf } from "../../workbook/addresses";
import { Refusal } from "../../xlsx/refusal";
import type { Hindrance } from "./hindrances";
import { keyOf, type Spot } from "./known-workbook";
import { byId } from "./show";

let spoken: Language | undefined;

/** The language of the page. */
export const language = (): Language => {
  spoken ??= keptSettings.read().language ?? languageOf(globalThis.navigator?.language ?? languageIds[0]);
  return spoken;
};

/** What is said now. */
export const words = (): PageWords => pageWordsIn[language()];

/** Speaks another language from now on. What stands above the grid follows with the next cell. */
export function speak(other: Language): void {
  if (other === spoken) return;
  spoken = other;
  sayHeader();
}

/** Why something could not be done with a file. */
export function problemInWords(problem: unknown): string {
  if (problem instanceof Refusal) return words().file.refused(problem.why);
  return problem instanceof Error ? problem.message : String(problem);
}

export const dayInWords = (moment: Date): string => moment.toLocaleDateString([], { dateStyle: "medium" });

/** With the day where it is another. */
export function timeInWords(moment: Date): string {
  const time = moment.toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" });
  const today = moment.toDateString() === new Date().toDateString();
  return today ? time : `${dayInWords(moment)}, ${time}`;
}

/** The words of the header, its menu, and of what stands around the grid. */
export function sayHeader(): void {
  const { parts, samples } = words();
  document.documentElement.lang = languages[language()].tag;
  document.title = parts.title;
  for (const id of ["card", "sort", "print", "download", "open", "back"] as const) byId(id).textContent = parts[id];
  byId("own-files").textContent = parts.ownFiles;
  byId("download-named").textContent = parts.downloadNamed;
  // Set for a file of the maker's own, which is not made anew.
  if (document.documentElement.dataset.saves === "file") byId("download").textContent = words().ownFile.save;
  const texts = { h1: parts.title, "#pane-button": parts.pane, summary: parts.menu } as const;
  const help = { ".touch-help": parts.touchHelp, ".key-help": parts.keyHelp } as const;
  for (const [selector, text] of Object.entries({ ...texts, ...help })) {
    const element = document.querySelector(`.page-header ${selector}`);
    if (element) element.textContent = text;
  }
  byId("key-hint").textContent = parts.keyHint;
  for (const [key, title] of Object.entries(samples)) {
    const link = document.querySelector(`#workbooks a[href="?workbook=${key}"]`);
    if (link) link.textContent = title;
  }
  const labels = { workbooks: parts.workbooks, file: parts.file, line: parts.line, pane: parts.pane, grid: parts.grid };
  for (const [id, label] of Object.entries(labels)) byId(id).setAttribute("aria-label", label);
}

const addressFrom = (sheet: string, spot: Spot): string =>
  spot.sheet === sheet ? addressOf(spot.row, spot.column) : `${spot.sheet} ${addressOf(spot.row, spot.column)}`;

function faultOf({ is, value, label, reason, sheet, waiting }: Hindrance): Fault {
  const [first] = waiting;
  return {
    ...{ is, value, label, reason },
    waiting: first && { first: addressFrom(sheet, first), count: waiting.length },
  };
}

/** After the cell's address: ", fresh weight, is blank: 14 cells wait for it". */
export const hindranceAfterAddress = (hindrance: Hindrance): string => words().fault.afterAddress(faultOf(hindrance));

/** The same without the reason: ", fresh weight, holds the text “350 g”". */
export const hindranceInShort = (hindrance: Hindrance): string =>
  words().fault.inShort({ ...faultOf(hindrance), waiting: undefined, reason: undefined });

/** The same where the cell is in sight. */
export const hindranceAtCell = (hindrance: Hindrance): string => words().fault.atCell(faultOf(hindrance));

/** Of a cell that shows nothing or an error because of another. */
export const waitsFor = (hindrance: Hindrance, { sheet }: Spot): string =>
  words().fault.waitsFor(addressFrom(sheet, hindrance), faultOf(hindrance));

export const sameCell = (one: Spot, other: Spot): boolean => keyOf(one) === keyOf(other);

/** Before a card is printed that has nothing to go by. */
export const cardWithoutNumbers = (hindrance: Hindrance | undefined): string =>
  words().printing.withoutNumbers(hindrance && addressFrom("", hindrance) + hindranceAfterAddress(hindrance));

/** What looks at single rows from elsewhere goes on looking at the same places. */
export function lookersInWords([first, ...others]: readonly (Spot | string)[], sheet: string): string {
  if (first === undefined) return "";
  return words().sorting.lookers(typeof first === "string" ? `“${first}”` : addressFrom(sheet, first), others.length);
}

/** Why a table stays as it is. */
export const sortingRefused = (refusal: SortingRefusal): string =>
  words().sorting.refused(refusal, "at" in refusal ? addressOf(refusal.at.row, refusal.at.column) : "");

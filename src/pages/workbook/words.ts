/** The sentences of the page, in one place. */
import type { Direction } from "../../sorting/row-order";
import type { SortingRefusal } from "../../sorting/sorted-table";
import { addressOf } from "../../workbook/addresses";
import type { Hindrance } from "./hindrances";
import { keyOf, type Spot } from "./known-workbook";

/** Said while no cell has anything to say. */
export const hint = "Type over the tinted cells: every answer follows.";

/** What the engine's own errors mean. */
export const meanings: Readonly<Record<string, string>> = {
  "#DIV/0!": "this divides by zero or by a blank cell",
  "#NAME?": "a function or a name in this formula is not known: look at its spelling",
  "#REF!": "this refers to a cell that is no longer there",
  "#NUM!": "no number answers this",
  "#SPILL!": "the answer needs the cells beside or below this one: empty them",
  "#CYCLE!": "this formula refers to itself",
};

/** What the engine's own buttons and fields are called. */
export const engineNames = {
  addSheet: "Add a sheet",
  allSheets: "All sheets",
  zoomOut: "Smaller",
  zoomIn: "Larger",
  zoomTo: "Zoom to this mark",
  zoom: "Zoom",
  cellName: "Cell to go to",
  formula: "What the cell holds",
  others: "More",
  furtherNotices: "Further notices",
} as const;

/** While a calculation takes its time; the engine asks for these words and brings none. */
export const progress = {
  analyzing: "Looking at what has changed",
  calculating: "Calculating",
  "array-analysis": "Looking at what has changed",
  "array-calculation": "Calculating",
  done: "Calculated",
} as const;

const addressFrom = (sheet: string, spot: Spot): string =>
  spot.sheet === sheet ? addressOf(spot.row, spot.column) : `${spot.sheet} ${addressOf(spot.row, spot.column)}`;

/** `Fresh weight` within a sentence; names such as `TEA` keep their letters. */
const inSentence = (label: string): string =>
  /^\p{Lu}\p{Ll}|^\p{Lu} /u.test(label) ? label[0]?.toLowerCase() + label.slice(1) : label;

/** What is wrong with the cell: "is blank", "holds the text “350 g”". */
function state({ is, value }: Hindrance): string {
  if (is === "blank") return "is blank";
  if (is === "text") return `holds the text “${value}”`;
  if (is !== "error") return `holds ${value}`;
  const meaning = meanings[String(value)];
  return `shows ${value}${meaning === undefined ? "" : ` (${meaning})`}`;
}

/** Who waits for it; empty when nobody does. */
function waiters({ sheet, waiting: [first, ...rest], is }: Hindrance): string {
  if (first === undefined) return "";
  const count = rest.length + 1;
  if (is === "blank") return count === 1 ? "1 cell waits for it" : `${count} cells wait for it`;
  const named = addressFrom(sheet, first);
  if (rest.length === 0) return `${named} waits for it`;
  return `${named} and ${rest.length} more ${rest.length === 1 ? "cell wait" : "cells wait"} for it`;
}

/** After the cell's address: ", fresh weight, is blank: 14 cells wait for it". */
export function hindranceAfterAddress(hindrance: Hindrance): string {
  const { is, label, reason } = hindrance;
  const name = label === undefined ? "" : `, ${inSentence(label)},`;
  const who = waiters(hindrance);
  if (is === "formula") return who ? `: ${reason} (${who})` : `: ${reason}`;
  const why = reason === undefined ? "" : `. ${reason}`;
  return `${name} ${state(hindrance)}${who ? `: ${who}` : ""}${why}`;
}

/** The same where the cell is in sight. */
export function hindranceAtCell(hindrance: Hindrance): string {
  const sentence = hindranceAfterAddress({ ...hindrance, label: undefined }).replace(/^[\s:]+/, "");
  return hindrance.is === "formula" ? sentence : `This ${sentence}`;
}

/** Of a cell that shows nothing or an error because of another. */
export function waitsFor(hindrance: Hindrance, { sheet }: Spot): string {
  const name = hindrance.label === undefined ? "" : `, ${inSentence(hindrance.label)},`;
  if (hindrance.is === "formula") return `waits for ${addressFrom(sheet, hindrance)}: ${hindrance.reason}`;
  return `waits for ${addressFrom(sheet, hindrance)}${name} which ${state(hindrance)}`.replace(/,? which/, ", which");
}

export const sameCell = (one: Spot, other: Spot): boolean => keyOf(one) === keyOf(other);

/** Before a card is printed that has nothing to go by. */
export const cardWithoutNumbers = (hindrance: Hindrance | undefined): string => {
  const why = hindrance ? ` ${addressFrom("", hindrance)}${hindranceAfterAddress(hindrance)}.` : "";
  return `The firing card has no numbers yet.${why}\nPrint it all the same?`;
};

/** Around the sorting of a table. Rows are those that the maker sees beside the sheet. */
export const sorting = {
  by: "Sort by",
  directions: { up: "Smallest, earliest or A first", down: "Largest, latest or Z first" },
  agree: "Sort",
  refuse: "Cancel",
  undo: "Undo",
  nothing: "The table has no rows to sort yet.",
  inOrder: "The rows already stand in this order.",
  rows: (sheet: string, first: number, last: number) => `Rows ${first} to ${last} of ${sheet}. Blanks come last.`,
  beside: (columns: string) => `Take along what is typed beside the table, in ${columns}`,
  columns: (first: string, last: string) => (first === last ? `column ${first}` : `columns ${first} to ${last}`),
  done: (sheet: string, heading: string, direction: Direction) =>
    `${sheet} is sorted by ${heading}, ${direction === "up" ? "smallest" : "largest"} first. `,
} as const;

/** What looks at single rows from elsewhere goes on looking at the same places. */
export function lookersInWords([first, ...others]: readonly (Spot | string)[], sheet: string): string {
  if (first === undefined) return "";
  const named = typeof first === "string" ? `“${first}”` : addressFrom(sheet, first);
  const all = others.length === 0 ? `${named} goes` : `${named} and ${others.length} more go`;
  return `${all} by the place of rows here, not by what stands in them: look there after sorting.`;
}

/** Why a table stays as it is. */
export function sortingRefused(refusal: SortingRefusal): string {
  if (refusal.is === "hidden") return `Row ${refusal.row + 1} is hidden: show it first, so that nothing moves unseen.`;
  const at = addressOf(refusal.at.row, refusal.at.column);
  if (refusal.is === "merged") return `${at} is merged with other cells, and its row cannot be moved.`;
  if (refusal.is === "spills") return `${at} is a formula that fills other cells as well, and they cannot be moved.`;
  if (refusal.is === "goes by its place") {
    return `${at} goes by the row that it stands in (${refusal.text}): it would change, so nothing was sorted.`;
  }
  if (refusal.is === "reads other rows") {
    return `${at} takes other rows of the table (${refusal.text}): it would change, so nothing was sorted.`;
  }
  return `${at} takes ${refusal.text}, which goes by the order of the rows: it would change, so nothing was sorted.`;
}

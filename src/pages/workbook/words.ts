/** The sentences of the page, in one place. */
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

import { englishReason } from "../../core/english-refusals";
import { englishFileRefusal } from "../../xlsx/english-refusals";
import { englishNotShown, englishSavingRemark } from "../../xlsx/english-remarks";
import type { Fault, PageWords } from "../page";

const meanings: Readonly<Record<string, string>> = {
  "#DIV/0!": "this divides by zero or by a blank cell",
  "#NAME?": "a function or a name in this formula is not known: look at its spelling",
  "#REF!": "this refers to a cell that is no longer there",
  "#NUM!": "no number answers this",
  "#SPILL!": "the answer needs the cells beside or below this one: empty them",
  "#CYCLE!": "this formula refers to itself",
  "#VALUE!": "a text stands where a number belongs, or the formula is not complete",
  "#N/A": "what is looked for is not there, or a function is given too few or too many arguments",
  "#NULL!": "two areas in this formula have no cell in common",
};

/** `Fresh weight` within a sentence; names such as `TEA` keep their letters. */
const inSentence = (label: string): string =>
  /^\p{Lu}\p{Ll}|^\p{Lu} /u.test(label) ? label[0]?.toLowerCase() + label.slice(1) : label;

/** What is wrong with the cell: "is blank", "holds the text “350 g”", "shows #DIV/0! (this divides by zero …)". */
function state({ is, value, reason }: Fault): string {
  if (is === "blank" || is === "missing") return "is blank";
  if (is === "text") return `holds the text “${value}”`;
  if (is !== "error") return `holds ${value}`;
  return `shows ${value}${reason === undefined ? "" : ` (${reason})`}`;
}

/** Who waits for it; empty when nobody does. */
function waiters({ waiting, is }: Fault): string {
  if (waiting === undefined) return "";
  const { first, count } = waiting;
  if (is === "blank") return count === 1 ? "1 cell waits for it" : `${count} cells wait for it`;
  if (count === 1) return `${first} waits for it`;
  return `${first} and ${count - 1} more ${count === 2 ? "cell wait" : "cells wait"} for it`;
}

const called = (label: string | undefined): string => (label === undefined ? "" : `, ${inSentence(label)},`);

/** "is blank: 14 cells wait for it". */
function withWaiters(fault: Fault): string {
  const { is, reason } = fault;
  const who = waiters(fault);
  if (is === "formula") return who ? `${reason} (${who})` : `${reason}`;
  return `${state(fault)}${who ? `: ${who}` : ""}${reason === undefined || is === "error" ? "" : `. ${reason}`}`;
}

export const englishPage: PageWords = {
  parts: {
    title: "Tea Mass Balance",
    workbooks: "Workbooks",
    card: "Firing card",
    pane: "Jobs and checks",
    menu: "Menu",
    sort: "Sort the table …",
    print: "Print the firing card",
    download: "Download .xlsx",
    downloadNamed: "Save for phones and for people without the add-in",
    open: "Open .xlsx …",
    ownFiles: "Your files …",
    back: "Back to the sample …",
    touchHelp:
      "Swipe to scroll, tap a cell to select it, tap it again to type; press long and draw on to select a range. Dragging cells wants a mouse.",
    keyHelp:
      "Keys: Escape, then Tab leaves the sheet. F6 goes on from here to the sheet and to the jobs, Shift+F6 back.",
    keyHint: "Escape, then Tab leaves the sheet; F6 goes on to the jobs or the header.",
    file: "A workbook to open",
    line: "About the cells",
    grid: "Workbook",
  },
  samples: { "one-lot": "One lot", season: "Season" },
  engine: {
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
  },
  progress: { looking: "Looking at what has changed", calculating: "Calculating", done: "Calculated" },
  hint: "Type over the tinted cells: every answer follows.",
  meanings,
  unknownFunction: (name, nearest) =>
    `there is no function ${name}${nearest.length > 0 ? `; did you mean ${nearest.join(" or ")}?` : ": look at its spelling"}`,
  colon: ": ",
  goToCell: "Go to this cell",
  blankCell: "blank",
  moreWrong: (count) => ` (${count} more ${count === 1 ? "cell is" : "cells are"} wrong)`,
  reason: englishReason,
  fault: {
    // ", fresh weight, is blank: 14 cells wait for it"
    afterAddress: (fault) =>
      fault.is === "formula" ? `: ${withWaiters(fault)}` : `${called(fault.label)} ${withWaiters(fault)}`,
    inShort: (fault) => `${called(fault.label)} ${state(fault)}`,
    atCell: (fault) => (fault.is === "formula" ? withWaiters(fault) : `This ${withWaiters(fault)}`),
    waitsFor: (address, fault) => {
      if (fault.is === "formula") return `waits for ${address}: ${fault.reason}`;
      return `waits for ${address}${called(fault.label) || ","} which ${state(fault)}`;
    },
    cellOf: (heading, name) => `${heading} of ${name}`,
  },
  printing: {
    withoutNumbers: (cause) =>
      `The firing card has no numbers yet.${cause === undefined ? "" : ` ${cause}.`}\nPrint it all the same?`,
    agree: "Print it empty",
    refuse: "Do not print",
    printed: (moment) => `Printed ${moment}`,
  },
  cancel: "Cancel",
  sample: {
    startAfresh: (sample) =>
      `Start afresh from the sample “${sample}”?\nWhat you have typed here is lost; download it first if you want it.`,
    agree: "Start afresh",
    refuse: "Keep my work",
    shown: "A sample; what you type is kept here.",
  },
  keeping: {
    kept: (moment) => `Kept in this browser, ${moment}`,
    notKept: "This browser does not keep your work here: download it before you close the page.",
    unreadable: "Work that was kept here could not be read, so the sample is shown. Nothing was deleted.",
    downloadKept: "Download what was kept",
    nobodyServes:
      "Nobody serves this page any more, so it cannot open another workbook now. What you see still works: download it to take it along.",
    notMade: (reason) => `The file could not be made, so nothing was downloaded; your work is still here. (${reason})`,
    madeWithoutAddIn: (still) =>
      still.length === 0
        ? "Downloaded. Its functions are in the file: Excel 2024 or Microsoft 365 works them out without the add-in, once editing is enabled."
        : `Downloaded, but these functions still need the add-in: ${still.join(", ")}. Without it they show what they show now.`,
  },
  opening: {
    now: "Opening the workbook …",
    tooLarge: "This workbook is too large for this page: it needs more memory than the browser has for it.",
    failed: "The workbook could not be opened. Is the program that serves this page still running?",
    paneFailed: "The pane could not be fetched. Is the program that serves this page still running?",
  },
  file: { refused: englishFileRefusal, onSaving: englishSavingRemark },
  ownFile: {
    question: (name, notShown, { keptSince, canSaveInto }) => [
      `Open “${name}” here? The page works on a copy that it keeps; the file itself is not changed${canSaveInto ? " until you save into it" : ""}.`,
      "Saving gives the same file back: the cells that you changed, what follows from them, and every other part as it was, byte for byte, whether it can be seen here or not. Only cells are changed: rows, columns and sheets stay where they are.",
      notShown.length > 0
        ? `Kept in the file, but not shown here: ${notShown.map(englishNotShown).join("; ")}.`
        : "All that is in this file is shown here.",
      ...(keptSince === undefined
        ? []
        : [
            `A file of this name is kept here already, last changed ${keptSince}: it stays, and this one is put beside it.`,
          ]),
    ],
    agree: "Open it",
    reading: (name) => `Reading “${name}” …`,
    notOpened: (name, reason) => `“${name}” was not opened. ${reason}`,
    noRoom: (name) => `“${name}” is too large for this page: this browser has no room to keep it.`,
    keepsNothing: "This browser keeps nothing for this page, so a file of your own cannot be opened here.",
    tooLarge: "It is too large for this page: reading it needs more memory than the browser has for it.",
    notRead: "It could not be read as an .xlsx workbook.",
    tooSlow: "Reading it took more than two minutes and was ended.",
    save: "Save the file",
    notSaved: (reason) => `Nothing was saved; your work is still here. ${reason}`,
    askIntoFile: (name) =>
      `Save into “${name}” itself? What stands in the file now is written over. Or download it, and the file stays as it is.`,
    intoFile: "Into the file",
    asDownload: "Download it",
    savedInto: (name, moment) => `Saved into “${name}”, ${moment}`,
    notInto: (name, because) =>
      because === "changed"
        ? `“${name}” is not the file any more that was opened: another program has changed it since. It stays as it is. Your work is still here: download it, and compare the two.`
        : because === "gone"
          ? `“${name}” is not where it was any more. Your work is still here: download it.`
          : because === "no room"
            ? `There is no room left on the disk for “${name}”, so it stays as it is. Your work is still here: make room and save again, or download it to another place.`
            : `The browser does not let this page write into “${name}”, so it stays as it is. Your work is still here: download it.`,
    kept: "Your files in this browser",
    changed: (day) => `changed ${day}`,
    remove: "Remove",
    removing: (name) =>
      `Remove “${name}” from this browser? What you typed and have not saved into a file is lost. Files on your disk stay.`,
    close: "Close",
    looksNotSaved:
      "This look is not written into a file of your own, so it is not offered here: set it in your spreadsheet program.",
    onPageOnly: "Seen so on this page: in a file of your own, widths, heights and what is hidden stay as they are.",
    leadsTo: (place) => `leads to ${place}`,
    leadsNowhere: (place) => `There is no ${place} in this workbook.`,
    staysInPlace:
      "In a file of your own, cells are changed and nothing is moved: what other parts of the file say of rows, sheets and names would no longer be true. Do that in your spreadsheet program, and open the file here again.",
  },
  typed: {
    doubtful: (typed, readings) => `${typed} can mean ${readings.join(" or ")}, so it stays a text: type one of them`,
    readAs: (typed, plain, mark) => `${typed} is read as ${plain}, with decimals behind the ${mark}`,
    readAsDay: (typed, day) => `${typed} is read as ${day}`,
    staysText: (typed, isNoDay) =>
      `${typed} ${isNoDay ? "is no day of the calendar, so it" : "is not read as a day: it"} stays a text. Type the day as 2025-04-13`,
  },
  charts: {
    values: "values",
    nothing: (series) => `${series}: nothing yet.`,
    points: (series, kind, count, from, to) => `${series}: ${count} ${kind} from ${from} to ${to}`,
    beyond: (points) => `, beyond the picture: ${points}`,
  },
  sorting: {
    by: "Sort by",
    directions: { up: "Smallest, earliest or A first", down: "Largest, latest or Z first" },
    agree: "Sort",
    undo: "Undo",
    nothing: "The table has no rows to sort yet.",
    inOrder: "The rows already stand in this order.",
    rows: (sheet, first, last) => `Rows ${first} to ${last} of ${sheet}. Blanks come last.`,
    beside: (columns) => `Take along what is typed beside the table, in ${columns}`,
    columns: (first, last) => (first === last ? `column ${first}` : `columns ${first} to ${last}`),
    done: (sheet, heading, direction) =>
      `${sheet} is sorted by ${heading}, ${direction === "up" ? "smallest" : "largest"} first. `,
    lookers: (first, more) => {
      const all = more === 0 ? `${first} goes` : `${first} and ${more} more go`;
      return `${all} by the place of rows here, not by what stands in them: look there after sorting.`;
    },
    refused: (refusal, at) => {
      switch (refusal.is) {
        case "hidden":
          return `Row ${refusal.row + 1} is hidden: show it first, so that nothing moves unseen.`;
        case "merged":
          return `${at} is merged with other cells, and its row cannot be moved.`;
        case "spills":
          return `${at} is a formula that fills other cells as well, and they cannot be moved.`;
        case "goes by its place":
          return `${at} goes by the row that it stands in (${refusal.text}): it would change, so nothing was sorted.`;
        case "reads other rows":
          return `${at} takes other rows of the table (${refusal.text}): it would change, so nothing was sorted.`;
        default:
          return `${at} takes ${refusal.text}, which goes by the order of the rows: it would change, so nothing was sorted.`;
      }
    },
  },
};

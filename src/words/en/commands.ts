import { englishFileRefusal } from "../../xlsx/english-refusals";
import { englishFew } from "../../xlsx/english-remarks";
import type {
  CommandWords,
  FixedWhyNotCounted,
  SeasonCommandWords,
  SeasonCounts,
  TakenHeading,
  WhyNotCounted,
} from "../commands";

const number = (value: number): string => value.toLocaleString("en");
const counted = (count: number, one: string, several: string): string =>
  `${number(count)} ${count === 1 ? one : several}`;

const fixedWhys: Readonly<Record<FixedWhyNotCounted, string>> = {
  "far apart": "its cells lie too far apart",
  hidden: "the sheet is hidden",
  "own season": "it is a season that this command wrote",
  "no headings": "no headings for a fresh and a finished weight were found in it",
  "no unit": "its heading names no unit of weight: write it there, or say --unnamed g (or kg …)",
};

function why(of: WhyNotCounted): string {
  if (typeof of === "string") return fixedWhys[of];
  switch (of.kind) {
    case "same file":
      return `it is the same file as ${of.as}`;
    case "refused":
      return englishFileRefusal(of.why);
    case "not read":
      return `it could not be read: ${of.problem}`;
    case "rows of others":
      return `${counted(of.rows, "row is", "rows are")} worked out from other cells, which count already`;
    case "more tea than leaf":
      return `more tea than leaf: ${of.finished} finished from ${of.fresh} fresh`;
    case "no weight":
      return `no ${of.which} weight`;
    case "error":
      return `the ${of.which} weight is the error ${of.code}`;
    case "text":
      return `the ${of.which} weight is the text "${of.text}": type a number`;
    case "not above 0":
      return `the ${of.which} weight is ${of.value}: it must be above 0`;
  }
}

function takenFrom({ as, heading, unit, instead }: TakenHeading): string {
  const among = instead
    ? `; ${instead.map((each) => `"${each}"`).join(" and ")} could be meant as well: say which with --columns`
    : "";
  return `${as} from "${heading}"${unit === undefined ? "" : ` (${unit})`}${among}`;
}

const summary = ({ lots, books, files, open, unit }: SeasonCounts): string =>
  [
    `${counted(lots, "lot", "lots")} of ${counted(books, "book", "books")} (${counted(files, "file", "files")} read)`,
    unit === undefined
      ? "weights as they stand, since no heading names a unit"
      : `in ${unit}${unit === "jin" ? " of 500 g" : ""}`,
    open === 0 ? "all finished" : `${counted(open, "is", "are")} still open`,
  ].join(", ");

const season: SeasonCommandWords = {
  why,
  readSoFar: (read, files) => `${read} of ${files} files read`,
  unknownHeading: (heading, as, alike) =>
    `no book has the heading "${heading}" (--columns, ${as})${alike.first.length > 0 ? `; there is ${englishFew({ ...alike, first: alike.first.map((each) => `"${each}"`) })}` : ""}`,
  tooMany: (lots) => `${number(lots)} lots are more than a sheet has room for: take fewer books`,
  nothingWritten:
    "Nothing was written: --out season.xlsx writes a workbook with live formulas, --csv season.csv the lots.",
  written: (file, lots) =>
    lots === undefined ? `Written to ${file}` : `Written to ${file}, with ${counted(lots, "lot", "lots")}`,
  notWritten: (problem) => `it could not be written: ${problem}`,
  noLots: (files) =>
    `No lot was found in ${counted(files, "file", "files")}. If the books have lots, say what their headings are: --columns "fresh=Leaf kg, finished=Tea kg"`,
  summary,
  taken: "Taken from the headings",
  notCounted: "Not counted",
  countedTwice: "Counted twice?",
  alike: (file, lots, as) => `${file}: ${counted(lots, "lot", "lots")} as in ${as}`,
  takenFrom: (files, headings) => `${englishFew(files)}: ${headings.map(takenFrom).join(", ")}`,
  places: (where, named, because) => {
    const places = [
      ...(where ? [where.file, where.sheet] : []),
      ...(named.first.length > 0 ? [englishFew(named)] : []),
    ];
    return `${places.join(", ")}: ${because}`;
  },
  more: (lines) => `and ${number(lines)} more: --out and --json have them all`,
  noPlot: "not named",
  table: undefined,
  workbook: {
    title: "Season of several books",
    sheets: { byPlot: "By plot", byBook: "By book", lots: "Lots", leftOut: "Left out", headings: "Headings" },
    byPlots: "The season by plots",
    byBooks: "The season by books",
    remark: (unit) =>
      `Weights ${unit === undefined ? "in the unit of the books" : `in ${unit}`}. It all comes from the sheet Lots and follows when a weight there changes.`,
    columns: {
      file: "file",
      sheet: "sheet",
      row: "row",
      lot: "lot",
      date: "date",
      plot: "plot",
      fresh: "fresh",
      finished: "finished",
      outturn: "outturn",
    },
    weight: (which, unit) => `${which} ${unit}`,
    closing: "The lots end here: put in more rows above this line.",
    leftOut: { cell: "cell", why: "why it is not counted" },
    headings: {
      as: "taken for",
      heading: "heading in the book",
      unit: "unit",
      instead: "could be meant as well",
    },
    listed: (headings) => headings.join("; "),
    footer: "&R&A, page &P of &N",
  },
};

export const englishCommands: CommandWords = {
  refused: englishFileRefusal,
  check: {
    notLookedThrough: (file, because) => `${file}: not looked through. ${because}`,
    passedOver: (sheet) => `${sheet}: not looked through, its cells lie too far apart`,
    found: (file, cells, things) =>
      `${file}: ${counted(cells, "cell", "cells")}, ${things === 0 ? "nothing stands out" : `${things} ${things === 1 ? "stands" : "stand"} out`}`,
    inAll: (files, things) => `${files} files, ${things} ${things === 1 ? "thing stands" : "things stand"} out`,
    thing: (place, title, words) => `${place}  ${title}: ${words}`,
  },
  season,
};

import type { Few, FixedNotShown, NotShown, NotShownInAreas, SavingRemark } from "./remarks";

const onSaving: Readonly<Record<SavingRemark, string>> = {
  signature: "The file is signed: the signature will not hold for what is saved.",
  charts: "The file has charts: they show the new numbers once a spreadsheet program has opened it.",
  "pivot tables":
    "The file has pivot tables: they keep the old numbers until they are refreshed in a spreadsheet program.",
};

export const englishSavingRemark = (remark: SavingRemark): string => onSaving[remark];

const fixed: Readonly<Record<FixedNotShown, string>> = {
  macros: "macros",
  "chart sheets": "chart sheets",
  "dialog sheets": "dialog sheets",
  "looks of single words": "different looks of single words in a cell",
  pictures: "pictures",
  shapes: "shapes",
  "other charts": "other kinds of charts",
  "pivot tables": "pivot tables",
  "slicers and timelines": "slicers and timelines",
  "buttons and boxes": "buttons and boxes",
  "objects of other programs": "objects of other programs",
  "answers to comments": "answers to comments",
  "links to other workbooks": "links to other workbooks",
  "connections to other data": "connections to other data",
  "record of changes": "a record of who changed what",
  signature: "a signature",
  "cards and pictures in cells": "cards and pictures in cells",
  "check boxes in cells": "check boxes in cells",
  "panes of add-ins": "panes of add-ins",
  "views of single people": "views of single people",
  "drawings by pen": "drawings by pen",
  "properties and labels": "properties and labels of the file",
  "settings of a printer": "settings of a printer",
  "sounds and films": "sounds and films",
  fonts: "fonts",
  filters: "filters",
  "protection of sheets": "protection of sheets",
  "lines inside cells": "lines inside cells",
  scenarios: "scenarios",
};

const inAreas: Readonly<Record<NotShownInAreas, string>> = {
  "data validation": "data validation",
  "conditional formats": "conditional formats",
  "tables of inputs": "working out of tables of inputs",
};

/** What a file has and the grid does not show. */
export function englishNotShown(what: NotShown): string {
  if (typeof what === "string") return fixed[what];
  switch (what.kind) {
    case "part":
      return `the part ${what.path}`;
    case "parts of a type":
      return `parts of the kind ${what.type}`;
    case "names":
      return `names ${englishFew(what.found)}`;
    case "names worked out":
      return `working out of the names ${englishFew(what.found)}`;
    case "lost table columns":
      return `working out of formulas with table columns that are not there, in ${englishFew(what.found)}`;
    default:
      return `${inAreas[what.kind]} (${englishFew(what.found)})`;
  }
}

/** `Lots!B2:B90 and Lots!D:D and 3 more`. */
export const englishFew = ({ first, more }: Few): string =>
  [...first, ...(more > 0 ? [`${more.toLocaleString("en")} more`] : [])].join(" and ");

/** Refusals of files in English: what is in the way and what to do, for a maker to read. */
import type { Damage, DamageOfPart, FixedDamage } from "./damage";
import type { CellBond, FileRefusal, FixedFileRefusal, FormulaProblem } from "./refusals";

const saveAs = "Save it as an .xlsx workbook in the program that made it, and open that.";
const saveOnce = "Save it once in your spreadsheet program.";
const inTheProgram = "do that in your spreadsheet program";

const fixed: Readonly<Record<FixedFileRefusal, string>> = {
  empty: "The file is empty: it has no bytes. Open the one that it was copied from.",
  "no .xlsx": `The file is not an .xlsx workbook. ${saveAs}`,
  OpenDocument: `The file is an OpenDocument file. ${saveAs}`,
  "binary .xlsb": `The file is a binary .xlsb workbook. ${saveAs}`,
  "old .xls": `The file is an old .xls workbook. ${saveAs}`,
  "text or presentation": "The file is a text or a presentation, not a workbook.",
  "some archive": `The file is an archive, but not an .xlsx workbook. ${saveAs}`,
  "archive without a workbook": "The file is an archive, but not an .xlsx workbook.",
  password:
    "The file is locked with a password. Take the password off in the program that made it, and open the file again.",
  "macros alone": "The file holds macros alone, and no sheet of cells. Open the workbook that they belong to.",
  "no sheet of cells": "The file has no sheet of cells. Open the workbook that has them.",
  "many texts": "The file has more than a million different texts.",
  "many cells":
    "The file has more than a million cells, which is more than is read here. Move sheets that you do not need today into a file of their own.",
  "many merges and the like":
    "The file has a sheet with more than a million merges, links, heights and the like. Move what you need into a new file.",
};

export function englishFileRefusal(refusal: FileRefusal): string {
  if (typeof refusal === "string") return fixed[refusal];
  switch (refusal.kind) {
    case "damaged":
      return `The file is damaged: ${damage(refusal.how)}. Copy it again from where it came, or open and save it once in the program that made it.`;
    case "large when unpacked":
      return `The file holds ${number(refusal.megabytes)} MB when it is unpacked, and 256 MB are read at most. Delete sheets or pictures that you do not need, or split it.`;
    case "packed in another way":
      return `The file is packed in a way that is not known here (method ${refusal.method}). ${saveOnce}`;
    case "leads out of it":
      return `The file holds a part whose name leads out of it (${refusal.name}), as no spreadsheet program writes it. Do not open it; ask whoever sent it for another.`;
    case "many elements":
      return `The file has more than ${number(refusal.most)} elements in ${refusal.path}, which is more than is read here. Save it once in your spreadsheet program, or split it.`;
    case "document type":
      return `The file declares a document type in ${refusal.path}, which can be used to do harm and which no spreadsheet program writes. ${saveOnce}`;
    case "encoding":
      return `The file is written in ${refusal.encoding} (${refusal.path}), and only UTF-8 is read. ${saveOnce}`;
    case "long text":
    case "long formula": {
      const what = refusal.kind === "long text" ? "text" : "formula";
      return `The file has a ${what} of ${number(refusal.length)} characters, and a cell holds ${number(refusal.most)}. Shorten it in the program that made it.`;
    }
    case "place outside": {
      const at = "row" in refusal.place ? `row ${refusal.place.row}` : refusal.place.address;
      return `The file has something at ${at}, which lies outside a sheet of ${number(refusal.rows)} rows and ${number(refusal.columns)} columns. ${saveOnce}`;
    }
    case "cell outside":
      return `The cell lies outside a sheet of ${refusal.rows} rows and ${refusal.columns} columns.`;
    case "no such sheet":
      return `The file has no sheet ${refusal.sheet} of cells.`;
    case "name of its own":
      return `The workbook has a name ${refusal.name} of its own: rename it first.`;
    case "cell":
      return `${refusal.place} ${bond(refusal.bond)}.`;
    case "formula":
      return `The formula in ${refusal.place} ${problem(refusal.problem)}.`;
  }
}

const fixedDamages: Readonly<Record<FixedDamage, string>> = {
  "end missing": "its end is missing",
  "directory not found": "its directory cannot be found",
  "directory outside": "its directory lies outside it",
  "directory broken off": "its directory breaks off",
  "senseless length": "a length in it makes no sense",
  "list of parts missing": "the list of its parts, [Content_Types].xml, is missing",
};

/** Behind the path of the part. */
const damagesOfParts: Readonly<Record<Exclude<DamageOfPart, "two parts named">, string>> = {
  "not where it should be": "is not where its directory says",
  "cut off": "is cut off",
  "over another": "lies over what follows it",
  "more than declared": "holds more than it declares",
  "less than declared": "holds less than it declares",
  "not what was written": "is not what was written",
  "not unpacked": "cannot be unpacked",
  missing: "is missing",
  "long text": "holds a text longer than a million characters",
  "no XML": "is not well-formed XML",
};

function damage(how: Damage): string {
  if (typeof how === "string") return fixedDamages[how];
  switch (how.kind) {
    case "two parts named":
      return `it holds two parts named ${how.path}`;
    case "nested":
      return `${how.path} is nested more than ${how.deepest} deep`;
    case "sheet missing":
      return `the sheet ${how.sheet} is missing`;
    default:
      return `${how.path} ${damagesOfParts[how.kind]}`;
  }
}

function bond(of: CellBond): string {
  if (of === "table of inputs") return `belongs to a table of inputs, which is changed as a whole: ${inTheProgram}`;
  if (of === "pivot table") return `belongs to a pivot table, which fills it: ${inTheProgram}`;
  switch (of.kind) {
    case "spill":
      return `is filled by the formula in ${of.holder}: change that one`;
    case "array formula":
      return `belongs to the array formula in ${of.holder}, which is changed as a whole: ${inTheProgram}`;
    case "merged":
      return `lies under merged cells: change ${of.first}, the first of them`;
    case "heading":
    case "total":
      return `is a ${of.kind} of the table ${of.table}, which the file says twice: ${inTheProgram}`;
  }
}

const fixedProblems: Readonly<Record<Extract<FormulaProblem, string>, string>> = {
  "not whole": "is not complete, or not written as spreadsheets read it",
  "another workbook": "names another workbook: write it in your spreadsheet program",
  "too long": "is longer than 8,192 characters",
};

function problem(of: FormulaProblem): string {
  if (typeof of === "string") return fixedProblems[of];
  switch (of.kind) {
    case "sign":
      return `has a ${of.sign} that cannot be saved from here: write it in your spreadsheet program`;
    case "sheet":
      return `names the sheet ${of.name}, which the file does not have`;
    case "table":
      return `names ${of.reference}, which no table of the file has`;
  }
}

const number = (value: number): string => value.toLocaleString("en");

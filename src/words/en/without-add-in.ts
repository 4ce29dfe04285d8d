import type { WithoutAddInWords } from "../without-add-in";

const formulas = (count: number): string => (count === 1 ? "1 formula" : `${count} formulas`);
const onSheets = (sheets: number): string => (sheets === 1 ? "on 1 sheet" : `on ${sheets} sheets`);
const names = (count: number): string => (count === 1 ? "1 name" : `${count} names`);
const listed = (words: readonly string[]): string => words.join(", ");

export const englishWithoutAddIn: WithoutAddInWords = {
  title: "For phones and for people without the add-in",
  question: "Put the formulas into this workbook itself, and take them out again",
  intro:
    "Excel on a phone, or without this add-in, shows the last answers of its functions and works out no new ones. Formulas in the workbook itself go on working there: in Microsoft 365, also on a phone, and in Excel 2024.",
  look: "Look through the workbook",
  reading: "Reading the formulas …",
  nothing: "No formula in this workbook calls a function of the add-in.",
  noneHas: (ids) =>
    `The functions that this workbook calls have no such formula and stay the add-in's: ${listed(ids)}.`,
  headings: { "to names": "Without the add-in", back: "Back to the add-in" },
  formulas: {
    "to names": (count, sheets) =>
      `${formulas(count)} ${onSheets(sheets)} will call formulas in the workbook: TEA_OUTTURN instead of TEA.OUTTURN, and so on.`,
    back: (count, sheets) => `${formulas(count)} ${onSheets(sheets)} will call the functions of the add-in again.`,
  },
  changedNames: (changed) => `These names of yours change in the same way: ${listed(changed)}.`,
  put: (count) => `${names(count)} that begin with TEA_ or _TEA_ come into the workbook.`,
  takenOut: (count) =>
    `${names(count)} that came with such formulas, and that no cell and no other name calls then, are taken out.`,
  without: (ids) =>
    ids.length === 1
      ? `1 function has no such formula and stays the add-in's: ${listed(ids)}.`
      : `${ids.length} functions have no such formula and stay the add-in's: ${listed(ids)}.`,
  locked: (sheet, count) =>
    `The sheet “${sheet}” is protected: ${formulas(count)} there ${count === 1 ? "is" : "are"} not changed.`,
  taken: (taken) =>
    `These names stand for something else in this workbook, or for another version, and are not touched: ${listed(taken)}.`,
  blocked: (ids) => `What would need them stays the add-in's: ${listed(ids)}.`,
  unseen: "Rules of conditional formats and of data validation are neither read nor changed.",
  copy: "This changes the workbook that is open, and Excel may not undo all of it. Save a copy of the file first.",
  keepNames: "Leave the names in the workbook",
  keepNamesHelp: "For rules of conditional formats or of data validation that call them.",
  button: {
    "to names": (count) => `Change ${formulas(count)}`,
    back: (count) => (count === 0 ? "Take the names out" : `Change ${formulas(count)} back`),
  },
  leave: "Leave it as it is",
  progress: (sheet, done, all) => `Sheet “${sheet}”: ${done} of ${all} formulas are done …`,
  done: {
    "to names": (count) =>
      count === 1
        ? "1 formula calls a formula in the workbook now. Save the workbook."
        : `${formulas(count)} call formulas in the workbook now. Save the workbook.`,
    back: (count) =>
      count === 1
        ? "1 formula calls a function of the add-in again."
        : `${formulas(count)} call functions of the add-in again.`,
  },
  namesIn: (count) => `${names(count)} came in.`,
  namesOut: (count) => `${names(count)} went out.`,
  sameAnswers: "Each of these cells shows what it showed before.",
  left: "Not changed",
  leftSheet: (sheet, why) => `Sheet “${sheet}”: ${why}`,
  others: "Other answers than before",
  othersWhy: "Look at these cells before you pass the workbook on. The way back is below.",
  beforeAndNow: (before, now) => `before: ${before}; now: ${now}`,
  blank: "blank",
  more: (count) => `and ${count} more`,
  goTo: (place) => `Go to ${place}`,
  brokenOff:
    "It stopped on the way: some formulas may have changed already. Look through the workbook again, and go on from there.",
};

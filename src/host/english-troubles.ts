import type { FixedTrouble, Trouble } from "./host-problem";

const fixed: Readonly<Record<FixedTrouble, string>> = {
  "no cell selected in the grid": "No cell is selected: select one in the grid, then try again.",
  "no cells selected in Excel": "Excel has no cells selected: select one cell or one block of cells, then try again.",
  "no workbook open": "No workbook is open.",
  "another workbook in front": "Another workbook is in front: go back to this one, then try again.",
  "a cell is being typed in": "A cell is being typed in: press Enter or Escape in the sheet, then try again.",
  "Excel is busy": "Excel is busy: try again in a moment.",
  "not worked out yet": "Excel has not finished working this out: try again in a moment.",
  "place no longer there": "This place is no longer in the workbook.",
  "place not in the workbook": "This place is not in the workbook.",
  "place or formula not known": "Excel does not know this place, or does not take this formula.",
  "block does not fit": "The block does not fit on the sheet here: choose a cell further up or left.",
  "merged cells": "There are merged cells here: choose a place without any.",
  "pivot table": "There is a pivot table here: choose a place beside it.",
  "filtered rows": "The rows here are filtered: clear the filter or choose another place.",
  "too many cells": "That is more cells than Excel hands over at once: choose fewer.",
  "sheet protected": "The sheet is protected: lift the protection or choose another sheet.",
  "workbook read-only": "The workbook is open for reading only: open it for editing, then try again.",
  "not allowed by Excel": "Excel does not allow this here: the sheet or the workbook may be protected.",
  "not allowed by the grid": "The grid does not allow changes here: choose another place.",
  "grid draws no charts": "The grid in this page draws no charts.",
  "grid saves a copy instead": "Here a copy is saved instead: Menu, Save for phones and for people without the add-in.",
  "not in this Excel": "This Excel cannot do this: it takes Microsoft 365, Excel 2024, or Excel on the web.",
  "another formula by now": "Another formula stands there by now.",
  "formula not taken": "Excel did not take the other formula here.",
};

/** Why a workbook did not do what it was asked, in English. */
export function englishTrouble(trouble: Trouble): string {
  if (typeof trouble === "string") return fixed[trouble];
  switch (trouble.kind) {
    case "no such place":
      return `There is no ${trouble.address} in this workbook.`;
    case "no such sheet":
      return `There is no sheet “${trouble.sheet}” in this workbook.`;
    case "sheet gone":
      return `The sheet “${trouble.sheet}” is no longer in this workbook.`;
    case "grid cannot work out":
      return `The grid cannot work out ${trouble.expression}.`;
    case "only in its own cell":
      return `Excel works ${trouble.expression} out only in its own cell: write the cells' addresses instead.`;
    case "not done":
      return `Excel could not do this${trouble.code === "" ? "" : ` (${trouble.code})`}.`;
    case "name left":
      return `${englishTrouble(trouble.after)} The hidden name ${trouble.name} is still in the workbook.`;
  }
}

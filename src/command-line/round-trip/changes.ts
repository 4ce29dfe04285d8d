/** Three changes of a workbook, as a maker makes them: another number, a text beside it, and a formula under it all. */
import type { Cell, Workbook } from "../../workbook/workbook";
import type { Edit } from "../../xlsx/patch/edit";
import type { PatchableBook } from "../../xlsx/patch/patchable-book";

const addedText = "weighed again & “wet” <1>";
const addedFormula = "=SUM(1,2)/4";
/** 3/4. */
const addedResult = 0.75;

/** Fewer where a file has no room for them. */
export function changesOf(workbook: Workbook, book: PatchableBook): Edit[] {
  for (const sheet of workbook.sheets) {
    const canTake = (edit: Edit) => book.refusal(edit) === undefined;
    const numbers = sheet.cells.flatMap((cell): Edit[] =>
      typeof cell.value === "number" && cell.formula === undefined ? [changedNumber(sheet.name, cell, cell.value)] : [],
    );
    const number = numbers.find(canTake);
    const beside = number ? { row: number.row, column: number.column + 1 } : { row: 0, column: 0 };
    const text: Edit = { sheet: sheet.name, ...beside, content: { is: "constant", value: addedText } };
    const below = sheet.cells.reduce((last, { row }) => Math.max(last, row), 0) + 2;
    const formula: Edit = {
      sheet: sheet.name,
      row: below,
      column: number?.column ?? 0,
      content: { is: "formula", formula: addedFormula, value: addedResult },
    };
    const edits = [number, text, formula].filter((edit): edit is Edit => edit !== undefined && canTake(edit));
    if (number !== undefined || sheet === workbook.sheets.at(-1)) return edits;
  }
  return [];
}

const changedNumber = (sheet: string, { row, column }: Cell, value: number): Edit => ({
  sheet,
  row,
  column,
  content: { is: "constant", value: value + 1.25 },
});

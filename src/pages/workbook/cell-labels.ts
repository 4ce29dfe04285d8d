/** What a cell is called on its sheet: by the word at its left, or by the heading over its column. */
import { shortened } from "../../core/shown";
import type { Cell } from "../../workbook/workbook";
import type { KnownWorkbook, SheetArea, Spot } from "./known-workbook";
import { words } from "./words";

/** So many cells to the left of a cell its label may stand. */
const furthestLabel = 3;

/** `Fresh weight` where that stands at the left; `Fresh, g of L12` in a book whose rows have names. */
export function labelOf(workbook: KnownWorkbook, spot: Spot): string | undefined {
  const left = textAtLeft(workbook, spot);
  const over = headingOver(workbook, spot);
  if (over === undefined || (left && !hasHeading(workbook, left, over))) return left?.text;
  const [first] = workbook.rowOf(spot);
  const name = first && first.column < spot.column ? written(first) : undefined;
  const isNamed = name !== undefined && hasHeading(workbook, { ...spot, column: first?.column ?? 0 }, over);
  return isNamed ? words().fault.cellOf(over.text, name) : over.text;
}

/** What a row or a column of cells is called: by the word at its left, or by its heading. */
export const labelOfList = (workbook: KnownWorkbook, list: SheetArea): string | undefined =>
  list.rows > 1 ? headingOver(workbook, list)?.text : textAtLeft(workbook, list)?.text;

type Text = Spot & { readonly text: string };

function textAtLeft(workbook: KnownWorkbook, spot: Spot): Text | undefined {
  for (let column = spot.column - 1; column >= Math.max(0, spot.column - furthestLabel); column -= 1) {
    const cell = workbook.cellAt({ ...spot, column });
    if (cell?.value === undefined || cell.value === "") continue;
    const text = written(cell);
    return text === undefined ? undefined : { ...spot, column, text };
  }
  return undefined;
}

/** The nearest words over a column, in a row of headings. */
function headingOver(workbook: KnownWorkbook, spot: Spot): Text | undefined {
  for (const row of workbook.headingsOver(spot)) {
    const cell = workbook.cellAt({ ...spot, row });
    const text = cell && written(cell);
    if (text !== undefined) return { ...spot, row, text };
  }
  return undefined;
}

const hasHeading = (workbook: KnownWorkbook, { sheet, column }: Spot, { row }: Spot): boolean => {
  const cell = workbook.cellAt({ sheet, row, column });
  return cell !== undefined && written(cell) !== undefined;
};

/** A text that somebody wrote, on one line. */
function written({ value, formula }: Cell): string | undefined {
  const text = typeof value === "string" && formula === undefined ? value.replaceAll(/\s+/g, " ").trim() : "";
  return text === "" ? undefined : shortened(text);
}

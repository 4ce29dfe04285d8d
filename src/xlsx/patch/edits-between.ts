/** What has to be changed in a file so that it holds another workbook: two states of one file, cell by cell. */
import { AreaIndex } from "../../workbook/area-index";
import { placeNumber } from "../../workbook/sheet-size";
import type { Area, Cell, Sheet, Style, Workbook } from "../../workbook/workbook";
import type { Content, Edit, Size } from "./edit";

/** `isLeft`: cells whose results nobody has worked out anew. Sheets that only one of them has are passed over. */
export function editsBetween(before: Workbook, after: Workbook, isLeft: (cell: Cell) => boolean = () => false): Edit[] {
  const sheets = new Map(after.sheets.map((sheet) => [sheet.name, sheet]));
  return before.sheets.flatMap((sheet) => {
    const now = sheets.get(sheet.name);
    return now ? editsInSheet(sheet, now, isLeft) : [];
  });
}

function editsInSheet(before: Sheet, after: Sheet, isLeft: (cell: Cell) => boolean): Edit[] {
  const had = new Map(before.cells.map((cell) => [keyOf(cell), cell]));
  const spilled = { before: new AreaIndex(spillsOf(before)), after: new AreaIndex(spillsOf(after)) };
  const edits: Edit[] = [];
  const add = (cell: Cell, was: Cell | undefined) => {
    const isSpilled = (where: AreaIndex<Area>) => where.at(cell.row, cell.column) !== undefined;
    const content =
      was && isLeft(was) && cell.formula === was.formula ? undefined : contentOf(cell, was, isSpilled, spilled);
    const style = sameStyle(cell.style, was?.style) ? undefined : (cell.style ?? {});
    if (!content && !style) return;
    const { row, column } = cell;
    edits.push({ sheet: before.name, row, column, ...(content && { content }), ...(style && { style }) });
  };
  for (const cell of after.cells) {
    const was = had.get(keyOf(cell));
    had.delete(keyOf(cell));
    add(cell, was);
  }
  for (const was of had.values())
    add({ row: was.row, column: was.column, ...(was.style && { style: was.style }) }, was);
  return edits;
}

const keyOf = ({ row, column }: Cell): number => placeNumber(row, column);

const spillsOf = ({ cells }: Sheet): Area[] =>
  cells.flatMap(({ row, column, spill }) => (spill ? [{ row, column, rows: spill.rows, columns: spill.columns }] : []));

type Spilled = { readonly before: AreaIndex<Area>; readonly after: AreaIndex<Area> };

function contentOf(
  { formula, value, isText, spill }: Cell,
  was: Cell | undefined,
  isSpilled: (where: AreaIndex<Area>) => boolean,
  spilled: Spilled,
): Content | undefined {
  const text = isText && { isText };
  if (formula !== undefined && formula !== was?.formula) {
    return { is: "formula", formula, ...(value !== undefined && { value }), ...(spill && { spill: sizeOf(spill) }) };
  }
  const isSameSize = sameSize(spill, was?.spill);
  if (sameValue(value, was?.value) && isSameSize && (formula !== undefined || was?.formula === undefined))
    return undefined;
  const isResult =
    formula !== undefined ||
    (was?.formula === undefined && (isSpilled(spilled.after) || isLeftBehind(value, isSpilled, spilled)));
  if (isResult) return { is: "result", value, ...text, ...(spill && !isSameSize && { spill: sizeOf(spill) }) };
  return value === undefined ? { is: "blank" } : { is: "constant", value, ...text };
}

/** A cell that a spill has left when it shrank. */
const isLeftBehind = (
  value: Cell["value"],
  isSpilled: (where: AreaIndex<Area>) => boolean,
  spilled: Spilled,
): boolean => value === undefined && isSpilled(spilled.before);

const sizeOf = ({ rows, columns }: Size): Size => ({ rows, columns });

const sameSize = (one: Size | undefined, other: Size | undefined): boolean =>
  (one?.rows ?? 1) === (other?.rows ?? 1) && (one?.columns ?? 1) === (other?.columns ?? 1);

/**
 * Programs add in different orders: numbers that agree in twelve digits are the same, and close to 0 within 10⁻¹². A blank,
 * an empty text and, as the result of a formula, 0 are written for the same nothing.
 */
function sameValue(one: Cell["value"], other: Cell["value"]): boolean {
  if (typeof one === "number" && typeof other === "number") {
    return one === other || Math.abs(one - other) <= 1e-12 * Math.max(1, Math.abs(one), Math.abs(other));
  }
  return one === other || ((one ?? "") === "" && (other ?? "") === "");
}

const styleKeys = ["format", "bold", "italic", "size", "color", "fill", "align", "wrap", "border"] as const;

const sameStyle = (one: Style = {}, other: Style = {}): boolean => styleKeys.every((key) => one[key] === other[key]);

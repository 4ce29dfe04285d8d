/** Cells that are given another content on the command line: `Lot!B9=820`. */
import { placeOf } from "../../workbook/addresses";
import { partsOf } from "../../workbook/references";
import { type Cell, isErrorCode, type Sheet, type Workbook } from "../../workbook/workbook";
import type { Content, Edit } from "../../xlsx/patch/edit";

/** Throws where it cannot be read, or the workbook has no such sheet. */
export function editFrom(text: string, workbook: Workbook): Edit {
  const at = text.indexOf("=");
  const { sheet = workbook.sheets[0]?.name ?? "", cells } = partsOf(text.slice(0, at < 0 ? undefined : at));
  if (at < 0) throw new Error(`--set must be written as "Lot!B9=820"; got "${text}"`);
  const known = workbook.sheets.find(({ name }) => name.toUpperCase() === sheet.toUpperCase());
  if (!known) throw new Error(`there is no sheet "${sheet}"`);
  return { sheet: known.name, ...placeOf(cells), content: contentFrom(text.slice(at + 1)) };
}

/** A number has a point, whatever the language: a list of columns must mean the same everywhere. */
function contentFrom(text: string): Content {
  if (text === "") return { is: "blank" };
  if (text.startsWith("=")) return { is: "formula", formula: text };
  if (/^(?:true|false)$/i.test(text)) return { is: "constant", value: text.toLowerCase() === "true" };
  const number = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?(%?)$/i.exec(text.trim());
  if (number) return { is: "constant", value: Number.parseFloat(text) / (number[1] === "%" ? 100 : 1) };
  return { is: "constant", value: text };
}

export function withEdits(workbook: Workbook, edits: readonly Edit[]): Workbook {
  const sheets = workbook.sheets.map((sheet) =>
    edits.filter((edit) => edit.sheet === sheet.name).reduce(withEdit, sheet),
  );
  return { ...workbook, sheets };
}

function withEdit(sheet: Sheet, { row, column, content }: Edit): Sheet {
  const was = sheet.cells.find((cell) => cell.row === row && cell.column === column);
  const others = sheet.cells.filter((cell) => cell !== was);
  const { style, note } = was ?? {};
  const cell: Cell = { row, column, ...(style && { style }), ...(note !== undefined && { note }), ...holding(content) };
  const cells = [...others, cell].sort((one, other) => one.row - other.row || one.column - other.column);
  return { ...sheet, cells };
}

function holding(content: Content | undefined): Pick<Cell, "value" | "formula" | "isText"> {
  if (content?.is === "formula") return { formula: content.formula };
  if (content?.is !== "constant") return {};
  return { value: content.value, ...(content.isText && isErrorCode(content.value) && { isText: true }) };
}

import { CellValueType, type ICellData, ICommandService, type Injector, UndoCommandId } from "@univerjs/core";
import { AFTER_CELL_EDIT, SheetInterceptorService } from "@univerjs/preset-sheets-core";
import { withCommasBetween } from "../../cells/formula-text";
import { addressOf } from "../../workbook/addresses";
import { decimalMarkOf, typedCell } from "./typed-cell";
import { words } from "./words";

/** Before the engine's own readers, which drop commas and leave a number format behind. */
const first = 1000;

/**
 * Has what is typed into cells read in the language of the browser. `remark` is told how a number was read where that
 * can be doubted, and "" with the next one that is in no doubt, or when something is undone.
 */
export function readTyped(injector: Injector, remark: (text: string) => void): void {
  const decimalMark = decimalMarkOf(navigator.language);
  injector.get(ICommandService).onCommandExecuted(({ id }) => {
    if (id === UndoCommandId) remark("");
  });
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: first,
    handler: (cell, { row, col, workbook, worksheet }, next) => {
      remark("");
      if (typeof cell?.f === "string") return next({ ...cell, f: withCommasBetween(cell.f) });
      if (typeof cell?.v !== "string" || cell.p || isText(cell)) return next(cell);
      // What stood in the cell, as the editor shows it, was not typed.
      const before = worksheet.getCellRaw(row, col)?.v;
      if (typeof before === "number" && cell.v === String(before)) return next(cell);
      const read = typedCell(cell.v, decimalMark);
      if (read.is === "other") return next(cell);
      if (read.remark) remark(addressOf(row, col) + words().colon + read.remark);
      if (read.is === "doubtful") return { ...cell, t: CellValueType.STRING };
      // Divided by 100, 5.8 % would be 0.057999999999999996.
      const value = Number(read.isPercent ? `${read.plain}e-2` : read.plain);
      const number = { ...cell, v: value, t: CellValueType.NUMBER };
      // Of the cell before: what was typed brings a style of its own. A format that is there stays as it is.
      const styles = workbook.getStyles();
      const hasFormat = styles.getStyleByCell(worksheet.getCellRaw(row, col))?.n != null;
      if (!read.isPercent || hasFormat) return number;
      return { ...number, s: { ...styles.getStyleByCell(cell), n: { pattern: shareFormat(read.plain) } } };
    },
  });
}

const isText = ({ t }: ICellData): boolean => t === CellValueType.STRING || t === CellValueType.FORCE_STRING;

/** Shows a share with the decimals that it was typed with. */
const shareFormat = (plain: string): string => `0${plain.replace(/^[^.]*/, "").replace(/\d/g, "0")}%`;

import { CellValueType, type ICellData } from "@univerjs/core";
import { AFTER_CELL_EDIT, SheetInterceptorService } from "@univerjs/preset-sheets-core";
import { withCommasBetween } from "../../cells/formula-text";
import { isDayFormat } from "../../sheet-check/formats";
import { addressOf } from "../../workbook/addresses";
import type { Grid } from "./grid";
import { decimalMarkOf, typedCell } from "./typed-cell";
import { dayInWordsOf, orderOf, typedDate } from "./typed-date";
import { words } from "./words";

/** Before the engine's own readers, which drop commas and leave a number format behind. */
const first = 1000;

/**
 * Has what is typed into cells read in the language of the browser. `remark` is told how it was read where that can be
 * doubted, and "" with the next that is in no doubt, or once the cell holds something else.
 */
export function readTyped(grid: Grid, remark: (text: string) => void): void {
  const { injector } = grid;
  const [decimalMark, order] = [decimalMarkOf(navigator.language), orderOf(navigator.language)];
  /** What a remark is about; `isThere` once the engine has written it. */
  let remarked: { sheet: string; row: number; column: number; value: ICellData["v"]; isThere: boolean } | undefined;
  const say = (text: string) => {
    if (text === "") remarked = undefined;
    remark(text);
  };
  grid.onChange(() => {
    if (!remarked) return;
    const isHeld = grid.value(remarked.sheet, remarked.row, remarked.column) === remarked.value;
    if (isHeld) remarked.isThere = true;
    else if (remarked.isThere) say("");
  });
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: first,
    handler: (cell, { row, col, workbook, worksheet }, next) => {
      say("");
      if (typeof cell?.f === "string") return next({ ...cell, f: withCommasBetween(cell.f) });
      if (typeof cell?.v !== "string" || cell.p || isText(cell)) return next(cell);
      const typed = cell.v;
      // What stood in the cell, as the editor shows it, was not typed.
      const before = worksheet.getCellRaw(row, col);
      if (typeof before?.v === "number" && typed === String(before.v)) return next(cell);
      const keep = (kept: Kept, said?: string): Kept => {
        if (!said) return kept;
        remarked = { sheet: worksheet.getSheetId(), row, column: col, value: kept?.v, isThere: false };
        remark(addressOf(row, col) + words().colon + said);
        return kept;
      };
      // Of the cell before: what was typed brings a style of its own. A format that is there stays as it is.
      const styles = workbook.getStyles();
      const format = styles.getStyleByCell(before)?.n?.pattern;
      const number = (value: number, pattern: string | undefined): ICellData => ({
        ...cell,
        ...{ v: value, t: CellValueType.NUMBER },
        ...(format === undefined && pattern && { s: { ...styles.getStyleByCell(cell), n: { pattern } } }),
      });
      const isForDays = format !== undefined && isDayFormat(format);
      const date = typedDate(typed, order);
      if (date.is === "day" && (isForDays || format === undefined)) {
        const said = words().typed.readAsDay(typed, dayInWordsOf(date.serial, document.documentElement.lang));
        return keep(number(date.serial, "yyyy-mm-dd"), date.isDoubted ? said : undefined);
      }
      const read = typedCell(typed, decimalMark);
      if (read.is === "doubtful") return keep({ ...cell, t: CellValueType.STRING }, read.remark);
      if (read.is === "number") {
        // Divided by 100, 5.8 % would be 0.057999999999999996.
        const value = Number(read.isPercent ? `${read.plain}e-2` : read.plain);
        return keep(number(value, read.isPercent ? shareFormat(read.plain) : undefined), read.remark);
      }
      const kept = next(cell) ?? undefined;
      const isLeft = typeof kept?.v === "string" && kept.v.trim() !== "" && (isForDays || date.is === "no day");
      return keep(kept, isLeft ? words().typed.staysText(typed, date.is === "no day") : undefined);
    },
  });
}

type Kept = ICellData | null | undefined;

const isText = ({ t }: ICellData): boolean => t === CellValueType.STRING || t === CellValueType.FORCE_STRING;

/** Shows a share with the decimals that it was typed with. */
const shareFormat = (plain: string): string => `0${plain.replace(/^[^.]*/, "").replace(/\d/g, "0")}%`;

import { areaOf, placeOf } from "../workbook/addresses";
import type { Area, Cell, Chart, PageSetup, Sheet, Style, Table } from "../workbook/workbook";

/** Puts a sheet together cell by cell, by addresses as they show in a spreadsheet. */
export interface SheetBuilder {
  /** A text that begins with an equals sign is a formula; null puts nothing but the style. */
  put(address: string, content: number | string | null, style?: Style, note?: string): void;
  /** The same style on every cell of an area that nothing has been put in. */
  styleRest(area: string, style: Style): void;
  merge(area: string): void;
  /** In characters, from the first column on. */
  widths(...characters: number[]): void;
  /** In points. Rows count from 1. */
  height(row: number, points: number): void;
  sheet(rest?: { frozenRows?: number; page?: PageSetup; tables?: readonly Table[]; charts?: readonly Chart[] }): Sheet;
}

export function sheetBuilder(name: string): SheetBuilder {
  const cells = new Map<string, Cell>();
  const merges: Area[] = [];
  const columnWidths: Record<number, number> = {};
  const rowHeights: Record<number, number> = {};
  const keyOf = (row: number, column: number) => `${row},${column}`;

  return {
    put(address, content, style, note) {
      const { row, column } = placeOf(address);
      const key = keyOf(row, column);
      if (cells.has(key)) throw new Error(`${name}!${address} is filled already`);
      cells.set(key, { row, column, ...contentOf(content), ...(style && { style }), ...(note && { note }) });
    },
    styleRest(reference, style) {
      const area = areaOf(reference);
      for (let row = area.row; row < area.row + area.rows; row += 1) {
        for (let column = area.column; column < area.column + area.columns; column += 1) {
          const key = keyOf(row, column);
          if (!cells.has(key)) cells.set(key, { row, column, style });
        }
      }
    },
    merge: (area) => merges.push(areaOf(area)),
    widths: (...characters) => Object.assign(columnWidths, characters),
    height(row, points) {
      rowHeights[row - 1] = points;
    },
    sheet: (rest = {}) => ({ name, cells: [...cells.values()], columnWidths, rowHeights, merges, ...rest }),
  };
}

function contentOf(content: number | string | null): Pick<Cell, "value" | "formula"> {
  if (content === null) return {};
  return typeof content === "string" && content.startsWith("=") ? { formula: content } : { value: content };
}

/**
 * An answer that stays empty until all of these cells are filled. An error among them shows; a 0 counts as filled,
 * which a comparison with "" does not see in every spreadsheet.
 */
export const once = (needed: readonly string[], expression: string): string => {
  const waits = needed.map((cell) => `ISBLANK(${cell}),ISTEXT(${cell})`).join(",");
  return `=IF(OR(${waits}),"",${expression})`;
};

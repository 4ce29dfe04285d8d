import type { ICellData, Injector, IRange } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import type { Area } from "../workbook/workbook";

/** What formulas have spilled, as the engine holds it beside the cells. Sheets by id, rows and columns from 0. */
export interface Spills {
  /** The size of the answer of the formula in a cell; undefined where nothing spills. */
  sizeAt(sheet: string, row: number, column: number): { rows: number; columns: number } | undefined;
  /** The whole spill that a cell is part of; undefined where it is part of none. */
  areaAround(sheet: string, row: number, column: number): Area | undefined;
  /** All sizes in one text, to see whether any has changed. */
  sizes(): string;
  /** The spilled cell in a place; undefined where nothing was spilled. */
  cellAt(sheet: string, row: number, column: number): ICellData | undefined;
  /** The spilled cells of a sheet, the formula's own cell among them. */
  cells(sheet: string): readonly { readonly row: number; readonly column: number; readonly cell: ICellData }[];
}

/** Of the workbook with this id, inside the engine that the injector belongs to. */
export function spillsOf(injector: Injector, workbookId: string): Spills {
  const model = injector.get(FormulaDataModel);
  return {
    sizeAt(sheet, row, column) {
      const range = model.getArrayFormulaRange()[workbookId]?.[sheet]?.[row]?.[column];
      if (!range) return undefined;
      return { rows: range.endRow - range.startRow + 1, columns: range.endColumn - range.startColumn + 1 };
    },
    areaAround(sheet, row, column) {
      for (const cells of Object.values(model.getArrayFormulaRange()[workbookId]?.[sheet] ?? {})) {
        for (const { startRow, endRow, startColumn, endColumn } of Object.values(
          cells as Readonly<Record<number, IRange>>,
        )) {
          if (row < startRow || row > endRow || column < startColumn || column > endColumn) continue;
          return {
            ...{ row: startRow, column: startColumn },
            ...{ rows: endRow - startRow + 1, columns: endColumn - startColumn + 1 },
          };
        }
      }
      return undefined;
    },
    sizes: () => JSON.stringify(model.getArrayFormulaRange()[workbookId] ?? {}),
    cellAt(sheet, row, column) {
      return model.getArrayFormulaCellData()[workbookId]?.[sheet]?.[row]?.[column] ?? undefined;
    },
    cells(sheet) {
      const rows = model.getArrayFormulaCellData()[workbookId]?.[sheet] ?? {};
      return Object.entries(rows).flatMap(([row, cells]) =>
        Object.entries(cells ?? {}).flatMap(([column, cell]) =>
          cell ? [{ row: Number(row), column: Number(column), cell }] : [],
        ),
      );
    },
  };
}

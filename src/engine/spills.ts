import type { ICellData, Injector } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";

/** What formulas have spilled, as the engine holds it beside the cells. Sheets by id, rows and columns from 0. */
export interface Spills {
  /** The size of the answer of the formula in a cell; undefined where nothing spills. */
  sizeAt(sheet: string, row: number, column: number): { rows: number; columns: number } | undefined;
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

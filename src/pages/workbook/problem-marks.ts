import { type Injector, InterceptorEffectEnum } from "@univerjs/core";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/preset-sheets-core";

/** The page's own red (--bad); in the dark the engine turns it light. */
const color = "#9b2c1f";

/** A corner drawn in each cell that has a problem, which scrolls with its cell and stays until the cell is mended. */
export function markProblems(
  injector: Injector,
  hasProblem: (sheetId: string, row: number, column: number) => boolean,
): void {
  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    id: "problem-mark",
    effect: InterceptorEffectEnum.Style,
    handler: (cell, { subUnitId, row, col, rawData }, next) => {
      if (!hasProblem(subUnitId, row, col)) return next(cell);
      const marked = !cell || cell === rawData ? { ...rawData } : cell;
      return next({ ...marked, markers: { ...marked.markers, tr: { color, size: 9 } } });
    },
  });
}

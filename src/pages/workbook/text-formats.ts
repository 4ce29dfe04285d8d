import { type Injector, InterceptorEffectEnum } from "@univerjs/core";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/preset-sheets-core";

/** The fourth part of a format, for texts, where it is words alone. */
const wordsForTexts = /^(?:[^;]*;){3}"([^"]*)"$/;

/** After spilled answers have come to their cells (100); from 10 on a number is the text that its format makes of it. */
const beforeNumbersAreFormatted = 50;

/**
 * Shows a text as the format of its cell has it, `General;General;General;"words"`, as spreadsheets do; the engine
 * formats numbers alone. The cell keeps its text.
 */
export function showTextFormats(injector: Injector): void {
  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    id: "text-format",
    effect: InterceptorEffectEnum.Value,
    priority: beforeNumbersAreFormatted,
    handler: (cell, { workbook }, next) => {
      if (typeof cell?.v !== "string" || cell.v === "") return next(cell);
      const format = workbook.getStyles().getStyleByCell(cell)?.n?.pattern;
      const words = format === undefined ? undefined : wordsForTexts.exec(format)?.[1];
      if (words === undefined) return next(cell);
      return next({ ...cell, v: words });
    },
  });
}

import type { Injector } from "@univerjs/core";
import {
  type BaseReferenceObject,
  type BaseValueObject,
  type CalculateFormulaService,
  CELL_INVERTED_INDEX_CACHE,
  FORMULA_REF_TO_ARRAY_CACHE,
  FormulaExecuteStageType,
  ICalculateFormulaService,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
} from "@univerjs/engine-formula";
import type { CellValue } from "../cells/values";
import type { ErrorMessages } from "./error-messages";
import { givenArgument, hasNumber } from "./executors";

/** What an expression comes to in a cell; a blank is null. Sheets by id, rows and columns from 0. */
export type Evaluation = (
  expression: string,
  place: { readonly sheet: string; readonly row: number; readonly column: number },
) => Promise<readonly (readonly (CellValue | null)[])[]>;

/**
 * Works expressions out beside the grid: no cell, no undo step and no message of an error is touched. The engine has
 * `executeFormulas` for it, which makes 0 of a blank, takes no care of a calculation that is under way, and leaves
 * ranges in a memory that the next calculation reads as if they were of today; so its parts are called here.
 */
export function evaluationIn(injector: Injector, workbookId: string, errors: ErrorMessages): Evaluation {
  const service = injector.get(ICalculateFormulaService) as CalculateFormulaService;
  const cells = injector.get(IFormulaCurrentConfigService);
  const run = injector.get(IFormulaRuntimeService);

  let asked = 0;
  /**
   * Reading a LET or LAMBDA changes what the engine remembers of its text, so that it comes out wrong when it is read
   * again: spaces make another text of it.
   */
  const unread = (expression: string) => {
    if (!/(?:LET|LAMBDA)\s*\(/i.test(expression)) return `=${expression}`;
    asked += 1;
    return `=${" ".repeat(asked)}${expression}`;
  };

  const forget = () => {
    run.reset();
    FORMULA_REF_TO_ARRAY_CACHE.clear();
    CELL_INVERTED_INDEX_CACHE.clear();
  };

  return async (expression, { sheet, row, column }) => {
    await untilIdle(run);
    cells.loadDataLite();
    forget();
    const { rowCount = 0, columnCount = 0 } = cells.getUnitData()[workbookId]?.[sheet] ?? {};
    run.setCurrent(row, column, rowCount, columnCount, sheet, workbookId);
    try {
      // Of functions that need not wait for anything, as all are here, this is done before it returns.
      const answer = errors.unheard(() => service.calculate(unread(expression)));
      return rowsOf(await answer, expression);
    } finally {
      forget();
    }
  };
}

/** A calculation gives the page a turn every few hundred formulas: what it holds then must stay as it is. */
async function untilIdle(run: IFormulaRuntimeService): Promise<void> {
  for (let waited = 0; run.getFormulaExecuteStage() !== FormulaExecuteStageType.IDLE; waited += 1) {
    if (waited > patience) throw new Error("the engine is still calculating");
    await new Promise((done) => setTimeout(done, 20));
  }
}

/** How many times 20 ms. */
const patience = 500;

function rowsOf(answer: BaseReferenceObject | BaseValueObject | undefined, expression: string): (CellValue | null)[][] {
  if (answer === undefined) throw new Error(`the engine cannot read ${expression}`);
  const value = "toArrayValueObject" in answer ? answer.toArrayValueObject(false) : answer;
  const given = givenArgument(value, (text) => hasNumber(expression, text));
  return Array.isArray(given) ? given : [[given as CellValue | null]];
}

import { areaOf } from "../../workbook/addresses";
import type { Finding } from "../finding";
import { cellsIn, formByRows, rangesIn } from "../formula-forms";
import type { At } from "../headed-cells";
import type { KnownSheet } from "../known-sheet";
import { numbersBesideFormulas, type Overwritten } from "../number-beside-formulas";

/** So many cells of a run with the same formula make it a column of formulas. */
const fewestFormulas = 3;
/** So many numbers in a row may have been typed over formulas between others. */
const mostTogether = 3;

/** Numbers and formulas below each other, the formulas alike but for their rows. */
interface Run {
  readonly top: number;
  readonly column: number;
  /** Of each cell its formula, and "" for a number. */
  readonly formulas: readonly string[];
}

/** A number typed over a formula, as the formulas of its column show it, or those beside it. */
export function overwrittenFormula(sheet: KnownSheet): Finding[] {
  const found = new Map<string, Finding>();
  for (const { row, column, formula } of [...numbersInColumns(sheet), ...numbersBesideFormulas(sheet)]) {
    const details = { value: String(sheet.valueAt({ row, column })), formula };
    const key = `${row} ${column}`;
    if (!found.has(key)) found.set(key, { rule: "a number among formulas", row, column, details });
  }
  return [...found.values()];
}

/** Numbers between formulas that are alike, or as the first or the last of a column of them. */
function numbersInColumns(sheet: KnownSheet): Overwritten[] {
  return runsOf(sheet).flatMap((run) => {
    const { formulas, column, top } = run;
    const first = formulas.findIndex((formula) => formula !== "");
    const last = formulas.findLastIndex((formula) => formula !== "");
    return formulas.flatMap((formula, index): Overwritten[] => {
      if (formula !== "") return [];
      const row = top + index;
      const isAtEnd = (index === first - 1 && index === 0) || (index === last + 1 && index === formulas.length - 1);
      if (isAtEnd ? !wouldCalculate(run, index, sheet) : !isBetweenFew(formulas, index, first, last)) return [];
      const meant = formulas[index < first ? first : formulas.findLastIndex((each, at) => at < index && each !== "")];
      return [{ row, column, formula: meant ?? "" }];
    });
  });
}

/** Runs that are columns of formulas: at least three, and more of them than numbers. */
function runsOf({ area, valueAt, formulaAt, isSpilled }: KnownSheet): Run[] {
  const runs: Run[] = [];
  for (let column = area.column; column < area.column + area.columns; column += 1) {
    let run: { top: number; shape: string; formulas: string[] } | undefined;
    const end = () => {
      const count = run?.formulas.filter((formula) => formula !== "").length ?? 0;
      if (run && count >= fewestFormulas && count > run.formulas.length - count) runs.push({ ...run, column });
      run = undefined;
    };
    for (let row = area.row; row < area.row + area.rows; row += 1) {
      const at = { row, column };
      const formula = formulaAt(at);
      if (isSpilled(at) || (formula === "" && typeof valueAt(at) !== "number") || readsOwnColumn(formula, column)) {
        end();
        continue;
      }
      const shape = formByRows(formula);
      if (formula !== "" && run !== undefined && run.shape !== "" && run.shape !== shape) end();
      run ??= { top: row, shape: "", formulas: [] };
      if (formula !== "") run.shape = shape;
      run.formulas.push(formula);
    }
    end();
  }
  return runs;
}

/** Subtotals are sums of the numbers between them. */
const readsOwnColumn = (formula: string, column: number): boolean =>
  formula.includes(":") &&
  rangesIn(formula).some((range) => {
    const area = areaOf(range.replaceAll("$", ""));
    return area.column <= column && column < area.column + area.columns;
  });

function isBetweenFew(formulas: readonly string[], index: number, first: number, last: number): boolean {
  if (index < first || index > last) return false;
  const after = formulas.findIndex((formula, at) => at > index && formula !== "");
  const before = formulas.findLastIndex((formula, at) => at < index && formula !== "");
  return after - before - 1 <= mostTogether;
}

/**
 * Whether the formula of the run, filled to the number's row, would have only numbers to calculate with, and none of
 * the formulas calculates from the number or from its row: a running sum begins with one, and so does a share of the
 * first row.
 */
function wouldCalculate({ formulas, column, top }: Run, index: number, { valueAt }: KnownSheet): boolean {
  const row = top + index;
  const isBase = formulas.some((formula) =>
    cellsIn(formula).some((at) => at.row === row && (at.column === column || at.isFixed)),
  );
  const nearest = index === 0 ? 1 : index - 1;
  const filled = cellsIn(formulas[nearest] ?? "").filter(({ isFixed }) => !isFixed);
  const isNumber = (at: At) => typeof valueAt({ ...at, row: at.row + index - nearest }) === "number";
  return !isBase && filled.length > 0 && filled.every(isNumber);
}

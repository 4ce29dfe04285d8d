import type { Finding } from "../finding";
import type { KnownSheet } from "../known-sheet";

/** So many cells of a column with the same formula make it a column of formulas. */
const fewestFormulas = 3;

/** A number typed over a formula: between formulas that are alike but for their rows, or just below three of them. */
export function overwrittenFormula({ area, valueAt, formulaAt }: KnownSheet): Finding[] {
  const found: Finding[] = [];
  for (let column = area.column; column < area.column + area.columns; column += 1) {
    const shapes = Array.from({ length: area.rows }, (_, down) => shapeOf(formulaAt({ row: area.row + down, column })));
    const counts = new Map<string, number>();
    for (const shape of shapes) if (shape !== "") counts.set(shape, (counts.get(shape) ?? 0) + 1);
    const usual = (shape: string | undefined): shape is string => (counts.get(shape ?? "") ?? 0) >= fewestFormulas;
    let above: { shape: string; run: number; row: number } | undefined;
    shapes.forEach((shape, down) => {
      const row = area.row + down;
      if (shape !== "") {
        above = { shape, run: above?.shape === shape ? above.run + 1 : 1, row };
        return;
      }
      if (above === undefined || !usual(above.shape) || typeof valueAt({ row, column }) !== "number") return;
      const below = shapes.slice(down + 1, down + 4).find((next) => next !== "");
      const isBetween = below === above.shape;
      const isJustBelow = above.run >= fewestFormulas && row - above.row === 1;
      if (!isBetween && !isJustBelow) return;
      const details = { value: String(valueAt({ row, column })), formula: formulaAt({ row: above.row, column }) };
      found.push({ rule: "a number among formulas", row, column, details });
    });
  }
  return found;
}

/** A formula without the rows of its references, so that those filled down are alike. */
const shapeOf = (formula: string): string =>
  formula === "" ? "" : formula.replaceAll(/(\$?\b[A-Z]{1,3}\$?)\d+\b/gi, "$1#");

import type { Finding } from "../finding";
import type { KnownCell } from "../known-cell";
import type { KnownSheet } from "../known-sheet";
import { percent } from "../shown";

/** So many rows apart, losses of one form belong together. */
const longestForm = 6;

/** A usual loss above the largest, or below the least, of the losses that stand in its row or its column. */
export function lossOrder({ cells }: KnownSheet): Finding[] {
  const losses = cells.filter(({ value }) => typeof value === "number");
  const near = (usual: KnownCell, role: KnownCell["role"]): KnownCell | undefined =>
    losses.find((cell) => kindOf(cell) === role && cell.row === usual.row && cell.headingRow === usual.headingRow) ??
    losses.find(
      (cell) =>
        kindOf(cell) === role &&
        cell.headingRow === usual.headingRow &&
        cell.column === usual.column &&
        Math.abs(cell.row - usual.row) <= longestForm,
    );
  return losses.flatMap((usual): Finding[] => {
    if (kindOf(usual) !== "usual loss" || !usual.typed) return [];
    const [least, largest] = [near(usual, "least loss"), near(usual, "largest loss")];
    const { row, column } = usual;
    const value = Number(usual.value);
    const rule = "usual loss outside its limits" as const;
    if (largest !== undefined && value > Number(largest.value)) {
      return [{ rule, row, column, details: { value: percent(value), largest: percent(Number(largest.value)) } }];
    }
    if (least !== undefined && value < Number(least.value)) {
      return [{ rule, row, column, details: { value: percent(value), least: percent(Number(least.value)) } }];
    }
    return [];
  });
}

/** By its heading, or by the functions that read it. */
const kindOf = ({ role, fedAs }: KnownCell) => (role.endsWith("loss") ? role : (fedAs ?? role));

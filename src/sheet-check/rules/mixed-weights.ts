import type { Finding } from "../finding";
import type { KnownCell } from "../known-cell";
import type { KnownSheet } from "../known-sheet";
import { grouped } from "../lots";
import { isWeight } from "../roles";

/** So many others say what weights a column holds. */
const fewestOthers = 3;
/** A weight in another unit is so far from all of the others, and among them once a thousand is put right. */
const farFromOthers = 20;
const besideOthers = 1.5;

type Weight = KnownCell & { readonly value: number };

/** Kilograms among grams in a column, or grams among kilograms. */
export function mixedWeights({ cells }: KnownSheet): Finding[] {
  const isTyped = (cell: KnownCell): cell is Weight =>
    isWeight(cell.role) && cell.typed && typeof cell.value === "number" && cell.value > 0;
  const columns = grouped(
    cells.filter(isTyped).filter(({ series }) => series !== undefined),
    ({ series }) => series ?? "",
  );
  const isMixed = (column: readonly Weight[]) => {
    const values = column.map(({ value }) => value);
    return (
      ratio(
        values.reduce((one, other) => Math.max(one, other), 0),
        values.reduce((one, other) => Math.min(one, other), Infinity),
      ) >= farFromOthers
    );
  };
  return columns.filter(isMixed).flatMap((column) =>
    column.flatMap((cell): Finding[] => {
      const others = column
        .filter((other) => other !== cell && ratio(other.value, cell.value) >= farFromOthers)
        .map(({ value }) => value);
      if (others.length < fewestOthers || others.length < (column.length - 1) * 0.75) return [];
      const [least, most] = [Math.min(...others) / besideOthers, Math.max(...others) * besideOthers];
      const meant = [cell.value * 1000, cell.value / 1000].find((value) => value >= least && value <= most);
      if (meant === undefined) return [];
      const details = { value: String(cell.value), meant: String(Number(meant.toPrecision(6))) };
      return [{ rule: "kilograms among grams", row: cell.row, column: cell.column, details }];
    }),
  );
}

const ratio = (one: number, other: number): number => Math.max(one / other, other / one);

import type { Finding } from "../finding";
import type { KnownCell } from "../known-cell";
import type { KnownSheet } from "../known-sheet";
import { formsOf, grouped } from "../lots";
import { isWeight } from "../roles";

/** So many others say what weights a column holds. */
const fewestOthers = 3;
/** A weight in another unit is so far from all of the others, and among them once a thousand is put right. */
const farFromOthers = 20;
const besideOthers = 1.5;

type Weight = KnownCell & { readonly value: number };

/** Kilograms among grams, or grams among kilograms, in a column and among the weights of one lot. */
export const mixedWeights = ({ cells }: KnownSheet): Finding[] => [
  ...mixedInColumns(cells),
  ...formsOf(cells.filter(({ heading }) => heading !== undefined)).flatMap(mixedInForm),
];

const isTyped = (cell: KnownCell): cell is Weight =>
  isWeight(cell.role) && cell.typed && typeof cell.value === "number" && cell.value > 0;

function mixedInColumns(cells: readonly KnownCell[]): Finding[] {
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
      return meant === undefined ? [] : [findingAt(cell, meant)];
    }),
  );
}

/** So many times lighter than its fresh leaf, a weight of a lot that in the other unit would be a part of it was weighed in that. */
const farBelowLeaf = 100;
/** A scale may show a little more after than before. */
const scatter = 1.02;

/** Weights of one lot below each other: nothing is heavier than its fresh leaf, and little is a thousandth of it. */
function mixedInForm(form: readonly KnownCell[]): Finding[] {
  const weights = form.filter(isTyped);
  const [fresh, ...parts] = weights.filter(({ unit }) => unit === weights[0]?.unit);
  if (fresh?.role !== "fresh weight" || parts.length < 2) return [];
  const leaf = fresh.value * scatter;
  const isAbove = ({ value }: Weight) => value >= fresh.value * farFromOthers;
  if (parts.filter(isAbove).length > parts.length / 2) {
    return parts.every(({ value }) => value <= leaf * 1000) ? [findingAt(fresh, fresh.value * 1000)] : [];
  }
  return parts.flatMap((part) => {
    if (isAbove(part)) return part.value / 1000 <= leaf ? [findingAt(part, part.value / 1000)] : [];
    const isFarBelow = part.value * farBelowLeaf < fresh.value && part.value * 1000 <= leaf;
    return isFarBelow ? [findingAt(part, part.value * 1000)] : [];
  });
}

const findingAt = ({ row, column, value }: Weight, meant: number): Finding => ({
  rule: "kilograms among grams",
  ...{ row, column },
  details: { value: String(value), meant: String(Number(meant.toPrecision(6))) },
});

const ratio = (one: number, other: number): number => Math.max(one / other, other / one);

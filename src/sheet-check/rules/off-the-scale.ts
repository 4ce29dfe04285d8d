import type { Finding } from "../finding";
import type { KnownCell } from "../known-cell";
import type { KnownSheet } from "../known-sheet";
import { grouped } from "../lots";
import { isWeight } from "../roles";
import { inOneUnit } from "../units";

/** Steps that scales have, from the coarsest. */
const usualSteps = [100, 50, 20, 10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01];
/** So many weights make a step, when all but a tenth of them, or but one, stand on it. */
const fewestWeights = 8;
const shareOffStep = 0.1;
/** Of so many weights at least half stand on the step of their scale; otherwise it is the step of another scale. */
const fewestToDoubt = 3;
/** Noise of a double, as a share of a step. */
const wholeWithin = 1e-6;

type Weight = KnownCell & { readonly value: number };

/**
 * A typed weight between the steps of the scale: the step is the one that the sheet names, or the one that nearly all
 * the other weights of its column stand on.
 */
export function offTheScale({ cells }: KnownSheet): Finding[] {
  const isPositive = (cell: KnownCell): cell is Weight => typeof cell.value === "number" && cell.value > 0;
  const typed = cells.filter((cell) => cell.typed).filter(isPositive);
  const named = typed.filter(({ role }) => role === "readability").filter(isOfOneScale);
  const weights = typed.filter(({ role }) => isWeight(role));
  const columns = grouped(
    weights,
    ({ column, heading, series }) => series ?? (heading === undefined ? `${column}` : `${column} labels`),
  );
  return columns.flatMap((column) => {
    const own = column[0]?.series === undefined ? undefined : stepOf(column);
    const off = column.flatMap((weight) => {
      const step = own ?? namedFor(weight, named);
      return step === undefined || isOnStep(weight.value, step) ? [] : [{ weight, step }];
    });
    if (column.length >= fewestToDoubt && off.length > column.length / 2) return [];
    return off.map(
      ({ weight: { row, column, value }, step }): Finding => ({
        rule: "not a step of the scale",
        row,
        column,
        details: { value: String(value), step: String(step) },
      }),
    );
  });
}

/** A list of scales says what each of them reads, and of no weight on which it was weighed. */
const isOfOneScale = ({ series, value }: Weight, _: number, all: readonly Weight[]): boolean =>
  series === undefined || all.every((other) => other.series !== series || other.value === value);

/** The step that was named last above a weight, or else first, in the unit of the weight. */
function namedFor(weight: Weight, named: readonly Weight[]): number | undefined {
  const step = named.findLast(({ row }) => row <= weight.row) ?? named[0];
  return step && inOneUnit(step, weight)[0];
}

/** The coarsest step of whole grams or finer that nearly all weights stand on; coarser ones happen by chance. */
function stepOf(column: readonly Weight[]): number | undefined {
  if (column.length < fewestWeights) return undefined;
  const mayBeOff = Math.max(1, Math.floor(shareOffStep * column.length));
  const isMany = column.length >= 3 * fewestWeights;
  return usualSteps
    .filter((step) => step <= 1 || isMany)
    .find((step) => {
      const off = column.filter(({ value }) => !isOnStep(value, step));
      // Of few weights on a scale of half the step, all but one may be whole by chance.
      return off.length <= mayBeOff && (isMany || off.every(({ value }) => !isOnStep(value, step / 2)));
    });
}

function isOnStep(weight: number, step: number): boolean {
  const steps = weight / step;
  return Math.abs(steps - Math.round(steps)) <= wholeWithin * Math.max(1, steps);
}

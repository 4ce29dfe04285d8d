import type { Finding } from "../finding";
import type { KnownCell, KnownSheet } from "../known-sheet";
import { isWeight } from "../roles";

/** Steps that scales have, from the coarsest. */
const usualSteps = [100, 50, 20, 10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01];
/** So many weights, and so large a share of them on the step, make a step. */
const fewestWeights = 8;
const shareOnStep = 0.9;
/** Noise of a double, as a share of a step. */
const wholeWithin = 1e-6;

/**
 * A typed weight between the steps of the scale: the step is the one that the sheet names, or the one that nearly all
 * the other weights of its column stand on.
 */
export function offTheScale({ cells }: KnownSheet): Finding[] {
  const named = cells.find(({ role, value }) => role === "readability" && typeof value === "number" && value > 0);
  const columns = new Map<string, KnownCell[]>();
  for (const cell of cells) {
    if (!cell.typed || !isWeight(cell.role) || typeof cell.value !== "number" || cell.value <= 0) continue;
    const key = `${cell.column} ${cell.heading ?? ""}`;
    const column = columns.get(key);
    if (column === undefined) columns.set(key, [cell]);
    else column.push(cell);
  }
  return [...columns.values()].flatMap((column) => {
    const step = stepOf(column) ?? (named?.value as number | undefined);
    if (step === undefined) return [];
    return column.flatMap(({ value, row, column: at }): Finding[] =>
      isOnStep(value as number, step)
        ? []
        : [
            {
              rule: "not a step of the scale",
              row,
              column: at,
              details: { value: String(value), step: String(step) },
            },
          ],
    );
  });
}

/** The coarsest step of whole grams or finer that nearly all weights stand on; coarser ones happen by chance. */
function stepOf(column: readonly KnownCell[]): number | undefined {
  if (column.length < fewestWeights) return undefined;
  return usualSteps
    .filter((step) => step <= 1 || column.length >= 3 * fewestWeights)
    .find(
      (step) => column.filter(({ value }) => isOnStep(value as number, step)).length >= shareOnStep * column.length,
    );
}

function isOnStep(weight: number, step: number): boolean {
  const steps = weight / step;
  return Math.abs(steps - Math.round(steps)) <= wholeWithin * Math.max(1, steps);
}

import { mustBe } from "../errors";

/** A weighing in a lot's book: what was on the scale when a stage closed, and what was taken out for it. */
export interface Stage {
  readonly name: string;
  readonly weight: number;
  /** null where the moisture was not measured. */
  readonly moisture: number | null;
  /** Leaf taken out just before this weighing. */
  readonly removed: number;
  /** null: the moisture of the row itself. */
  readonly removedMoisture: number | null;
}

/** The lists of a call as rows. `removed` is refused in the first row, before which nothing was weighed. */
export function stagesOf(
  names: readonly string[],
  weights: readonly number[],
  moistures: readonly (number | null)[],
  removed: readonly (number | null)[] = [],
  removedMoistures: readonly (number | null)[] = [],
): Stage[] {
  if (removed[0]) throw mustBe("removed", "blank or 0 in the first row, before which nothing was weighed", removed[0]);
  return weights.map((weight, row) => ({
    name: names[row] as string,
    weight,
    moisture: moistures[row] ?? null,
    removed: removed[row] ?? 0,
    removedMoisture: removedMoistures[row] ?? null,
  }));
}

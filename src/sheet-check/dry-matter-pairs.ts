import type { KnownCell } from "./known-cell";
import type { KnownSheet } from "./known-sheet";

/** A weight before and one after, with their moistures as shares. */
interface DryMatterPair {
  readonly before: KnownCell;
  readonly after: KnownCell;
  readonly M: number;
  readonly Mp: number;
}

/** Every two weights of a lot whose dry matter can be compared: fresh and finished, and from stage to stage. */
export function dryMatterPairs({ lots, stages }: KnownSheet): DryMatterPair[] {
  const ofLots = lots.flatMap(({ fresh, finished, freshMoisture, finishedMoisture }) =>
    pair(fresh, freshMoisture, finished, finishedMoisture),
  );
  const ofStages = stages.flatMap((run) =>
    run.slice(1).flatMap(({ weight, moisture }, index) => {
      const before = run[index] as (typeof run)[number];
      return pair(before.weight, before.moisture, weight, moisture);
    }),
  );
  return [...ofLots, ...ofStages];
}

function pair(
  before: KnownCell,
  beforeMoisture: KnownCell | undefined,
  after: KnownCell,
  afterMoisture: KnownCell | undefined,
): DryMatterPair[] {
  const [M, Mp] = [beforeMoisture?.share, afterMoisture?.share];
  if (typeof before.value !== "number" || typeof after.value !== "number") return [];
  return M === undefined || Mp === undefined ? [] : [{ before, after, M, Mp }];
}

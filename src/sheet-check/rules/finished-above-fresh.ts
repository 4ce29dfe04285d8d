import type { Finding } from "../finding";
import { type KnownCell, weightOf } from "../known-cell";
import type { KnownSheet } from "../known-sheet";
import { inOneUnit } from "../units";

/** More finished tea than fresh leaf. */
export const finishedAboveFresh = ({ lots }: KnownSheet): Finding[] =>
  lots.flatMap(({ fresh, finished }) => {
    if (typeof fresh.value !== "number" || typeof finished.value !== "number") return [];
    const [leaf, tea] = inOneUnit(weightOf(fresh), weightOf(finished));
    if (leaf <= 0 || tea <= leaf) return [];
    const { row, column } = finished;
    const details = { finished: withUnit(finished, fresh), fresh: withUnit(fresh, finished) };
    return [{ rule: "finished above fresh", row, column, details }];
  });

/** Its unit is shown where the other weight has another one. */
const withUnit = ({ value, unit }: KnownCell, other: KnownCell): string =>
  unit === undefined || other.unit === undefined || unit === other.unit ? String(value) : `${value} ${unit}`;

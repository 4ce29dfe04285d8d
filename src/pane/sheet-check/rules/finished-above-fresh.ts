import type { Finding } from "../finding";
import type { KnownSheet } from "../known-sheet";

/** More finished tea than fresh leaf. */
export const finishedAboveFresh = ({ lots }: KnownSheet): Finding[] =>
  lots.flatMap(({ fresh, finished }) => {
    if (typeof fresh.value !== "number" || typeof finished.value !== "number") return [];
    if (fresh.value <= 0 || finished.value <= fresh.value) return [];
    const { row, column } = finished;
    const details = { finished: String(finished.value), fresh: String(fresh.value) };
    return [{ rule: "finished above fresh", row, column, details }];
  });

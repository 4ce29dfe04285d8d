import { dryMatterPairs } from "../dry-matter-pairs";
import type { Finding } from "../finding";
import { weightOf } from "../known-cell";
import type { KnownSheet } from "../known-sheet";
import { shortWeight } from "../shown";
import { inOneUnit } from "../units";

/** So much of the dry matter no firing and no sifting takes; a digit that was lost does. */
const mostGone = 0.5;

/** Less than half of the dry matter left after than before, in a lot or from stage to stage. */
export const dryMatterGone = (sheet: KnownSheet): Finding[] =>
  dryMatterPairs(sheet).flatMap(({ before, after, M, Mp }): Finding[] => {
    const [W, P] = inOneUnit(weightOf(before), weightOf(after));
    const isTyped = before.typed || after.typed;
    const areShares = [M, Mp].every((share) => share >= 0 && share < 1);
    if (!isTyped || !areShares || W <= 0 || P <= 0 || P * (1 - Mp) >= (1 - mostGone) * W * (1 - M)) return [];
    const details = { out: shortWeight(P * (1 - Mp)), come: shortWeight(W * (1 - M)) };
    return [{ rule: "most of the dry matter gone", row: after.row, column: after.column, details }];
  });

import { bind } from "../../cells/bind";
import { dryMatter } from "../../core/moisture/dry-matter";
import { finishedCheck } from "../../core/yields/finished-check";
import { dryMatterPairs } from "../dry-matter-pairs";
import type { Finding } from "../finding";
import { weightOf } from "../known-cell";
import type { KnownSheet } from "../known-sheet";
import { shortWeight } from "../shown";
import { withMostBefore } from "../units";

const check = bind(finishedCheck);

/** More dry matter after than before, in a lot or from stage to stage, beyond what one point of moisture explains. */
export const dryMatterGrows = (sheet: KnownSheet): Finding[] =>
  dryMatterPairs(sheet).flatMap(({ before, after, M, Mp }): Finding[] => {
    const [W, P] = withMostBefore(weightOf(before), weightOf(after));
    // More tea than leaf is another finding.
    if (P > W || check(W, M, P, Mp)[0]?.[0] !== "more dry matter out than came in") return [];
    const details = { out: shortWeight(dryMatter.calculate(P, Mp)), come: shortWeight(dryMatter.calculate(W, M)) };
    return [{ rule: "more dry matter out than in", row: after.row, column: after.column, details }];
  });

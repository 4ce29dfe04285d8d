import { bind } from "../../cells/bind";
import { dryMatter } from "../../core/moisture/dry-matter";
import { finishedCheck } from "../../core/yields/finished-check";
import type { Finding } from "../finding";
import { type KnownCell, weightOf } from "../known-cell";
import type { KnownSheet } from "../known-sheet";
import { inOneUnit } from "../units";

const check = bind(finishedCheck);

/** More dry matter after than before, in a lot or from stage to stage, beyond what one point of moisture explains. */
export function dryMatterGrows({ lots, stages }: KnownSheet): Finding[] {
  const ofLots = lots.flatMap(({ fresh, finished, freshMoisture, finishedMoisture }) =>
    compared(fresh, freshMoisture, finished, finishedMoisture),
  );
  const ofStages = stages.flatMap((run) =>
    run.slice(1).flatMap(({ weight, moisture }, index) => {
      const before = run[index] as (typeof run)[number];
      return compared(before.weight, before.moisture, weight, moisture);
    }),
  );
  return [...ofLots, ...ofStages];
}

function compared(
  before: KnownCell,
  beforeMoisture: KnownCell | undefined,
  after: KnownCell,
  afterMoisture: KnownCell | undefined,
): Finding[] {
  const [M, Mp] = [beforeMoisture?.value, afterMoisture?.value];
  if (typeof before.value !== "number" || typeof after.value !== "number") return [];
  if (typeof M !== "number" || typeof Mp !== "number") return [];
  const [W, P] = inOneUnit(weightOf(before), weightOf(after));
  // More tea than leaf is another finding.
  if (P > W || check(W, M, P, Mp)[0]?.[0] !== "more dry matter out than came in") return [];
  const details = { out: shown(dryMatter.calculate(P, Mp)), come: shown(dryMatter.calculate(W, M)) };
  return [{ rule: "more dry matter out than in", row: after.row, column: after.column, details }];
}

const shown = (weight: number): string => String(Number(weight.toPrecision(4)));

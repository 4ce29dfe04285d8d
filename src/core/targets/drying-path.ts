import { isAbove } from "../comparison";
import { must } from "../errors";
import { choice, share, within } from "../quantities";
import { type LossOf, moistureLeft, requirePossible, shareLeft } from "./loss-of";

/** What a target of a drying step is: the moisture to reach, or a loss on the step before. */
export type TargetKind = "moisture" | LossOf;

export const targetKind = choice(
  "kind of target",
  {
    moisture: ["含水率", "含水量"],
    water: ["水"],
    weight: ["重量"],
    points: ["点", "百分点"],
  },
  // In a loss this word is the water; beside moistures it may as well be the moisture.
  { 水分: "it may mean moisture or water: write 含水率 or 水" },
);

export const target = within(share, { atLeast: 0, atMost: 1 }, "from 0 to 1 (45% or 0.45)");

export interface Leaf {
  readonly weight: number;
  readonly moisture: number;
}

/** Leaf as it is after each target in turn. Only water leaves: the dry matter of the start is in every one of them. */
export function dryingPath(start: Leaf, targets: readonly number[], kinds: readonly TargetKind[]): Leaf[] {
  let before = start;
  return targets.map((target, index) => {
    const kind = kinds[index] as TargetKind;
    const moisture = nextMoisture(before.moisture, target, kind, index + 1);
    // In this order of division the weight stays exactly the same through a wrap, and never rises by a rounding.
    const left =
      kind === "moisture" ? (1 - before.moisture) / (1 - moisture) : shareLeft(before.moisture, target, kind);
    before = { weight: before.weight * left, moisture };
    return before;
  });
}

function nextMoisture(before: number, target: number, kind: TargetKind, step: number): number {
  if (kind !== "moisture") {
    requirePossible(before, target, kind, "targets", { in: "step", number: step });
    return moistureLeft(before, target, kind);
  }
  if (isAbove(target, before)) {
    throw must("targets", { do: "not rise" }, { kind: "rise", step, from: before, to: target });
  }
  return Math.min(target, before);
}

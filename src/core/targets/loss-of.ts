import { isAbove } from "../comparison";
import { mustBe } from "../errors";
import { choice } from "../quantities";
import type { Place } from "../refusals";

/**
 * "Take it down by 30 %" has three meanings that lie far apart: of the water, of the weight, or points of moisture.
 * Whoever states a loss says which one, always.
 */
export type LossOf = "water" | "weight" | "points";

export const lossOf = choice("meaning of a loss", {
  water: ["水", "水分"],
  weight: ["重量"],
  points: ["点", "百分点"],
});

/** Leaf can lose no more weight, and no more points, than it has moisture. Names the argument and, in a list, the step. */
export function requirePossible(moisture: number, loss: number, of: LossOf, argument = "loss", place?: Place): void {
  if (of === "water" || !isAbove(loss, moisture)) return;
  throw mustBe(argument, { kind: "at most moisture", moisture, asLossOf: of }, loss, { place });
}

/** Share of the weight that stays on the scale: 1 − Ml, 1 − l or (1 − M)/(1 − M + l). The loss has to be possible. */
export function shareLeft(moisture: number, loss: number, of: LossOf): number {
  const taken = of === "water" ? loss : Math.min(loss, moisture);
  switch (of) {
    case "water":
      return 1 - moisture * taken;
    case "weight":
      return 1 - taken;
    case "points":
      return (1 - moisture) / (1 - moisture + taken);
  }
}

/** Moisture after the loss: M(1 − l)/(1 − Ml), (M − l)/(1 − l) or M − l. The loss has to be possible. */
export function moistureLeft(moisture: number, loss: number, of: LossOf): number {
  const taken = of === "water" ? loss : Math.min(loss, moisture);
  switch (of) {
    case "water":
      return (moisture * (1 - taken)) / (1 - moisture * taken);
    case "weight":
      return (moisture - taken) / (1 - taken);
    case "points":
      return moisture - taken;
  }
}

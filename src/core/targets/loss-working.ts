/** How the workings of a loss are written, by what the loss is of. */
import { looseWeight, moisture as moistureQuantity } from "../quantities";
import { type Inserted, percent, step } from "../working";
import type { LossOf } from "./loss-of";

export const lossSays = {
  water: "a loss of the water",
  weight: "a loss of the weight",
  points: "a loss in points of moisture",
} as const satisfies Readonly<Record<LossOf, string>>;

/** The scale reading in one line. */
export const wholeSymbols = {
  water: "W × (1 − M × l)",
  weight: "W × (1 − l)",
  points: "W × (1 − M) / (1 − M + l)",
} as const satisfies Readonly<Record<LossOf, string>>;

export const moistureSymbols = {
  water: "M × (1 − l) / (1 − M × l)",
  weight: "(M − l) / (1 − l)",
  points: "M − l",
} as const satisfies Readonly<Record<LossOf, string>>;

/** The steps before the scale reading. */
export function stepsOfLoss(W: number, M: number, l: number, of: LossOf) {
  const [share, lost] = [percent(M), percent(l)];
  switch (of) {
    case "water":
      return [
        step("water in the leaf", "W × M", { W, M: share }, W * M, looseWeight),
        step("water that has to go", "water × l", { water: W * M, l: lost }, W * M * l, looseWeight),
      ];
    case "weight":
      return [step("weight that has to go", "W × l", { W, l: lost }, W * l, looseWeight)];
    case "points":
      return [
        step("dry matter, which stays", "W × (1 − M)", { W, M: share }, W * (1 - M), looseWeight),
        step("moisture after the loss", "M − l", { M: share, l: lost }, M - l, moistureQuantity),
      ];
  }
}

/** The scale reading from those steps. */
export const readingSymbols = {
  water: "W − off",
  weight: "W − off",
  points: "D / (1 − Mt)",
} as const satisfies Readonly<Record<LossOf, string>>;

export function readingNumbers(W: number, M: number, l: number, of: LossOf): Readonly<Record<string, Inserted>> {
  if (of === "points") return { D: W * (1 - M), Mt: percent(M - l) };
  return { W, off: of === "water" ? W * M * l : W * l };
}

/** How the workings of a loss are written, by what the loss is of. */
import type { Step } from "../define";
import { looseWeight, moisture as moistureQuantity } from "../quantities";
import { type Inserted, percent, step } from "../working";
import type { LossOf } from "./loss-of";

export const lossSays: Readonly<Record<LossOf, string>> = {
  water: "a loss of the water",
  weight: "a loss of the weight",
  points: "a loss in points of moisture",
};

/** The scale reading in one line. */
export const wholeSymbols: Readonly<Record<LossOf, string>> = {
  water: "W × (1 − M × l)",
  weight: "W × (1 − l)",
  points: "W × (1 − M) / (1 − M + l)",
};

export const moistureSymbols: Readonly<Record<LossOf, string>> = {
  water: "M × (1 − l) / (1 − M × l)",
  weight: "(M − l) / (1 − l)",
  points: "M − l",
};

/** The steps before the scale reading. */
export function stepsOfLoss(W: number, M: number, l: number, of: LossOf): Step[] {
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
export const readingSymbols: Readonly<Record<LossOf, string>> = {
  water: "W − off",
  weight: "W − off",
  points: "D / (1 − Mt)",
};

export function readingNumbers(W: number, M: number, l: number, of: LossOf): Readonly<Record<string, Inserted>> {
  if (of === "points") return { D: W * (1 - M), Mt: percent(M - l) };
  return { W, off: of === "water" ? W * M * l : W * l };
}

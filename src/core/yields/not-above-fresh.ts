/** Refuses finished tea that weighs more than the leaf it came from: an outturn above one is a mix-up. */
import { mustBe } from "../errors";
export function refuseAboveFresh(freshWeight: number, finishedWeight: number): void {
  if (finishedWeight <= freshWeight) return;
  throw mustBe("finishedWeight", { kind: "at most", most: freshWeight, argument: "freshWeight" }, finishedWeight, {
    question: "are both in the same unit, and not swapped?",
  });
}

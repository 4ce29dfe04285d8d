import { must, shown } from "../errors";

/** Refuses finished tea that weighs more than the leaf it came from: an outturn above one is a mix-up. */
export function refuseAboveFresh(freshWeight: number, finishedWeight: number): void {
  if (finishedWeight <= freshWeight) return;
  throw must(
    "finishedWeight",
    `be at most ${shown(freshWeight)}, the freshWeight`,
    `got ${shown(finishedWeight)} (are both in the same unit, and not swapped?)`,
    { mentions: ["freshWeight"] },
  );
}

/** The step that LOTFLAG and LOTFLAGS share. */
import { zScore } from "../quantities";
import { step } from "../working";
import { type OutturnSpread, robustZ } from "./outturn-spread";

/** How far a lot lies from the middle one; `unit` is MAD / 0.6745, or what stands in for it. */
export const distance = (F: number, P: number, spread: OutturnSpread) =>
  step(
    "how far from the middle lot, in usual distances",
    "(r − median) / unit",
    { r: Math.log(P / F), median: spread.median, unit: spread.unit },
    robustZ(spread, F, P),
    zScore,
  );

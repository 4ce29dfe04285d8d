import type { Workbook } from "../workbook/workbook";
import { conversionsSheet, lossesSheet, ovenSheet, scaleSheet } from "./moisture-bench/bench-sheets";
import { proofSheet } from "./moisture-bench/proof-sheet";

/** The moisture bench of the invented farm: oven, scale, what a loss means, and conversions, with the proof. */
export const moistureBench = (): Workbook => ({
  name: "Moisture bench",
  sheets: [ovenSheet(), scaleSheet(), lossesSheet(), conversionsSheet(), proofSheet()],
});

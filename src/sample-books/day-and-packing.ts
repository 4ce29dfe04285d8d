import type { Workbook } from "../workbook/workbook";
import { daySheet } from "./day/day-sheet";
import { dryingSheet } from "./day/drying-sheet";
import { packingSheet } from "./day/packing-sheet";
import { pickingSheet } from "./day/picking-sheet";
import { proofSheet } from "./day/proof-sheet";
import { stockSheet } from "./day/stock-sheet";

/** A day at the pans of the invented farm, the last drying, the picking, the tins and the year's stock, with the proof. */
export const dayAndPacking = (): Workbook => ({
  name: "Day and packing",
  sheets: [daySheet(), dryingSheet(), pickingSheet(), packingSheet(), stockSheet(), proofSheet()],
});

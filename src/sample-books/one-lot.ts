import type { Workbook } from "../workbook/workbook";
import { cardSheets } from "./one-lot/card-sheet";
import { lotSheet } from "./one-lot/lot-sheet";
import { pastLotsSheet } from "./one-lot/past-lots-sheet";
import { proofSheet } from "./one-lot/proof-sheet";
import { sampleValuesSheet } from "./one-lot/sample-values-sheet";

/** The book of one lot of an invented farm: what the workbook page opens with. Results come from the engine. */
export const oneLot = (): Workbook => ({
  name: "One lot",
  sheets: [lotSheet(), pastLotsSheet(), ...cardSheets(), proofSheet(), sampleValuesSheet()],
});

import type { Workbook } from "../workbook/workbook";
import { flagsSheet } from "./season/flags-sheet";
import { lotsSheet } from "./season/lots-sheet";
import { oneLotSheet } from "./season/one-lot-sheet";
import { proofByLotSheet } from "./season/proof-by-lot-sheet";
import { proofSheet } from "./season/proof-sheet";
import { seasonSheet } from "./season/season-sheet";

/** The book of one spring of the invented farm, from its lots to a forecast and the proof. */
export const seasonBook = (): Workbook => ({
  name: "Season",
  sheets: [lotsSheet(), seasonSheet(), oneLotSheet(), flagsSheet(), proofSheet(), proofByLotSheet()],
});

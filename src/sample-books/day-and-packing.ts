import type { SampleWords } from "../words/samples";
import type { Workbook } from "../workbook/workbook";
import { daySheet } from "./day/day-sheet";
import { dryingSheet } from "./day/drying-sheet";
import { packingSheet } from "./day/packing-sheet";
import { pickingSheet } from "./day/picking-sheet";
import { proofSheet } from "./day/proof-sheet";
import { stockSheet } from "./day/stock-sheet";
import { withSheetNames } from "./sheet-names";

/** A day at the pans of the invented farm, the last drying, the picking, the tins and the year's stock, with the proof. */
export function dayAndPacking(words: SampleWords): Workbook {
  const { day: said } = words;
  const sheets = [
    daySheet(words),
    dryingSheet(words),
    pickingSheet(words),
    packingSheet(words),
    stockSheet(words),
    proofSheet(words),
  ];
  return withSheetNames({ name: said.name, sheets }, said.sheets);
}

import type { SampleWords } from "../words/samples";
import type { Workbook } from "../workbook/workbook";
import { flagsSheet } from "./season/flags-sheet";
import { lotsSheet } from "./season/lots-sheet";
import { oneLotSheet } from "./season/one-lot-sheet";
import { proofByLotSheet } from "./season/proof-by-lot-sheet";
import { proofSheet } from "./season/proof-sheet";
import { seasonSheet } from "./season/season-sheet";
import { withSheetNames } from "./sheet-names";

/** The book of one spring of the invented farm, from its lots to a forecast and the proof. */
export function seasonBook(words: SampleWords): Workbook {
  const { season: said } = words;
  const sheets = [
    lotsSheet(words),
    seasonSheet(words),
    oneLotSheet(words),
    flagsSheet(words),
    proofSheet(words),
    proofByLotSheet(said.byLot),
  ];
  return withSheetNames({ name: said.name, sheets }, said.sheets);
}

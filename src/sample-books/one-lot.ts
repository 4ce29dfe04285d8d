import type { SampleWords } from "../words/samples";
import type { Workbook } from "../workbook/workbook";
import { cardSheets } from "./one-lot/card-sheet";
import { lotSheet } from "./one-lot/lot-sheet";
import { pastLotsSheet } from "./one-lot/past-lots-sheet";
import { proofSheet } from "./one-lot/proof-sheet";
import { sampleValuesSheet } from "./one-lot/sample-values-sheet";
import { withSheetNames } from "./sheet-names";

/** The book of one lot of an invented farm: what the workbook page opens with. Results come from the engine. */
export function oneLot(words: SampleWords): Workbook {
  const { oneLot: said } = words;
  const sheets = [
    lotSheet(words),
    pastLotsSheet(said),
    ...cardSheets(said),
    proofSheet(words),
    sampleValuesSheet(said),
  ];
  return withSheetNames({ name: said.name, sheets }, said.sheets);
}

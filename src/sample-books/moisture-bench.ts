import type { SampleWords } from "../words/samples";
import type { Workbook } from "../workbook/workbook";
import { conversionsSheet, lossesSheet, ovenSheet, scaleSheet } from "./moisture-bench/bench-sheets";
import { proofSheet } from "./moisture-bench/proof-sheet";
import { withSheetNames } from "./sheet-names";

/** The moisture bench of the invented farm: oven, scale, what a loss means, and conversions, with the proof. */
export function moistureBench(words: SampleWords): Workbook {
  const { bench: said } = words;
  const sheets = [ovenSheet(words), scaleSheet(words), lossesSheet(words), conversionsSheet(words), proofSheet(words)];
  return withSheetNames({ name: said.name, sheets }, said.sheets);
}

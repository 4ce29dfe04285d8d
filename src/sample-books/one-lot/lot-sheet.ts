import { textInFormula } from "../../words/in-formula";
import type { OneLotWords, SampleWords } from "../../words/samples";
import type { Sheet } from "../../workbook/workbook";
import * as look from "../look";
import { sheetBuilder } from "../sheet-builder";
import { lotAnswers } from "./lot-answers";
import { lotInputs } from "./lot-inputs";
import { lotWorking } from "./lot-working";
import { onSampleSheet, sampleCells, told } from "./sample-values";

/** What is typed on the left; on the right what a maker looks at first, and below it how that comes about. */
export function lotSheet(words: SampleWords): Sheet {
  const { lot, footers, sample } = words.oneLot;
  const builder = sheetBuilder("Lot");
  builder.put("A1", lot.title, look.title);
  builder.put("A2", lot.invented, look.remark);
  builder.put("A3", whatIsSample(sample), look.mark);
  lotInputs(builder, words);
  lotAnswers(builder, words);
  lotWorking(builder, words);
  builder.widths(28, 11, 17, 9, 24, 11, 17, 17, 17, 17, 13);
  builder.height(1, 24);
  return builder.sheet({
    page: { paper: "A4", landscape: true, fitToOnePageWide: true, footer: footers.lot },
  });
}

/** Names the cells that nobody has typed in yet, so that no invented weight passes for the maker's own. */
function whatIsSample({ every, some, andPastLots, onlyPastLots }: OneLotWords["sample"]): string {
  const [still, pastLots, cells] = [told.stillSample, told.pastLots, told.cells].map(onSampleSheet) as [
    string,
    string,
    string,
  ];
  const left = some(cells, `IF(${pastLots}>0,${andPastLots(pastLots)},"")`);
  const onlyPast = `IF(${pastLots}>0,${onlyPastLots(pastLots)},"")`;
  const all = textInFormula(every);
  return `=IF(${still}=${sampleCells.length},${all},IF(${still}>0,${left},${onlyPast}))`;
}

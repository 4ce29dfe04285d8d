import type { Sheet } from "../../workbook/workbook";
import * as look from "../look";
import { sheetBuilder } from "../sheet-builder";
import { lotAnswers } from "./lot-answers";
import { lotInputs } from "./lot-inputs";
import { lotWorking } from "./lot-working";
import { onSampleSheet, sampleCells, told } from "./sample-values";

/** What is typed on the left; on the right what a maker looks at first, and below it how that comes about. */
export function lotSheet(): Sheet {
  const builder = sheetBuilder("Lot");
  builder.put("A1", "One lot, from fresh leaf to finished tea", look.title);
  builder.put(
    "A2",
    "Wren Terrace is an invented farm, and every number here is invented. Type over the tinted cells; the plain ones answer.",
    look.remark,
  );
  builder.put("A3", whatIsSample(), look.mark);
  lotInputs(builder);
  lotAnswers(builder);
  lotWorking(builder);
  builder.widths(28, 11, 17, 9, 24, 11, 17, 17, 17, 17, 13);
  builder.height(1, 24);
  return builder.sheet({
    page: { paper: "A4", landscape: true, fitToOnePageWide: true, footer: "&LWren Terrace, invented&RPage &P of &N" },
  });
}

/** Names the cells that nobody has typed in yet, so that no invented weight passes for the maker's own. */
function whatIsSample(): string {
  const [still, pastLots, cells] = [told.stillSample, told.pastLots, told.cells].map(onSampleSheet);
  const past = `IF(${pastLots}>0," and "&${pastLots}&" past lots","")`;
  const some = `"Still the sample's, not yours: "&${cells}&${past}&". Type over them or empty them."`;
  const onlyPast = `IF(${pastLots}>0,"Still the sample's, not yours: "&${pastLots}&" past lots.","")`;
  const all = `"Every number below is still the sample's. Type over yours, and this line says which are left."`;
  return `=IF(${still}=${sampleCells.length},${all},IF(${still}>0,${some},${onlyPast}))`;
}

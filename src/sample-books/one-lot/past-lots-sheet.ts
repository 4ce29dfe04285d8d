import type { OneLotWords } from "../../words/samples";
import type { Sheet } from "../../workbook/workbook";
import { columnHead, columnHeadLeft, date, grams, input, percent, remark, result, title } from "../look";
import { once, sheetBuilder } from "../sheet-builder";
import { firstPastRow, given, lastPastRow, onLot } from "./places";

/** Lot, day of picking, fresh, aired, sift-outs, finished, moisture of the finished tea. All invented. */
export const pastLots: readonly (readonly [number, number, number, number, number, number, number])[] = [
  [6, 45748, 1310, 1198.6, 33.5, 293.8, 0.051],
  [7, 45749, 985.4, 900.2, 21.7, 226.9, 0.056],
  [8, 45751, 1422.8, 1296.5, 40.2, 331.5, 0.049],
  [9, 45752, 1104.3, 1018.8, 25.1, 246, 0.054],
  [10, 45753, 1267.9, 1150.4, 30.8, 299.6, 0.058],
  [11, 45755, 1351.1, 1245.7, 36, 300.9, 0.05],
  [12, 45756, 1048.6, 962.3, 24.4, 240.2, 0.053],
  [13, 45758, 1189.2, 1087, 27.9, 263.7, 0.052],
];

/** The table behind the assumed fresh moisture. Rows beyond the lots are ready and wait. */
export function pastLotsSheet({ pastLots: said, footers }: OneLotWords): Sheet {
  const { put, widths, height, sheet } = sheetBuilder("Past lots");
  put("A1", said.title, title);
  put("A2", said.says, remark);
  put("A3", said.more, remark);
  put("A5", said.lot, columnHeadLeft);
  const weights = { B: said.picked, C: said.fresh, D: said.aired, E: said.siftOuts, F: said.finished };
  for (const [column, heading] of Object.entries(weights)) put(`${column}5`, heading, columnHead);
  const others = { G: said.finishedMoisture, H: said.dryLoss, I: said.freshMoisture };
  for (const [column, { heading, note }] of Object.entries(others)) put(`${column}5`, heading, columnHead, note);
  for (let row = firstPastRow; row <= lastPastRow; row += 1) {
    const [lot, picked, ...readings] = pastLots[row - firstPastRow] ?? [];
    put(`A${row}`, lot ?? null, { ...input("0"), align: "left" });
    put(`B${row}`, picked ?? null, input(date));
    for (const [index, column] of ["C", "D", "E", "F", "G"].entries()) {
      put(`${column}${row}`, readings[index] ?? null, input(column === "G" ? percent : grams));
    }
    const siftedOut = `IF(ISBLANK(E${row}),0,E${row}/IF(ISBLANK(D${row}),C${row},D${row}))`;
    put(`H${row}`, once([`C${row}`], `1-(1-${siftedOut})*(1-${onLot(given.usualLoss)})`), result(percent));
    put(`I${row}`, `=TEA.FRESHMOISTURE(C${row},F${row},G${row},H${row})`, result(percent));
  }
  widths(8, 13, 12, 17, 15, 14, 20, 19, 18);
  height(1, 24);
  return sheet({
    frozenRows: 5,
    page: { paper: "A4", landscape: true, fitToOnePageWide: true, footer: footers.pastLots },
  });
}

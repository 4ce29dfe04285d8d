import { textInFormula } from "../../words/in-formula";
import type { OneLotWords } from "../../words/samples";
import type { Sheet } from "../../workbook/workbook";
import { columnHead, columnHeadLeft, input, label, remark, result, title } from "../look";
import { sheetBuilder } from "../sheet-builder";
import { sampleInputs } from "./lot-inputs";
import { pastLots } from "./past-lots-sheet";
import { firstPastRow, lastPastRow, onLot } from "./places";
import { cardCells, firstValueRow, sampleCells, sampleSheet, told } from "./sample-values";

/**
 * What the sample came with, beside what stands there now. Plain cells, so that any spreadsheet tells a maker's numbers
 * from the sample's, and paper too.
 */
export function sampleValuesSheet(words: OneLotWords): Sheet {
  const { values: said, footers } = words;
  const { put, widths, height, sheet } = sheetBuilder(sampleSheet);
  const lastCellRow = firstValueRow + sampleCells.length - 1;
  const lastRow = lastCellRow + pastLots.length;
  const range = (column: string, last = lastCellRow) => `${column}${firstValueRow}:${column}${last}`;
  const between = textInFormula(said.between);
  put("A1", said.title, title);
  put("A2", said.says, remark);
  put("A4", said.onLot, label);
  put(told.stillSample, `=SUM(${range("F")})`, { ...result("0"), align: "left" });
  put("A5", said.pastLots, label);
  put(told.pastLots, `=SUM(F${lastCellRow + 1}:F${lastRow})`, { ...result("0"), align: "left" });
  put("A6", said.cells, label);
  put(told.cells, `=TEXTJOIN(${between},TRUE,${range("G")})`, label);
  put("A7", said.onCard, label);
  const marksOnCard = cardCells.map((address) => `F${firstValueRow + sampleCells.indexOf(address)}`);
  put(told.countOnCard, `=SUM(${marksOnCard.join(",")})`, { ...result("0"), align: "left" });
  put(told.onCard, `=TEXTJOIN(${between},TRUE,${range("H")})`, label);

  const { cell, what, now, samples, mine, still, cells, onCard } = said.heads;
  const heads = [cell, what, now, samples, mine, still, cells, onCard];
  for (const [index, head] of heads.entries()) {
    put(`${"ABCDEFGH"[index]}${firstValueRow - 1}`, head, index < 2 || index > 5 ? columnHeadLeft : columnHead);
  }
  const inputs = sampleInputs(words);
  for (const [index, address] of sampleCells.entries()) {
    const row = firstValueRow + index;
    const given = inputs.find((each) => each.address === address);
    if (given === undefined) throw new Error(`the sheet Lot has no input in ${address}`);
    const number = result(given.style.format ?? "General");
    put(`A${row}`, address, label);
    put(`B${row}`, given.label, label);
    put(`C${row}`, `=IF(ISBLANK(${onLot(address)}),${textInFormula(said.blank)},${onLot(address)})`, number);
    put(`D${row}`, given.value, number);
    put(`E${row}`, null, { ...input(), align: "center" });
    put(`F${row}`, `=IF(AND(E${row}="",C${row}=D${row}),1,0)`, result("0"));
    put(`G${row}`, `=IF(F${row}=1,A${row},"")`, remark);
    put(`H${row}`, cardCells.includes(address) ? `=IF(F${row}=1,B${row},"")` : null, remark);
  }
  const fresh = `'Past lots'!$C$${firstPastRow}:$C$${lastPastRow}`;
  for (const [index, [lot, , weight]] of pastLots.entries()) {
    const row = lastCellRow + 1 + index;
    put(`B${row}`, said.pastLot(lot), label);
    put(`C${row}`, `=IF(COUNTIF(${fresh},D${row})>0,D${row},"")`, result("0.0"));
    put(`D${row}`, weight, result("0.0"));
    put(`E${row}`, null, { ...input(), align: "center" });
    put(`F${row}`, `=IF(AND(E${row}="",C${row}=D${row}),1,0)`, result("0"));
  }
  widths(17, 30, 14, 14, 8, 8, 10, 30);
  height(1, 24);
  return sheet({
    frozenRows: firstValueRow - 1,
    page: { paper: "A4", landscape: false, fitToOnePageWide: true, footer: footers.values },
  });
}

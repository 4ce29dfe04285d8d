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
export function sampleValuesSheet(): Sheet {
  const { put, widths, height, sheet } = sheetBuilder(sampleSheet);
  const lastCellRow = firstValueRow + sampleCells.length - 1;
  const lastRow = lastCellRow + pastLots.length;
  const range = (column: string, last = lastCellRow) => `${column}${firstValueRow}:${column}${last}`;
  put("A1", "Which numbers are still the sample's", title);
  put(
    "A2",
    "The invented values of Wren Terrace beside what stands there now. Where yours is the same, write x under Mine.",
    remark,
  );
  put("A4", "On the sheet Lot", label);
  put(told.stillSample, `=SUM(${range("F")})`, { ...result("0"), align: "left" });
  put("A5", "Past lots", label);
  put(told.pastLots, `=SUM(F${lastCellRow + 1}:F${lastRow})`, { ...result("0"), align: "left" });
  put("A6", "Cells", label);
  put(told.cells, `=TEXTJOIN(", ",TRUE,${range("G")})`, label);
  put("A7", "On the card", label);
  const onCard = cardCells.map((address) => `F${firstValueRow + sampleCells.indexOf(address)}`);
  put(told.countOnCard, `=SUM(${onCard.join(",")})`, { ...result("0"), align: "left" });
  put(told.onCard, `=TEXTJOIN(", ",TRUE,${range("H")})`, label);

  const heads = ["Cell", "What", "Now", "The sample's", "Mine", "Still", "Cells", "On the card"];
  for (const [index, head] of heads.entries()) {
    put(`${"ABCDEFGH"[index]}${firstValueRow - 1}`, head, index < 2 || index > 5 ? columnHeadLeft : columnHead);
  }
  for (const [index, address] of sampleCells.entries()) {
    const row = firstValueRow + index;
    const given = sampleInputs.find((each) => each.address === address);
    if (given === undefined) throw new Error(`the sheet Lot has no input in ${address}`);
    const number = result(given.style.format ?? "General");
    put(`A${row}`, address, label);
    put(`B${row}`, given.label, label);
    put(`C${row}`, `=IF(ISBLANK(${onLot(address)}),"blank",${onLot(address)})`, number);
    put(`D${row}`, given.value, number);
    put(`E${row}`, null, { ...input(), align: "center" });
    put(`F${row}`, `=IF(AND(E${row}="",C${row}=D${row}),1,0)`, result("0"));
    put(`G${row}`, `=IF(F${row}=1,A${row},"")`, remark);
    put(`H${row}`, cardCells.includes(address) ? `=IF(F${row}=1,B${row},"")` : null, remark);
  }
  const fresh = `'Past lots'!$C$${firstPastRow}:$C$${lastPastRow}`;
  for (const [index, [lot, , weight]] of pastLots.entries()) {
    const row = lastCellRow + 1 + index;
    put(`B${row}`, `Past lot ${lot}, fresh weight`, label);
    put(`C${row}`, `=IF(COUNTIF(${fresh},D${row})>0,D${row},"")`, result("0.0"));
    put(`D${row}`, weight, result("0.0"));
    put(`E${row}`, null, { ...input(), align: "center" });
    put(`F${row}`, `=IF(AND(E${row}="",C${row}=D${row}),1,0)`, result("0"));
  }
  widths(17, 30, 14, 14, 8, 8, 10, 30);
  height(1, 24);
  return sheet({
    frozenRows: firstValueRow - 1,
    page: { paper: "A4", landscape: false, fitToOnePageWide: true, footer: "&LThe sample's values&RPage &P of &N" },
  });
}

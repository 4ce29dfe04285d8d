import type { SampleWords } from "../../words/samples";
import type { Sheet } from "../../workbook/workbook";
import { columnHead, columnHeadLeft, date, grams, percent, remark, result, title } from "../look";
import { sheetBuilder } from "../sheet-builder";
import { inWords } from "../words-of-cells";
import { firstLotRow, inLot, lastFollowingRow, lots } from "./places";

/** A lot above this stands at the upper edge of the chart, which would be flat if it went up to the swapped one. */
export const topOfChart = 0.4;

/** What the sheet Lots says of every lot, and what the charts and the second forecast take from it. */
export function flagsSheet(words: SampleWords): Sheet {
  const said = words.season.flags;
  const { put, widths, height, sheet } = sheetBuilder("Flags");
  put("A1", said.lot, columnHeadLeft);
  put("B1", said.picked, columnHead);
  for (const [index, heading] of [said.outturn, said.z].entries()) put(`${"CD"[index]}1`, heading, columnHead);
  put("E1", said.flag, { ...columnHead, align: "center" });
  const [first, last] = [firstLotRow, lastFollowingRow];
  const made = [said.chartUsual, said.chartFlagged, said.fresh, said.finished];
  for (const [index, heading] of made.entries()) put(`${"FGHI"[index]}1`, heading, columnHead);
  for (let row = first; row <= last; row += 1) {
    const told = (column: string) => `=IF(${inLot(column)}="","",${inLot(column)})`;
    put(`A${row}`, told(lots.number), { ...result("0"), align: "left" });
    // A number in every row, which shows as nothing where it is 0: one text among the days, and Excel's chart counts
    // the lots instead.
    put(`B${row}`, `=N(${inLot(lots.picked)})`, result(`${date};;`));
    put(`C${row}`, told(lots.outturn), result(percent));
    put(`D${row}`, told(lots.z), result("0.0"));
    put(`E${row}`, `=IF(${inLot(lots.flag)}="","",${inWords(inLot(lots.flag), words.inCells?.flags)})`, {
      ...result("General"),
      align: "center",
    });
    put(`F${row}`, `=IFERROR(IF(OR(C${row}="",E${row}<>""),NA(),C${row}),NA())`, pale(percent));
    put(`G${row}`, `=IFERROR(IF(E${row}="",NA(),MIN(C${row},K$7)),NA())`, pale(percent));
    const unflagged = (column: string) => `=IFERROR(IF(OR(C${row}="",E${row}<>""),"",${inLot(column)}),"")`;
    put(`H${row}`, unflagged(lots.fresh), result(grams));
    put(`I${row}`, unflagged(lots.finished), result(grams));
  }
  put("K1", said.title, title);
  for (const [index, note] of said.notes.entries()) put(`K${index + 2}`, note, remark);
  put("K6", said.top, remark);
  put("K7", topOfChart, { ...result(percent), align: "left" });
  widths(6, 12, 10, 9, 19, 16, 15, 17, 20, 3, 80);
  height(1, 24);
  return sheet({
    frozenRows: 1,
    page: {
      paper: "A4",
      landscape: false,
      fitToOnePageWide: true,
      footer: said.footer,
      printArea: { row: 0, column: 0, rows: last, columns: 9 },
      repeatedRow: 0,
    },
  });
}

/** For columns that are there for the chart, and full of #N/A. */
const pale = (format: string) => ({ ...result(format), color: "#8a938d" });

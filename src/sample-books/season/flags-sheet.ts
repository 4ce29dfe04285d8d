import type { Sheet } from "../../workbook-files/workbook";
import { columnHead, columnHeadLeft, date, grams, percent, remark, result, title } from "../look";
import { sheetBuilder } from "../sheet-builder";
import { firstLotRow, lastLotRow, lots, onLots } from "./places";

/** A lot above this stands at the upper edge of the chart, which would be flat if it went up to the swapped one. */
export const topOfChart = 0.4;

/** How unusual every lot is, and what the charts and the second forecast take from it. */
export function flagsSheet(): Sheet {
  const { put, styleRest, widths, height, sheet } = sheetBuilder("Flags");
  put("A1", "Lot", columnHeadLeft);
  put("B1", "Picked", columnHead);
  const weights = [lots.fresh, lots.finished].map((column) => onLots(column, { heading: true }));
  put("C1", `=TEA.LOTFLAGS(${weights.join(",")})`, columnHead);
  styleRest("D1:D1", columnHead);
  styleRest("E1:E1", { ...columnHead, align: "center" });
  const [first, last] = [firstLotRow, lastLotRow];
  styleRest(`C${first}:C${last}`, result(percent));
  styleRest(`D${first}:D${last}`, result("0.0"));
  styleRest(`E${first}:E${last}`, { ...result("General"), align: "center" });
  const made = ["Chart: as usual", "Chart: flagged", "Fresh, unflagged", "Finished, unflagged"];
  for (const [index, heading] of made.entries()) put(`${"FGHI"[index]}1`, heading, columnHead);
  for (let row = first; row <= last; row += 1) {
    const ofLot = (column: string) => `Lots!${column}${row}`;
    put(`A${row}`, `=IF(${ofLot("A")}="","",${ofLot("A")})`, { ...result("0"), align: "left" });
    put(`B${row}`, `=IF(${ofLot("B")}="","",${ofLot("B")})`, result(date));
    put(`F${row}`, `=IFERROR(IF(OR(C${row}="",E${row}<>""),NA(),C${row}),NA())`, pale(percent));
    put(`G${row}`, `=IFERROR(IF(E${row}="",NA(),MIN(C${row},K$7)),NA())`, pale(percent));
    const unflagged = (column: string) => `=IFERROR(IF(OR(C${row}="",E${row}<>""),"",${ofLot(column)}),"")`;
    put(`H${row}`, unflagged(lots.fresh), result(grams));
    put(`I${row}`, unflagged(lots.finished), result(grams));
  }
  put("K1", "How unusual each lot is", title);
  const notes = [
    "z is how far a lot's outturn lies from the middle of the season, in usual distances.",
    "Beyond 3.5 either way it is flagged. The charts take the two columns after the flag:",
    "#N/A there means that the lot stands in the other one, or has no outturn yet; charts pass over it.",
  ];
  for (const [index, note] of notes.entries()) put(`K${index + 2}`, note, remark);
  put("K6", "Top of the chart: a lot above it stands at its upper edge", remark);
  put("K7", topOfChart, { ...result(percent), align: "left" });
  widths(6, 12, 10, 9, 19, 16, 15, 17, 20, 3, 80);
  height(1, 24);
  return sheet({
    frozenRows: 1,
    page: {
      paper: "A4",
      landscape: false,
      fitToOnePageWide: true,
      footer: "&LFlags of an invented farm's lots&RPage &P of &N",
      printArea: { row: 0, column: 0, rows: last, columns: 9 },
      repeatedRow: 0,
    },
  });
}

/** For columns that are there for the chart, and full of #N/A. */
const pale = (format: string) => ({ ...result(format), color: "#8a938d" });

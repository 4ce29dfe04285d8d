import type { Sheet } from "../../workbook/workbook";
import { columnHead, columnHeadLeft, date, grams, input, percent, remark, result, section, title } from "../look";
import { sheetBuilder } from "../sheet-builder";
import { springLots } from "./lots";
import { closingRow, firstLotRow, lastLotRow, lots, onLots } from "./places";

/** The book of lots: what is typed, and beside it what each lot made and whether to look at it. */
export function lotsSheet(): Sheet {
  const { put, styleRest, widths, height, sheet } = sheetBuilder("Lots");
  const headings: readonly (readonly [string, string?])[] = [
    ["Lot"],
    ["Picked"],
    ["Plot"],
    ["Remark", "Anything that tells the lot from others: rain on the leaf, coarse plucking, another picker."],
    ["Fresh, g", "Straight from the baskets."],
    ["Finished, g", "Leave it blank while the lot is in the making: nothing breaks."],
  ];
  for (const [index, [heading, note]] of headings.entries()) {
    put(`${"ABCDEF"[index]}1`, heading, columnHeadLeft, note);
  }
  const book = springLots();
  for (let row = firstLotRow; row <= lastLotRow; row += 1) {
    const lot = book[row - firstLotRow];
    put(`A${row}`, lot?.number ?? null, { ...input("0"), align: "left" });
    put(`B${row}`, lot?.picked ?? null, { ...input(date), align: "left" });
    put(`C${row}`, lot?.plot ?? null, input());
    put(`D${row}`, lot?.remark || null, input());
    put(`E${row}`, lot?.fresh ?? null, input(grams));
    put(`F${row}`, lot?.finished ?? null, input(grams));
  }
  put(`A${closingRow}`, "The book ends here: put in more rows above this line.", remark);
  put(
    `${lots.outturn}1`,
    `=TEA.LOTFLAGS(${[lots.fresh, lots.finished].map((column) => onLots(column).replace("Lots!", "")).join(",")})`,
    { ...columnHead, color: "#24312a" },
    "One formula that spills: it needs none in the rows, so that lots can be sorted, taken out and put in. Outturn is finished over fresh. A flag stands at lots whose z, the distance from the usual outturn, is farther than chance takes a lot of so large a book: it says look, and not wrong. Weigh again while the tea is there.",
  );
  styleRest("H1:H1", columnHead);
  styleRest("I1:I1", { ...columnHead, align: "center" });
  styleRest(`G${firstLotRow}:G${closingRow}`, result(percent));
  styleRest(`H${firstLotRow}:H${closingRow}`, result("0.0"));
  styleRest(`I${firstLotRow}:I${closingRow}`, { ...result("General"), align: "center" });
  put("K1", "Wren Terrace, spring 2024", title);
  const notes = [
    "The farm is invented, and so is every lot and every number here.",
    "Type over the tinted cells; the plain ones answer. Rows below the last lot are ready; put in, take out and sort as you like.",
    "Two lots were weighed wrong, and one has its weights in each other's place: see the column flag.",
    "The swapped one has an outturn above 100 %: no leaf makes more tea than it weighs.",
    "The season by plots, the forecast and the charts stand on the sheet Season.",
  ];
  for (const [index, note] of notes.entries()) put(`K${index + 3}`, note, remark);
  put("K9", "Mend a lot", section);
  put("K10", "Type the right weight over the wrong one: flag, table, forecast and charts follow.", remark);
  widths(6, 12, 14, 15, 11, 13, 11, 8, 19, 3, 90);
  height(1, 24);
  return sheet({
    frozenRows: 1,
    tables: [{ name: "Lots_of_spring", area: { row: 0, column: 0, rows: lastLotRow, columns: headings.length } }],
    page: {
      paper: "A4",
      landscape: false,
      fitToOnePageWide: true,
      footer: "&LWren Terrace, an invented farm: lots of spring 2024&RPage &P of &N",
      printArea: { row: 0, column: 0, rows: lastLotRow, columns: 9 },
      repeatedRow: 0,
    },
  });
}

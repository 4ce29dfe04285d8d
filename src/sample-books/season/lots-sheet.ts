import type { Sheet } from "../../workbook-files/workbook";
import { columnHeadLeft, date, grams, input, percent, remark, result, section, title } from "../look";
import { sheetBuilder } from "../sheet-builder";
import { springLots } from "./lots";
import { firstLotRow, lastLotRow, lots, onLots } from "./places";

/** The book of lots: what is typed, and beside it what each lot made and whether to look at it. */
export function lotsSheet(): Sheet {
  const { put, widths, height, sheet } = sheetBuilder("Lots");
  const headings: readonly (readonly [string, string?])[] = [
    ["Lot"],
    ["Picked"],
    ["Plot"],
    ["Remark", "Anything that tells the lot from others: rain on the leaf, coarse plucking, another picker."],
    ["Fresh, g", "Straight from the baskets."],
    ["Finished, g", "Leave it blank while the lot is in the making: nothing breaks."],
    ["Outturn", "Finished over fresh. It waits while a lot is open, and refuses more tea than there was leaf."],
    [
      "Flag",
      "Lots whose outturn is far from the usual one. A flag says look, and not wrong: weigh again while the tea is there.",
    ],
  ];
  for (const [index, [heading, note]] of headings.entries()) {
    put(`${"ABCDEFGH"[index]}1`, heading, columnHeadLeft, note);
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
    put(`G${row}`, `=TEA.OUTTURN(E${row},F${row})`, result(percent));
    const past = [lots.fresh, lots.finished].map((column) => onLots(column, { heading: true }).replace("Lots!", ""));
    put(`H${row}`, `=TEA.LOTFLAG(E${row},F${row},${past.join(",")})`, { ...result("General"), align: "center" });
  }
  put("J1", "Wren Terrace, spring 2024", title);
  const notes = [
    "The farm is invented, and so is every lot and every number here.",
    "Type over the tinted cells; the plain ones answer. Rows below the last lot are ready.",
    "Two lots were weighed wrong, and one has its weights in each other's place: see the column Flag.",
    "The swapped one has an error in Outturn, since no leaf makes more tea than it weighs.",
    "The season by plots, the forecast and the charts stand on the sheet Season.",
  ];
  for (const [index, note] of notes.entries()) put(`J${index + 3}`, note, remark);
  put("J9", "Mend a lot", section);
  put("J10", "Type the right weight over the wrong one: flag, table, forecast and charts follow.", remark);
  widths(6, 12, 14, 15, 11, 13, 11, 19, 3, 80);
  height(1, 24);
  return sheet({
    frozenRows: 1,
    tables: [{ name: "Lots_of_spring", area: { row: 0, column: 0, rows: lastLotRow, columns: headings.length } }],
    page: {
      paper: "A4",
      landscape: false,
      fitToOnePageWide: true,
      footer: "&LWren Terrace, an invented farm: lots of spring 2024&RPage &P of &N",
      printArea: { row: 0, column: 0, rows: lastLotRow, columns: headings.length },
      repeatedRow: 0,
    },
  });
}

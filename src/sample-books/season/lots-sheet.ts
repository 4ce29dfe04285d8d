import type { SampleWords } from "../../words/samples";
import type { Sheet, Style } from "../../workbook/workbook";
import { columnHead, columnHeadLeft, date, grams, input, percent, remark, result, section, title } from "../look";
import { sheetBuilder } from "../sheet-builder";
import { textAs } from "../words-of-cells";
import { springLots } from "./lots";
import { closingRow, firstLotRow, lastLotRow, lots, onLots } from "./places";

/** The book of lots: what is typed, and beside it what each lot made and whether to look at it. */
export function lotsSheet({ season: words, inCells }: SampleWords): Sheet {
  const said = words.lots;
  const { put, styleRest, widths, height, sheet } = sheetBuilder("Lots");
  const headings: readonly (readonly [string, string?])[] = [
    [said.lot],
    [said.picked],
    [said.plot],
    [said.remark.heading, said.remark.note],
    [said.fresh.heading, said.fresh.note],
    [said.finished.heading, said.finished.note],
  ];
  for (const [index, [heading, note]] of headings.entries()) {
    put(`${"ABCDEF"[index]}1`, heading, columnHeadLeft, note);
  }
  const headed = (style: Style, column: string): Style =>
    inCells === undefined ? style : { ...style, format: textAs(inCells.columns[column] ?? column) };
  const book = springLots();
  for (let row = firstLotRow; row <= lastLotRow; row += 1) {
    const lot = book[row - firstLotRow];
    put(`A${row}`, lot?.number ?? null, { ...input("0"), align: "left" });
    put(`B${row}`, lot?.picked ?? null, { ...input(date), align: "left" });
    put(`C${row}`, lot ? words.plots[lot.plot] : null, input());
    put(`D${row}`, lot?.remark ? words.rain : null, input());
    put(`E${row}`, lot?.fresh ?? null, input(grams));
    put(`F${row}`, lot?.finished ?? null, input(grams));
  }
  put(`A${closingRow}`, said.ends, remark);
  put(
    `${lots.outturn}1`,
    `=TEA.LOTFLAGS(${[lots.fresh, lots.finished].map((column) => onLots(column).replace("Lots!", "")).join(",")})`,
    // The formula stands beside the headings of the book, which stay when rows come and go; so its own spill with it.
    headed({ ...columnHead, color: "#24312a" }, "outturn"),
    said.flagsNote,
  );
  styleRest("H1:H1", headed(columnHead, "z"));
  styleRest("I1:I1", headed({ ...columnHead, align: "center" }, "flag"));
  styleRest(`G${firstLotRow}:G${closingRow}`, result(percent));
  styleRest(`H${firstLotRow}:H${closingRow}`, result("0.0"));
  styleRest(`I${firstLotRow}:I${closingRow}`, { ...result("General"), align: "center" });
  put("K1", said.title, title);
  for (const [index, note] of said.notes.entries()) put(`K${index + 3}`, note, remark);
  put("K9", said.mend, section);
  put("K10", said.mendSays, remark);
  widths(6, 12, 14, 15, 11, 13, 11, 8, 19, 3, 90);
  height(1, 24);
  return sheet({
    frozenRows: 1,
    tables: [{ name: said.table, area: { row: 0, column: 0, rows: lastLotRow, columns: headings.length } }],
    page: {
      paper: "A4",
      landscape: false,
      fitToOnePageWide: true,
      footer: said.footer,
      printArea: { row: 0, column: 0, rows: lastLotRow, columns: 9 },
      repeatedRow: 0,
    },
  });
}

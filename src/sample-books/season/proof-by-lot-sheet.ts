import type { SeasonWords } from "../../words/samples";
import type { Sheet } from "../../workbook/workbook";
import { columnHead, columnHeadLeft, remark, result, title } from "../look";
import { sheetBuilder } from "../sheet-builder";
import { firstLotRow, inLot, lastFollowingRow, lots, yardstick } from "./places";

/** Columns of this sheet that the sheet Proof adds up. */
export const proved = {
  isLot: "B",
  isOpen: "C",
  isLeftOut: "D",
  logOutturn: "E",
  distance: "F",
  zDifference: "I",
  flagDiffers: "L",
  isUnflagged: "M",
  residuals: ["N", "O"],
  terms: ["P", "Q"],
  /** What the book has, brought here. */
  plot: "R",
  fresh: "S",
  finished: "T",
  shares: ["U", "V"],
} as const;

const number = result("0.000000");
const tally = result("0");

/** What the sheet Proof adds up, a row for each lot, by plain arithmetic from the sheet Lots. */
export function proofByLotSheet(said: SeasonWords["byLot"]): Sheet {
  const { put, widths, height, sheet } = sheetBuilder("Proof, lot by lot");
  const headings = Object.entries(said.heads);
  for (const [column, heading] of headings) {
    const isWords = column === "J" || column === "K";
    const style = column === "A" ? columnHeadLeft : isWords ? { ...columnHead, align: "center" as const } : columnHead;
    put(`${column}1`, heading, style);
  }
  // Blanks are told from numbers with ISNUMBER: to some programs a 0 equals an empty text. A row with a mistake in it has
  // an error on the other sheets, and nothing here.
  for (let row = firstLotRow; row <= lastFollowingRow; row += 1) {
    const [plot, fresh, finished] = [proved.plot, proved.fresh, proved.finished].map((column) => `${column}${row}`);
    for (const [index, column] of [lots.plot, lots.fresh, lots.finished].entries()) {
      put(
        `${[proved.plot, proved.fresh, proved.finished][index]}${row}`,
        `=IF(${inLot(column)}="","",${inLot(column)})`,
        tally,
      );
    }
    const isWeight = (cell: string) => `IF(ISNUMBER(${cell}),${cell}>0,FALSE)`;
    const isBlank = (cell: string) => `OR(${cell}="",${cell}=0)`;
    const both = `AND(${isWeight(`${fresh}`)},${isWeight(`${finished}`)})`;
    put(`A${row}`, `=IF(${inLot(lots.number)}="","",${inLot(lots.number)})`, { ...tally, align: "left" });
    put(`B${row}`, `=IF(AND(${both},${plot}<>""),IF(${finished}<=${fresh},1,0),0)`, tally);
    put(`C${row}`, `=IF(AND(${isWeight(`${fresh}`)},${isBlank(`${finished}`)},${plot}<>""),1,0)`, tally);
    put(`D${row}`, `=IF(AND(${isBlank(`${fresh}`)},${isBlank(`${finished}`)}),0,1-B${row}-C${row})`, tally);
    put(`E${row}`, `=IF(${both},LN(${finished}/${fresh}),"")`, number);
    put(`F${row}`, `=IF(ISNUMBER(E${row}),ABS(E${row}-Proof!${yardstick.median}),"")`, number);
    const unit = `Proof!${yardstick.unit}`;
    put(`G${row}`, `=IF(ISNUMBER(E${row}),IF(${unit}=0,0,(E${row}-Proof!${yardstick.median})/${unit}),"")`, number);
    put(`H${row}`, `=IF(ISNUMBER(Flags!D${row}),Flags!D${row},"")`, number);
    put(`I${row}`, `=IF(OR(ISNUMBER(G${row}),ISNUMBER(H${row})),ABS(G${row}-H${row}),"")`, result("0.0E+00"));
    const limit = `Proof!${yardstick.limit}`;
    const far = `IF(G${row}>${limit},"high",IF(G${row}<-${limit},"low",""))`;
    const flag = `IF(${finished}>${fresh},"more out than in",${far})`;
    put(`J${row}`, `=IF(ISNUMBER(G${row}),${flag},"")`, { ...tally, align: "center" });
    put(`K${row}`, `=IF(ISERROR(${inLot(lots.flag)}),"",${inLot(lots.flag)}&"")`, {
      ...tally,
      align: "center",
    });
    put(`L${row}`, `=IF(J${row}=K${row},0,1)`, tally);
    put(`M${row}`, `=IF(AND(B${row}=1,J${row}=""),1,0)`, tally);
    for (const [index, counts] of [proved.isLot, proved.isUnflagged].entries()) {
      const slope = `Proof!${yardstick.slopes[index]}`;
      const residual = `(${finished}-${slope}*${fresh})^2/${fresh}`;
      put(`${proved.residuals[index]}${row}`, `=IF(${counts}${row}=1,${residual},"")`, number);
      put(`${proved.shares[index]}${row}`, `=IF(${counts}${row}=1,${finished}/${fresh},"")`, number);
      put(`${proved.terms[index]}${row}`, `=${term(row, index)}`, number);
    }
  }
  put("X1", said.title, title);
  for (const [index, note] of said.notes.entries()) put(`X${index + 2}`, note, remark);
  widths(5, 5, 6, 8, 11, 11, 12, 12, 10, 18, 18, 8, 10, 11, 11, 10, 10, 12, 9, 9, 11, 11, 3, 90);
  height(1, 24);
  return sheet({
    frozenRows: 1,
    page: {
      paper: "A4",
      landscape: true,
      fitToOnePageWide: true,
      footer: said.footer,
      printArea: { row: 0, column: 0, rows: lastFollowingRow, columns: headings.length },
      repeatedRow: 0,
    },
  });
}

/** Terms of the finite series for Student's t: Abramowitz and Stegun, 26.7.3 and 26.7.4. */
function term(row: number, index: number): string {
  const degrees = `Proof!${yardstick.degrees[index]}`;
  const cosine = `Proof!${yardstick.cosines[index]}`;
  const isOdd = `MOD(${degrees},2)`;
  if (row === firstLotRow) return `IF(${degrees}<2,0,IF(${isOdd}=1,SQRT(${cosine}),1))`;
  const place = `(${isOdd}+${2 * (row - firstLotRow)})`;
  const before = `${proved.terms[index]}${row - 1}`;
  return `IF(${place}>${degrees}-2,0,${before}*${cosine}*(${place}-1)/${place})`;
}

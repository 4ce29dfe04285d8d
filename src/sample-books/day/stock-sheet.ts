import { paidWeight } from "../../core/cautions";
import type { Sheet } from "../../workbook/workbook";
import { answer, columnHead, columnHeadLeft, grams, input, label, percent, remark, result } from "../look";
import { sheetBuilder } from "../sheet-builder";
import { cautions, heading, heads, page } from "./parts";
import { stock } from "./places";

type Row = readonly [
  item: string,
  direction: string,
  weight: number,
  outturn: number | null,
  error: number,
  outturnError: number | null,
];

const opening: Row = ["opening stock", "opening", 1350, null, 1, null];
const out: readonly Row[] = [
  ["sold", "out", 7912, null, 5, null],
  ["given away", "out", 226, null, 1, null],
  ["closing stock", "closing", 2985, null, 1, null],
];
const asTea: readonly Row[] = [opening, ["made", "in", 9784, null, 6, null], ...out];
/** The outturn of the farm's own season, and how well it is known. */
const asLeaf: readonly Row[] = [opening, ["fresh leaf", "in", 46_500, 0.212, 40, 0.002], ...out];

const names = ["Item", "in or out", "weight, g", "outturn", "its error, g", "error of outturn"];

/** The year's book of stock, from the tea that was made and from the leaf that was picked. */
export function stockSheet(): Sheet {
  const builder = sheetBuilder("Stock");
  const { put, widths } = builder;
  heading(builder, "The year's stock: does it add up");
  for (const [rows, { headRow, firstRow, lastRow }] of [
    [asTea, stock.tea],
    [asLeaf, stock.leaf],
  ] as const) {
    heads(builder, headRow, "A", names);
    for (const [index, row] of rows.entries()) bookRow(builder, firstRow + index, row);
    const list = (column: string): string => `${column}${firstRow}:${column}${lastRow}`;
    put(`H${headRow}`, `=TEA.STOCKBALANCE(${["A", "B", "C", "D", "E", "F"].map(list).join(",")})`, columnHeadLeft);
    answers(builder, headRow, lastRow);
  }
  put("A12", "The same year from the leaf, at the farm's own outturn", { bold: true });
  put(
    "H21",
    `="From the tea: "&H${stock.verdictRow}&". From the leaf: "&H${stock.leafVerdictRow}&", within "&TEXT(2*L${stock.leafVerdictRow},"0")&" g: it shows that the tea can come from the leaf, never that it did."`,
    remark,
  );
  cautions(builder, 23, [paidWeight]);
  widths(18, 10, 11, 9, 12, 15, 3, 22, 10, 11, 11, 9, 18);
  return builder.sheet({ page });
}

function bookRow(
  { put }: ReturnType<typeof sheetBuilder>,
  row: number,
  [item, way, weight, ratio, error, ofRatio]: Row,
) {
  put(`A${row}`, item, input());
  put(`B${row}`, way, input());
  put(`C${row}`, weight, input(grams));
  put(`D${row}`, ratio, input("0.000"));
  put(`E${row}`, error, input(grams));
  put(`F${row}`, ofRatio, input("0.0000"));
}

function answers({ styleRest }: ReturnType<typeof sheetBuilder>, headRow: number, lastRow: number): void {
  styleRest(`I${headRow}:M${headRow}`, columnHead);
  styleRest(`H${headRow + 1}:I${lastRow}`, label);
  styleRest(`H${lastRow + 1}`, answer);
  for (const [column, format] of Object.entries({ J: grams, K: grams, L: grams, M: percent })) {
    styleRest(`${column}${headRow + 1}:${column}${lastRow + 1}`, result(format));
  }
}

import { paidWeight } from "../../core/cautions";
import type { DayWords, SampleWords } from "../../words/samples";
import type { Sheet } from "../../workbook/workbook";
import { answer, grams, input, label, percent, remark, result } from "../look";
import { type SheetBuilder, sheetBuilder } from "../sheet-builder";
import { spilledTable } from "../spilled-table";
import { inWords, sayings } from "../words-of-cells";
import { cautions, heading, heads, pageOf } from "./parts";
import { stock } from "./places";

type Direction = keyof DayWords["stock"]["directions"];

type Row = readonly [
  item: string,
  direction: Direction,
  weight: number,
  outturn: number | null,
  error: number,
  outturnError: number | null,
];

function books({ opening, made, freshLeaf, sold, given, closing }: DayWords["stock"]) {
  const before: Row = [opening, "opening", 1350, null, 1, null];
  const out: readonly Row[] = [
    [sold, "out", 7912, null, 5, null],
    [given, "out", 226, null, 1, null],
    [closing, "closing", 2985, null, 1, null],
  ];
  const asTea: readonly Row[] = [before, [made, "in", 9784, null, 6, null], ...out];
  /** The outturn of the farm's own season, and how well it is known. */
  const asLeaf: readonly Row[] = [before, [freshLeaf, "in", 46_500, 0.212, 40, 0.002], ...out];
  return { asTea, asLeaf };
}

/** What the balance says of a year. */
export const verdicts = ["agrees", "more in than out", "more out than in", "not judged: no errors given"] as const;

/** The year's book of stock, from the tea that was made and from the leaf that was picked. */
export function stockSheet(words: SampleWords): Sheet {
  const said = words.day.stock;
  const builder = sheetBuilder("Stock");
  const { put, widths } = builder;
  heading(builder, said.title, words.parts.invented);
  const names = [said.item, said.direction, said.weight, said.outturn, said.error, said.outturnError];
  const { asTea, asLeaf } = books(said);
  for (const [rows, { headRow, firstRow, lastRow }] of [
    [asTea, stock.tea],
    [asLeaf, stock.leaf],
  ] as const) {
    heads(builder, headRow, "A", names);
    for (const [index, row] of rows.entries()) bookRow(builder, firstRow + index, row, said.directions[row[1]]);
    const list = (column: string): string => `${column}${firstRow}:${column}${lastRow}`;
    const given = ["A", "B", "C", "D", "E", "F"].map(list);
    spilledTable(builder, words, { id: "STOCKBALANCE", given, at: `H${headRow}` });
    answers(builder, headRow, lastRow);
  }
  put("A12", said.fromLeaf, { bold: true });
  const verdict = (row: number) => inWords(`H${row}`, sayings(verdicts, words));
  put(
    "H21",
    `=${said.verdicts(verdict(stock.verdictRow), verdict(stock.leafVerdictRow), `TEXT(2*L${stock.leafVerdictRow},"0")`)}`,
    remark,
  );
  cautions(builder, 23, [paidWeight], words);
  widths(18, 10, 11, 9, 12, 15, 3, 22, 10, 11, 11, 9, 18);
  return builder.sheet({ page: pageOf(words.parts) });
}

function bookRow({ put }: SheetBuilder, row: number, [item, , weight, ratio, error, ofRatio]: Row, way: string) {
  put(`A${row}`, item, input());
  put(`B${row}`, way, input());
  put(`C${row}`, weight, input(grams));
  put(`D${row}`, ratio, input("0.000"));
  put(`E${row}`, error, input(grams));
  put(`F${row}`, ofRatio, input("0.0000"));
}

function answers({ styleRest }: SheetBuilder, headRow: number, lastRow: number): void {
  styleRest(`H${headRow + 1}:I${lastRow}`, label);
  styleRest(`H${lastRow + 1}`, answer);
  for (const [column, format] of Object.entries({ J: grams, K: grams, L: grams, M: percent })) {
    styleRest(`${column}${headRow + 1}:${column}${lastRow + 1}`, result(format));
  }
}

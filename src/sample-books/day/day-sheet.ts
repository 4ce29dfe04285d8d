import { carbonMonoxide, hotPan, warmLeaf } from "../../core/cautions";
import type { SampleWords } from "../../words/samples";
import type { Sheet } from "../../workbook/workbook";
import { answer, clock, columnHead, columnHeadLeft, grams, input, label, remark, result, span, whole } from "../look";
import { sheetBuilder } from "../sheet-builder";
import { spilledTable } from "../spilled-table";
import { block, cautions, heading, inputs, pageOf } from "./parts";
import { day } from "./places";

const { headRow, firstRow, lastRow, onePan } = day;
const minute = 1 / 1440;
const at = (hours: number, minutes: number): number => (hours * 60 + minutes) * minute;

/** Late in red, which a number format can do: nothing else in the row has to change for it. */
const late = '[Red][>0.0003][h]:mm;"";""';
const note = "General;General;General;[Red]@";

const given = (pans: string): readonly string[] => [
  day.firstStart,
  day.charges,
  day.firings,
  day.rests,
  pans,
  day.breakStart,
  day.breakEnd,
];
/** With one pan, as rows alone. */
const onePanPlan = `TEA.DAYPLAN(${[...given("1"), "FALSE"].join(",")})`;
const ofPlan = (column: string): string => `${column}${firstRow}:${column}${lastRow}`;
const inTotal = (column: string): string => `=IFERROR(INDEX(${ofPlan(column)},MATCH("total",${ofPlan("E")},0)),"")`;
/** The last row of a plan in one cell: the rounds times the charges, and one. */
const ofOnePan = (column: number): string =>
  `=IFERROR(INDEX(${onePanPlan},${day.charges}*COUNT(${day.firings})+1,${column}),"")`;

/** The day by the pans: when each charge is due, which rests run over, and what a second pan buys. */
export function daySheet(words: SampleWords): Sheet {
  const said = words.day.day;
  const builder = sheetBuilder("Day");
  const { put, styleRest, widths } = builder;
  heading(builder, said.title, words.parts.invented);
  block(builder, "A4", said.there, "B4:C4");
  inputs(builder, 5, [
    [said.leaf, 1680, grams, said.grams],
    [said.panLoad, 280, grams, said.grams],
    [said.maxLoad, 300, grams, said.grams],
    [said.step, 0.5, "0.00", said.grams],
    [said.firstFiring, at(9, 15), clock],
    [said.pans, 2, whole],
    [said.breakFrom, at(12, 45), clock],
    [said.breakTo, at(13, 30), clock],
  ]);
  put("A14", said.rounds, columnHeadLeft);
  put("B14", said.firing, columnHead, said.firingNote);
  put("C14", said.rest, columnHead, said.restNote);
  const rounds = [
    [said.names.first, at(0, 22), at(2, 30)],
    [said.names.second, at(0, 18), at(1, 45)],
    [said.names.last, at(0, 15), null],
  ] as const;
  for (const [index, [name, firing, rest]] of rounds.entries()) {
    put(`A${15 + index}`, name, input());
    put(`B${15 + index}`, firing, input(span));
    put(`C${15 + index}`, rest, input(span));
  }

  put("E4", said.charges, label);
  put(day.charges, `=TEA.CHARGECOUNT(${day.leaf},${day.panLoad},${day.maxLoad},${day.readability})`, {
    ...answer,
    format: whole,
    align: "right",
  });
  put("E5", said.end, label);
  put(day.end, inTotal("J"), { ...answer, format: clock, align: "right" });
  put("E6", said.longest, label);
  put(day.longest, inTotal("K"), result(span));
  put("E7", said.overruns, label);
  put(day.overruns, `=COUNTIFS(${ofPlan("L")},"overruns",${ofPlan("E")},"<>total")`, result(whole));
  put("G7", said.mends, remark);
  put("E9", said.card, answer);
  const left = { ...label, align: "left" } as const;
  spilledTable(builder, words, { id: "DAYPLAN", given: given(day.pans), at: `E${headRow}`, first: left });
  styleRest(ofPlan("E"), left);
  const formats = { F: whole, G: whole, H: clock, I: clock, J: clock, K: late };
  for (const [column, format] of Object.entries(formats)) {
    styleRest(ofPlan(column), { ...result(format), ...(column === "I" && { bold: true }) });
  }
  styleRest(ofPlan("L"), { ...label, format: note });

  block(builder, "E39", said.onePan, "F39:L39");
  put("E40", said.end, label);
  put(onePan.end, ofOnePan(6), result(clock));
  put("E41", said.longest, label);
  put(onePan.longest, ofOnePan(7), result(span));
  put("E42", said.overruns, label);
  put(
    onePan.overruns,
    `=IFERROR(SUMPRODUCT(--(INDEX(${onePanPlan},0,8)="overruns"))-(${onePan.longest}>0),"")`,
    result(whole),
    said.flaggedToo,
  );
  put("G40", said.secondPan, remark);
  cautions(builder, 44, [hotPan, carbonMonoxide, warmLeaf], words);
  widths(21, 10, 11, 3, 20, 10, 8, 10, 10, 10, 10, 12);
  return builder.sheet({ page: { ...pageOf(words.parts), printArea: { row: 0, column: 0, rows: 47, columns: 12 } } });
}

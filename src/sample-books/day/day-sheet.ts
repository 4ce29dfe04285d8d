import { carbonMonoxide, hotPan, warmLeaf } from "../../core/cautions";
import type { Sheet } from "../../workbook/workbook";
import { answer, clock, columnHead, columnHeadLeft, grams, input, label, remark, result, span, whole } from "../look";
import { sheetBuilder } from "../sheet-builder";
import { block, cautions, heading, inputs, page } from "./parts";
import { day } from "./places";

const { headRow, firstRow, lastRow, onePan } = day;
const minute = 1 / 1440;
const at = (hours: number, minutes: number): number => (hours * 60 + minutes) * minute;

/** Late in red, which a number format can do: nothing else in the row has to change for it. */
const late = '[Red][>0.0003][h]:mm;"";""';
const note = "General;General;General;[Red]@";

const given = (pans: string): string =>
  [day.firstStart, day.charges, day.firings, day.rests, pans, day.breakStart, day.breakEnd].join(",");
const ofPlan = (column: string): string => `${column}${firstRow}:${column}${lastRow}`;
const inTotal = (column: string): string => `=IFERROR(INDEX(${ofPlan(column)},MATCH("total",${ofPlan("E")},0)),"")`;
/** The last row of a plan in one cell: the rounds times the charges, and one. */
const ofOnePan = (column: number): string =>
  `=IFERROR(INDEX(TEA.DAYPLAN(${given("1")},FALSE),${day.charges}*COUNT(${day.firings})+1,${column}),"")`;

/** The day by the pans: when each charge is due, which rests run over, and what a second pan buys. */
export function daySheet(): Sheet {
  const builder = sheetBuilder("Day");
  const { put, styleRest, widths } = builder;
  heading(builder, "The day by the pans");
  block(builder, "A4", "What there is", "B4:C4");
  inputs(builder, 5, [
    ["Leaf for the pan", 1680, grams, "g"],
    ["Pan load wanted", 280, grams, "g"],
    ["No charge above", 300, grams, "g"],
    ["Step of the scale", 0.5, "0.00", "g"],
    ["First firing", at(9, 15), clock],
    ["Pans tended at once", 2, whole],
    ["Break from", at(12, 45), clock],
    ["Break to", at(13, 30), clock],
  ]);
  put("A14", "Rounds", columnHeadLeft);
  put("B14", "firing", columnHead, "How long one firing takes, with loading and brushing: 0:22 is twenty-two minutes.");
  put("C14", "rest after", columnHead, "The least wrap or rest after it; none after the last.");
  const rounds = [
    ["first firing", at(0, 22), at(2, 30)],
    ["second firing", at(0, 18), at(1, 45)],
    ["last firing", at(0, 15), null],
  ] as const;
  for (const [index, [name, firing, rest]] of rounds.entries()) {
    put(`A${15 + index}`, name, input());
    put(`B${15 + index}`, firing, input(span));
    put(`C${15 + index}`, rest, input(span));
  }

  put("E4", "Charges", label);
  put(day.charges, `=TEA.CHARGECOUNT(${day.leaf},${day.panLoad},${day.maxLoad},${day.readability})`, {
    ...answer,
    format: whole,
    align: "right",
  });
  put("E5", "End of the day", label);
  put(day.end, inTotal("J"), { ...answer, format: clock, align: "right" });
  put("E6", "Longest overrun", label);
  put(day.longest, inTotal("K"), result(span));
  put("E7", "Rests that overrun", label);
  put(day.overruns, `=COUNTIFS(${ofPlan("L")},"overruns",${ofPlan("E")},"<>total")`, result(whole));
  put("G7", "Late and overruns stand in red. Fewer charges, another pan or another break mend them.", remark);
  put("E9", "The card by the pans", answer);
  put(`E${headRow}`, `=TEA.DAYPLAN(${given(day.pans)})`, columnHeadLeft);
  styleRest(`F${headRow}:L${headRow}`, columnHead);
  styleRest(ofPlan("E"), { ...label, align: "left" });
  const formats = { F: whole, G: whole, H: clock, I: clock, J: clock, K: late };
  for (const [column, format] of Object.entries(formats)) {
    styleRest(ofPlan(column), { ...result(format), ...(column === "I" && { bold: true }) });
  }
  styleRest(ofPlan("L"), { ...label, format: note });

  block(builder, "E39", "With one pan only", "F39:L39");
  put("E40", "End of the day", label);
  put(onePan.end, ofOnePan(6), result(clock));
  put("E41", "Longest overrun", label);
  put(onePan.longest, ofOnePan(7), result(span));
  put("E42", "Rests that overrun", label);
  put(
    onePan.overruns,
    `=IFERROR(SUMPRODUCT(--(INDEX(TEA.DAYPLAN(${given("1")},FALSE),0,8)="overruns"))-(${onePan.longest}>0),"")`,
    result(whole),
    "The total is flagged too: it is taken off.",
  );
  put("G40", "What a second pan buys stands above: the earlier end, and the rests that keep their time.", remark);
  cautions(builder, 44, [hotPan, carbonMonoxide, warmLeaf]);
  widths(21, 10, 11, 3, 20, 10, 8, 10, 10, 10, 10, 12);
  return builder.sheet({ page: { ...page, printArea: { row: 0, column: 0, rows: 47, columns: 12 } } });
}

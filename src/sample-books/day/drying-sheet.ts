import { carbonMonoxide, dust, hotPan } from "../../core/cautions";
import type { DayWords, SampleWords } from "../../words/samples";
import type { Chart, Sheet } from "../../workbook/workbook";
import { answer, clock, grams, input, percent, remark, result, unit } from "../look";
import { sheetBuilder } from "../sheet-builder";
import { block, cautions, heading, heads, inputs, pageOf } from "./parts";
import { drying, on } from "./places";

const { firstRow, lastRow, forecastRow, openRow } = drying;
const readings = [
  [0, 420],
  [20, 381.5],
  [40, 351],
  [60, 327.5],
  [80, 309.5],
] as const;
const nine = 9 / 24;

/** The last drying: timed weights, when the target will be reached, and the curve. */
export function dryingSheet(words: SampleWords): Sheet {
  const said = words.day.drying;
  const builder = sheetBuilder("Drying");
  const { put, styleRest, widths } = builder;
  heading(builder, said.title, words.parts.invented);
  inputs(builder, 4, [
    [said.start, 420, grams, said.grams],
    [said.startMoisture, 0.4, percent],
    [said.wantedMoisture, 0.05, percent],
    [said.endMoisture, 0.025, percent],
  ]);
  put("A8", said.wanted, { bold: true });
  put(drying.targetWeight, `=TEA.TARGETWEIGHT(${drying.weight},${drying.moisture},${drying.target})`, {
    ...answer,
    format: grams,
    align: "right",
  });
  put("C8", said.grams, unit);
  put("A9", said.end);
  put(drying.endWeight, `=TEA.TARGETWEIGHT(${drying.weight},${drying.moisture},${drying.endMoisture})`, result(grams));
  put("C9", said.grams, unit);
  heads(builder, 10, "A", [said.time, said.weight]);
  for (let row = firstRow; row <= lastRow; row += 1) {
    const reading = readings[row - firstRow];
    put(`A${row}`, reading ? nine + reading[0] / 1440 : null, { ...input(clock), align: "left" });
    put(`B${row}`, reading?.[1] ?? null, input(grams));
  }
  put("A24", said.forChart, remark);
  put("A25", `=IF(ISNUMBER(A${firstRow}),A${firstRow},"")`, { ...result(clock), align: "left" });
  put("A26", `=MAX(A${firstRow}:A${lastRow},E${forecastRow}:G${forecastRow})`, { ...result(clock), align: "left" });
  for (const row of [25, 26]) put(`B${row}`, `=IF(ISNUMBER(${drying.targetWeight}),$B$8,"")`, result(grams));
  const lists = `A${firstRow}:A${lastRow},B${firstRow}:B${lastRow},${drying.targetWeight}`;
  block(builder, "E3", said.when, "F3:H3");
  heads(builder, 4, "E", [said.early, said.likely, said.late, said.endWeight]);
  put(`E${forecastRow}`, `=TEA.DRYINGTIME(${lists},${drying.endWeight})`, { ...answer, format: clock, align: "left" });
  styleRest(`F${forecastRow}:G${forecastRow}`, { ...answer, format: clock, align: "right" });
  styleRest(`H${forecastRow}`, result(grams));
  put("E7", said.without, remark);
  put(`E${openRow}`, `=TEA.DRYINGTIME(${lists})`, { ...result(clock), align: "left" });
  styleRest(`F${openRow}:G${openRow}`, result(clock));
  styleRest(`H${openRow}`, result(grams));
  put("E9", said.withoutSays, remark);
  cautions(builder, 31, [dust, hotPan, carbonMonoxide], words);
  widths(24, 11, 9, 3, 12, 12, 12, 13);
  return builder.sheet({ page: pageOf(words.parts), charts: [curve(said.chart)] });
}

const curve = (said: DayWords["drying"]["chart"]): Chart => ({
  kind: "dots",
  title: said.title,
  description: said.description,
  area: { row: 10, column: 4, rows: 19, columns: 6 },
  series: [
    {
      name: said.weighed,
      across: on("Drying", `A${firstRow}:A${lastRow}`),
      up: on("Drying", `B${firstRow}:B${lastRow}`),
      color: "#2e5e4e",
    },
    {
      name: said.wanted,
      across: on("Drying", "A25:A26"),
      up: on("Drying", "B25:B26"),
      color: "#b3261e",
    },
  ],
  across: { title: said.time, format: "hh:mm" },
  up: { title: said.weight, format: "0" },
});

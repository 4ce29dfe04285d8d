import { carbonMonoxide, dust, hotPan } from "../../core/cautions";
import type { Chart, Sheet } from "../../workbook/workbook";
import { answer, clock, grams, input, percent, remark, result, unit } from "../look";
import { sheetBuilder } from "../sheet-builder";
import { block, cautions, heading, heads, inputs, page } from "./parts";
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
export function dryingSheet(): Sheet {
  const builder = sheetBuilder("Drying");
  const { put, styleRest, widths } = builder;
  heading(builder, "The last drying: when will it be ready");
  inputs(builder, 4, [
    ["Weight at the start", 420, grams, "g"],
    ["Moisture at the start", 0.4, percent],
    ["Moisture wanted", 0.05, percent],
    ["Moisture it would end at", 0.025, percent],
  ]);
  put("A8", "Weight wanted", { bold: true });
  put(drying.targetWeight, `=TEA.TARGETWEIGHT(${drying.weight},${drying.moisture},${drying.target})`, {
    ...answer,
    format: grams,
    align: "right",
  });
  put("C8", "g", unit);
  put("A9", "Weight it would end at");
  put(drying.endWeight, `=TEA.TARGETWEIGHT(${drying.weight},${drying.moisture},${drying.endMoisture})`, result(grams));
  put("C9", "g", unit);
  heads(builder, 10, "A", ["Time", "Weight, g"]);
  for (let row = firstRow; row <= lastRow; row += 1) {
    const reading = readings[row - firstRow];
    put(`A${row}`, reading ? nine + reading[0] / 1440 : null, { ...input(clock), align: "left" });
    put(`B${row}`, reading?.[1] ?? null, input(grams));
  }
  put("A24", "For the chart: the weight wanted, from the first time to the latest", remark);
  put("A25", `=IF(ISNUMBER(A${firstRow}),A${firstRow},"")`, { ...result(clock), align: "left" });
  put("A26", `=MAX(A${firstRow}:A${lastRow},E${forecastRow}:G${forecastRow})`, { ...result(clock), align: "left" });
  for (const row of [25, 26]) put(`B${row}`, `=IF(ISNUMBER(${drying.targetWeight}),$B$8,"")`, result(grams));
  const lists = `A${firstRow}:A${lastRow},B${firstRow}:B${lastRow},${drying.targetWeight}`;
  block(builder, "E3", "When it will weigh what is wanted", "F3:H3");
  heads(builder, 4, "E", ["early", "likely", "late", "end weight"]);
  put(`E${forecastRow}`, `=TEA.DRYINGTIME(${lists},${drying.endWeight})`, { ...answer, format: clock, align: "left" });
  styleRest(`F${forecastRow}:G${forecastRow}`, { ...answer, format: clock, align: "right" });
  styleRest(`H${forecastRow}`, result(grams));
  put("E7", "The same without the weight it would end at", remark);
  put(`E${openRow}`, `=TEA.DRYINGTIME(${lists})`, { ...result(clock), align: "left" });
  styleRest(`F${openRow}:G${openRow}`, result(clock));
  styleRest(`H${openRow}`, result(grams));
  put(
    "E9",
    "It takes the end weight from the readings alone, which have not slowed down far yet: trust early only.",
    remark,
  );
  cautions(builder, 31, [dust, hotPan, carbonMonoxide]);
  widths(24, 11, 9, 3, 12, 12, 12, 13);
  return builder.sheet({ page, charts: [curve()] });
}

const curve = (): Chart => ({
  kind: "dots",
  title: "Weight as it dries",
  description:
    "A dot for each weighing, its weight above its time, falling more slowly from one to the next; two dots of another colour at the height of the weight wanted, at the first time and at the latest of the forecast.",
  area: { row: 10, column: 4, rows: 19, columns: 6 },
  series: [
    {
      name: "weighed",
      across: on("Drying", `A${firstRow}:A${lastRow}`),
      up: on("Drying", `B${firstRow}:B${lastRow}`),
      color: "#2e5e4e",
    },
    {
      name: "wanted",
      across: on("Drying", "A25:A26"),
      up: on("Drying", "B25:B26"),
      color: "#b3261e",
    },
  ],
  across: { title: "time", format: "hh:mm" },
  up: { title: "weight, g", format: "0" },
});

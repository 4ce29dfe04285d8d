import type { Sheet } from "../../workbook/workbook";
import { heading, page } from "../day/parts";
import { on } from "../day/places";
import { proofLines } from "../proof-lines";
import { sheetBuilder } from "../sheet-builder";
import { conversions, losses, oven, scale } from "./places";

const onOven = (reference: string): string => on("Oven", reference);
const onScale = (reference: string): string => on("Scale", reference);
const onLosses = (reference: string): string => on("Losses", reference);
const onConversions = (reference: string): string => on("Conversions", reference);

const moistures = onOven(`D${oven.firstRow}:D${oven.lastRow}`);
const readings = onScale(`B${scale.firstRow}:B${scale.lastRow}`);
const halfWidth = (list: string): string => `TINV(1/20,COUNT(${list})-1)*STDEV(${list})/SQRT(COUNT(${list}))`;
const mean = (column: string): string => onOven(`${column}${oven.meanRow}`);
const [needed, wanted] = [mean("L"), onOven(oven.halfWidth)];
const [W, M, l] = [losses.weight, losses.moisture, losses.loss].map(onLosses) as [string, string, string];
const [d, a, n] = [scale.readability, scale.accuracy, scale.readings].map(onScale) as [string, string, string];
const s = `STDEV(${readings})`;
/** What the step of the display adds to the scatter, squared. */
const step = `(${d}^2/12*MAX(0,1-5.5*(${s}/${d})^2)^2)`;
const error = (times: number, count: string): string => `SQRT(${times}*(${step}+${s}^2/${count})+${a}^2/3)`;

/** The same answers by plain formulas. */
export function proofSheet(): Sheet {
  const builder = sheetBuilder("Proof");
  heading(
    builder,
    "Proof",
    "The same answers by plain formulas, from what is typed on each sheet, without one TEA function.",
  );
  proofLines(builder, [
    ...[0, 1, 2, 3].map((index) => {
      const row = oven.firstRow + index;
      const [dish, full, dried] = ["A", "B", "C"].map((column) => onOven(`${column}${row}`));
      return [`Moisture of dish ${index + 1}`, onOven(`D${row}`), `(${full}-${dried})/(${full}-${dish})`] as const;
    }),
    ["Mean that the dishes agree on", onOven("I5"), `AVERAGE(${moistures})`],
    ["Mean of the basket", mean("F"), `AVERAGE(${moistures})`],
    ["Its low end", mean("G"), `AVERAGE(${moistures})-${halfWidth(moistures)}`],
    ["Its high end", mean("H"), `AVERAGE(${moistures})+${halfWidth(moistures)}`],
    ["Its standard error", mean("I"), `STDEV(${moistures})/SQRT(COUNT(${moistures}))`],
    [
      "Dishes needed: enough, and one fewer is not",
      needed,
      `IF(TINV(1/20,${needed}-1)*STDEV(${moistures})<=${wanted}*SQRT(${needed}),IF(TINV(1/20,MAX(1,${needed}-2))*STDEV(${moistures})>${wanted}*SQRT(${needed}-1),${needed},0),0)`,
    ],
    ["Mean of the bag", onScale("E5"), `AVERAGE(${readings})`],
    ["Scatter of one reading", onScale("I5"), s],
    ["Error of one reading", onScale("I9"), error(1, "1")],
    ["Error of one reading, dish tared", onScale("I10"), error(2, "1")],
    ["Error of the mean of several", onScale("I11"), error(1, n)],
    ["Loss of the water", onLosses("F5"), `${W}*(1-${M}*${l})`],
    ["Loss of the weight", onLosses("F6"), `${W}*(1-${l})`],
    ["Loss in points", onLosses("F7"), `${W}*(1-${M})/(1-${M}+${l})`],
    ["Moisture after the loss in points", onLosses("H7"), `${M}-${l}`],
    ["Dry basis of the fourth moisture", onConversions("B9"), `${onConversions("A9")}/(1-${onConversions("A9")})`],
    ["A jin", onConversions(`D${conversions.firstWeight}`), `${onConversions(`A${conversions.firstWeight}`)}*500`],
    ["A hectare in mu", onConversions(`D${conversions.firstArea}`), `${onConversions(`A${conversions.firstArea}`)}*15`],
  ]);
  return builder.sheet({ page });
}

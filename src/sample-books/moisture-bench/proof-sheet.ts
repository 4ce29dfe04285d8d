import type { SampleWords } from "../../words/samples";
import type { Sheet } from "../../workbook/workbook";
import { heading, pageOf } from "../day/parts";
import { on } from "../day/places";
import { type ProofLine, proofLines } from "../proof-lines";
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
export function proofSheet(words: SampleWords): Sheet {
  const said = words.bench.proof;
  const builder = sheetBuilder("Proof");
  heading(builder, words.parts.proof.title, words.parts.proof.says);
  const lines: ProofLine[] = [
    ...[0, 1, 2, 3].map((index) => {
      const row = oven.firstRow + index;
      const [dish, full, dried] = ["A", "B", "C"].map((column) => onOven(`${column}${row}`));
      return [said.dish(index + 1), onOven(`D${row}`), `(${full}-${dried})/(${full}-${dish})`] as const;
    }),
    [said.agreed, onOven("I5"), `AVERAGE(${moistures})`],
    [said.basket, mean("F"), `AVERAGE(${moistures})`],
    [said.low, mean("G"), `AVERAGE(${moistures})-${halfWidth(moistures)}`],
    [said.high, mean("H"), `AVERAGE(${moistures})+${halfWidth(moistures)}`],
    [said.error, mean("I"), `STDEV(${moistures})/SQRT(COUNT(${moistures}))`],
    [
      said.needed,
      needed,
      `IF(TINV(1/20,${needed}-1)*STDEV(${moistures})<=${wanted}*SQRT(${needed}),IF(TINV(1/20,MAX(1,${needed}-2))*STDEV(${moistures})>${wanted}*SQRT(${needed}-1),${needed},0),0)`,
    ],
    [said.bag, onScale("E5"), `AVERAGE(${readings})`],
    [said.scatter, onScale("I5"), s],
    [said.oneError, onScale("I9"), error(1, "1")],
    [said.taredError, onScale("I10"), error(2, "1")],
    [said.severalError, onScale("I11"), error(1, n)],
    [said.ofWater, onLosses("F5"), `${W}*(1-${M}*${l})`],
    [said.ofWeight, onLosses("F6"), `${W}*(1-${l})`],
    [said.inPoints, onLosses("F7"), `${W}*(1-${M})/(1-${M}+${l})`],
    [said.moistureThen, onLosses("H7"), `${M}-${l}`],
    [said.dryBasis, onConversions("B9"), `${onConversions("A9")}/(1-${onConversions("A9")})`],
    [said.jin, onConversions(`D${conversions.firstWeight}`), `${onConversions(`A${conversions.firstWeight}`)}*500`],
    [said.hectare, onConversions(`D${conversions.firstArea}`), `${onConversions(`A${conversions.firstArea}`)}*15`],
  ];
  proofLines(builder, lines, words.parts);
  return builder.sheet({ page: pageOf(words.parts) });
}

import type { SampleWords } from "../../words/samples";
import type { Sheet } from "../../workbook/workbook";
import { answer, grams, input, label, percent, remark, result, span, unit, whole } from "../look";
import { sheetBuilder } from "../sheet-builder";
import { block, heading, heads, inputs, pageOf } from "./parts";
import { picking } from "./places";

const { firstRow, lastRow, budsRow, meanRow } = picking;
const samples = [
  [100, 9.1],
  [100, 8.8],
  [120, 10.9],
  [80, 7],
] as const;

/** How many buds a wanted weight of tea takes, and how well the samples know it. */
export function pickingSheet(words: SampleWords): Sheet {
  const said = words.day.picking;
  const builder = sheetBuilder("Picking");
  const { put, styleRest, widths } = builder;
  heading(builder, said.title, words.parts.invented);
  heads(builder, 4, "A", [said.counted, said.weight, said.hundred]);
  for (let row = firstRow; row <= lastRow; row += 1) {
    const sample = samples[row - firstRow];
    put(`A${row}`, sample?.[0] ?? null, { ...input(whole), align: "left" });
    put(`B${row}`, sample?.[1] ?? null, input(grams));
    put(`C${row}`, `=IF(AND(ISNUMBER(A${row}),ISNUMBER(B${row})),100*B${row}/A${row},"")`, result("0.00"));
  }
  block(builder, "A13", said.wanted, "B13:C13");
  inputs(builder, 14, [
    [said.tea, 400, grams, said.grams],
    [said.leafMoisture, 0.77, percent],
    [said.teaMoisture, 0.05, percent],
    [said.dryLoss, 0.03, percent],
    [said.rate, 2400, whole],
    [said.know, 0.1, "0.00", said.grams],
  ]);
  put("E4", said.fresh, label);
  put(
    picking.fresh,
    `=TEA.FRESHNEEDED(${picking.finished},${picking.freshMoisture},${picking.finishedMoisture},${picking.dryLoss})`,
    { ...answer, format: grams, align: "right" },
  );
  put("G4", said.grams, unit);
  heads(builder, budsRow - 1, "E", [said.ofHundred, said.low, said.buds, said.high, said.time]);
  put(
    `E${budsRow}`,
    `=TEA.BUDCOUNT(A${firstRow}:A${lastRow},B${firstRow}:B${lastRow},${picking.fresh},${picking.rate})`,
    { ...result("0.00"), align: "left" },
  );
  styleRest(`F${budsRow}:H${budsRow}`, result(whole));
  styleRest(`I${budsRow}`, result(span));
  put("E8", said.range, remark);
  const { mean, low, high, error, scatter, readings, needed } = said;
  heads(builder, meanRow - 1, "E", [mean, low, high, error, scatter, readings, needed]);
  put(`E${meanRow}`, `=TEA.SAMPLEMEAN(C${firstRow}:C${lastRow},${picking.halfWidth})`, {
    ...result("0.00"),
    align: "left",
  });
  styleRest(`F${meanRow}:I${meanRow}`, result("0.00"));
  styleRest(`J${meanRow}:K${meanRow}`, result(whole));
  put("E11", said.neededSays, remark);
  widths(27, 11, 12, 3, 22, 10, 11, 14, 13, 10, 9);
  return builder.sheet({ page: pageOf(words.parts) });
}

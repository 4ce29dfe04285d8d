import type { Sheet } from "../../workbook/workbook";
import { answer, grams, input, label, percent, remark, result, span, unit, whole } from "../look";
import { sheetBuilder } from "../sheet-builder";
import { block, heading, heads, inputs, page } from "./parts";
import { picking } from "./places";

const { firstRow, lastRow, budsRow, meanRow } = picking;
const samples = [
  [100, 9.1],
  [100, 8.8],
  [120, 10.9],
  [80, 7],
] as const;

/** How many buds a wanted weight of tea takes, and how well the samples know it. */
export function pickingSheet(): Sheet {
  const builder = sheetBuilder("Picking");
  const { put, styleRest, widths } = builder;
  heading(builder, "Picking: how many buds it takes");
  heads(builder, 4, "A", ["Buds counted", "Weight, g", "100 buds, g"]);
  for (let row = firstRow; row <= lastRow; row += 1) {
    const sample = samples[row - firstRow];
    put(`A${row}`, sample?.[0] ?? null, { ...input(whole), align: "left" });
    put(`B${row}`, sample?.[1] ?? null, input(grams));
    put(`C${row}`, `=IF(AND(ISNUMBER(A${row}),ISNUMBER(B${row})),100*B${row}/A${row},"")`, result("0.00"));
  }
  block(builder, "A13", "What is wanted", "B13:C13");
  inputs(builder, 14, [
    ["Finished tea", 400, grams, "g"],
    ["Moisture of the leaf", 0.77, percent],
    ["Moisture of the tea", 0.05, percent],
    ["Dry matter lost", 0.03, percent],
    ["Buds picked an hour, all", 2400, whole],
    ["Know 100 buds to, either way", 0.1, "0.00", "g"],
  ]);
  put("E4", "Fresh leaf that it takes", label);
  put(
    picking.fresh,
    `=TEA.FRESHNEEDED(${picking.finished},${picking.freshMoisture},${picking.finishedMoisture},${picking.dryLoss})`,
    { ...answer, format: grams, align: "right" },
  );
  put("G4", "g", unit);
  heads(builder, budsRow - 1, "E", ["weight of 100", "low", "buds", "high", "picking time"]);
  put(
    `E${budsRow}`,
    `=TEA.BUDCOUNT(A${firstRow}:A${lastRow},B${firstRow}:B${lastRow},${picking.fresh},${picking.rate})`,
    { ...result("0.00"), align: "left" },
  );
  styleRest(`F${budsRow}:H${budsRow}`, result(whole));
  styleRest(`I${budsRow}`, result(span));
  put("E8", "The range is what the samples scatter. Buds grow heavier within days: count anew for each flush.", remark);
  heads(builder, meanRow - 1, "E", ["mean", "low", "high", "standard error", "scatter", "readings", "needed"]);
  put(`E${meanRow}`, `=TEA.SAMPLEMEAN(C${firstRow}:C${lastRow},${picking.halfWidth})`, {
    ...result("0.00"),
    align: "left",
  });
  styleRest(`F${meanRow}:I${meanRow}`, result("0.00"));
  styleRest(`J${meanRow}:K${meanRow}`, result(whole));
  put(
    "E11",
    "Needed takes the scatter seen so far as the true one: take half of what is asked, and ask again.",
    remark,
  );
  widths(27, 11, 12, 3, 22, 10, 11, 14, 13, 10, 9);
  return builder.sheet({ page });
}

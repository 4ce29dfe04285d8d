import { dust, paidWeight, saleLimit } from "../../core/cautions";
import type { Sheet } from "../../workbook/workbook";
import { answer, grams, input, label, percent, remark, result, section, whole } from "../look";
import { sheetBuilder } from "../sheet-builder";
import { block, cautions, heading, heads, inputs, page } from "./parts";
import { packing } from "./places";

const { firstSize, lastSize, firstNet, lastNet, planRow, checkRow } = packing;
const sizes = [
  [50, 30],
  [20, null],
] as const;
const netWeights = [50.1, 49.8, 50.3, 50, 49.9, 50.2, 50.1, 49.7, 50.4, 50, 50.1, 50.2] as const;

/** As read on gov.uk; a maker elsewhere looks up another. */
const tolerances = [
  ["5 to 50 g", "9 %"],
  ["50 to 100 g", "4.5 g"],
  ["100 to 200 g", "4.5 %"],
  ["200 to 300 g", "9 g"],
  ["300 to 500 g", "3 %"],
] as const;

/** From the tray into the tins: what to fill, how many, and how they came out. */
export function packingSheet(): Sheet {
  const builder = sheetBuilder("Packing");
  const { put, styleRest, widths } = builder;
  heading(builder, "From the tray into the tins");
  inputs(builder, 4, [
    ["Finished tea", 1842.6, grams, "g"],
    ["Moisture when filled", null, percent],
    ["Lowest it may fall to", null, percent],
    ["Scatter of one fill", 0.15, "0.00", "g"],
    ["Share that should hold it", 0.95, "0%"],
    ["Step of the scale", 0.1, "0.00", "g"],
  ]);
  put("C5", "leave both blank unless yours dries out", remark);
  heads(builder, 11, "A", ["Sizes, g", "how many"]);
  for (let row = firstSize; row <= lastSize; row += 1) {
    const size = sizes[row - firstSize];
    put(`A${row}`, size?.[0] ?? null, { ...input(grams), align: "left" });
    put(`B${row}`, size?.[1] ?? null, input(whole));
  }
  put("C13", "blank: as many as fit", remark);
  inputs(builder, 15, [
    ["The tins state", 50, grams, "g"],
    ["Tolerance", 4.5, grams, "g"],
    ["Tins in all", null, whole],
  ]);
  put("C17", "blank: those weighed are all", remark);
  heads(builder, 19, "A", ["Net weights, g"]);
  for (let row = firstNet; row <= lastNet; row += 1) {
    put(`A${row}`, netWeights[row - firstNet] ?? null, { ...input(grams), align: "left" });
  }

  block(builder, "E3", "What to fill", "F3:J3");
  const details = [packing.moisture, packing.driest, packing.scatter, packing.confidence, packing.readability];
  put(
    `E${planRow}`,
    `=TEA.PACKPLAN(${[packing.finished, `A${firstSize}:A${lastSize}`, `B${firstSize}:B${lastSize}`, ...details].join(",")})`,
    { ...section, border: "bottom" },
  );
  styleRest(`F${planRow}:J${planRow}`, { bold: true, align: "right", border: "bottom" });
  styleRest(`E${planRow + 1}:E${planRow + 4}`, { ...label, format: grams, align: "left" });
  for (const [column, format] of Object.entries({ F: grams, G: whole, H: whole, I: grams, J: grams })) {
    styleRest(`${column}${planRow + 1}:${column}${planRow + 4}`, result(format));
  }
  block(builder, "E18", "How they came out", "F18:J18");
  heads(builder, checkRow - 1, "E", ["verdict", "mean", "limit", "scatter", "short", "far short"]);
  put(
    `E${checkRow}`,
    `=TEA.PACKCHECK(A${firstNet}:A${lastNet},${packing.nominal},${packing.tolerance},${packing.packages})`,
    answer,
  );
  styleRest(`F${checkRow}:G${checkRow}`, result("0.00"));
  styleRest(`H${checkRow}`, result("0.00"));
  styleRest(`I${checkRow}:J${checkRow}`, result(whole));
  put(
    "E21",
    "Your own check on your own scale, never a ruling: it says of no package that it is fit for sale.",
    remark,
  );
  block(builder, "E23", "Tolerances in the United Kingdom, as gov.uk states them; yours may differ", "F23:J23");
  for (const [index, [size, tolerance]] of tolerances.entries()) {
    put(`E${24 + index}`, size, label);
    put(`F${24 + index}`, tolerance, { ...label, align: "right" });
  }
  put(
    "E29",
    "A percentage is rounded up to 0.1 g. Not more than 2.5 % short by more, none by more than twice.",
    remark,
  );
  cautions(builder, 33, [paidWeight, saleLimit, dust]);
  widths(25, 11, 10, 3, 34, 11, 11, 10, 11, 14);
  return builder.sheet({ page });
}

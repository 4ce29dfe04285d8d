import { hotPan, saleLimit } from "../../core/cautions";
import { namespace } from "../../core/namespace";
import type { Sheet } from "../../workbook/workbook";
import { block, cautions, heading, heads, inputs, page } from "../day/parts";
import { answer, columnHead, columnHeadLeft, grams, input, label, percent, remark, result, whole } from "../look";
import { sheetBuilder } from "../sheet-builder";
import { conversions, losses, oven, scale } from "./places";

const fine = "0.000";

/** Dishes of one basket in the oven: do they agree, and how well is the basket known. */
export function ovenSheet(): Sheet {
  const builder = sheetBuilder("Oven");
  const { put, styleRest, widths } = builder;
  heading(builder, "The oven: dishes of one basket");
  const { firstRow, lastRow } = oven;
  inputs(builder, 4, [
    ["They may differ by, for two", 0.01, percent],
    ["Know the moisture to, either way", 0.004, "0.00%"],
  ]);
  put("C4", "one point for fresh leaf, this farm's own", remark);
  heads(builder, 6, "A", ["Dish, g", "with leaf, g", "dried, g", "moisture"]);
  const dishes = [
    [31.412, 41.506, 33.701],
    [30.988, 41.034, 33.242],
    [31.733, 41.802, 34.019],
    [31.102, 41.191, 33.427],
  ] as const;
  for (let row = firstRow; row <= lastRow; row += 1) {
    const dish = dishes[row - firstRow];
    put(`A${row}`, dish?.[0] ?? null, { ...input(fine), align: "left" });
    put(`B${row}`, dish?.[1] ?? null, input(fine));
    put(`C${row}`, dish?.[2] ?? null, input(fine));
    put(`D${row}`, `=IF(COUNT(A${row}:C${row})=3,TEA.OVENMOISTURE(B${row},C${row},A${row}),"")`, result("0.00%"));
  }
  const list = `D${firstRow}:D${lastRow}`;
  block(builder, "F4", "The basket", "G4:L4");
  put("F5", "Mean, when the dishes agree", label);
  put("I5", `=TEA.OVENMEAN(${list},${oven.limit})`, { ...answer, format: "0.00%", align: "right" });
  heads(builder, 7, "F", ["mean", "low", "high", "standard error", "scatter", "dishes", "needed"]);
  put(`F${oven.meanRow}`, `=TEA.SAMPLEMEAN(${list},${oven.halfWidth})`, { ...result("0.00%"), align: "left" });
  styleRest(`G${oven.meanRow}:J${oven.meanRow}`, result("0.00%"));
  styleRest(`K${oven.meanRow}:L${oven.meanRow}`, result(whole));
  put("F9", "The standard error is the freshMoistureError of FINISHEDBAND and FINISHEDCHECK.", remark);
  put(
    "F10",
    "It says nothing of what all dishes share: an oven that is too cool, a basket that was not mixed.",
    remark,
  );
  cautions(builder, 15, [hotPan, saleLimit]);
  widths(30, 12, 11, 11, 3, 11, 11, 11, 14, 11, 9, 9);
  return builder.sheet({ page });
}

/** One bag ten times on the scale: how it scatters, and what error a weight then has. */
export function scaleSheet(): Sheet {
  const builder = sheetBuilder("Scale");
  const { put, styleRest, widths } = builder;
  const { firstRow, lastRow } = scale;
  heading(builder, "The scale: one bag, ten times");
  heads(builder, 4, "A", ["Reading", "g"]);
  const readings = [250.1, 250.2, 250.1, 250.0, 250.1, 250.2, 250.1, 250.1, 250.0, 250.2];
  for (let row = firstRow; row <= lastRow; row += 1) {
    put(`A${row}`, row - firstRow + 1, { ...label, align: "left" });
    put(`B${row}`, readings[row - firstRow] ?? null, input(grams));
  }
  inputs(builder, 16, [
    ["Step of the scale", 0.1, "0.00", "g"],
    ["It may be off by, either way", 0.2, "0.00", "g"],
    ["Readings averaged later", 3, whole],
  ]);
  heads(builder, 4, "E", ["mean", "low", "high", "standard error", "scatter", "readings"]);
  put("E5", `=TEA.SAMPLEMEAN(B${firstRow}:B${lastRow})`, { ...result("0.00"), align: "left" });
  styleRest("F5:I5", result(fine));
  styleRest("J5", result(whole));
  block(builder, "E8", "Error of one weight, one standard uncertainty, g", "F8:J8");
  for (const [row, [name, rest]] of [
    ["one reading", "1,FALSE"],
    ["one reading, dish tared", "1,TRUE"],
    ["the mean of several", `${scale.readings},FALSE`],
  ].entries()) {
    put(`E${9 + row}`, name ?? null, label);
    put(`I${9 + row}`, `=TEA.SCALEERROR(${scale.readability},I5,${rest},${scale.accuracy})`, result(fine));
  }
  put("E13", "Averaging makes the part that scatters smaller. A scale that is off stays off.", remark);
  widths(27, 11, 9, 3, 12, 11, 11, 14, 11, 10);
  return builder.sheet({ page });
}

/** "Take it down by 30 %" has three readings, and they are far apart. */
export function lossesSheet(): Sheet {
  const builder = sheetBuilder("Losses");
  const { put, styleRest, widths } = builder;
  heading(builder, "Three meanings of a loss");
  inputs(builder, 4, [
    ["Leaf", 400, grams, "g"],
    ["Its moisture", 0.75, percent],
    ["Loss", 0.3, percent],
  ]);
  put("A9", "The maker means the loss of", label);
  put(losses.target, "water", input(), "water, weight or points");
  put("A10", "Scale should read", label);
  put("B10", `=TEA.FIRINGTARGET(${losses.weight},${losses.moisture},${losses.loss},${losses.target})`, {
    ...answer,
    format: grams,
    align: "right",
  });
  put("A11", "Moisture then", label);
  put("B11", `=TEA.FIRINGMOISTURE(${losses.moisture},${losses.loss},${losses.target})`, result(percent));
  put(`E${losses.tableRow}`, `=TEA.LOSSMEANINGS(${losses.weight},${losses.moisture},${losses.loss})`, columnHeadLeft);
  styleRest("F4:I4", columnHead);
  styleRest("E5:E7", label);
  for (const [column, format] of Object.entries({ F: grams, G: grams, H: percent, I: percent }))
    styleRest(`${column}5:${column}7`, result(format));
  put("E9", "Of the water, of the weight, or in points of moisture: say which, always.", remark);
  cautions(builder, 14, [hotPan]);
  widths(29, 11, 9, 3, 14, 15, 13, 13, 13);
  return builder.sheet({ page });
}

/** Wet and dry basis, and the units of other books. */
export function conversionsSheet(): Sheet {
  const builder = sheetBuilder("Conversions");
  const { put, widths } = builder;
  heading(builder, "Conversions");
  const { firstBasis, firstWeight, firstArea } = conversions;
  block(builder, "A4", "Wet basis and dry basis", "B4:C4");
  heads(builder, 5, "A", ["Moisture, wet basis", "dry basis", "and back"]);
  for (const [index, moisture] of [0.05, 0.2, 0.5, 0.75, 0.8].entries()) {
    const row = firstBasis + index;
    put(`A${row}`, moisture, { ...input(percent), align: "left" });
    put(`B${row}`, `=TEA.DRYBASIS(A${row})`, result("0.0%"));
    put(`C${row}`, `=TEA.WETBASIS(B${row})`, result("0.0%"));
  }
  heads(builder, 13, "A", ["Weight", "from", "to", "is"]);
  const weightsToConvert = [
    [1, "jin", "g"],
    [1, "liang", "g"],
    [1, "kan", "kg"],
    [16, "oz", "lb"],
    [1, "lb", "g"],
    [2.5, "kg", "jin"],
  ] as const;
  heads(builder, 22, "A", ["Area", "from", "to", "is"]);
  const areasToConvert = [
    [1, "ha", "mu"],
    [15, "mu", "m2"],
    [1, "acre", "m2"],
  ] as const;
  for (const [first, id, rows] of [
    [firstWeight, "CONVERTWEIGHT", weightsToConvert],
    [firstArea, "CONVERTAREA", areasToConvert],
  ] as const) {
    for (const [index, [amount, from, to]] of rows.entries()) {
      const row = first + index;
      put(`A${row}`, amount, { ...input("0.00"), align: "left" });
      put(`B${row}`, from, input());
      put(`C${row}`, to, input());
      put(`D${row}`, `=${namespace}.${id}(A${row},B${row},C${row})`, result("0.0000"));
    }
  }
  widths(22, 12, 12, 14);
  return builder.sheet({ page });
}

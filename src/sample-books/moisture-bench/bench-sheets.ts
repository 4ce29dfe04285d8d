import { hotPan, saleLimit } from "../../core/cautions";
import { namespace } from "../../core/namespace";
import type { SampleWords } from "../../words/samples";
import type { Sheet } from "../../workbook/workbook";
import { block, cautions, heading, heads, inputs, pageOf } from "../day/parts";
import { answer, grams, input, label, percent, remark, result, whole } from "../look";
import { sheetBuilder } from "../sheet-builder";
import { spilledTable } from "../spilled-table";
import { saying } from "../words-of-cells";
import { conversions, losses, oven, scale } from "./places";

const fine = "0.000";

/** Dishes of one basket in the oven: do they agree, and how well is the basket known. */
export function ovenSheet(words: SampleWords): Sheet {
  const said = words.bench.oven;
  const builder = sheetBuilder("Oven");
  const { put, styleRest, widths } = builder;
  heading(builder, said.title, words.parts.invented);
  const { firstRow, lastRow } = oven;
  inputs(builder, 4, [
    [said.mayDiffer, 0.01, percent],
    [said.know, 0.004, "0.00%"],
  ]);
  put("C4", said.mayDifferSays, remark);
  heads(builder, 6, "A", [said.dish, said.withLeaf, said.dried, said.moisture]);
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
  block(builder, "F4", said.basket, "G4:L4");
  put("F5", said.mean, label);
  put("I5", `=TEA.OVENMEAN(${list},${oven.limit})`, { ...answer, format: "0.00%", align: "right" });
  const { mean, low, high, error, scatter, dishes: counted, needed } = said.heads;
  heads(builder, 7, "F", [mean, low, high, error, scatter, counted, needed]);
  put(`F${oven.meanRow}`, `=TEA.SAMPLEMEAN(${list},${oven.halfWidth})`, { ...result("0.00%"), align: "left" });
  styleRest(`G${oven.meanRow}:J${oven.meanRow}`, result("0.00%"));
  styleRest(`K${oven.meanRow}:L${oven.meanRow}`, result(whole));
  put("F9", said.error, remark);
  put("F10", said.shared, remark);
  cautions(builder, 15, [hotPan, saleLimit], words);
  widths(30, 12, 11, 11, 3, 11, 11, 11, 14, 11, 9, 9);
  return builder.sheet({ page: pageOf(words.parts) });
}

/** One bag ten times on the scale: how it scatters, and what error a weight then has. */
export function scaleSheet(words: SampleWords): Sheet {
  const said = words.bench.scale;
  const builder = sheetBuilder("Scale");
  const { put, styleRest, widths } = builder;
  const { firstRow, lastRow } = scale;
  heading(builder, said.title, words.parts.invented);
  heads(builder, 4, "A", [said.reading, said.grams]);
  const readings = [250.1, 250.2, 250.1, 250.0, 250.1, 250.2, 250.1, 250.1, 250.0, 250.2];
  for (let row = firstRow; row <= lastRow; row += 1) {
    put(`A${row}`, row - firstRow + 1, { ...label, align: "left" });
    put(`B${row}`, readings[row - firstRow] ?? null, input(grams));
  }
  inputs(builder, 16, [
    [said.step, 0.1, "0.00", said.grams],
    [said.off, 0.2, "0.00", said.grams],
    [said.averaged, 3, whole],
  ]);
  const { mean, low, high, error, scatter, readings: counted } = said.heads;
  heads(builder, 4, "E", [mean, low, high, error, scatter, counted]);
  put("E5", `=TEA.SAMPLEMEAN(B${firstRow}:B${lastRow})`, { ...result("0.00"), align: "left" });
  styleRest("F5:I5", result(fine));
  styleRest("J5", result(whole));
  block(builder, "E8", said.errors, "F8:J8");
  for (const [row, [name, rest]] of [
    [said.one, "1,FALSE"],
    [said.tared, "1,TRUE"],
    [said.several, `${scale.readings},FALSE`],
  ].entries()) {
    put(`E${9 + row}`, name ?? null, label);
    put(`I${9 + row}`, `=TEA.SCALEERROR(${scale.readability},I5,${rest},${scale.accuracy})`, result(fine));
  }
  put("E13", said.averaging, remark);
  widths(27, 11, 9, 3, 12, 11, 11, 14, 11, 10);
  return builder.sheet({ page: pageOf(words.parts) });
}

/** "Take it down by 30 %" has three readings, and they are far apart. */
export function lossesSheet(words: SampleWords): Sheet {
  const said = words.bench.losses;
  const builder = sheetBuilder("Losses");
  const { put, styleRest, widths } = builder;
  heading(builder, said.title, words.parts.invented);
  inputs(builder, 4, [
    [said.leaf, 400, grams, said.grams],
    [said.moisture, 0.75, percent],
    [said.loss, 0.3, percent],
  ]);
  put("A9", said.means, label);
  put(losses.target, words.choices.water ?? "water", input(), said.choices);
  put("A10", said.reads, label);
  put("B10", `=TEA.FIRINGTARGET(${losses.weight},${losses.moisture},${losses.loss},${losses.target})`, {
    ...answer,
    format: grams,
    align: "right",
  });
  put("A11", said.moistureThen, label);
  put("B11", `=TEA.FIRINGMOISTURE(${losses.moisture},${losses.loss},${losses.target})`, result(percent));
  const meanings = ["water", "weight", "points"] as const;
  spilledTable(builder, words, {
    id: "LOSSMEANINGS",
    given: [losses.weight, losses.moisture, losses.loss],
    at: `E${losses.tableRow}`,
    first: saying(label, meanings[0], words),
  });
  for (const [index, meaning] of meanings.entries()) styleRest(`E${5 + index}`, saying(label, meaning, words));
  for (const [column, format] of Object.entries({ F: grams, G: grams, H: percent, I: percent }))
    styleRest(`${column}5:${column}7`, result(format));
  put("E9", said.says, remark);
  cautions(builder, 14, [hotPan], words);
  widths(29, 11, 9, 3, 14, 15, 13, 13, 13);
  return builder.sheet({ page: pageOf(words.parts) });
}

/** Wet and dry basis, and the units of other books. */
export function conversionsSheet(words: SampleWords): Sheet {
  const said = words.bench.conversions;
  const builder = sheetBuilder("Conversions");
  const { put, widths } = builder;
  heading(builder, said.title, words.parts.invented);
  const { firstBasis, firstWeight, firstArea } = conversions;
  block(builder, "A4", said.bases, "B4:C4");
  heads(builder, 5, "A", [said.wet, said.dry, said.back]);
  for (const [index, moisture] of [0.05, 0.2, 0.5, 0.75, 0.8].entries()) {
    const row = firstBasis + index;
    put(`A${row}`, moisture, { ...input(percent), align: "left" });
    put(`B${row}`, `=TEA.DRYBASIS(A${row})`, result("0.0%"));
    put(`C${row}`, `=TEA.WETBASIS(B${row})`, result("0.0%"));
  }
  heads(builder, 13, "A", [said.weight, said.from, said.to, said.is]);
  const weightsToConvert = [
    [1, "jin", "g"],
    [1, "liang", "g"],
    [1, "kan", "kg"],
    [16, "oz", "lb"],
    [1, "lb", "g"],
    [2.5, "kg", "jin"],
  ] as const;
  heads(builder, 22, "A", [said.area, said.from, said.to, said.is]);
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
      put(`B${row}`, words.units[from] ?? from, input());
      put(`C${row}`, words.units[to] ?? to, input());
      put(`D${row}`, `=${namespace}.${id}(A${row},B${row},C${row})`, result("0.0000"));
    }
  }
  widths(22, 12, 12, 14);
  return builder.sheet({ page: pageOf(words.parts) });
}

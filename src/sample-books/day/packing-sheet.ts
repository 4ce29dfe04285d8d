import { dust, paidWeight, saleLimit } from "../../core/cautions";
import type { SampleWords } from "../../words/samples";
import type { Sheet } from "../../workbook/workbook";
import { answer, grams, input, label, percent, remark, result, section, whole } from "../look";
import { sheetBuilder } from "../sheet-builder";
import { spilledTable } from "../spilled-table";
import { inWords, sayings } from "../words-of-cells";
import { block, cautions, heading, heads, inputs, pageOf } from "./parts";
import { packing } from "./places";

const { firstSize, lastSize, firstNet, lastNet, planRow, checkRow } = packing;
const sizes = [
  [50, 30],
  [20, null],
] as const;
const netWeights = [50.1, 49.8, 50.3, 50, 49.9, 50.2, 50.1, 49.7, 50.4, 50, 50.1, 50.2] as const;

/** Sizes in g, and what one may be short, in g or as a share. As read on gov.uk; a maker elsewhere looks up another. */
const tolerances = [
  [[5, 50], "9 %"],
  [[50, 100], "4.5"],
  [[100, 200], "4.5 %"],
  [[200, 300], "9"],
  [[300, 500], "3 %"],
] as const;

/** What the check says of the tins. */
export const verdicts = [
  "agrees",
  "a package short by more than twice the tolerance",
  "mean below the limit",
  "too many short by more than the tolerance",
] as const;

/** From the tray into the tins: what to fill, how many, and how they came out. */
export function packingSheet(words: SampleWords): Sheet {
  const said = words.day.packing;
  const builder = sheetBuilder("Packing");
  const { put, styleRest, widths } = builder;
  heading(builder, said.title, words.parts.invented);
  inputs(builder, 4, [
    [said.tea, 1842.6, grams, said.grams],
    [said.moisture, null, percent],
    [said.driest, null, percent],
    [said.scatter, 0.15, "0.00", said.grams],
    [said.share, 0.95, "0%"],
    [said.step, 0.1, "0.00", said.grams],
  ]);
  put("C5", said.leaveBlank, remark);
  heads(builder, 11, "A", [said.sizes, said.howMany]);
  for (let row = firstSize; row <= lastSize; row += 1) {
    const size = sizes[row - firstSize];
    put(`A${row}`, size?.[0] ?? null, { ...input(grams), align: "left" });
    put(`B${row}`, size?.[1] ?? null, input(whole));
  }
  put("C13", said.asFit, remark);
  inputs(builder, 15, [
    [said.state, 50, grams, said.grams],
    [said.tolerance, 4.5, grams, said.grams],
    [said.inAll, null, whole],
  ]);
  put("C17", said.allWeighed, remark);
  heads(builder, 19, "A", [said.net]);
  for (let row = firstNet; row <= lastNet; row += 1) {
    put(`A${row}`, netWeights[row - firstNet] ?? null, { ...input(grams), align: "left" });
  }

  block(builder, "E3", said.fill, "F3:J3");
  const details = [packing.moisture, packing.driest, packing.scatter, packing.confidence, packing.readability];
  const names = { ...label, format: grams, align: "left" } as const;
  spilledTable(builder, words, {
    id: "PACKPLAN",
    given: [packing.finished, `A${firstSize}:A${lastSize}`, `B${firstSize}:B${lastSize}`, ...details],
    at: `E${planRow}`,
    first: names,
    headLeft: { ...section, border: "bottom" },
    head: { bold: true, align: "right", border: "bottom" },
  });
  styleRest(`E${planRow + 1}:E${planRow + 4}`, names);
  for (const [column, format] of Object.entries({ F: grams, G: whole, H: whole, I: grams, J: grams })) {
    styleRest(`${column}${planRow + 1}:${column}${planRow + 4}`, result(format));
  }
  block(builder, "E18", said.cameOut, "F18:J18");
  const { verdict, mean, limit, scatter, short, farShort } = said.heads;
  heads(builder, checkRow - 1, "E", [verdict, mean, limit, scatter, short, farShort]);
  put(
    `E${checkRow}`,
    `=TEA.PACKCHECK(A${firstNet}:A${lastNet},${packing.nominal},${packing.tolerance},${packing.packages})`,
    answer,
  );
  styleRest(`F${checkRow}:G${checkRow}`, result("0.00"));
  styleRest(`H${checkRow}`, result("0.00"));
  styleRest(`I${checkRow}:J${checkRow}`, result(whole));
  const verdictInWords = inWords(`E${checkRow}`, sayings(verdicts, words));
  // Beside the verdict is no room for it in other words.
  put("E21", words.inCells ? `=${said.ownAfter(verdictInWords)}` : said.own, remark);
  block(builder, "E23", said.tolerances, "F23:J23");
  for (const [index, [size, tolerance]] of tolerances.entries()) {
    const [from, to] = size;
    put(`E${24 + index}`, said.range(from, to), label);
    put(`F${24 + index}`, tolerance.endsWith("%") ? tolerance : said.gramsOf(tolerance), { ...label, align: "right" });
  }
  put("E29", said.rounded, remark);
  cautions(builder, 33, [paidWeight, saleLimit, dust], words);
  widths(25, 11, 10, 3, 34, 11, 11, 10, 11, 14);
  return builder.sheet({ page: pageOf(words.parts) });
}

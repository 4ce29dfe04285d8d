import type { SampleWords, SeasonWords } from "../../words/samples";
import type { Sheet } from "../../workbook/workbook";
import { columnHead, columnHeadLeft, grams, input, label, percent, remark, result, section, title } from "../look";
import { sheetBuilder } from "../sheet-builder";
import { spilledTable } from "../spilled-table";
import { inWords, sayings } from "../words-of-cells";
import { springLots } from "./lots";
import { lots, onLots } from "./places";

/** The lot that was weighed at every stage, with one reading wrong. */
export const fittedLot = 33;
const firstStage = 8;
const lastStage = 13;
const balanceRow = 17;
const fitRow = 29;
/** Where the answers' last rows stand: the total of the balance, the verdict of the fit. */
export const verdictRow = fitRow + 7;

/** One lot, weighing by weighing: where its grams went, and which reading does not fit the others. */
export function oneLotSheet(words: SampleWords): Sheet {
  const said = words.season.oneLot;
  const builder = sheetBuilder("One lot");
  const { put, styleRest, merge, widths, height, sheet } = builder;
  put("A1", said.title, title);
  put("A2", said.says, remark);
  put("A4", said.lot.label, label);
  put("B4", fittedLot, { ...input("0"), align: "left" }, said.lot.note);

  put("A6", said.read, section);
  styleRest("B6:I6", section);
  const { stage, weight, moisture, weightError, moistureError, removed: out, removedMoisture, dryLoss } = said.heads;
  const heads = [stage, weight, moisture, weightError, moistureError, out, removedMoisture, dryLoss];
  for (const [index, { heading, note }] of heads.entries()) {
    put(`${"ABCDEFGH"[index]}7`, heading, index === 0 ? columnHeadLeft : columnHead, note);
  }
  const ofBook = (column: string) => `=IFERROR(INDEX(${onLots(column)},MATCH($B$4,${onLots("A")},0)),"")`;
  for (const [index, stage] of stages(said.stages).entries()) {
    const row = firstStage + index;
    put(`A${row}`, stage.name, input());
    if (stage.weight === undefined) put(`B${row}`, ofBook(index === 0 ? lots.fresh : lots.finished), result(grams));
    else put(`B${row}`, stage.weight, input(grams));
    put(`C${row}`, stage.moisture, input(percent));
    put(`D${row}`, stage.weightError, input("0.0"));
    put(`E${row}`, stage.moistureError, input(percent));
    put(`F${row}`, stage.removed, input(grams));
    put(`G${row}`, stage.removedMoisture, input(percent));
    put(`H${row}`, stage.dryLoss, input(percent));
  }
  const range = (column: string) => `${column}${firstStage}:${column}${lastStage}`;
  const [names, weights, moistures, removed, removedMoistures] = ["A", "B", "C", "F", "G"].map(range) as [
    string,
    string,
    string,
    string,
    string,
  ];

  put("A15", said.grams, section);
  styleRest("B15:J15", section);
  put("A16", said.unaccounted, remark);
  spilledTable(builder, words, {
    id: "STAGEBALANCE",
    given: [names, weights, moistures, removed, removedMoistures],
    at: `A${balanceRow}`,
    // A little space before the notes, which follow numbers.
    heads: { note: { ...columnHeadLeft, format: '"  "@' } },
  });
  styleRest(`I${balanceRow + 1}:I${balanceRow + 7}`, { ...label, format: '"  "@' });
  styleRest(`J${balanceRow + 1}:J${balanceRow + 7}`, result(grams));
  for (const [index, format] of [grams, percent, grams, grams, grams, grams, percent].entries()) {
    const column = "BCDEFGH"[index];
    styleRest(`${column}${balanceRow + 1}:${column}${balanceRow + 7}`, result(format));
  }

  put("A26", said.fit, section);
  styleRest("B26:I26", section);
  put("A27", `=IF(A${verdictRow}="","",${inWords(`A${verdictRow}`, sayings(verdicts, words))})`, {
    bold: true,
    wrap: true,
    color: "#24312a",
  });
  styleRest("B27:I27", { wrap: true });
  merge("A27:I27");
  height(27, 28);
  put("A28", said.fitSays, remark);
  const errors = ["D", "E"].map(range);
  const fit = [names, weights, moistures, ...errors, removed, removedMoistures, range("H")];
  spilledTable(builder, words, { id: "BALANCEFIT", given: fit, at: `A${fitRow}` });
  for (const [index, format] of [grams, grams, percent, percent, "0.0"].entries()) {
    const column = "BCDEF"[index];
    styleRest(`${column}${fitRow + 1}:${column}${verdictRow - 1}`, result(format));
  }
  for (const [index, format] of ["0.0", "0", "0.0E+00"].entries()) {
    styleRest(`${"BCD"[index]}${verdictRow}:${"BCD"[index]}${verdictRow}`, result(format));
  }
  widths(24, 13, 14, 13, 15, 19, 14, 16, 52, 14);
  height(1, 24);
  return sheet({
    page: {
      paper: "A4",
      landscape: true,
      fitToOnePageWide: true,
      footer: said.footer,
    },
  });
}

/** What the fit says where it names no stage. */
const verdicts = ["agrees", "nothing to balance yet", "does not balance: no single row stands out"] as const;

interface Stage {
  readonly name: string;
  /** undefined: from the book. */
  readonly weight?: number;
  readonly moisture: number | null;
  readonly weightError: number;
  readonly moistureError: number;
  readonly removed: number | null;
  readonly removedMoisture: number | null;
  readonly dryLoss: number;
}

const rounded = (value: number, step: number): number => Number((Math.round(value / step) * step).toFixed(4));

/** Weighings that balance with the lot's in the book, but for one: the moisture after the second firing is read low. */
function stages(names: SeasonWords["oneLot"]["stages"]): Stage[] {
  const lot = springLots().find(({ number }) => number === fittedLot);
  if (!lot || lot.finished === null) throw new Error("the lot to fit must be a finished one");
  const finishedMoisture = 0.052;
  const losses = { airing: 0, pan: 0, first: 0.005, second: 0.005, last: 0.01 };
  const dryAfterSecond = (lot.finished * (1 - finishedMoisture)) / (1 - losses.last);
  const dryAfterFirst = dryAfterSecond / (1 - losses.second);
  const dryForPan = dryAfterFirst / (1 - losses.first);
  const aired = lot.fresh * 0.913;
  const forPan = aired * 0.974;
  const dryFresh = (dryForPan * aired) / forPan;
  const airedMoisture = rounded(1 - dryFresh / aired, 0.001);
  const readBy = { weightError: 0.5, moistureError: 0.015, removed: null, removedMoisture: null };
  const misread = 0.075;
  return [
    {
      ...readBy,
      name: names.fresh,
      moisture: rounded(1 - dryFresh / lot.fresh + 0.004, 0.001),
      moistureError: 0.01,
      dryLoss: 0,
    },
    { ...readBy, name: names.aired, weight: rounded(aired, 0.1), moisture: null, dryLoss: losses.airing },
    {
      ...readBy,
      name: names.forPan,
      weight: rounded(forPan, 0.1),
      moisture: null,
      removed: rounded(aired - forPan, 0.1),
      removedMoisture: airedMoisture,
      dryLoss: losses.pan,
    },
    {
      ...readBy,
      name: names.first,
      weight: rounded(dryAfterFirst / (1 - 0.62), 0.1),
      moisture: 0.611,
      dryLoss: losses.first,
    },
    {
      ...readBy,
      name: names.second,
      weight: rounded(dryAfterSecond / (1 - 0.43), 0.1),
      moisture: rounded(0.43 - misread, 0.001),
      dryLoss: losses.second,
    },
    {
      ...readBy,
      name: names.finished,
      moisture: finishedMoisture,
      weightError: 0.2,
      moistureError: 0.003,
      dryLoss: losses.last,
    },
  ];
}

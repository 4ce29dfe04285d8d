import { textInFormula } from "../../words/in-formula";
import type { OneLotWords, SampleWords } from "../../words/samples";
import * as look from "../look";
import { once, type SheetBuilder } from "../sheet-builder";
import { spilledTable } from "../spilled-table";
import { inWords, saying, sayings } from "../words-of-cells";
import { answersHeading, heads, roundHeads } from "./answer-parts";
import { verdicts } from "./lot-answers";
import {
  bandRow,
  eitherSideRow,
  firstPastRow,
  found,
  freshMoistureRow,
  given,
  lastPastRow,
  planRow,
  roundColumns,
  roundNames,
  rounds,
  stepsRow,
  targetKinds,
  targets,
} from "./places";
import { onSampleSheet, told } from "./sample-values";

const { grams, percent } = look;

/** How the answers come about: below them, for those who want to know. */
export function lotWorking(builder: SheetBuilder, words: SampleWords): void {
  freshMoisture(builder, words.oneLot);
  dryingSteps(builder, words);
  finishedTea(builder, words);
  eitherSide(builder, words.oneLot);
}

function freshMoisture(builder: SheetBuilder, { answers, sample }: OneLotWords): void {
  const { put } = builder;
  const said = answers.freshMoisture;
  const { lot, used, median, mean, lowest, highest, pastLots } = said.heads;
  const past = `'Past lots'!$I$${firstPastRow}:$I$${lastPastRow}`;
  answersHeading(builder, freshMoistureRow - 2, said.heading);
  heads(builder, freshMoistureRow - 1, [lot, used, median, mean, lowest, highest, pastLots]);
  put(
    `E${freshMoistureRow}`,
    `=IF(ISBLANK(${given.freshMoisture}),${textInFormula(said.assumed)},${textInFormula(said.measured)})`,
    look.answer,
    said.note,
  );
  put(found.freshMoisture, `=IF(ISBLANK(${given.freshMoisture}),${found.medianOfPastLots},${given.freshMoisture})`, {
    ...look.result(percent),
    bold: true,
  });
  for (const [index, name] of ["MEDIAN", "AVERAGE", "MIN", "MAX"].entries()) {
    put(`${"GHIJ"[index]}${freshMoistureRow}`, `=IF(COUNT(${past})=0,"",${name}(${past}))`, look.result(percent));
  }
  put(`K${freshMoistureRow}`, `=COUNT(${past})`, look.result(look.whole));
  const still = onSampleSheet(told.pastLots);
  put(
    `E${freshMoistureRow + 1}`,
    `=IF(AND(ISBLANK(${given.freshMoisture}),${still}>0),${sample.pastLots(still)},"")`,
    look.mark,
  );
}

function dryingSteps(builder: SheetBuilder, words: SampleWords): void {
  const { styleRest } = builder;
  const { steps } = words.oneLot.answers;
  answersHeading(builder, stepsRow - 1, steps.heading, steps.note);
  const { forPan, forPanMoisture } = found;
  spilledTable(builder, words, {
    id: "DRYINGSTEPS",
    given: [forPan, forPanMoisture, targets, targetKinds, roundNames],
    at: `E${stepsRow}`,
    first: saying(look.label, "start", words),
  });
  const last = stepsRow + rounds + 1;
  styleRest(`E${stepsRow + 1}`, saying(look.label, "start", words));
  styleRest(`E${stepsRow + 2}:E${last}`, look.label);
  for (const [column, format] of Object.entries({ F: grams, G: percent, H: percent, I: grams, J: grams, K: percent })) {
    styleRest(`${column}${stepsRow + 1}:${column}${last}`, look.result(format));
  }
}

function finishedTea(builder: SheetBuilder, words: SampleWords): void {
  const { put, styleRest } = builder;
  const said = words.oneLot.answers.finished;
  const { fresh, finished, finishedMoisture } = given;
  const lastStep = `G${stepsRow + rounds + 1}`;
  answersHeading(builder, 59, said.heading);
  put("E60", said.moisture, look.label);
  put(
    found.finishedMoisture,
    `=IF(NOT(ISBLANK(${finishedMoisture})),${finishedMoisture},IF(${lastStep}="","",${lastStep}))`,
    look.result(percent),
  );
  const [measured, lastTarget] = [said.measured, said.lastTarget].map(textInFormula);
  put("G60", `=IF(NOT(ISBLANK(${finishedMoisture})),${measured},${lastTarget})`, look.remark);
  heads(builder, bandRow - 1, ["", said.low, said.atNoLoss, said.high]);
  put(`E${bandRow}`, said.band, look.label, said.bandNote);
  put(`F${bandRow}`, `=TEA.FINISHEDBAND(${fresh},${bandArguments})`, look.result(grams));
  styleRest(`G${bandRow}:H${bandRow}`, look.result(grams));
  put("E63", said.expected, look.label);
  put(
    found.expected,
    `=TEA.FINISHEDWEIGHT(${found.forPan},${found.forPanMoisture},${found.finishedMoisture},${given.usualLoss})`,
    { ...look.result(grams), bold: true },
  );
  put("E64", said.writtenDown, look.label);
  put("F64", once([finished], finished), look.result(grams));
  put("E65", said.more, look.label);
  put(
    found.difference,
    once([finished, found.expected], `${finished}-${found.expected}`),
    look.result("+0.0;-0.0;0.0"),
  );
  put("E66", said.check, look.label);
  put(
    found.check,
    `=TEA.FINISHEDCHECK(${fresh},${found.freshMoisture},${finished},${bandArguments.slice(bandArguments.indexOf(",") + 1)})`,
    look.answer,
    said.checkNote,
  );
  if (words.inCells) put("G66", once([finished], `" "&${inWords(found.check, sayings(verdicts, words))}`), look.remark);
  put("E67", said.outturn, look.label);
  put(found.outturn, `=TEA.OUTTURN(${fresh},${finished})`, look.result(percent));
  put("E68", said.leafRatio, look.label);
  put(found.leafRatio, `=TEA.LEAFRATIO(${fresh},${finished})`, look.result("0.00"));
  put("G68", said.leafRatioIs, look.remark);
  put("E69", said.recovery, look.label);
  put(
    found.recovery,
    `=TEA.DRYRECOVERY(${fresh},${found.freshMoisture},${finished},${found.finishedMoisture})`,
    look.result(percent),
  );
  put("G69", said.recoveryIs, look.remark);
}

/** What FINISHEDBAND and FINISHEDCHECK share after the fresh weight; the check takes the finished weight in between. */
const bandArguments = [
  found.freshMoisture,
  found.finishedMoisture,
  found.siftOuts,
  found.airedMoisture,
  given.leastLoss,
  given.mostLoss,
  given.weightError,
  given.freshMoistureError,
  given.finishedMoistureError,
].join(",");

function eitherSide(builder: SheetBuilder, words: OneLotWords): void {
  const { put } = builder;
  const said = words.answers.eitherSide;
  answersHeading(builder, eitherSideRow - 2, said.heading);
  heads(builder, eitherSideRow - 1, [said.leaf, said.moisture, ...roundHeads(words), said.finished]);
  const load = `$F$${planRow}`;
  for (const [index, [name, points]] of (
    [
      [said.drier, -0.01],
      [said.same, 0],
      [said.wetter, 0.01],
    ] as const
  ).entries()) {
    const row = eitherSideRow + index;
    const shifted = points === 0 ? found.freshMoisture : `${found.freshMoisture}${points > 0 ? "+" : ""}${points}`;
    const inPan = `TEA.MOISTURENOW(${fixed(given.fresh)},$F${row},${fixed(found.aired)})`;
    put(`E${row}`, name, look.label);
    put(`F${row}`, once([found.freshMoisture], shifted), look.result(percent));
    for (const [round, column] of roundColumns.entries()) {
      const steps = `TEA.DRYINGSTEPS(${load},${inPan},${fixed(targets)},${fixed(targetKinds)},${fixed(roundNames)},FALSE)`;
      put(
        `${column}${row}`,
        once([load, `$F${row}`, fixed(found.airedMoisture)], `INDEX(${steps},${round + 2},2)`),
        look.result(grams),
      );
    }
    put(
      `K${row}`,
      `=TEA.FINISHEDWEIGHT(${found.forPan},${inPan},${found.finishedMoisture},${given.usualLoss})`,
      look.result(grams),
    );
  }
}

const fixed = (reference: string): string => reference.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");

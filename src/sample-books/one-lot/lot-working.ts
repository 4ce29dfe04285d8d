import * as look from "../look";
import { once, type SheetBuilder } from "../sheet-builder";
import { answersHeading, heads, roundHeads } from "./answer-parts";
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
export function lotWorking(builder: SheetBuilder): void {
  freshMoisture(builder);
  dryingSteps(builder);
  finishedTea(builder);
  eitherSide(builder);
}

function freshMoisture(builder: SheetBuilder): void {
  const { put } = builder;
  const past = `'Past lots'!$I$${firstPastRow}:$I$${lastPastRow}`;
  answersHeading(builder, freshMoistureRow - 2, "Fresh moisture");
  heads(builder, freshMoistureRow - 1, ["This lot", "used here", "median", "mean", "lowest", "highest", "past lots"]);
  put(
    `E${freshMoistureRow}`,
    `=IF(ISBLANK(${given.freshMoisture}),"assumed, from past lots","measured")`,
    look.answer,
    "Nobody can see the moisture of a leaf. Without an oven test it is worked backwards from what your past lots became, and every answer below leans on it: see the table of one point either side.",
  );
  put(found.freshMoisture, `=IF(ISBLANK(${given.freshMoisture}),${found.medianOfPastLots},${given.freshMoisture})`, {
    ...look.result(percent),
    bold: true,
  });
  for (const [index, name] of ["MEDIAN", "AVERAGE", "MIN", "MAX"].entries()) {
    put(`${"GHIJ"[index]}${freshMoistureRow}`, `=IF(COUNT(${past})=0,"",${name}(${past}))`, look.result(percent));
  }
  put(`K${freshMoistureRow}`, `=COUNT(${past})`, look.result(look.whole));
  const sample = onSampleSheet(told.pastLots);
  put(
    `E${freshMoistureRow + 1}`,
    `=IF(AND(ISBLANK(${given.freshMoisture}),${sample}>0),${sample}&" of these past lots are the sample's: put in your own on the sheet Past lots, or measure.","")`,
    look.mark,
  );
}

function dryingSteps(builder: SheetBuilder): void {
  const { put, styleRest } = builder;
  answersHeading(
    builder,
    stepsRow - 1,
    "Drying steps of the whole lot",
    "One formula that spills. It holds while only water leaves the leaf.",
  );
  put(
    `E${stepsRow}`,
    `=TEA.DRYINGSTEPS(${found.forPan},${found.forPanMoisture},${targets},${targetKinds},${roundNames})`,
    look.columnHeadLeft,
  );
  const last = stepsRow + rounds + 1;
  styleRest(`F${stepsRow}:K${stepsRow}`, look.columnHead);
  styleRest(`E${stepsRow + 1}:E${last}`, look.label);
  for (const [column, format] of Object.entries({ F: grams, G: percent, H: percent, I: grams, J: grams, K: percent })) {
    styleRest(`${column}${stepsRow + 1}:${column}${last}`, look.result(format));
  }
}

function finishedTea(builder: SheetBuilder): void {
  const { put, styleRest } = builder;
  const { fresh, finished, finishedMoisture } = given;
  const lastStep = `G${stepsRow + rounds + 1}`;
  answersHeading(builder, 59, "Finished tea");
  put("E60", "Its moisture", look.label);
  put(
    found.finishedMoisture,
    `=IF(NOT(ISBLANK(${finishedMoisture})),${finishedMoisture},IF(${lastStep}="","",${lastStep}))`,
    look.result(percent),
  );
  put("G60", `=IF(NOT(ISBLANK(${finishedMoisture}))," measured"," the target of the last round")`, look.remark);
  heads(builder, bandRow - 1, ["", "low", "at no loss", "high"]);
  put(
    `E${bandRow}`,
    "Weights that agree, g",
    look.label,
    "From the fresh weight, less the sift-outs, with the least and the most loss and two standard errors either side. It says what the weights allow, not whether the tea is good.",
  );
  put(`F${bandRow}`, `=TEA.FINISHEDBAND(${fresh},${bandArguments})`, look.result(grams));
  styleRest(`G${bandRow}:H${bandRow}`, look.result(grams));
  put("E63", "Expected at the usual loss, g", look.label);
  put(
    found.expected,
    `=TEA.FINISHEDWEIGHT(${found.forPan},${found.forPanMoisture},${found.finishedMoisture},${given.usualLoss})`,
    { ...look.result(grams), bold: true },
  );
  put("E64", "Written down, g", look.label);
  put("F64", once([finished], finished), look.result(grams));
  put("E65", "More than expected, g", look.label);
  put(
    found.difference,
    once([finished, found.expected], `${finished}-${found.expected}`),
    look.result("+0.0;-0.0;0.0"),
  );
  put("E66", "Check", look.label);
  put(
    found.check,
    `=TEA.FINISHEDCHECK(${fresh},${found.freshMoisture},${finished},${bandArguments.slice(bandArguments.indexOf(",") + 1)})`,
    look.answer,
    "agrees: the written weight lies between low and high.\nless lost than expected, more lost than expected: outside, look at the readings.\nmore dry matter out than came in: some reading is wrong.",
  );
  put("E67", "Outturn", look.label);
  put(found.outturn, `=TEA.OUTTURN(${fresh},${finished})`, look.result(percent));
  put("E68", "Leaf ratio", look.label);
  put(found.leafRatio, `=TEA.LEAFRATIO(${fresh},${finished})`, look.result("0.00"));
  put("G68", " fresh leaf for one of finished tea, by weight", look.remark);
  put("E69", "Dry matter recovered", look.label);
  put(
    found.recovery,
    `=TEA.DRYRECOVERY(${fresh},${found.freshMoisture},${finished},${found.finishedMoisture})`,
    look.result(percent),
  );
  put("G69", " sift-outs count as lost here", look.remark);
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

function eitherSide(builder: SheetBuilder): void {
  const { put } = builder;
  answersHeading(
    builder,
    eitherSideRow - 2,
    "If the fresh moisture is one point off: what the first charge should read, and the finished lot",
  );
  heads(builder, eitherSideRow - 1, ["Fresh leaf", "moisture", ...roundHeads(), "finished, g"]);
  const load = `$F$${planRow}`;
  for (const [index, [name, points]] of (
    [
      ["one point drier", -0.01],
      ["as used here", 0],
      ["one point wetter", 0.01],
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

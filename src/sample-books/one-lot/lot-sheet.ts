import type { Sheet } from "../../workbook-files/workbook";
import * as look from "../look";
import { once, type SheetBuilder, sheetBuilder } from "../sheet-builder";
import {
  bandRow,
  eitherSideRow,
  firstPastRow,
  firstRoundRow,
  firstRowOfSecondPage,
  found,
  given,
  lastPastRow,
  lastPlanRow,
  planRow,
  remainsRow,
  roundColumns,
  roundNames,
  rounds,
  stepsRow,
  targetKinds,
  targets,
} from "./places";

const { grams, percent } = look;

/** Inputs on the left, answers on the right; the plan comes last, since it grows with the lot. */
export function lotSheet(): Sheet {
  const builder = sheetBuilder("Lot");
  builder.put("A1", "One lot, from fresh leaf to finished tea", look.title);
  builder.put(
    "A2",
    "Wren Terrace is an invented farm, and every number here is invented. Type over the tinted cells; the plain ones answer.",
    look.remark,
  );
  inputs(builder);
  inShort(builder);
  freshMoisture(builder);
  whatRemains(builder);
  dryingSteps(builder);
  finishedTea(builder);
  eitherSide(builder);
  chargePlan(builder);
  turns(builder);
  builder.widths(31, 11, 24, 3, 27, 16, 15, 16, 20, 19, 17);
  builder.height(1, 24);
  // Tall enough that the sheet breaks here on paper, whatever the printer's fonts make of its width.
  builder.height(firstRowOfSecondPage - 1, 78);
  return builder.sheet({
    page: { paper: "A4", landscape: true, fitToOnePageWide: true, footer: "&LWren Terrace, invented&RPage &P of &N" },
  });
}

function inputs({ put }: SheetBuilder): void {
  const heading = (row: number, text: string) => {
    put(`A${row}`, text, look.section);
    put(`B${row}`, null, look.section);
    put(`C${row}`, null, look.section);
  };
  const line = (address: string, text: string, value: number | null, format: string, unit: string, note?: string) => {
    const row = address.slice(1);
    put(`A${row}`, text, look.label);
    put(address, value, look.input(format), note);
    put(`C${row}`, ` ${unit}`, look.unit);
  };

  heading(4, "The lot");
  put("A5", "Lot", look.label);
  put("B5", 14, { ...look.input("0"), align: "left" });
  put("A6", "Picked", look.label);
  put("B6", 45760, { ...look.input(look.date), align: "left" });

  heading(8, "Weighed");
  line(
    given.fresh,
    "Fresh weight",
    1240,
    grams,
    "g",
    "Straight from the baskets, before anything has dried or been picked over.",
  );
  line(
    given.aired,
    "After airing overnight",
    1136.2,
    grams,
    "g",
    "Airing takes water only: the dry matter is the same as before, in less weight. The fresh leaf's moisture no longer holds for this weight.",
  );
  line(
    given.siftOuts,
    "Sift-outs",
    28.9,
    grams,
    "g",
    "Leaf taken out before the pan, weighed after airing. It takes its dry matter along.",
  );
  line(given.forPan, "For the pan (sifted)", 1106.6, grams, "g", "In whole steps of the scale, since the charges are.");
  line(
    given.finished,
    "Finished weight written down",
    279.6,
    grams,
    "g, blank until weighed",
    "Leave it blank while the lot is in the making: the answers that need it stay empty and nothing breaks.",
  );
  line(
    given.finishedMoisture,
    "Finished moisture, measured",
    0.052,
    percent,
    "blank: the last target",
    "From an oven test. While it is blank, the target of the last round stands in for it.",
  );
  line(
    given.freshMoisture,
    "Fresh moisture, measured",
    null,
    percent,
    "blank: from past lots",
    "An oven test of this morning's leaf beats any assumption. While it is blank, the median of your past lots is used and marked as assumed.",
  );

  heading(17, "The pan and the scale");
  line(
    given.panLoad,
    "Pan load wanted",
    280,
    grams,
    "g",
    "The lot is split into equal charges that come as near to this as they can.",
  );
  line(given.largestLoad, "Largest pan load", 300, grams, "g, may be blank", "No charge is made heavier than this.");
  line(
    given.readability,
    "Scale reads in steps of",
    0.1,
    grams,
    "g",
    "Charges are given in whole steps of the scale and add up exactly.",
  );

  heading(22, "Targets, round by round");
  put("A23", "Round", look.columnHeadLeft);
  put("B23", "Target", look.columnHead);
  put(
    "C23",
    " What the target means",
    look.columnHeadLeft,
    "moisture: the moisture to come down to.\nwater: this share of the water must go.\nweight: this share of the weight must go.\npoints: the moisture must fall by this much.",
  );
  const typed: readonly [string, number, string][] = [
    ["First firing", 0.31, "water"],
    ["Second firing", 0.47, "moisture"],
    ["Third firing", 0.33, "moisture"],
    ["Final drying", 0.055, "moisture"],
  ];
  for (const [index, [name, target, kind]] of typed.entries()) {
    const row = firstRoundRow + index;
    put(`A${row}`, name, look.input());
    put(`B${row}`, target, look.input(percent));
    put(`C${row}`, kind, { ...look.input(), align: "center" });
  }

  heading(29, "Dry matter lost in making");
  line(
    given.usualLoss,
    "Usually",
    0.03,
    percent,
    "of the dry matter",
    "Dust, crumbs and what the leaf breathes away between the pan and the tin. An assumption of this invented farm: put in your own.",
  );
  line(given.leastLoss, "At the least", 0.01, percent, "of the dry matter");
  line(
    given.mostLoss,
    "At the most",
    0.06,
    percent,
    "of the dry matter",
    "Take it from your own good lots. A finished weight that would need a greater loss is reported.",
  );

  heading(34, "How sure the readings are");
  line(
    given.weightError,
    "Weights",
    0.2,
    "0.00",
    "g, one standard error",
    "Of the large weighings. Two standard errors either side are allowed for.",
  );
  line(
    given.freshMoistureError,
    "Fresh moisture",
    0.01,
    percent,
    "one point is 1.0%",
    "One point is an assumption. The spread of your past lots says how good it is.",
  );
  line(given.finishedMoistureError, "Finished moisture", 0.003, percent, "0.3 points is 0.3%");

  heading(firstRowOfSecondPage, "The wrap");
  line(given.wrapStart, "Wrapped at", 14.25 / 24, look.clock, "hours and minutes");
  line(
    given.wrapLasts,
    "Stays wrapped for",
    3.5 / 24,
    look.span,
    "hours and minutes",
    "Warm, moist leaf stays in the range that food-safety rules watch: set an end time and keep to it.",
  );
  line(given.turnEvery, "Turned every", 35 / 1440, look.span, "hours and minutes");
}

/** A heading across the answers' columns. */
function answersHeading({ put, styleRest }: SheetBuilder, row: number, text: string, note?: string): void {
  put(`E${row}`, text, look.section, note);
  styleRest(`F${row}:K${row}`, look.section);
}

function heads({ put }: SheetBuilder, row: number, names: readonly string[]): void {
  for (const [index, name] of names.entries()) {
    put(`${"EFGHIJK"[index]}${row}`, name || null, index === 0 ? look.columnHeadLeft : look.columnHead);
  }
}

function inShort(builder: SheetBuilder): void {
  const { put } = builder;
  const strong = (format: string) => ({ ...look.result(format), bold: true });
  answersHeading(builder, 4, "In short");
  put("E5", "Pan charges", look.label);
  put(
    found.charges,
    `=TEA.CHARGECOUNT(${given.forPan},${given.panLoad},${given.largestLoad},${given.readability})`,
    strong(look.whole),
  );
  put("G5", " the plan stands at the foot of this sheet", look.remark);
  put("E6", "Heaviest charge, g", look.label);
  put(
    "F6",
    once(
      [found.charges],
      `MAX(TEA.CHARGESPLIT(${given.forPan},${given.panLoad},${given.largestLoad},${given.readability}))`,
    ),
    strong(grams),
  );
  put("E7", "Finished tea expected, g", look.label);
  put("F7", `=${found.expected}`, strong(grams));
  put("E8", "The weight written down", look.label);
  put("F8", `=IF(${given.finished}="","not weighed yet",${found.check})`, look.answer);
}

function freshMoisture(builder: SheetBuilder): void {
  const { put } = builder;
  const past = `'Past lots'!$I$${firstPastRow}:$I$${lastPastRow}`;
  answersHeading(builder, 10, "Fresh moisture");
  heads(builder, 11, ["This lot", "used here", "median", "mean", "lowest", "highest", "past lots"]);
  put(
    "E12",
    `=IF(${given.freshMoisture}="","assumed, from past lots","measured")`,
    look.answer,
    "Nobody can see the moisture of a leaf. Without an oven test it is worked backwards from what your past lots became, and every answer below leans on it: see the table of one point either side.",
  );
  put(found.freshMoisture, `=IF(${given.freshMoisture}="",${found.medianOfPastLots},${given.freshMoisture})`, {
    ...look.result(percent),
    bold: true,
  });
  for (const [index, name] of ["MEDIAN", "AVERAGE", "MIN", "MAX"].entries()) {
    put(`${"GHIJ"[index]}12`, `=IF(COUNT(${past})=0,"",${name}(${past}))`, look.result(percent));
  }
  put("K12", `=COUNT(${past})`, look.result(look.whole));
}

function whatRemains(builder: SheetBuilder): void {
  const { put } = builder;
  const { fresh, aired, siftOuts, forPan } = given;
  answersHeading(builder, 14, "What remains before the pan");
  heads(builder, 15, ["Leaf", "weight, g", "moisture", "water, g", "dry matter, g", "share of the dry"]);
  const rows: readonly [string, string, string][] = [
    ["Fresh", once([fresh], fresh), `=${found.freshMoisture}`],
    ["After airing", once([aired], aired), `=TEA.MOISTURENOW(${fresh},${found.freshMoisture},${aired})`],
    ["Sift-outs", once([siftOuts], siftOuts), `=${found.airedMoisture}`],
    ["For the pan", once([forPan], forPan), `=${found.airedMoisture}`],
  ];
  for (const [index, [name, weight, moisture]] of rows.entries()) {
    const row = remainsRow + index;
    put(`E${row}`, name, look.label);
    put(`F${row}`, weight, look.result(grams));
    put(`G${row}`, moisture, look.result(percent));
    put(`H${row}`, `=TEA.WATER(F${row},G${row})`, look.result(grams));
    put(`I${row}`, `=TEA.DRYMATTER(F${row},G${row})`, look.result(grams));
    put(`J${row}`, once([`I${row}`, `I${remainsRow}`], `I${row}/I${remainsRow}`), look.result(percent));
  }
  put(
    "E20",
    "Missing at the sieve",
    look.label,
    "Aired leaf that is neither with the sift-outs nor with the leaf for the pan: spilled, or a reading that is off.",
  );
  put("F20", once([aired, siftOuts, forPan], `${aired}-${siftOuts}-${forPan}`), look.result(grams));
}

function dryingSteps(builder: SheetBuilder): void {
  const { put, styleRest } = builder;
  answersHeading(
    builder,
    22,
    "Drying steps of the whole lot",
    "One formula that spills. It holds while only water leaves the leaf.",
  );
  put(
    `E${stepsRow}`,
    `=TEA.DRYINGSTEPS(${given.forPan},${found.forPanMoisture},${targets},${targetKinds},${roundNames})`,
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
  answersHeading(builder, 30, "Finished tea");
  put("E31", "Its moisture", look.label);
  put(
    found.finishedMoisture,
    `=IF(${finishedMoisture}<>"",${finishedMoisture},IF(${lastStep}="","",${lastStep}))`,
    look.result(percent),
  );
  put("G31", `=IF(${finishedMoisture}<>""," measured"," the target of the last round")`, look.remark);
  heads(builder, bandRow - 1, ["", "low", "at no loss", "high"]);
  put(
    `E${bandRow}`,
    "Weights that agree, g",
    look.label,
    "From the fresh weight, less the sift-outs, with the least and the most loss and two standard errors either side. It says what the weights allow, not whether the tea is good.",
  );
  put(`F${bandRow}`, `=TEA.FINISHEDBAND(${fresh},${bandArguments})`, look.result(grams));
  styleRest(`G${bandRow}:H${bandRow}`, look.result(grams));
  put("E34", "Expected at the usual loss, g", look.label);
  put(
    found.expected,
    `=TEA.FINISHEDWEIGHT(${given.forPan},${found.forPanMoisture},${found.finishedMoisture},${given.usualLoss})`,
    { ...look.result(grams), bold: true },
  );
  put("E35", "Written down, g", look.label);
  put("F35", once([finished], finished), look.result(grams));
  put("E36", "More than expected, g", look.label);
  put(
    found.difference,
    once([finished, found.expected], `${finished}-${found.expected}`),
    look.result("+0.0;-0.0;0.0"),
  );
  put("E37", "Check", look.label);
  put(
    found.check,
    `=TEA.FINISHEDCHECK(${fresh},${found.freshMoisture},${finished},${bandArguments.slice(bandArguments.indexOf(",") + 1)})`,
    look.answer,
    "agrees: the written weight lies between low and high.\nless lost than expected, more lost than expected: outside, look at the readings.\nmore dry matter out than came in: some reading is wrong.",
  );
  put("E38", "Outturn", look.label);
  put(found.outturn, `=TEA.OUTTURN(${fresh},${finished})`, look.result(percent));
  put("E39", "Leaf ratio", look.label);
  put(found.leafRatio, `=TEA.LEAFRATIO(${fresh},${finished})`, look.result("0.00"));
  put("G39", " fresh leaf for one of finished tea, by weight", look.remark);
  put("E40", "Dry matter recovered", look.label);
  put(
    found.recovery,
    `=TEA.DRYRECOVERY(${fresh},${found.freshMoisture},${finished},${found.finishedMoisture})`,
    look.result(percent),
  );
  put("G40", " sift-outs count as lost here", look.remark);
}

/** What FINISHEDBAND and FINISHEDCHECK share after the fresh weight; the check takes the finished weight in between. */
const bandArguments = [
  found.freshMoisture,
  found.finishedMoisture,
  given.siftOuts,
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
    42,
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
    const inPan = `TEA.MOISTURENOW(${fixed(given.fresh)},$F${row},${fixed(given.aired)})`;
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
      `=TEA.FINISHEDWEIGHT(${given.forPan},${inPan},${found.finishedMoisture},${given.usualLoss})`,
      look.result(grams),
    );
  }
}

const fixed = (reference: string): string => reference.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");

/** The names of the rounds as headings that follow what is typed. */
const roundHeads = (): string[] => roundColumns.map((_, index) => `=A${firstRoundRow + index}&", g"`);

function chargePlan(builder: SheetBuilder): void {
  const { put, styleRest } = builder;
  answersHeading(
    builder,
    planRow - 2,
    "Charge plan: what the scale should read after each round",
    "One formula that spills: a row for each charge and one for the total. Loads are whole steps of the scale; targets are shown to its decimals and not rounded. Leave room below.",
  );
  heads(builder, planRow - 1, ["Charge", "load, g", ...roundHeads()]);
  put(
    `E${planRow}`,
    `=TEA.CHARGEPLAN(${given.forPan},${found.forPanMoisture},${given.panLoad},${targets},${targetKinds},${given.largestLoad},${given.readability},FALSE)`,
    { ...look.label, align: "left", format: "0" },
  );
  styleRest(`E${planRow}:E${lastPlanRow}`, { ...look.label, align: "left", format: "0" });
  styleRest(`F${planRow}:J${lastPlanRow}`, look.result(grams));
}

function turns({ put, styleRest }: SheetBuilder): void {
  const { wrapStart, wrapLasts, turnEvery } = given;
  put("A46", "Unwrap at", look.label);
  put(found.unwrap, once([wrapStart, wrapLasts], `${wrapStart}+${wrapLasts}`), look.result(look.clock));
  put("A47", "Turn at", look.label, "One formula that spills. No turn falls on the unwrapping itself.");
  put(found.firstTurn, `=TEA.TURNTIMES(${wrapStart},${wrapLasts},${turnEvery})`, look.result(look.clock));
  styleRest(`B48:B${lastPlanRow}`, look.result(look.clock));
}

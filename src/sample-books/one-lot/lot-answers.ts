import * as look from "../look";
import { once, type SheetBuilder } from "../sheet-builder";
import { answersHeading, heads, roundHeads } from "./answer-parts";
import { bandRow, found, given, lastPlanRow, planRow, remainsRow, targetKinds, targets } from "./places";

const { grams, percent } = look;

/** What a maker looks at first: the lot in short, what there is for the pan, and the charges with their readings. */
export function lotAnswers(builder: SheetBuilder): void {
  inShort(builder);
  whatRemains(builder);
  chargePlan(builder);
}

function inShort(builder: SheetBuilder): void {
  const { put } = builder;
  const strong = (format: string) => ({ ...look.result(format), bold: true });
  const split = [found.forPan, given.panLoad, given.largestLoad, given.readability].join(",");
  answersHeading(builder, 4, "In short");
  put("E5", "Pan charges", look.label);
  put(found.charges, `=TEA.CHARGECOUNT(${split})`, strong(look.whole));
  put("E6", "Heaviest charge, g", look.label);
  put("F6", once([found.charges], `MAX(TEA.CHARGESPLIT(${split}))`), strong(grams));
  put("E7", "Finished tea expected, g", look.label);
  put("F7", `=${found.expected}`, strong(grams));
  const [low, high] = [`F${bandRow}`, `H${bandRow}`].map((cell) => `TEXT(${cell},"0.0")`);
  put("G7", once([`F${bandRow}`, `H${bandRow}`], `"  "&${low}&" to "&${high}&" would agree"`), look.remark);
  put("E8", "The weight written down", look.label);
  put("F8", `=IF(ISBLANK(${given.finished}),"not weighed yet",${found.check})`, look.answer);
  put(found.assumed, whatIsAssumed(), look.mark);
}

/** What stands in for weights that were left blank, in words. */
function whatIsAssumed(): string {
  const { fresh, aired, siftOuts, forPan } = given;
  const unseen = `IF(N(${found.missing})>0,", although "&TEXT(${found.missing},"0.0")&" g are neither sifted out nor for the pan","")`;
  const sifting = `IF(ISBLANK(${forPan}),"nothing sifted out","sift-outs are what is left over")`;
  const parts = [
    `IF(ISBLANK(${aired}),"not aired"&${unseen},"")`,
    `IF(ISBLANK(${siftOuts}),${sifting},"")`,
    `IF(AND(ISBLANK(${forPan}),NOT(ISBLANK(${siftOuts}))),"all the rest is for the pan","")`,
  ];
  const isAny = `OR(${[aired, siftOuts, forPan].map((cell) => `ISBLANK(${cell})`).join(",")})`;
  return `=IF(ISBLANK(${fresh}),"",IF(${isAny},"Assumed: "&TEXTJOIN("; ",TRUE,${parts.join(",")}),""))`;
}

function whatRemains(builder: SheetBuilder): void {
  const { put } = builder;
  const { fresh, aired, siftOuts, forPan, readability } = given;
  answersHeading(builder, remainsRow - 2, "What remains before the pan");
  heads(builder, remainsRow - 1, ["Leaf", "weight, g", "moisture", "water, g", "dry matter, g", "share of dry"]);
  const named = (name: string, cell: string) => `="${name}"&IF(ISBLANK(${cell}),", assumed","")`;
  const rest = `${found.aired}-${siftOuts}`;
  const inSteps = `IF(N(${readability})>0,ROUND((${rest})/${readability},0)*${readability},${rest})`;
  const leftOver = `IF(ISBLANK(${forPan}),0,MAX(0,${found.aired}-${forPan}))`;
  const rows: readonly [name: string, weight: string, moisture: string][] = [
    ["Fresh", once([fresh], fresh), `=${found.freshMoisture}`],
    [
      named("After airing", aired),
      `=IF(ISBLANK(${aired}),F${remainsRow},${aired})`,
      `=TEA.MOISTURENOW(${fresh},${found.freshMoisture},${found.aired})`,
    ],
    [
      named("Sift-outs", siftOuts),
      `=IF(ISBLANK(${siftOuts}),${once([found.aired], leftOver).slice(1)},${siftOuts})`,
      `=${found.airedMoisture}`,
    ],
    [
      named("For the pan", forPan),
      `=IF(ISBLANK(${forPan}),IF(ISBLANK(${siftOuts}),F${remainsRow + 1},${once([found.aired, siftOuts], inSteps).slice(1)}),${forPan})`,
      `=${found.airedMoisture}`,
    ],
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
    "E16",
    "Missing at the sieve",
    look.label,
    "Aired leaf that is neither with the sift-outs nor with the leaf for the pan: spilled, or a reading that is off. It needs the weighings of both. Where no weight after airing was written down, the fresh weight stands for it, and what the leaf lost overnight counts as missing.",
  );
  // Blanks that may stay blank: nothing waits for them.
  const missing = once([siftOuts, forPan, found.aired], `${found.aired}-${siftOuts}-${forPan}`).slice(1);
  put(found.missing, `=IF(OR(ISBLANK(${siftOuts}),ISBLANK(${forPan})),"not known",${missing})`, look.result(grams));
}

function chargePlan(builder: SheetBuilder): void {
  const { put, styleRest } = builder;
  answersHeading(
    builder,
    planRow - 2,
    "The charges: what the scale should read after each round",
    `One formula that spills: a row for each charge and one for the total, and room for ${lastPlanRow - planRow} charges. Loads are whole steps of the scale; targets are shown to its decimals and not rounded.`,
  );
  heads(builder, planRow - 1, ["Charge", "load, g", ...roundHeads()]);
  put(
    `E${planRow}`,
    `=TEA.CHARGEPLAN(${found.forPan},${found.forPanMoisture},${given.panLoad},${targets},${targetKinds},${given.largestLoad},${given.readability},FALSE)`,
    { ...look.label, align: "left", format: "0" },
  );
  styleRest(`E${planRow}:E${lastPlanRow}`, { ...look.label, align: "left", format: "0" });
  styleRest(`F${planRow}:J${lastPlanRow}`, look.result(grams));
}

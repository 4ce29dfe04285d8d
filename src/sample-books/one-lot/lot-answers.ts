import { textInFormula } from "../../words/in-formula";
import type { OneLotWords, SampleWords } from "../../words/samples";
import * as look from "../look";
import { once, type SheetBuilder } from "../sheet-builder";
import { inWords, saying, sayings } from "../words-of-cells";
import { answersHeading, heads, roundHeads } from "./answer-parts";
import { bandRow, found, given, lastPlanRow, planRow, remainsRow, targetKinds, targets } from "./places";

const { grams, percent } = look;

/** What the check says of the weight written down. */
export const verdicts = [
  "agrees",
  "less lost than expected",
  "more lost than expected",
  "more dry matter out than came in",
] as const;

/** What a maker looks at first: the lot in short, what there is for the pan, and the charges with their readings. */
export function lotAnswers(builder: SheetBuilder, words: SampleWords): void {
  inShort(builder, words);
  whatRemains(builder, words.oneLot.answers.remains);
  chargePlan(builder, words);
}

function inShort(builder: SheetBuilder, words: SampleWords): void {
  const { put } = builder;
  const said = words.oneLot.answers;
  const strong = (format: string) => ({ ...look.result(format), bold: true });
  const split = [found.forPan, given.panLoad, given.largestLoad, given.readability].join(",");
  answersHeading(builder, 4, said.inShort);
  put("E5", said.charges, look.label);
  put(found.charges, `=TEA.CHARGECOUNT(${split})`, strong(look.whole));
  put("E6", said.heaviest, look.label);
  put("F6", once([found.charges], `MAX(TEA.CHARGESPLIT(${split}))`), strong(grams));
  put("E7", said.expected, look.label);
  put("F7", `=${found.expected}`, strong(grams));
  const tenths = (cell: string) => `TEXT(${cell},"0.0")`;
  const [low, high] = [`F${bandRow}`, `H${bandRow}`] as const;
  put("G7", once([low, high], said.wouldAgree(tenths(low), tenths(high))), look.remark);
  put("E8", said.writtenDown, look.label);
  put(
    "F8",
    `=IF(ISBLANK(${given.finished}),${textInFormula(said.notWeighed)},${inWords(found.check, sayings(verdicts, words))})`,
    look.answer,
  );
  put(found.assumed, whatIsAssumed(said.assumed), look.mark);
}

/** What stands in for weights that were left blank, in words. */
function whatIsAssumed(said: OneLotWords["answers"]["assumed"]): string {
  const { fresh, aired, siftOuts, forPan } = given;
  const unseen = `IF(N(${found.missing})>0,${said.unseen(`TEXT(${found.missing},"0.0")`)},"")`;
  const sifting = `IF(ISBLANK(${forPan}),${textInFormula(said.nothingSifted)},${textInFormula(said.leftOver)})`;
  const parts = [
    `IF(ISBLANK(${aired}),${textInFormula(said.notAired)}&${unseen},"")`,
    `IF(ISBLANK(${siftOuts}),${sifting},"")`,
    `IF(AND(ISBLANK(${forPan}),NOT(ISBLANK(${siftOuts}))),${textInFormula(said.allTheRest)},"")`,
  ];
  const all = said.all(`TEXTJOIN(${textInFormula(said.between)},TRUE,${parts.join(",")})`);
  const isAny = `OR(${[aired, siftOuts, forPan].map((cell) => `ISBLANK(${cell})`).join(",")})`;
  return `=IF(ISBLANK(${fresh}),"",IF(${isAny},${all},""))`;
}

function whatRemains(builder: SheetBuilder, said: OneLotWords["answers"]["remains"]): void {
  const { put } = builder;
  const { fresh, aired, siftOuts, forPan, readability } = given;
  answersHeading(builder, remainsRow - 2, said.heading);
  const { leaf, weight, moisture, water, dryMatter, share } = said.heads;
  heads(builder, remainsRow - 1, [leaf, weight, moisture, water, dryMatter, share]);
  const named = (name: string, cell: string) =>
    `=${textInFormula(name)}&IF(ISBLANK(${cell}),${textInFormula(said.assumed)},"")`;
  const rest = `${found.aired}-${siftOuts}`;
  const inSteps = `IF(N(${readability})>0,ROUND((${rest})/${readability},0)*${readability},${rest})`;
  const leftOver = `IF(ISBLANK(${forPan}),0,MAX(0,${found.aired}-${forPan}))`;
  const rows: readonly [name: string, weight: string, moisture: string][] = [
    [said.fresh, once([fresh], fresh), `=${found.freshMoisture}`],
    [
      named(said.aired, aired),
      `=IF(ISBLANK(${aired}),F${remainsRow},${aired})`,
      `=TEA.MOISTURENOW(${fresh},${found.freshMoisture},${found.aired})`,
    ],
    [
      named(said.siftOuts, siftOuts),
      `=IF(ISBLANK(${siftOuts}),${once([found.aired], leftOver).slice(1)},${siftOuts})`,
      `=${found.airedMoisture}`,
    ],
    [
      named(said.forPan, forPan),
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
  put("E16", said.missing, look.label, said.missingNote);
  // Blanks that may stay blank: nothing waits for them.
  const missing = once([siftOuts, forPan, found.aired], `${found.aired}-${siftOuts}-${forPan}`).slice(1);
  const known = `IF(OR(ISBLANK(${siftOuts}),ISBLANK(${forPan})),${textInFormula(said.notKnown)},${missing})`;
  put(found.missing, `=${known}`, look.result(grams));
}

function chargePlan(builder: SheetBuilder, words: SampleWords): void {
  const { put, styleRest } = builder;
  const { plan } = words.oneLot.answers;
  /** Numbers, but for the last. */
  const names = saying({ ...look.label, align: "left", format: "0" }, "total", words);
  answersHeading(builder, planRow - 2, plan.heading, plan.note(lastPlanRow - planRow));
  heads(builder, planRow - 1, [plan.charge, plan.load, ...roundHeads(words.oneLot)]);
  put(
    `E${planRow}`,
    `=TEA.CHARGEPLAN(${found.forPan},${found.forPanMoisture},${given.panLoad},${targets},${targetKinds},${given.largestLoad},${given.readability},FALSE)`,
    names,
  );
  styleRest(`E${planRow}:E${lastPlanRow}`, names);
  styleRest(`F${planRow}:J${lastPlanRow}`, look.result(grams));
}

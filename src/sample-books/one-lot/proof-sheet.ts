import { textInFormula } from "../../words/in-formula";
import type { SampleWords } from "../../words/samples";
import type { Sheet } from "../../workbook/workbook";
import { columnHead, columnHeadLeft, label, remark, result, section, title } from "../look";
import { once, sheetBuilder } from "../sheet-builder";
import { isChoice } from "../words-of-cells";
import {
  bandRow,
  cardCharges,
  eitherSideRow,
  firstPastRow,
  firstRoundRow,
  found,
  given,
  lastPastRow,
  lastPlanRow,
  lastTurnRow,
  onLot,
  planRow,
  roundColumns,
  rounds,
  stepsRow,
} from "./places";

const number = result("0.0000000000");

/** An input of the sheet Lot. */
const of = (name: keyof typeof given): string => onLot(given[name]);

/** The answers of the other sheets once more, in plain arithmetic from the inputs alone, and the differences. */
export function proofSheet(words: SampleWords): Sheet {
  const { proof: said, footers } = words.oneLot;
  const { put, styleRest, widths, height, sheet } = sheetBuilder("Proof");
  put("A1", said.title, title);
  put("A2", said.says, remark);
  put("A3", said.largest, { ...label, bold: true });
  put("A5", said.what, columnHeadLeft);
  put("B5", said.plain, columnHead);
  put("C5", said.told, columnHead);
  put("D5", said.difference, columnHead);

  let row = 6;
  const part = (text: string) => {
    if (row > 6) row += 1;
    put(`A${row}`, text, section);
    styleRest(`B${row}:D${row}`, section);
    row += 1;
  };
  /** Gives the address of the plain answer, for what builds on it. Both blank: the lot waits. */
  const line = (text: string, plain: string, answer: string, compare: "numbers" | "words" = "numbers"): string => {
    const [b, c] = [`B${row}`, `C${row}`];
    put(`A${row}`, text, label);
    put(b, plain, compare === "numbers" ? number : result("General"));
    put(c, `=IF(${answer}="","",${answer})`, compare === "numbers" ? number : result("General"));
    const difference = compare === "numbers" ? `IF(AND(${b}="",${c}=""),"",ABS(${b}-${c}))` : `IF(${b}=${c},0,1)`;
    put(`D${row}`, `=${difference}`, result("0.0E+00"));
    row += 1;
    return b;
  };
  /** A number that only the proof needs. */
  const step = (text: string, plain: string): string => {
    put(`A${row}`, text, remark);
    put(`B${row}`, plain, number);
    row += 1;
    return `B${row - 1}`;
  };

  const afterRound = (round: number, before: string): string => {
    const target = onLot(`B${firstRoundRow + round}`);
    const isKind = (kind: string) => isChoice(onLot(`C${firstRoundRow + round}`), kind, words);
    const byPoints = `IF(${isKind("points")},${before}-${target},${target})`;
    const byWeight = `IF(${isKind("weight")},(${before}-${target})/(1-${target}),${byPoints})`;
    return `IF(${isKind("water")},${before}*(1-${target})/(1-${before}*${target}),${byWeight})`;
  };

  part(said.pastLots);
  const firstPast = row;
  for (let past = firstPastRow; past <= lastPastRow; past += 1) {
    const cell = (column: string) => `'Past lots'!$${column}$${past}`;
    const aired = `IF(ISBLANK(${cell("D")}),${cell("C")},${cell("D")})`;
    const sifted = `IF(ISBLANK(${cell("E")}),0,${cell("E")}/${aired})`;
    const kept = `((1-${sifted})*(1-${of("usualLoss")}))`;
    const plain = `1-${cell("F")}*(1-${cell("G")})/(${cell("C")}*${kept})`;
    line(said.pastLot(past), once([cell("C"), cell("F"), cell("G")], plain), cell("I"));
  }
  const pastRange = `B${firstPast}:B${row - 1}`;
  const median = line(said.median, `=IF(COUNT(${pastRange})=0,"",MEDIAN(${pastRange}))`, onLot(found.medianOfPastLots));
  const fresh = line(
    said.used,
    `=IF(ISBLANK(${of("freshMoisture")}),${median},${of("freshMoisture")})`,
    onLot(found.freshMoisture),
  );

  part(said.beforePan);
  const airedWeight = line(
    said.aired,
    `=IF(ISBLANK(${of("aired")}),IF(ISBLANK(${of("fresh")}),"",${of("fresh")}),${of("aired")})`,
    onLot(found.aired),
  );
  const all = `IF(ISBLANK(${of("forPan")}),0,MAX(0,${airedWeight}-${of("forPan")}))`;
  const siftedOut = line(
    said.siftOuts,
    `=IF(ISBLANK(${of("siftOuts")}),${once([airedWeight], all).slice(1)},${of("siftOuts")})`,
    onLot(found.siftOuts),
  );
  const rest = `${airedWeight}-${siftedOut}`;
  const whole = `IF(OR(ISBLANK(${of("siftOuts")}),${of("readability")}=0),${rest},ROUND((${rest})/${of("readability")},0)*${of("readability")})`;
  const forPan = line(
    said.forPan,
    `=IF(ISBLANK(${of("forPan")}),${once([airedWeight, siftedOut], whole).slice(1)},${of("forPan")})`,
    onLot(found.forPan),
  );
  const aired = line(
    said.airedMoisture,
    once([of("fresh"), airedWeight, fresh], `1-${of("fresh")}*(1-${fresh})/${airedWeight}`),
    onLot(found.airedMoisture),
  );

  part(said.steps);
  const moistures = [aired];
  for (let round = 0; round < rounds; round += 1) {
    const before = moistures[round] as string;
    moistures.push(
      line(
        said.moistureAfter(round + 1),
        once([forPan, before], afterRound(round, before)),
        onLot(`G${stepsRow + 2 + round}`),
      ),
    );
  }
  for (const [round, moisture] of moistures.entries()) {
    if (round === 0) continue;
    const plain = once([forPan, aired, moisture], `${forPan}*(1-${aired})/(1-${moisture})`);
    line(said.lotAfter(round), plain, onLot(`F${stepsRow + 1 + round}`));
  }

  part(said.charges);
  const { wanted, largest, steps, count } = chargeFormulas(forPan);
  const stepsCell = step(said.inSteps, steps);
  const nearest = step(said.nearest, wanted);
  const least = step(said.least, largest(stepsCell));
  const charges = line(said.count, count(nearest, least), onLot(found.charges));
  const each = step(said.each, once([charges], `INT(${stepsCell}/${charges})`));
  const over = step(said.over, once([charges], `${stepsCell}-${each}*${charges}`));
  const counted = `IF(ISNUMBER(${onLot(found.charges)}),${onLot(found.charges)},0)`;
  for (let charge = 1; charge <= cardCharges; charge += 1) {
    const planned = (expression: string) => `=IF(ISNUMBER(${charges}),IF(${charges}<${charge},"",${expression}),"")`;
    const ofPlan = (column: string) =>
      `IF(${counted}<${charge},"",INDEX(${onLot(`${column}${planRow}:${column}${lastPlanRow}`)},${charge}))`;
    const load = line(
      said.load(charge),
      planned(`(${each}+IF(${over}>=${charge},1,0))*${of("readability")}`),
      ofPlan("F"),
    );
    for (const [round, column] of roundColumns.entries()) {
      const reads = planned(`${load}*(1-${aired})/(1-${moistures[round + 1]})`);
      line(said.chargeAfter(charge, round + 1), reads, ofPlan(column));
    }
  }

  part(said.finished);
  const lastMoisture = moistures[rounds] as string;
  const measured = of("finishedMoisture");
  const finishedMoisture = line(
    said.finishedMoisture,
    `=IF(ISBLANK(${measured}),${lastMoisture},${measured})`,
    onLot(found.finishedMoisture),
  );
  const waits = [of("fresh"), airedWeight, fresh, finishedMoisture];
  const net = step(said.net, once(waits, `${of("fresh")}*(1-${fresh})-${siftedOut}*(1-${aired})`));
  const atNoLoss = step(said.atNoLoss, once([net], `${net}/(1-${finishedMoisture})`));
  const freshWeighed = `((1-${fresh})*${of("weightError")})^2`;
  const removedWeighed = `IF(${siftedOut}>0,((1-${aired})*${of("weightError")})^2,0)`;
  const freshMoist = `(${of("fresh")}*${of("freshMoistureError")})^2`;
  const dryError = `(${freshWeighed}+${removedWeighed}+${freshMoist})/${net}^2`;
  const moistureError = `(${of("finishedMoistureError")}/(1-${finishedMoisture}))^2`;
  const relative = step(
    said.relativeError,
    once([net], `SQRT(${dryError}+${moistureError}+(${of("weightError")}/${atNoLoss})^2)`),
  );
  const low = line(said.low, once([net], `${atNoLoss}*(1-${of("mostLoss")})*(1-2*${relative})`), onLot(`F${bandRow}`));
  line(said.atNoLoss, `=${atNoLoss}`, onLot(`G${bandRow}`));
  const high = line(
    said.high,
    once([net], `${atNoLoss}*(1-${of("leastLoss")})*(1+2*${relative})`),
    onLot(`H${bandRow}`),
  );
  line(
    said.expected,
    once([forPan, aired, finishedMoisture], `${forPan}*(1-${aired})*(1-${of("usualLoss")})/(1-${finishedMoisture})`),
    onLot(found.expected),
  );
  const finished = of("finished");
  const verdict = `IF(${finished}>${atNoLoss}*(1+2*${relative}),"more dry matter out than came in",IF(${finished}>${high},"less lost than expected",IF(${finished}<${low},"more lost than expected","agrees")))`;
  line(said.check, once([finished, net], verdict), onLot(found.check), "words");
  line(said.outturn, once([of("fresh"), finished], `${finished}/${of("fresh")}`), onLot(found.outturn));
  line(said.leafRatio, once([of("fresh"), finished], `${of("fresh")}/${finished}`), onLot(found.leafRatio));
  line(
    said.recovery,
    once(
      [of("fresh"), finished, fresh, finishedMoisture],
      `${finished}*(1-${finishedMoisture})/(${of("fresh")}*(1-${fresh}))`,
    ),
    onLot(found.recovery),
  );

  part(said.eitherSide);
  for (const [index, points] of [-0.01, 0, 0.01].entries()) {
    const answer = (column: string) => onLot(`${column}${eitherSideRow + index}`);
    const shifted = line(
      points < 0 ? said.drier : points > 0 ? said.wetter : said.same,
      once([fresh], `${fresh}+(${points})`),
      answer("F"),
    );
    const needed = [of("fresh"), airedWeight, forPan, shifted];
    let moisture = step(said.forPanMoisture, once(needed, `1-${of("fresh")}*(1-${shifted})/${airedWeight}`));
    const inPan = moisture;
    for (const [round, column] of roundColumns.entries()) {
      moisture = step(said.moistureAfter(round + 1), once([inPan], afterRound(round, moisture)));
      const firstLoad = `((${each}+IF(${over}>=1,1,0))*${of("readability")})`;
      line(
        said.firstChargeAfter(round + 1),
        once([charges, inPan], `${firstLoad}*(1-${inPan})/(1-${moisture})`),
        answer(column),
      );
    }
    line(
      said.finishedLot,
      once([inPan, finishedMoisture], `${forPan}*(1-${inPan})*(1-${of("usualLoss")})/(1-${finishedMoisture})`),
      answer("K"),
    );
  }

  part(said.wrap);
  const wrap = ["wrapStart", "wrapLasts", "turnEvery"] as const;
  line(said.firstTurn, once(wrap.map(of), `${of("wrapStart")}+${of("turnEvery")}`), onLot(found.firstTurn));
  line(
    said.turns,
    once(wrap.map(of), `ROUNDUP(ROUND(${of("wrapLasts")}/${of("turnEvery")},6),0)-1`),
    `COUNT(${onLot(`${found.firstTurn}:B${lastTurnRow}`)})`,
  );

  const [agrees, differs, fails] = [said.agrees, said.differs, said.fails].map(textInFormula);
  put("D3", `=MAX(D6:D${row - 1})`, { ...result("0.0E+00"), bold: true });
  put("E3", `=IF(ISNUMBER(D3),IF(D3<1/10^9,${agrees},${differs}),${fails})`, remark);
  widths(38, 22, 22, 14, 36);
  height(1, 24);
  return sheet({
    frozenRows: 5,
    page: { paper: "A4", landscape: false, fitToOnePageWide: true, footer: footers.proof },
  });
}

/** How many charges: the nearest to the load wanted, a tie takes more, raised until none passes the largest load. */
function chargeFormulas(forPan: string) {
  const ratio = `${forPan}/${of("panLoad")}`;
  const fewer = `MAX(1,INT(${ratio}))`;
  const distance = (charges: string) => `ABS(${forPan}/${charges}-${of("panLoad")})`;
  return {
    steps: once([forPan, of("readability")], `ROUND(${forPan}/${of("readability")},0)`),
    wanted: once(
      [forPan, of("panLoad")],
      `IF(${distance(`(${fewer}+1)`)}<=${distance(`(${fewer})`)},${fewer}+1,${fewer})`,
    ),
    largest: (steps: string) =>
      once(
        [forPan, of("largestLoad"), steps],
        `ROUNDUP(${steps}/INT(ROUND(${of("largestLoad")}/${of("readability")},6)),0)`,
      ),
    count: (nearest: string, least: string) => once([nearest], `MAX(${nearest},N(${least}))`),
  };
}

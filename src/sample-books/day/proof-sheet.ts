import type { DayWords, SampleWords } from "../../words/samples";
import type { Sheet } from "../../workbook/workbook";
import { clock, columnHead, input, label, result, span, whole } from "../look";
import { type ProofLine, proofLines } from "../proof-lines";
import { type SheetBuilder, sheetBuilder } from "../sheet-builder";
import { block, heading, pageOf } from "./parts";
import { day, drying, on, packing, picking, stock } from "./places";

const onDay = (reference: string): string => on("Day", reference);
const onDrying = (reference: string): string => on("Drying", reference);
const onPicking = (reference: string): string => on("Picking", reference);
const onPacking = (reference: string): string => on("Packing", reference);
const onStock = (reference: string): string => on("Stock", reference);

/** The day of one pan and rounds that are alike, whose end a formula gives. */
const alike = { charges: "H6", firings: "I6:I8", rest: "J6", start: "K6" } as const;
/** The helper columns of the likely time: what is left, its logarithms and their importance. */
const helper = { first: 13, last: 24 } as const;

export function proofSheet(words: SampleWords): Sheet {
  const { proof: said, stock: ofStock } = words.day;
  const builder = sheetBuilder("Proof");
  const { widths } = builder;
  heading(builder, words.parts.proof.title, words.parts.proof.says);
  alikeRounds(builder, said);
  likelyHelper(builder, said);
  const lines: readonly ProofLine[] = [
    ...dayLines(said.day),
    ...dryingLines(said.drying),
    ...pickingLines(said.picking),
    ...packingLines(said.packing),
    ...stockLines(said.stock, said.stock.tea, stock.tea, stock.verdictRow, ofStock.directions),
    ...stockLines(said.stock, said.stock.leaf, stock.leaf, stock.leafVerdictRow, ofStock.directions),
  ];
  proofLines(builder, lines, words.parts);
  widths(40, 16, 18, 12, 11, 3, 16, 12, 12, 12, 12);
  return builder.sheet({ page: pageOf(words.parts) });
}

function alikeRounds(builder: SheetBuilder, said: DayWords["proof"]): void {
  const { put } = builder;
  block(builder, "G4", said.alike, "H4:K4");
  for (const [column, name] of Object.entries({ H: said.charges, I: said.firing, J: said.rest, K: said.start })) {
    put(`${column}5`, name, columnHead);
  }
  put("H6", 12, input(whole));
  for (const row of [6, 7, 8]) put(`I${row}`, 20 / 1440, input(span));
  put("J6", 3 / 24, input(span));
  put("K6", 9 / 24, input(clock));
}

const times = onDrying(`A${drying.firstRow}:A${drying.lastRow}`);
const weights = onDrying(`B${drying.firstRow}:B${drying.lastRow}`);
const count = `COUNT(${weights})`;
const nth = (list: string, back: number): string => `INDEX(${list},${count}-${back})`;
const [end, target] = [onDrying(drying.endWeight), onDrying(drying.targetWeight)];

/** A row for each reading after the first: R = (W − E)/(W₁ − E), ln of the time, ln(−ln R), (R ln R)². */
function likelyHelper(builder: SheetBuilder, said: DayWords["proof"]): void {
  const { put } = builder;
  block(builder, "G11", said.left, "H11:K11");
  for (const [column, name] of Object.entries({ G: "R", H: "ln t", I: "ln(−ln R)", J: "(R ln R)²" })) {
    put(`${column}12`, name, columnHead);
  }
  for (let row = helper.first; row <= helper.last; row += 1) {
    const at = drying.firstRow + row - helper.first;
    const [time, weight] = [onDrying(`A${at}`), onDrying(`B${at}`)];
    put(`G${row}`, `=IF(ISNUMBER(${weight}),(${weight}-${end})/(INDEX(${weights},1)-${end}),1)`, result("0.0000"));
    put(`H${row}`, `=IF(G${row}<1,LN(${time}-INDEX(${times},1)),0)`, result("0.0000"));
    put(`I${row}`, `=IF(G${row}<1,LN(-LN(G${row})),0)`, result("0.0000"));
    put(`J${row}`, `=IF(G${row}<1,(G${row}*LN(G${row}))^2,0)`, result("0.0000"));
  }
  const column = (name: string): string => `${name}${helper.first}:${name}${helper.last}`;
  const sum = (...names: string[]): string => `SUMPRODUCT(${names.map(column).join(",")})`;
  put("G26", said.exponent, label);
  put(
    "H26",
    `=(${sum("J")}*${sum("J", "H", "I")}-${sum("J", "H")}*${sum("J", "I")})/(${sum("J")}*${sum("J", "H", "H")}-${sum("J", "H")}^2)`,
    result("0.000000"),
  );
}

/** Slowing in step with what is left above a rest. */
const inStep = (rest: string): string =>
  `${nth(times, 0)}+(${nth(times, 0)}-${nth(times, 1)})*LN((${nth(weights, 0)}-${rest})/(${target}-${rest}))/LN((${nth(weights, 1)}-${rest})/(${nth(weights, 0)}-${rest}))`;
const atLastPace = `${nth(times, 0)}+(${nth(times, 0)}-${nth(times, 1)})*(${nth(weights, 0)}-${target})/(${nth(weights, 1)}-${nth(weights, 0)})`;
const likely = `INDEX(${times},1)+(${nth(times, 0)}-INDEX(${times},1))*(LN((${target}-${end})/(INDEX(${weights},1)-${end}))/LN((${nth(weights, 0)}-${end})/(INDEX(${weights},1)-${end})))^(1/H26)`;

const plan = (column: string): string => onDay(`${column}${day.firstRow}:${column}${day.lastRow}`);
const totalOf = (column: string): string => `INDEX(${plan(column)},MATCH("total",${plan("E")},0))`;
const [leaf, load, charges] = [onDay(day.leaf), onDay(day.panLoad), onDay(day.charges)];
const fewer = `INT(${leaf}/${load})`;

const dayLines = (said: DayWords["proof"]["day"]): readonly ProofLine[] => [
  [
    said.charges,
    charges,
    `MAX(IF(${leaf}/${fewer}-${load}<${load}-${leaf}/(${fewer}+1),${fewer},${fewer}+1),ROUNDUP(${leaf}/${onDay(day.maxLoad)},0))`,
  ],
  [said.firings, totalOf("F"), `${charges}*COUNT(${onDay(day.firings)})`],
  [
    said.firingTime,
    `SUM(${plan("J")})-SUM(${plan("I")})-${totalOf("J")}+${totalOf("I")}`,
    `${charges}*SUM(${onDay(day.firings)})`,
  ],
  [said.end, onDay(day.end), `MAX(${plan("J")})`],
  [said.late, `SUM(${plan("K")})-${totalOf("K")}`, `SUM(${plan("I")})-${totalOf("I")}-SUM(${plan("H")})`],
  [
    said.alike,
    `INDEX(TEA.DAYPLAN(${alike.start},${alike.charges},${alike.firings},${alike.rest},1,,,FALSE),${alike.charges}*3+1,6)`,
    `K6+MAX(H6*3*I6,3*I6+2*J6+(H6-1)*I6)`,
  ],
];

const forecast = (column: string, row: number): string => onDrying(`${column}${row}`);
const dried = (moisture: string): string =>
  `${onDrying(drying.weight)}*(1-${onDrying(drying.moisture)})/(1-${onDrying(moisture)})`;

const dryingLines = (said: DayWords["proof"]["drying"]): readonly ProofLine[] => [
  [said.wanted, target, dried(drying.target)],
  [said.end, end, dried(drying.endMoisture)],
  [said.early, forecast("E", drying.forecastRow), `MIN(${atLastPace},${likely})`],
  [said.likely, forecast("F", drying.forecastRow), likely],
  [said.late, forecast("G", drying.forecastRow), `MAX(${inStep(`((${end}+${target})/2)`)},${likely})`],
];

const [counts, sampled, hundreds] = ["A", "B", "C"].map((column) =>
  onPicking(`${column}${picking.firstRow}:${column}${picking.lastRow}`),
) as [string, string, string];
const one = `(SUM(${sampled})/SUM(${counts}))`;
const oneError = `SQRT(SUMPRODUCT((${sampled}-${one}*${counts})^2/${counts})/(COUNT(${counts})-1)/SUM(${counts}))`;
const margin = `TINV(1/20,COUNT(${counts})-1)*${oneError}`;
const fresh = onPicking(picking.fresh);
const buds = (column: string): string => onPicking(`${column}${picking.budsRow}`);
const mean = (column: string): string => onPicking(`${column}${picking.meanRow}`);
const halfWidth = `TINV(1/20,COUNT(${hundreds})-1)*STDEV(${hundreds})/SQRT(COUNT(${hundreds}))`;
const wide = onPicking(picking.halfWidth);
const needed = mean("K");

const pickingLines = (said: DayWords["proof"]["picking"]): readonly ProofLine[] => [
  [
    said.fresh,
    fresh,
    `${onPicking(picking.finished)}*(1-${onPicking(picking.finishedMoisture)})/((1-${onPicking(picking.freshMoisture)})*(1-${onPicking(picking.dryLoss)}))`,
  ],
  [said.hundred, buds("E"), `100*${one}`],
  [said.low, buds("F"), `${fresh}/(${one}+${margin})`],
  [said.buds, buds("G"), `${fresh}/${one}`],
  [said.high, buds("H"), `${fresh}/(${one}-${margin})`],
  [said.time, buds("I"), `${fresh}/${one}/${onPicking(picking.rate)}/24`],
  [said.mean, mean("E"), `AVERAGE(${hundreds})`],
  [said.lowEnd, mean("F"), `AVERAGE(${hundreds})-${halfWidth}`],
  [said.highEnd, mean("G"), `AVERAGE(${hundreds})+${halfWidth}`],
  [said.error, mean("H"), `STDEV(${hundreds})/SQRT(COUNT(${hundreds}))`],
  [
    said.needed,
    needed,
    `IF(TINV(1/20,${needed}-1)*STDEV(${hundreds})<=${wide}*SQRT(${needed}),IF(TINV(1/20,MAX(1,${needed}-2))*STDEV(${hundreds})>${wide}*SQRT(${needed}-1),${needed},0),0)`,
  ],
];

const filled = (column: string, size: number): string => onPacking(`${column}${packing.planRow + size}`);
const [tea, step, scatter, sure] = [packing.finished, packing.readability, packing.scatter, packing.confidence].map(
  onPacking,
) as [string, string, string, string];
const drier = `IF(COUNT(${onPacking(`${packing.moisture}:${packing.driest}`)})=2,(1-${onPacking(packing.driest)})/(1-${onPacking(packing.moisture)}),1)`;
const fill = (row: number): string =>
  `ROUNDUP(ROUND((${onPacking(`A${row}`)}*${drier}+NORMSINV(${sure})*${scatter})/${step},6),0)*${step}`;
const net = onPacking(`A${packing.firstNet}:A${packing.lastNet}`);
const [stated, tolerance] = [onPacking(packing.nominal), onPacking(packing.tolerance)];
const checked = (column: string): string => onPacking(`${column}${packing.checkRow}`);
const shortBy = (times: number): string => `COUNTIF(${net},"<"&(${stated}-${times}*${tolerance}))`;

const packingLines = (said: DayWords["proof"]["packing"]): readonly ProofLine[] => [
  [said.first, filled("F", 1), fill(packing.firstSize)],
  [said.second, filled("F", 2), fill(packing.lastSize)],
  [said.tins, filled("G", 2), `INT((${tea}-${onPacking("B12")}*${filled("F", 1)})/${filled("F", 2)})`],
  [said.left, filled("I", 3), `${tea}-${filled("G", 1)}*${fill(12)}-${filled("G", 2)}*${fill(13)}`],
  [
    said.above,
    filled("J", 4),
    `${filled("G", 1)}*(${fill(12)}-${onPacking("A12")})+${filled("G", 2)}*(${fill(13)}-${onPacking("A13")})`,
  ],
  [said.mean, checked("F"), `AVERAGE(${net})`],
  [said.scatter, checked("H"), `STDEV(${net})`],
  [said.short, checked("I"), shortBy(1)],
  [
    said.verdict,
    checked("E"),
    `IF(${shortBy(2)}>0,"a package short by more than twice the tolerance",IF(AVERAGE(${net})<${stated},"mean below the limit",IF(${shortBy(1)}/COUNT(${net})>1/40,"too many short by more than the tolerance","agrees")))`,
  ],
];

function stockLines(
  said: DayWords["proof"]["stock"],
  name: string,
  { firstRow, lastRow }: { firstRow: number; lastRow: number },
  verdictRow: number,
  directions: DayWords["stock"]["directions"],
): ProofLine[] {
  const list = (column: string): string => onStock(`${column}${firstRow}:${column}${lastRow}`);
  /** A blank outturn is 0 and counts as 1. */
  const ratio = `((${list("D")}=0)+${list("D")})`;
  const { opening, in: comesIn, out, closing } = directions;
  const side = `((${list("B")}="${opening}")+(${list("B")}="${comesIn}")-(${list("B")}="${out}")-(${list("B")}="${closing}"))`;
  const difference = `SUMPRODUCT(${side}*${list("C")}*${ratio})`;
  const error = `SQRT(SUMPRODUCT((${ratio}*${list("E")})^2+(${list("C")}*${list("F")})^2))`;
  return [
    [said.unaccounted(name), onStock(`K${verdictRow}`), difference],
    [said.error(name), onStock(`L${verdictRow}`), error],
    [
      said.verdict(name),
      onStock(`H${verdictRow}`),
      `IF(ABS(${difference})<=NORMSINV(39/40)*${error},"agrees",IF(${difference}>0,"more in than out","more out than in"))`,
    ],
  ];
}

import { textInFormula } from "../../words/in-formula";
import type { SampleWords, SeasonWords } from "../../words/samples";
import type { Sheet } from "../../workbook/workbook";
import { answer, columnHead, columnHeadLeft, label, remark, result, section, title } from "../look";
import { type SheetBuilder, sheetBuilder } from "../sheet-builder";
import { saying } from "../words-of-cells";
import { byLot, largestDifference, season } from "./places";
import { proved } from "./proof-by-lot-sheet";

const number = result("0.000000");
const small = result("0.0E+00");
const columns = ["B", "C", "D", "E", "F", "G", "H", "I", "J", "K"] as const;
const plotRows = season.lastPlotRow - season.firstPlotRow + 1;

/** The same season, flags and forecast from the lots alone, in functions that every worksheet knows. */
export function proofSheet(words: SampleWords): Sheet {
  const said = words.season.proof;
  const builder = sheetBuilder("Proof");
  const { put, widths, height, sheet } = builder;
  put("A1", said.title, title);
  put("A2", said.says, remark);
  put("A3", said.largest, { ...label, bold: true });
  const plain = seasonBlock(builder, words, { top: 5, name: said.plain, formula: plainSeason });
  const told = seasonBlock(builder, words, { top: 17, name: said.told, formula: toldSeason });
  const differences = seasonBlock(builder, words, {
    top: 29,
    name: said.difference,
    isDifference: true,
    formula: (column, row, place) => {
      const [one, other] = [`${column}${plain + place}`, `${column}${told + place}`];
      return row === 0 ? "" : `IF(OR(ISNUMBER(${one}),ISNUMBER(${other})),ABS(${one}-${other}),"")`;
    },
  });
  flags(builder, said);
  forecast(builder, said);
  const all = `B${differences}:K${differences + plotRows},B50:B51,B74:C76`;
  put(largestDifference, `=MAX(${all})`, { ...small, bold: true });
  const [agrees, differs, fails] = [said.agrees, said.differs, said.fails].map(textInFormula);
  put("C3", `=IF(ISNUMBER(B3),IF(B3<1/10^9,${agrees},${differs}),${fails})`, remark);
  widths(38, 16, 16, 13, 15, 14, 12, 13, 14, 18, 17);
  height(1, 24);
  // So that the second part begins a page of its own on paper.
  height(41, 60);
  return sheet({
    page: { paper: "A4", landscape: true, fitToOnePageWide: true, footer: said.footer },
  });
}

/** A formula for each number of a plot: `row` counts from 1, 0 is the total; `place` is its line in the block. */
type Formula = (column: (typeof columns)[number], row: number, place: number, line: number) => string;

interface Block {
  readonly top: number;
  readonly name: string;
  readonly formula: Formula;
  readonly isDifference?: boolean;
}

/** The season as a table of plain cells; gives the line of its first plot. */
function seasonBlock({ put, styleRest }: SheetBuilder, words: SampleWords, block: Block): number {
  const { top, name, formula, isDifference = false } = block;
  const said = words.season.proof;
  put(`A${top}`, name, section);
  styleRest(`B${top}:K${top}`, section);
  put(`A${top + 1}`, said.plot, columnHeadLeft);
  for (const column of columns) put(`${column}${top + 1}`, said.heads[column], columnHead);
  const first = top + 2;
  for (let place = 0; place <= plotRows; place += 1) {
    const line = first + place;
    const isTotal = place === plotRows;
    const plot = `Season!A${season.firstPlotRow + place}`;
    put(`A${line}`, isTotal ? "total" : `=IF(${plot}="","",${plot})`, isTotal ? saying(answer, "total", words) : label);
    for (const column of columns) {
      const text = isDifference
        ? formula(column, 1, place, line)
        : formula(column, isTotal ? 0 : place + 1, place, line);
      const counts = ["B", "C", "D"].includes(column);
      put(`${column}${line}`, `=${text}`, isDifference ? small : counts ? result("0") : number);
    }
  }
  return first;
}

const plainSeason: Formula = (column, row, _, line) => {
  const isTotal = row === 0;
  const plot = `$A${line}`;
  const first = 7;
  const total = first + plotRows;
  const marks = { B: proved.isLot, C: proved.isOpen, D: proved.isLeftOut } as const;
  const counted = (mark: string) =>
    isTotal ? `SUM(${byLot(mark)})` : `COUNTIFS(${byLot(proved.plot)},${plot},${byLot(mark)},1)`;
  const summed = (weight: string) =>
    isTotal
      ? `SUMIFS(${byLot(weight)},${byLot(proved.isLot)},1)`
      : `SUMIFS(${byLot(weight)},${byLot(proved.plot)},${plot},${byLot(proved.isLot)},1)`;
  const hasRows = `${plot}<>"",${counted(marks.B)}+${counted(marks.C)}+${counted(marks.D)}>0`;
  const waits = (expression: string) => (isTotal ? expression : `IF(ISNUMBER($B${line}),${expression},"")`);
  const withLots = (expression: string) => waits(`IF($B${line}=0,"",${expression})`);
  switch (column) {
    case "B":
      return isTotal ? counted(marks.B) : `IF(AND(${hasRows}),${counted(marks.B)},"")`;
    case "C":
    case "D":
      return waits(counted(marks[column]));
    case "E":
      return waits(summed(proved.fresh));
    case "F":
      return waits(summed(proved.finished));
    case "G":
      return withLots(`F${line}/E${line}`);
    case "H":
      return withLots(`E${line}/F${line}`);
    case "I": {
      const land = `Season!B${season.firstPlotRow + row - 1}`;
      const isKnown = `COUNT(B${first}:B${total - 1})=COUNT(I${first}:I${total - 1})`;
      return isTotal ? `IF(${isKnown},SUM(I${first}:I${total - 1}),"")` : waits(`IF(ISNUMBER(${land}),${land},"")`);
    }
    case "J":
      return waits(`IF(ISNUMBER(I${line}),F${line}/I${line},"")`);
    default:
      return waits(`F${line}/F$${total}`);
  }
};

const toldSeason: Formula = (column, row, place, line) => {
  const index = columns.indexOf(column);
  const area = (name: string) => `Season!$${name}$${season.firstPlotRow}:$${name}$${season.lastTableRow}`;
  const told = `INDEX(${area(season.columns[index] as string)},MATCH($A${line},${area(season.firstColumn)},0))`;
  return row === 0 ? told : `IF(ISNUMBER($B${7 + place}),${told},"")`;
};

/** A name, what it is worked out from, and where it stands. */
function line({ put }: SheetBuilder, row: number, name: string, formulas: readonly string[], style = number) {
  put(`A${row}`, name, label);
  for (const [index, formula] of formulas.entries()) put(`${"BC"[index]}${row}`, `=${formula}`, style);
}

function flags(builder: SheetBuilder, said: SeasonWords["proof"]): void {
  const { put, styleRest } = builder;
  put("A42", said.flags, section);
  styleRest("B42:K42", section);
  put("A43", said.flagsSay, remark);
  const distances = byLot(proved.distance);
  line(builder, 45, said.lots, [`COUNT(${byLot(proved.logOutturn)})`], result("0"));
  line(builder, 46, said.median, [`MEDIAN(${byLot(proved.logOutturn)})`]);
  line(builder, 47, said.medianDistance, [`MEDIAN(${distances})`]);
  const unit = `IF(B47>1/10^12,B47/0.6745,IF(AVERAGE(${distances})>1/10^12,1.253314*AVERAGE(${distances}),0))`;
  line(builder, 48, said.unit, [unit]);
  const even = "(B45-MOD(B45,2))";
  const factor = `EXP((4.15+LN(${even})^2/6)/${even})`;
  // Where most lots are alike the mean distance stands in, and the limit that is often advised.
  line(builder, 49, said.limit, [`IF(B47>1/10^12,NORMSINV((1+0.95^(1/B45))/2)*${factor},3.5)`]);
  line(builder, 50, said.zDifference, [`MAX(${byLot(proved.zDifference)})`], small);
  line(builder, 51, said.flagsDiffer, [`SUM(${byLot(proved.flagDiffers)})`], result("0"));
}

/** Both forecasts side by side: all lots, and those without a flag. */
function forecast(builder: SheetBuilder, said: SeasonWords["proof"]): void {
  const { put, styleRest } = builder;
  put("A53", said.forecast, section);
  styleRest("B53:K53", section);
  put("B54", said.allLots, columnHead);
  put("C54", said.unflagged, columnHead);
  const both = (formula: (column: "B" | "C", index: 0 | 1) => string) => [formula("B", 0), formula("C", 1)];
  const counts = [proved.isLot, proved.isUnflagged] as const;
  const today = `Season!$${season.today.replace(/\d/, "$$$&")}`;
  const confidence = `Season!$${season.confidence.replace(/\d/, "$$$&")}`;
  const sum = (weight: string, index: 0 | 1) => `SUMIFS(${byLot(weight)},${byLot(counts[index])},1)`;
  line(
    builder,
    55,
    said.sumFresh,
    both((_, index) => sum(proved.fresh, index)),
  );
  line(
    builder,
    56,
    said.ratio,
    both((column, index) => `${sum(proved.finished, index)}/${column}55`),
  );
  line(
    builder,
    57,
    said.lots,
    both((_, index) => `SUM(${byLot(counts[index])})`),
    result("0"),
  );
  line(
    builder,
    58,
    said.scatter,
    both((column, index) => `SQRT(SUM(${byLot(proved.residuals[index])})/(${column}57-1))`),
  );
  line(
    builder,
    59,
    said.degrees,
    both((column) => `${column}57-1`),
    result("0"),
  );
  line(
    builder,
    60,
    said.worksheetT,
    both((column) => `TINV(1-${confidence},${column}59)`),
  );
  put("D60", said.newton, remark);
  line(
    builder,
    61,
    said.sine,
    both((column) => `${column}60/SQRT(${column}60^2+${column}59)`),
  );
  line(
    builder,
    62,
    said.cosine,
    both((column) => `${column}59/(${column}60^2+${column}59)`),
  );
  line(
    builder,
    63,
    said.within,
    both((column, index) => {
      const series = `${column}61*SUM(${byLot(proved.terms[index])})`;
      return `IF(MOD(${column}59,2)=1,2/PI()*(ATAN(${column}60/SQRT(${column}59))+${series}),${series})`;
    }),
  );
  const density = (column: string) =>
    `EXP(GAMMALN((${column}59+1)/2)-GAMMALN(${column}59/2))/SQRT(${column}59*PI())*(1+${column}60^2/${column}59)^(-(${column}59+1)/2)`;
  line(
    builder,
    64,
    said.t,
    both((column) => `${column}60+(${confidence}-${column}63)/(2*${density(column)})`),
  );
  const blank = (expression: string) => `IF(${today}="","",${expression})`;
  line(
    builder,
    65,
    said.margin,
    both((column) => blank(`IF(${column}58=0,0,${column}64*${column}58*SQRT(${today}+${today}^2/${column}55))`)),
  );
  line(
    builder,
    66,
    said.low,
    both((column) => blank(`MAX(0,MIN(${column}56*${today}-${column}65,${column}79*${today}-${column}81))`)),
  );
  line(
    builder,
    67,
    said.expected,
    both((column) => blank(`${column}56*${today}`)),
  );
  line(
    builder,
    68,
    said.high,
    both((column) => blank(`MIN(${today},MAX(${column}56*${today}+${column}65,${column}79*${today}+${column}81))`)),
  );
  const { low, expected, high } = said.byFunction;
  for (const [index, name] of [low, expected, high].entries()) {
    const told = both((_, from) => blank(`Season!${season.forecastColumns[index]}${season.forecastRows[from]}`));
    line(builder, 70 + index, said.forecastTold(name), told);
    const difference = both((column) => blank(`ABS(${column}${66 + index}-${column}${70 + index})`));
    line(builder, 74 + index, said.forecastDifference(name), difference, small);
  }
  put("A78", said.sameShare, remark);
  line(
    builder,
    79,
    said.meanOutturn,
    both((_, index) => `AVERAGE(${byLot(proved.shares[index])})`),
  );
  line(
    builder,
    80,
    said.deviation,
    both((_, index) => `STDEV(${byLot(proved.shares[index])})`),
  );
  line(
    builder,
    81,
    said.margin,
    both((column) => blank(`IF(${column}80=0,0,${column}64*${column}80*${today}*SQRT(1+1/${column}57))`)),
  );
}

import type { Sheet } from "../../workbook/workbook";
import { answer, columnHead, columnHeadLeft, label, remark, result, section, title } from "../look";
import { sheetBuilder } from "../sheet-builder";
import { byLot, largestDifference, season } from "./places";
import { proved } from "./proof-by-lot-sheet";

const number = result("0.000000");
const small = result("0.0E+00");
const columns = ["B", "C", "D", "E", "F", "G", "H", "I", "J", "K"] as const;
const plotRows = season.lastPlotRow - season.firstPlotRow + 1;

/** The same season, flags and forecast from the lots alone, in functions that every worksheet knows. */
export function proofSheet(): Sheet {
  const builder = sheetBuilder("Proof");
  const { put, widths, height, sheet } = builder;
  put("A1", "Proof", title);
  put("A2", "The same numbers from the sheet Lots alone, by plain arithmetic, without one TEA function.", remark);
  put("A3", "Largest difference", { ...label, bold: true });
  const plain = seasonBlock(builder, 5, "By plain arithmetic", plainSeason);
  const told = seasonBlock(builder, 17, "By TEA.SEASONTABLE", toldSeason);
  const differences = seasonBlock(builder, 29, "Difference", (column, row, place) => {
    const [one, other] = [`${column}${plain + place}`, `${column}${told + place}`];
    return row === 0 ? "" : `IF(OR(ISNUMBER(${one}),ISNUMBER(${other})),ABS(${one}-${other}),"")`;
  });
  flags(builder);
  forecast(builder);
  const all = `B${differences}:K${differences + plotRows},B50:B51,B74:C76`;
  put(largestDifference, `=MAX(${all})`, { ...small, bold: true });
  put(
    "C3",
    '=IF(ISNUMBER(B3),IF(B3<1/10^9,"every answer agrees to nine decimals","look below for the number that differs"),"look below for the error")',
    remark,
  );
  widths(38, 16, 16, 13, 15, 14, 12, 13, 14, 18, 17);
  height(1, 24);
  // So that the second part begins a page of its own on paper.
  height(41, 60);
  return sheet({
    page: { paper: "A4", landscape: true, fitToOnePageWide: true, footer: "&LProof, invented numbers&RPage &P of &N" },
  });
}

/** A formula for each number of a plot: `row` counts from 1, 0 is the total; `place` is its line in the block. */
type Formula = (column: (typeof columns)[number], row: number, place: number, line: number) => string;

/** The season as a table of plain cells; gives the line of its first plot. */
function seasonBlock({ put, styleRest }: ReturnType<typeof sheetBuilder>, top: number, name: string, formula: Formula) {
  const heads = [
    "lots",
    "open",
    "left out",
    "fresh",
    "finished",
    "outturn",
    "leaf ratio",
    "area",
    "finished per area",
    "share of finished",
  ];
  put(`A${top}`, name, section);
  styleRest(`B${top}:K${top}`, section);
  put(`A${top + 1}`, "Plot", columnHeadLeft);
  for (const [index, column] of columns.entries()) put(`${column}${top + 1}`, heads[index] ?? null, columnHead);
  const first = top + 2;
  for (let place = 0; place <= plotRows; place += 1) {
    const line = first + place;
    const isTotal = place === plotRows;
    const plot = `Season!A${season.firstPlotRow + place}`;
    put(`A${line}`, isTotal ? "total" : `=IF(${plot}="","",${plot})`, isTotal ? answer : label);
    for (const column of columns) {
      const isDifference = name === "Difference";
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
function line(
  { put }: ReturnType<typeof sheetBuilder>,
  row: number,
  name: string,
  formulas: readonly string[],
  style = number,
) {
  put(`A${row}`, name, label);
  for (const [index, formula] of formulas.entries()) put(`${"BC"[index]}${row}`, `=${formula}`, style);
}

function flags(builder: ReturnType<typeof sheetBuilder>): void {
  const { put, styleRest } = builder;
  put("A42", "Flags", section);
  styleRest("B42:K42", section);
  put("A43", "From ln(finished / fresh) of every lot with both weights, on the sheet Proof, lot by lot.", remark);
  const distances = byLot(proved.distance);
  line(builder, 45, "Lots", [`COUNT(${byLot(proved.logOutturn)})`], result("0"));
  line(builder, 46, "Median", [`MEDIAN(${byLot(proved.logOutturn)})`]);
  line(builder, 47, "Median distance from it", [`MEDIAN(${distances})`]);
  const unit = `IF(B47>1/10^12,B47/0.6745,IF(AVERAGE(${distances})>1/10^12,1.253314*AVERAGE(${distances}),0))`;
  line(builder, 48, "Distance that counts as z = 1", [unit]);
  const even = "(B45-MOD(B45,2))";
  const factor = `EXP((4.15+LN(${even})^2/6)/${even})`;
  // Where most lots are alike the mean distance stands in, and the limit that is often advised.
  line(builder, 49, "Limit for so many lots", [`IF(B47>1/10^12,NORMSINV((1+0.95^(1/B45))/2)*${factor},3.5)`]);
  line(builder, 50, "Largest difference of z", [`MAX(${byLot(proved.zDifference)})`], small);
  line(builder, 51, "Flags that differ", [`SUM(${byLot(proved.flagDiffers)})`], result("0"));
}

/** Both forecasts side by side: all lots, and those without a flag. */
function forecast(builder: ReturnType<typeof sheetBuilder>): void {
  const { put, styleRest } = builder;
  put("A53", "Forecast", section);
  styleRest("B53:K53", section);
  put("B54", "all lots", columnHead);
  put("C54", "unflagged", columnHead);
  const both = (formula: (column: "B" | "C", index: 0 | 1) => string) => [formula("B", 0), formula("C", 1)];
  const counts = [proved.isLot, proved.isUnflagged] as const;
  const today = `Season!$${season.today.replace(/\d/, "$$$&")}`;
  const confidence = `Season!$${season.confidence.replace(/\d/, "$$$&")}`;
  const sum = (weight: string, index: 0 | 1) => `SUMIFS(${byLot(weight)},${byLot(counts[index])},1)`;
  line(
    builder,
    55,
    "Σ fresh",
    both((_, index) => sum(proved.fresh, index)),
  );
  line(
    builder,
    56,
    "Σ finished / Σ fresh",
    both((column, index) => `${sum(proved.finished, index)}/${column}55`),
  );
  line(
    builder,
    57,
    "Lots",
    both((_, index) => `SUM(${byLot(counts[index])})`),
    result("0"),
  );
  line(
    builder,
    58,
    "Scatter s",
    both((column, index) => `SQRT(SUM(${byLot(proved.residuals[index])})/(${column}57-1))`),
  );
  line(
    builder,
    59,
    "Degrees of freedom",
    both((column) => `${column}57-1`),
    result("0"),
  );
  line(
    builder,
    60,
    "Student's t, the worksheet's",
    both((column) => `TINV(1-${confidence},${column}59)`),
  );
  put("D60", "  the three lines below mend its last digits by one step of Newton's method", remark);
  line(
    builder,
    61,
    "its sine",
    both((column) => `${column}60/SQRT(${column}60^2+${column}59)`),
  );
  line(
    builder,
    62,
    "its cosine, squared",
    both((column) => `${column}59/(${column}60^2+${column}59)`),
  );
  line(
    builder,
    63,
    "how often within ±t",
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
    "Student's t",
    both((column) => `${column}60+(${confidence}-${column}63)/(2*${density(column)})`),
  );
  const blank = (expression: string) => `IF(${today}="","",${expression})`;
  line(
    builder,
    65,
    "Margin",
    both((column) => blank(`IF(${column}58=0,0,${column}64*${column}58*SQRT(${today}+${today}^2/${column}55))`)),
  );
  line(
    builder,
    66,
    "Low",
    both((column) => blank(`MAX(0,MIN(${column}56*${today}-${column}65,${column}79*${today}-${column}81))`)),
  );
  line(
    builder,
    67,
    "Expected",
    both((column) => blank(`${column}56*${today}`)),
  );
  line(
    builder,
    68,
    "High",
    both((column) => blank(`MIN(${today},MAX(${column}56*${today}+${column}65,${column}79*${today}+${column}81))`)),
  );
  for (const [index, name] of ["low", "expected", "high"].entries()) {
    const told = both((_, from) => blank(`Season!${season.forecastColumns[index]}${season.forecastRows[from]}`));
    line(builder, 70 + index, `By TEA.FINISHEDFORECAST, ${name}`, told);
    const difference = both((column) => blank(`ABS(${column}${66 + index}-${column}${70 + index})`));
    line(builder, 74 + index, `Difference, ${name}`, difference, small);
  }
  put("A78", "If lots scatter by the same share whatever their size", remark);
  line(
    builder,
    79,
    "Mean outturn, each lot counted alike",
    both((_, index) => `AVERAGE(${byLot(proved.shares[index])})`),
  );
  line(
    builder,
    80,
    "Its standard deviation",
    both((_, index) => `STDEV(${byLot(proved.shares[index])})`),
  );
  line(
    builder,
    81,
    "Margin",
    both((column) => blank(`IF(${column}80=0,0,${column}64*${column}80*${today}*SQRT(1+1/${column}57))`)),
  );
}

import { textInFormula } from "../../words/in-formula";
import type { SampleWords, SeasonWords } from "../../words/samples";
import { fixed } from "../../workbook/addresses";
import type { Chart, Sheet } from "../../workbook/workbook";
import {
  answer,
  columnHead,
  columnHeadLeft,
  grams,
  input,
  label,
  percent,
  remark,
  result,
  section,
  title,
} from "../look";
import { sheetBuilder } from "../sheet-builder";
import { spilledTable } from "../spilled-table";
import { topOfChart } from "./flags-sheet";
import { plots, springLots } from "./lots";
import { lots, onFlags, onLots, season } from "./places";

const { headRow, firstPlotRow, lastPlotRow, lastTableRow, firstColumn, columns, today, confidence } = season;
const perArea = "0.00";

/** What the season gave by plots, what today's leaf will make, and two charts. */
export function seasonSheet(words: SampleWords): Sheet {
  const said = words.season.season;
  const builder = sheetBuilder("Season");
  const { put, styleRest, widths, height, sheet } = builder;
  put("A1", said.title, title);
  put("A2", said.invented, remark);
  put("A3", said.units, remark);

  put("A5", said.plots, section);
  styleRest("B5:C5", section);
  put(`A${headRow}`, said.plot, columnHeadLeft);
  put(`B${headRow}`, said.land, columnHead);
  put(`C${headRow}`, said.perArea.heading, columnHead, said.perArea.note);
  for (let row = firstPlotRow; row <= lastPlotRow; row += 1) {
    const plot = plots[row - firstPlotRow];
    put(`A${row}`, plot ? words.season.plots[plot.name] : newPlot(row), input());
    put(`B${row}`, plot?.area ?? null, input("0"));
    const told = `IFERROR(INDEX(${tableColumn("N")},MATCH(A${row},${tableColumn("E")},0)),"")`;
    put(`C${row}`, `=IF(A${row}="","",IF(ISBLANK(B${row}),${textInFormula(said.noLand)},${told}))`, {
      ...result(perArea),
      align: "right",
    });
  }

  put("E5", said.byPlots, section, said.byPlotsNote);
  styleRest("F5:O5", section);
  const book = [lots.plot, lots.fresh, lots.finished].map((column) => onLots(column));
  const land = [`A${firstPlotRow}:A${lastPlotRow}`, `B${firstPlotRow}:B${lastPlotRow}`];
  spilledTable(builder, words, { id: "SEASONTABLE", given: [...book, ...land], at: `${firstColumn}${headRow}` });
  styleRest(`E${firstPlotRow}:E${lastTableRow}`, label);
  const formats = ["0", "0", "0", grams, grams, percent, "0.00", "0", perArea, percent];
  for (const [index, column] of columns.entries()) {
    styleRest(`${column}${firstPlotRow}:${column}${lastTableRow}`, result(formats[index] ?? grams));
  }
  const total = `MATCH("total",${tableColumn("E")},0)`;
  const inFull = said.inFull(named(`INDEX(${tableColumn("E")},${total}+1)`, said));
  put(
    "E17",
    `=IFERROR(IF(INDEX(${tableColumn("H")},${total})=0,${textInFormula(said.noneLeftOut)},${inFull}),"")`,
    remark,
  );

  put("A19", said.today, section);
  styleRest("B19:C19", section);
  put("A21", said.todayFresh, label);
  put(today, 1385, input(grams));
  put("A22", said.confidence.label, label);
  put(confidence, 0.95, input("0%"), said.confidence.note);
  put("E19", said.forecast, section, said.forecastNote);
  styleRest("F19:O19", section);
  put("E20", said.from, columnHeadLeft);
  for (const [index, name] of [said.low, said.expected, said.high].entries())
    put(`${"FGH"[index]}20`, name, columnHead);
  const forecasts = [
    [said.allLots, onLots(lots.fresh), onLots(lots.finished)],
    [said.unflagged, onFlags("H"), onFlags("I")],
  ] as const;
  for (const [index, [from, fresh, finished]] of forecasts.entries()) {
    const row = season.forecastRows[index];
    put(`E${row}`, from, label);
    put(`F${row}`, `=TEA.FINISHEDFORECAST(${fixed(today)},${fresh},${finished},${fixed(confidence)})`, result(grams));
    styleRest(`G${row}:G${row}`, { ...answer, format: grams, align: "right" });
    styleRest(`H${row}:H${row}`, result(grams));
  }
  put("I21", said.mendFirst, remark);

  widths(20, 11, 11, 3, 19, 10, 10, 10, 11, 11, 10, 11, 9, 18, 17);
  height(1, 24);
  return sheet({
    charts: charts(said),
    page: {
      paper: "A4",
      landscape: true,
      fitToOnePageWide: true,
      footer: said.footer,
    },
  });
}

/**
 * A plot of the book that no row above names, or nothing. LOOKUP takes whole columns also where a formula is not marked
 * as one of arrays.
 */
function newPlot(row: number): string {
  const [book, above] = [onLots(lots.plot), `$A$${headRow}:$A${row - 1}`];
  return `=IFERROR(TRIM(LOOKUP(2,1/(ISNA(MATCH(TRIM(${book}),TRIM(${above}),0))*(TRIM(${book})<>"")),${book})),"")`;
}

/** What a function says of its arguments, by the headings of the book. */
const named = (told: string, { fresh, finished }: SeasonWords["season"]): string =>
  `SUBSTITUTE(SUBSTITUTE(${told},"finishedWeights",${textInFormula(finished)}),"freshWeights",${textInFormula(fresh)})`;

const tableColumn = (column: string): string => `$${column}$${firstPlotRow}:$${column}$${lastTableRow}`;

function charts({ byDay, perPlot }: SeasonWords["season"]): Chart[] {
  const picked = onFlags("B");
  return [
    {
      kind: "dots",
      title: byDay.title,
      description: byDay.description,
      area: { row: 23, column: 0, rows: 19, columns: 8 },
      series: [
        { name: byDay.asUsual, across: picked, up: onFlags("F"), color: "#2e5e4e" },
        { name: byDay.flagged, across: picked, up: onFlags("G"), color: "#b3261e" },
      ],
      // Empty rows are day 0: the axis begins where the season does.
      across: { title: byDay.picked, format: byDay.day, least: firstDayOfAxis() },
      up: { title: byDay.outturn, format: "0%", least: 0, most: topOfChart },
    },
    {
      kind: "columns",
      title: perPlot.title,
      description: perPlot.description,
      area: { row: 23, column: 8, rows: 19, columns: 7 },
      series: [
        {
          name: perPlot.series,
          across: `Season!$A$${firstPlotRow}:$A$${lastPlotRow}`,
          up: `Season!$C$${firstPlotRow}:$C$${lastPlotRow}`,
          color: "#7a9a5b",
        },
      ],
      across: { title: "" },
      up: { title: perPlot.up, format: "0.0", least: 0 },
    },
  ];
}

/** A few days before the first lot. */
const firstDayOfAxis = (): number => Math.min(...springLots().map(({ picked }) => picked)) - 5;

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
import { topOfChart } from "./flags-sheet";
import { plots, springLots } from "./lots";
import { lots, onFlags, onLots, season } from "./places";

const { headRow, firstPlotRow, lastPlotRow, lastTableRow, firstColumn, columns, today, confidence } = season;
const perArea = "0.00";

/** What the season gave by plots, what today's leaf will make, and two charts. */
export function seasonSheet(): Sheet {
  const { put, styleRest, widths, height, sheet } = sheetBuilder("Season");
  put("A1", "The season at Wren Terrace", title);
  put(
    "A2",
    "Wren Terrace is an invented farm, and every number here is invented. It all comes from the sheet Lots.",
    remark,
  );
  put(
    "A3",
    "Weights in g, land in m², so finished per area is in g for each m². A plot that is new in the book joins the list below: give its land.",
    remark,
  );

  put("A5", "The plots", section);
  styleRest("B5:C5", section);
  put(`A${headRow}`, "Plot", columnHeadLeft);
  put(`B${headRow}`, "Land, m²", columnHead);
  put(`C${headRow}`, "g per m²", columnHead, "From the table beside it; the chart takes it from here.");
  for (let row = firstPlotRow; row <= lastPlotRow; row += 1) {
    const plot = plots[row - firstPlotRow];
    put(`A${row}`, plot?.name ?? newPlot(row), input());
    put(`B${row}`, plot?.area ?? null, input("0"));
    const told = `IFERROR(INDEX(${tableColumn("N")},MATCH(A${row},${tableColumn("E")},0)),"")`;
    put(`C${row}`, `=IF(A${row}="","",IF(ISBLANK(B${row}),"land?",${told}))`, { ...result(perArea), align: "right" });
  }

  put(
    "E5",
    "The season by plots",
    section,
    "Sums of the finished lots. An open lot is only counted, and so is a row that cannot be right.",
  );
  styleRest("F5:O5", section);
  const book = [lots.plot, lots.fresh, lots.finished].map((column) => onLots(column));
  const land = [`A${firstPlotRow}:A${lastPlotRow}`, `B${firstPlotRow}:B${lastPlotRow}`];
  put(`${firstColumn}${headRow}`, `=TEA.SEASONTABLE(${[...book, ...land].join(",")})`, columnHeadLeft);
  styleRest(`F${headRow}:O${headRow}`, columnHead);
  styleRest(`E${firstPlotRow}:E${lastTableRow}`, label);
  const formats = ["0", "0", "0", grams, grams, percent, "0.00", "0", perArea, percent];
  for (const [index, column] of columns.entries()) {
    styleRest(`${column}${firstPlotRow}:${column}${lastTableRow}`, result(formats[index] ?? grams));
  }
  const total = `MATCH("total",${tableColumn("E")},0)`;
  put(
    "E17",
    `=IFERROR(IF(INDEX(${tableColumn("H")},${total})=0,"no row of the book is left out","in full: "&${named(`INDEX(${tableColumn("E")},${total}+1)`)}),"")`,
    remark,
  );

  put("A19", "Today's leaf", section);
  styleRest("B19:C19", section);
  put("A21", "Fresh leaf, g", label);
  put(today, 1385, input(grams));
  put("A22", "Sure of the range to", label);
  put(confidence, 0.95, input("0%"), "A range of 95 % is meant to hold 95 of 100 lots.");
  put(
    "E19",
    "What it will make, g",
    section,
    "Today's leaf at the outturn of the lots in the book, and the range for this one lot.",
  );
  styleRest("F19:O19", section);
  put("E20", "From", columnHeadLeft);
  for (const [index, name] of ["low", "expected", "high"].entries()) put(`${"FGH"[index]}20`, name, columnHead);
  const forecasts = [
    ["all finished lots", onLots(lots.fresh), onLots(lots.finished)],
    ["lots without a flag", onFlags("H"), onFlags("I")],
  ] as const;
  for (const [index, [from, fresh, finished]] of forecasts.entries()) {
    const row = season.forecastRows[index];
    put(`E${row}`, from, label);
    put(
      `F${row}`,
      `=TEA.FINISHEDFORECAST(${absolute(today)},${fresh},${finished},${absolute(confidence)})`,
      result(grams),
    );
    styleRest(`G${row}:G${row}`, { ...answer, format: grams, align: "right" });
    styleRest(`H${row}:H${row}`, result(grams));
  }
  put("I21", "  Flagged lots widen the range: mend them first.", remark);

  widths(20, 11, 11, 3, 19, 10, 10, 10, 11, 11, 10, 11, 9, 18, 17);
  height(1, 24);
  return sheet({
    charts: charts(),
    page: {
      paper: "A4",
      landscape: true,
      fitToOnePageWide: true,
      footer: "&LWren Terrace, an invented farm: spring 2024&RPage &P of &N",
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
const named = (said: string): string =>
  `SUBSTITUTE(SUBSTITUTE(${said},"finishedWeights","“Finished, g”"),"freshWeights","“Fresh, g”")`;

const tableColumn = (column: string): string => `$${column}$${firstPlotRow}:$${column}$${lastTableRow}`;
const absolute = (address: string): string => address.replace(/([A-Z]+)(\d+)/, "$$$1$$$2");

function charts(): Chart[] {
  const picked = onFlags("B");
  return [
    {
      kind: "dots",
      title: "Outturn by day of picking",
      description:
        "A dot for every finished lot of the season, its outturn above the day it was picked on. Flagged lots are larger, in red; the swapped one stands at the upper edge.",
      area: { row: 23, column: 0, rows: 19, columns: 8 },
      series: [
        { name: "as usual", across: picked, up: onFlags("F"), color: "#2e5e4e" },
        { name: "flagged", across: picked, up: onFlags("G"), color: "#b3261e" },
      ],
      // Empty rows are day 0: the axis begins where the season does.
      across: { title: "picked", format: "d mmm", least: firstDayOfAxis() },
      up: { title: "outturn", format: "0%", least: 0, most: topOfChart },
    },
    {
      kind: "columns",
      title: "Finished tea per area, by plot",
      description: "A column for each plot of the farm: g of finished tea for each m² of its land.",
      area: { row: 23, column: 8, rows: 19, columns: 7 },
      series: [
        {
          name: "g per m²",
          across: `Season!$A$${firstPlotRow}:$A$${lastPlotRow}`,
          up: `Season!$C$${firstPlotRow}:$C$${lastPlotRow}`,
          color: "#7a9a5b",
        },
      ],
      across: { title: "" },
      up: { title: "g for each m²", format: "0.0", least: 0 },
    },
  ];
}

/** A few days before the first lot. */
const firstDayOfAxis = (): number => Math.min(...springLots().map(({ picked }) => picked)) - 5;

/** The season as a workbook: the lots, with live formulas beside them and over them. */
import { CellError, type CellValue, type Grid } from "../../cells/values";
import { shownWidth } from "../../core/shown";
import type { LotColumn, SeasonCommandWords } from "../../words/commands";
import { columnName } from "../../workbook/addresses";
import { heading, ink, quiet } from "../../workbook/colours";
import { sheetInFormula } from "../../workbook/references";
import { sheetRows } from "../../workbook/sheet-size";
import type { Cell, Sheet, Style, Workbook } from "../../workbook/workbook";
import type { Season, SeasonLot } from "./season";
import { namesPlots, outturns, plotOf, tableBy, tableColumns } from "./tables";

const title: Style = { bold: true, size: 16, color: heading };
const remark: Style = { color: quiet, italic: true };
const head: Style = { bold: true, color: quiet, align: "right" };
const headLeft: Style = { bold: true, color: quiet };
const text: Style = { color: ink };
const number = (format: string): Style => ({ color: ink, format, align: "right" });

/** The most that a sheet has room for, with a heading and a line below. */
export const mostLots = sheetRows - 2;

export function seasonWorkbook(season: Season, words: SeasonCommandWords): Workbook {
  return {
    name: words.workbook.title,
    sheets: [
      ...(namesPlots(season.lots) ? [tableSheet(season, "plot", words)] : []),
      tableSheet(season, "file", words),
      lotsSheet(season, words),
      ...(season.notCounted.length > 0 ? [leftOutSheet(season, words)] : []),
      columnsSheet(season, words),
    ],
  };
}

/** Where the columns of the sheet Lots stand. */
const columns: readonly LotColumn[] = ["file", "sheet", "row", "lot", "date", "plot", "fresh", "finished", "outturn"];
const columnOf = (name: LotColumn): number => columns.indexOf(name);

/** Through the line that closes the lots: rows that are put in above it count. */
const range = (lots: readonly SeasonLot[], name: LotColumn, from: number): string => {
  const column = columnName(columnOf(name));
  return `$${column}$${from}:$${column}$${lots.length + 2}`;
};

function tableSheet({ lots, unit }: Season, by: "plot" | "file", words: SeasonCommandWords): Sheet {
  const { sheets, byPlots, byBooks, remark: about, columns: own, footer } = words.workbook;
  const given = ([by, "fresh", "finished"] as const).map(
    (each) => `${sheetInFormula(sheets.lots)}!${range(lots, each, 1)}`,
  );
  // Headings that the function spills are English: others are written above what it gives without them.
  const headings = words.table && tableColumns.map(({ name }, at) => (at === 0 ? own[by] : words.table?.heading(name)));
  const formula = `=TEA.SEASONTABLE(${given.join(",")}${headings ? ",,,FALSE" : ""})`;
  const weights = weightFormat(unit);
  const formats = tableColumns.map(({ quantity }) => (quantity.kind === "weight" ? weights : quantity.format));
  const styleOf = (column: number) => (column === 0 ? text : number(formats[column] ?? "General"));
  const headStyle = (column: number) => (column === 0 ? headLeft : head);
  const grid = tableBy(lots, by === "plot" ? plotOf(words.noPlot) : ({ file }) => file);
  const table = headings
    ? [
        ...headings.map((value = "", column) => ({ row: 3, column, value, style: headStyle(column) })),
        ...spilled(grid.slice(1), formula, 4, 0, (_, column) => styleOf(column)),
      ]
    : spilled(grid, formula, 3, 0, (row, column) => (row === 0 ? headStyle(column) : styleOf(column)));
  const wide = (name: string, column: number) => Math.max(12, shownWidth(headings?.[column] ?? name) + 3);
  return {
    ...plainSheet(by === "plot" ? sheets.byPlot : sheets.byBook, table, footer),
    cells: [
      { row: 0, column: 0, value: by === "plot" ? byPlots : byBooks, style: title },
      { row: 1, column: 0, value: about(unit), style: remark },
      ...table,
    ],
    columnWidths: widths(by === "file" ? 40 : 24, ...tableColumns.map(({ name }, at) => wide(name, at)).slice(1)),
    rowHeights: { 0: 24 },
  };
}

function lotsSheet({ lots, unit }: Season, { workbook: words, noPlot }: SeasonCommandWords): Sheet {
  const weights = number(weightFormat(unit));
  const cells: Cell[] = columns.slice(0, -1).map((name, column): Cell => {
    const isWeight = name === "fresh" || name === "finished";
    const value = isWeight && unit !== undefined ? words.weight(name, unit) : words.columns[name];
    return { row: 0, column, value, style: isWeight ? head : headLeft };
  });
  const outturn = columnOf("outturn");
  cells.push({ row: 0, column: outturn, value: words.columns.outturn, style: head });
  const formula = `=TEA.OUTTURN(${range(lots, "fresh", 2)},${range(lots, "finished", 2)})`;
  const answers = outturns(lots);
  for (const [index, { file, sheet, row, lot, date, plot, fresh, finished }] of lots.entries()) {
    const at = index + 1;
    const put = (column: number, value: string | number | undefined, style: Style) => {
      if (value !== undefined && value !== "") cells.push({ row: at, column, value, style });
    };
    put(0, file, text);
    put(1, sheet, text);
    put(2, row, name);
    put(3, lot, name);
    put(4, date, typeof date === "number" ? day : text);
    put(5, plot === "" && namesPlots(lots) ? noPlot : plot, text);
    put(6, fresh, weights);
    put(7, finished, weights);
    const value = inFile(answers[index]?.[0] ?? "");
    cells.push(
      index === 0
        ? { row: at, column: outturn, value, formula, spill: { rows: lots.length + 1, columns: 1 }, style: share }
        : { row: at, column: outturn, value, style: share },
    );
  }
  cells.push({ row: lots.length + 1, column: 0, value: words.closing, style: remark });
  cells.push({ row: lots.length + 1, column: outturn, value: "", style: share });
  return {
    ...plainSheet(words.sheets.lots, cells, words.footer),
    columnWidths: widths(36, 16, 7, 12, 12, 18, 12, 12, 11),
    frozenRows: 1,
  };
}

/** A name, be it a number. */
const name: Style = { color: ink, align: "left" };
const day: Style = { color: ink, format: "yyyy-mm-dd", align: "left" };
const share = number("0.0%");

const leftOutSheet = ({ notCounted }: Season, { workbook: words, why: inWords }: SeasonCommandWords): Sheet => ({
  ...listSheet(
    words.sheets.leftOut,
    [words.columns.file, words.columns.sheet, words.leftOut.cell, words.leftOut.why],
    notCounted.map(({ file, sheet = "", cell = "", why }) => [file, sheet, cell, inWords(why)]),
    words.footer,
  ),
  columnWidths: widths(36, 16, 9, 90),
});

const columnsSheet = ({ columns: taken }: Season, { workbook: words }: SeasonCommandWords): Sheet => ({
  ...listSheet(
    words.sheets.headings,
    [words.columns.file, words.headings.as, words.headings.heading, words.headings.unit, words.headings.instead],
    taken.map(({ file, as, heading, unit = "", instead = [] }) => [
      file,
      words.columns[as],
      heading,
      unit,
      words.listed(instead),
    ]),
    words.footer,
  ),
  columnWidths: widths(36, 12, 40, 8, 40),
});

/** Texts under headings. */
function listSheet(name: string, headings: readonly string[], rows: readonly string[][], footer: string): Sheet {
  const cells = [
    ...headings.map((value, column): Cell => ({ row: 0, column, value, style: headLeft })),
    ...rows.flatMap((row, index) =>
      row.flatMap((value, column): Cell[] => (value === "" ? [] : [{ row: index + 1, column, value, style: text }])),
    ),
  ];
  return { ...plainSheet(name, cells, footer), frozenRows: 1 };
}

const plainSheet = (name: string, cells: readonly Cell[], footer: string): Sheet => ({
  name,
  cells,
  columnWidths: {},
  rowHeights: {},
  merges: [],
  page: { paper: "A4", landscape: true, fitToOnePageWide: true, footer },
});

const widths = (...characters: readonly number[]): Record<number, number> => ({ ...characters });

/** A formula and what it fills. */
function spilled(
  grid: Grid,
  formula: string,
  top: number,
  left: number,
  styleAt: (row: number, column: number) => Style,
): Cell[] {
  const spill = { rows: grid.length, columns: grid[0]?.length ?? 1 };
  return grid.flatMap((line, row) =>
    line.map((value, column): Cell => {
      const cell = { row: top + row, column: left + column, value: inFile(value), style: styleAt(row, column) };
      return row === 0 && column === 0 ? { ...cell, formula, spill } : cell;
    }),
  );
}

const inFile = (value: CellValue): string | number | boolean => (value instanceof CellError ? value.code : value);

function weightFormat(unit: Season["unit"]): string {
  if (unit === undefined) return "General";
  return unit === "g" || unit === "mg" ? "0.0" : "0.000";
}

/** The season as a workbook: the lots, with live formulas beside them and over them. */
import { CellError, type CellValue, type Grid } from "../../cells/values";
import { columnName } from "../../workbook/addresses";
import type { Cell, Sheet, Style, Workbook } from "../../workbook/workbook";
import { outturnHeading, weightHeading } from "./headings";
import { type Season, type SeasonLot, seasonTitle } from "./season";
import { namesPlots, outturns, plotOf, tableBy, tableColumns } from "./tables";

const ink = "#24312a";
const quiet = "#66726a";
const title: Style = { bold: true, size: 16, color: "#2e5e4e" };
const remark: Style = { color: quiet, italic: true };
const head: Style = { bold: true, color: quiet, align: "right" };
const headLeft: Style = { bold: true, color: quiet };
const text: Style = { color: ink };
const number = (format: string): Style => ({ color: ink, format, align: "right" });

/** The most that a sheet has room for, with a heading and a line below. */
export const mostLots = 1_048_576 - 2;

export function seasonWorkbook(season: Season): Workbook {
  return {
    name: seasonTitle,
    sheets: [
      ...(namesPlots(season.lots) ? [tableSheet(season, "By plot", "plot")] : []),
      tableSheet(season, "By book", "file"),
      lotsSheet(season),
      ...(season.notCounted.length > 0 ? [leftOutSheet(season)] : []),
      columnsSheet(season),
    ],
  };
}

/** Where the columns of the sheet Lots stand. */
const columns = ["file", "sheet", "row", "lot", "date", "plot", "fresh", "finished", "outturn"] as const;
const columnOf = (name: (typeof columns)[number]): number => columns.indexOf(name);

/** Through the line that closes the lots: rows that are put in above it count. */
const range = (lots: readonly SeasonLot[], name: (typeof columns)[number], from: number): string => {
  const column = columnName(columnOf(name));
  return `$${column}$${from}:$${column}$${lots.length + 2}`;
};

function tableSheet({ lots, unit }: Season, name: string, by: "plot" | "file"): Sheet {
  const given = [by, "fresh", "finished"] as const;
  const formula = `=TEA.SEASONTABLE(${given.map((each) => `Lots!${range(lots, each, 1)}`).join(",")})`;
  const weights = weightFormat(unit);
  const formats = tableColumns.map(({ quantity }) => (quantity.kind === "weight" ? weights : quantity.format));
  const table = spilled(tableBy(lots, by === "plot" ? plotOf : ({ file }) => file), formula, 3, 0, (row, column) => {
    if (row === 0) return column === 0 ? headLeft : head;
    return column === 0 ? text : number(formats[column] ?? "General");
  });
  const weighed = unit === undefined ? "in the unit of the books" : `in ${unit}`;
  return {
    ...plainSheet(name, [
      { row: 0, column: 0, value: by === "plot" ? "The season by plots" : "The season by books", style: title },
      {
        row: 1,
        column: 0,
        value: `Weights ${weighed}. It all comes from the sheet Lots and follows when a weight there changes.`,
        style: remark,
      },
      ...table,
    ]),
    columnWidths: widths(
      by === "file" ? 40 : 24,
      ...tableColumns.slice(1).map(({ name }) => Math.max(12, name.length + 3)),
    ),
    rowHeights: { 0: 24 },
  };
}

function lotsSheet({ lots, unit }: Season): Sheet {
  const weights = number(weightFormat(unit));
  const cells: Cell[] = columns.slice(0, -1).map((name, column): Cell => {
    const isWeight = name === "fresh" || name === "finished";
    return { row: 0, column, value: isWeight ? weightHeading(name, unit) : name, style: isWeight ? head : headLeft };
  });
  const outturn = columnOf("outturn");
  cells.push({ row: 0, column: outturn, value: outturnHeading, style: head });
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
    put(5, plot === "" && namesPlots(lots) ? plotOf(lots[index] as SeasonLot) : plot, text);
    put(6, fresh, weights);
    put(7, finished, weights);
    const value = inFile(answers[index]?.[0] ?? "");
    cells.push(
      index === 0
        ? { row: at, column: outturn, value, formula, spill: { rows: lots.length + 1, columns: 1 }, style: share }
        : { row: at, column: outturn, value, style: share },
    );
  }
  cells.push({ row: lots.length + 1, column: 0, value: closing, style: remark });
  cells.push({ row: lots.length + 1, column: outturn, value: "", style: share });
  return {
    ...plainSheet("Lots", cells),
    columnWidths: widths(36, 16, 7, 12, 12, 18, 12, 12, 11),
    frozenRows: 1,
  };
}

const closing = "The lots end here: put in more rows above this line.";
/** A name, be it a number. */
const name: Style = { color: ink, align: "left" };
const day: Style = { color: ink, format: "yyyy-mm-dd", align: "left" };
const share = number("0.0%");

const leftOutSheet = ({ notCounted }: Season): Sheet => ({
  ...plainSheet("Left out", [
    ...headings("file", "sheet", "cell", "why it is not counted"),
    ...notCounted.flatMap(({ file, sheet = "", cell = "", why }, index) =>
      [file, sheet, cell, why].flatMap((value, column): Cell[] =>
        value === "" ? [] : [{ row: index + 1, column, value, style: text }],
      ),
    ),
  ]),
  columnWidths: widths(36, 16, 9, 90),
  frozenRows: 1,
});

const columnsSheet = ({ columns: taken }: Season): Sheet => ({
  ...plainSheet("Headings", [
    ...headings("file", "taken for", "heading in the book", "unit", "could be meant as well"),
    ...taken.flatMap(({ file, as, heading, unit = "", instead = [] }, index) =>
      [file, as, heading, unit, instead.join("; ")].flatMap((value, column): Cell[] =>
        value === "" ? [] : [{ row: index + 1, column, value, style: text }],
      ),
    ),
  ]),
  columnWidths: widths(36, 12, 40, 8, 40),
  frozenRows: 1,
});

const headings = (...names: string[]): Cell[] =>
  names.map((value, column) => ({ row: 0, column, value, style: headLeft }));

const plainSheet = (name: string, cells: readonly Cell[]): Sheet => ({
  name,
  cells,
  columnWidths: {},
  rowHeights: {},
  merges: [],
  page: { paper: "A4", landscape: true, fitToOnePageWide: true, footer: "&R&A, page &P of &N" },
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

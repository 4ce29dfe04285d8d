/**
 * A workbook as plain data, between the files, the engine and the sample books. Rows and columns count from 0;
 * formulas are written as in a cell, `=TEA.OUTTURN(B4,B5)`. This one schema makes the types (workbook.ts) and checks
 * what a browser kept: a field stands here or nowhere.
 */
import "./zod-under-policy";
import { z } from "zod";

export const area = z.object({ row: z.int(), column: z.int(), rows: z.int(), columns: z.int() });

export const style = z.object({
  format: z.string().exactOptional(),
  bold: z.boolean().exactOptional(),
  italic: z.boolean().exactOptional(),
  /** In points. */
  size: z.number().exactOptional(),
  /** Colours are "#rrggbb". */
  color: z.string().exactOptional(),
  fill: z.string().exactOptional(),
  align: z.enum(["left", "center", "right"]).exactOptional(),
  wrap: z.boolean().exactOptional(),
  border: z.enum(["thin", "bottom"]).exactOptional(),
});

const spill = z.object({
  rows: z.int(),
  columns: z.int(),
  /** The area was given to the formula, as in old files: what does not fit stays outside. */
  isFixed: z.literal(true).exactOptional(),
});

export const cell = z.object({
  row: z.int(),
  column: z.int(),
  /** A constant, or the cached result of the formula. An error is its code, such as "#N/A". */
  value: z.union([z.number(), z.string(), z.boolean()]).exactOptional(),
  /** The value is a text, although it reads like an error. */
  isText: z.literal(true).exactOptional(),
  formula: z.string().exactOptional(),
  /** A formula that spills: the size of its answer, this cell included. The other cells hold its cached values. */
  spill: spill.exactOptional(),
  style: style.exactOptional(),
  note: z.string().exactOptional(),
});

/** How a sheet prints. */
export const pageSetup = z.object({
  paper: z.enum(["A4", "A5"]),
  landscape: z.boolean(),
  fitToOnePageWide: z.boolean(),
  footer: z.string().exactOptional(),
  /** The part that prints; absent, everything does. */
  printArea: area.exactOptional(),
  /** A row of headings that is printed again at the top of every page. */
  repeatedRow: z.int().exactOptional(),
});

/** A worksheet table. The first row of its area holds the headings, each a text that no other has. */
export const table = z.object({
  /** No sheet has another table of this name. */
  name: z.string(),
  area,
  /** A row of totals follows the area. */
  hasTotals: z.literal(true).exactOptional(),
});

/** Ranges are written as in a formula, `Lots!$B$6:$B$90`. */
export const chartSeries = z.object({ name: z.string(), across: z.string(), up: z.string(), color: z.string() });

export const chartAxis = z.object({
  title: z.string(),
  format: z.string().exactOptional(),
  /** Where the axis begins and ends; absent, whoever draws the chart chooses. */
  least: z.number().exactOptional(),
  most: z.number().exactOptional(),
});

/** Columns stand over names; dots stand where two numbers meet. */
export const chart = z.object({
  kind: z.enum(["columns", "dots"]),
  title: z.string(),
  /** What it shows, for those who cannot see it. */
  description: z.string(),
  /** The cells that it lies over. */
  area,
  series: z.array(chartSeries),
  across: chartAxis,
  up: chartAxis,
});

/** Cells that lead somewhere when they are pressed. */
export const link = z.object({
  area,
  /** Outside the workbook, such as `https://…`. */
  address: z.string().exactOptional(),
  /** Inside it, such as `Lot!B4` or a name. */
  place: z.string().exactOptional(),
});

/** A name that formulas use for cells, a number or a formula. */
export const definedName = z.object({
  name: z.string(),
  /** Written as in a cell: `=Lot!$B$4`, `=0.25`. */
  formula: z.string(),
  /** The sheet whose formulas know it; absent, all do. */
  sheet: z.string().exactOptional(),
});

/** By row or column, which are keys, and so texts where they are kept. */
const sizes = z.record(z.string(), z.number());

export const sheet = z.object({
  name: z.string(),
  cells: z.array(cell),
  /** Widths in characters, by column. */
  columnWidths: sizes,
  /** Heights in points, by row. */
  rowHeights: sizes,
  merges: z.array(area),
  isHidden: z.literal(true).exactOptional(),
  hiddenRows: z.array(z.int()).exactOptional(),
  hiddenColumns: z.array(z.int()).exactOptional(),
  frozenRows: z.int().exactOptional(),
  page: pageSetup.exactOptional(),
  tables: z.array(table).exactOptional(),
  charts: z.array(chart).exactOptional(),
  links: z.array(link).exactOptional(),
});

export const workbook = z.object({
  name: z.string(),
  sheets: z.array(sheet),
  names: z.array(definedName).exactOptional(),
});

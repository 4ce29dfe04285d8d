/** Where things stand in the book, for the sheets that refer to each other. */

/** Headings stand in row 1 of the sheets with a row for each lot, so that a row that a message names is that row. */
export const firstLotRow = 2;
/** Rows for forty lots more than the season has so far. */
export const lastLotRow = 121;

/** A column of a sheet with a row for each lot; with its heading where a function should find it. */
const columnOf =
  (sheet: string) =>
  (column: string, { heading = false } = {}): string =>
    `${sheet}!$${column}$${heading ? 1 : firstLotRow}:$${column}$${lastLotRow}`;

export const onLots = columnOf("Lots");
export const onFlags = columnOf("Flags");
export const byLot = columnOf("'Proof, lot by lot'");

/** Columns of the sheet Lots. */
export const lots = { plot: "C", fresh: "E", finished: "F", flag: "H" } as const;

/** The sheet Season: plots and their land on the left, the spilled table on the right. */
export const season = {
  headRow: 6,
  firstPlotRow: 7,
  /** Room for three more plots. */
  lastPlotRow: 14,
  /** Where the table ends when every row for plots is used, with its total and the line on rows left out. */
  lastTableRow: 16,
  firstColumn: "E",
  columns: ["F", "G", "H", "I", "J", "K", "L", "M", "N", "O"],
  today: "B21",
  confidence: "B22",
  /** The forecast from all lots, and from those without a flag. */
  forecastRows: [21, 22],
  forecastColumns: ["F", "G", "H"],
} as const;

/** On the sheet Proof: what the sheet with a row for each lot takes from it, and the line to look at. */
export const yardstick = {
  median: "$B$46",
  unit: "$B$48",
  slopes: ["$B$56", "$C$56"],
  degrees: ["$B$59", "$C$59"],
  cosines: ["$B$62", "$C$62"],
} as const;
export const largestDifference = "B3";

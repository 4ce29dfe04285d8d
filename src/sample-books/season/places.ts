/** Where things stand in the book, for the sheets that refer to each other. */

/** Headings stand in row 1 of the sheets with a row for each lot, so that a row that a message names is that row. */
export const firstLotRow = 2;
/** Rows for forty lots more than the season has so far. */
export const lastLotRow = 121;
/** A line that closes the book: rows that are put in above it belong to every range, whichever rows are taken out. */
export const closingRow = lastLotRow + 1;
/** How far the sheets that follow the book lot by lot reach: rows may be put into it. */
export const lastFollowingRow = 161;

/** A column of the book from its heading to its closing line, both of which stay when lots come and go. */
export const onLots = (column: string): string => `Lots!$${column}$1:$${column}$${closingRow}`;

/** A column of a sheet that follows the book lot by lot. */
const columnOf = (sheet: string) => (column: string) =>
  `${sheet}!$${column}$${firstLotRow}:$${column}$${lastFollowingRow}`;

export const onFlags = columnOf("Flags");
export const byLot = columnOf("'Proof, lot by lot'");

/**
 * What the book has in the row of this cell's own number, never a cell of it by its address: a lot that is taken out
 * leaves no broken reference, and one that is put in or sorted elsewhere is found where it stands.
 */
export const inLot = (column: string): string => `IF(ROW()<ROWS(${onLots(column)}),INDEX(${onLots(column)},ROW()),"")`;

/** Columns of the sheet Lots; outturn, z and flag spill from one formula. */
export const lots = {
  number: "A",
  picked: "B",
  plot: "C",
  fresh: "E",
  finished: "F",
  outturn: "G",
  z: "H",
  flag: "I",
} as const;

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
  limit: "$B$49",
  slopes: ["$B$56", "$C$56"],
  degrees: ["$B$59", "$C$59"],
  cosines: ["$B$62", "$C$62"],
} as const;
export const largestDifference = "B3";

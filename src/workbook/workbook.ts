/**
 * A workbook as plain data, between the files, the engine and the sample books. Rows and columns count from 0;
 * formulas are written as in a cell, `=TEA.OUTTURN(B4,B5)`.
 */
export interface Workbook {
  readonly name: string;
  readonly sheets: readonly Sheet[];
  readonly names?: readonly DefinedName[];
}

/** A name that formulas use for cells, a number or a formula. */
export interface DefinedName {
  readonly name: string;
  /** Written as in a cell: `=Lot!$B$4`, `=0.25`. */
  readonly formula: string;
  /** The sheet whose formulas know it; absent, all do. */
  readonly sheet?: string;
}

export interface Sheet {
  readonly name: string;
  readonly cells: readonly Cell[];
  /** Widths in characters, by column. */
  readonly columnWidths: Readonly<Record<number, number>>;
  /** Heights in points, by row. */
  readonly rowHeights: Readonly<Record<number, number>>;
  readonly merges: readonly Area[];
  readonly isHidden?: true;
  readonly hiddenRows?: readonly number[];
  readonly hiddenColumns?: readonly number[];
  readonly frozenRows?: number;
  readonly page?: PageSetup;
  readonly tables?: readonly Table[];
  readonly charts?: readonly Chart[];
  readonly links?: readonly Link[];
}

/** Cells that lead somewhere when they are pressed. */
export interface Link {
  readonly area: Area;
  /** Outside the workbook, such as `https://…`. */
  readonly address?: string;
  /** Inside it, such as `Lot!B4` or a name. */
  readonly place?: string;
}

export interface Area {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

export interface Cell {
  readonly row: number;
  readonly column: number;
  /** A constant, or the cached result of the formula. An error is its code, such as "#N/A". */
  readonly value?: number | string | boolean;
  /** The value is a text, although it reads like an error. */
  readonly isText?: true;
  readonly formula?: string;
  /** A formula that spills: the size of its answer, this cell included. The other cells hold its cached values. */
  readonly spill?: Spill;
  readonly style?: Style;
  readonly note?: string;
}

export interface Spill {
  readonly rows: number;
  readonly columns: number;
  /** The area was given to the formula, as in old files: what does not fit stays outside. */
  readonly isFixed?: true;
}

/** The errors that a file can hold as constants. */
export const isErrorCode = (value: unknown): value is string =>
  typeof value === "string" && /^#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A)$/.test(value);

export interface Style {
  readonly format?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  /** In points. */
  readonly size?: number;
  /** Colours are "#rrggbb". */
  readonly color?: string;
  readonly fill?: string;
  readonly align?: "left" | "center" | "right";
  readonly wrap?: boolean;
  readonly border?: "thin" | "bottom";
}

/** The font of every cell; its size is that of cells without a size of their own. */
export const usualFont = { name: "Arial", size: 10 } as const;

/** How a sheet prints. */
export interface PageSetup {
  readonly paper: "A4" | "A5";
  readonly landscape: boolean;
  readonly fitToOnePageWide: boolean;
  readonly footer?: string;
  /** The part that prints; absent, everything does. */
  readonly printArea?: Area;
  /** A row of headings that is printed again at the top of every page. */
  readonly repeatedRow?: number;
}

/** A worksheet table. The first row of its area holds the headings, each a text that no other has. */
export interface Table {
  /** No sheet has another table of this name. */
  readonly name: string;
  readonly area: Area;
  /** A row of totals follows the area. */
  readonly hasTotals?: true;
}

/** Columns stand over names; dots stand where two numbers meet. */
export interface Chart {
  readonly kind: "columns" | "dots";
  readonly title: string;
  /** What it shows, for those who cannot see it. */
  readonly description: string;
  /** The cells that it lies over. */
  readonly area: Area;
  readonly series: readonly ChartSeries[];
  readonly across: ChartAxis;
  readonly up: ChartAxis;
}

/** Ranges are written as in a formula, `Lots!$B$6:$B$90`. */
export interface ChartSeries {
  readonly name: string;
  readonly across: string;
  readonly up: string;
  readonly color: string;
}

export interface ChartAxis {
  readonly title: string;
  readonly format?: string;
  /** Where the axis begins and ends; absent, whoever draws the chart chooses. */
  readonly least?: number;
  readonly most?: number;
}

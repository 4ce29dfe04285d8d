/** What the commands say that speak every language. */
import type { WeightUnit } from "../sheet-check/units";
import type { FileRefusal } from "../xlsx/refusals";
import type { Few } from "../xlsx/remarks";

export interface CommandWords {
  readonly refused: (why: FileRefusal) => string;
  readonly check: CheckWords;
  readonly season: SeasonCommandWords;
}

interface CheckWords {
  readonly notLookedThrough: (file: string, why: string) => string;
  readonly passedOver: (sheet: string) => string;
  readonly found: (file: string, cells: number, things: number) => string;
  readonly inAll: (files: number, things: number) => string;
  /** A cell, and what stands out in it. */
  readonly thing: (place: string, title: string, words: string) => string;
}

/** What is taken of a lot. */
export type Taken = "lot" | "date" | "plot" | "fresh" | "finished";

/** One of the two weights of a lot. */
export type Weighed = "fresh" | "finished";

/** Why a lot, a sheet or a whole file is not counted. */
export type WhyNotCounted =
  | FixedWhyNotCounted
  | { readonly kind: "same file"; readonly as: string }
  | { readonly kind: "refused"; readonly why: FileRefusal }
  | { readonly kind: "not read"; readonly problem: string }
  | { readonly kind: "rows of others"; readonly rows: number }
  /** With their units. */
  | { readonly kind: "more tea than leaf"; readonly finished: string; readonly fresh: string }
  | { readonly kind: "no weight"; readonly which: Weighed }
  | { readonly kind: "error"; readonly which: Weighed; readonly code: string }
  | { readonly kind: "text"; readonly which: Weighed; readonly text: string }
  | { readonly kind: "not above 0"; readonly which: Weighed; readonly value: string };

export type FixedWhyNotCounted = "far apart" | "hidden" | "own season" | "no headings" | "no unit";

/** A heading, and what its column was taken for. */
export interface TakenHeading {
  readonly as: Taken;
  readonly heading: string;
  readonly unit?: WeightUnit;
  /** Headings that could have been meant as well. */
  readonly instead?: readonly string[];
}

export interface SeasonCommandWords {
  readonly why: (why: WhyNotCounted) => string;
  readonly readSoFar: (read: number, files: number) => string;
  readonly unknownHeading: (heading: string, as: Taken, alike: Few) => string;
  readonly tooMany: (lots: number) => string;
  readonly nothingWritten: string;
  readonly written: (file: string, lots?: number) => string;
  readonly notWritten: (problem: string) => string;
  readonly noLots: (files: number) => string;
  readonly summary: (counted: SeasonCounts) => string;
  readonly taken: string;
  readonly notCounted: string;
  readonly countedTwice: string;
  readonly alike: (file: string, lots: number, as: string) => string;
  readonly takenFrom: (files: Few, headings: readonly TakenHeading[]) => string;
  /** Cells of a sheet, or whole files. */
  readonly places: (
    where: { readonly file: string; readonly sheet: string } | undefined,
    named: Few,
    why: string,
  ) => string;
  readonly more: (lines: number) => string;
  /** What stands where a lot names no plot. */
  readonly noPlot: string;
  /** What SEASONTABLE says, where cells do not speak this language by themselves. */
  readonly table: { readonly heading: (name: string) => string; readonly total: string } | undefined;
  readonly workbook: SeasonWorkbookWords;
}

export interface SeasonCounts {
  readonly lots: number;
  readonly books: number;
  readonly files: number;
  readonly open: number;
  readonly unit: WeightUnit | undefined;
}

type SeasonSheet = "byPlot" | "byBook" | "lots" | "leftOut" | "headings";
export type LotColumn = "file" | "sheet" | "row" | Taken | "outturn";

interface SeasonWorkbookWords {
  /** By which a written season is known when it lies among the books. */
  readonly title: string;
  readonly sheets: Readonly<Record<SeasonSheet, string>>;
  readonly byPlots: string;
  readonly byBooks: string;
  readonly remark: (unit: WeightUnit | undefined) => string;
  readonly columns: Readonly<Record<LotColumn, string>>;
  readonly weight: (which: Weighed, unit: WeightUnit) => string;
  readonly closing: string;
  readonly leftOut: Readonly<Record<"cell" | "why", string>>;
  readonly headings: Readonly<Record<"as" | "heading" | "unit" | "instead", string>>;
  readonly listed: (headings: readonly string[]) => string;
  readonly footer: string;
}

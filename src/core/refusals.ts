/**
 * What a calculation says when it cannot answer, as data: which argument, what it must be or do, what there was
 * instead, and what may be the matter. Every language renders it (`english-refusals.ts`, and a folder of words for
 * each other one) with a `switch` over its kinds, so that a kind without words does not compile. Where no number and
 * no name stands in it, a part is said by its English.
 */

export interface Refusal {
  /** The parameter that the maker has to look at. */
  readonly argument: string;
  /** `#VALUE!` for an argument out of its bounds; `#N/A` for sound data that have no answer. */
  readonly code: "#VALUE!" | "#N/A";
  readonly must: Requirement;
  readonly found: Finding;
  /** What may be the matter with what was found. */
  readonly hint?: Hint | undefined;
  /** Where it was found. */
  readonly place?: Place | undefined;
  /** What to ask oneself about two arguments that do not go together. */
  readonly question?: Question | undefined;
}

/** Why a cell holds an error of ours. */
export type Reason =
  | Refusal
  | "the numbers are too large or too small to calculate with"
  | { readonly kind: "not worked out"; readonly problem: string };

/** The item of a list, or the step of a table, counted from 1. */
export interface Place {
  readonly in: "list" | "step";
  readonly number: number;
}

export type Requirement = { readonly be: Being } | { readonly do: Doing };

/** What an argument must be. Also what a function's page says that it accepts. */
export type Being =
  | FixedBeing
  | { readonly kind: "word"; readonly words: readonly string[] }
  | { readonly kind: "smooth"; readonly ids: readonly string[] }
  | { readonly kind: "error of"; readonly being: Being; readonly name: string }
  | { readonly kind: "at most moisture"; readonly moisture: number; readonly asLossOf?: "weight" | "points" }
  | {
      readonly kind: "limit";
      readonly is: "at least" | "at most" | "above" | "below";
      readonly limit: number;
      readonly what: LimitName;
    }
  | { readonly kind: "at most steps"; readonly weight: number; readonly readability: number }
  | { readonly kind: "whole steps"; readonly readability: number }
  | { readonly kind: "at least"; readonly least: number; readonly argument: string }
  | { readonly kind: "at most"; readonly most: number; readonly argument: string }
  | { readonly kind: "above dry matter left"; readonly stage: string; readonly weight: number }
  | { readonly kind: "few charges"; readonly most: number; readonly weight: number }
  | { readonly kind: "between breaks"; readonly seconds: number }
  | { readonly kind: "few turns"; readonly most: number }
  | { readonly kind: "shorter than"; readonly seconds: number }
  | { readonly kind: "few stages"; readonly most: number }
  | { readonly kind: "few arguments"; readonly most: number; readonly id: string }
  | { readonly kind: "within times"; readonly times: number }
  | { readonly kind: "one for all groups"; readonly names: string }
  | { readonly kind: "given with"; readonly argument: string };

/** What a number is held against, in words that follow the number. */
export type LimitName =
  | "the dry matter"
  | "the weight before the oven"
  | "the weight of the dish alone"
  | "what fresh leaf without water would give"
  | "the fresh weight"
  | "which holds all the dry matter of the fresh leaf"
  | "the target weight"
  | "the first weight"
  | "where these readings come to rest"
  | "as many as were weighed";

export type FixedBeing =
  | "a weight above 0"
  | "a weight of 0 or more"
  | "an area above 0"
  | "an amount of 0 or more"
  | "a number"
  | "a number of 0 or more"
  | "a number above 0"
  | "a number above 0, such as 3.5"
  | "a whole number of 0 or more"
  | "a whole number of 1 or more"
  | "a standard uncertainty of 0 or more"
  | "a time such as 14:30"
  | "a time typed with a colon, or a date with a time (type 14:20)"
  | "a time span above 0, such as 0:30 for half an hour"
  | "a time of day, such as 12:45"
  | "from 0:01 to 12:00 (for twenty minutes type 0:20)"
  | "from 0 to 3 days (for five hours type 5:00)"
  | "a whole number from 1 to 20"
  | "text"
  | "text or a number"
  | "TRUE or FALSE (1 or 0)"
  | "0 or more"
  | "0 or more (300% or 3)"
  | "from 0 to 25 (300% or 3)"
  | "from 0 up to, not including, 1 (76% or 0.76)"
  | "from 0 up to, not including, 1 (5% or 0.05)"
  | "from 50% up to, not including, 100%"
  | "above 0 and at most 1 (21% or 0.21)"
  | "from 0 to 1 (5% or 0.05)"
  | "from 0 to 1 (30% or 0.3)"
  | "from 0 to 1 (45% or 0.45)"
  | "above 0 and below 1 (95% or 0.95)"
  | "from 0 to 0.2 (0.5 points is 0.005)"
  | "above 0 and at most 0.05 (0.3 points is 0.003)"
  | "one cell"
  | "one cell or one column"
  | "one row or one column"
  | "a cell or rows of cells"
  | "at most 3 days (for five hours type 5:00)"
  | "at least one minute, 0:01"
  | "blank or 0 in the first row, before which nothing was weighed"
  | "blank or 0 up to the first moisture"
  | "filled where leaf was removed and the moisture is blank"
  | "filled beside each value (0 for an exact one)"
  | "filled in beside every area"
  | "filled in every row"
  | "wide enough for a million readings at most"
  | "500 at most"
  | "near enough to be reached within ten times the time so far"
  | "few enough for 500 firings in all"
  | "typed while the weights do not slow down"
  | "given"
  | "a column for each reading"
  | "one for each reading";

/** What an argument must do, other than be something. */
export type Doing =
  | FixedDoing
  | { readonly kind: "few arguments"; readonly most: number }
  | { readonly kind: "rows as"; readonly argument: string }
  | { readonly kind: "size of"; readonly argument: string }
  | { readonly kind: "lots"; readonly least: number }
  | { readonly kind: "area of"; readonly group: string | number }
  | { readonly kind: "agree within"; readonly limit: number }
  | { readonly kind: "room to change"; readonly argument: string };

export type FixedDoing =
  | "have as many rows as the other list"
  | "hold at least two readings of the same leaf"
  | "hold at least two packages of a large lot"
  | "hold a row that comes in, opening or in"
  | "hold a row that goes out, out or closing"
  | "hold at least one number above 0"
  | "hold at least one value"
  | "agree where they are exact"
  | "come near a balance"
  | "stay from 0 up to 1 in the fit"
  | "stay above 0 in the fit"
  | "name each group once"
  | "rise"
  | "not rise"
  | "still fall at the end"
  | "scatter less for an upper end";

/** What there was instead. */
export type Finding =
  | "got none"
  | "got only 0"
  | "got a list of another form"
  | { readonly kind: "value"; readonly value: unknown }
  | { readonly kind: "value at"; readonly value: number; readonly stage: string }
  | { readonly kind: "time"; readonly seconds: number }
  | { readonly kind: "turns"; readonly interval: number; readonly turns: number; readonly duration: number }
  | { readonly kind: "cells"; readonly size: Size }
  | { readonly kind: "sizes"; readonly one: Size; readonly other: Size }
  | { readonly kind: "lengths"; readonly one: number; readonly other: number }
  | { readonly kind: "arguments"; readonly count: number; readonly signature: string }
  | { readonly kind: "unlike"; readonly one: ErrorOf; readonly other: ErrorOf }
  | { readonly kind: "spread"; readonly spread: number }
  | { readonly kind: "goes"; readonly place: number; readonly from: number; readonly to: number }
  | { readonly kind: "areas"; readonly count: number }
  | { readonly kind: "lots"; readonly count: number; readonly leftOut?: LeftOut | undefined }
  | { readonly kind: "put at"; readonly value: number; readonly stage: string }
  | { readonly kind: "misfit"; readonly stage: string; readonly weight: number; readonly fitting: number }
  | { readonly kind: "neither"; readonly stage: string }
  | { readonly kind: "unbalanced"; readonly stage: string }
  | { readonly kind: "open balance"; readonly row: number }
  | { readonly kind: "rounds"; readonly rounds: number }
  | { readonly kind: "blank row"; readonly row: number }
  | { readonly kind: "unnamed row"; readonly row: number }
  | { readonly kind: "blank error"; readonly argument: string }
  | { readonly kind: "twice"; readonly name: string; readonly rows: readonly [number, number] }
  | { readonly kind: "rise"; readonly step: number; readonly from: number; readonly to: number };

export interface Size {
  readonly rows: number;
  readonly columns: number;
}

interface ErrorOf {
  readonly stage: string;
  readonly error: number;
}

/** Rows of a book that count for nothing, and why the first of them does. */
interface LeftOut {
  readonly rows: number;
  readonly first: Refusal;
}

export type Hint =
  | "it looks like a number but is stored as text: type it again as a number"
  | "the cell looks empty but holds a space: clear it"
  | "for twenty minutes type 0:20"
  | "past midnight type the date with the time"
  | "0 makes a reading exact"
  | "a catty is 500 g on the mainland of China, 600 g in Taiwan and others elsewhere: type 市斤 for 500 g, 公斤 for 1 kg, or the one you mean in g"
  | "a tael is 50 g on the mainland of China, 37.5 g and others elsewhere: type the one you mean in g"
  | "a ton may be 1000 kg or an American or British one: type t for 1000 kg"
  | "it may mean moisture or water: write 含水率 or 水"
  | { readonly kind: "nearest"; readonly weights: readonly number[] };

export type Question =
  | "are both in the same unit?"
  | "are both in the same unit, and not swapped?"
  | "are all in the same unit?";

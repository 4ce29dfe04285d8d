/**
 * How a function describes itself. A function's file has two exports: its spec, which is what runs, and its page,
 * which is what explains. Everything else in the product is derived from the two.
 */

import type { Caution } from "./cautions";
import type { DomainError } from "./errors";
import type { Phrase } from "./phrases";
import { type Quantity, type ValueOf, yesNo } from "./quantities";
import type { SheetError } from "./sheet-error";
import type { Source } from "./sources";

export { explained } from "./entry";

export const groups = [
  "moisture",
  "targets",
  "charges",
  "yields",
  "packing",
  "balance",
  "season",
  "uncertainty",
  "units",
  "time",
] as const;
export type Group = (typeof groups)[number];

/** What a function is given in one place: read and checked; a list as an array, with null where it may have a gap. */
export type Argument =
  | number
  | string
  | boolean
  | null
  | undefined
  | readonly (number | string | boolean | null)[]
  | BookColumn;

/** Whatever a maker's book may hold in a cell. */
export type BookCell = number | string | boolean | null | undefined | SheetError;

/**
 * A column of a book as a host hands it over, rows of one cell each: a book may have a million rows, and copying them
 * costs more than adding them up. They are never changed once handed over.
 */
export type BookColumn = readonly (readonly BookCell[])[];

/**
 * What one cell of an answer may hold: text of ours as a Phrase, the maker's own as a string. `""` is a cell that waits
 * for a weight; an error of a book comes back as it is.
 */
export type Answer = number | string | Phrase | DomainError | SheetError;

export interface Parameter<Kind extends Quantity = Quantity> {
  readonly name: string;
  readonly quantity: Kind;
  /** A cell is taken element by element; a list is taken whole, from a row or a column. */
  readonly takes: "cell" | "list";
  /** Measured: a blank means "not weighed yet", and the answer waits as `""`. Setting: a blank is a mistake. */
  readonly blank: "waits" | "is refused";
  readonly optional: boolean;
  /** What stands in for an argument that is left out. Absent: the function is told that nothing was given. */
  readonly fallback?: number | string | boolean;
  /** A list where one single value may stand for every row. */
  readonly oneForAll?: boolean;
  /** A list whose gaps reach the function as null, and which may end before the other lists do. */
  readonly gaps?: boolean;
  /**
   * A list that is one column of a book; all lists with this name are the columns of the same book. A book may have a
   * heading, gaps and mistakes, so its cells reach the function unread, as BookColumns of one length, and the function
   * says which rows are good.
   */
  readonly book?: string;
}

/** A parameter whose type says what `calculate` is given for it. */
type Of<Kind extends Quantity, Rest extends Partial<Parameter>> = Parameter<Kind> & Rest;

/** A parameter with whatever it needs; the usual kinds have names of their own below. */
export const parameter = <Kind extends Quantity, const Rest extends Partial<Parameter>>(
  name: string,
  quantity: Kind,
  rest: Rest,
): Of<Kind, Rest> => ({ name, quantity, takes: "cell", blank: "is refused", optional: false, ...rest });

/** A reading of the day: the answer waits while it is blank. */
export const measured = <Kind extends Quantity>(name: string, quantity: Kind) =>
  parameter(name, quantity, { blank: "waits" });

/** A decision of the maker: it has to be there. */
export const setting = <Kind extends Quantity>(name: string, quantity: Kind) => parameter(name, quantity, {});

/** May be left out. Without a fallback the function is told that nothing was given. */
export function optional<Kind extends Quantity>(name: string, quantity: Kind): Of<Kind, { readonly optional: true }>;
export function optional<Kind extends Quantity, Fallback extends ValueOf<Kind>>(
  name: string,
  quantity: Kind,
  fallback: Fallback,
): Of<Kind, { readonly optional: true; readonly fallback: Fallback }>;
export function optional(name: string, quantity: Quantity, fallback?: number | string | boolean): Parameter {
  return parameter(name, quantity, fallback === undefined ? { optional: true } : { optional: true, fallback });
}

export const measuredList = <Kind extends Quantity>(name: string, quantity: Kind) =>
  parameter(name, quantity, { takes: "list", blank: "waits" });

export const settingList = <Kind extends Quantity>(name: string, quantity: Kind) =>
  parameter(name, quantity, { takes: "list" });

export const optionalList = <Kind extends Quantity, const Rest extends Partial<Parameter>>(
  name: string,
  quantity: Kind,
  rest: Rest,
) => parameter(name, quantity, { takes: "list", optional: true, ...rest });

/** A column of the book of that name, with whatever stands in it. */
export const bookList = <Kind extends Quantity, const Rest extends Partial<Parameter> = Record<never, never>>(
  book: string,
  name: string,
  quantity: Kind,
  rest: Rest = {} as Rest,
) => parameter(name, quantity, { takes: "list", book, ...rest });

/** The last parameter of every table: the cell layer adds the heading row, the calculation never sees it. */
export const headers = { ...optional("headers", yesNo, true), name: "headers" } as const;

export interface Column {
  readonly name: string;
  readonly quantity: Quantity;
  /** The last column of some tables stands once for each target: its name gets the target's number. */
  readonly repeats?: boolean;
}

export type Result =
  /** One value; ranges as arguments give one value each. */
  | { readonly shape: "cell"; readonly quantity: Quantity }
  /** One row of values; a column of arguments gives a row each. */
  | { readonly shape: "row"; readonly columns: readonly Column[]; readonly picture?: Picture }
  /** One column of values. */
  | { readonly shape: "column"; readonly quantity: Quantity }
  /** Rows under headings. */
  | TableResult;

export interface TableResult {
  readonly shape: "table";
  readonly columns: readonly Column[];
  /** What the last row holds, where it is not one like the others. */
  readonly lastRow?: LastRow;
  /** What shows the table at a glance. */
  readonly picture?: Picture;
}

type LastRow =
  /** All the others together, in the same columns. Rows that are only text, a note, may follow. */
  | { readonly is: "total" }
  /** What is to be said of the others, with columns of its own. */
  | { readonly is: "verdict"; readonly columns: readonly Column[] };

/** What a picture shows, and where it finds it: names of columns, or of parameters where it shows what was given. */
type Picture =
  /** Water and dry matter of each row. */
  | { readonly shows: "stages" | "meanings"; readonly name: string; readonly weight: string; readonly moisture: string }
  | { readonly shows: "charges"; readonly name: string; readonly load: string }
  /** Bars by pan over the hours; what overruns is marked. */
  | {
      readonly shows: "day";
      readonly charge: string;
      readonly pan: string;
      readonly start: string;
      readonly end: string;
      readonly note: string;
      /** Parameters. */
      readonly breakStart: string;
      readonly breakEnd: string;
    }
  /** Timed weights on their way to a target, with the range of its moment: parameters, and columns for the range. */
  | {
      readonly shows: "drying";
      readonly times: string;
      readonly weights: string;
      readonly target: string;
      readonly early: string;
      readonly likely: string;
      readonly late: string;
    }
  /** Packages against what they state: parameters. */
  | { readonly shows: "fills"; readonly weights: string; readonly nominal: string; readonly tolerance: string }
  /** The outturns of the lots that were given; a chart in the workbook shows a column by the names in the first one. */
  | {
      readonly shows: "lots";
      readonly groups: string;
      readonly fresh: string;
      readonly finished: string;
      readonly chart: string;
    };

/** A pure function of checked arguments, in the order of the parameters, without `headers`. */
// biome-ignore lint/suspicious/noExplicitAny: the catalogue holds functions of every signature; bind() checks arguments against the spec before it calls one.
export type Calculation = (...values: any[]) => Answer | Answer[] | Answer[][];

export interface FunctionSpec<Calculate extends Calculation = Calculation> {
  /** The worksheet name without the namespace: letters and digits, for ever once shipped. */
  readonly id: string;
  readonly group: Group;
  readonly parameters: readonly Parameter[];
  readonly result: Result;
  /** One smooth number of single numbers, without steps or kinks: errors can be carried through it by its slopes. */
  readonly smooth?: true;
  /**
   * Throws DomainError. Bounds of a single argument have been checked by then; bounds that one argument sets for
   * another are checked here. Cell: a value. Row and column: a list. Table: a list of rows.
   */
  readonly calculate: Calculate;
}

/** What `calculate` is given for a parameter that is not left out. */
type Taken<Of extends Parameter> = Of extends { readonly book: string }
  ? BookColumn
  : Of extends { readonly takes: "list" }
    ? readonly (ValueOf<Of["quantity"]> | Gap<Of>)[]
    : ValueOf<Of["quantity"]>;

/** A fallback fills gaps too. */
type Gap<Of extends Parameter> = Of extends { readonly fallback: unknown }
  ? never
  : Of extends { readonly gaps: true }
    ? null
    : never;

type IsAlwaysGiven<Of extends Parameter> = Of extends { readonly fallback: unknown }
  ? true
  : Of extends { readonly optional: true }
    ? false
    : true;

/** What `calculate` is given for these parameters, in their order and without `headers`. */
type ArgumentsFor<Of extends readonly Parameter[]> = Of extends readonly []
  ? []
  : Of extends readonly [infer First extends Parameter, ...infer Rest extends readonly Parameter[]]
    ? First extends typeof headers
      ? []
      : IsAlwaysGiven<First> extends true
        ? [Taken<First>, ...ArgumentsFor<Rest>]
        : [Taken<First>?, ...ArgumentsFor<Rest>]
    : unknown[];

/**
 * The arguments of `calculate` follow from the parameters: a function whose code and parameters disagree does not
 * compile. Keeps its signature, so that functions of the core can call each other with checked types.
 */
export const defineFunction = <
  const Id extends string,
  const Parameters extends readonly Parameter[],
  Gives extends Answer | Answer[] | Answer[][],
>(
  spec: FunctionSpec<(...values: ArgumentsFor<Parameters>) => Gives> & {
    readonly id: Id;
    readonly parameters: Parameters;
  },
): FunctionSpec<(...values: ArgumentsFor<Parameters>) => Gives> & { readonly id: Id } => spec;

/** A constant, or a range as rows of constants, as it would be typed into a formula. */
export type Given = number | string | boolean | null | readonly (readonly (number | string | boolean | null)[])[];

/** A refusal that is due, with its sentence. Without one: an error that is not ours, and has none. */
export interface ExpectedRefusal {
  readonly error: string;
  readonly message?: string;
}

/** One value, rows of values, or the refusal that is due; in a row a refusal is due in its cell alone. */
export type Expected = number | string | ExpectedRefusal | readonly (readonly (number | string | ExpectedRefusal)[])[];

export interface Example {
  readonly given: readonly Given[];
  readonly gives: Expected;
  /** What the example shows, in the maker's words. */
  readonly shows: string;
}

/** Where in a work something stands: clause, table, page, equation. */
export interface Citation {
  readonly work: Source;
  readonly place: string;
}

/** What a check puts to work. */
export type Exercise =
  /** The way from the arguments to the answer, with numbers on which the answer hangs. */
  | "calculation"
  /** Where the calculation comes to an end or one rule takes over from another: nothing left, a tie, the limit itself. */
  | "edge"
  /** How arguments may be given: a column, another word for the same, what stands for one left out, gaps. */
  | "input";

interface Comparison {
  readonly given: readonly Given[];
  readonly expected: Expected;
  /** Absent where the expected answer says it: a refusal, or blanks, which wait for a reading. */
  readonly exercises?: Exercise;
  /**
   * What lies idle, where so much does that the check would pass for a function that does not do what it is for: it
   * then counts as no published value.
   */
  readonly degenerate?: string;
  /** Parameters of a calculation whose numbers could be others here without changing the answer, unless it is a refusal. */
  readonly idle?: readonly string[];
  /** Largest difference allowed for a number. Text and errors compare exactly. */
  readonly tolerance: { readonly absolute: number } | { readonly relative: number };
  /** Why that much. */
  readonly because: string;
}

/** A comparison with something outside this project. */
export type Check = Comparison &
  (
    | { readonly status: "published" | "certified"; readonly source: Citation }
    /** Hand arithmetic, written out. */
    | { readonly status: "exact"; readonly working: string }
    | { readonly status: "memory"; readonly recalls: string }
    /** A fact of the trade without a source. */
    | { readonly status: "common practice"; readonly fact: string }
  );

/** Tolerance of hand arithmetic: the figures are exact, floating point is not. */
export const exactly = {
  tolerance: { relative: 1e-12 },
  because: "exact arithmetic; rounding of doubles only",
} as const;

/** One step on the way to an answer: in symbols, the same with the numbers put in, and what it comes to. */
export interface Step<Says extends string = string, Symbols extends string = string, Numbers extends string = string> {
  /** What is worked out, in a few plain words that are the same whatever the numbers. */
  readonly says: Says;
  readonly symbols: Symbols;
  readonly numbers: Numbers;
  /** One value; in a last step also the list or the rows that the function gives, without headings. */
  readonly gives: Answer | readonly Answer[] | readonly (readonly Answer[])[];
  /** What each value is. Absent where the columns of the function's result say it. */
  readonly quantity?: Quantity;
}

/** The steps to an answer, from the arguments that `calculate` was given; the last one comes to what it gives. */
// biome-ignore lint/suspicious/noExplicitAny: as for Calculation, arguments are checked against the spec before.
type Working = (...values: any[]) => readonly Step[];

export interface FunctionPage {
  /** One sentence, at most 100 characters: what it answers. */
  readonly summary: string;
  /** What each parameter means, by name. `headers` explains itself. */
  readonly parameters: Readonly<Record<string, string>>;
  /** The formula in symbols: W weight, M moisture on wet basis, X on dry basis, D dry matter. */
  readonly formula: string;
  /** How an answer comes about, for the pane: short, and only for arguments that have an answer. */
  readonly working: Working;
  /** When a maker uses it and how to read the answer: paragraphs. */
  readonly guide: readonly string[];
  readonly sources: readonly Citation[];
  readonly cautions: readonly Caution[];
  readonly examples: readonly Example[];
  readonly checks: readonly Check[];
  /** Why no check holds the function to a published value, where none does. */
  readonly unpublished?: string;
}

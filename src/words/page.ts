import type { Named } from "../core/english-refusals";
import type { Reason } from "../core/refusals";
import type { Direction } from "../sorting/row-order";
import type { SortingRefusal } from "../sorting/sorted-table";
import type { FileRefusal } from "../xlsx/refusals";
import type { NotShown, SavingRemark } from "../xlsx/remarks";

/** A cell that holds answers up. */
export interface Fault {
  readonly is: "blank" | "missing" | "text" | "value" | "formula" | "error";
  readonly value: unknown;
  /** What the sheet calls the cell. */
  readonly label: string | undefined;
  /** In the language that is spoken. Of an error of the spreadsheet's own, what it means. */
  readonly reason: string | undefined;
  /** The address of the first cell that waits for it, and how many do. */
  readonly waiting: { readonly first: string; readonly count: number } | undefined;
}

/** The buttons and fields of the header and its menu, and what stands around the grid. */
type PagePart =
  | "title"
  | "workbooks"
  | "card"
  | "pane"
  | "menu"
  | "sort"
  | "print"
  | "download"
  | "downloadNamed"
  | "open"
  | "ownFiles"
  | "back"
  | "touchHelp"
  | "keyHelp"
  | "keyHint"
  | "file"
  | "line"
  | "grid";

/** The engine's own buttons and fields. */
type EnginePart =
  | "addSheet"
  | "allSheets"
  | "zoomOut"
  | "zoomIn"
  | "zoomTo"
  | "zoom"
  | "cellName"
  | "formula"
  | "others"
  | "furtherNotices";

/** What is known of a file before it opens. */
interface KnownOfFile {
  /** The day on which one of the same name, which is kept already, was last changed. */
  readonly keptSince: string | undefined;
  /** Whether the browser has a way back into the very file. */
  readonly canSaveInto: boolean;
}

/**
 * The samples that the page offers, the first where its address names none. Their work is kept under these names: for ever
 * once shipped.
 */
export const sampleKeys = ["one-lot", "season"] as const;
export type SampleKey = (typeof sampleKeys)[number];

/** Every word of the workbook page around its grid. */
export interface PageWords {
  readonly parts: Readonly<Record<PagePart, string>>;
  /** By their keys. */
  readonly samples: Readonly<Record<SampleKey, string>>;
  readonly engine: Readonly<Record<EnginePart, string>>;
  /** While a calculation takes its time. */
  readonly progress: Readonly<Record<"looking" | "calculating" | "done", string>>;
  /** While no cell has anything to say. */
  readonly hint: string;
  /** What the engine's own errors mean. */
  readonly meanings: Readonly<Record<string, string>>;
  /** Of a function that nobody knows; with the names that may be meant. */
  readonly unknownFunction: (name: string, nearest: readonly string[]) => string;
  /** Between the address of a cell and what is said of it. */
  readonly colon: string;
  readonly goToCell: string;
  readonly blankCell: string;
  readonly moreWrong: (count: number) => string;
  /** Why a function refuses; its arguments as `named` calls them. */
  readonly reason: (reason: Reason, named: Named) => string;
  readonly fault: {
    /** Behind the cell's address. */
    readonly afterAddress: (fault: Fault) => string;
    /** The same in few words: what the cell holds. */
    readonly inShort: (fault: Fault) => string;
    /** Where the cell is in sight. */
    readonly atCell: (fault: Fault) => string;
    /** Of a cell that waits for it. */
    readonly waitsFor: (address: string, fault: Fault) => string;
    /** A cell of a book by the heading over it and the name of its row. */
    readonly cellOf: (heading: string, name: string) => string;
  };
  readonly printing: {
    /** Before a card is printed that has nothing to go by; with the cell that it waits for. */
    readonly withoutNumbers: (cause: string | undefined) => string;
    readonly agree: string;
    readonly refuse: string;
    readonly printed: (moment: string) => string;
  };
  readonly cancel: string;
  readonly sample: {
    readonly startAfresh: (sample: string) => string;
    readonly agree: string;
    readonly refuse: string;
    readonly shown: string;
  };
  readonly keeping: {
    readonly kept: (moment: string) => string;
    readonly notKept: string;
    readonly unreadable: string;
    readonly downloadKept: string;
    readonly nobodyServes: string;
    readonly notMade: (reason: string) => string;
    /** A file that needs no add-in, but for these functions. */
    readonly madeWithoutAddIn: (still: readonly string[]) => string;
  };
  readonly opening: {
    readonly now: string;
    readonly tooLarge: string;
    readonly failed: string;
    readonly paneFailed: string;
  };
  readonly file: {
    readonly refused: (why: FileRefusal) => string;
    /** Before a file is saved with changes. */
    readonly onSaving: (remark: SavingRemark) => string;
  };
  readonly ownFile: {
    readonly question: (name: string, notShown: readonly NotShown[], known: KnownOfFile) => readonly string[];
    readonly agree: string;
    readonly reading: (name: string) => string;
    readonly notOpened: (name: string, reason: string) => string;
    readonly noRoom: (name: string) => string;
    readonly keepsNothing: string;
    readonly tooLarge: string;
    readonly notRead: string;
    readonly tooSlow: string;
    /** The button that gives the file back. */
    readonly save: string;
    readonly notSaved: (reason: string) => string;
    /** Before the very file is written. */
    readonly askIntoFile: (name: string) => string;
    readonly intoFile: string;
    readonly asDownload: string;
    readonly savedInto: (name: string, moment: string) => string;
    readonly notInto: (name: string, because: "not allowed" | "no room" | "changed" | "gone") => string;
    /** Over the list of the files that the browser keeps. */
    readonly kept: string;
    readonly changed: (day: string) => string;
    readonly remove: string;
    readonly removing: (name: string) => string;
    readonly close: string;
    /** Looks, such as underlining, that are not written into the file. */
    readonly looksNotSaved: string;
    /** Of widths, heights and what is hidden. */
    readonly onPageOnly: string;
    /** Of a cell with a link. */
    readonly leadsTo: (place: string) => string;
    readonly leadsNowhere: (place: string) => string;
    /** Why rows, sheets and names are not moved about in a file of the maker's own. */
    readonly staysInPlace: string;
  };
  readonly typed: {
    readonly doubtful: (typed: string, readings: readonly string[]) => string;
    readonly readAs: (typed: string, plain: string, mark: "point" | "comma") => string;
    /** A day in figures, with the day in words. */
    readonly readAsDay: (typed: string, day: string) => string;
    /** What stays a text in a cell for a day; `isNoDay`: it has the form of one. */
    readonly staysText: (typed: string, isNoDay: boolean) => string;
  };
  readonly charts: {
    readonly values: string;
    readonly nothing: (series: string) => string;
    readonly points: (series: string, kind: "dots" | "columns", count: number, from: string, to: string) => string;
    readonly beyond: (points: string) => string;
  };
  readonly sorting: {
    readonly by: string;
    readonly directions: Readonly<Record<Direction, string>>;
    readonly agree: string;
    readonly undo: string;
    readonly nothing: string;
    readonly inOrder: string;
    readonly rows: (sheet: string, first: number, last: number) => string;
    readonly beside: (columns: string) => string;
    readonly columns: (first: string, last: string) => string;
    readonly done: (sheet: string, heading: string, direction: Direction) => string;
    /** Of what looks at single rows from elsewhere: the first of them, and how many more. */
    readonly lookers: (first: string, more: number) => string;
    /** `at`: the address of the cell that it is about. */
    readonly refused: (refusal: SortingRefusal, at: string) => string;
  };
}

import type { Rule } from "../sheet-check/finding";

/** What a rule of the sheet check says: the heading of its findings, what is there, why it matters, what to try. */
interface RuleWords {
  readonly title: string;
  readonly what: (details: Readonly<Record<string, string>>) => string;
  readonly why: string;
  readonly advice: string;
}

interface PlaceInAnswer {
  readonly row: number;
  readonly rows: number;
  readonly column: number;
  readonly columns: number;
}

/** How a language puts words side by side, with marks of its own. */
interface Joining {
  /** `320 g, 310 g` */
  readonly list: (items: readonly string[]) => string;
  /** Longer items: `one thing; another`. */
  readonly parts: (items: readonly string[]) => string;
  readonly sentences: (sentences: readonly string[]) => string;
  /** `Weight, g` */
  readonly withUnit: (words: string, unit: string) => string;
  /** `from B4: 320 g` */
  readonly told: (what: string, words: string) => string;
  /** `320 g (wanted)` */
  readonly aside: (words: string, aside: string) => string;
}

/** The words of the working, the sheet check and the pictures. */
export interface PieceMessages {
  readonly joined: Joining;
  readonly working: {
    readonly none: string;
    readonly title: (address: string) => string;
    /** A cell that an answer spills into: which of its rows and columns it shows. */
    readonly partOf: (address: string, shows: string, place: PlaceInAnswer) => string;
    readonly inSymbols: string;
    readonly arguments: string;
    readonly steps: string;
    readonly source: string;
    readonly noSource: string;
    readonly sourceStatus: Readonly<Record<"read" | "restated" | "from memory", string>>;
    readonly cautions: string;
    readonly docs: (id: string) => string;
    readonly leftOut: string;
    readonly countsAs: (value: string) => string;
    readonly blank: string;
    readonly rowPicked: (row: number) => string;
    readonly values: (count: number) => string;
    readonly fromCall: (id: string) => string;
    readonly workedOut: string;
    readonly notKnown: string;
    readonly notYet: string;
    readonly unknown: (texts: string) => string;
    readonly unknownYet: (texts: string) => string;
    /** The button that lets Excel work something out, and what it does to the workbook. */
    readonly ask: string;
    readonly askWhy: string;
    readonly waits: string;
    readonly refused: (message: string) => string;
    readonly tooMany: (count: number) => string;
    readonly cellShows: (value: string) => string;
    readonly differs: string;
    readonly doesMore: string;
    readonly inYourUnit: string;
    readonly rowsOfTable: (shown: number, all: number) => string;
  };
  readonly check: {
    readonly intro: string;
    readonly button: string;
    readonly running: string;
    readonly none: (cells: number) => string;
    readonly found: (count: number, sheet: string) => string;
    readonly goTo: (address: string) => string;
    readonly why: string;
    readonly advice: string;
    readonly showAll: (count: number) => string;
    readonly noClaim: string;
    readonly rules: Readonly<Record<Rule, RuleWords>>;
  };
  readonly picture: {
    readonly table: string;
    readonly lot: (bars: string) => string;
    readonly bar: (name: string, weight: string, dry: string) => string;
    readonly lotTitle: string;
    readonly charges: (charges: number, heaviest: string) => string;
    readonly overLimit: (count: number, limit: string) => string;
    readonly withinLimit: (limit: string) => string;
    readonly chargesTitle: string;
    readonly outturn: (lots: number, lowest: string, highest: string) => string;
    readonly flagged: (names: string) => string;
    readonly noneFlagged: string;
    readonly tooFewToFlag: string;
    readonly outturnTitle: string;
    readonly stage: string;
    readonly dry: string;
    readonly water: string;
    readonly weight: string;
    readonly charge: string;
    readonly load: string;
    readonly limit: string;
    readonly lotName: string;
    readonly outturnName: string;
    readonly flag: string;
    readonly flags: Readonly<Record<"high" | "low" | "more out than in" | "", string>>;
    readonly tooHeavy: string;
    readonly dayTitle: string;
    readonly day: (firings: number, pans: number, hours: string) => string;
    readonly dayOverruns: (count: number) => string;
    readonly dayBreak: (from: string, to: string) => string;
    readonly overruns: string;
    readonly pan: string;
    readonly start: string;
    readonly end: string;
    readonly dryingTitle: string;
    readonly drying: (readings: number, weights: string, target: string) => string;
    readonly dryingRange: (early: string, late: string) => string;
    readonly dryingLikely: (likely: string) => string;
    readonly time: string;
    readonly target: string;
    readonly fillsTitle: string;
    readonly fills: (packages: number, weights: string, nominal: string) => string;
    readonly fillsShort: (count: number, least: string) => string;
    readonly package: string;
    readonly nominal: string;
    readonly short: string;
  };
}

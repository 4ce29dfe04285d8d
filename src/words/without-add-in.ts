/** To the formulas in the workbook, or back to the functions of the add-in. */
type ByWay<Words> = Readonly<Record<"to names" | "back", Words>>;

/** What the pane says where a workbook is made to need no add-in, or to need it again. */
export interface WithoutAddInWords {
  /** In the list of jobs. */
  readonly title: string;
  readonly question: string;
  readonly intro: string;
  readonly look: string;
  readonly reading: string;
  readonly nothing: string;
  /** A workbook none of whose functions have a formula, by their ids. */
  readonly noneHas: (ids: readonly string[]) => string;
  readonly headings: ByWay<string>;
  /** What will happen, exactly. */
  readonly formulas: ByWay<(count: number, sheets: number) => string>;
  readonly changedNames: (names: readonly string[]) => string;
  readonly put: (count: number) => string;
  readonly takenOut: (count: number) => string;
  readonly without: (ids: readonly string[]) => string;
  readonly locked: (sheet: string, count: number) => string;
  readonly taken: (names: readonly string[]) => string;
  readonly blocked: (ids: readonly string[]) => string;
  readonly unseen: string;
  readonly copy: string;
  readonly keepNames: string;
  readonly keepNamesHelp: string;
  readonly button: ByWay<(count: number) => string>;
  readonly leave: string;
  readonly progress: (sheet: string, done: number, all: number) => string;
  readonly done: ByWay<(count: number) => string>;
  readonly namesIn: (count: number) => string;
  readonly namesOut: (count: number) => string;
  readonly sameAnswers: string;
  readonly left: string;
  readonly leftSheet: (sheet: string, why: string) => string;
  readonly others: string;
  readonly othersWhy: string;
  readonly beforeAndNow: (before: string, now: string) => string;
  readonly blank: string;
  readonly more: (count: number) => string;
  readonly goTo: (place: string) => string;
  readonly brokenOff: string;
}

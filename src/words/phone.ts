/** What a lot is due for by the clock. */
export type DueWork =
  | { readonly is: "turn"; readonly number: number }
  | { readonly is: "firing"; readonly charge: number; readonly round: number; readonly pan: number };

/** What the phone page says beside what it has in common with the pane. */
export interface PhoneWords {
  readonly title: string;
  readonly parts: Readonly<Record<"jobs" | "card" | "today" | "cautions", string>>;
  /** What the row of parts is called for whoever does not see it. */
  readonly navigation: string;
  readonly lot: {
    readonly label: string;
    readonly add: string;
    /** What a lot is called at first: the day, and which of that day it is. */
    readonly name: (day: string, number: number) => string;
    readonly rename: string;
  };
  readonly job: {
    readonly back: string;
    readonly keptAsTyped: string;
  };
  readonly card: {
    readonly noPlan: string;
    readonly plan: string;
    readonly changePlan: string;
    readonly charge: (number: number) => string;
    readonly load: (weight: string) => string;
    /** Which target of the plan, and what it goes by, such as “28 %”. */
    readonly round: (number: number, target: string) => string;
    readonly shouldRead: string;
    readonly reads: string;
    readonly left: string;
    readonly over: string;
    readonly reached: string;
    readonly moisture: string;
    readonly noted: (time: string) => string;
    readonly next: string;
    readonly back: string;
    readonly rounds: string;
    readonly readings: string;
    readonly none: string;
    readonly last: (weight: string, time: string) => string;
    readonly ready: string;
    readonly early: string;
    readonly likely: string;
    readonly late: string;
    readonly needsMore: (missing: number) => string;
    readonly withoutEnd: string;
    readonly forecast: string;
    readonly notNow: string;
  };
  readonly today: {
    readonly intro: string;
    readonly nothing: string;
    readonly weighings: (count: number) => string;
    readonly keptSince: (moment: string) => string;
    readonly sentOn: (moment: string) => string;
    readonly notSent: string;
    readonly copy: string;
    readonly share: string;
    readonly save: string;
    /** The buttons of one lot, for whoever hears them one by one. */
    readonly of: (what: string, lot: string) => string;
    readonly making: string;
    readonly copied: string;
    readonly cannotCopy: string;
    readonly ready: string;
    readonly shareNow: string;
    readonly saved: string;
    readonly notMade: string;
    readonly nothingToSend: string;
    readonly open: string;
    readonly more: string;
    readonly lastWeighing: (what: string, time: string) => string;
    readonly takeBack: string;
    readonly tookBack: string;
    readonly moveTo: (lot: string) => string;
    readonly movedTo: (lot: string) => string;
    readonly everything: string;
    readonly everythingHelp: string;
    readonly saveAll: string;
    readonly readAll: string;
    readonly read: (lots: number) => string;
    readonly notOurs: (file: string) => string;
    readonly staysHere: string;
    readonly mayGo: string;
    readonly unread: (lots: number) => string;
  };
  readonly keeping: {
    readonly notKept: string;
    readonly cannotKeep: string;
  };
  readonly clock: {
    readonly heading: string;
    readonly work: (work: DueWork) => string;
    readonly in: (stretch: string) => string;
    readonly late: (stretch: string) => string;
    readonly seen: string;
    readonly sound: string;
    readonly soundOn: string;
    readonly onlyWhileOn: string;
  };
  readonly sheet: {
    readonly card: string;
    readonly weighings: string;
    readonly charge: string;
    readonly target: string;
    readonly load: string;
    readonly shouldRead: string;
    readonly reads: string;
    readonly time: string;
    readonly left: string;
    readonly moisture: string;
    readonly ready: string;
    readonly noClaim: string;
  };
  readonly offline: {
    readonly ready: string;
    readonly getting: string;
    readonly not: string;
  };
}

import type { Breach } from "./signatures";

/** A change that saved workbooks may notice, made on purpose: what a function took or assumed before was a mistake. */
export interface Correction extends Breach {
  /** The first version that has it. */
  readonly version: string;
  /** What went wrong before, for the maker. */
  readonly why: string;
}

/**
 * Every correction that was ever made. The guard of saved workbooks lets these pass and nothing else, and each only
 * while it is needed: a correction of the coming version that corrects nothing is refused as well.
 */
export const corrections: readonly Correction[] = [
  {
    version: "0.2.0",
    id: "WETBASIS",
    parameter: "dryBasis",
    of: "greatest",
    before: 1_000_000,
    after: 25,
    why: "300 typed for 300 % passed as 30000 % and gave 0.9967; no leaf is wetter than 2500 % of its dry matter",
  },
  {
    version: "0.2.0",
    id: "LOTFLAG",
    parameter: "limit",
    of: "left out",
    before: 3.5,
    after: "nothing",
    why: "one limit for all books flagged a good new lot in twelve of a hundred beside five past ones; left out, it now follows the size of the book",
  },
  {
    version: "0.2.0",
    id: "LOTFLAGS",
    parameter: "limit",
    of: "left out",
    before: 3.5,
    after: "nothing",
    why: "one limit for all books flagged a lot in twenty-one of a hundred clean books of five lots, in nine of those of forty; left out, it now follows the size of the book",
  },
];

import { englishTrouble } from "./english-troubles";

/** Why a workbook did not do what it was asked, as data: every language has its words for each trouble. */
export type Trouble =
  | FixedTrouble
  | { readonly kind: "no such place"; readonly address: string }
  | { readonly kind: "no such sheet"; readonly sheet: string }
  | { readonly kind: "sheet gone"; readonly sheet: string }
  | { readonly kind: "grid cannot work out"; readonly expression: string }
  | { readonly kind: "only in its own cell"; readonly expression: string }
  /** With the host's own code, "" where it gave none. */
  | { readonly kind: "not done"; readonly code: string }
  /** A hidden name could not be taken away again, after this. */
  | { readonly kind: "name left"; readonly name: string; readonly after: Trouble };

export type FixedTrouble =
  | "no cell selected in the grid"
  | "no cells selected in Excel"
  | "no workbook open"
  | "another workbook in front"
  | "a cell is being typed in"
  | "Excel is busy"
  | "not worked out yet"
  | "place no longer there"
  | "place not in the workbook"
  | "place or formula not known"
  | "block does not fit"
  | "merged cells"
  | "pivot table"
  | "filtered rows"
  | "too many cells"
  | "sheet protected"
  | "workbook read-only"
  | "not allowed by Excel"
  | "not allowed by the grid"
  | "grid draws no charts"
  | "grid saves a copy instead"
  | "not in this Excel"
  | "another formula by now"
  | "formula not taken";

export class HostProblem extends Error {
  override readonly name = "HostProblem";
  /** What can be done about it: nothing by the host that is "busy" but to wait. */
  readonly reason: "protected" | "busy" | "gone" | "read-only" | "not here" | "unknown";
  readonly trouble: Trouble;

  constructor(reason: HostProblem["reason"], trouble: Trouble) {
    super(englishTrouble(trouble));
    this.reason = reason;
    this.trouble = trouble;
  }
}

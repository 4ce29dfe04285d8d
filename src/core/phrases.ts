/**
 * What functions say in their answers, as data: a verdict, a note, the name of a row. Every language renders it with a
 * `switch` over its kinds (`english-phrases.ts`, and a folder of words for each other one), so that a phrase without
 * words does not compile. A plain string in an answer is the maker's own, and stays as it is.
 */
import { englishPhrase } from "./english-phrases";
import type { Refusal } from "./refusals";

export type Saying =
  | FixedSaying
  | { readonly kind: "step"; readonly number: number }
  | { readonly kind: "grows"; readonly by: number }
  | { readonly kind: "cannot tell"; readonly stages: readonly string[] }
  | {
      readonly kind: "suspect";
      readonly stage: string;
      /** What would fit in place of a reading, if the other one of its row is right. */
      readonly weight?: number | undefined;
      readonly moisture?: number | undefined;
    }
  | { readonly kind: "left out"; readonly rows: number; readonly first: Refusal };

/** Never changed: workbooks compare with them. */
export type FixedSaying =
  | "start"
  | "total"
  | "result"
  | "water"
  | "weight"
  | "points"
  | "agrees"
  | "more dry matter out than came in"
  | "less lost than expected"
  | "more lost than expected"
  | "more in than out"
  | "more out than in"
  | "not judged: no errors given"
  | "opening"
  | "in"
  | "out"
  | "closing"
  | "left over"
  | "a package short by more than twice the tolerance"
  | "mean below the limit"
  | "too many short by more than the tolerance"
  | "overruns"
  | "nothing to balance yet"
  | "does not balance: no single row stands out"
  | "no moisture: the balance starts at the first row with one"
  | "no moisture: the next row with one covers this stage"
  | "no moisture: the balance ends at the last row with one";

export class Phrase {
  readonly saying: Saying;

  constructor(saying: Saying) {
    this.saying = saying;
  }

  /** In English, which is what cells show whatever language is spoken around them. */
  toString(): string {
    return englishPhrase(this.saying);
  }
}

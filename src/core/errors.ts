/** Refusals as functions throw them. */
import { englishRefusal } from "./english-refusals";
import type { Being, Finding, Hint, Refusal, Requirement } from "./refusals";
import { looksLikeNumber } from "./shown";

/** A refusal that names the argument. Functions throw it; a table may also hold it in a single cell. */
export class DomainError extends Error {
  override readonly name = "DomainError";
  readonly refusal: Refusal;

  constructor(refusal: Refusal) {
    super();
    this.refusal = refusal;
  }

  /** In English, which is what cells show whatever language is spoken around them. Put together when it is read. */
  override get message(): string {
    return englishRefusal(this.refusal);
  }

  get argument(): string {
    return this.refusal.argument;
  }

  get code(): Refusal["code"] {
    return this.refusal.code;
  }
}

/** What may stand behind the finding of a refusal. */
type More = Pick<Refusal, "hint" | "place" | "question">;

/** An argument that is not what it must be. */
export const mustBe = (argument: string, be: Being, got: unknown, more: More = {}): DomainError =>
  must(argument, { be }, { kind: "value", value: got }, more);

/** As mustBe, where the requirement is another verb than "be" or what was found is no value. */
export const must = (argument: string, must: Requirement, found: Finding, more: More = {}): DomainError =>
  new DomainError({ argument, code: "#VALUE!", must, found, ...more });

/** Sound data without an answer. */
export const noAnswer = (argument: string, must: Requirement, found: Finding, more: More = {}): DomainError =>
  new DomainError({ argument, code: "#N/A", must, found, ...more });

/** The same refusal, said of one place of a list, counted from 0. */
export const inPlace = ({ refusal }: DomainError, row: number): DomainError =>
  new DomainError({ ...refusal, place: { in: "list", number: row + 1 } });

/** Text is never guessed into a number: 1.234 is one thing in one country and another in the next. */
export const mustBeNumber = (argument: string, be: Being, value: string): DomainError =>
  mustBe(argument, be, value, { hint: hintFor(value) });

function hintFor(text: string): Hint | undefined {
  if (looksLikeNumber(text)) return "it looks like a number but is stored as text: type it again as a number";
  return text.trim() === "" ? "the cell looks empty but holds a space: clear it" : undefined;
}

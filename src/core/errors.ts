/**
 * What a calculation says when it cannot answer. One grammar for every message:
 * `<argument> must <requirement>; got <what it got>`, lower case, no full stop.
 */

/** `#VALUE!` for an argument out of its bounds; `#N/A` for sound data that have no answer. */
export type DomainErrorCode = "#VALUE!" | "#N/A";

/** A refusal in its parts, for whoever calls the arguments by other names, such as a form by its labels. */
export interface Refusal {
  /** The parameter that the maker has to look at. */
  readonly argument: string;
  /** What is said of it: `must be at least 85.2, the dry matter; got 80`. */
  readonly demand: string;
  /** Other parameters, which the demand names. */
  readonly mentions?: readonly string[];
  /** Which item of a list it is about, from 1. */
  readonly item?: number;
}

/** A refusal that names the argument. Functions throw it; a table may also hold it in a single cell. */
export class DomainError extends Error {
  override readonly name = "DomainError";
  readonly refusal: Refusal;
  readonly code: DomainErrorCode;

  constructor(refusal: Refusal, code: DomainErrorCode = "#VALUE!") {
    super(`${refusal.argument} ${refusal.demand}`);
    this.refusal = refusal;
    this.code = code;
  }

  /** The same of one item of a list, which the message then names. */
  ofItem(item: number): DomainError {
    const demand = `${this.refusal.demand} in place ${item} of the list`;
    return new DomainError({ ...this.refusal, demand, item }, this.code);
  }
}

/** What a refusal is about, beside its argument. */
type About = Pick<Refusal, "mentions" | "item">;

/** `weightNow must be at least 85.2, the dry matter; got 80`. */
export function mustBe(argument: string, requirement: string, got: unknown, about?: About): DomainError {
  return must(argument, `be ${requirement}`, `got ${shown(got)}`, about);
}

/** As mustBe, where the requirement is another verb than "be" or what happened needs a sentence of its own. */
export function must(argument: string, requirement: string, whatHappened: string, about?: About): DomainError {
  return new DomainError({ argument, demand: `must ${requirement}; ${whatHappened}`, ...about });
}

/** Sound data without an answer. */
export function noAnswer(argument: string, requirement: string, whatHappened: string): DomainError {
  return new DomainError({ argument, demand: `must ${requirement}; ${whatHappened}` }, "#N/A");
}

/** A label as a message can hold it, without half a character at its end. */
export const shortened = (text: string): string =>
  text.length > 40 ? `${text.slice(0, 40).replace(/[\uD800-\uDBFF]$/, "")}…` : text;

/** A value as a message shows it: a number to ten significant digits, text in quotation marks. */
export function shown(value: unknown): string {
  if (typeof value === "number") return String(Number(value.toPrecision(10)));
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (value === null || value === undefined || value === "") return "a blank";
  if (typeof value === "string") return `the text "${shortened(value)}"`;
  if (isSheetError(value)) return value.code;
  return "a value of another type";
}

/** An error of the sheet, as it stands in a cell of a book. */
export interface SheetError {
  readonly code: string;
  readonly message: string;
}

export const isSheetError = (value: unknown): value is SheetError =>
  typeof value === "object" &&
  value !== null &&
  typeof (value as Partial<SheetError>).code === "string" &&
  typeof (value as Partial<SheetError>).message === "string";

/** Digits and the signs that go with them: what someone meant as a number, whatever alphabet it is in. */
export const looksLikeNumber = (value: string): boolean =>
  /[\d０-９]/.test(value) && /^[\d０-９\s.,'’%+\-−:/．，％：]+$/.test(value);

/** Text is never guessed into a number: 1.234 is one thing in one country and another in the next. */
export function mustBeNumber(argument: string, requirement: string, value: string): DomainError {
  const hint = looksLikeNumber(value)
    ? " (it looks like a number but is stored as text: type it again as a number)"
    : value.trim() === ""
      ? " (the cell looks empty but holds a space: clear it)"
      : "";
  return must(argument, `be ${requirement}`, `got ${shown(value)}${hint}`);
}

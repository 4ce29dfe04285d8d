/**
 * What holds answers up: a blank reading, a text where a number belongs, a value that a function refuses. Found by
 * following references back from cells that show nothing or an error; labels only give what was found a name.
 */
import type { Reason, Refusal } from "../../core/refusals";
import type { ErrorMessage } from "../../engine/error-messages";
import { type Cell, isErrorAnswer } from "../../workbook/workbook";
import { labelOf } from "./cell-labels";
import { isHalfNumber, isOneCell, type KnownWorkbook, keyOf, type Spot, type StuckCell } from "./known-workbook";
import { cellsGivenFor, namedReason } from "./named-reason";

export interface Hindrance extends Spot {
  /**
   * `formula`: the mistake is in the cell's own formula, not in what it refers to. `error`: the cell shows an error of
   * the spreadsheet's own, which others only hand on; its reason is what the error means. `missing`: a blank that is
   * refused, as a setting is.
   */
  readonly is: "blank" | "missing" | "text" | "value" | "formula" | "error";
  /** What the cell holds; undefined for a blank. */
  readonly value: Cell["value"];
  /** What the sheet calls the cell. */
  readonly label: string | undefined;
  /** What the first function said that stumbled over it, by what the sheet calls its arguments. */
  readonly reason: string | undefined;
  /** The formulas that show no answer because of it, those of its own sheet first. */
  readonly waiting: readonly Spot[];
}

/** What is known of the error that a cell shows: its words, and as data what a function of ours refused. */
export type ErrorAt = (spot: Spot) => Pick<ErrorMessage, "message" | "reason"> | undefined;

/** What an error of the spreadsheet's own means in this cell. */
export type MeaningOf = (error: string, spot: Spot) => string | undefined;

/** Mistakes come before blanks, and among them what most cells wait for. */
export function hindrances(book: KnownWorkbook, errorAt: ErrorAt, meaningOf: MeaningOf): Hindrance[] {
  const found = new Map<string, Cause & { readonly stumbling: Set<StuckCell> }>();
  const blame = (cause: Cause, stuck: StuckCell) => {
    const key = keyOf(cause);
    const before = found.get(key);
    const stumbling = before?.stumbling ?? new Set();
    // What one formula waits for another may refuse.
    if (!before || rank(cause) < rank(before)) found.set(key, { ...cause, stumbling });
    stumbling.add(stuck);
  };
  const unexplained: StuckCell[] = [];
  for (const stuck of book.stuck) {
    const causes = causesOf(stuck, book, errorAt, meaningOf);
    if (causes === "unexplained") unexplained.push(stuck);
    else for (const cause of causes) blame(cause, stuck);
  }
  // The spreadsheet's own errors do not say which of the texts that a formula reads is to blame: one that others refuse.
  const alone = unexplained.filter((stuck) => {
    const text = stuck.reads.flatMap((area) => book.textsBefore(area)).find((each) => found.has(keyOf(each)));
    if (text) found.get(keyOf(text))?.stumbling.add(stuck);
    return text === undefined;
  });
  // Or one that no number can be made of.
  for (const stuck of alone) {
    const [misfit] = stuck.value === "#VALUE!" ? book.misfitsOf(stuck) : [];
    if (misfit) blame({ ...misfit, is: "text", reason: undefined }, stuck);
  }
  // And a formula stumbles over the empty answers of others, which wait for something else.
  const explained = new Set([...found.values()].flatMap((cause) => [...book.waitingFor(cause, cause.stumbling)]));
  const isWaiting = found.size > 0;
  for (const stuck of alone) {
    if (explained.has(stuck) || (isWaiting && book.readsEmptyAnswer(stuck))) continue;
    const cause = shownError(stuck, stuck, meaningOf);
    blame(cause, stuck);
    for (const other of book.waitingFor(cause, new Set([stuck]))) explained.add(other);
  }
  const all = [...found.values()]
    .map(({ stumbling, ...cause }) => ({ cause, waiting: book.waitingFor(cause, stumbling) }))
    .filter(({ cause, waiting }) => cause.is !== "error" || waiting.size > 0)
    .sort((one, other) => rank(one.cause) - rank(other.cause) || other.waiting.size - one.waiting.size);
  return all
    .filter(({ cause, waiting }, place) => cause.is !== "blank" || !isExplained(waiting, all.slice(0, place)))
    .map(({ cause, waiting }) => ({ ...cause, label: labelOf(book, cause), waiting: ownSheetFirst(cause, waiting) }));
}

/** A blank that may stay blank, or cannot be filled in yet: everything that waits for it waits for another as well. */
const isExplained = (waiting: ReadonlySet<Spot>, others: readonly { readonly waiting: ReadonlySet<Spot> }[]): boolean =>
  others.some((other) => other.waiting.size > waiting.size && [...waiting].every((spot) => other.waiting.has(spot)));

/** Mistakes, then errors of the spreadsheet's own, then what is still to come. */
const rank = ({ is }: Cause): number => (is === "blank" ? 2 : is === "error" ? 1 : 0);

const ownSheetFirst = ({ sheet }: Spot, waiting: ReadonlySet<Spot>): Spot[] => [
  ...[...waiting].filter((spot) => spot.sheet === sheet),
  ...[...waiting].filter((spot) => spot.sheet !== sheet),
];

type Cause = Omit<Hindrance, "label" | "waiting">;

const shownError = ({ sheet, row, column }: Spot, { value }: StuckCell, meaningOf: MeaningOf): Cause => {
  const place = { sheet, row, column };
  return { ...place, is: "error", value, reason: meaningOf(String(value), place) };
};

/** The cells right before a stuck one that explain it, with no other stuck one between; `unexplained`: an error that none does. */
function causesOf(
  stuck: StuckCell,
  book: KnownWorkbook,
  errorAt: ErrorAt,
  meaningOf: MeaningOf,
): readonly Cause[] | "unexplained" {
  const spot = { sheet: stuck.sheet, row: stuck.row, column: stuck.column };
  const shown = (place: Spot) => shownError(place, stuck, meaningOf);
  // Whatever such a formula reads, it is the formula that is wrong.
  if (isOfFormulas.test(String(stuck.value)) && !book.isHandedOn(stuck)) return [shown(spot)];
  const error = stuck.value === "" ? undefined : errorAt(spot);
  const reasonBy = (cause?: Spot): string | undefined =>
    error?.reason === undefined ? error?.message : namedReason(book, spot, error.reason, cause);
  const refusedBlank = refusesBlank(error?.reason) ? cellsGivenFor(error.reason.argument, book, spot) : undefined;
  const causes: Cause[] = [];
  for (const area of stuck.reads) {
    // Of texts that nobody complains of only those which begin as a number does; any other may be meant.
    const constants = error ? [...book.constantsIn(area), ...book.originsOf(area)] : book.halfNumbersIn(area);
    for (const { value, ...place } of book.errorsIn(area)) if (value === stuck.value) causes.push(shown(place));
    for (const { value, ...place } of constants) {
      const isRefused = value !== undefined && value !== "" && refuses(error?.reason, value);
      if (typeof value === "string" && value !== "") {
        if (isRefused || isHalfNumber(value)) causes.push({ ...place, is: "text", value, reason: reasonBy(place) });
      } else if (isRefused) causes.push({ ...place, is: "value", value, reason: reasonBy(place) });
    }
    const blank = isOneCell(area) ? book.blankAt(area) : undefined;
    if (!blank) continue;
    const isMissing = refusedBlank !== undefined && keyOf(refusedBlank) === keyOf(blank);
    const reason = isMissing ? reasonBy(blank) : undefined;
    causes.push({ ...blank, is: isMissing ? "missing" : "blank", value: undefined, reason });
  }
  if (book.isHandedOn(stuck) || causes.some(({ is }) => is !== "blank")) return causes;
  if (error !== undefined) return [{ ...spot, is: "formula", value: stuck.value, reason: reasonBy() }];
  return causes.length === 0 && isErrorAnswer(stuck.value) ? "unexplained" : causes;
}

/** Errors that no blank or text can cause. */
const isOfFormulas = /^#(?:NAME\?|REF!|SPILL!|CYCLE!|NULL!)$/;

function refusesBlank(reason: Reason | undefined): reason is Refusal {
  if (typeof reason !== "object" || !("found" in reason) || typeof reason.found === "string") return false;
  return reason.found.kind === "value" && (reason.found.value ?? "") === "";
}

/** Whether it is this value that was refused, also as the first reason why a row of a book is left out. */
function refuses(reason: Reason | undefined, value: Cell["value"]): boolean {
  if (typeof reason !== "object" || !("found" in reason) || typeof reason.found === "string") return false;
  const { found } = reason;
  if (found.kind === "lots") return refuses(found.leftOut?.first, value);
  return (found.kind === "value" || found.kind === "value at") && found.value === value;
}

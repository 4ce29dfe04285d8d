/** Whether the weights of a lot can be counted, and in which unit. */
import { outsideTexts } from "../../cells/formula-text";
import type { CellContent } from "../../host/workbook-host";
import type { KnownCell } from "../../sheet-check/known-cell";
import { inOneUnit } from "../../sheet-check/units";
import type { Weighed, WhyNotCounted } from "../../words/commands";
import { isErrorAnswer } from "../../workbook/workbook";

/**
 * Whether a formula takes a weight from elsewhere: another sheet, or several rows of this one. A weight less its tare,
 * or two baskets added up, is a weight of its own.
 */
export function isOfOthers(formula: string): boolean {
  if (formula === "") return false;
  const outside = outsideTexts(formula);
  if (/[![#]/.test(outside) || /\$?[A-Z]{1,3}:\$?[A-Z]{1,3}(?![A-Z\d(])/i.test(outside)) return true;
  const ranges = outside.matchAll(/\$?[A-Z]{1,3}\$?(\d+):\$?[A-Z]{1,3}\$?(\d+)/gi);
  return [...ranges].some(([, first, last]) => first !== last);
}

/** The cell that keeps a lot from being counted, and why; undefined where nothing does. */
export function whatIsWrong(fresh: KnownCell, finished: KnownCell): { at: KnownCell; why: WhyNotCounted } | undefined {
  const isOpen = finished.value === "" || (typeof finished.value === "string" && finished.value.trim() === "");
  const ofFresh = whatIsWrongWith("fresh", fresh.value);
  if (ofFresh !== undefined) return { at: fresh, why: ofFresh };
  const ofFinished = isOpen ? undefined : whatIsWrongWith("finished", finished.value);
  if (ofFinished !== undefined) return { at: finished, why: ofFinished };
  const asNumber = ({ value, unit }: KnownCell) => ({ value: value as number, unit });
  const [leaf, tea] = isOpen ? [1, 0] : inOneUnit(asNumber(fresh), asNumber(finished));
  if (tea <= leaf) return undefined;
  return { at: finished, why: { kind: "more tea than leaf", finished: withUnit(finished), fresh: withUnit(fresh) } };
}

function whatIsWrongWith(which: Weighed, value: CellContent): WhyNotCounted | undefined {
  if (typeof value === "string" && value.trim() === "") return { kind: "no weight", which };
  if (isErrorAnswer(value)) return { kind: "error", which, code: value };
  if (typeof value !== "number") return { kind: "text", which, text: String(value).slice(0, 40) };
  return value > 0 ? undefined : { kind: "not above 0", which, value: String(value) };
}

const withUnit = ({ value, unit }: KnownCell): string => `${value}${unit === undefined ? "" : ` ${unit}`}`;

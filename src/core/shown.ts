/** How a value reads in a message, in whatever language. */

import { dayZero, millisecondsInDay, wholeSeconds } from "./days";
import type { Quantity } from "./quantities";
import { isSheetError } from "./sheet-error";

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

/**
 * A bound that was worked out, to the digits that a scale or a person reads: five, and two behind the point at least.
 * It is rounded towards what is allowed, so that whoever keeps to the text keeps to the bound.
 */
export function shownBound(bound: number, is: "at least" | "at most" | "above" | "below"): string {
  const exact = Number(bound.toPrecision(10));
  const decimals = exact === 0 ? 0 : Math.max(2, 4 - Math.floor(Math.log10(Math.abs(exact))));
  if (!Number.isFinite(exact) || Math.abs(exact) >= 1e10 || decimals > 15) return shown(bound);
  const nearest = Number(exact.toFixed(decimals));
  const step = 10 ** -decimals;
  const isLower = is === "at least" || is === "above";
  const beyond = isLower ? nearest < exact : nearest > exact;
  return String(beyond ? Number((nearest + (isLower ? step : -step)).toFixed(decimals)) : nearest);
}

/** Digits and the signs that go with them: what someone meant as a number, whatever alphabet it is in. */
export const looksLikeNumber = (value: string): boolean =>
  /[\d０-９]/.test(value) && /^[\d０-９\s.,'’%+\-−:/．，％：]+$/.test(value);

/** In letters of the Latin alphabet: Chinese characters are two wide. */
export const shownWidth = (text: string): number =>
  [...text].reduce((sum, letter) => sum + (letter > "\u2e7f" ? 2 : 1), 0);

/** A name of the maker's as a message quotes it. */
export const quoted = (name: string): string => `"${shortened(name)}"`;

/** A span as it is typed, 5:00, with seconds only where there are some. */
export function span(seconds: number): string {
  const two = (value: number) => String(value).padStart(2, "0");
  const minutes = Math.floor(seconds / 60);
  const typed = `${Math.floor(minutes / 60)}:${two(minutes % 60)}`;
  return seconds % 60 === 0 ? typed : `${typed}:${two(seconds % 60)}`;
}

/**
 * A time of day as a clock shows it, a span as hours and minutes; both as the spreadsheet counts them, in days. A minute
 * shows until it is over, as on a clock and in a cell: 13:04:59 is 13:04.
 */
export function shownTime(days: number, { kind }: Quantity): string {
  const minutes = Math.floor(wholeSeconds(days) / 60);
  const hours = Math.floor(minutes / 60);
  const shown = kind === "time of day" ? String(hours % 24).padStart(2, "0") : hours;
  return `${shown}:${String(minutes % 60).padStart(2, "0")}`;
}

/** The day of a date or a moment as ISO 8601 writes it, 2024-04-05; the spreadsheet counts days from the last of 1899. */
export const shownDay = (days: number): string =>
  new Date(dayZero + Math.floor(days) * millisecondsInDay).toISOString().slice(0, 10);

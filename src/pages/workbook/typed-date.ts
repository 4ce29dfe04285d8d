import { dayZero, millisecondsInDay } from "../../core/days";

/** A day as somebody typed it, in figures with the same mark between them. */
type TypedDate =
  | { readonly is: "day"; readonly serial: number; readonly isDoubted: boolean }
  /** Figures of a day that no calendar has, such as 31.2.2025. */
  | { readonly is: "no day" }
  | { readonly is: "other" };

type Order = "day first" | "month first";

/**
 * Reads what the engine leaves as a text or takes for an American date, whatever the language. Between points the day
 * comes first wherever people write so; between strokes it is where the language has it, unless only the other way is a
 * day. What begins with the year is in no doubt anywhere.
 */
export function typedDate(text: string, order: Order): TypedDate {
  const typed = text.normalize("NFKC").trim();
  const [, first = "", mark = "", second = "", third = ""] =
    /^(\d{1,4})([./-])(\d{1,2})\2(\d{1,4})\.?$/.exec(typed) ?? [];
  if (first.length === 4 && third.length <= 2) return day(Number(first), Number(second), Number(third));
  if (first.length > 2 || third.length !== 4) return { is: "other" };
  const [one, two, year] = [Number(first), Number(second), Number(third)];
  const ways = { "day first": serialOf(year, two, one), "month first": serialOf(year, one, two) };
  if (mark === ".") return day(year, two, one);
  const other = order === "day first" ? "month first" : "day first";
  const serial = ways[order] ?? ways[other];
  if (serial === undefined) return { is: "no day" };
  const isDoubted = ways[order] === undefined || (ways[other] !== undefined && ways[other] !== serial);
  return { is: "day", serial, isDoubted };
}

function day(year: number, month: number, of: number): TypedDate {
  const serial = serialOf(year, month, of);
  return serial === undefined ? { is: "no day" } : { is: "day", serial, isDoubted: false };
}

/** As spreadsheets count days; undefined where there is no such day, and before the first of March 1900, where they differ. */
function serialOf(year: number, month: number, of: number): number | undefined {
  const moment = new Date(Date.UTC(year, month - 1, of));
  const isThere = moment.getUTCFullYear() === year && moment.getUTCMonth() === month - 1 && moment.getUTCDate() === of;
  const serial = (moment.getTime() - dayZero) / millisecondsInDay;
  return isThere && serial > 60 ? serial : undefined;
}

/** Whether people who speak a language write the day or the month first. */
export function orderOf(language: string): Order {
  const parts = new Intl.DateTimeFormat(language).formatToParts(new Date(2025, 3, 13)).map(({ type }) => type);
  return parts.indexOf("day") < parts.indexOf("month") ? "day first" : "month first";
}

/** The day in words, which leave no doubt: 4 May 2025. */
export const dayInWordsOf = (serial: number, language: string): string =>
  new Date(dayZero + serial * millisecondsInDay).toLocaleDateString(language, { dateStyle: "long", timeZone: "UTC" });

import { typedNumbers } from "../cells/typed-number";
import type { Says } from "../words/messages";

/** One thing that a text may mean: what it then should read, and how it is said. */
export interface Reading {
  readonly becomes: string;
  readonly says: Says;
}

/** A time that was typed: seconds where there is no doubt, else what it may mean. */
type TypedTime = { readonly seconds: number } | { readonly readings: readonly Reading[] };

const hourWords = "h|hrs?|hours?|小时|时|點|点";
const minuteWords = "m|mins?|minutes?|分钟?";
const withWords = new RegExp(`^(?:([\\d.,]+)\\s*(?:${hourWords}))?\\s*(?:(\\d{1,4})\\s*(?:${minuteWords})?)?$`, "i");

/**
 * Hours and minutes: 3:20, 3 h 20 min, 20 min, for a time of day also 2:30 pm. A bare number is asked about: 3 may be
 * hours or minutes, and 9.30 half past nine or nine hours and eighteen minutes.
 */
export function typedTime(text: string, isOfDay: boolean): TypedTime {
  const [, clockHours, clockMinutes, seconds = "0"] = /^(\d{1,3}):([0-5]\d)(?::([0-5]\d))?$/.exec(text) ?? [];
  if (clockHours !== undefined) {
    return { seconds: Number(clockHours) * 3600 + Number(clockMinutes) * 60 + Number(seconds) };
  }
  const half = isOfDay ? /^(1[0-2]|[1-9])(?:[:.]([0-5]\d))?\s*([ap])\.?m\.?$/i.exec(text) : null;
  if (half) {
    const hours = (Number(half[1]) % 12) + (half[3]?.toLowerCase() === "p" ? 12 : 0);
    return { seconds: hours * 3600 + Number(half[2] ?? 0) * 60 };
  }
  if (/^[\d.,]+$/.test(text)) return { readings: isOfDay ? timesOfDay(text) : spans(text) };
  const [match, hours = "0", minutes = "0"] = withWords.exec(text) ?? [];
  const [whole, ...others] = typedNumbers(hours);
  if (match === undefined || whole === undefined || others.length > 0) return { readings: [] };
  return { seconds: Number(whole) * 3600 + Number(minutes) * 60 };
}

/** 9, 9.30, 930: times of day without their colon. */
function timesOfDay(text: string): readonly Reading[] {
  const [, hours, minutes = "00"] = /^(\d|[01]\d|2[0-3])(?:[.,]?([0-5]\d))?$/.exec(text) ?? [];
  return hours === undefined ? [] : [reading(Number(hours) * 60 + Number(minutes), (time) => time)];
}

/** Longer wraps are days, and not meant by a bare number. */
const mostHours = 72;

function spans(text: string): readonly Reading[] {
  const [, whole, digits] = /^(\d{1,3})[.,]([0-5]\d)$/.exec(text) ?? [];
  const asClock = whole === undefined ? [] : [Number(whole) * 60 + Number(digits)];
  const asHours = typedNumbers(text).map((hours) => Number(hours) * 60);
  const asMinutes = /^\d+$/.test(text) ? [Number(text)] : [];
  const meant = [...new Set([...asHours, ...asClock, ...asMinutes].map(Math.round))];
  return meant.filter((minutes) => minutes > 0 && minutes <= mostHours * 60).map((minutes) => reading(minutes));
}

function reading(minutes: number, says?: (time: string) => string): Reading {
  const [hours, rest] = [Math.floor(minutes / 60), minutes % 60];
  const becomes = `${hours}:${String(rest).padStart(2, "0")}`;
  return { becomes, says: ({ form }) => says?.(becomes) ?? form.span(hours, rest) };
}

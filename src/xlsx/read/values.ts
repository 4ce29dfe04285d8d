/** What a cell holds, from how the file writes it (ECMA-376 part 1, 18.18.11). */

import { dayZero, millisecondsInDay, secondsInDay } from "../../core/days";
import type { Cell } from "../../workbook/workbook";
import { textOfCell } from "./shared-strings";

export interface ValueContext {
  readonly strings: readonly string[];
  /** Days count from 1904 instead of 1900. */
  readonly counts1904: boolean;
}

interface Written {
  /** The attribute `t`. */
  readonly type: string | undefined;
  /** What stands in `v`; undefined where it is missing. */
  readonly content: string | undefined;
  /** An inline text; undefined where there is none. */
  readonly inline: string | undefined;
  readonly hasFormula: boolean;
}

/** undefined for a blank. */
export function cellValue({ type, content, inline, hasFormula }: Written, context: ValueContext): Cell["value"] {
  if (type === "inlineStr") return inline ?? (content === undefined ? undefined : textOfCell(content));
  if (type === "str") return content !== undefined || hasFormula ? textOfCell(content ?? "") : undefined;
  if (content === undefined) return undefined;
  if (type === "s") return context.strings[Number(content)] ?? "";
  if (type === "b") return content.trim() === "1" || content.trim() === "true";
  if (type === "e") return content.trim();
  const text = content.trim();
  if (text === "") return undefined;
  if (type === "d") return dayOf(text, context.counts1904) ?? text;
  const number = Number(text);
  return Number.isNaN(number) ? text : number;
}

/** Day 0 of the calendar that some files have instead, in milliseconds as dates count them. */
const firstDay1904 = Date.UTC(1904, 0, 1);

/** `2024-04-05T06:00:00`, as the day that the spreadsheet counts; a time alone is its part of a day. */
function dayOf(text: string, counts1904: boolean): number | undefined {
  const [, year, month, day, hours = "0", minutes = "0", seconds = "0"] =
    /^(?:(\d{4})-(\d\d)-(\d\d))?(?:(?:^|T)(\d\d):(\d\d)(?::(\d\d(?:\.\d+)?))?)?Z?$/.exec(text) ?? [];
  if (year === undefined && !text.includes(":")) return undefined;
  const time = (Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds)) / secondsInDay;
  if (year === undefined) return time;
  const moment = Date.UTC(Number(year), Number(month) - 1, Number(day));
  const days = Math.round((moment - (counts1904 ? firstDay1904 : dayZero)) / millisecondsInDay);
  // The calendar of 1900 has a 29 February that never was: days before it count one less.
  return (!counts1904 && days < 61 ? days - 1 : days) + time;
}

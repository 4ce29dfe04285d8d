/**
 * Google hands a cell that shows a date, a time or a duration over as a moment. The functions count as a sheet does: in
 * days since 30 December 1899, by the sheet's own clock.
 */
import { dayZero, millisecondsInDay } from "../core/days";

/** What Google's script engine offers to a function in a cell, as far as it is asked for here. */
declare const SpreadsheetApp: { getActive(): { getSpreadsheetTimeZone(): string } };
declare const Utilities: { formatDate(moment: Date, timeZone: string, format: string): string };

/** What the sheet's clock shows at a moment, in milliseconds as if it were a clock in UTC. */
type Clock = (moment: number) => number;

/** Makes a number of days of each date of a call. The sheet is asked for its time zone with the first one alone. */
export function daysByTheSheet(): (date: Date) => number {
  let clock: Clock | undefined;
  return (date) => {
    clock = clock ?? (typeof SpreadsheetApp === "undefined" ? ownClock : clockOfTheSheet());
    return (clock(date.getTime()) - dayZero) / millisecondsInDay;
  };
}

/** In an engine without Google's services, that engine's. */
function ownClock(moment: number): number {
  const date = new Date(moment);
  return Date.UTC(
    date.getFullYear(),
    date.getMonth(),
    date.getDate(),
    date.getHours(),
    date.getMinutes(),
    date.getSeconds(),
    date.getMilliseconds(),
  );
}

/**
 * The script has a time zone of its own, so that the clock is read by the sheet's. Each question goes to a service:
 * moments of a day on which no clock is put forward or back share two answers.
 */
function clockOfTheSheet(): Clock {
  const timeZone = SpreadsheetApp.getActive().getSpreadsheetTimeZone();
  const known = new Map<number, number>();
  const aheadOfUtc = (moment: number): number => {
    const found = known.get(moment);
    if (found !== undefined) return found;
    const shown = Utilities.formatDate(new Date(moment), timeZone, "yyyy-MM-dd HH:mm:ss");
    const [year, month, date, hours, minutes, seconds] = shown.split(/\D/).map(Number) as [number, ...number[]];
    const ahead =
      Date.UTC(year, (month as number) - 1, date, hours, minutes, seconds) - Math.floor(moment / 1000) * 1000;
    known.set(moment, ahead);
    return ahead;
  };
  return (moment) => {
    const morning = Math.floor(moment / millisecondsInDay) * millisecondsInDay;
    const ahead = aheadOfUtc(morning);
    return moment + (ahead === aheadOfUtc(morning + millisecondsInDay) ? ahead : aheadOfUtc(moment));
  };
}

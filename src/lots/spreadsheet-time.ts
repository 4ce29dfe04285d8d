import { dayZero, millisecondsInDay, secondsInDay, wholeSeconds } from "../core/days";

/** A moment by the phone's clock as a spreadsheet counts it, in days, to the whole second. */
export function spreadsheetTime(moment: number): number {
  const at = new Date(moment);
  const day = Date.UTC(at.getFullYear(), at.getMonth(), at.getDate());
  const seconds = at.getHours() * 3600 + at.getMinutes() * 60 + at.getSeconds();
  return (day - dayZero) / millisecondsInDay + seconds / secondsInDay;
}

/**
 * The moment of a time of day, in days, that someone typed: of the days around it the one that brings the first time
 * nearest. Typed at 0:20, 23:50 was yesterday.
 */
export function momentNear(typed: number, first: number, time: number): number {
  const at = new Date(typed);
  const on = (day: number, days: number): number =>
    new Date(at.getFullYear(), at.getMonth(), at.getDate() + day, 0, 0, wholeSeconds(days)).getTime();
  const [nearest = 0] = [0, -1, 1].sort(
    (one, other) => Math.abs(on(one, first) - typed) - Math.abs(on(other, first) - typed),
  );
  return on(nearest, time);
}

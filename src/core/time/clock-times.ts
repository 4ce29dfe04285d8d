/** What the functions of time share: hours and minutes in days, and the slip of a time typed with a point. */
import { mustBe } from "../errors";

export const hour = 1 / 24;
export const minute = hour / 60;

/** Dates of this trade begin in 1954: a number between a day and that is a time typed with a point. */
export const firstDate = 20_000;

export function refuseTypedWithPoint(argument: string, time: number): void {
  if (time > 1 && time < firstDate) {
    throw mustBe(argument, "a time typed with a colon, or a date with a time (type 14:20)", time);
  }
}

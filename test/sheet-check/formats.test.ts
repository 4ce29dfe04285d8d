import { expect, test } from "vitest";
import { isDateFormat, isDayFormat } from "../../src/sheet-check/formats";

test.each([
  ["yyyy-mm-dd", true],
  ["yyyy-mm-dd hh:mm", true],
  ["d mmm", true],
  // Hours and minutes are no day: what is typed into such a cell is not asked for as one.
  ["hh:mm", false],
  ["[h]:mm", false],
  ['[h]:mm" days"', false],
])("%s shows a day: %s", (format, isDay) => {
  expect(isDateFormat(format)).toBe(true);
  expect(isDayFormat(format)).toBe(isDay);
});

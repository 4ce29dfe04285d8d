import { describe, expect, test } from "vitest";
import { clock, timeSpan } from "../../src/core/quantities";
import { isSheetError } from "../../src/core/sheet-error";
import { looksLikeNumber, shortened, shown, shownBound, shownDay, shownTime } from "../../src/core/shown";

describe("a value in a message", () => {
  test("is a number to ten digits, TRUE, FALSE, a blank, a quoted text, the code of an error or of another type", () => {
    expect([1 / 3, -2, true, false].map(shown)).toEqual(["0.3333333333", "-2", "TRUE", "FALSE"]);
    expect([null, undefined, ""].map(shown)).toEqual(["a blank", "a blank", "a blank"]);
    expect(shown("plot 3")).toBe('the text "plot 3"');
    expect(shown({ code: "#REF!", message: "" })).toBe("#REF!");
    expect([{}, { code: 7, message: "" }, Symbol("x"), () => 1].map(shown)).toEqual(
      new Array(4).fill("a value of another type"),
    );
  });

  test("is a bound that was worked out, rounded towards what is allowed, to what a scale shows", () => {
    expect(shownBound(259.9090164, "at least")).toBe("259.91");
    expect(shownBound(526.3157895, "at most")).toBe("526.31");
    expect([shownBound(221.4659686, "below"), shownBound(221.4659686, "above")]).toEqual(["221.46", "221.47"]);
    expect([shownBound(0.123456789, "at most"), shownBound(0.123456789, "at least")]).toEqual(["0.12345", "0.12346"]);
    // What is exact stays as it is, also where the last bit is not.
    for (const exact of [0, 1240, 1240.25, 0.76, 12.345, -3.5]) {
      for (const is of ["at least", "at most"] as const) expect(shownBound(exact, is)).toBe(String(exact));
    }
    expect(shownBound(0.1 + 0.2, "at most")).toBe("0.3");
    for (let bound = 1e-6; bound < 1e9; bound *= 7.3) {
      expect(Number(shownBound(bound, "at least"))).toBeGreaterThanOrEqual(bound * (1 - 1e-9));
      expect(Number(shownBound(bound, "at most"))).toBeLessThanOrEqual(bound * (1 + 1e-9));
    }
  });

  test("is cut after forty letters, and never within one", () => {
    expect(shortened("x".repeat(40))).toBe("x".repeat(40));
    expect(shortened("x".repeat(41))).toBe(`${"x".repeat(40)}…`);
    expect(shortened(`${"x".repeat(39)}🍃`)).toBe(`${"x".repeat(39)}…`);
    expect(shortened(`${"x".repeat(38)}🍃y`)).toBe(`${"x".repeat(38)}🍃…`);
  });
});

test("an error of the sheet has a code and a message, both texts", () => {
  expect(isSheetError({ code: "#N/A", message: "" })).toBe(true);
  for (const other of [null, undefined, "#N/A", 3, {}, { code: "#N/A" }, { message: "" }, { code: 1, message: "" }]) {
    expect(isSheetError(other)).toBe(false);
  }
  expect(isSheetError(Object.assign(() => 1, { code: "#N/A", message: "" }))).toBe(false);
});

test("text looks like a number when digits and the signs beside them are all there is", () => {
  expect(["12", "-3,5", "76 %", "１２．５", "1'000"].map(looksLikeNumber)).toEqual(new Array(5).fill(true));
  expect(["", "-", "12 g", "g 12", "plot 3", "x12"].map(looksLikeNumber)).toEqual(new Array(6).fill(false));
});

test("a minute shows until it is over, as in a cell, and one that doubles fall short of is there", () => {
  const at = (hours: number, minutes: number, seconds: number) => (hours * 3600 + minutes * 60 + seconds) / 86_400;
  expect(shownTime(at(13, 4, 59), clock)).toBe("13:04");
  expect(shownTime(at(27, 4, 59), clock)).toBe("03:04");
  expect(shownTime(at(0, 20, 0), timeSpan)).toBe("0:20");
  for (let minute = 0; minute < 1440; minute += 1) {
    const shown = `${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;
    expect(shownTime(minute / 1440, clock)).toBe(shown);
  }
});

test("a day is the one that the spreadsheet counts, whatever the time of day", () => {
  // The first of January 1970 is day 25569 of spreadsheets, by ECMA-376 part 1, 18.17.4.1, counted from 1899-12-30.
  expect(shownDay(25_569.75)).toBe("1970-01-01");
});

import { describe, expect, test } from "vitest";
import { clockAt, dueTimes, inClockForm } from "../../src/lots/due";
import { newLot, withEntries } from "../../src/lots/lot";
import { momentNear, spreadsheetTime } from "../../src/lots/spreadsheet-time";
import { english } from "../../src/words/en/messages";

const wording = { messages: english, unit: "g" } as const;
const at = (hours: number, minutes = 0, day = 12) => new Date(2026, 4, day, hours, minutes).getTime();
const lot = newLot("a", "12 May, 1", "g", at(9));
const wrapped = withEntries(
  lot,
  "turns",
  { start: { texts: ["13:40"] }, duration: { texts: ["3:20"] }, interval: { texts: ["0:25"] } },
  at(13, 42),
);

describe("the turns of a wrap", () => {
  // 200 minutes in steps of 25, the last step not turned: 7 turns.
  const turns = dueTimes(wrapped, wording);

  test("are due on the day on which their beginning was typed", () => {
    expect(turns.map((due) => due.at)).toEqual(
      [5, 30, 55, 80, 105, 130, 155].map((minutes) => at(14) + minutes * 60_000),
    );
    expect(turns[2]?.work).toEqual({ is: "turn", number: 3 });
  });

  test("are none while their beginning is an example of ours", () => {
    const untouched = withEntries(lot, "turns", { interval: { texts: ["0:25"] } }, at(13, 42));
    expect(dueTimes(untouched, wording)).toEqual([]);
  });

  test("that came due while nobody looked are said with how late they are, until they are seen to", () => {
    const now = at(14, 41);
    const clock = clockAt([wrapped], turns, now);
    expect(clock.overdue.map((due) => now - due.at)).toEqual([36 * 60_000, 11 * 60_000]);
    expect(clock.next?.at).toBe(at(14, 55));
    const seen = { ...wrapped, seenTo: now };
    expect(clockAt([seen], turns, now).overdue).toEqual([]);
    expect(clockAt([seen], turns, at(14, 56)).overdue.map((due) => due.at)).toEqual([at(14, 55)]);
    expect(clockAt([seen], turns, at(18)).next).toBeUndefined();
  });
});

test("the firings of a planned day are due by charge, round and pan", () => {
  // One pan, two charges, 0:30 and 0:20 with a rest of 1:00: 9:00, 9:30, then 10:30 and 11:00.
  const entries = {
    weight: { texts: ["480"] },
    panLoad: { texts: ["240"] },
    firstStart: { texts: ["9:00"] },
    pans: { texts: ["1"] },
    breakStart: { texts: [""] },
    breakEnd: { texts: [""] },
    firingTimes: { texts: ["0:30", "0:20"] },
    rests: { texts: ["1:00", ""] },
  };
  const dues = dueTimes(withEntries(lot, "day", entries, at(8, 50)), wording);
  expect(dues.map((due) => due.at)).toEqual([at(9), at(9, 30), at(10, 30), at(11)]);
  expect(dues.at(-1)?.work).toEqual({ is: "firing", charge: 2, round: 2, pan: 1 });
});

describe("a time of day that someone typed", () => {
  const days = (hours: number, minutes = 0) => (hours * 60 + minutes) / 1440;

  test("is that of the day that brings it nearest", () => {
    expect(momentNear(at(0, 20), days(23, 50), days(23, 50))).toBe(at(23, 50, 11));
    expect(momentNear(at(23, 50), days(0, 15), days(0, 15))).toBe(at(0, 15, 13));
    expect(momentNear(at(13, 42), days(13, 40), days(13, 40))).toBe(at(13, 40));
  });

  test("goes on past midnight with what follows from it", () => {
    expect(momentNear(at(22), days(22), days(26, 30))).toBe(at(2, 30, 13));
  });
});

test("a moment is a spreadsheet's time by the clock of the phone", () => {
  // 12 May 2026 is day 46154 of a spreadsheet: day 45658 is 1 January 2025, and 496 days are 365 + 131.
  expect(spreadsheetTime(at(18))).toBeCloseTo(46154.75, 9);
});

test("a stretch of time reads as hours, minutes and seconds", () => {
  expect([0, 65_000, 3_725_400, -5].map(inClockForm)).toEqual(["0:00:00", "0:01:05", "1:02:05", "0:00:00"]);
});

import { warmLeaf } from "../cautions";
import { secondsInDay, wholeSeconds } from "../days";
import { defineFunction, exactly, type FunctionPage, measured, setting } from "../define";
import { must, mustBe, noAnswer } from "../errors";
import { clock, count, timeSpan } from "../quantities";
import { span } from "../shown";
import { icalendar } from "../sources";
import { step } from "../working";
import { hour, minute, refuseTypedWithPoint } from "./clock-times";

export const longestDays = 3;
export const shortestInterval = 60;
export const mostTurns = 500;

/**
 * The times at which a wrap or a wither is turned: start + k × interval, strictly before start + duration, in whole
 * seconds; n = ⌈D/I⌉ − 1. All are spreadsheet times, a day being 1. Source: none; its own definition.
 */
export const turnTimes = defineFunction({
  id: "TURNTIMES",
  group: "time",
  parameters: [measured("start", clock), setting("duration", timeSpan), setting("interval", timeSpan)],
  result: { shape: "column", quantity: clock },
  calculate: (start, duration, interval): number[] => {
    refuseTypedWithPoint("start", start);
    if (duration > longestDays) throw mustBe("duration", "at most 3 days (for five hours type 5:00)", duration);
    const first = wholeSeconds(start);
    const whole = wholeSeconds(duration);
    const every = wholeSeconds(interval);
    if (every < shortestInterval)
      throw must("interval", { be: "at least one minute, 0:01" }, { kind: "time", seconds: every });
    const turns = Math.ceil(whole / every) - 1;
    if (turns < 1) {
      throw noAnswer(
        "interval",
        { be: { kind: "shorter than", seconds: whole } },
        { kind: "time", seconds: every },
        { hint: interval < 1 ? undefined : "for twenty minutes type 0:20" },
      );
    }
    if (turns > mostTurns) {
      throw must(
        "interval",
        { be: { kind: "few turns", most: mostTurns } },
        { kind: "turns", interval: every, turns, duration: whole },
      );
    }
    return Array.from({ length: turns }, (_, turn) => (first + (turn + 1) * every) / secondsInDay);
  },
});

export const turnTimesPage = {
  summary: "The times at which wrapped or resting leaf is turned.",
  parameters: {
    start: "time at which the rest begins, such as 14:20, or a date with a time",
    duration: "how long it lasts, typed as a time: 3:00 is three hours",
    interval: "time between two turns, typed as a time: 0:20 is twenty minutes",
  },
  formula: "start + k × interval, for k = 1 … ⌈duration / interval⌉ − 1",
  working: (start: number, duration: number, interval: number) => {
    const times = turnTimes.calculate(start, duration, interval);
    const [from, lasts, every] = [start, duration, interval].map((time) => span(wholeSeconds(time))) as [
      string,
      string,
      string,
    ];
    return [
      step(
        "turns before the end",
        "⌈duration / interval⌉ − 1",
        { duration: lasts, interval: every },
        times.length,
        count,
      ),
      step("the first turn", "start + interval", { start: from, interval: every }, times[0] as number, clock),
      step(
        "one after the other",
        "start + k × interval",
        { start: from, k: `1…${times.length}`, interval: every },
        times,
        clock,
      ),
    ];
  },
  guide: [
    "Type the time at which the leaf went into the wrap, and write the answers on the card beside it. At the end itself there is no turn: there the leaf comes out.",
    "A spreadsheet counts a day as 1, so a bare 5 is five days. Three hours are 3:00, or =3/24; twenty minutes are 0:20. Set the format of the answers to hh:mm; past midnight they count on into the next day and show the right hour.",
    "The answer is a column, and a spill cannot stand inside a worksheet table. Put it beside the table, or ask for one turn in one cell: =INDEX(TEA.TURNTIMES(A2, B2, C2), 1) is the first.",
    "Refused: a start such as 14.2, which is neither a time, below 1, nor a date of our days, above 20000: type 14:20. Also a duration above three days, an interval under one minute, and more than 500 turns. Where the interval is as long as the duration, no turn comes before the end, and the answer is #N/A.",
  ],
  sources: [],
  cautions: [warmLeaf],
  examples: [
    {
      given: [13 * hour, 2 * hour, 40 * minute],
      gives: [[13 * hour + 40 * minute], [14 * hour + 20 * minute]],
      shows: "from 13:00 for 2:00, turned every 0:40: at 13:40 and 14:20",
    },
  ],
  checks: [
    {
      status: "published",
      exercises: "calculation",
      given: [9 * hour, 6 * hour, 1.5 * hour],
      expected: [[10.5 * hour], [12 * hour], [13.5 * hour]],
      source: {
        work: icalendar,
        place: "every hour and a half for 4 occurrences from 9:00: 10:30, 12:00, 13:30; the fifth is the end here",
      },
      tolerance: { absolute: 1e-12 },
      because: "exact arithmetic of clocks",
    },
    {
      status: "published",
      exercises: "calculation",
      given: [9 * hour, 1.5 * hour, 0.25 * hour],
      expected: [[9.25 * hour], [9.5 * hour], [9.75 * hour], [10 * hour], [10.25 * hour]],
      source: {
        work: icalendar,
        place: "every 15 minutes for 6 occurrences from 9:00: 9:15 to 10:15; the seventh is the end here",
      },
      tolerance: { absolute: 1e-12 },
      because: "exact arithmetic of clocks",
    },
    {
      status: "exact",
      exercises: "edge",
      given: [23 * hour, 3 * hour, hour],
      expected: [[1], [1 + hour]],
      working: "23:00 + 1:00 = 24:00 = 1; + 2:00 = 1:00 of the next day; 26:00 is the end and no turn",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [9 * hour, 50 * minute, 20 * minute],
      expected: [[9 * hour + 20 * minute], [9 * hour + 40 * minute]],
      working: "⌈50 / 20⌉ − 1 = 2 turns, at 9:20 and 9:40",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "edge",
      given: [0, 3 * minute, minute],
      expected: [[minute], [2 * minute]],
      working: "from midnight, which is 0 and no blank: 0:01 and 0:02",
      ...exactly,
    },
    {
      status: "exact",
      given: [null, 3 * hour, hour],
      expected: "",
      working: "not begun yet: the answer waits",
      ...exactly,
    },
    {
      status: "common practice",
      exercises: "calculation",
      given: [0.375, 5 * hour, 0.5 * hour],
      expected: [
        [0.395833333],
        [0.416666667],
        [0.4375],
        [0.458333333],
        [0.479166667],
        [0.5],
        [0.520833333],
        [0.541666667],
        [0.5625],
      ],
      fact: "a wrap of 5:00 turned every 0:30 is turned 9 times",
      tolerance: { absolute: 1e-9 },
      because: "times written to nine decimals, less than a tenth of a millisecond",
    },
    {
      status: "exact",
      given: [14.2, 3 * hour, hour],
      expected: {
        error: "#VALUE!",
        message: "start must be a time typed with a colon, or a date with a time (type 14:20); got 14.2",
      },
      working: "14.2 is the fifteenth day at 0.2 × 24 = 4.8 hours, which is 4:48 in the morning",
      ...exactly,
    },
    {
      status: "exact",
      exercises: "input",
      given: [45_000.5, 2 * hour, hour],
      expected: [[45_000.5 + hour]],
      working: "a date with a time: noon and one hour",
      ...exactly,
    },
    {
      status: "exact",
      given: [0.375, 5, hour],
      expected: { error: "#VALUE!", message: "duration must be at most 3 days (for five hours type 5:00); got 5" },
      working: "5 is five days",
      ...exactly,
    },
    {
      status: "exact",
      given: [0.375, 2 * hour, 0.5 * minute],
      expected: { error: "#VALUE!", message: "interval must be at least one minute, 0:01; got 0:00:30" },
      working: "half a minute",
      ...exactly,
    },
    {
      status: "exact",
      given: [0.375, 10 * hour, minute],
      expected: {
        error: "#VALUE!",
        message: "interval must be long enough for 500 turns at most; got 0:01, which makes 599 in 10:00",
      },
      working: "600 / 1 − 1 = 599",
      ...exactly,
    },
    {
      status: "exact",
      given: [0.375, 2 * hour, 2 * hour],
      expected: {
        error: "#N/A",
        message: "interval must be shorter than the duration, 2:00, for a turn before the end; got 2:00",
      },
      working: "⌈2 / 2⌉ − 1 = 0",
      ...exactly,
    },
    {
      status: "exact",
      given: [0.375, 2 * hour, 20],
      expected: {
        error: "#N/A",
        message:
          "interval must be shorter than the duration, 2:00, for a turn before the end; got 480:00 (for twenty minutes type 0:20)",
      },
      working: "20 is twenty days",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

import { bothGiven } from "../both-given";
import { carbonMonoxide, hotPan, warmLeaf } from "../cautions";
import { secondsInDay, wholeSeconds } from "../days";
import {
  type Answer,
  defineFunction,
  exactly,
  explained,
  type FunctionPage,
  headers,
  measured,
  optional,
  optionalList,
  settingList,
} from "../define";
import { inPlace, must, mustBe } from "../errors";
import { Phrase } from "../phrases";
import { clock, count, looseSpan, tally, text, timeOfDay, timeSpan, within } from "../quantities";
import { bakerScheduling, grahamAnomalies } from "../sources";
import { step, workingNumber } from "../working";
import { hour, minute, refuseTypedWithPoint } from "./clock-times";
import { type Break, daySchedule, type Firing } from "./day-schedule";

/** A day of more firings is a slip of units; the refusal says so. */
export const mostFirings = 500;

/** From 59.5 seconds, which is one minute in whole seconds, to 12 hours. */
const firingTime = within(
  timeSpan,
  { atLeast: 59.5 / secondsInDay, atMost: 43_200.5 / secondsInDay },
  "from 0:01 to 12:00 (for twenty minutes type 0:20)",
);
const rest = within(looseSpan, { atLeast: 0, atMost: 3 }, "from 0 to 3 days (for five hours type 5:00)");
const pans = within(count, { atLeast: 1, atMost: 20, whole: true }, "a whole number from 1 to 20");

/**
 * When each charge goes into which pan. Round 1 is due at firstStart, every later one at the end of the one before and
 * its rest, a minimum; what could start first is placed first (`day-schedule.ts`), in whole seconds, clear of the break.
 * Source: own definition of a non-delay schedule, K. R. Baker (1974).
 */
export const dayPlan = defineFunction({
  id: "DAYPLAN",
  group: "time",
  parameters: [
    measured("firstStart", clock),
    measured("charges", count),
    settingList("firingTimes", firingTime),
    optionalList("rests", rest, { oneForAll: true, gaps: true, fallback: 0 }),
    optional("pans", pans, 1),
    optional("breakStart", timeOfDay),
    optional("breakEnd", timeOfDay),
    headers,
  ],
  result: {
    shape: "table",
    columns: [
      { name: "charge", quantity: count },
      { name: "round", quantity: count },
      { name: "pan", quantity: count },
      { name: "due", quantity: clock },
      { name: "start", quantity: clock },
      { name: "end", quantity: clock },
      { name: "late", quantity: looseSpan },
      { name: "note", quantity: text },
    ],
    lastRow: explained({ is: "total" }),
    picture: explained({
      shows: "day",
      charge: "charge",
      pan: "pan",
      start: "start",
      end: "end",
      note: "note",
      breakStart: "breakStart",
      breakEnd: "breakEnd",
    }),
  },
  calculate: (firstStart, charges, firingTimes, rests, pans, breakStart, breakEnd): Answer[][] => {
    const firings = planned(firstStart, charges, firingTimes, rests, pans, breakStart, breakEnd);
    const overruns = firings.filter(overran);
    const [first] = firings as [Firing];
    const lastEnd = firings.reduce((latest, { end }) => Math.max(latest, end), 0);
    const longest = overruns.reduce((most, { start, due }) => Math.max(most, start - due), 0);
    return [
      ...firings.map((firing): Answer[] => [
        firing.charge,
        firing.round,
        firing.pan,
        firing.due / secondsInDay,
        firing.start / secondsInDay,
        firing.end / secondsInDay,
        (firing.start - firing.due) / secondsInDay,
        overran(firing) ? new Phrase("overruns") : "",
      ]),
      [
        new Phrase("total"),
        firings.length,
        "",
        "",
        first.start / secondsInDay,
        lastEnd / secondsInDay,
        longest / secondsInDay,
        overruns.length > 0 ? new Phrase("overruns") : "",
      ],
    ];
  },
});

/** A wrap that grew longer than it should. In round 1 fresh leaf waits, which is shown and not flagged. */
const overran = ({ round, due, start }: Firing): boolean => round > 1 && start > due;

function planned(
  firstStart: number,
  charges: number,
  firingTimes: readonly number[],
  rests: readonly number[],
  pans: number,
  breakStart: number | undefined,
  breakEnd: number | undefined,
): Firing[] {
  refuseTypedWithPoint("firstStart", firstStart);
  if (charges * firingTimes.length > mostFirings) {
    throw mustBe("charges", "few enough for 500 firings in all", charges);
  }
  const pause = breakOf(breakStart, breakEnd);
  const rounds = firingTimes.map((time, index) => ({
    firing: wholeSeconds(time),
    rest: wholeSeconds(rests[index] as number),
  }));
  rounds.forEach(({ firing }, index) => {
    const open = secondsInDay - (pause?.length ?? 0);
    if (firing <= open) return;
    const tooLong = must(
      "firingTimes",
      { be: { kind: "between breaks", seconds: open } },
      { kind: "time", seconds: firing },
    );
    throw inPlace(tooLong, index);
  });
  return daySchedule({ start: wholeSeconds(firstStart), charges, rounds, pans, pause });
}

function breakOf(start: number | undefined, end: number | undefined): Break | undefined {
  if (!bothGiven("breakStart", start, "breakEnd", end)) return undefined;
  const [from, to] = [start, end].map((time) => wholeSeconds(time as number)) as [number, number];
  return { from, length: (to - from + secondsInDay) % secondsInDay };
}

/** 9:20 is at(9, 20). */
const at = (hours: number, minutes = 0): number => hours * hour + minutes * minute;

/** A row of a plan as a card has it: clocks as [hours, minutes]. */
const row = (
  charge: number,
  round: number,
  pan: number,
  due: readonly [number, number],
  start: readonly [number, number],
  end: readonly [number, number],
): (number | string)[] => {
  const late = at(...start) - at(...due);
  return [charge, round, pan, at(...due), at(...start), at(...end), late, round > 1 && late > 1e-9 ? "overruns" : ""];
};

const headings = ["charge", "round", "pan", "due", "start", "end", "late", "note"];
const twentyThrice = [[20 * minute], [20 * minute], [20 * minute]];

/** The closed form of one pan without a break: the n charges of each round, one after the other, while they wait. */
function onePan(charges: number, end: readonly [number, number], lateFrom2: number): FunctionPage["checks"][number] {
  const rows: (number | string)[][] = [];
  const step = 20;
  const later = Math.max(charges * step, 200);
  for (let round = 1; round <= 3; round += 1) {
    for (let charge = 1; charge <= charges; charge += 1) {
      const start = (round - 1) * later + (charge - 1) * step;
      const due = round === 1 ? 0 : start - lateFrom2;
      const late = start - due;
      rows.push([
        charge,
        round,
        1,
        at(9, due),
        at(9, start),
        at(9, start + step),
        late * minute,
        round > 1 && late > 0 ? "overruns" : "",
      ]);
    }
  }
  rows.push(["total", charges * 3, "", "", at(9), at(...end), lateFrom2 * minute, lateFrom2 > 0 ? "overruns" : ""]);
  return {
    status: "exact",
    exercises: "calculation",
    given: [at(9), charges, twentyThrice, [[at(3)], [at(3)], [null]], null, null, null, false],
    expected: rows,
    working: `one pan, 3 firings of 0:20, rests of 3:00: a round takes ${charges} · 0:20, and comes round again after 0:20 + 3:00 at the soonest; max(${charges} · 3 · 20, 3 · 20 + 2 · 180 + ${charges - 1} · 20) = ${Math.max(charges * 60, 400 + charges * 20)} minutes from 9:00`,
    tolerance: { absolute: 1e-12 },
    because: "exact arithmetic; a late of 0 is a difference of clocks",
  };
}

const lunchDay = () =>
  [at(8, 30), 5, [[at(0, 25)], [at(0, 20)], [at(0, 15)]], [[at(2)], [at(1)], [null]], 2, at(12), at(12, 45)] as const;

export const dayPlanPage = {
  summary: "When each charge goes into which pan, round by round, and which rests run over.",
  parameters: {
    firstStart: "time of the first firing, such as 9:00, or a date with a time",
    charges: "number of charges: CHARGECOUNT gives it",
    firingTimes: "how long one firing takes, one for each round, with loading and brushing: 0:20 is twenty minutes",
    rests:
      "the least wrap or rest after each round, beside it; one for all, or blank for none; the last is not waited for",
    pans: "how many pans can be tended at once; left out, one",
    breakStart: "time of day at which a daily break begins; left out with breakEnd, there is none",
    breakEnd: "time of day at which it ends; the next morning where it is the smaller",
  },
  formula:
    "due = end of the round before + rest; the firing that could start first is next, at the first moment that is not before it is due, has a free pan and leaves it clear of the break; ties to the earlier due, then the lower charge",
  working: (
    firstStart: number,
    charges: number,
    times: readonly number[],
    rests: readonly number[],
    pans: number,
    from?: number,
    to?: number,
  ) => {
    const rows = dayPlan.calculate(firstStart, charges, times, rests, pans, from, to);
    const firings = planned(firstStart, charges, times, rests, pans, from, to);
    const rounds = times.length;
    const inPans = firings.reduce((total, { start, end }) => total + (end - start) / 60, 0);
    const perCharge = times.reduce((total, time) => total + Math.round(wholeSeconds(time) / 60), 0);
    const isWhole = times.every((time) => wholeSeconds(time) % 60 === 0);
    return [
      step("number of firings", "charges × rounds", { charges, rounds }, charges * rounds, count),
      ...(isWhole
        ? [step("minutes of firing", "charges × minutes", { charges, minutes: perCharge }, inPans, tally)]
        : []),
      step(
        "rests that run over",
        "count",
        { count: firings.filter(overran).length },
        firings.filter(overran).length,
        tally,
      ),
      step(
        "one after the other, the one that can start first",
        "start + firing = end",
        `1…${workingNumber(firings.length)}`,
        rows,
      ),
    ];
  },
  guide: [
    "Use it in the morning, when you know how many charges the leaf makes: type when the pan is hot, how long a firing of each round takes, and how long the leaf rests after it. The table is the card by the pans: when each charge is due, when it starts and ends, in which pan, and how late it is.",
    "A rest is a minimum. A wrap that grows too long is flagged as overruns, never prevented: take fewer charges, another pan, or another time for the break, and look again. In the first round late is fresh leaf that waits, which is shown and not flagged. Rests run on through breaks.",
    "It is a rule, not the best of all plans: whatever can start first does. Of 150 small days in one pan, tried in every order, it was the shortest in 146 and at worst 7 % longer; now and then (14 of 10,000 days) a shorter rest ends the day later.",
    "Pans are those that you can tend at once. Loading and brushing the pan belong to the firing time. A firing may end as the break begins, and begin as it ends; a short one may pass a long one that no longer fits before the break.",
    "The last row has the number of firings, the first start, the last end, and the longest overrun. In one cell, the end of the day: =INDEX(TEA.DAYPLAN(A2,B2,D2:D4,E2:E4,,,,FALSE),B2*3+1,6), with three rounds. Set the formats to hh:mm, and [h]:mm for late; past midnight the clocks count on and show the right hour.",
    "A blank firstStart or a blank number of charges makes the table wait. Refused: more than 500 firings, a firing under 0:01 or over 12:00, a rest over three days, one end of a break without the other, and a firing longer than the time between two breaks.",
  ],
  sources: [
    { work: bakerScheduling, place: "non-delay schedules" },
    { work: grahamAnomalies, place: "list schedules that end later though something takes less time" },
  ],
  unpublished:
    "No work was found that plans firings in rounds with rests between them: the days of the checks are worked by hand, and the tests plan random days with a second, slow program.",
  cautions: [hotPan, carbonMonoxide, warmLeaf],
  examples: [
    {
      given: [at(10), 2, [[at(0, 30)], [at(0, 20)]], at(1)],
      gives: [
        headings,
        row(1, 1, 1, [10, 0], [10, 0], [10, 30]),
        row(2, 1, 1, [10, 0], [10, 30], [11, 0]),
        row(1, 2, 1, [11, 30], [11, 30], [11, 50]),
        row(2, 2, 1, [12, 0], [12, 0], [12, 20]),
        ["total", 4, "", "", at(10), at(12, 20), 0, ""],
      ],
      shows: "two charges from 10:00, 0:30 and then 0:20, with a wrap of 1:00: done at 12:20",
    },
  ],
  checks: [
    onePan(3, [16, 40], 0),
    onePan(10, [19, 0], 0),
    onePan(12, [21, 0], 40),
    {
      status: "exact",
      exercises: "calculation",
      given: [at(9), 12, twentyThrice, [[at(3)], [at(3)], [null]], 2],
      expected: [
        headings,
        ...[1, 2, 3].flatMap((round) =>
          Array.from({ length: 12 }, (_, index) => {
            const pair = Math.floor(index / 2);
            const start = (round - 1) * 200 + pair * 20;
            return [
              index + 1,
              round,
              (index % 2) + 1,
              at(9, round === 1 ? 0 : start),
              at(9, start),
              at(9, start + 20),
              round === 1 ? at(0, start) : 0,
              "",
            ];
          }),
        ),
        ["total", 36, "", "", at(9), at(17, 40), 0, ""],
      ],
      working:
        "two pans: a round takes 6 · 0:20 = 2:00, less than 0:20 + 3:00, so no leaf waits: 9:00 + 2 · 3:20 + 2:00 = 17:40",
      tolerance: { absolute: 1e-12 },
      because: "exact arithmetic; a late of 0 is a difference of clocks",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [...lunchDay()],
      expected: [
        headings,
        row(1, 1, 1, [8, 30], [8, 30], [8, 55]),
        row(2, 1, 2, [8, 30], [8, 30], [8, 55]),
        row(3, 1, 1, [8, 30], [8, 55], [9, 20]),
        row(4, 1, 2, [8, 30], [8, 55], [9, 20]),
        row(5, 1, 1, [8, 30], [9, 20], [9, 45]),
        row(1, 2, 1, [10, 55], [10, 55], [11, 15]),
        row(2, 2, 2, [10, 55], [10, 55], [11, 15]),
        row(3, 2, 1, [11, 20], [11, 20], [11, 40]),
        row(4, 2, 2, [11, 20], [11, 20], [11, 40]),
        row(5, 2, 1, [11, 45], [12, 45], [13, 5]),
        row(1, 3, 2, [12, 15], [12, 45], [13, 0]),
        row(2, 3, 2, [12, 15], [13, 0], [13, 15]),
        row(3, 3, 1, [12, 40], [13, 5], [13, 20]),
        row(4, 3, 2, [12, 40], [13, 15], [13, 30]),
        row(5, 3, 1, [14, 5], [14, 5], [14, 20]),
        ["total", 15, "", "", at(8, 30), at(14, 20), at(1), "overruns"],
      ],
      working:
        "charge 5 is due at 11:45 and would end at 12:05, in the break: it starts at 12:45, 1:00 late; at 12:45 it is due before charge 1 (12:15), so it takes pan 1; five rows run over",
      tolerance: { absolute: 1e-12 },
      because: "exact arithmetic; a late of 0 is a difference of clocks",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [at(9), 2, [[at(0, 30)], [at(0, 30)]], at(40), null, at(22), at(6), false],
      expected: [
        row(1, 1, 1, [9, 0], [9, 0], [9, 30]),
        row(2, 1, 1, [9, 0], [9, 30], [10, 0]),
        row(1, 2, 1, [49, 30], [54, 0], [54, 30]),
        row(2, 2, 1, [50, 0], [54, 30], [55, 0]),
        ["total", 4, "", "", at(9), at(55), at(4, 30), "overruns"],
      ],
      working:
        "due 40 hours after 9:30 and 10:00, at 1:30 and 2:00 of the night after the next: in the break from 22:00 to 6:00; 6:00 and 6:30, both 4:30 late, done at 7:00 two days on, 55/24",
      tolerance: { absolute: 1e-12 },
      because: "exact arithmetic of clocks",
    },
    {
      status: "exact",
      exercises: "calculation",
      given: [at(10, 50), 4, [[at(0, 40)], [at(0, 10)]], at(0, 10), 2, at(12), at(12, 45), false],
      expected: [
        row(1, 1, 1, [10, 50], [10, 50], [11, 30]),
        row(2, 1, 2, [10, 50], [10, 50], [11, 30]),
        row(1, 2, 1, [11, 40], [11, 40], [11, 50]),
        row(2, 2, 2, [11, 40], [11, 40], [11, 50]),
        row(3, 1, 1, [10, 50], [12, 45], [13, 25]),
        row(4, 1, 2, [10, 50], [12, 45], [13, 25]),
        row(3, 2, 1, [13, 35], [13, 35], [13, 45]),
        row(4, 2, 2, [13, 35], [13, 35], [13, 45]),
        ["total", 8, "", "", at(10, 50), at(13, 45), 0, ""],
      ],
      working:
        "at 11:30 the 0:40 of charges 3 and 4 would end at 12:10, in the break; the 0:10 of charges 1 and 2 pass them at 11:40",
      tolerance: { absolute: 1e-12 },
      because: "exact arithmetic; a late of 0 is a difference of clocks",
    },
    {
      status: "exact",
      exercises: "edge",
      given: [at(12, 15), 1, at(0, 30), null, null, at(12), at(12, 45), false],
      expected: [row(1, 1, 1, [12, 15], [12, 45], [13, 15]), ["total", 1, "", "", at(12, 45), at(13, 15), 0, ""]],
      working: "it begins as the break ends; fresh leaf that waits is no overrun",
      tolerance: { absolute: 1e-12 },
      because: "exact arithmetic of clocks",
    },
    {
      status: "exact",
      given: [null, 3, at(0, 20)],
      expected: "",
      working: "no time yet: the plan waits",
      ...exactly,
    },
    {
      status: "exact",
      given: [at(9), 200, twentyThrice],
      expected: { error: "#VALUE!", message: "charges must be few enough for 500 firings in all; got 200" },
      working: "200 · 3 = 600",
      ...exactly,
    },
    {
      status: "exact",
      given: [at(9), 3, 20],
      expected: {
        error: "#VALUE!",
        message: "firingTimes must be from 0:01 to 12:00 (for twenty minutes type 0:20); got 20 in place 1 of the list",
      },
      working: "20 is twenty days",
      ...exactly,
    },
    {
      status: "exact",
      given: [at(9), 3, at(10), null, null, at(20), at(12)],
      expected: {
        error: "#VALUE!",
        message: "firingTimes must be at most 8:00, the time between two breaks; got 10:00 in place 1 of the list",
      },
      working: "from 12:00 to 20:00 are 8 hours",
      ...exactly,
    },
    {
      status: "exact",
      given: [at(9), 3, at(0, 20), null, null, at(12)],
      expected: { error: "#VALUE!", message: "breakEnd must be given together with breakStart; got a blank" },
      working: "a break has two ends",
      ...exactly,
    },
    {
      status: "exact",
      given: [9.15, 3, at(0, 20)],
      expected: {
        error: "#VALUE!",
        message: "firstStart must be a time typed with a colon, or a date with a time (type 14:20); got 9.15",
      },
      working: "9.15 is the tenth day at 3:36",
      ...exactly,
    },
  ],
} as const satisfies FunctionPage;

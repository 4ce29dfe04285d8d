import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Day, daySchedule, type Firing } from "../../src/core/time/day-schedule";

const minute = 60;
const day = 24 * 60;

/**
 * The same rule, the slow way: minute by minute, whoever is due and may start now starts, the earlier due first, then
 * the lower charge, in the lowest pan that is free. Everything in minutes, and nothing shared with the program tested.
 */
function minuteByMinute({ start, charges, rounds, pans, pause }: Day): Firing[] {
  const inMinutes = (seconds: number) => seconds / minute;
  const closed = new Array<boolean>(day).fill(false);
  for (let passed = 0; passed < inMinutes(pause?.length ?? 0); passed += 1) {
    closed[(inMinutes(pause?.from ?? 0) + passed) % day] = true;
  }
  const freeAt = new Array<number>(pans).fill(0);
  const leaf = Array.from({ length: charges }, (_, index) => ({ charge: index + 1, round: 0, due: inMinutes(start) }));
  const done: Firing[] = [];
  for (let now = inMinutes(start); done.length < charges * rounds.length; now += 1) {
    for (;;) {
      const pan = freeAt.findIndex((free) => free <= now);
      if (pan < 0) break;
      const [next] = leaf
        .filter(({ due, round }) => due <= now && round < rounds.length)
        .filter(({ round }) => {
          const takes = inMinutes((rounds[round] as Day["rounds"][number]).firing);
          for (let passed = 0; passed < takes; passed += 1) if (closed[(now + passed) % day]) return false;
          return true;
        })
        .sort((one, other) => one.due - other.due || one.charge - other.charge);
      if (next === undefined) break;
      const { firing, rest } = rounds[next.round] as Day["rounds"][number];
      const end = now + inMinutes(firing);
      done.push({
        charge: next.charge,
        round: next.round + 1,
        pan: pan + 1,
        due: next.due * minute,
        start: now * minute,
        end: end * minute,
      });
      freeAt[pan] = end;
      next.round += 1;
      next.due = end + inMinutes(rest);
    }
  }
  return done.sort((one, other) => one.start - other.start || one.pan - other.pan);
}

const minutes = (least: number, most: number) => fc.integer({ min: least, max: most }).map((count) => count * minute);
const rounds = fc.array(fc.record({ firing: minutes(1, 90), rest: minutes(0, 240) }), { minLength: 1, maxLength: 4 });
const anyBreak = fc.option(fc.record({ from: minutes(0, day - 1), length: minutes(0, 480) }), { nil: undefined });
const days = fc.record({
  start: minutes(0, day - 1),
  charges: fc.integer({ min: 1, max: 8 }),
  rounds,
  pans: fc.integer({ min: 1, max: 4 }),
  pause: anyBreak,
});

describe("a day planned event by event", () => {
  test("is the day planned minute by minute, on random days", () => {
    fc.assert(
      fc.property(days, (day) => {
        expect(daySchedule(day)).toEqual(minuteByMinute(day));
      }),
      { numRuns: 300 },
    );
  });

  test("has no two firings in one pan at a time, none before it is due, and none in the break", () => {
    fc.assert(
      fc.property(days, (day) => {
        const firings = daySchedule(day);
        expect(firings.length).toBe(day.charges * day.rounds.length);
        firings.forEach((firing, index) => {
          expect(firing.start).toBeGreaterThanOrEqual(firing.due);
          for (const other of firings.slice(index + 1)) {
            if (other.pan === firing.pan) expect(other.start).toBeGreaterThanOrEqual(firing.end);
          }
          if (day.pause === undefined || day.pause.length === 0) return;
          const since = (firing.start - day.pause.from + 10 * 86_400) % 86_400;
          expect(since).toBeGreaterThanOrEqual(day.pause.length);
          expect(since + firing.end - firing.start).toBeLessThanOrEqual(86_400);
        });
      }),
      { numRuns: 300 },
    );
  });

  test("in one pan without a break, with rounds that are alike, ends when the closed form says", () => {
    const alike = fc.record({
      charges: fc.integer({ min: 1, max: 40 }),
      count: fc.integer({ min: 1, max: 6 }),
      firing: minutes(1, 60),
      rest: minutes(0, 300),
    });
    fc.assert(
      fc.property(alike, ({ charges: n, count: m, firing: p, rest: l }) => {
        const firings = daySchedule({
          start: 0,
          charges: n,
          rounds: Array.from({ length: m }, () => ({ firing: p, rest: l })),
          pans: 1,
        });
        const end = firings.reduce((latest, firing) => Math.max(latest, firing.end), 0);
        expect(end).toBe(Math.max(n * m * p, m * p + (m - 1) * l + (n - 1) * p));
      }),
      { numRuns: 500 },
    );
  });
});

test("a shorter rest may end the day later: it is a rule, and not the best of all plans", () => {
  const endOf = (day: Day): number => daySchedule(day).reduce((latest, { end }) => Math.max(latest, end), 0);
  const worse = fc.sample(days, { numRuns: 4000, seed: 7 }).filter((day) => {
    const shorter = {
      ...day,
      rounds: day.rounds.map((round) => ({ ...round, rest: Math.max(0, round.rest - minute) })),
    };
    return endOf(shorter) > endOf(day);
  });
  expect(worse.length).toBeGreaterThan(0);
});

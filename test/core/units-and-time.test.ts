import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bind } from "../../src/cells/bind";
import { CellError } from "../../src/cells/values";
import type { Quantity } from "../../src/core/quantities";
import { turnTimes } from "../../src/core/time/turn-times";
import { areaUnit, convertArea } from "../../src/core/units/convert-area";
import { convertWeight, weightUnit } from "../../src/core/units/convert-weight";

describe.each([
  { spec: convertWeight, unit: weightUnit },
  { spec: convertArea, unit: areaUnit },
])("$spec.id", ({ spec, unit }) => {
  const convert = bind(spec);
  const number = (value: number, from: string, to: string) => convert(value, from, to)[0]?.[0] as number;
  const anyUnit = fc.constantFrom(...Object.keys(unit.choices ?? {}));
  const value = fc.double({ min: 1e-6, max: 1e9, noNaN: true });

  test("there and back is where it began", () => {
    fc.assert(
      fc.property(value, anyUnit, anyUnit, (amount, from, to) => {
        expect(Math.abs(number(number(amount, from, to), to, from) / amount - 1)).toBeLessThanOrEqual(1e-14);
      }),
    );
  });

  test("the same unit changes nothing, and metric steps are exact", () => {
    fc.assert(
      fc.property(value, anyUnit, (amount, same) => {
        expect(number(amount, same, same)).toBe(amount);
      }),
    );
    expect(convertWeight.calculate(0.007, "kg", "g")).toBe(7);
    expect(convertWeight.calculate(7, "g", "kg")).toBe(0.007);
    // Multiplied by a thousandth, 9 would be 0.009000000000000001.
    expect(convertWeight.calculate(9, "g", "kg")).toBe(0.009);
    // And divided by a thousandth, 5.1 would be 5099.999999999999.
    expect(convertWeight.calculate(5.1, "kg", "g")).toBe(5100);
    expect(convertArea.calculate(3.3, "km2", "ha")).toBe(330);
  });

  test("over a third unit is the same as straight", () => {
    fc.assert(
      fc.property(value, anyUnit, anyUnit, anyUnit, (amount, from, by, to) => {
        const straight = number(amount, from, to);
        expect(Math.abs(number(number(amount, from, by), by, to) / straight - 1)).toBeLessThanOrEqual(1e-14);
      }),
    );
  });

  test("every other spelling means its unit", () => {
    for (const [word, spellings] of Object.entries(unit.choices ?? {})) {
      for (const spelling of spellings) {
        expect(convert(3, ` ${spelling.toUpperCase()} `, word), spelling).toEqual([[3]]);
      }
    }
  });

  test("no spelling means two units, or is both read and refused", () => {
    const read = Object.entries(unit.choices ?? {}).flatMap(([word, spellings]) => [word, ...spellings]);
    const all = [...read, ...refusedBy(unit)].map((spelling) => spelling.toLowerCase());
    expect(new Set(all).size).toBe(all.length);
  });
});

const refusedBy = (unit: Quantity): string[] => Object.keys(unit.refusedChoices ?? {});

test("a unit with two meanings is refused with what it may mean, in either place", () => {
  const convert = bind(convertWeight);
  for (const word of refusedBy(weightUnit)) {
    for (const given of [
      [1, word, "g"],
      [1, "g", word],
    ]) {
      const refused = convert(...given)[0]?.[0];
      expect(refused).toBeInstanceOf(CellError);
      expect((refused as CellError).message).toMatch(/\(an? .*: type /);
    }
  }
  expect(refusedBy(weightUnit)).toEqual(expect.arrayContaining(["catty", "tael"]));
});

describe("TURNTIMES", () => {
  const seconds = (days: number) => Math.round(days * 86_400);
  const start = fc.oneof(
    fc.integer({ min: 0, max: 86_399 }).map((second) => second / 86_400),
    fc.integer({ min: 40_000 * 86_400, max: 60_000 * 86_400 }).map((second) => second / 86_400),
  );
  const minutes = fc.integer({ min: 1, max: 180 });

  test("turns stand an interval apart, all before the end, with no room for another", () => {
    fc.assert(
      fc.property(start, minutes, fc.double({ min: 1.01, max: 20, noNaN: true }), (from, every, times) => {
        const interval = (every * 60) / 86_400;
        const duration = Math.min(3, interval * times);
        fc.pre(seconds(duration) > seconds(interval));
        const turns = [from, ...turnTimes.calculate(from, duration, interval)].map(seconds);
        for (let turn = 1; turn < turns.length; turn += 1) {
          expect((turns[turn] as number) - (turns[turn - 1] as number)).toBe(every * 60);
        }
        const end = seconds(from) + seconds(duration);
        const last = turns.at(-1) as number;
        expect(last).toBeLessThan(end);
        expect(last + every * 60).toBeGreaterThanOrEqual(end);
      }),
    );
  });

  test("a duration of n intervals has n − 1 turns, however the times were computed", () => {
    fc.assert(
      fc.property(start, minutes, fc.integer({ min: 2, max: 24 }), (from, every, times) => {
        const interval = every / 1440;
        let duration = 0;
        for (let count = 0; count < times; count += 1) duration += interval;
        expect(turnTimes.calculate(from, duration, interval)).toHaveLength(times - 1);
      }),
    );
  });

  test("the limits themselves are allowed: three days, one minute, 500 turns", () => {
    expect(turnTimes.calculate(0.5, 3, 1)).toEqual([1.5, 2.5]);
    expect(turnTimes.calculate(0, 501 / 1440, 1 / 1440)).toHaveLength(500);
    expect(() => turnTimes.calculate(0, 502 / 1440, 1 / 1440)).toThrow("got 0:01, which makes 501 in 8:22");
    expect(() => turnTimes.calculate(0, 3.01, 1)).toThrow("duration must be at most 3 days");
    expect(() => turnTimes.calculate(0, 0.5, 59 / 86_400)).toThrow(
      "interval must be at least one minute, 0:01; got 0:00:59",
    );
  });
});

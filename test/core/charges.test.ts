import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { chargeCount } from "../../src/core/charges/charge-count";
import { chargePlan } from "../../src/core/charges/charge-plan";
import { chargeSplit } from "../../src/core/charges/charge-split";
import { splitWeight } from "../../src/core/charges/split-weight";
import { DomainError } from "../../src/core/errors";
import { expectEqual } from "./compare";

/** Scales as they are sold, and what a weight in their steps is written as. */
const readabilities = [0.001, 0.01, 0.02, 0.1, 0.2, 0.5, 1, 2, 5, 10, 50];

/** What the digits of a weight mean, not the noise behind them. */
const asWritten = (weight: number): number => Number(weight.toPrecision(12));

/** A lot on a scale: whole steps, a pan load of any size, sometimes a limit somewhat above it. */
const lot = fc
  .record({
    readability: fc.constantFrom(...readabilities),
    steps: fc.integer({ min: 1, max: 2_000_000 }),
    charges: fc.double({ min: 0.3, max: 60, noNaN: true }),
    slack: fc.option(fc.double({ min: 1, max: 1.6, noNaN: true }), { nil: undefined }),
  })
  .map(({ readability, steps, charges, slack }) => {
    const weight = asWritten(steps * readability);
    const panLoad = Math.max(readability, weight / charges);
    return { readability, steps, weight, panLoad, maxLoad: slack === undefined ? undefined : panLoad * slack };
  });

/** The steps that a load stands for; fails where it stands for none. */
function stepsOf(load: number, readability: number): number {
  const steps = load / readability;
  expect(Math.abs(steps - Math.round(steps)), `${load} on a scale of ${readability}`).toBeLessThanOrEqual(1e-6);
  return Math.round(steps);
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);

describe("CHARGESPLIT", () => {
  test("charges add up to the weight, to the last step", () => {
    fc.assert(
      fc.property(lot, ({ weight, panLoad, maxLoad, readability, steps }) => {
        const loads = chargeSplit.calculate(weight, panLoad, maxLoad, readability);
        expect(sum(loads.map((load) => stepsOf(load, readability)))).toBe(steps);
      }),
    );
  });

  test("charges carry no digits that the scale does not have", () => {
    fc.assert(
      fc.property(lot, ({ weight, panLoad, maxLoad, readability }) => {
        for (const load of chargeSplit.calculate(weight, panLoad, maxLoad, readability)) {
          expect(load).toBe(asWritten(load));
        }
      }),
    );
  });

  test("charges differ by one step at most, and the heavier ones come first", () => {
    fc.assert(
      fc.property(lot, ({ weight, panLoad, maxLoad, readability }) => {
        const loads = chargeSplit.calculate(weight, panLoad, maxLoad, readability);
        const steps = loads.map((load) => stepsOf(load, readability));
        expect(Math.max(...steps) - Math.min(...steps)).toBeLessThanOrEqual(1);
        expect(steps).toEqual([...steps].sort((one, other) => other - one));
      }),
    );
  });

  test("no charge passes maxLoad", () => {
    fc.assert(
      fc.property(lot, fc.boolean(), ({ weight, panLoad, maxLoad = panLoad, readability }, onScale) => {
        const loads = chargeSplit.calculate(weight, panLoad, maxLoad, onScale ? readability : undefined);
        for (const load of loads) expect(load).toBeLessThanOrEqual(maxLoad * (1 + 1e-9) + 1e-6 * readability);
      }),
    );
  });

  test("without readability the charges are equal and add up", () => {
    fc.assert(
      fc.property(lot, ({ weight, panLoad, maxLoad }) => {
        const loads = chargeSplit.calculate(weight, panLoad, maxLoad);
        expect(new Set(loads).size).toBe(1);
        expectEqual(sum(loads), weight);
      }),
    );
  });

  test("there are as many charges as CHARGECOUNT says", () => {
    fc.assert(
      fc.property(lot, ({ weight, panLoad, maxLoad, readability }) => {
        const loads = chargeSplit.calculate(weight, panLoad, maxLoad, readability);
        expect(loads).toHaveLength(chargeCount.calculate(weight, panLoad, maxLoad, readability));
      }),
    );
  });

  test("a computed weight with the noise of doubles still counts as whole steps", () => {
    expect(chargeSplit.calculate(0.1 + 0.2, 0.1, undefined, 0.1)).toEqual([0.1, 0.1, 0.1]);
    expect(chargeSplit.calculate(640.0000000001, 320, undefined, 1)).toEqual([320, 320]);
  });

  test("a weight between two steps is refused with both of them", () => {
    fc.assert(
      fc.property(lot, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (drawn, part) => {
        const { readability, steps, panLoad } = drawn;
        const weight = (steps + part) * readability;
        expect(() => chargeSplit.calculate(weight, panLoad, undefined, readability)).toThrow(
          `the nearest are ${asWritten(steps * readability)} and ${asWritten((steps + 1) * readability)})`,
        );
      }),
    );
  });
});

describe("CHARGECOUNT", () => {
  test("no other number of charges comes nearer to the pan load", () => {
    fc.assert(
      fc.property(lot, fc.integer({ min: 1, max: 80 }), ({ weight, panLoad }, other) => {
        const charges = chargeCount.calculate(weight, panLoad);
        const miss = (count: number) => Math.abs(weight / count - panLoad) / panLoad;
        expect(miss(charges)).toBeLessThanOrEqual(miss(other) + 2e-9);
      }),
    );
  });

  test("maxLoad never makes more charges than it has to", () => {
    fc.assert(
      fc.property(lot, ({ weight, panLoad, maxLoad = panLoad, readability, steps }) => {
        const free = chargeCount.calculate(weight, panLoad, undefined, readability);
        const limited = chargeCount.calculate(weight, panLoad, maxLoad, readability);
        expect(limited).toBeGreaterThanOrEqual(free);
        if (limited === free) return;
        const heaviestOfOneFewer = Math.ceil(steps / (limited - 1)) * readability;
        expect(heaviestOfOneFewer).toBeGreaterThan(maxLoad);
      }),
    );
  });

  test("a tie takes more pans: a weight halfway between n and n + 1 charges makes n + 1", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 1, max: 5000 }), (fewer, panLoad) => {
        // W/n − p = p − W/(n + 1) at W = 2p n(n + 1)/(2n + 1).
        const weight = (2 * panLoad * fewer * (fewer + 1)) / (2 * fewer + 1);
        expect(chargeCount.calculate(weight, panLoad)).toBe(fewer + 1);
        expect(chargeCount.calculate(weight * (1 - 1e-6), panLoad)).toBe(fewer);
      }),
    );
  });

  test("ten thousand charges are the most, by panLoad and by maxLoad", () => {
    expect(chargeCount.calculate(10_000, 1)).toBe(10_000);
    expect(() => chargeCount.calculate(10_001, 1)).toThrow("panLoad must be large enough to make 10000 charges");
    expect(chargeCount.calculate(10_000, 1, 1)).toBe(10_000);
    expect(() => chargeCount.calculate(10_000.4, 1, 1)).toThrow("maxLoad must be large enough to make 10000 charges");
  });

  test("limits that are equal but for the noise of doubles are not refused", () => {
    expect(chargeCount.calculate(0.9, 0.1 + 0.2, 0.3, 0.1)).toBe(3);
    expect(chargeCount.calculate(0.9, 0.3, 0.1 + 0.2)).toBe(3);
  });
});

describe("CHARGEPLAN", () => {
  const moisture = fc.double({ min: 0.3, max: 0.95, noNaN: true });
  const targets = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 8 });

  /** Falling moistures below the start, with the dry matter that each reading has to hold. */
  const fall = (start: number, parts: readonly number[]): number[] => {
    let now = start;
    return parts.map((part) => {
      now *= part;
      return now;
    });
  };

  test("every reading of every charge holds the dry matter of its load", () => {
    fc.assert(
      fc.property(lot, moisture, targets, fc.boolean(), (drawn, wet, parts, onScale) => {
        const { weight, panLoad, maxLoad, readability } = drawn;
        const moistures = fall(wet, parts);
        const kinds = moistures.map(() => "moisture" as const);
        const plan = chargePlan.calculate(
          weight,
          wet,
          panLoad,
          moistures,
          kinds,
          maxLoad,
          onScale ? readability : undefined,
        );
        for (const row of plan) {
          const [, load, ...readings] = row as number[];
          const dry = (load as number) * (1 - wet);
          expect(readings).toHaveLength(moistures.length);
          readings.forEach((reading, step) => {
            expectEqual(reading * (1 - (moistures[step] as number)), dry);
          });
        }
      }),
    );
  });

  test("a loss of water takes that share of the water and no dry matter", () => {
    fc.assert(
      fc.property(lot, moisture, targets, ({ weight, panLoad, readability }, wet, losses) => {
        const kinds = losses.map(() => "water" as const);
        const plan = chargePlan.calculate(weight, wet, panLoad, losses, kinds, undefined, readability);
        for (const [, load, ...readings] of plan as number[][]) {
          const dry = (load as number) * (1 - wet);
          let water = (load as number) * wet;
          readings.forEach((reading, step) => {
            water *= 1 - (losses[step] as number);
            expectEqual(reading, dry + water);
          });
        }
      }),
    );
  });

  test("the total row is the sum of the charges", () => {
    fc.assert(
      fc.property(lot, moisture, targets, (drawn, wet, parts) => {
        const { weight, panLoad, maxLoad, readability } = drawn;
        const moistures = fall(wet, parts);
        const kinds = moistures.map(() => "moisture" as const);
        const plan = chargePlan.calculate(weight, wet, panLoad, moistures, kinds, maxLoad, readability);
        const total = plan.at(-1) ?? [];
        expect(String(total[0])).toBe("total");
        for (let column = 1; column < total.length; column += 1) {
          const added = sum(plan.slice(0, -1).map((row) => row[column] as number));
          expectEqual(added, total[column] as number);
        }
      }),
    );
  });

  test("its loads are those of CHARGESPLIT, numbered from 1", () => {
    fc.assert(
      fc.property(lot, ({ weight, panLoad, maxLoad, readability }) => {
        const rows = chargePlan.calculate(weight, 0.7, panLoad, [0.5], ["moisture"], maxLoad, readability).slice(0, -1);
        expect(rows.map((row) => row[1])).toEqual(chargeSplit.calculate(weight, panLoad, maxLoad, readability));
        expect(rows.map((row) => row[0])).toEqual(rows.map((_, index) => index + 1));
      }),
    );
  });
});

describe("SPLITWEIGHT", () => {
  const portions = fc
    .array(fc.oneof(fc.integer({ min: 0, max: 1000 }), fc.double({ min: 0, max: 1e3, noNaN: true })), {
      minLength: 1,
      maxLength: 40,
    })
    .filter((list) => list.some((portion) => portion > 0));

  test("parts add up to the weight, to the last step", () => {
    fc.assert(
      fc.property(lot, portions, ({ weight, readability, steps }, list) => {
        const parts = splitWeight.calculate(weight, list, readability);
        expect(parts).toHaveLength(list.length);
        expect(sum(parts.map((part) => stepsOf(part, readability)))).toBe(steps);
      }),
    );
  });

  test("no part is a whole step away from its exact share", () => {
    fc.assert(
      fc.property(lot, portions, ({ weight, readability, steps }, list) => {
        const parts = splitWeight.calculate(weight, list, readability);
        const total = sum(list);
        parts.forEach((part, place) => {
          const share = (steps * (list[place] as number)) / total;
          expect(Math.abs(stepsOf(part, readability) - share)).toBeLessThan(1 + 1e-6);
        });
      }),
    );
  });

  test("equal portions differ by one step at most, the earlier ones first", () => {
    fc.assert(
      fc.property(lot, fc.integer({ min: 1, max: 40 }), ({ weight, readability }, count) => {
        const parts = splitWeight.calculate(weight, new Array<number>(count).fill(1 / 3), readability);
        const steps = parts.map((part) => stepsOf(part, readability));
        expect((steps[0] as number) - (steps.at(-1) as number)).toBeLessThanOrEqual(1);
        expect(steps).toEqual([...steps].sort((one, other) => other - one));
      }),
    );
  });

  test("only the proportion of the portions counts, up to the largest doubles", () => {
    const shares = [50, 30, 20];
    for (const factor of [1e-300, 0.1, 3, 1e300]) {
      const scaled = shares.map((share) => share * factor);
      expect(splitWeight.calculate(7, scaled, 1)).toEqual([4, 2, 1]);
    }
    expect(splitWeight.calculate(3, [Number.MAX_VALUE, Number.MAX_VALUE], 1)).toEqual([2, 1]);
  });

  test("portions that are all 0 are refused by name", () => {
    expect(() => splitWeight.calculate(7, [0, 0], 1)).toThrow(DomainError);
    expect(() => splitWeight.calculate(7, [0, 0], 1)).toThrow("portions must hold");
  });
});

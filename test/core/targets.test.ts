import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bind } from "../../src/cells/bind";
import { CellError } from "../../src/cells/values";
import { dryMatter } from "../../src/core/moisture/dry-matter";
import { moistureNow } from "../../src/core/moisture/moisture-now";
import type { TargetKind } from "../../src/core/targets/drying-path";
import { dryingSteps } from "../../src/core/targets/drying-steps";
import { firingMoisture } from "../../src/core/targets/firing-moisture";
import { firingTarget } from "../../src/core/targets/firing-target";
import { lossMeanings } from "../../src/core/targets/loss-meanings";
import type { LossOf } from "../../src/core/targets/loss-of";
import { targetWeight } from "../../src/core/targets/target-weight";
import { waterToRemove } from "../../src/core/targets/water-to-remove";
import { expectEqual } from "./compare";
import { moistures, shares, weights } from "./generators";

const lossesOf = fc.constantFrom<LossOf>("water", "weight", "points");

describe("a loss", () => {
  test("leaves the dry matter, whatever it is meant of", () => {
    fc.assert(
      fc.property(weights, moistures, shares, lossesOf, (weight, moisture, share, of) => {
        const loss = of === "water" ? share : share * moisture;
        const reading = firingTarget.calculate(weight, moisture, loss, of);
        const after = firingMoisture.calculate(moisture, loss, of);
        expectEqual(dryMatter.calculate(reading, after), dryMatter.calculate(weight, moisture));
      }),
    );
  });

  test("is seen again by weighing", () => {
    fc.assert(
      fc.property(weights, moistures, shares, lossesOf, (weight, moisture, share, of) => {
        const loss = of === "water" ? share : share * moisture;
        const reading = firingTarget.calculate(weight, moisture, loss, of);
        const weighed = moistureNow.calculate(weight, moisture, reading, 0);
        expectEqual(weighed, firingMoisture.calculate(moisture, loss, of), 1e-12, 1e-13);
      }),
    );
  });

  test("of the water leaves at least as much as one of the weight, and that as much as one in points", () => {
    fc.assert(
      fc.property(weights, moistures, shares, (weight, moisture, share) => {
        const loss = share * moisture;
        const [water, ofWeight, points] = (["water", "weight", "points"] as const).map((of) =>
          firingTarget.calculate(weight, moisture, loss, of),
        ) as [number, number, number];
        const rounding = weight * 1e-13;
        expect(water + rounding).toBeGreaterThanOrEqual(ofWeight);
        expect(ofWeight + rounding).toBeGreaterThanOrEqual(points);
      }),
    );
  });

  test("can take all of the moisture, also when its last digit is above it, and no more", () => {
    for (const of of ["weight", "points"] as const) {
      expectEqual(firingTarget.calculate(400, 0.25, 0.25 + 5e-10, of), 300);
      expect(firingMoisture.calculate(0.25, 0.25 + 5e-10, of)).toBe(0);
      const refusal = `loss must be at most 0.25, the moisture of the leaf, as a loss of ${of}; got 0.2500001`;
      expect(() => firingTarget.calculate(400, 0.25, 0.2500001, of)).toThrow(refusal);
      expect(() => firingMoisture.calculate(0.25, 0.2500001, of)).toThrow(refusal);
    }
    expectEqual(firingTarget.calculate(400, 0.25, 1, "water"), 300);
    expect(firingMoisture.calculate(0.25, 1, "water")).toBe(0);
  });
});

test("an impossible meaning holds its refusal in each of its cells and leaves the possible one alone", () => {
  const [water, weight, points] = bind(lossMeanings)(500, 0.2, 0.3, false);
  expect(water?.every((value) => !(value instanceof CellError))).toBe(true);
  for (const row of [weight, points]) {
    expect(row).toHaveLength(5);
    for (const value of row?.slice(1) ?? []) {
      expect((value as CellError).code).toBe("#VALUE!");
      expect((value as CellError).message).toBe(
        `loss must be at most 0.2, the moisture of the leaf, as a loss of ${row?.[0]}; got 0.3`,
      );
    }
  }
});

test("leaf that is all but water keeps a dry basis in each meaning", () => {
  // M = 1 − 2⁻⁵³; 6.417 % of the water off leaves the nearest double to 1: X = M (1 − l) / (1 − M).
  const rows = bind(lossMeanings)(0.05, 1 - 2 ** -53, 0.06417, false);
  expectEqual(rows[0]?.[4] as number, (1 - 0.06417) * 2 ** 53, 1e-9);
});

test("and on its way down, step by step", () => {
  const rows = bind(dryingSteps)(0.05, 1 - 2 ** -53, 0.28309, "weight", null, false);
  expectEqual(rows[1]?.[3] as number, (1 - 0.28309) * 2 ** 53, 1e-9);
});

describe("water to remove", () => {
  test("and the target weight make the weight", () => {
    fc.assert(
      fc.property(weights, moistures, shares, (weight, moisture, share) => {
        const target = share * moisture;
        const sum =
          waterToRemove.calculate(weight, moisture, target) + targetWeight.calculate(weight, moisture, target);
        expectEqual(sum, weight);
      }),
    );
  });

  test("is nothing for a target that is wetter by a rounding, and refused beyond that", () => {
    expect(waterToRemove.calculate(400, 0.3, 0.3 + 5e-10)).toBe(0);
    expect(() => waterToRemove.calculate(400, 0.3, 0.3001)).toThrow(
      "targetMoisture must be at most 0.3, the moisture of the leaf; got 0.3001",
    );
  });
});

describe("drying steps", () => {
  const kinds = fc.constantFrom<TargetKind>("moisture", "water", "weight", "points");
  const plans = fc.array(fc.tuple(kinds, shares), { minLength: 1, maxLength: 12 });

  interface Grams {
    water: number;
    target: number;
    kind: TargetKind;
  }

  /** Targets that the leaf can follow, and the grams of water that each of them leaves, by another way of reckoning. */
  function reckonedInGrams(
    weight: number,
    moisture: number,
    plan: readonly (readonly [TargetKind, number])[],
  ): Grams[] {
    const dry = weight * (1 - moisture);
    let water = weight * moisture;
    return plan.map(([kind, share]) => {
      const moistureBefore = water / (water + dry);
      const target = kind === "water" ? share : share * moistureBefore;
      if (kind === "water") water -= target * water;
      else if (kind === "weight") water = Math.max(0, water - target * (water + dry));
      else {
        const after = kind === "moisture" ? target : moistureBefore - target;
        water = (dry * after) / (1 - after);
      }
      return { water, target, kind };
    });
  }

  const numbersOf = (weight: number, moisture: number, steps: readonly Grams[]): number[][] =>
    dryingSteps
      .calculate(
        weight,
        moisture,
        steps.map(({ target }) => target),
        steps.map(({ kind }) => kind),
      )
      .map((row) => row.slice(1) as number[]);

  test("conserve the dry matter through any plan", () => {
    fc.assert(
      fc.property(weights, moistures, plans, (weight, moisture, plan) => {
        const dry = dryMatter.calculate(weight, moisture);
        const rows = numbersOf(weight, moisture, reckonedInGrams(weight, moisture, plan));
        expect(rows).toHaveLength(plan.length + 1);
        for (const [reading, rowMoisture] of rows as [number, number][]) {
          expectEqual(dryMatter.calculate(reading, rowMoisture), dry);
        }
      }),
    );
  });

  test("read what reckoning in grams of water and dry matter gives", () => {
    fc.assert(
      fc.property(weights, moistures, plans, (weight, moisture, plan) => {
        const steps = reckonedInGrams(weight, moisture, plan);
        const [, ...rows] = numbersOf(weight, moisture, steps);
        rows.forEach(([reading], index) => {
          expectEqual(reading as number, (steps[index] as Grams).water + weight * (1 - moisture));
        });
      }),
    );
  });

  test("take off the water step by step: never less than none, and together what has gone", () => {
    fc.assert(
      fc.property(weights, moistures, plans, (weight, moisture, plan) => {
        let soFar = 0;
        for (const row of numbersOf(weight, moisture, reckonedInGrams(weight, moisture, plan))) {
          const [reading, , , thisStep, together, share] = row as [number, number, number, number, number, number];
          soFar += thisStep;
          expect(thisStep).toBeGreaterThanOrEqual(0);
          expectEqual(together, soFar, 1e-12, weight * 1e-13);
          expectEqual(reading + together, weight);
          expectEqual(share * weight, reading);
        }
      }),
    );
  });

  test("read the same through a wrap, to the last digit", () => {
    fc.assert(
      fc.property(
        weights,
        moistures,
        fc.constantFrom<TargetKind>("water", "weight", "points"),
        (weight, moisture, kind) => {
          const [, wrap, held] = dryingSteps.calculate(weight, moisture, [0, moisture], [kind, "moisture"]);
          expect(wrap?.[1]).toBe(weight);
          expect(held?.[1]).toBe(weight);
          expect(held?.[4]).toBe(0);
        },
      ),
    );
  });

  test("of one loss are the firing target", () => {
    fc.assert(
      fc.property(weights, moistures, shares, lossesOf, (weight, moisture, share, of) => {
        const loss = of === "water" ? share : share * moisture;
        const [, row] = dryingSteps.calculate(weight, moisture, [loss], [of]);
        expectEqual(row?.[1] as number, firingTarget.calculate(weight, moisture, loss, of));
      }),
    );
  });

  test("refuse a rise with its step and both moistures, and allow one of a rounding", () => {
    expect(() => dryingSteps.calculate(500, 0.7, [0.71], ["moisture"])).toThrow(
      "targets must not rise; step 1 goes from 0.7 to 0.71, begin a new table for leaf that was wetted",
    );
    expect(() => dryingSteps.calculate(500, 0.75, [0.2, 0.72], ["weight", "moisture"])).toThrow(
      "targets must not rise; step 2 goes from 0.6875 to 0.72, begin a new table for leaf that was wetted",
    );
    const [, held] = dryingSteps.calculate(500, 0.7, [0.7 + 5e-10], ["moisture"]);
    expect(held?.slice(1, 3)).toEqual([500, 0.7]);
  });

  test("are called by their names, and by their number where they have none", () => {
    const named = dryingSteps.calculate(
      500,
      0.7,
      [0.6, 0.5, 0.4],
      ["moisture", "moisture", "moisture"],
      [null, "second pan", null],
    );
    expect(named.map(([name]) => String(name))).toEqual(["start", "step 1", "second pan", "step 3"]);
  });

  test("take kinds and moistures in Chinese", () => {
    const call = bind(dryingSteps);
    expect(call(500, 0.6, [[0.2], [0.3]], [["水"], ["含水率"]], null, false)).toEqual(
      call(500, 0.6, [[0.2], [0.3]], [["water"], ["moisture"]], null, false),
    );
  });
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bind } from "../../src/cells/bind";
import { CellError, type Grid } from "../../src/cells/values";
import { balanceFit } from "../../src/core/balance/balance-fit";
import { stageBalance } from "../../src/core/balance/stage-balance";
import { stageFit, type UncertainStage } from "../../src/core/balance/stage-fit";

const balanceCall = bind(stageBalance);
const fitCall = bind(balanceFit);
const column = (values: readonly (number | string | null)[]) => values.map((value) => [value]);

function refusal(grid: Grid): string {
  const [[error]] = grid as [[CellError]];
  expect(error).toBeInstanceOf(CellError);
  return `${error.code} ${error.message}`;
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Lots that lose water from row to row, read with errors of about the size that is stated. */
const lotsWith = (mostRemoved: number) =>
  fc
    .array(
      fc.record({
        moisture: between(0.15, 0.85),
        weightError: between(0.05, 1),
        moistureError: between(0.001, 0.02),
        dryLoss: between(0, 0.03),
        removed: between(0, mostRemoved),
        removedMoisture: fc.option(between(0, 0.8)),
        misread: between(-1, 1),
      }),
      { minLength: 2, maxLength: 9 },
    )
    .map((rows): UncertainStage[] => {
      let dry = 250;
      return rows.map(({ misread, ...row }, place) => {
        const removed = place === 0 ? 0 : row.removed;
        dry *= place === 0 ? 1 : 1 - row.dryLoss;
        const weight =
          row.removedMoisture === null
            ? dry / (1 - row.moisture) - removed
            : (dry - removed * (1 - row.removedMoisture)) / (1 - row.moisture);
        dry = weight * (1 - row.moisture);
        return { ...row, name: `row ${place + 1}`, removed, weight: weight + misread * row.weightError };
      });
    });

const lots = lotsWith(20);

/** What is missing in each balance of fitted rows, as a share of the dry matter before it. */
function gaps(stages: readonly UncertainStage[]): number[] {
  const { stages: fitted } = stageFit(stages);
  return stages.slice(1).map(({ dryLoss, removed, removedMoisture }, place) => {
    const [before, after] = fitted.slice(place, place + 2) as [(typeof fitted)[0], (typeof fitted)[0]];
    const dryBefore = before.weight * (1 - before.moisture);
    const dryAfter = after.weight * (1 - after.moisture);
    const dryRemoved = removed * (1 - (removedMoisture ?? after.moisture));
    return ((1 - dryLoss) * dryBefore - dryAfter - dryRemoved) / dryBefore;
  });
}

describe("a fitted lot", () => {
  test("balances from row to row", () => {
    fc.assert(
      fc.property(lots, (lot) => {
        for (const gap of gaps(lot)) expect(Math.abs(gap)).toBeLessThan(1e-9);
      }),
    );
  });

  test("balances through rows without a moisture", () => {
    fc.assert(
      fc.property(lots, fc.nat(), (lot, place) => {
        const blank = place % lot.length;
        const stages = lot.map((stage, row) => (row === blank ? { ...stage, moisture: null } : stage));
        for (const gap of gaps(stages)) expect(Math.abs(gap)).toBeLessThan(1e-9);
        const { weight } = stageFit(stages).stages[blank] as { weight: number };
        expect(weight).toBe(lot[blank]?.weight);
      }),
    );
  });

  // Closing the balances is not enough: along them, the sum of squares must have no slope. The directions are the
  // whole surface: each row's weight up with its moisture, at the same dry matter, and the dry matter of the lot up.
  test("is nearest to the readings among all that balance", () => {
    fc.assert(
      fc.property(lotsWith(0), (stages) => {
        const pulls = stageFit(stages).stages.map((fitted, row) => {
          const { weight, moisture, weightError, moistureError } = stages[row] as UncertainStage;
          return {
            fitted,
            weight: (fitted.weight - weight) / weightError ** 2,
            moisture: (fitted.moisture - (moisture as number)) / moistureError ** 2,
          };
        });
        const size = Math.max(...pulls.map(({ fitted, weight }) => Math.abs(weight * fitted.weight)), 1);
        for (const { fitted, weight, moisture } of pulls) {
          expect(Math.abs(weight * fitted.weight + moisture * (1 - fitted.moisture))).toBeLessThan(1e-6 * size);
        }
        const lotUp = pulls.reduce((sum, { fitted, weight }) => sum + weight * fitted.weight, 0);
        expect(Math.abs(lotUp)).toBeLessThan(1e-6 * size);
      }),
    );
  });

  test("has weights in the unit of the readings, and a test that knows no unit", () => {
    fc.assert(
      fc.property(lots, between(0.001, 1000), (lot, unit) => {
        const scaled = lot.map((stage) => ({
          ...stage,
          weight: stage.weight * unit,
          weightError: stage.weightError * unit,
          removed: stage.removed * unit,
        }));
        const [plain, inUnit] = [stageFit(lot), stageFit(scaled)];
        expect(Math.abs(inUnit.gamma - plain.gamma)).toBeLessThan(1e-7 * (1 + plain.gamma));
        inUnit.stages.forEach((stage, row) => {
          const { weight, moisture } = plain.stages[row] as { weight: number; moisture: number };
          expect(Math.abs(stage.weight / (weight * unit) - 1)).toBeLessThan(1e-9);
          expect(Math.abs(stage.moisture - moisture)).toBeLessThan(1e-9);
        });
      }),
    );
  });

  test("does not move when the readings balance already", () => {
    const lot = [900, 450, 300].map((weight, row) => ({
      name: `row ${row}`,
      weight,
      moisture: 1 - 225 / weight,
      removed: 0,
      removedMoisture: null,
      weightError: 1,
      moistureError: 0.01,
      dryLoss: 0,
    }));
    const { stages, gamma, degreesOfFreedom } = stageFit(lot);
    stages.forEach(({ weight }, row) => {
      expect(weight).toBeCloseTo(lot[row]?.weight as number, 9);
    });
    expect(gamma).toBeLessThan(1e-20);
    expect(degreesOfFreedom).toBe(2);
  });
});

describe("BALANCEFIT", () => {
  test("carries leaf taken out and dry matter lost through rows without a moisture", () => {
    // All is exact but the last weight, so the balance alone decides it. 1000 g at 80 % hold 200 g; 10 % lost, 180 g;
    // 100 g of 800 g taken out, 157.5 g; 20 % lost, 126 g, which are 140 g at 10 %.
    const [, middle, last] = fitCall(
      column(["fresh", "wilted", "finished"]),
      column([1000, 700, 141]),
      column([0.8, null, 0.1]),
      column([0, 0, 1]),
      0,
      column([null, 100, null]),
      null,
      column([0, 0.1, 0.2]),
      null,
      false,
    ) as [unknown[], number[], number[]];
    expect(middle[4]).toBeCloseTo(1 - 157.5 / 700, 12);
    expect(last[2]).toBeCloseTo(140, 9);
  });

  test("and what was taken out at a moisture of its own", () => {
    // 200 g, less 100 g at 50 %: 150 g. 10 % lost, 135 g; 50 g of 500 g taken out, 121.5 g; 20 % lost, 97.2 g, which
    // are 108 g at 10 %.
    const [, second, third, last] = fitCall(
      column(["fresh", "wilted", "rolled", "finished"]),
      column([1000, 700, 450, 110]),
      column([0.8, null, null, 0.1]),
      column([0, 0, 0, 1]),
      0,
      column([null, 100, 50, null]),
      column([null, 0.5, null, null]),
      column([0, 0, 0.1, 0.2]),
      null,
      false,
    ) as [unknown[], number[], number[], number[]];
    expect(second[4]).toBeCloseTo(1 - 150 / 700, 12);
    expect(third[4]).toBeCloseTo(1 - 121.5 / 450, 12);
    expect(last[2]).toBeCloseTo(108, 9);
  });

  test("refuses more rows than one lot has, before it works on them", () => {
    const rows = (cell: (row: number) => unknown) => Array.from({ length: 501 }, (_, row) => [cell(row)]);
    const grid = fitCall(
      rows((row) => `stage ${row}`),
      rows(() => 100),
      rows((row) => 0.5 + (row % 2) / 100),
      1,
      0.01,
    );
    expect(refusal(grid)).toBe("#VALUE! weights must be 500 at most, those of one lot; got 501");
  });

  test("takes an error too small to calculate with for none", () => {
    const speck = fitCall(column(["a", "b"]), column([100, 50]), column([0.75, 0.5]), 1e-154, 0.01);
    expect(speck).toEqual(fitCall(column(["a", "b"]), column([100, 50]), column([0.75, 0.5]), 0, 0.01));
  });

  const stages = column(["fresh", "aired", "fired", "dried", "finished"]);
  const honest = [900, 750, 500, 300, 236.8421052631579];
  const moistures = column([0.75, 0.7, 0.55, 0.25, 0.05]);
  const verdictOf = (grid: Grid) => grid.at(-1)?.[0];

  test.each([0, 1, 2, 3, 4])("names the row that was misread: row %d", (row) => {
    const weights = honest.map((weight, place) => (place === row ? weight * 1.2 : weight));
    const grid = fitCall(stages, column(weights), moistures, 0.5, 0.01);
    const name = stages[row]?.[0];
    const right = Number((honest[row] as number).toPrecision(10));
    expect(verdictOf(grid)).toMatch(new RegExp(`^does not balance: suspect "${name}"; weight ${right} would fit`));
  });

  test("gives the moisture that would fit the misread weight", () => {
    const weights = honest.map((weight, place) => (place === 2 ? 600 : weight));
    expect(verdictOf(fitCall(stages, column(weights), moistures, 0.5, 0.01))).toBe(
      'does not balance: suspect "fired"; weight 500 would fit if its moisture is right, moisture 0.625 if its weight is right',
    );
  });

  test("takes leaf out at the moisture that each cure assumes", () => {
    const weights = [900, 750, 500, 300, 236.8421052631579].map((weight, place) => (place === 2 ? 600 : weight));
    const removed = column([0, 0, 50, 0, 0]);
    const lighter = weights.map((weight, place) => (place < 2 ? weight * 1.1 : weight));
    // 247.5 g dry before; 225 g dry after: 500 g and the 50 g taken out hold 45 % dry matter.
    const verdict = verdictOf(fitCall(stages, column(lighter), moistures, 0.5, 0.01, removed));
    expect(verdict).toMatch(/suspect "fired"; weight (4\d\d|5\d\d)/);
    const [, weight, moisture] = /weight ([\d.]+) .* moisture ([\d.]+)/.exec(String(verdict)) ?? [];
    expect(Number(weight)).toBeCloseTo(500, 6);
    expect(Number(moisture)).toBeGreaterThan(0.55);
  });

  test("leaves out a cure that no moisture can bring about", () => {
    const weights = honest.map((weight, place) => (place === 4 ? 223 : weight));
    expect(verdictOf(fitCall(stages, column(weights), moistures, 0.5, 0.01))).toBe(
      'does not balance: suspect "finished"; weight 236.8421053 would fit if its moisture is right',
    );
  });

  test("cannot tell which of two rows is wrong", () => {
    const grid = fitCall(column(["fresh", "finished"]), column([600, 300]), column([0.75, 0.05]), 0.5, 0.01);
    expect(verdictOf(grid)).toBe('does not balance: cannot tell which of "fresh" and "finished" is wrong');
    expect(grid[1]?.[5]).toBeCloseTo(grid[2]?.[5] as number, 9);
  });

  test("suspects the row that may move when the other is exact", () => {
    const grid = fitCall(
      column(["fresh", "finished"]),
      column([600, 300]),
      column([0.75, 0.05]),
      column([0, 0.5]),
      column([0, 0.003]),
    );
    expect(verdictOf(grid)).toBe(
      'does not balance: suspect "finished"; weight 157.8947368 would fit if its moisture is right, moisture 0.5 if its weight is right',
    );
    expect(grid[1]?.slice(1)).toEqual([600, 600, 0.75, 0.75, ""]);
  });

  test("says so when no single row stands out", () => {
    const names = column(["a", "b", "c", "d", "e", "f"]);
    const grid = fitCall(names, column([100, 104, 100, 104, 100, 104]), column([0, 0, 0, 0, 0, 0]), 1, 0);
    // Mean 102: γ = 6 × 4, and every z is 2 / √(5/6), below the critical 2.63 of six rows.
    expect(grid.at(-1)?.slice(0, 3)).toEqual(["does not balance: no single row stands out", expect.closeTo(24, 9), 5]);
    expect(grid[1]?.[5]).toBeCloseTo(2 / Math.sqrt(5 / 6), 9);
  });

  test("speaks up later when asked to be surer", () => {
    const given = [column(["a", "b"]), column([100, 103]), column([0, 0]), 1, 0, null, null, null] as const;
    expect(verdictOf(fitCall(...given, 0.95))).toMatch(/^does not balance/);
    expect(verdictOf(fitCall(...given, 0.99))).toBe("agrees");
  });

  test("has nothing to balance with one row, and waits without any moisture", () => {
    expect(fitCall("fresh", 600, 0.75, 0.5, 0.01, null, null, null, null, false)).toEqual([
      ["fresh", 600, 600, 0.75, 0.75, ""],
      ["nothing to balance yet", 0, 0, 1, "", ""],
    ]);
    expect(fitCall("fresh", 600, null, 0.5, 0.01)).toEqual([[""]]);
    expect(fitCall(stages, column([null, null, null, null, null]), null, 0.5, 0.01)).toEqual([[""]]);
  });

  test("works in a lot in progress, with the later stages named and not weighed yet", () => {
    const grid = fitCall(
      stages,
      column([900, 750, null, null, null]),
      column([0.75, 0.7, null, null, null]),
      0.5,
      0.01,
    );
    expect(grid.map(([name]) => name)).toEqual(["stage", "fresh", "aired", "agrees"]);
  });

  test("waits for a weight whose moisture is there", () => {
    expect(fitCall(stages, column([900, null, 500, 300, 236.8]), moistures, 0.5, 0.01)).toEqual([[""]]);
  });

  test("works out moistures at the start, in the middle and at the end", () => {
    const grid = fitCall(stages, column(honest), column([null, 0.7, null, 0.25, null]), 0.5, 0.01);
    expect(grid.slice(1, 6).map((row) => row[4])).toEqual(
      [0.75, 0.7, 0.55, 0.25, 0.05].map((m) => expect.closeTo(m, 12)),
    );
    expect(grid.slice(1, 6).map((row) => row[3])).toEqual(["", 0.7, "", 0.25, ""]);
    expect(grid[1]?.[5]).toBe("");
  });

  test("works a moisture out through a loss and leaf taken out, forwards and backwards", () => {
    // 225 g dry, 10 % lost, 20 g at 60 % taken out: 194.5 g dry in 389 g.
    const forwards = fitCall(
      column(["a", "b"]),
      column([900, 389]),
      column([0.75, null]),
      0.5,
      0.01,
      column([0, 20]),
      column([null, 0.6]),
      0.1,
    );
    expect(forwards[2]?.[4]).toBeCloseTo(0.5, 12);
    const backwards = fitCall(
      column(["a", "b"]),
      column([900, 389]),
      column([null, 0.5]),
      0.5,
      0.01,
      column([0, 20]),
      column([null, 0.6]),
      column([0, 0.1]),
    );
    expect(backwards[1]?.[4]).toBeCloseTo(0.75, 12);
  });

  test("shows an error where a worked-out moisture cannot be, and keeps the other rows", () => {
    const grid = fitCall(column(["a", "b", "c"]), column([900, 200, 300]), column([0.75, null, 0.25]), 0.5, 0.01);
    expect(grid[2]?.[4]).toMatchObject({
      code: "#N/A",
      message: 'weights must be above the dry matter that the other rows leave for "b", 225; got 200',
    });
    expect(grid[1]?.[2]).toBeCloseTo(900, 9);
    expect(verdictOf(grid)).toBe("agrees");
  });

  test("takes exact rows that agree, and counts only balances that could be open", () => {
    const grid = fitCall(column(["a", "b", "c"]), column([900, 500, 300]), column([0.75, 0.55, 0.25]), 0, 0);
    expect(grid.at(-1)?.slice(0, 4)).toEqual(["agrees", 0, 0, 1]);
    const one = fitCall(
      column(["a", "b", "c"]),
      column([900, 502, 300]),
      column([0.75, 0.55, 0.25]),
      column([0, 1, 0]),
      column([0, 0.01, 0]),
    );
    expect(one.at(-1)?.slice(0, 3)).toEqual(["agrees", expect.any(Number), 1]);
    expect(one[1]?.[5]).toBe("");
  });

  test("has no answer where exact rows conflict, side by side or apart", () => {
    const call = (errors: number[]) =>
      fitCall(
        column(["a", "b", "c"]),
        column([900, 500, 310]),
        column([0.75, 0.55, 0.25]),
        column(errors),
        column(errors),
      );
    expect(refusal(call([0, 0.01, 0]))).toBe(
      '#N/A weights must agree where they are exact; "c" and an exact row before it do not balance',
    );
    expect(call([0, 0, 0.01]).at(-1)?.[1]).toBeGreaterThan(0);
    expect(refusal(call([0.01, 0, 0]))).toMatch(/^#N\/A weights must agree where they are exact/);
  });

  describe("where no fit settles", () => {
    const four = (weights: number[], names = ["fresh", "withered", "fired", "finished"]) =>
      fitCall(
        column(names),
        column(weights),
        column([0.765, 0.725, 0.575, 0.045]),
        column([0.5, 0.5, 0.5, 0.2]),
        column([0.01, 0.01, 0.015, 0.003]),
      );
    const weights = [900, 780, 505, 218];

    test.each([
      ["kilograms among grams", 0.001],
      ["a slipped decimal", 0.1],
    ])("names the row that does not belong: %s", (_, factor) => {
      for (const row of [0, 1, 2]) {
        const message = refusal(four(weights.map((weight, place) => (place === row ? weight * factor : weight))));
        const name = ["fresh", "withered", "fired"][row];
        expect(message).toMatch(
          new RegExp(
            `^#N/A weights must come near a balance; "${name}" at [\\d.]+ does not belong, [\\d.]+ would fit \\(are all in the same unit\\?\\)$`,
          ),
        );
        const fitting = Number(/([\d.]+) would fit/.exec(message)?.[1]);
        expect(Math.abs(fitting / (weights[row] as number) - 1)).toBeLessThan(0.04);
      }
    });

    test("does not blame a row two places away", () => {
      expect(refusal(four([900, 780, 505, 2180]))).toMatch(/; "finished" at 2180 does not belong, 223\.8\d+ would fit/);
    });

    test("takes leaf out at the moisture that its row says, not at that of a wrong weight", () => {
      const message = refusal(
        fitCall(
          column(["fresh", "withered", "fired", "finished"]),
          column([900, 780, 0.482, 207]),
          column([0.765, 0.725, 0.575, 0.045]),
          column([0.5, 0.5, 0.5, 0.2]),
          column([0.01, 0.01, 0.015, 0.003]),
          column([null, null, 20, null]),
        ),
      );
      expect(message).toMatch(/; "fired" at 0\.482 does not belong/);
      // 207 g at 4.5 % hold 197.7 g dry, which are 465 g at 57.5 %; the rows before, less 20 g, leave up to 483 g.
      const fitting = Number(/([\d.]+) would fit/.exec(message)?.[1]);
      expect(fitting).toBeGreaterThan(465);
      expect(fitting).toBeLessThan(483);
    });

    test("names no row where two are wrong, and asks about the unit all the same", () => {
      expect(refusal(four([900, 0.78, 0.505, 218]))).toBe(
        "#N/A weights must come near a balance; no fit was found in 50 rounds (are all in the same unit?)",
      );
    });

    test("looks for the row in lots as long as anyone weighs, and no longer", () => {
      const lot = (count: number) => {
        const rows = Array.from({ length: count }, (_, row) => row);
        const wet = rows.map((row) => 0.78 - (0.7 * row) / count);
        return refusal(
          fitCall(
            column(rows.map((row) => `stage ${row}`)),
            column(wet.map((moisture, row) => (200 / (1 - moisture)) * (row === 20 ? 0.001 : 1))),
            column(wet),
            0.5,
            0.01,
          ),
        );
      };
      expect(lot(50)).toMatch(/"stage 20" at [\d.]+ does not belong/);
      expect(lot(51)).not.toMatch(/does not belong/);
    });
  });

  test("has no answer where a moisture would be driven out of its bounds", () => {
    const call = fitCall(column(["a", "b"]), column([100, 130]), column([0.02, 0]), 0.01, column([0.02, 0]));
    expect(refusal(call)).toMatch(
      /^#N\/A moistures must stay from 0 up to 1 in the fit; the balance puts "a" at -0\.29/,
    );
  });

  test("has no answer where a weight would be driven below 0", () => {
    const call = fitCall(
      column(["a", "b"]),
      column([100, 1]),
      column([0, 0]),
      column([0, 500]),
      0,
      column([null, 200]),
    );
    expect(refusal(call)).toBe('#N/A weights must stay above 0 in the fit; the balance puts "b" at -100');
  });

  test("takes moistures at their lower bound and refuses those at the upper one", () => {
    expect(verdictOf(fitCall(column(["a", "b"]), column([100, 100]), column([0, 0]), 0.5, 0.01))).toBe("agrees");
    expect(refusal(fitCall(column(["a", "b"]), column([100, 100]), column([0.5, 1]), 0.5, 0.01))).toBe(
      "#VALUE! moistures must be from 0 up to, not including, 1 (76% or 0.76); got 1 in place 2 of the list",
    );
  });

  test("refuses what is no reading, naming the argument and the row", () => {
    const two = (
      weights: unknown,
      moistures: unknown,
      weightErrors: unknown,
      moistureErrors: unknown,
      ...rest: unknown[]
    ) => refusal(fitCall(column(["a", "b"]), weights, moistures, weightErrors, moistureErrors, ...rest));
    const weights = column([600, 400]);
    const wet = column([0.75, 0.5]);
    expect(two(column([600, "heavy"]), wet, 1, 0.01)).toBe(
      '#VALUE! weights must be a weight above 0; got the text "heavy" in place 2 of the list',
    );
    expect(two(column([600, -1]), wet, 1, 0.01)).toBe(
      "#VALUE! weights must be a weight above 0; got -1 in place 2 of the list",
    );
    expect(two(weights, wet, -1, 0.01)).toMatch(/^#VALUE! weightErrors must be .* got -1/);
    expect(two(weights, wet, 1, 0.5)).toMatch(/^#VALUE! moistureErrors must be from 0 to 0.2 .* got 0.5/);
    expect(two(weights, wet, column([1, null]), 0.01)).toMatch(/^#VALUE! weightErrors must be filled in every row/);
    expect(two(weights, wet, column([1, 1, 1]), 0.01)).toMatch(
      /^#VALUE! stages must have as many rows as weightErrors/,
    );
    expect(two(column([600, 400, 200]), wet, 1, 0.01)).toMatch(/^#VALUE! stages must have as many rows as weights/);
    expect(two(weights, wet, 1, 0.01, column([10, 0]))).toMatch(/^#VALUE! removed must be blank or 0 in the first row/);
    expect(two(weights, wet, 1, 0.01, null, null, 1)).toMatch(
      /^#VALUE! dryLosses must be from 0 up to, not including, 1/,
    );
    expect(two(weights, wet, 1, 0.01, null, null, null, 1)).toMatch(/^#VALUE! confidence must be above 0 and below 1/);
    expect(two(new CellError("#REF!"), wet, 1, 0.01)).toMatch(/^#REF!/);
  });

  test("fits twenty stages in well under five milliseconds", () => {
    const rows = Array.from({ length: 20 }, (_, row) => row);
    const wet = rows.map((row) => 0.78 - 0.037 * row);
    const given = [
      column(rows.map((row) => `stage ${row}`)),
      column(wet.map((moisture, row) => 200 / (1 - moisture) + (row % 3) - 1)),
      column(wet),
      0.5,
      0.01,
    ] as const;
    const times = rows.concat(rows).map(() => {
      const start = performance.now();
      fitCall(...given);
      return performance.now() - start;
    });
    // The fastest of them: what else the machine does at the time is no part of it.
    expect(Math.min(...times)).toBeLessThan(5);
  });
});

describe("STAGEBALANCE", () => {
  test("accounts for every gram, whatever is blank", () => {
    fc.assert(
      fc.property(lots, fc.array(fc.boolean(), { minLength: 9, maxLength: 9 }), (lot, blanks) => {
        const moistures = lot.map(({ moisture }, row) => (row > 0 && blanks[row] ? null : moisture));
        const table = stageBalance.calculate(
          lot.map(({ name }) => name),
          lot.map(({ weight }) => weight),
          moistures,
          lot.map(({ removed }) => removed),
          lot.map(({ removedMoisture }, row) => removedMoisture ?? (moistures[row] === null ? 0.5 : null)),
        ) as (number | string)[][];
        const last = moistures.findLastIndex((moisture) => moisture !== null);
        const [, , , , waterOff, , unaccounted] = table.at(-1) as number[];
        const removed = lot.slice(1, last + 1).reduce((sum, row) => sum + row.removed, 0);
        const accounted = (lot[last]?.weight as number) + (waterOff as number) + removed + (unaccounted as number);
        const start = lot[0]?.weight as number;
        expect(Math.abs(accounted - start)).toBeLessThan(1e-10 * start);
      }),
    );
  });

  test("has weights in the unit of the readings, and shares that know no unit", () => {
    const call = (unit: number) =>
      balanceCall(
        column(["fresh", "aired", "finished"]),
        column([600 * unit, 480 * unit, 150 * unit]),
        column([0.75, 0.7, 0.05]),
        column([null, 12 * unit, 0]),
        null,
        false,
      );
    const [grams, kilograms] = [call(1), call(0.001)];
    kilograms.forEach((row, place) => {
      const [, weight, , dry, water, removed, unaccounted, kept] = row;
      const inGrams = grams[place] as Grid[0];
      [weight, dry, water, removed, unaccounted].forEach((value, index) => {
        const expected = [1, 3, 4, 5, 6].map((column) => inGrams[column])[index];
        if (typeof value === "number") expect(value * 1000).toBeCloseTo(expected as number, 9);
        else expect(value).toBe(expected);
      });
      if (typeof kept === "number") expect(kept).toBeCloseTo(inGrams[7] as number, 12);
    });
  });

  test("notes dry matter that grows, and never rounding", () => {
    const noteOf = (weight: number) =>
      balanceCall(column(["a", "b"]), column([400, weight]), column([0.75, 0.5]))[2]?.[8];
    expect(noteOf(210)).toBe("dry matter grows by 5");
    expect(noteOf(200.0001)).toBe("dry matter grows by 0.00005");
    expect(noteOf(200 + 1e-8)).toBe("");
    expect(noteOf(190)).toBe("");
  });

  test("shows one row as it is, and waits without any moisture", () => {
    expect(balanceCall("fresh", 600, 0.75, null, null, false)).toEqual([
      ["fresh", 600, 0.75, 150, "", "", "", 1, "", ""],
      ["total", "", "", "", 0, 0, 0, 1, "", 0],
    ]);
    expect(balanceCall("fresh", 600, null)).toEqual([[""]]);
    expect(balanceCall(column(["fresh", "fired"]), column([null, null]), column([null, null]))).toEqual([[""]]);
  });

  test("begins at the first moisture, and passes over rows that are not weighed yet", () => {
    const grid = balanceCall(
      column(["plucked", "aired", "fired", "finished"]),
      column([600, 500, 250, null]),
      column([null, 0.6, 0.2, null]),
      null,
      null,
      false,
    );
    expect(grid.map((row) => row[0])).toEqual(["plucked", "aired", "fired", "total"]);
    expect(grid[0]?.slice(2)).toEqual([
      "",
      "",
      "",
      "",
      "",
      "",
      "no moisture: the balance starts at the first row with one",
      "",
    ]);
    expect(grid[2]).toEqual(["fired", 250, 0.2, 200, 250, 0, 0, 1, "", 0]);
  });

  test("shows leaf that took up water as a negative water off", () => {
    const grid = balanceCall(column(["dry", "rained on"]), column([400, 500]), column([0.5, 0.6]), null, null, false);
    expect(grid[1]?.[4]).toBeCloseTo(-100, 10);
  });

  test("refuses leaf taken out before the first moisture", () => {
    const call = balanceCall(
      column(["a", "b", "c"]),
      column([600, 500, 250]),
      column([null, 0.6, 0.2]),
      column([0, 5, 0]),
    );
    expect(refusal(call)).toBe('#VALUE! removed must be blank or 0 up to the first moisture; got 5 at "b"');
  });

  test("refuses what is no reading, naming the argument and the row", () => {
    const names = column(["a", "b"]);
    const wet = column([0.75, 0.5]);
    expect(refusal(balanceCall(names, column([600, "?"]), wet))).toBe(
      '#VALUE! weights must be a weight above 0; got the text "?" in place 2 of the list',
    );
    expect(refusal(balanceCall(names, column([600, 400]), column([0.75, 50])))).toMatch(/^#VALUE! moistures .* got 50/);
    expect(refusal(balanceCall(names, column([600, 400]), wet, column([0, -1])))).toMatch(/^#VALUE! removed must be /);
    expect(refusal(balanceCall(column(["a"]), column([600, 400]), wet))).toMatch(
      /^#VALUE! stages must have as many rows/,
    );
    expect(refusal(balanceCall(names, column([600, 400]), column([0.75, 0.5, 0.1])))).toMatch(
      /^#VALUE! moistures must have as many rows/,
    );
  });
});

test("leaf taken out in a row that is not weighed yet is waited for, and never dropped with its row", () => {
  const rows = [column(["a", "sift", "c"]), column([900, "", 480]), column([0.7, "", 0.5])];
  const removed = column([0, 25, 0]);
  expect(balanceCall(...rows, removed)).toEqual([[""]]);
  expect(fitCall(...rows, 1, 0.01, removed)).toEqual([[""]]);
  // The same row without any leaf taken out is no row.
  expect(balanceCall(...rows, column([0, 0, 0]))[2]?.[0]).toBe("c");
});

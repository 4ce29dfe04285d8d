/**
 * The recipe of FINISHEDCHECK for lowLoss and highLoss, the mean of the own losses as both, worked out a second time:
 * with other random numbers and with arithmetic that calls nothing of the project, except to hold its verdict against
 * the function's.
 */
import { expect, test } from "vitest";
import { finishedCheck } from "../../src/core/yields/finished-check";

const seed = 41;
const trials = 4000;

/** A linear congruential generator, 48 bits, constants of POSIX drand48. */
let state = (BigInt(seed) << 16n) + 0x330en;
function uniform(): number {
  state = (state * 0x5deece66dn + 0xbn) & 0xffffffffffffn;
  return Number(state) / 2 ** 48;
}
/** Normal by the polar method. */
function normal(): number {
  for (;;) {
    const [x, y] = [2 * uniform() - 1, 2 * uniform() - 1];
    const square = x * x + y * y;
    if (square > 0 && square < 1) return x * Math.sqrt((-2 * Math.log(square)) / square);
  }
}

const errors = { weight: 0.3, fresh: 0.01, finished: 0.003 };

interface Lot {
  fresh: number;
  freshMoisture: number;
  finished: number;
  finishedMoisture: number;
}

function lot(extra: number): Lot {
  const fresh = 600 + 900 * uniform();
  const dry = fresh * 0.24 * (1 - Math.max(0, 0.04 + 0.01 * normal())) * (1 - extra);
  return {
    fresh: fresh + errors.weight * normal(),
    freshMoisture: 0.76 + errors.fresh * normal(),
    finished: dry / 0.955 + errors.weight * normal(),
    finishedMoisture: 0.045 + errors.finished * normal(),
  };
}

const lossOf = (one: Lot): number =>
  1 - (one.finished * (1 - one.finishedMoisture)) / (one.fresh * (1 - one.freshMoisture));

/** The page's formulas for leaf of which nothing was taken out, written anew. */
function verdictOf({ fresh, freshMoisture, finished, finishedMoisture }: Lot, mean: number): string {
  const dry = fresh * (1 - freshMoisture);
  const noLoss = dry / (1 - finishedMoisture);
  const ofDry = ((1 - freshMoisture) * errors.weight) ** 2 + (fresh * errors.fresh) ** 2;
  const r = Math.sqrt(
    ofDry / dry ** 2 + (errors.finished / (1 - finishedMoisture)) ** 2 + (errors.weight / noLoss) ** 2,
  );
  if (finished > noLoss * (1 + 2 * r)) return "more dry matter out than came in";
  if (finished > noLoss * (1 - mean) * (1 + 2 * r)) return "less lost than expected";
  return finished < noLoss * (1 - mean) * (1 - 2 * r) ? "more lost than expected" : "agrees";
}

test("the mean of 20 own losses as both limits: one good lot of 16 is called wrong, 66 of 100 that lost 10 % more are found", () => {
  let wrong = 0;
  let found = 0;
  for (let trial = 0; trial < trials; trial += 1) {
    const losses = Array.from({ length: 20 }, () => lossOf(lot(0)));
    const mean = Math.max(0, losses.reduce((sum, loss) => sum + loss, 0) / 20);
    for (const extra of [0, 0.1]) {
      const today = lot(extra);
      const expected = verdictOf(today, mean);
      const { fresh, freshMoisture, finished, finishedMoisture } = today;
      expect(
        `${finishedCheck.calculate(
          fresh,
          freshMoisture,
          finished,
          finishedMoisture,
          0,
          undefined,
          mean,
          mean,
          errors.weight,
          errors.fresh,
          errors.finished,
        )}`,
      ).toBe(expected);
      if (extra === 0 && expected !== "agrees") wrong += 1;
      if (extra > 0 && expected === "more lost than expected") found += 1;
    }
  }
  // 4000 trials: three standard errors are 1.2 in 100 of 6.2, and 2.3 of 66.
  expect(Math.abs((100 * wrong) / trials - 6.2)).toBeLessThan(1.2);
  expect(Math.abs((100 * found) / trials - 66.5)).toBeLessThan(2.3);
});

test("and by hand: the band is two errors, so that a good lot is beyond it as often as a normal number is beyond 2", () => {
  // r² = (0.01 / 0.24)² + (0.003 / 0.955)² = 0.0017460, r = 0.041785 (the weights add nothing that shows). What is read
  // of a lot that lost 10 % more lies at 0.9 of the middle and scatters by 0.9 r; the limit lies at 1 − 2r = 0.91643:
  // (0.91643 − 0.9) / (0.9 × 0.041785) = 0.4369 standard deviations above it, Φ(0.4369) = 0.669. The true losses and the
  // mean of only 20 bring it down a little.
  const r = Math.hypot(0.01 / 0.24, 0.003 / 0.955);
  expect(r).toBeCloseTo(0.041_785, 6);
  expect((1 - 2 * r - 0.9) / (0.9 * r)).toBeCloseTo(0.4369, 3);
});

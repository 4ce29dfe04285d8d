import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dryRecovery } from "../../src/core/yields/dry-recovery";
import { finishedBand } from "../../src/core/yields/finished-band";
import { finishedCheck } from "../../src/core/yields/finished-check";
import { finishedWeight } from "../../src/core/yields/finished-weight";
import { freshNeeded } from "../../src/core/yields/fresh-needed";
import { leafCost } from "../../src/core/yields/leaf-cost";
import { leafRatio } from "../../src/core/yields/leaf-ratio";
import { outturn } from "../../src/core/yields/outturn";
import { expectEqual } from "./compare";
import { moistures, weights } from "./generators";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const finishedMoistures = between(0, 0.12);
const loss = between(0, 0.5);

describe("OUTTURN and LEAFRATIO", () => {
  test("multiplied they give 1", () => {
    fc.assert(
      fc.property(weights, between(0.01, 1), (fresh, share) => {
        const finished = fresh * share;
        expectEqual(outturn.calculate(fresh, finished) * leafRatio.calculate(fresh, finished), 1);
      }),
    );
  });

  test("more tea than leaf is refused by both, and as much tea as leaf by neither", () => {
    for (const { calculate } of [outturn, leafRatio]) {
      expect(calculate(500, 500)).toBe(1);
      expect(() => calculate(500, 500.1)).toThrow("finishedWeight must be at most 500");
    }
  });
});

describe("FINISHEDWEIGHT and FRESHNEEDED", () => {
  test("undo each other", () => {
    fc.assert(
      fc.property(weights, moistures, finishedMoistures, loss, (fresh, wet, dry, lost) => {
        const finished = finishedWeight.calculate(fresh, wet, dry, lost);
        expectEqual(freshNeeded.calculate(finished, wet, dry, lost), fresh);
      }),
    );
  });

  test("what DRYRECOVERY finds of the expected weight is what dryLoss leaves", () => {
    fc.assert(
      fc.property(weights, moistures, finishedMoistures, loss, (fresh, wet, dry, lost) => {
        const finished = finishedWeight.calculate(fresh, wet, dry, lost);
        expectEqual(dryRecovery.calculate(fresh, wet, finished, dry, 0), 1 - lost);
      }),
    );
  });
});

describe("LEAFCOST", () => {
  test("pays exactly for the lot", () => {
    fc.assert(
      fc.property(between(0, 1e4), weights, weights, between(0, 1e6), (price, fresh, finished, other) => {
        const cost = leafCost.calculate(price, fresh, finished, other);
        expect(Math.abs(cost * finished - (price * fresh + other))).toBeLessThanOrEqual(
          1e-9 * (1 + price * fresh + other),
        );
      }),
    );
  });
});

describe("FINISHEDBAND and FINISHEDCHECK", () => {
  const lot = fc
    .record({
      fresh: weights,
      wet: moistures,
      dry: finishedMoistures,
      removedShare: between(0, 0.4),
      removedMoisture: fc.option(between(0.5, 0.9), { nil: undefined }),
      lowLoss: fc.oneof(fc.constant(0), between(1e-4, 0.1)),
      moreLoss: between(0, 0.3),
      weightError: between(0, 1),
      wetError: between(0, 0.02),
      dryError: between(0, 0.01),
    })
    // The removed leaf must not hold more dry matter than the fresh leaf.
    .filter(({ wet, removedShare, removedMoisture = wet }) => removedShare * (1 - removedMoisture) < 0.9 * (1 - wet));

  const detailsOf = (drawn: Parameters<Parameters<typeof lot.map>[0]>[0], highLoss: number | undefined) =>
    [
      drawn.fresh * drawn.removedShare,
      drawn.removedMoisture,
      drawn.lowLoss,
      highLoss,
      drawn.weightError,
      drawn.wetError,
      drawn.dryError,
    ] as const;

  test("the band brackets the verdicts", () => {
    fc.assert(
      fc.property(lot, (drawn) => {
        const { fresh, wet, dry, lowLoss, moreLoss } = drawn;
        const details = detailsOf(drawn, lowLoss + moreLoss);
        const [low, , high] = finishedBand.calculate(fresh, wet, dry, ...details) as [number, number, number];
        const verdict = (finished: number) => String(finishedCheck.calculate(fresh, wet, finished, dry, ...details));
        const [justBelow, justAbove] = [1 - 1e-6, 1 + 1e-6];
        if (low > 0) {
          expect(verdict(low * justBelow)).toBe("more lost than expected");
          expect(verdict(low)).toBe("agrees");
        }
        expect(verdict((low + high) / 2)).toBe("agrees");
        expect(verdict(high)).toBe("agrees");
        expect(verdict(high * justAbove)).toBe(
          lowLoss > 0 ? "less lost than expected" : "more dry matter out than came in",
        );
        const limit = high / (1 - lowLoss);
        expect(verdict(limit * justAbove)).toBe("more dry matter out than came in");
      }),
    );
  });

  test("the middle of the band is FINISHEDWEIGHT without loss, of the leaf that was not removed", () => {
    fc.assert(
      fc.property(lot, (drawn) => {
        const { fresh, wet, dry, removedShare } = drawn;
        const [, atNoLoss] = finishedBand.calculate(
          fresh,
          wet,
          dry,
          ...detailsOf({ ...drawn, removedMoisture: undefined }, undefined),
        );
        expectEqual(atNoLoss as number, finishedWeight.calculate(fresh * (1 - removedShare), wet, dry, 0), 1e-11);
      }),
    );
  });

  test("without errors the ends are the two losses", () => {
    fc.assert(
      fc.property(weights, moistures, finishedMoistures, loss, between(0, 0.4), (fresh, wet, dry, least, more) => {
        const most = least + more;
        const band = finishedBand.calculate(fresh, wet, dry, 0, undefined, least, most, 0, 0, 0);
        expectEqual(band[0] as number, finishedWeight.calculate(fresh, wet, dry, most));
        expectEqual(band[2] as number, finishedWeight.calculate(fresh, wet, dry, least));
      }),
    );
  });

  test("a larger error never makes the band narrower", () => {
    fc.assert(
      fc.property(lot, fc.constantFrom("weightError", "wetError", "dryError"), (drawn, error) => {
        const bandOf = (one: typeof drawn) =>
          finishedBand.calculate(one.fresh, one.wet, one.dry, ...detailsOf(one, one.lowLoss + one.moreLoss));
        const [low, , high] = bandOf(drawn) as number[];
        const [wideLow, , wideHigh] = bandOf({ ...drawn, [error]: drawn[error as "wetError"] * 2 }) as number[];
        expect(wideLow).toBeLessThanOrEqual(low as number);
        expect(wideHigh).toBeGreaterThanOrEqual(high as number);
      }),
    );
  });

  test("without highLoss no loss is too much, and the low end is blank", () => {
    fc.assert(
      fc.property(lot, between(1e-6, 1), (drawn, part) => {
        const { fresh, wet, dry } = drawn;
        const details = detailsOf(drawn, undefined);
        const [low, atNoLoss] = finishedBand.calculate(fresh, wet, dry, ...details);
        expect(low).toBe("");
        const finished = (atNoLoss as number) * part * (1 - drawn.lowLoss);
        expect(String(finishedCheck.calculate(fresh, wet, finished, dry, ...details))).toBe("agrees");
      }),
    );
  });
});

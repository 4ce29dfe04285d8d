import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bind } from "../../src/cells/bind";
import { isInside } from "../../src/core/bounds";
import { blendMoisture } from "../../src/core/moisture/blend-moisture";
import { dryBasis } from "../../src/core/moisture/dry-basis";
import { dryMatter } from "../../src/core/moisture/dry-matter";
import { freshMoisture } from "../../src/core/moisture/fresh-moisture";
import { moistureNow } from "../../src/core/moisture/moisture-now";
import { ovenMean } from "../../src/core/moisture/oven-mean";
import { ovenMoisture } from "../../src/core/moisture/oven-moisture";
import { restateContent } from "../../src/core/moisture/restate-content";
import { water } from "../../src/core/moisture/water";
import { wetBasis } from "../../src/core/moisture/wet-basis";
import { moisture } from "../../src/core/quantities";
import { targetWeight } from "../../src/core/targets/target-weight";
import { expectEqual } from "./compare";
import { moistures, shares, weights } from "./generators";

/** Moistures near 0 are differences of numbers near 1: their rounding is absolute. */
const rounding = 1e-13;

const batches = fc.array(fc.tuple(weights, moistures), { minLength: 1, maxLength: 20 });

describe("wet and dry basis", () => {
  test("undo each other", () => {
    fc.assert(
      fc.property(moistures, fc.double({ min: 0, max: 19, noNaN: true }), (moisture, ratio) => {
        expectEqual(wetBasis.calculate(dryBasis.calculate(moisture)), moisture);
        expectEqual(dryBasis.calculate(wetBasis.calculate(ratio)), ratio);
      }),
    );
  });

  test("dry basis is the water over the dry matter of any weight", () => {
    fc.assert(
      fc.property(weights, moistures, (weight, moisture) => {
        const grams = water.calculate(weight, moisture) / dryMatter.calculate(weight, moisture);
        expectEqual(dryBasis.calculate(moisture), grams);
      }),
    );
  });
});

test("water and dry matter add up to the weight", () => {
  fc.assert(
    fc.property(weights, moistures, (weight, moisture) => {
      expectEqual(water.calculate(weight, moisture) + dryMatter.calculate(weight, moisture), weight);
    }),
  );
});

describe("moisture by weight", () => {
  test("stays a moisture where nearly all is water", () => {
    expect(moistureNow.calculate(1e-5, 0.999999999988, 7784, 0.69)).toBe(1 - 2 ** -53);
    expect(freshMoisture.calculate(7784, 1e-12, 0.5, 0)).toBe(1 - 2 ** -53);
    expect(isInside(moistureNow.calculate(1e-5, 0.999999999988, 7784, 0.69), moisture.bounds)).toBe(true);
  });

  test("at the target weight is the target moisture, also a wetter one", () => {
    fc.assert(
      fc.property(weights, moistures, moistures, (weight, moisture, wanted) => {
        const reading = targetWeight.calculate(weight, moisture, wanted);
        expectEqual(moistureNow.calculate(weight, moisture, reading, 0), wanted, 1e-12, rounding);
      }),
    );
  });

  test("gives back the reading as its target weight", () => {
    fc.assert(
      fc.property(weights, moistures, fc.double({ min: 1, max: 10, noNaN: true }), (weight, moisture, wetter) => {
        const reading = dryMatter.calculate(weight, moisture) * wetter;
        const now = moistureNow.calculate(weight, moisture, reading, 0);
        expectEqual(targetWeight.calculate(weight, moisture, now), reading);
      }),
    );
  });

  test("is that of leaf with less dry matter when some was lost", () => {
    fc.assert(
      fc.property(weights, moistures, fc.double({ min: 0, max: 0.9, noNaN: true }), (weight, moisture, loss) => {
        const kept = weight * (1 - loss);
        expectEqual(
          moistureNow.calculate(weight, moisture, weight, loss),
          moistureNow.calculate(kept, moisture, weight, 0),
          1e-12,
          rounding,
        );
      }),
    );
  });

  test("of a dried oven sample is 0, though the last digit of its weight is off", () => {
    fc.assert(
      fc.property(weights, moistures, (before, moisture) => {
        const after = dryMatter.calculate(before, moisture);
        const now = moistureNow.calculate(before, ovenMoisture.calculate(before, after, 0), after, 0);
        expect(now).toBeGreaterThanOrEqual(0);
        expectEqual(now, 0, 0, rounding);
      }),
    );
  });

  test("names the dry matter that is left when the scale reads less", () => {
    expect(() => moistureNow.calculate(426, 0.8, 80, 0)).toThrow(
      "weightNow must be at least 85.2, the dry matter; got 80",
    );
    expect(() => moistureNow.calculate(426, 0.8, 76, 0.1)).toThrow(
      "weightNow must be at least 76.68, the dry matter; got 76",
    );
    expect(moistureNow.calculate(426, 0.8, 80, 0.1)).toBeCloseTo(1 - 76.68 / 80, 12);
  });
});

describe("moisture of fresh leaf", () => {
  test("is the one from which the finished weight comes out", () => {
    const losses = fc.double({ min: 0, max: 0.9, noNaN: true });
    fc.assert(
      fc.property(weights, moistures, moistures, losses, (fresh, moisture, finishedMoisture, loss) => {
        const finished = (fresh * (1 - moisture) * (1 - loss)) / (1 - finishedMoisture);
        expectEqual(freshMoisture.calculate(fresh, finished, finishedMoisture, loss), moisture, 1e-12, rounding);
      }),
    );
  });

  test("never rises with the share of dry matter lost", () => {
    fc.assert(
      fc.property(weights, moistures, shares, (fresh, finishedMoisture, share) => {
        const finished = fresh * 0.2;
        const loss = share * 0.3;
        expect(freshMoisture.calculate(fresh, finished, finishedMoisture, loss)).toBeLessThanOrEqual(
          freshMoisture.calculate(fresh, finished, finishedMoisture, 0),
        );
      }),
    );
  });
});

describe("a blend", () => {
  test("holds the dry matter of its batches", () => {
    fc.assert(
      fc.property(batches, (parts) => {
        const partWeights = parts.map(([weight]) => weight);
        const blend = blendMoisture.calculate(
          partWeights,
          parts.map(([, moisture]) => moisture),
        );
        const whole = partWeights.reduce((sum, weight) => sum + weight, 0);
        const dry = parts.reduce((sum, [weight, moisture]) => sum + dryMatter.calculate(weight, moisture), 0);
        expectEqual(dryMatter.calculate(whole, blend), dry);
      }),
    );
  });

  test("is no drier than its driest batch and no wetter than its wettest", () => {
    fc.assert(
      fc.property(batches, (parts) => {
        const partMoistures = parts.map(([, moisture]) => moisture);
        const blend = blendMoisture.calculate(
          parts.map(([weight]) => weight),
          partMoistures,
        );
        expect(blend).toBeGreaterThanOrEqual(Math.min(...partMoistures) * (1 - 1e-12));
        expect(blend).toBeLessThanOrEqual(Math.max(...partMoistures) * (1 + 1e-12));
      }),
    );
  });
});

describe("the oven", () => {
  test("takes the mean of a column longer than a call takes arguments", () => {
    const moistures = Array.from({ length: 200_000 }, (_, row) => [row % 2 === 0 ? 0.05 : 0.051]);
    expectEqual(bind(ovenMean)(moistures)[0]?.[0] as number, 0.0505, 1e-9);
  });

  test("does not care for the weight of the dish when both weights include it", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 100, noNaN: true }),
        moistures,
        fc.double({ min: 0, max: 100, noNaN: true }),
        (sample, moisture, dish) => {
          const dried = dryMatter.calculate(sample, moisture);
          const measured = ovenMoisture.calculate(sample + dish, dried + dish, dish);
          expectEqual(measured, moisture, 0, 1e-12);
        },
      ),
    );
  });

  test("agrees whatever the order of the readings", () => {
    const readings = fc.array(fc.double({ min: 0.04, max: 0.05, noNaN: true }), { minLength: 2, maxLength: 8 });
    fc.assert(
      fc.property(readings, (moistures) => {
        const mean = ovenMean.calculate(moistures, 0.01);
        expectEqual(ovenMean.calculate([...moistures].reverse(), 0.01), mean);
        expect(mean).toBeGreaterThanOrEqual(Math.min(...moistures) * (1 - 1e-12));
        expect(mean).toBeLessThanOrEqual(Math.max(...moistures) * (1 + 1e-12));
      }),
    );
  });

  test("looks at the readings that are furthest apart, not at neighbours", () => {
    expect(() => ovenMean.calculate([0.05, 0.052, 0.054], 0.003)).toThrow(
      "moistures must agree within 0.00359; got a spread of 0.004",
    );
  });

  test("allows a spread of exactly the limit, whatever doubles make of it", () => {
    expect(0.063 - 0.06).toBeGreaterThan(0.003);
    expectEqual(ovenMean.calculate([0.063, 0.06], 0.003), 0.0615);
    expect(() => ovenMean.calculate([0.06300001, 0.06], 0.003)).toThrow("agree");
  });
});

describe("a restated content", () => {
  const contents = fc.double({ min: 1e-6, max: 100, noNaN: true });

  test("comes back when it is restated the other way", () => {
    fc.assert(
      fc.property(contents, moistures, moistures, (content, from, to) => {
        expectEqual(restateContent.calculate(restateContent.calculate(content, from, to), to, from), content);
      }),
    );
  });

  test("is the same amount in the weight that the leaf then has", () => {
    fc.assert(
      fc.property(contents, weights, moistures, moistures, (content, weight, from, to) => {
        const amount = restateContent.calculate(content, from, to) * targetWeight.calculate(weight, from, to);
        expectEqual(amount, content * weight);
      }),
    );
  });
});

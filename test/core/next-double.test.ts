import { expect, test } from "vitest";
import { limits } from "../../src/core/bounds";

/** By the bits of a double, read as a whole number: a second way to the same. */
function nextByBits(value: number): number {
  const bits = new DataView(new ArrayBuffer(8));
  bits.setFloat64(0, value);
  bits.setBigInt64(0, bits.getBigInt64(0) + (value > 0 ? 1n : -1n));
  return bits.getFloat64(0);
}

/** Powers of two, where the step changes, their neighbours, and numbers of farms. */
const numbers = [
  ...Array.from({ length: 81 }, (_, power) => 2 ** (power - 40)).flatMap((power) => [
    power,
    nextByBits(power),
    -nextByBits(-power),
  ]),
  ...[0.1, 0.2, 1 / 3, 0.6, 0.765, 0.999, 1.5, 7, 25, 350, 1e12, Math.PI],
].flatMap((number) => [number, -number]);

test.each(["above", "below"] as const)("the bound of what lies %s a number is the next double", (side) => {
  for (const number of numbers) {
    const { low, high } = limits({ [side]: number });
    if (side === "above") expect(low, String(number)).toBe(nextByBits(number));
    else expect(high, String(number)).toBe(-nextByBits(-number));
  }
});

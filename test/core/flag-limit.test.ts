import { describe, expect, test } from "vitest";
import { bind } from "../../src/cells/bind";
import { lotFlag } from "../../src/core/season/lot-flag";
import { lotFlags } from "../../src/core/season/lot-flags";
import { seededNumbers } from "../../src/sample-books/season/seeded-numbers";

/** Clean books: lots of about 1 kg whose outturns scatter by 3 % about 21 %, normally on the scale of logarithms. */
const books = 3000;
const numbers = seededNumbers(20_261_126);
const normal = (): number => Math.sqrt(-2 * Math.log(1 - numbers.next())) * Math.cos(2 * Math.PI * numbers.next());
const lot = (): [number, number] => {
  const fresh = 700 + 600 * numbers.next();
  return [fresh, fresh * 0.21 * Math.exp(0.03 * normal())];
};
const bookOf = (lots: number) => {
  const pairs = Array.from({ length: lots }, lot);
  return [pairs.map(([fresh]) => [fresh]), pairs.map(([, finished]) => [finished])] as const;
};

const flags = bind(lotFlags);
const flag = bind(lotFlag);
const shareOf = (isFlagged: () => boolean): number =>
  Array.from({ length: books }, isFlagged).filter(Boolean).length / books;

describe("a limit that is left out", () => {
  test.each([5, 6, 7, 10, 13, 20, 40, 80])("flags a lot in one of twenty clean books of %d lots", (count) => {
    const share = shareOf(() => flags(...bookOf(count), null, false).some(([, , word]) => word !== ""));
    // Three standard errors of 3000 books are 1.2 in 100.
    expect(Math.abs(share - 0.05)).toBeLessThan(0.013);
  });

  test.each([5, 6, 7, 10, 13, 20, 40, 80])("flags one of a hundred good lots beside %d past ones", (count) => {
    const share = shareOf(() => flag(...lot(), ...bookOf(count))[0]?.[0] !== "");
    // Three standard errors are 0.55 in 100.
    expect(Math.abs(share - 0.01)).toBeLessThan(0.006);
  });

  test("is another than the one that is typed: 3.5 flags a fifth of clean books of five", () => {
    const share = shareOf(() => flags(...bookOf(5), 3.5, false).some(([, , word]) => word !== ""));
    expect(share).toBeGreaterThan(0.18);
    expect(share).toBeLessThan(0.24);
  });

  test("still finds a lot of half the usual outturn beside ten past ones", () => {
    const found = shareOf(() => {
      const [fresh, finished] = lot();
      return flag(fresh, finished / 2, ...bookOf(10))[0]?.[0] === "low";
    });
    expect(found).toBeGreaterThan(0.99);
  });
});

import { describe, expect, test } from "vitest";
import { checkedArguments } from "../../src/cells/checked-arguments";
import { catalogue } from "../../src/core/catalogue";
import { text } from "../../src/core/quantities";
import { firingTargetPage } from "../../src/core/targets/firing-target";
import type { LossOf } from "../../src/core/targets/loss-of";
import { inserted, percent, step, sumOf, workingNumber } from "../../src/core/working";

const symbolsIn = (line: string): string[] => line.match(/\p{L}[\p{L}₀-₉₋ᵢ]*/gu) ?? [];

/** What stays as it is: names of functions, the z and χ² that are compared, and what stands before its "=". */
const staysIn = (symbols: string): Set<string> => {
  const named = symbols.split(";").filter((part) => part.includes("="));
  return new Set(["ln", "f", "P", "z", "χ", ...named.flatMap((part) => symbolsIn(part.split("=")[0] as string))]);
};

/** The examples and checks that have an answer. */
const answered = catalogue.flatMap(({ spec, page }) =>
  [
    ...page.examples.map(({ given, gives }) => ({ given, gives })),
    ...page.checks.map(({ given, expected }) => ({ given, gives: expected })),
  ].flatMap(({ given, gives }) => {
    const checked = checkedArguments(spec, given);
    const isRefusal = typeof gives === "object" && "error" in gives;
    return isRefusal || !("values" in checked) ? [] : [{ id: spec.id, page, values: checked.values }];
  }),
);

test("every working puts a number in the place of every symbol", () => {
  for (const { id, page, values } of answered) {
    for (const { symbols, numbers } of page.working(...values)) {
      const stays = staysIn(symbols);
      const inNumbers = new Set(symbolsIn(numbers));
      expect(numbers, `${id}: ${symbols}`).not.toBe("");
      expect(symbolsIn(symbols).filter((symbol) => inNumbers.has(symbol) && !stays.has(symbol))).toEqual([]);
    }
  }
  expect(answered.length).toBeGreaterThan(catalogue.length);
});

describe("the working of a firing target", () => {
  const shownSteps = (meaning: LossOf) =>
    firingTargetPage
      .working(400, 0.75, 0.2, meaning)
      .map(({ numbers, gives }) => [numbers, Number((gives as number).toPrecision(10))]);

  test("of the water: 300 g of water, 60 g of it off, 340 g left", () => {
    expect(shownSteps("water")).toEqual([
      ["400 × 75 %", 300],
      ["300 × 20 %", 60],
      ["400 − 60", 340],
    ]);
  });

  test("of the weight: 80 g off, 320 g left", () => {
    expect(shownSteps("weight")).toEqual([
      ["400 × 20 %", 80],
      ["400 − 80", 320],
    ]);
  });

  test("in points: 100 g of dry matter, which are 45 % of what is left", () => {
    expect(shownSteps("points")).toEqual([
      ["400 × (1 − 75 %)", 100],
      ["75 % − 20 %", 0.55],
      ["100 / (1 − 55 %)", 222.2222222],
    ]);
  });
});

describe("the last line of a table's working", () => {
  const lastLine = (id: string, ...given: unknown[]): string | undefined => {
    const entry = catalogue.find(({ spec }) => spec.id === id);
    return entry?.page.working(...(given as never[])).at(-1)?.numbers;
  };

  test("holds every weight that a loss would take off", () => {
    expect(lastLine("LOSSMEANINGS", 400, 0.75, 0.3)).toBe("400 − 310 = 90; 400 − 280 = 120; 400 − 181.8182 = 218.1818");
    expect(lastLine("LOSSMEANINGS", 500, 0.2, 0.3)).toBe("500 − 470 = 30");
  });

  test("holds every step of a route", () => {
    expect(lastLine("DRYINGSTEPS", 400, 0.75, [0.6, 0.5], ["moisture", "moisture"], [null, null], 0)).toBe(
      "100 / (1 − 60 %) = 250; 100 / (1 − 50 %) = 200",
    );
  });
});

describe("a line of numbers", () => {
  test("has seven digits and a minus of its own", () => {
    expect([1 / 3, -2.5, 0, 1e-9].map(workingNumber)).toEqual(["0.3333333", "−2.5", "0", "1e-9"]);
    expect(percent(0.0525)).toBe("5.25 %");
  });

  test("puts a negative number in brackets, and leaves a symbol without a value", () => {
    expect(inserted("a − b × c + d", { a: 2, b: -3, c: "5 %" })).toBe("2 − (−3) × 5 % + d");
    expect(inserted("a", { a: 0 })).toBe("0");
  });

  test("adds up six terms in full, and of more the first four and the last", () => {
    const terms = ["1", "2", "3", "4", "5", "6", "7"];
    expect(sumOf(terms.slice(0, 6))).toBe("1 + 2 + 3 + 4 + 5 + 6");
    expect(sumOf(terms)).toBe("1 + 2 + 3 + 4 + … + 7");
  });

  test("is written out, or made from the symbols; its quantity is there where one is told", () => {
    expect(step("says", "a + b", "one and two", 3)).toEqual({
      says: "says",
      symbols: "a + b",
      numbers: "one and two",
      gives: 3,
    });
    expect(step("says", "a + b", { a: 1, b: 2 }, 3, text)).toMatchObject({ numbers: "1 + 2", quantity: text });
  });
});

import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import { limitOfBook, limitOfLot } from "../../src/core/season/flag-limit";
import { withCounts } from "../../src/generate/counts-in-documents";

/** What a source says of a number that it keeps to itself. */
function constantIn(file: string, name: string): number {
  const [, written] = new RegExp(`const ${name} = ([\\d_]+);`).exec(readFileSync(`src/core/${file}`, "utf8")) ?? [];
  if (written === undefined) throw new Error(`${file} has no number ${name}`);
  return Number(written.replaceAll("_", ""));
}

const spread = (count: number) => ({ count, isByMedian: true }) as Parameters<typeof limitOfBook>[0];
const ofBook = (lots: number): string => String(Number(limitOfBook(spread(lots)).toFixed(1)));
const ofLot = (lots: number): string => String(Number(limitOfLot(spread(lots)).toFixed(1)));

/** Sentences on pages of functions that give a number which the code knows. */
const onPages = [
  { id: "CHARGECOUNT", says: `more than ${constantIn("charges/charge-count.ts", "mostCharges")} charges` },
  { id: "TURNTIMES", says: `more than ${constantIn("time/turn-times.ts", "mostTurns")} turns` },
  { id: "DAYPLAN", says: `more than ${constantIn("time/day-plan.ts", "mostFirings")} firings` },
  { id: "DRYINGTIME", says: `more than ${constantIn("time/drying-time.ts", "mostReadings")} readings` },
  { id: "BALANCEFIT", says: `at most ${constantIn("balance/balance-fit.ts", "mostStages")} rows` },
  { id: "BALANCEFIT", says: `in one of at most ${constantIn("balance/verdict.ts", "mostLeftOut")}` },
  {
    id: "LOTFLAGS",
    says: `it is ${Math.round(limitOfBook(spread(5)))} for five lots, ${ofBook(10)} for ten, ${ofBook(40)} for forty`,
  },
  { id: "LOTFLAG", says: `it is ${ofLot(5)} with five past lots, ${ofLot(10)} with ten, ${ofLot(20)} with twenty` },
];

test.each(onPages)("the page of $id says: $says", ({ id, says }) => {
  const page = catalogue.find(({ spec }) => spec.id === id)?.page;
  expect(page?.guide.filter((sentence) => sentence.includes(says))).toHaveLength(1);
});

test("a plan of too many firings is refused with their number", () => {
  const most = constantIn("time/day-plan.ts", "mostFirings");
  expect(readFileSync("src/core/time/day-plan.ts", "utf8")).toContain(`few enough for ${most} firings in all`);
});

describe("the number in a sentence", () => {
  const counts = [{ words: "all # of them", count: 12 }];

  test("is put right, and nothing else", () => {
    expect(withCounts("7 lots, all 9 of them; 9", counts)).toBe("7 lots, all 12 of them; 9");
    expect(withCounts("all 12 of them", counts)).toBe("all 12 of them");
  });

  test.each(["all of them", "all nine of them", "all 9 of those", "all 9 of them, all 8 of them"])(
    "is missed in: %s",
    (text) => {
      expect(() => withCounts(text, counts)).toThrow("all # of them");
    },
  );
});

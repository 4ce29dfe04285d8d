import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { Calculator } from "../src/command-line/calculator";
import { groups } from "../src/core/define";

const readme = readFileSync(resolve(__dirname, "../README.md"), "utf8");
const lines = [...readme.matchAll(/^\| (\w+) \| `(=.*?)` \| (.*?) \|/gm)].map(([, group, formula, answer]) => ({
  group: group as string,
  formula: formula as string,
  answer: answer as string,
}));
const calculator = new Calculator();
afterAll(() => calculator.close());

describe("the README", () => {
  test("has a worked line for every group", () => {
    expect(lines.map(({ group }) => group)).toEqual([...groups]);
  });

  test.each(lines)("works out $formula", async ({ formula, answer }) => {
    const value = (await calculator.answer(formula))[0]?.[0];
    if (Number.isNaN(Number(answer))) expect(value).toBe(answer);
    else expect(value).toBeCloseTo(Number(answer), 6);
  });
});

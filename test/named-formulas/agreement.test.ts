import { describe, expect, test } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import { leftOut } from "../../src/named-formulas/left-out";
import { namedIds } from "../../src/named-formulas/named-formulas";
import { calls } from "../hosts/calls";
import { disagreements } from "./agreement";
import { randomCalls } from "./random-calls";

/** What the spreadsheet compares otherwise: see `everywhere` among the differences. */
const beyondFifteenDigits = "DRYMATTER, a moisture just below 1";

const seed = 20_261_126;

describe("the named formulas, in an engine that is not ours", () => {
  const own = calls.filter(({ spec, name }) => namedIds.has(spec.id) && name !== beyondFifteenDigits);

  test("answer every example, check and call of the hosts as the binding does", { timeout: 300_000 }, () => {
    expect(own.length).toBeGreaterThan(400);
    expect(disagreements(own)).toEqual([]);
  });

  test("answer a thousand random calls as the binding does", { timeout: 300_000 }, () => {
    expect(disagreements(randomCalls(seed, 1_000))).toEqual([]);
  });

  test("would be found out with another answer", () => {
    const [call] = own;
    if (!call) throw new Error("there is no call");
    const spec = { ...call.spec, calculate: () => 7 };
    expect(disagreements([{ ...call, spec }])).toHaveLength(1);
  });
});

test("every function has a named formula or a reason why not", () => {
  const all = catalogue.map(({ spec }) => spec.id);
  expect([...namedIds, ...Object.keys(leftOut)].sort()).toEqual([...all].sort());
});

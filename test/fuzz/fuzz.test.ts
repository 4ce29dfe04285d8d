import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import type { Entry } from "../../src/core/entry";
import { callText } from "./call-text";
import { faultFinder } from "./faults";
import { type Arguments, calls, tallCalls } from "./junk";

/** Ten thousand calls over all functions, the same every time; `npm run fuzz` makes a million new ones. */
const seed = 20_270_405;
const each = Math.ceil(10_000 / catalogue.length);

const named = (entries: readonly Entry[]) => entries.map((entry) => ({ id: entry.spec.id, entry }));

function bearing({ spec }: Entry): (given: Arguments) => void {
  const find = faultFinder(spec);
  return (given) => {
    const fault = find(given);
    if (fault !== undefined) expect.fail(`${callText(spec, given)} ${fault}`);
  };
}

test.each(named(catalogue))("$id answers or refuses by name, whatever its cells hold", ({ entry }) => {
  fc.assert(fc.property(calls(entry), bearing(entry)), { seed, numRuns: each });
});

describe("with lists of 100,000 rows", () => {
  // A function of cells does the same for each: only what takes lists whole can mind how long they are.
  const withLists = catalogue.filter(({ spec }) => spec.parameters.some(({ takes }) => takes === "list"));

  test.each(named(withLists))("$id does so too", ({ entry }) => {
    fc.assert(fc.property(tallCalls(entry, 100_000), bearing(entry)), { seed, numRuns: 1, endOnFailure: true });
  });
});

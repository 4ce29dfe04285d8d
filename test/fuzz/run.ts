/** `npm run fuzz`: a million calls of junk over all functions; `-- --seed N --calls N` repeats or shortens a run. */
import { parseArgs } from "node:util";
import fc from "fast-check";
import { catalogue } from "../../src/core/catalogue";
import type { Entry } from "../../src/core/entry";
import { callText } from "./call-text";
import { type FaultFinder, faultFinder } from "./faults";
import { type Arguments, calls, tallCalls } from "./junk";

const { values } = parseArgs({
  options: { seed: { type: "string" }, calls: { type: "string" }, only: { type: "string" } },
});
const seed = Number(values.seed ?? Math.floor(Math.random() * 2 ** 31));
const total = Number(values.calls ?? 1_000_000);
if (!Number.isInteger(seed) || !(Number.isInteger(total) && total > 0))
  throw new Error("--seed and --calls take whole numbers");
const tallRows = 100_000;
const tallEach = 5;

/** Generous. What grows faster than its cells is far above it. */
const millisecondsFor = (cells: number): number => 500 + 0.1 * cells;

const cellsIn = (given: unknown): number =>
  Array.isArray(given) ? given.reduce<number>((count, part) => count + cellsIn(part), 0) : 1;

/**
 * As faultFinder, and the processor's time beside it: others may keep the machine busy. A slow call is made again,
 * since the memory of the calls before is cleared away within some call or other.
 */
function timed(find: FaultFinder, clock: { slowest: number }): FaultFinder {
  return (given) => {
    let took = 0;
    for (let tries = 0; tries < 3; tries += 1) {
      const start = process.cpuUsage();
      const fault = find(given);
      const { user, system } = process.cpuUsage(start);
      took = (user + system) / 1_000;
      if (fault !== undefined || took <= 500 || took <= millisecondsFor(cellsIn(given))) {
        clock.slowest = Math.max(clock.slowest, took);
        return fault;
      }
    }
    return `took ${Math.round(took)} ms for ${cellsIn(given)} cells`;
  };
}

/** What went wrong, with the smallest call that shows it; undefined where nothing did. */
function failure({ spec }: Entry, find: FaultFinder, some: fc.Arbitrary<Arguments>, numRuns: number, asFound = false) {
  const { failed, counterexample } = fc.check(
    fc.property(some, (given) => find(given) === undefined),
    { seed, numRuns, endOnFailure: asFound },
  );
  if (!failed || counterexample === null) return undefined;
  const [given] = counterexample;
  return `${callText(spec, given)}\n    ${find(given) ?? "another fault when asked again"}`;
}

console.log(`seed ${seed}: ${total} calls over ${catalogue.length} functions`);
const chosen = catalogue.filter(({ spec }) => values.only === undefined || spec.id === values.only);
if (chosen.length === 0) throw new Error(`there is no function ${values.only}`);
const each = Math.ceil(total / chosen.length);
let failures = 0;
for (const entry of chosen) {
  const clock = { slowest: 0 };
  const find = timed(faultFinder(entry.spec), clock);
  const found = [
    failure(entry, find, calls(entry), each),
    failure(entry, find, tallCalls(entry, tallRows), Math.min(tallEach, each), true),
  ].filter((text) => text !== undefined);
  failures += found.length;
  console.log(`${entry.spec.id.padEnd(17)} ${each} calls, slowest ${clock.slowest.toFixed(1)} ms`);
  for (const text of found) console.log(`  FAULT ${text}`);
}
console.log(
  failures === 0
    ? "no fault"
    : `${failures} faults; the same calls again: npm run fuzz -- --seed ${seed} --calls ${total}`,
);
process.exitCode = failures === 0 ? 0 : 1;

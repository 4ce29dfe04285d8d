/** `npm run names-agree`: ten thousand random calls of the named formulas in the second engine; `-- --seed N --calls N`. */
import { parseArgs } from "node:util";
import { disagreements } from "./agreement";
import { randomCalls } from "./random-calls";

const { values } = parseArgs({ options: { seed: { type: "string" }, calls: { type: "string" } } });
const seed = Number(values.seed ?? Math.floor(Math.random() * 2 ** 31));
const total = Number(values.calls ?? 10_000);
if (!Number.isInteger(seed) || !(Number.isInteger(total) && total > 0)) {
  throw new Error("--seed and --calls take whole numbers");
}
const calls = randomCalls(seed, total);
const found = disagreements(calls);
for (const difference of found.slice(0, 20)) console.log(difference);
console.log(`seed ${seed}: ${calls.length} calls, ${found.length} answered otherwise than the binding`);
process.exitCode = found.length === 0 ? 0 : 1;

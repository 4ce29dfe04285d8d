import { execFileSync } from "node:child_process";
import { type Comparison, comparison } from "./side-by-side";

const rounds = 3;

/** The sample season calculated by the engine as it is put right here, against the engine as it comes. */
export function compareEngines(): Comparison {
  const times: [number[], number[]] = [[], []];
  for (let round = 0; round < rounds; round += 1) {
    times[0].push(timeWith("tsx", "./src/build/with-quicker-engine.ts"));
    times[1].push(timeWith("tsx"));
  }
  return comparison(
    "the sample season calculated anew",
    { name: "the engine put right", times: times[0] },
    { name: "the engine as it comes", times: times[1] },
    0.6,
  );
}

function timeWith(...loaders: readonly string[]): number {
  const flags = loaders.flatMap((loader) => ["--import", loader]);
  return Number(execFileSync(process.execPath, [...flags, "src/bench/season-calculation.ts"], { encoding: "utf8" }));
}

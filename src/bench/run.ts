/**
 * Bundles the bench as the functions script is bundled, then runs it: what is measured is the code that Excel gets,
 * not the sources under a loader.
 */
import { spawnSync } from "node:child_process";
import { mkdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { bundleForNode } from "../build/bundle-script";

const project = resolve(__dirname, "../..");
const folder = join(project, ".cache", "bench");

/** Rubbish is collected on the same thread: on a busy machine, waiting for the others would be measured. */
const flags = ["--single-threaded-gc"];

async function run(): Promise<void> {
  mkdirSync(folder, { recursive: true });
  await bundleForNode({ project, from: "src/bench/bench.ts", to: join(folder, "bench.js") });
  const { status } = spawnSync(process.execPath, [...flags, join(folder, "bench.js"), ...process.argv.slice(2)], {
    stdio: "inherit",
  });
  process.exitCode = status ?? 1;
}

run();

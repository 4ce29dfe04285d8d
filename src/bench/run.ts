/**
 * Bundles the bench as the functions script is bundled, then runs it: what is measured is the code that Excel gets,
 * not the sources under a loader.
 */
import { spawnSync } from "node:child_process";
import { join, resolve as resolvePath } from "node:path";
import { runWebpack } from "../build/run-webpack";
import { resolve, rulesInPlainLanguage } from "../build/webpack-rules";

const project = resolvePath(__dirname, "../..");
const folder = join(project, ".cache", "bench");

/** Rubbish is collected on the same thread: on a busy machine, waiting for the others would be measured. */
const flags = ["--single-threaded-gc"];

async function run(): Promise<void> {
  await runWebpack({
    mode: "production",
    target: "node20",
    context: project,
    entry: { bench: join(__dirname, "bench.ts") },
    output: { path: folder, filename: "[name].js" },
    // Packages are taken as they are installed; the functions of the project use none.
    externals: ({ request }, callback) =>
      request?.match(/^(?:[a-z@](?!:))/) ? callback(null, `commonjs ${request}`) : callback(),
    resolve,
    module: { rules: rulesInPlainLanguage },
    devtool: false,
    performance: false,
  });
  const { status } = spawnSync(process.execPath, [...flags, join(folder, "bench.js"), ...process.argv.slice(2)], {
    stdio: "inherit",
  });
  process.exitCode = status ?? 1;
}

run();

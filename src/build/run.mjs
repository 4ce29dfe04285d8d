// `node src/build/run.mjs src/x.ts …` runs a script of the project, after what it needs is installed.
import { spawnSync } from "node:child_process";
import "./install-first.mjs";

const loaders = ["tsx", new URL("with-quicker-engine.ts", import.meta.url).href].flatMap((each) => ["--import", each]);
const { status } = spawnSync(process.execPath, [...loaders, ...process.argv.slice(2)], { stdio: "inherit" });
process.exitCode = status ?? 1;

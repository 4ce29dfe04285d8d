// `node src/build/run.mjs src/x.ts …` runs a script of the project, after what it needs is installed.
import { spawnSync } from "node:child_process";
import "./install-first.mjs";

const { status } = spawnSync(process.execPath, ["--import", "tsx", ...process.argv.slice(2)], { stdio: "inherit" });
process.exitCode = status ?? 1;

// Comes first in every npm script: on a fresh clone it installs what the lockfile names, then says nothing again.
// Plain Node without dependencies, so that it can run before anything is there.
import { execSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";

const [major] = process.versions.node.split(".").map(Number);
if (major < 20) {
  console.error(`Tea Mass Balance needs Node.js 20 or newer; this is ${process.version}. Get it from nodejs.org.`);
  process.exit(1);
}

const installed = "node_modules/.package-lock.json";

/** The versions that the lockfile asks for and the ones that are there; other fields differ by platform. */
const versions = (file) =>
  Object.entries(JSON.parse(readFileSync(file, "utf8")).packages).map(([path, { version, optional }]) => [
    path,
    version,
    optional === true,
  ]);

function complete() {
  if (!existsSync(installed)) return false;
  const there = new Map(versions(installed).map(([path, version]) => [path, version]));
  return versions("package-lock.json").every(
    ([path, version, optional]) => path === "" || optional || there.get(path) === version,
  );
}

if (!complete()) {
  console.log("Installing what Tea Mass Balance needs; this happens once and takes a few minutes …");
  execSync("npm ci --no-audit --no-fund --ignore-scripts", { stdio: "inherit" });
}

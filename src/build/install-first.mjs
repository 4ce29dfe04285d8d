// Comes first in every npm script: on a fresh clone it installs what the lockfile names, then says nothing again.
// Plain Node without dependencies, so that it can run before anything is there. Folders with a lockfile of their own
// are named; without a name it is the project's.
import { execSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";

const [major] = process.versions.node.split(".").map(Number);
const least = Number(/\d+/.exec(JSON.parse(readFileSync("package.json", "utf8")).engines.node)[0]);
if (major < least) {
  console.error(
    `Tea Mass Balance needs Node.js ${least} or newer; this is ${process.version}. Get it from nodejs.org.`,
  );
  process.exit(1);
}

/** The versions that the lockfile asks for and the ones that are there; other fields differ by platform. */
const versions = (file) =>
  Object.entries(JSON.parse(readFileSync(file, "utf8")).packages).map(([path, { version, optional }]) => [
    path,
    version,
    optional === true,
  ]);

function complete(folder) {
  const installed = join(folder, "node_modules/.package-lock.json");
  if (!existsSync(installed)) return false;
  const there = new Map(versions(installed).map(([path, version]) => [path, version]));
  return versions(join(folder, "package-lock.json")).every(
    ([path, version, optional]) => path === "" || optional || there.get(path) === version,
  );
}

/** What another script asks for by importing this file is the project's own. */
const isCommand = process.argv[1]?.endsWith("install-first.mjs");
const folders = isCommand && process.argv.length > 2 ? process.argv.slice(2) : ["."];
const wanting = folders.filter((folder) => !complete(folder));
if (wanting.length > 0) {
  console.log("Installing what Tea Mass Balance needs; this happens once, and takes a minute on a fast line …");
  for (const folder of wanting) {
    execSync("npm ci --no-audit --no-fund --ignore-scripts", { stdio: "inherit", cwd: folder });
  }
}

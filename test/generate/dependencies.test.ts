import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import {
  broughtBy,
  type LockedPackage,
  type Lockfile,
  licencesByHand,
  nameIn,
  reasons,
  runtimePackages,
  scriptsNotRun,
  shippedTools,
} from "../../src/generate/dependencies";
import { dependenciesPage, licencesInDoubt } from "../../src/generate/dependencies-page";

const json = (file: string) => JSON.parse(readFileSync(file, "utf8"));
const lockfile: Lockfile = json("package-lock.json");
const manifest: { dependencies: Record<string, string>; devDependencies: Record<string, string> } =
  json("package.json");
/** What the tests alone need has a lockfile of its own. */
const ofTests: Lockfile = json("test/package-lock.json");
const manifestOfTests: { devDependencies: Record<string, string> } = json("test/package.json");
const locked = [lockfile, ofTests].flatMap(({ packages }) => Object.entries(packages)).filter(([path]) => path !== "");

test("each runtime dependency has its reason, and each reason its dependency", () => {
  expect(Object.keys(reasons)).toEqual(Object.keys(manifest.dependencies));
});

test("every version is exact", () => {
  const { dependencies, devDependencies } = manifest;
  for (const version of [dependencies, devDependencies, manifestOfTests.devDependencies].flatMap(Object.values)) {
    expect(version).toMatch(/^(npm:[\w@/-]+@)?\d+\.\d+\.\d+(-[\w.]+)?$/);
  }
});

test("what the tests alone need is nothing that the project has a version of its own of", () => {
  for (const name of Object.keys(manifestOfTests.devDependencies)) {
    expect({ ...manifest.dependencies, ...manifest.devDependencies }).not.toHaveProperty([name]);
  }
});

test("every package of the product has a licence that the project takes", () => {
  expect(licencesInDoubt(lockfile)).toEqual([]);
});

test("a licence that nobody looked at is found", () => {
  const strange = { packages: { "node_modules/strange": { version: "1.0.0", license: "AGPL-3.0" } } };
  const silent = { packages: { "node_modules/silent": { version: "1.0.0" } } };
  expect(licencesInDoubt(strange)).toEqual(["strange: AGPL-3.0"]);
  expect(licencesInDoubt(silent)).toEqual(["silent: no licence named"]);
});

test("licences looked at by hand are those of packages that are still there and name none", () => {
  const silent = runtimePackages(lockfile).filter(([, { license }]) => license === undefined);
  expect(silent.map(([path]) => nameIn(path)).sort()).toEqual(Object.keys(licencesByHand).sort());
});

test("the lockfile holds the SHA-512 sum of every package and names no place to fetch it from", () => {
  for (const [path, { integrity }] of locked) expect(integrity, path).toMatch(/^sha512-[\w+/]{86}==$/);
  for (const folder of ["", "test/"]) {
    expect(readFileSync(`${folder}package-lock.json`, "utf8")).not.toContain('"resolved"');
  }
});

test("packages that want to run a script at installation are known, and none is run", () => {
  const wanting = locked.filter(([, { hasInstallScript }]) => hasInstallScript === true).map(([path]) => nameIn(path));
  expect([...new Set(wanting)].sort()).toEqual(Object.keys(scriptsNotRun).sort());
  expect(readFileSync("src/build/install-first.mjs", "utf8")).toMatch(/npm ci [^"]*--ignore-scripts/);
});

test("the one package that is fetched outside the lockfile is told of", () => {
  const [, fetched = ""] =
    /fetchedPackage = "(.+)@[^@]+"/.exec(readFileSync("src/build/open-browser.ts", "utf8")) ?? [];
  expect(fetched).not.toBe("");
  expect(lockfile.packages[`node_modules/${fetched}`]).toBeUndefined();
  const outside = dependenciesPage(lockfile, () => 0).blocks.filter(
    (block) => "paragraph" in block && block.paragraph.includes("outside the lockfile"),
  );
  expect(outside).toEqual([{ paragraph: expect.stringContaining(fetched) }]);
});

test("tools of which a part is shipped are tools, and their licences are looked at too", () => {
  for (const name of Object.keys(shippedTools)) expect(manifest.devDependencies).toHaveProperty([name]);
  const strange = { packages: { "node_modules/esbuild": { version: "1.0.0", license: "AGPL-3.0", dev: true } } };
  expect(licencesInDoubt(strange)).toEqual(["esbuild: AGPL-3.0"]);
});

test("a package is found where Node would look for it, with what it brings", () => {
  const at = (dependencies: Record<string, string> = {}): LockedPackage => ({ version: "1.0.0", dependencies });
  const packages = {
    "": at(),
    "node_modules/one": at({ two: "1", three: "1" }),
    "node_modules/two": at({ one: "1" }),
    "node_modules/three": at(),
    "node_modules/one/node_modules/three": at({ two: "1" }),
  };
  expect([...broughtBy("one", { packages })].sort()).toEqual([
    "node_modules/one",
    "node_modules/one/node_modules/three",
    "node_modules/two",
  ]);
});

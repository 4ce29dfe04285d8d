import { expect, test } from "vitest";
import type { Compilation } from "webpack";
import { bundledPackages } from "../../src/build/bundled-packages";

const compiled = (...files: (string | null)[]): Compilation =>
  ({ modules: new Set(files.map((file) => ({ nameForCondition: () => file }))) }) as unknown as Compilation;

test.each([
  ["a package", "/farm/node_modules/leaf/dist/index.js", "node_modules/leaf"],
  ["a package of a maker", "/farm/node_modules/@tea/leaf/index.js", "node_modules/@tea/leaf"],
  [
    "a package inside another",
    "/farm/node_modules/@tea/leaf/node_modules/bud/a.js",
    "node_modules/@tea/leaf/node_modules/bud",
  ],
  ["a package under Windows", "C:\\farm\\node_modules\\@tea\\leaf\\index.js", "node_modules/@tea/leaf"],
])("%s is named by its place in the lockfile", (_, file, place) => {
  expect(bundledPackages(compiled(file))).toEqual([place]);
});

test("each is named once, and neither our own files nor the bundler's are", () => {
  const files = ["/farm/node_modules/b/1.js", "/farm/node_modules/a/1.js", "/farm/node_modules/b/2.js"];
  expect(bundledPackages(compiled(...files, "/farm/src/core/entry.ts", null))).toEqual([
    "node_modules/a",
    "node_modules/b",
  ]);
});

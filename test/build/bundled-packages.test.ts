import { expect, test } from "vitest";
import { packagesOf } from "../../src/build/bundled-packages";

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
  expect(packagesOf([file])).toEqual([place]);
});

test("each is named once, and our own files are not", () => {
  const files = ["/farm/node_modules/b/1.js", "/farm/node_modules/a/1.js", "/farm/node_modules/b/2.js"];
  expect(packagesOf([...files, "/farm/src/core/entry.ts"])).toEqual(["node_modules/a", "node_modules/b"]);
});

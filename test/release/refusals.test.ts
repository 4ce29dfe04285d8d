/** A project of the same form as ours, and then what a release must not be made of. */
import {
  appendFileSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import { corrections } from "../../src/generate/corrections";
import { roomsOf } from "../../src/generate/rooms";
import { roomsPicture } from "../../src/generate/rooms-picture";
import { signatureRecord } from "../../src/generate/signatures";
import type { Release } from "../../src/release/last-release";
import { changelogProblems, refusals, unlistedCorrections } from "../../src/release/refusals";

const project = mkdtempSync(join(tmpdir(), "tea-project-"));
const next = { version: "1.2.3", signatures: catalogue.map(({ spec }) => signatureRecord(spec)) };
const copied = [
  ...[
    "CONTRIBUTING.md",
    "DEVELOPERS.md",
    "README.md",
    "docs",
    "last-release.json",
    "package-lock.json",
    "package.json",
  ],
  ...["signatures.json", "src"],
];

const rooms = ["src/core", "src/pages/leaf"];

function write(path: string, text: string): void {
  mkdirSync(dirname(join(project, path)), { recursive: true });
  writeFileSync(join(project, path), text);
}

beforeAll(() => {
  for (const path of copied) cpSync(path, join(project, path), { recursive: true });
  symlinkSync(resolve("node_modules"), join(project, "node_modules"), "dir");
  mkdirSync(join(project, "test"));
  symlinkSync(resolve("test/node_modules"), join(project, "test", "node_modules"), "dir");
  write("docs/changelog.md", "# Changelog\n\n## 1.2.3\n");
  // The least of the language: most of what the compiler reads here is its own description of that.
  const compilerOptions = { composite: true, emitDeclarationOnly: true, lib: ["ES5"], skipLibCheck: true, types: [] };
  const room = { compilerOptions, files: ["leaf.ts"], references: [], packages: [] };
  for (const path of rooms) {
    write(`${path}/tsconfig.json`, JSON.stringify(room));
    write(`${path}/leaf.ts`, "export const leaf: number = 1;\n");
  }
  write("tsconfig.json", JSON.stringify({ files: [], references: rooms.map((path) => ({ path })) }));
  write("docs/rooms.svg", roomsPicture(roomsOf(project)));
});
afterAll(() => rmSync(project, { recursive: true }));

const refused = async (last?: Release) =>
  (await refusals(project, next, last)).filter(([, problems]) => problems.length > 0);

test("nothing speaks against a sound project", async () => {
  expect(await refused()).toEqual([]);
});

test("everything does that would break workbooks, is missing in the changelog, is stale or does not fit", async () => {
  const [first] = next.signatures;
  const last = { version: "1.2.2", signatures: [{ ...first, id: "GONE" } as typeof first & object] };
  write("docs/changelog.md", "# Changelog\n\n## 1.2.2\n");
  appendFileSync(join(project, "docs/functions/water.md"), "by hand");
  rmSync(join(project, "signatures.json"));
  write("docs/functions/gone.md", "");
  for (const room of rooms) write(`${room}/leaf.ts`, 'export const leaf: number = "one";\n');
  expect(await refused(last)).toEqual([
    ["Workbooks that were saved with the last release would break", ["GONE is gone"]],
    ["The changelog", ["has no part for 1.2.3"]],
    ["Stale, run npm run generate", ["docs/functions/water.md", "signatures.json", "docs/functions/gone.md"]],
    [
      "The types do not fit",
      rooms.map((room) => expect.stringMatching(new RegExp(`^${room}/leaf\\.ts\\(1,14\\): error TS2322`))),
    ],
  ]);
});

test("a part of the changelog is found whatever the line ends", () => {
  expect(changelogProblems("# Changelog\r\n\r\n## 1.2.3\r\n\r\n- Add tea.\r\n", "1.2.3")).toEqual([]);
  expect(changelogProblems("# Changelog\n\n## 1.2.3", "1.2.3")).toEqual([]);
  expect(changelogProblems("# Changelog\n\n## 1.2.30\n### 1.2.3\n", "1.2.3")).toHaveLength(1);
});

test("the changelog lists every correction, with what was and what is", () => {
  expect(unlistedCorrections(readFileSync("docs/changelog.md", "utf8"), corrections)).toEqual([]);
  expect(unlistedCorrections("- Change WETBASIS: dryBasis is at most 25.", corrections.slice(0, 1))).toEqual([
    "correction of WETBASIS: dryBasis from 1000000 to 25",
  ]);
});

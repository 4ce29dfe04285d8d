import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { localOrigin } from "../../src/build/add-in";
import { addressesIn, manifestProblems } from "../../src/release/manifest-problems";
import { parseXml } from "../../src/xlsx/container/xml-tree";

const folder = mkdtempSync(join(tmpdir(), "tea-manifest-"));
const manifest = readFileSync("manifest.xml", "utf8");
const { version } = JSON.parse(readFileSync("package.json", "utf8")) as { version: string };
const built = { version, origin: localOrigin, folder };
const problems = (from: string, to: string, more: Partial<typeof built> = {}): string[] => {
  expect(manifest).toContain(from);
  return manifestProblems(manifest.replace(from, to), { ...built, ...more });
};

/** Every file that the manifest names, empty; the icons as they are. */
beforeAll(() => {
  for (const address of addressesIn(parseXml(manifest))) {
    const path = join(folder, address.slice(localOrigin.length));
    mkdirSync(dirname(path), { recursive: true });
    const icon = /icons\/(.*)$/.exec(address)?.[1];
    writeFileSync(path, icon === undefined ? "" : readFileSync(join("src", "pages", "excel", "icons", icon)));
  }
});
afterAll(() => rmSync(folder, { recursive: true }));

test("the manifest of the project has no problem", () => {
  expect(manifestProblems(manifest, built)).toEqual([]);
});

test.each([
  [
    "a version of another release",
    `<Version>${version}.0<`,
    "<Version>9.9.9.0<",
    `its Version is 9.9.9.0, not ${version}.0`,
  ],
  ["an id that is no GUID", "<Id>1", "<Id>x", "its Id is no GUID"],
  ["another namespace", 'DefaultValue="TEA"', 'DefaultValue="CHA"', "the functions' namespace is not TEA"],
  [
    "an address of another host",
    `${localOrigin}/pane.html`,
    "https://elsewhere.example/pane.html",
    `https://elsewhere.example/pane.html is not under ${localOrigin}`,
  ],
  ["an address without a file", "functions.json", "lost.json", `nothing is built for ${localOrigin}/lost.json`],
  [
    "a resource that nobody uses",
    '<bt:Url id="Pane.Page"',
    '<bt:Url id="Pane.Else"',
    "Pane.Else is defined and not used",
  ],
  ["a resource that is not there", 'resid="Docs.Index"', 'resid="Docs.Lost"', "Docs.Lost is used and not defined"],
  [
    "a short text that is too long",
    'DefaultValue="Tea functions"',
    `DefaultValue="${"x".repeat(126)}"`,
    "OpenPane.Label has 126 characters, more than 125",
  ],
  [
    "an icon of another size",
    '<bt:Image size="16" resid="Icon.16"/>',
    '<bt:Image size="24" resid="Icon.16"/>',
    "Icon.16 is 16 × 16, not 24 × 24",
  ],
])("%s is named", (_, from, to, problem) => {
  expect(problems(from, to)).toContain(problem);
});

test("a manifest that is no XML is refused", () => {
  expect(() => manifestProblems("<OfficeApp>", built)).toThrow();
});

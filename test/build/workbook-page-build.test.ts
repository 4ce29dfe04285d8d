import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { buildPage } from "../../src/build/workbook-page-build";
import { readWorkbook } from "../../src/xlsx/read-workbook";

const folder = mkdtempSync(join(tmpdir(), "tea-page-"));
let packages: readonly string[];
let files: string[];
const named = (pattern: RegExp): string => files.find((file) => pattern.test(file)) ?? "";

beforeAll(async () => {
  packages = await buildPage(folder);
  files = readdirSync(folder);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("names every file but the page by its content, and every file that the page names is there", () => {
  expect(files.filter((file) => !/^[\w-]+\.[0-9A-Z]{8}\.\w+$/.test(file)).sort()).toEqual(["docs", "index.html"]);
  const html = readFileSync(join(folder, "index.html"), "utf8");
  const wanted = [...html.matchAll(/(?:src|href)="([^"]+)"/g)].map(([, name]) => name as string);
  expect(wanted.length).toBeGreaterThan(3);
  expect(wanted.filter((name) => name !== "data:," && !files.includes(name))).toEqual([]);
});

test("puts the samples of every language beside the page as they read from their files", () => {
  const ready = files.filter((name) => /^(one-lot|season)\..*json$/.test(name));
  const contents = ready.map((name) => JSON.parse(readFileSync(join(folder, name), "utf8")));
  for (const sample of ["one-lot", "season", "zh/one-lot", "zh/season"]) {
    const read = readWorkbook(readFileSync(`sample-workbooks/${sample}.xlsx`));
    expect(contents).toContainEqual(JSON.parse(JSON.stringify(read)));
  }
});

test("shows the first words of a workbook with a script of a few kilobytes", () => {
  expect(statSync(join(folder, named(/^first-sight\./))).size).toBeLessThan(5_000);
});

test("names the packages that it holds code of", () => {
  for (const name of ["react-dom", "fflate", "@univerjs/core", "wasm-xlsxwriter"]) {
    expect(packages).toContain(`node_modules/${name}`);
  }
  expect(packages).not.toContain("node_modules/esbuild");
});

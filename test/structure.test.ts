import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";
import { describe, expect, test } from "vitest";

const source = resolve(__dirname, "../src");

/** What each room may import from. Arrows run one way: towards the core. */
const mayImport: Readonly<Record<string, readonly string[]>> = {
  core: [],
  cells: ["core"],
  workbook: [],
  words: ["core"],
  xlsx: ["workbook"],
  host: ["cells", "workbook"],
  engine: ["cells", "core", "workbook", "xlsx"],
  working: ["cells", "core", "host", "workbook"],
  "sheet-check": ["cells", "core", "host", "workbook", "working"],
  // The words and what is kept are still in the pane.
  jobs: ["cells", "core", "host", "pane", "workbook"],
  generate: ["cells", "core"],
  pane: ["cells", "core", "generate", "host", "jobs", "sheet-check", "words", "workbook", "working"],
  "pages/excel": ["cells", "core", "host", "pane", "workbook"],
  "pages/workbook": ["cells", "core", "engine", "generate", "host", "pane", "workbook", "working", "xlsx"],
  "command-line": ["cells", "core", "engine", "generate", "workbook"],
  "sample-books": ["cells", "core", "engine", "generate", "workbook", "xlsx"],
  bench: ["build", "cells", "core", "engine", "workbook", "xlsx"],
  release: ["build", "core", "generate", "pane", "sample-books", "xlsx", "workbook"],
  build: ["cells", "core", "engine", "generate", "sample-books", "workbook", "xlsx"],
};

/** The folder of src that a file stands in; the pages are rooms of their own. */
const roomOf = (file: string): string => {
  const [folder = "", inside = ""] = file.split(sep);
  return folder === "pages" ? `${folder}/${inside}` : folder;
};

/** Packages that the core may use: numeric libraries named in DEVELOPERS.md. */
const corePackages: readonly string[] = [];

const files = readdirSync(source, { recursive: true, encoding: "utf8" })
  .filter((file) => /\.tsx?$/.test(file))
  .map((file) => ({ file, folder: roomOf(file), text: readFileSync(join(source, file), "utf8") }));

/** Static imports and exports, which end a line, and imports inside the code. */
const importsOf = (text: string): string[] =>
  [
    ...text.matchAll(/^(?:import|export|\}).*? from "([^"]+)";$/gm),
    ...text.matchAll(/^import "([^"]+)";$/gm),
    ...text.matchAll(/\bimport\("([^"]+)"\)/g),
  ].map((match) => match[1] as string);

describe.each(files)("$file", ({ file, folder, text }) => {
  test("imports only towards the core", () => {
    const allowed = mayImport[folder];
    expect(allowed, `${folder} is not a known folder`).toBeDefined();
    for (const imported of importsOf(text).filter((name) => name.startsWith("."))) {
      const target = roomOf(relative(source, resolve(source, dirname(file), imported)));
      expect([folder, ...(allowed ?? [])], `${file} imports ${imported}`).toContain(target);
    }
  });

  test("keeps hosts and packages at the edges", () => {
    const packages = importsOf(text).filter((name) => !name.startsWith("."));
    if (folder === "core") expect(packages.filter((name) => !corePackages.includes(name))).toEqual([]);
    if (folder === "cells") expect(packages).toEqual([]);
    if (folder !== "pages/excel") expect(text).not.toMatch(/\b(CustomFunctions|Office|Excel)\.(?!js\b)[A-Za-z]/);
  });
});

test("a function is one file in its group's folder", () => {
  const functionFiles = files.filter(({ folder, text }) => folder === "core" && /= defineFunction\(/.test(text));
  for (const { file, text } of functionFiles) {
    const group = /group: "([a-z]+)"/.exec(text)?.[1];
    expect(file.split(sep)[1]).toBe(group);
    expect([...text.matchAll(/= defineFunction\(/g)].length, file).toBe(1);
  }
  expect(functionFiles.length).toBeGreaterThan(0);
});

import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";
import { describe, expect, test } from "vitest";

const source = resolve(__dirname, "../src");

/** What each folder may import from. Arrows run one way: towards the core. */
const mayImport: Readonly<Record<string, readonly string[]>> = {
  core: [],
  cells: ["core"],
  "workbook-files": ["core"],
  engine: ["cells", "core", "workbook-files"],
  generate: ["cells", "core"],
  excel: ["cells", "core", "pane", "workbook-files"],
  words: ["core"],
  pane: ["cells", "core", "generate", "words", "workbook-files"],
  "command-line": ["cells", "core", "engine", "generate", "workbook-files"],
  "sample-books": ["cells", "core", "engine", "generate", "workbook-files"],
  "workbook-page": ["cells", "core", "engine", "generate", "pane", "workbook-files"],
  bench: ["build", "cells", "core", "engine", "workbook-files"],
  release: ["build", "core", "generate", "pane", "sample-books", "workbook-files"],
  build: ["cells", "core", "engine", "generate", "sample-books", "workbook-files"],
};

/** Packages that the core may use: numeric libraries named in DEVELOPERS.md. */
const corePackages: readonly string[] = [];

const files = readdirSync(source, { recursive: true, encoding: "utf8" })
  .filter((file) => /\.tsx?$/.test(file))
  .map((file) => ({ file, folder: file.split(sep)[0] as string, text: readFileSync(join(source, file), "utf8") }));

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
      const target = relative(source, resolve(source, dirname(file), imported)).split(sep)[0] as string;
      expect([folder, ...(allowed ?? [])], `${file} imports ${imported}`).toContain(target);
    }
  });

  test("keeps hosts and packages at the edges", () => {
    const packages = importsOf(text).filter((name) => !name.startsWith("."));
    if (folder === "core") expect(packages.filter((name) => !corePackages.includes(name))).toEqual([]);
    if (folder === "cells") expect(packages).toEqual([]);
    if (folder !== "excel") expect(text).not.toMatch(/\b(CustomFunctions|Office|Excel)\.(?!js\b)[A-Za-z]/);
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

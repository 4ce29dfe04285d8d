import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Lockfile, nameIn, shippedPackages, shippedTools } from "../../src/generate/dependencies";
import { licenceTexts } from "../../src/release/licence-texts";

const lockfile = JSON.parse(readFileSync("package-lock.json", "utf8")) as Lockfile;

describe("the licences of others' parts", () => {
  const { text, problems } = licenceTexts({ lockfile, project: resolve(), bundled: [] });
  const parts = text.split(`\n\n${"-".repeat(80)}\n\n`);

  test("are those of every package that is shipped, each with its text", () => {
    expect(problems).toEqual([]);
    expect(parts).toHaveLength(shippedPackages(lockfile).length);
    const short = parts.filter((part) => part.length < 400).map((part) => part.split(":")[0]);
    expect(short).toEqual([]);
  });

  test("are of the product and of the tools of which a part is shipped, and of no other", () => {
    expect(text).toMatch(/^saxes 5\.0\.1: ISC$/m);
    expect(text).toContain("Apache License");
    for (const tool of Object.keys(shippedTools)) expect(text).toContain(`\n${tool} `);
    expect(text).not.toMatch(/^vitest /m);
  });

  test("have the author where the text is the standard one", () => {
    const saxes = parts.find((part) => part.startsWith("saxes ")) ?? "";
    expect(saxes).toContain("Copyright (c) Louis-Dominique Dubeau <ldd@lddubeau.com>\n\nPermission to use");
    expect(parts.find((part) => part.startsWith("react-remove-scroll-bar "))).toContain(
      "Permission is hereby granted, free of charge",
    );
  });
});

/** Without what differs from copy to copy: numbering, quotation marks, line breaks. */
const words = (text: string): string =>
  text
    .replaceAll(/^[\s*]*(\d\.|-)?\s+/gm, "")
    .replaceAll(/[`“”]|''/g, '"')
    .replaceAll(/\s+/g, " ");

test.each([
  ["MIT", "@borgar/fx/LICENSE"],
  ["ISC", "@observablehq/plot/LICENSE"],
  ["BSD-3-Clause", "react-transition-group/LICENSE"],
  ["Apache-2.0", "long/LICENSE"],
])("the standard text of %s is the one that a package brings", (name, copy) => {
  const standard = readFileSync(`src/release/standard-licences/${name}.txt`, "utf8").replace(/^.*<holder>/s, "");
  expect(words(readFileSync(join("node_modules", copy), "utf8"))).toContain(words(standard).trim());
});

describe("a release is refused", () => {
  let project: string;
  const place = "node_modules/leaf";
  const silent = { packages: { [place]: { version: "1.0.0" } } };
  const declared = { packages: { [place]: { version: "1.0.0", license: "MIT" } } };
  const write = (file: string, text: string): void => writeFileSync(join(project, place, file), text);
  const problemsOf = (locked: Lockfile, bundled: readonly string[] = []): readonly string[] =>
    licenceTexts({ lockfile: locked, project, bundled }).problems;

  beforeEach(() => {
    project = mkdtempSync(join(tmpdir(), "tea-licences-"));
    mkdirSync(join(project, place), { recursive: true });
    write("package.json", JSON.stringify({ author: { name: "Ann", email: "ann@leaf.example" } }));
  });
  afterEach(() => rmSync(project, { recursive: true }));

  test("not where a package has its text, or an author for the standard one", () => {
    expect(problemsOf(declared)).toEqual([]);
    write("LICENCE.md", "Do as you like.");
    expect(problemsOf(silent)).toEqual([]);
  });

  test("where a package names no licence, or no author, or one without a standard text", () => {
    expect(problemsOf(silent)).toEqual([`${place} has no text for its licence: no licence named`]);
    const strange = { packages: { [place]: { version: "1.0.0", license: "Leaf-1.0" } } };
    expect(problemsOf(strange)).toEqual([`${place} has no text for its licence: Leaf-1.0`]);
    write("package.json", "{}");
    expect(problemsOf(declared)).toEqual([`${place} has no text for its licence: MIT`]);
  });

  test("where a bundle holds what was only let pass because no bundle does", () => {
    const path = "node_modules/@univerjs/telemetry";
    const telemetry = { packages: { [path]: { version: "0.25.1" } } };
    expect(problemsOf(telemetry)).toEqual([]);
    expect(problemsOf(telemetry, [path])).toEqual([expect.stringContaining(`${path} has no text for its licence`)]);
  });

  test("where a bundle holds a package that nobody counts as shipped", () => {
    expect(problemsOf(declared, [place, "node_modules/hidden"])).toEqual([
      "node_modules/hidden is in a bundle, and neither a dependency nor among the shipped tools",
    ]);
  });
});

test("every tool of which a part is shipped is installed", () => {
  const paths = shippedPackages(lockfile).map(([path]) => path);
  for (const tool of Object.keys(shippedTools)) {
    const path = paths.find((each) => nameIn(each) === tool);
    expect(path !== undefined && existsSync(path), tool).toBe(true);
  }
});

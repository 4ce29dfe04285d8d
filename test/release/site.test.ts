import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { writeFunctionSite } from "../../src/build/function-site";
import type { Lockfile } from "../../src/generate/dependencies";
import { billOfMaterials } from "../../src/release/bill-of-materials";
import { licenceTexts } from "../../src/release/licence-texts";
import { writeSite } from "../../src/release/site";

const project = resolve();

describe("the site of a release", () => {
  const folder = mkdtempSync(join(tmpdir(), "tea-site-"));
  /** Put there by the release itself, from the builds. */
  const fromElsewhere = ["workbook/index.html", "manifest.xml", "LICENSE", "third-party-licences.txt", "sbom.cdx.json"];
  const pages = () =>
    readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".html"));

  beforeAll(() => {
    writeFunctionSite(folder);
    writeSite(folder, project, "1.2.3");
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  test("has a first page with the version, the samples and the docs", () => {
    const first = readFileSync(join(folder, "index.html"), "utf8");
    expect(first).toContain("Version 1.2.3");
    for (const sample of readdirSync("sample-workbooks")) expect(first).toContain(`href="sample-workbooks/${sample}"`);
    for (const name of ["checks", "excel-check", "changelog", "dependencies"]) {
      expect(first).toContain(`href="docs/${name}.html"`);
    }
  });

  test("leads to nothing that is not there", () => {
    for (const name of pages()) {
      for (const [, address = ""] of readFileSync(join(folder, name), "utf8").matchAll(/(?:href|src)="([^"#]+)"/g)) {
        if (/^(https|data):/.test(address) || fromElsewhere.includes(address)) continue;
        expect(existsSync(join(folder, dirname(name), address)), `${address} in ${name}`).toBe(true);
      }
    }
  });

  test("runs no script and loads nothing from elsewhere", () => {
    for (const name of pages()) {
      const page = readFileSync(join(folder, name), "utf8");
      expect(page).toContain("default-src 'none'");
      expect(page).not.toMatch(/<script|<iframe| on\w+="/);
    }
  });

  test("shows written tables as tables", () => {
    expect(readFileSync(join(folder, "docs", "dependencies.html"), "utf8")).toMatch(/<td>wasm-xlsxwriter<\/td>/);
  });
});

describe("what a release tells of others' parts", () => {
  const lockfile = JSON.parse(readFileSync("package-lock.json", "utf8")) as Lockfile;

  test("is a bill of every package of the product and of no tool", () => {
    const bill = JSON.parse(billOfMaterials(project)) as {
      bomFormat: string;
      metadata: { component: { name: string } };
      components: { name: string; hashes?: unknown[] }[];
    };
    expect(bill.bomFormat).toBe("CycloneDX");
    expect(bill.metadata.component.name).toBe("tea-mass-balance");
    const names = bill.components.map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining(["react", "exceljs", "saxes", "wasm-xlsxwriter"]));
    for (const tool of ["vitest", "webpack", "typescript", "playwright-core"]) expect(names).not.toContain(tool);
  });

  test("holds the licence of each with its text", () => {
    const texts = licenceTexts(lockfile, project);
    expect(texts).toMatch(/^saxes 5\.0\.1: ISC$/m);
    expect(texts).toContain("Apache License");
    expect(texts).toContain("buffers 0.1.1: its package names none.");
    expect(texts).not.toMatch(/^vitest /m);
  });
});

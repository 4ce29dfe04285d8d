import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { writeFunctionSite } from "../../src/build/function-site";
import { shippedTools } from "../../src/generate/dependencies";
import { billOfMaterials } from "../../src/release/bill-of-materials";
import { writeSite } from "../../src/release/site";
import { excelCheck } from "../../src/sample-books/excel-check";
import { moistureBench } from "../../src/sample-books/moisture-bench";
import { withoutAddIn } from "../../src/sample-books/sample-books";
import { sampleWordsIn } from "../../src/words/in-every-language/samples";

const project = resolve();

describe("the site of a release", () => {
  const folder = mkdtempSync(join(tmpdir(), "tea-site-"));
  /** Put there by the release itself, from the builds. */
  const fromElsewhere = [
    "workbook/index.html",
    "phone/index.html",
    "google-sheets/index.html",
    "manifest.xml",
    "LICENSE",
    "third-party-licences.txt",
    "sbom.cdx.json",
  ];
  const builtAfresh = () =>
    readdirSync(join(folder, "sample-workbooks"), { recursive: true, encoding: "utf8" })
      .filter((name) => name.endsWith(".xlsx") && !name.startsWith(withoutAddIn))
      .sort();
  const pages = () =>
    readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".html"));

  /** Those that are calculated soonest: what others make is held to the sources by their own tests. */
  const samples = {
    "excel-check.xlsx": excelCheck,
    "zh/moisture-bench.xlsx": () => moistureBench(sampleWordsIn.zh),
  };

  // From a project without samples: those of the site are made of the sources.
  beforeAll(async () => {
    const bare = mkdtempSync(join(tmpdir(), "tea-bare-"));
    cpSync("docs", join(bare, "docs"), { recursive: true });
    writeFunctionSite(folder);
    await writeSite(folder, bare, "1.2.3", samples);
    rmSync(bare, { recursive: true });
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  test("has a first page with the version, the samples and the docs", () => {
    const first = readFileSync(join(folder, "index.html"), "utf8");
    expect(first).toContain("Version 1.2.3");
    for (const sample of Object.keys(samples)) expect(first).toContain(`href="sample-workbooks/${sample}"`);
    for (const name of ["checks", "excel-check", "changelog", "dependencies"]) {
      expect(first).toContain(`href="docs/${name}.html"`);
    }
  });

  test("holds the samples that the sources make today, not those that lie in the project", () => {
    expect(builtAfresh()).toEqual(Object.keys(samples).sort());
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

describe("the bill of materials", () => {
  const { bomFormat, metadata, components, dependencies } = JSON.parse(billOfMaterials(project)) as {
    bomFormat: string;
    metadata: { component: { name: string } };
    components: { name: string; "bom-ref": string; scope: string }[];
    dependencies: { ref: string; dependsOn: string[] }[];
  };

  test("is a bill of every package of the product and of no tool", () => {
    expect(bomFormat).toBe("CycloneDX");
    expect(metadata.component.name).toBe("tea-mass-balance");
    const names = components.map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining(["react", "fflate", "saxes", "wasm-xlsxwriter"]));
    for (const tool of ["vitest", "terser", "playwright-core"]) expect(names).not.toContain(tool);
  });

  test("names the tools of which a part is shipped, and all that it names hangs together", () => {
    for (const tool of Object.keys(shippedTools)) {
      expect(
        components.filter(({ name }) => name === tool).map(({ scope }) => scope),
        tool,
      ).toEqual(["required"]);
    }
    const refs = new Set(components.map((component) => component["bom-ref"]));
    const needed = new Set(dependencies.flatMap(({ dependsOn }) => dependsOn));
    expect([...needed].filter((ref) => !refs.has(ref))).toEqual([]);
    expect([...refs].filter((ref) => !needed.has(ref))).toEqual([]);
  });
});

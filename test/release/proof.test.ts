/** A small release of the same form, whole and then broken: what the proof must notice. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { findBrowser, openBrowser } from "../../src/build/open-browser";
import { officeOrigin } from "../../src/build/page-policy";
import { pack, writeSums } from "../../src/release/packing";
import { faultsOf } from "../../src/release/proof";

const found = await findBrowser();
const origin = "https://example.org/tea";

/** Enough cells with functions for a sample. */
const sampleCells = Array.from({ length: 25 }, (_, row) => ({
  row,
  column: 0,
  formula: `=TEA.DRYBASIS(A${row})`,
  value: 1,
}));

const workbookScript = (cells: unknown): string => `
  window.workbookGrid = { workbook: () => ({ sheets: [{ cells: ${JSON.stringify(cells)} }] }) };
  document.documentElement.dataset.ready = "";`;

const sound: Readonly<Record<string, string>> = {
  "index.html": '<!doctype html><link rel="icon" href="data:,"><a href="docs/functions/targetweight.html">help</a>',
  "manifest.xml": `<OfficeApp><SourceLocation DefaultValue="${origin}/functions.html"/></OfficeApp>`,
  "functions.json": JSON.stringify({
    functions: [{ id: "TARGETWEIGHT", helpUrl: `${origin}/docs/functions/targetweight.html` }],
  }),
  "functions.html": `<!doctype html><script src="${officeOrigin}/office.js"></script><script src="functions.js"></script>`,
  "functions.js": 'CustomFunctions.associate("TARGETWEIGHT", ([[w]], [[m]], [[t]]) => [[(w * (1 - m)) / (1 - t)]]);',
  "docs/functions/targetweight.html": "<!doctype html><h1>TEA.TARGETWEIGHT</h1>",
  "workbook/index.html": '<!doctype html><script src="workbook.js"></script>',
  "workbook/workbook.js": workbookScript(sampleCells),
};

describe.skipIf(found === undefined)("the proof of a release", () => {
  const folder = mkdtempSync(join(tmpdir(), "tea-proof-"));
  let browser: Browser;

  beforeAll(async () => {
    if (found) browser = await openBrowser(found, [officeOrigin]);
  });
  afterAll(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true });
  });
  beforeEach(() => {
    rmSync(folder, { recursive: true });
    for (const [path, content] of Object.entries(sound)) write(path, content);
  });

  function write(path: string, content: string): void {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), content);
  }

  async function faults(): Promise<string[]> {
    writeSums(folder);
    return faultsOf(await pack(folder), origin, browser);
  }

  test("finds nothing in a sound one", async () => {
    expect(await faults()).toEqual([]);
  });

  test("finds an address of the manifest that nothing answers", async () => {
    write("manifest.xml", sound["manifest.xml"]?.replace("functions.html", "lost.html") ?? "");
    expect(await faults()).toEqual(["lost.html answers 404"]);
  });

  test("finds a link that leads nowhere", async () => {
    write("index.html", '<!doctype html><link rel="icon" href="data:,"><a href="docs/lost.html">lost</a>');
    expect(await faults()).toEqual(["index.html leads to docs/lost.html, which is not there"]);
  });

  test("finds a function that calculates wrong", async () => {
    write("functions.js", 'CustomFunctions.associate("TARGETWEIGHT", () => [[199]]);');
    expect(await faults()).toEqual(["TARGETWEIGHT(320, 75%, 60%) gives [[199]] instead of 200"]);
  });

  test("finds an error in the sample, and a sample without functions", async () => {
    write("workbook/workbook.js", workbookScript([...sampleCells, { formula: "=TEA.WATER(A1,B1)", value: "#NAME?" }]));
    expect(await faults()).toEqual(["=TEA.WATER(A1,B1) shows #NAME?"]);
    write("workbook/workbook.js", workbookScript([]));
    expect(await faults()).toEqual(["the sample shows 0 cells with functions"]);
  });

  test("finds a script that fails", async () => {
    write("workbook/workbook.js", `${sound["workbook/workbook.js"]} throw new Error("broken");`);
    expect((await faults()).join()).toContain("broken");
  });

  test("finds a file that was changed after its sums were taken", async () => {
    writeSums(folder);
    const sums = readFileSync(join(folder, "SHA256SUMS"), "utf8");
    write("index.html", `${sound["index.html"]} `);
    writeFileSync(join(folder, "SHA256SUMS"), sums);
    expect(await faultsOf(await pack(folder), origin, browser)).toEqual(["index.html is not what its sum says"]);
  });
});

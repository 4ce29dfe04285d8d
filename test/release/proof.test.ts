/** A small release of the same form, whole and then broken: what the proof must notice. */
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { buildFunctions } from "../../src/build/add-in";
import { writeFunctionSite } from "../../src/build/function-site";
import { buildGoogleSheets, sheetsScript } from "../../src/build/google-sheets";
import { findBrowser } from "../../src/build/open-browser";
import { officeOrigin } from "../../src/build/page-policy";
import { catalogue } from "../../src/core/catalogue";
import { functionsJson } from "../../src/generate/functions-json";
import { pack, writeSums } from "../../src/release/packing";
import { faultsOf } from "../../src/release/proof";
import type { Sheet, Workbook } from "../../src/workbook/workbook";
import { writeWorkbook } from "../../src/xlsx/write-workbook";
import { sharedBrowser } from "../browser/shared-browser";

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

const links = (inside: string): string => `<!doctype html><link rel="icon" href="data:,">${inside}`;

const sound: Readonly<Record<string, string>> = {
  "index.html": links(`<a href="docs/functions/targetweight.html">help</a><a href="${origin}/pane.html">pane</a>`),
  "manifest.xml": `<OfficeApp><SourceLocation DefaultValue="${origin}/functions.html"/></OfficeApp>`,
  "functions.json": JSON.stringify(functionsJson(catalogue, origin)),
  "pane.html": `<!doctype html><script src="${officeOrigin}/office.js"></script><main id="pane"></main><script src="pane.js"></script>`,
  "pane.js": `Office.onReady().then(({ host }) => { pane.innerHTML = '<p class="jobs">' + host + "</p>"; });`,
  "workbook/index.html": '<!doctype html><script src="workbook.js"></script>',
  "workbook/workbook.js": workbookScript(sampleCells),
  "phone/index.html":
    '<!doctype html><link rel="icon" href="data:,"><main id="phone"></main><script src="phone.js"></script>',
  "phone/phone.js": `phone.innerHTML = '<p class="jobs">jobs</p>'; navigator.serviceWorker.register("worker.js");`,
  "phone/worker.js": "",
};

const sheet = (cells: Sheet["cells"]): Workbook => ({
  name: "Sample",
  sheets: [{ name: "Lot", cells, columnWidths: {}, rowHeights: {}, merges: [] }],
});

describe.skipIf(found === undefined)("the proof of a release", () => {
  const folder = mkdtempSync(join(tmpdir(), "tea-proof-"));
  const built = mkdtempSync(join(tmpdir(), "tea-proof-functions-"));
  let browser: Browser;

  beforeAll(async () => {
    await buildFunctions(built);
    writeFunctionSite(built);
    await buildGoogleSheets(join(built, "google-sheets"));
    if (found) browser = await sharedBrowser(found, [officeOrigin]);
  });
  afterAll(() => {
    rmSync(folder, { recursive: true });
    rmSync(built, { recursive: true });
  });
  beforeEach(async () => {
    rmSync(folder, { recursive: true });
    cpSync(built, folder, { recursive: true });
    write(
      "sample-workbooks/one.xlsx",
      await writeWorkbook(sheet([{ row: 0, column: 0, formula: "=1/4", value: 0.25 }])),
    );
    for (const [path, content] of Object.entries(sound)) write(path, content);
  });

  function write(path: string, content: string | Uint8Array): void {
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

  test.each([
    ["a link that leads nowhere", '<a href="docs/lost.html">', "leads to docs/lost.html, which is not there"],
    ["a lost page of its own address", `<a href="${origin}/lost.html">`, "leads to lost.html, which is not there"],
    ["a lost style sheet", '<link rel="stylesheet" href="lost.css">', "leads to lost.css, which is not there"],
    ["a lost script", '<script src="lost.js"></script>', "leads to lost.js, which is not there"],
    ["a lost picture", '<img src="lost.png">', "leads to lost.png, which is not there"],
    ["a link from the root of the host", '<a href="/pane.html">', "names /pane.html, which leads out of the site"],
    ["a link above the site", '<a href="../other/">', "names ../other/, which leads out of the site"],
    [
      "a link to the reader's computer",
      '<a href="https://localhost:3000/pane.html">',
      "names https://localhost:3000/pane.html, which is on the computer of the reader",
    ],
    [
      "a script of another host",
      '<script src="https://elsewhere.example/a.js"></script>',
      "names https://elsewhere.example/a.js, which is loaded from elsewhere",
    ],
  ])("finds %s", async (_, inside, fault) => {
    write("index.html", links(inside));
    expect(await faults()).toEqual([`index.html ${fault}`]);
  });

  test("lets a reader go elsewhere", async () => {
    write(
      "index.html",
      links('<a href="https://elsewhere.example/">elsewhere</a><a href="mailto:a@b.example">write</a>'),
    );
    expect(await faults()).toEqual([]);
  });

  /** Changes the functions after the built script has put them in place. */
  const alter = (script: string): void =>
    write("functions.js", `${readFileSync(join(built, "functions.js"), "utf8")}\n;${script}`);

  test("finds a function that calculates wrong, in one of its checks alone", async () => {
    const { given } = catalogue.find(({ spec }) => spec.id === "WATER")?.page.checks[0] ?? { given: [] };
    alter(`const right = associated.WATER;
      const wanted = ${JSON.stringify(given.map((value) => [[value]]))};
      associated.WATER = (...given) => JSON.stringify(given) === JSON.stringify(wanted) ? [[199]] : right(...given);`);
    const found = await faults();
    expect(found.length).toBeGreaterThan(0);
    for (const fault of found) expect(fault).toMatch(/^=TEA\.WATER\(.*\) gives \[\[199\]\] instead of /);
  });

  test("finds a refusal in other words, and one that is none", async () => {
    alter(`for (const [id, right] of Object.entries(associated)) associated[id] = (...given) => {
        try { return right(...given); } catch ({ code }) { throw new CustomFunctions.Error(code, "no"); }
      };`);
    const inOtherWords = await faults();
    expect(inOtherWords.length).toBeGreaterThan(0);
    for (const fault of inOtherWords) expect(fault).toContain('"message":"no"');
    alter(`for (const [id, right] of Object.entries(associated)) associated[id] = (...given) => {
        try { return right(...given); } catch { return [[0]]; }
      };`);
    expect((await faults()).join()).toContain("gives [[0]] instead of");
  });

  test("finds a function that is missing, in the script and in functions.json", async () => {
    alter("delete associated.WATER;");
    expect(await faults()).toEqual(["functions.js lacks WATER"]);
    write("functions.js", readFileSync(join(built, "functions.js")));
    const less = catalogue.filter(({ spec }) => spec.id !== "WATER");
    write("functions.json", JSON.stringify(functionsJson(less, origin)));
    expect(await faults()).toEqual(["functions.json lacks WATER"]);
  });

  test("finds a function for Google Sheets that calculates wrong, and a script that does not run", async () => {
    const script = `google-sheets/${sheetsScript}`;
    write(script, `${readFileSync(join(built, script), "utf8")}\nTEA_WATER = () => 199;`);
    const found = await faults();
    expect(found.length).toBeGreaterThan(0);
    for (const fault of found) expect(fault).toMatch(/^=TEA\.WATER\(.*\) gives \[\[199\]\] in Google Sheets$/);
    write(script, "new URL('leaf');");
    expect((await faults()).join()).toMatch(/^the script for Google Sheets does not run: ReferenceError/);
  });

  test("finds a pane that fails, and one that is not there", async () => {
    write("pane.js", 'throw new Error("no pane");');
    expect(await faults()).toEqual(["pane.html does not show its jobs", "pane.html: no pane"]);
    rmSync(join(folder, "pane.html"));
    expect(await faults()).toContain("pane.html does not show its jobs");
  });

  test("finds a pane that its own policy stops", async () => {
    const policy = '<meta http-equiv="Content-Security-Policy" content="style-src \'none\'">';
    write("pane.html", sound["pane.html"]?.replace("<main", `${policy}<style>p { color: red }</style><main`) ?? "");
    expect((await faults()).join()).toMatch(/^pane\.html: .*Content Security Policy/);
  });

  test("finds a phone page without jobs, and one that nothing keeps on the phone", async () => {
    write("phone/phone.js", 'throw new Error("no jobs");');
    expect(await faults()).toEqual(["phone/index.html does not show its jobs", "phone/index.html: no jobs"]);
    write("phone/phone.js", `phone.innerHTML = '<p class="jobs">jobs</p>';`);
    expect(await faults()).toEqual(["phone/index.html cannot be kept for use without a connection"]);
  }, 120_000);

  test("finds a sample that is no workbook, and that there is none", async () => {
    write("sample-workbooks/one.xlsx", "no workbook");
    expect((await faults()).join()).toMatch(/^sample-workbooks\/one\.xlsx: The file is /);
    rmSync(join(folder, "sample-workbooks"), { recursive: true });
    expect(await faults()).toEqual(["there are no sample workbooks"]);
  });

  test("finds a sample that calculates to an error where it shows a number, and lets stand an error that it shows", async () => {
    const shown = [
      { row: 0, column: 0, formula: "=1/0", value: 4 },
      { row: 1, column: 0, formula: "=1/0", value: "#DIV/0!" },
    ];
    write("sample-workbooks/one.xlsx", await writeWorkbook(sheet(shown)));
    expect(await faults()).toEqual(["sample-workbooks/one.xlsx: Lot, row 1, column 1 (=1/0) calculates to #DIV/0!"]);
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

/** A small release of the same form, whole and then broken: what the proof must notice. */
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { buildFunctions } from "../../src/build/add-in";
import { writeFunctionSite } from "../../src/build/function-site";
import { buildGoogleSheets, sheetsScript } from "../../src/build/google-sheets";
import { findBrowser } from "../../src/build/open-browser";
import { officeOrigin } from "../../src/build/page-policy";
import { catalogue } from "../../src/core/catalogue";
import { functionsJson } from "../../src/generate/functions-json";
import { pack, writeSums } from "../../src/release/packing";
import { faultsIn, faultsOf, type Part } from "../../src/release/proof";
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

const manifest = (page: string): string => `<OfficeApp><SourceLocation DefaultValue="${origin}/${page}"/></OfficeApp>`;

const links = (inside: string): string => `<!doctype html><link rel="icon" href="data:,">${inside}`;

const sound: Readonly<Record<string, string>> = {
  "index.html": links(`<a href="docs/functions/targetweight.html">help</a><a href="${origin}/pane.html">pane</a>`),
  "manifest.xml": manifest("functions.html"),
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
  const whole = mkdtempSync(join(tmpdir(), "tea-proof-whole-"));
  const folder = mkdtempSync(join(tmpdir(), "tea-proof-"));
  /** What a test has changed in the folder, put back after it. */
  const changed = new Set<string>();
  let browser: Browser;

  beforeAll(async () => {
    // Beside the builds, which keep the processor busy as it starts.
    const opening = found && sharedBrowser(found, [officeOrigin]);
    await buildFunctions(whole);
    writeFunctionSite(whole);
    await buildGoogleSheets(join(whole, "google-sheets"));
    for (const [path, content] of Object.entries(sound)) {
      mkdirSync(dirname(join(whole, path)), { recursive: true });
      writeFileSync(join(whole, path), content);
    }
    mkdirSync(join(whole, "sample-workbooks"));
    const sample = sheet([{ row: 0, column: 0, formula: "=1/4", value: 0.25 }]);
    writeFileSync(join(whole, "sample-workbooks", "one.xlsx"), await writeWorkbook(sample));
    writeSums(whole);
    cpSync(whole, folder, { recursive: true });
    if (opening) browser = await opening;
  });
  afterAll(() => {
    rmSync(folder, { recursive: true });
    rmSync(whole, { recursive: true });
  });
  afterEach(() => {
    for (const path of changed) {
      if (existsSync(join(whole, path))) cpSync(join(whole, path), join(folder, path));
      else rmSync(join(folder, path));
    }
    changed.clear();
  });

  const original = (path: string): string => readFileSync(join(whole, path), "utf8");
  function write(path: string, content: string | Uint8Array): void {
    changed.add(path);
    writeFileSync(join(folder, path), content);
  }
  function remove(path: string): void {
    changed.add(path);
    rmSync(join(folder, path));
  }

  /** Changes the functions after the built script has put them in place. */
  const alter = (script: string): void => write("functions.js", `${original("functions.js")}\n;${script}`);

  /** What the proof finds in the part that a test is about. */
  const faults = (part: Part, limits: { readonly keptWithin?: number } = {}): Promise<string[]> =>
    faultsIn(folder, origin, browser, { only: [part], ...limits });

  test("finds nothing in a sound one", async () => {
    expect(await faultsOf(await pack(folder), origin, browser)).toEqual([]);
  });

  /** One way to break each part, and how it shows; the tests below break them in other ways. */
  const broken: Readonly<Record<Part, readonly [breaks: () => void, faults: readonly string[]]>> = {
    addresses: [() => write("manifest.xml", manifest("lost.html")), ["lost.html answers 404"]],
    references: [
      () => write("index.html", links('<a href="lost/">')),
      ["index.html leads to lost/, which is not there"],
    ],
    functions: [() => alter("delete associated.WATER;"), ["functions.js lacks WATER"]],
    "Google Sheets": [
      () => write(`google-sheets/${sheetsScript}`, "leaf();"),
      ["the script for Google Sheets does not run: ReferenceError: leaf is not defined"],
    ],
    pane: [
      () => write("pane.js", 'throw new Error("no pane");'),
      ["pane.html does not show its jobs", "pane.html: no pane"],
    ],
    workbook: [() => write("workbook/workbook.js", workbookScript([])), ["the sample shows 0 cells with functions"]],
    phone: [
      () => write("phone/phone.js", 'throw new Error("no jobs");'),
      ["phone/index.html does not show its jobs", "phone/index.html: no jobs"],
    ],
    samples: [() => remove("sample-workbooks/one.xlsx"), ["there are no sample workbooks"]],
    // Last, since the sums are taken of what the others have broken.
    sums: [
      () => {
        writeSums(folder);
        changed.add("SHA256SUMS");
        write("added.txt", "");
      },
      ["added.txt is not what its sum says"],
    ],
  };

  test("tries every part of one archive", async () => {
    for (const [breaks] of Object.values(broken)) breaks();
    const found = await faultsOf(await pack(folder), origin, browser);
    expect(found.toSorted()).toEqual(
      Object.values(broken)
        .flatMap(([, faults]) => faults)
        .toSorted(),
    );
  });

  test("finds every reference of a page that leads nowhere, and lets a reader go elsewhere", async () => {
    const named: readonly (readonly [inside: string, fault?: string])[] = [
      ['<a href="docs/lost.html">', "leads to docs/lost.html, which is not there"],
      [`<a href="${origin}/lost.html">`, "leads to lost.html, which is not there"],
      ['<link rel="stylesheet" href="lost.css">', "leads to lost.css, which is not there"],
      ['<script src="lost.js"></script>', "leads to lost.js, which is not there"],
      ['<img src="lost.png">', "leads to lost.png, which is not there"],
      ['<a href="/pane.html">', "names /pane.html, which leads out of the site"],
      ['<a href="../other/">', "names ../other/, which leads out of the site"],
      [
        '<a href="https://localhost:3000/pane.html">',
        "names https://localhost:3000/pane.html, which is on the computer of the reader",
      ],
      [
        '<script src="https://elsewhere.example/a.js"></script>',
        "names https://elsewhere.example/a.js, which is loaded from elsewhere",
      ],
      ['<a href="https://elsewhere.example/">elsewhere</a>'],
      ['<a href="mailto:a@b.example">write</a>'],
    ];
    write("index.html", links(named.map(([inside]) => inside).join("\n")));
    expect(await faults("references")).toEqual(
      named.flatMap(([, fault]) => (fault === undefined ? [] : [`index.html ${fault}`])),
    );
  });

  test("finds a function that calculates wrong, in one of its checks alone", async () => {
    const { given } = catalogue.find(({ spec }) => spec.id === "WATER")?.page.checks[0] ?? { given: [] };
    alter(`const right = associated.WATER;
      const wanted = ${JSON.stringify(given.map((value) => [[value]]))};
      associated.WATER = (...given) => JSON.stringify(given) === JSON.stringify(wanted) ? [[199]] : right(...given);`);
    const found = await faults("functions");
    expect(found.length).toBeGreaterThan(0);
    for (const fault of found) expect(fault).toMatch(/^=TEA\.WATER\(.*\) gives \[\[199\]\] instead of /);
  });

  test("finds a refusal in other words, and one that is none", async () => {
    alter(`for (const [id, right] of Object.entries(associated)) associated[id] = (...given) => {
        try { return right(...given); } catch ({ code }) { throw new CustomFunctions.Error(code, "no"); }
      };`);
    const inOtherWords = await faults("functions");
    expect(inOtherWords.length).toBeGreaterThan(0);
    for (const fault of inOtherWords) expect(fault).toContain('"message":"no"');
    alter(`for (const [id, right] of Object.entries(associated)) associated[id] = (...given) => {
        try { return right(...given); } catch { return [[0]]; }
      };`);
    expect((await faults("functions")).join()).toContain("gives [[0]] instead of");
  });

  test("finds a function that is missing, in the script and in functions.json", async () => {
    alter("delete associated.WATER;");
    const less = catalogue.filter(({ spec }) => spec.id !== "DRYBASIS");
    write("functions.json", JSON.stringify(functionsJson(less, origin)));
    expect(await faults("functions")).toEqual(["functions.json lacks DRYBASIS", "functions.js lacks WATER"]);
  });

  test("finds a function for Google Sheets that calculates wrong", async () => {
    const script = `google-sheets/${sheetsScript}`;
    write(script, `${original(script)}\nTEA_WATER = () => 199;`);
    const found = await faults("Google Sheets");
    expect(found.length).toBeGreaterThan(0);
    for (const fault of found) expect(fault).toMatch(/^=TEA\.WATER\(.*\) gives \[\[199\]\] in Google Sheets$/);
  });

  test("finds a pane that is not there", async () => {
    remove("pane.html");
    expect(await faults("pane")).toContain("pane.html does not show its jobs");
  });

  test("finds a pane that its own policy stops", async () => {
    const policy = '<meta http-equiv="Content-Security-Policy" content="style-src \'none\'">';
    write("pane.html", sound["pane.html"]?.replace("<main", `${policy}<style>p { color: red }</style><main`) ?? "");
    expect((await faults("pane")).join()).toMatch(/^pane\.html: .*Content Security Policy/);
  });

  test("finds a phone page that nothing keeps on the phone", async () => {
    write("phone/phone.js", `phone.innerHTML = '<p class="jobs">jobs</p>';`);
    // Nobody registers a worker, so none could come later.
    expect(await faults("phone", { keptWithin: 500 })).toEqual([
      "phone/index.html cannot be kept for use without a connection",
    ]);
  });

  test("finds a sample that is no workbook", async () => {
    write("sample-workbooks/one.xlsx", "no workbook");
    expect((await faults("samples")).join()).toMatch(/^sample-workbooks\/one\.xlsx: The file is /);
  });

  test("finds a sample that calculates to an error where it shows a number, and lets stand an error that it shows", async () => {
    const shown = [
      { row: 0, column: 0, formula: "=1/0", value: 4 },
      { row: 1, column: 0, formula: "=1/0", value: "#DIV/0!" },
    ];
    write("sample-workbooks/one.xlsx", await writeWorkbook(sheet(shown)));
    expect(await faults("samples")).toEqual([
      "sample-workbooks/one.xlsx: Lot, row 1, column 1 (=1/0) calculates to #DIV/0!",
    ]);
  });

  test("finds an error in the sample", async () => {
    write("workbook/workbook.js", workbookScript([...sampleCells, { formula: "=TEA.WATER(A1,B1)", value: "#NAME?" }]));
    expect(await faults("workbook")).toEqual(["=TEA.WATER(A1,B1) shows #NAME?"]);
  });

  test("finds a script that fails", async () => {
    write("workbook/workbook.js", `${sound["workbook/workbook.js"]} throw new Error("broken");`);
    expect((await faults("workbook")).join()).toContain("broken");
  });

  test("finds a file that was changed after its sums were taken", async () => {
    write("index.html", `${sound["index.html"]} `);
    expect(await faults("sums")).toEqual(["index.html is not what its sum says"]);
  });
});

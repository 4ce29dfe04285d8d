import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { afterEach, beforeEach, describe, expect, it, test } from "vitest";
import { booksAt } from "../../src/command-line/files-in";
import { stampOf, writeInPlace } from "../../src/command-line/recalc/in-place";
import { optionsIn } from "../../src/command-line/recalc/options";
import { recalculated } from "../../src/command-line/recalc/recalculated";
import { report } from "../../src/command-line/recalc/report";
import { withNamedFunctions } from "../../src/xlsx/named-functions";
import { readWorkbook } from "../../src/xlsx/read-workbook";
import { handwritten } from "../xlsx/handwritten-book";

const sheetText = (bytes: Uint8Array | undefined): string =>
  strFromU8(unzipSync(bytes ?? new Uint8Array())["xl/worksheets/sheet1.xml"] ?? new Uint8Array());

const book = (rows: string, behind = ""): Uint8Array =>
  handwritten({ sheets: { Lot: `<sheetData>${rows}</sheetData>` }, behind });
const cell = (at: string, formula: string, inside = "", attributes = "") =>
  `<c r="${at}"${attributes}><f>${formula}</f>${inside}</c>`;
const asStored = { set: [], keepsChanging: false };

/** 237.25 = 912.5 · (1 − 0.74): what is dry in 912.5 g of leaf at 74 %. */
const lot = book(
  `<row r="1"><c r="A1"><v>912.5</v></c><c r="B1"><v>0.74</v></c>${cell("C1", "_xldudf_TEA_DRYMATTER(A1,B1)", "<v>237.25</v>", ' s="0"')}${cell("D1", "C1*2", "<v>474.5</v>")}${cell("E1", "IF(A1&gt;1000,&quot;large&quot;,&quot;&quot;)", "<v></v>", ' t="str"')}</row>`,
);

describe("a file that is worked out", () => {
  it("stays as it is when every result is what it comes to", async () => {
    const { bytes, sheets } = await recalculated(lot, asStored);
    expect(bytes).toBeUndefined();
    expect(sheets).toEqual([{ name: "Lot", formulas: 3, changed: [], left: [] }]);
  });

  it("gets the results that follow from a changed cell, in their places alone", async () => {
    const { bytes, sheets } = await recalculated(lot, { ...asStored, set: ["A1=1200"] });
    // 1200 · 0.26 = 312.
    const expected = sheetText(lot)
      .replace("912.5", "1200")
      .replace("237.25", "312")
      .replace("474.5", "624")
      .replace("<v></v>", "<v>large</v>");
    expect(sheetText(bytes)).toBe(expected);
    expect(sheets[0]?.changed.map(({ at, stored, now }) => [at, stored, now])).toEqual([
      ["Lot!C1", 237.25, 312],
      ["Lot!D1", 474.5, 624],
      ["Lot!E1", "", "large"],
    ]);
  });

  it("gets those of calls by name, and keeps its names and formulas", async () => {
    const named = withNamedFunctions(lot).bytes;
    expect((await recalculated(named, asStored)).sheets[0]).toMatchObject({ changed: [], left: [] });
    const { bytes = named, sheets } = await recalculated(named, { ...asStored, set: ["A1=1200"] });
    expect(sheets[0]?.changed.map(({ at }) => at)).toEqual(["Lot!C1", "Lot!D1", "Lot!E1"]);
    const formula = '<f t="array" ref="C1">TEA_DRYMATTER(A1,B1)</f>';
    expect(sheetText(bytes)).toContain(`${formula}<v>312</v>`);
    const namesIn = (file: Uint8Array) =>
      /<definedNames>.*<\/definedNames>/s.exec(strFromU8(unzipSync(file)["xl/workbook.xml"] ?? new Uint8Array()))?.[0];
    expect(namesIn(bytes)).toContain("TEA_DRYMATTER");
    expect(namesIn(bytes)).toBe(namesIn(named));
  });

  it.each(["one-lot", "moisture-bench"])(
    "and calls by name, %s, has the results that the add-in gives",
    async (name) => {
      const file = new Uint8Array(readFileSync(`sample-workbooks/without-the-add-in/${name}.xlsx`));
      const { sheets } = await recalculated(file, asStored);
      expect(sheets.reduce((sum, { formulas }) => sum + formulas, 0)).toBeGreaterThan(10);
      expect(sheets.flatMap(({ changed, left }) => [...changed, ...left])).toEqual([]);
    },
  );

  it("gets results that were never stored, and a formula that is set gets its own", async () => {
    const bare = book(`<row r="1"><c r="A1"><v>6</v></c>${cell("B1", "A1*7")}</row>`);
    const { bytes } = await recalculated(bare, { ...asStored, set: ["lot!C1==B1/2", "D1=wet", "E1=12.5%", "F1=TRUE"] });
    const values = readWorkbook(bytes ?? bare).sheets[0]?.cells.map(({ formula, value }) => formula ?? value);
    expect(values).toEqual([6, "=A1*7", "=B1/2", "wet", 0.125, true]);
    expect(sheetText(bytes)).toContain('<c r="C1"><f>B1/2</f><v>21</v></c>');
  });

  it("lets a spill grow and shrink", async () => {
    const spill = book(
      '<row r="1"><c r="A1"><v>2</v></c><c r="B1" cm="1"><f t="array" ref="B1:B2">_xlfn.SEQUENCE(A1)</f><v>1</v></c></row><row r="2"><c r="B2"><v>2</v></c></row>',
    );
    const valuesAfter = async (set: string) => {
      const { bytes } = await recalculated(spill, { ...asStored, set: [set] });
      const cells = readWorkbook(bytes ?? spill).sheets[0]?.cells.filter(({ column }) => column === 1);
      return [cells?.[0]?.spill, cells?.map(({ value }) => value)];
    };
    expect(await valuesAfter("A1=3")).toEqual([{ rows: 3, columns: 1 }, [1, 2, 3]]);
    expect(await valuesAfter("A1=1")).toEqual([{ rows: 1, columns: 1 }, [1]]);
  });
});

describe("what cannot be worked out here keeps its result, and what depends on it goes by that", () => {
  it.each([
    ["a function of another program", "GETPIVOTDATA(A1,A1)", "the function GETPIVOTDATA"],
    ["another workbook", "[1]Past!A1", "another workbook"],
    ["a name that is not there", "usual*2", "the name usual"],
    ["a sheet that is not there", "Shed!A1", "the sheet Shed"],
    ["a table that is not there", "Past[fresh]", "a table column that is not there"],
    [
      "a name that LET introduces twice",
      "_xlfn.LET(_xlpm.x,1,_xlfn.LET(_xlpm.x,2,_xlpm.x))",
      "the name x, which LET introduces twice",
    ],
    ["an answer of several cells where the file has one", "A1:A3", "an answer of several cells where the file has one"],
    ["an error that comes out here alone", "VLOOKUP(99,A1:A1,1,FALSE)", "an error (#N/A) that comes out here alone"],
  ])("%s", async (_, formula, why) => {
    const given = book(
      `<row r="1"><c r="A1"><v>1</v></c>${cell("C1", formula, "<v>20</v>")}${cell("D1", "C1*A1")}</row>`,
    );
    const { bytes, sheets } = await recalculated(given, asStored);
    expect(sheets[0]?.left).toEqual([{ at: "Lot!C1", why }]);
    expect(sheetText(bytes)).toBe(sheetText(given).replace("C1*A1</f>", "C1*A1</f><v>20</v>"));
    // The next program is asked to do what was not done here.
    expect(strFromU8(unzipSync(bytes ?? given)["xl/workbook.xml"] ?? new Uint8Array())).toContain("fullCalcOnLoad");
  });

  it("today's date is left alone when results are checked", async () => {
    const given = book(
      `<row r="1">${cell("A1", "TODAY()", "<v>45387</v>")}${cell("B1", "A1+1", "<v>45388</v>")}</row>`,
    );
    const check = await recalculated(given, { set: [], keepsChanging: true });
    expect(check.sheets[0]?.changed).toEqual([]);
    expect((await recalculated(given, asStored)).sheets[0]?.changed).toHaveLength(2);
  });
});

describe("a file is refused in a sentence", () => {
  it.each([
    ["Shed!A1=2", 'there is no sheet "Shed"'],
    ["A1", '--set must be written as "Lot!B9=820"; got "A1"'],
    ["A1=='", "The formula in Lot!A1 is not complete"],
  ])("for a cell that cannot be set: %s", async (set, sentence) => {
    await expect(recalculated(lot, { ...asStored, set: [set] })).rejects.toThrow(sentence);
  });
});

test("the report says what was done, sheet by sheet", async () => {
  const options = { help: false, paths: [], set: [], out: undefined, check: true, backup: true };
  const stale = book(`<row r="1">${cell("A1", "1+1", "<v>3</v>")}${cell("B1", "usual", "<v>3</v>")}</row>`);
  expect(report("lot.xlsx", await recalculated(stale, asStored), options)).toBe(
    [
      "lot.xlsx: 1 stored value differs of 2 formulas",
      "  Lot: 2 formulas, 1 differs",
      "    Lot!A1 holds 3 and comes to 2",
      "    not worked out because of the name usual: Lot!B1",
    ].join("\n"),
  );
  expect(report("lot.xlsx", await recalculated(lot, asStored), { ...options, check: false })).toMatch(
    /the file stays as it is/,
  );
});

test("options are read, and what cannot be is named", () => {
  expect(optionsIn(["a.xlsx", "--set", "A1=2", "--set", "A2=3", "--out", "b.xlsx"])).toMatchObject({
    paths: ["a.xlsx"],
    set: ["A1=2", "A2=3"],
    out: "b.xlsx",
    check: false,
    backup: true,
  });
  expect(optionsIn(["a.xlsx", "--check", "--out", "b"])).toContain("--check writes nothing");
  expect(optionsIn(["a.xlsx", "--set"])).toContain("--set must be followed by");
  expect(optionsIn(["--tidy", "a.xlsx"])).toContain("got --tidy");
  expect(optionsIn([])).toContain("npm run recalc");
});

describe("files", () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "recalc-"));
  });
  afterEach(() => rmSync(folder, { recursive: true }));
  const path = (name: string) => join(folder, name);
  const text = (name: string) => readFileSync(path(name), "utf8");

  it("are written in the place of the old one, which is kept unless it is not wanted", () => {
    writeFileSync(path("lot.xlsx"), "old");
    writeInPlace(path("lot.xlsx"), new TextEncoder().encode("new"), stampOf(path("lot.xlsx")), true);
    expect([text("lot.xlsx"), text("lot.xlsx.bak")]).toEqual(["new", "old"]);
    writeInPlace(path("lot.xlsx"), new TextEncoder().encode("newer"), stampOf(path("lot.xlsx")), false);
    expect([text("lot.xlsx"), text("lot.xlsx.bak")]).toEqual(["newer", "old"]);
    expect(readdirSync(folder).sort()).toEqual(["lot.xlsx", "lot.xlsx.bak"]);
  });

  it("stay as they are when another program has them open, or changed them meanwhile", () => {
    writeFileSync(path("lot.xlsx"), "old");
    const before = stampOf(path("lot.xlsx"));
    writeFileSync(path("~$lot.xlsx"), "");
    expect(() => writeInPlace(path("lot.xlsx"), new Uint8Array(3), before, true)).toThrow(
      "open in a spreadsheet program",
    );
    rmSync(path("~$lot.xlsx"));
    utimesSync(path("lot.xlsx"), 1, 1);
    expect(() => writeInPlace(path("lot.xlsx"), new Uint8Array(3), before, true)).toThrow("changed by another program");
    expect(text("lot.xlsx")).toBe("old");
    expect(existsSync(path("lot.xlsx.bak"))).toBe(false);
  });

  it("are found in folders, without the marks of open ones", () => {
    mkdirSync(path("2024"));
    for (const name of ["b.xlsx", "a.XLSM", "notes.txt", "~$b.xlsx", "2024/c.xlsx"]) writeFileSync(path(name), "");
    expect(booksAt([folder])).toEqual([path("2024/c.xlsx"), path("a.XLSM"), path("b.xlsx")]);
    expect(booksAt([path("notes.txt")])).toEqual([path("notes.txt")]);
  });
});

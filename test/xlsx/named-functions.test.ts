import { readFileSync } from "node:fs";
import { strFromU8, unzipSync } from "fflate";
import { describe, expect, it, test } from "vitest";
import { sampleBooks } from "../../src/sample-books/sample-books";
import type { Cell, Workbook } from "../../src/workbook/workbook";
import { Archive } from "../../src/xlsx/container/archive";
import { withAddInFunctions, withNamedFunctions } from "../../src/xlsx/named-functions";
import { readFile } from "../../src/xlsx/read-workbook";
import { answersInBook } from "../named-formulas/second-engine";
import { handwritten } from "./handwritten-book";

const files = Object.keys(sampleBooks).map((file) => `sample-workbooks/${file}`);
const read = (path: string): Uint8Array => new Uint8Array(readFileSync(path));
const textIn = (bytes: Uint8Array, path: string): string => strFromU8(unzipSync(bytes)[path] ?? new Uint8Array());
const book = (rows: string, behind = "", names = ""): Uint8Array =>
  handwritten({ sheets: { Lots: `<sheetData>${rows}</sheetData>${behind}` }, behind: names });
const sheetOf = (bytes: Uint8Array): string => textIn(bytes, "xl/worksheets/sheet1.xml");

describe.each(files)("%s", (path) => {
  const before = read(path);
  const named = withNamedFunctions(before);

  test("keeps every part but sheets with such formulas, the list of names and what belongs to it", () => {
    const [old, young] = [new Archive(before), new Archive(named.bytes)];
    for (const { path: part } of old.entries) {
      if (/calcChain/.test(part)) continue;
      const same =
        Buffer.compare(old.content(old.entry(part) as never), young.content(young.entry(part) as never)) === 0;
      const mayChange =
        /^xl\/workbook\.xml$|metadata\.xml$|^\[Content_Types\]|workbook\.xml\.rels$/.test(part) ||
        (/worksheets\/sheet|tables\/table/.test(part) && textIn(before, part).includes("_xldudf_TEA_"));
      if (!mayChange) expect(same, part).toBe(true);
    }
  });

  test("calls by name what has one, and only that, and keeps every value", () => {
    const { workbook } = readFile(named.bytes);
    expect(named.formulas).toBeGreaterThan(0);
    for (const name of named.names) expect(workbook.names?.map((each) => each.name)).toContain(name);
    expect(valuesOf(workbook)).toEqual(valuesOf(readFile(before).workbook));
    const formulas = formulasOf(workbook).join("\n");
    for (const name of named.names.filter((each) => each.startsWith("TEA_"))) expect(formulas).toContain(`${name}(`);
    for (const id of named.left) expect(formulas).toContain(`TEA.${id}(`);
  });

  test("comes back as it was", () => {
    const back = withAddInFunctions(named.bytes);
    // The check book calls some by name from the start.
    const [was, is] = [withAddInFunctions(before).bytes, back.bytes].map((bytes) => readFile(bytes).workbook) as [
      Workbook,
      Workbook,
    ];
    expect(back.names).toEqual([]);
    expect(formulasOf(is)).toEqual(formulasOf(was));
    expect(valuesOf(is)).toEqual(valuesOf(was));
    expect(is.names ?? []).toEqual(was.names ?? []);
  });

  test("is worked out by an engine that has no add-in, to the same values", { timeout: 300_000 }, () => {
    const { workbook } = readFile(named.bytes);
    expect(answersInBook(workbook)).toEqual([]);
  });
});

const formulasOf = ({ sheets }: Workbook): string[] =>
  sheets.flatMap(({ cells }) => cells.flatMap(({ formula }) => formula ?? []));
const valuesOf = ({ sheets }: Workbook): Cell["value"][] =>
  sheets.flatMap(({ cells }) => cells.map(({ value }) => value));

describe("a cell", () => {
  it("may spill once it calls a name, and has its look and its value as before", () => {
    const { bytes } = withNamedFunctions(
      book('<row r="2"><c r="B2" s="3"><f>_xldudf_TEA_OUTTURN(A2,A3)*(A2&lt;9)</f><v>0.2</v></c></row>'),
    );
    expect(sheetOf(bytes)).toContain(
      '<c r="B2" s="3" cm="1"><f t="array" ref="B2">TEA_OUTTURN(A2,A3)*(A2&lt;9)</f><v>0.2</v></c>',
    );
    expect(textIn(bytes, "xl/metadata.xml")).toContain("XLDAPR");
    expect(textIn(bytes, "xl/workbook.xml")).toContain('fullCalcOnLoad="1"');
  });

  it("that shared its formula has its own", () => {
    const rows = `<row r="1"><c r="B1"><f t="shared" ref="B1:B2" si="0">_xldudf_TEA_WATER(A1,0.5)</f><v>1</v></c></row>
<row r="2"><c r="B2"><f t="shared" si="0"/><v>2</v></c></row>`;
    const text = sheetOf(withNamedFunctions(book(rows)).bytes);
    expect(text).toContain('<f t="array" ref="B1">TEA_WATER(A1,0.5)</f>');
    expect(text).toContain('<f t="array" ref="B2">TEA_WATER(A2,0.5)</f>');
    expect(text).not.toContain("shared");
  });

  it("that spills keeps its area, and one of an add-in's function alone keeps all", () => {
    const rows =
      '<row r="1"><c r="B1" cm="1"><f t="array" ref="B1:B2">_xldudf_TEA_CHARGESPLIT(A1,300)</f><v>1</v></c><c r="C1"><f>_xldudf_TEA_LOTFLAGS(A1:A9,B1:B9)</f><v>0</v></c></row>';
    const { bytes, left } = withNamedFunctions(book(rows));
    expect(sheetOf(bytes)).toContain('ref="B1:B2">TEA_CHARGESPLIT(A1,300)</f>');
    expect(sheetOf(bytes)).toContain('<c r="C1"><f>_xldudf_TEA_LOTFLAGS(A1:A9,B1:B9)</f>');
    expect(left).toEqual(["LOTFLAGS"]);
  });

  it.each([
    ["tea_water(A1,0.5)", "_xldudf_TEA_WATER(A1,0.5)"],
    ["TEA_WATER (A1,0.5)", "_xldudf_TEA_WATER(A1,0.5)"],
    ["SUM (TEA_WATER\n(A1,0.5))", "SUM (_xldudf_TEA_WATER(A1,0.5))"],
  ])("in which %j was written calls the add-in's function again", (written, saved) => {
    const lambda =
      '<definedNames><definedName name="TEA_WATER">_xlfn.LAMBDA(_xlpm.x,_xlpm.x)</definedName></definedNames>';
    const named = book(`<row r="1"><c r="B1"><f>${written}</f><v>1</v></c></row>`, "", lambda);
    const { bytes, names } = withAddInFunctions(named);
    expect(sheetOf(bytes)).toContain(`>${saved}</f>`);
    expect(names).toEqual([]);
  });

  it.each(["_xldudf_tea_outturn(A1,A2)", "_xldudf_TEA_OUTTURN (A1,A2)"])(
    "in which %j was written calls the name",
    (written) => {
      const { bytes, left } = withNamedFunctions(book(`<row r="1"><c r="B1"><f>${written}</f><v>1</v></c></row>`));
      expect(sheetOf(bytes)).toContain(">TEA_OUTTURN(A1,A2)</f>");
      expect(left).toEqual([]);
    },
  );

  it("that calls what has no name is told of however it is written", () => {
    const rows = '<row r="1"><c r="B1"><f>_xldudf_tea_lotflags (A1:A9,B1:B9)</f><v>0</v></c></row>';
    expect(withNamedFunctions(book(rows)).left).toEqual(["LOTFLAGS"]);
  });

  it("that says a function in a text keeps it", () => {
    const rows = '<row r="1"><c r="B1"><f>"_xldudf_TEA_WATER("&amp;A1</f><v>1</v></c></row>';
    const before = book(rows);
    expect(withNamedFunctions(before).bytes).toBe(before);
  });
});

describe("names", () => {
  const rows = '<row r="1"><c r="B1"><f>_xldudf_TEA_WATER(A1,0.5)</f><v>1</v></c></row>';
  const name = (text: string, called = "TEA_WATER") =>
    `<definedNames><definedName name="${called}">${text}</definedName></definedNames>`;

  it("of a maker's own stay, and what they call changes", () => {
    const { bytes } = withNamedFunctions(book(rows, "", name("_xldudf_TEA_OUTTURN(Lots!$A$1,2)", "Share")));
    expect(textIn(bytes, "xl/workbook.xml")).toContain('name="Share">TEA_OUTTURN(Lots!$A$1,2)<');
    expect(textIn(bytes, "xl/workbook.xml")).toContain('name="TEA_OUTTURN"');
  });

  it("of an older version are made anew, and those that nothing calls go", () => {
    const old =
      name("_xlfn.LAMBDA(_xlpm.x,_xlpm.x)").replace("</definedNames>", "") +
      '<definedName name="TEA_OUTTURN">_xlfn.LAMBDA(_xlpm.x,_xlpm.x)</definedName></definedNames>';
    const text = textIn(withNamedFunctions(book(rows, "", old)).bytes, "xl/workbook.xml");
    expect(text.match(/name="TEA_WATER"/g)).toHaveLength(1);
    expect(text).not.toContain("_xlfn.LAMBDA(_xlpm.x,_xlpm.x)");
    expect(text).not.toContain('name="TEA_OUTTURN"');
  });

  it("of a maker's that are called like ours are not written over", () => {
    expect(() => withNamedFunctions(book(rows, "", name("Lots!$A$1")))).toThrow("has a name TEA_WATER of its own");
  });

  /** What a sheet holds behind its cells that calls a function, each by itself. */
  const rules: readonly (readonly [what: string, before: string, behind: string])[] = [
    [
      "conditional formatting",
      '<conditionalFormatting sqref="A1:A9"><cfRule type="expression" priority="1"><formula>',
      "&lt;9</formula></cfRule></conditionalFormatting>",
    ],
    [
      "scale of colours",
      '<conditionalFormatting sqref="A1:A9"><cfRule type="colorScale" priority="2"><colorScale><cfvo type="min"/><cfvo type="formula" val="',
      '&amp;&quot;&quot;"/></colorScale></cfRule></conditionalFormatting>',
    ],
    [
      "data validation",
      '<dataValidations><dataValidation sqref="A1"><formula1>1</formula1><formula2>',
      "</formula2></dataValidation></dataValidations>",
    ],
    [
      "later kind of data validation",
      "<extLst><ext><x14:dataValidation><x14:formula1><xm:f>",
      "</xm:f></x14:formula1></x14:dataValidation></ext></extLst>",
    ],
  ];
  const lambda = name("_xlfn.LAMBDA(_xlpm.x,_xlpm.x)", "TEA_OUTTURN");

  it.each(rules)("stay that a %s alone calls", (_, before, behind) => {
    const rule = `${before}TEA_OUTTURN(A1,0.5)${behind}`;
    const { bytes, names } = withNamedFunctions(book(rows, rule, lambda));
    expect(names).toContain("TEA_OUTTURN");
    expect(textIn(bytes, "xl/workbook.xml")).toContain('name="TEA_OUTTURN"');
    expect(sheetOf(bytes)).toContain(rule);
  });

  it.each(rules)("are called in a %s as in a cell", (_, before, behind) => {
    const [named, saved] = ["TEA_OUTTURN", "_xldudf_TEA_OUTTURN"].map((call) => `${before}${call}(A1,0.5)${behind}`);
    const { bytes, names } = withAddInFunctions(book(rows, named, lambda));
    expect(names).toEqual([]);
    expect(sheetOf(bytes)).toContain(saved);
    expect(sheetOf(withNamedFunctions(bytes).bytes)).toContain(named);
  });

  it("come into a file in which they are called already", () => {
    const typed = '<row r="1"><c r="B1" cm="1"><f t="array" ref="B1">TEA_WATER(A1,0.5)</f><v>1</v></c></row>';
    expect(textIn(withNamedFunctions(book(typed)).bytes, "xl/workbook.xml")).toContain('name="TEA_WATER"');
  });
});

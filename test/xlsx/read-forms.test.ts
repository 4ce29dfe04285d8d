import { describe, expect, it, test } from "vitest";
import type { Cell } from "../../src/workbook/workbook";
import { englishNotShown } from "../../src/xlsx/english-remarks";
import { MovableFormula } from "../../src/xlsx/read/shared-formulas";
import { readFile, readWorkbook } from "../../src/xlsx/read-workbook";
import { type Handwritten, handwritten, withRows } from "./handwritten-book";

const cellsOf = (bytes: Uint8Array): readonly Cell[] => readWorkbook(bytes).sheets[0]?.cells ?? [];
const valuesIn = (rows: string, more: Omit<Handwritten, "sheets"> = {}) =>
  cellsOf(withRows(rows, more)).map(({ value }) => value);

describe("a value is what the file says, whatever the cell looks like", () => {
  const dated = { styles: '<cellXfs><xf numFmtId="0"/><xf numFmtId="14"/></cellXfs>' };

  it.each<[string, Cell["value"], string]>([
    ["a text of digits", "0012", '<c r="A1" t="str"><f>"0012"</f><v>0012</v></c>'],
    ["an error under a date format", "#N/A", '<c r="A1" s="1" t="e"><v>#N/A</v></c>'],
    ["a text under a date format", "late", '<c r="A1" s="1" t="str"><v>late</v></c>'],
    ["a number with an exponent", 1e-9, '<c r="A1"><v>1E-9</v></c>'],
    ["a number in spaces", 7, '<c r="A1"><v xml:space="preserve"> 7 </v></c>'],
    ["a truth", true, '<c r="A1" t="b"><v>1</v></c>'],
    ["an inline text", "pan two", '<c r="A1" t="inlineStr"><is><t>pan two</t></is></c>'],
    [
      "an inline text in pieces",
      "pan two",
      '<c r="A1" t="inlineStr"><is><r><t xml:space="preserve">pan </t></r><r><t>two</t></r></is></c>',
    ],
    ["an empty result", "", '<c r="A1" t="str"><f>""</f><v></v></c>'],
    ["a character that XML does not hold", "a\rb_x000D_", '<c r="A1" t="str"><v>a_x000D_b_x005F_x000D_</v></c>'],
    // 5 April 2024 is day 45387: 45292 is 1 January 2024, then 31 + 29 + 31 + 4 days. Six o'clock is a quarter.
    ["a date in words", 45387.25, '<c r="A1" t="d"><v>2024-04-05T06:00:00</v></c>'],
    ["a time in words", 0.75, '<c r="A1" t="d"><v>18:00</v></c>'],
    // The first day of the calendar, and the first after the leap day that never was.
    ["the first day", 1, '<c r="A1" t="d"><v>1900-01-01</v></c>'],
    ["a March day of 1900", 61, '<c r="A1" t="d"><v>1900-03-01</v></c>'],
  ])("%s", (_, value, cell) => {
    expect(valuesIn(`<row r="1">${cell}</row>`, dated)).toEqual([value]);
  });

  it("counts from 1904 where the file says so: that day is 0, and 1,462 less than by the other calendar", () => {
    const before = '<workbookPr date1904="1"/>';
    const rows = '<row r="1"><c t="d"><v>1904-01-01</v></c><c t="d"><v>2024-04-05</v></c></row>';
    expect(valuesIn(rows, { before })).toEqual([0, 45387 - 1462]);
  });

  it("takes shared texts without how they are read aloud", () => {
    const strings = "<si><t>one</t></si><si><r><t>two </t></r><r><t>words</t></r><rPh><t>aloud</t></rPh></si>";
    expect(valuesIn('<row><c t="s"><v>1</v></c><c t="s"><v>0</v></c></row>', { strings })).toEqual([
      "two words",
      "one",
    ]);
  });
});

test("cells and rows without an address stand behind the ones before", () => {
  const rows =
    '<row><c><v>1</v></c><c r="D1"><v>2</v></c><c><v>3</v></c></row><row r="5"><c><v>4</v></c></row><row><c><v>5</v></c></row>';
  expect(cellsOf(withRows(rows)).map(({ row, column, value }) => [row, column, value])).toEqual([
    [0, 0, 1],
    [0, 3, 2],
    [0, 4, 3],
    [4, 0, 4],
    [5, 0, 5],
  ]);
});

test("names with prefixes, and of the strict standard, are read by what they are", () => {
  const strict = "http://purl.oclc.org/ooxml/spreadsheetml/main";
  const sheet = `<?xml version="1.0" encoding="UTF-8"?><x:worksheet xmlns:x="${strict}"><x:sheetData><x:row r="2"><x:c r="B2"><x:f>A1*2</x:f><x:v>4</x:v></x:c></x:row></x:sheetData></x:worksheet>`;
  expect(cellsOf(handwritten({ sheets: { Lots: sheet } }))).toEqual([
    { row: 1, column: 1, formula: "=A1*2", value: 4 },
  ]);
});

describe("formulas", () => {
  const formulasIn = (rows: string) => cellsOf(withRows(rows)).map(({ formula }) => formula);

  it("that are shared move what they refer to, also before the first one comes", () => {
    const share = (at: string, text = "") =>
      `<c r="${at}"><f t="shared" si="3"${text && ' ref="B1:B3"'}>${text}</f><v>0</v></c>`;
    expect(
      formulasIn(
        `<row r="1">${share("B1")}</row><row r="2">${share("B2", "A2*$C$1+Past!A2")}</row><row r="3">${share("B3")}</row>`,
      ),
    ).toEqual(["=A1*$C$1+Past!A1", "=A2*$C$1+Past!A2", "=A3*$C$1+Past!A3"]);
  });

  it.each([
    ["SUM(A1:B$2)+$C3*'It''s ! x'!D4+LOG10(A1)", "SUM(C2:D$2)+$C4*'It''s ! x'!F5+LOG10(C2)"],
    ["A:A+$B:C+3:$4", "C:C+$B:E+4:$4"],
    ["One:Three!A1+[1]Book!B2", "One:Three!C2+[1]Book!D3"],
    ['Lots[[#This Row],[A1]]&"A1"&A1', 'Lots[[#This Row],[A1]]&"A1"&C2'],
    ["OFFSET(A1,1,1):B3", "OFFSET(C2,1,1):D4"],
    ["XFD1048576", "B1"],
  ])("move one row down and two columns to the right: %s", (formula, moved) => {
    expect(new MovableFormula(formula).moved(1, 2)).toBe(moved);
    expect(new MovableFormula(formula).moved(0, 0)).toBe(formula);
  });

  it("that spill say how far, and those of data tables are told of", () => {
    const rows =
      '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A3">_xlfn.SEQUENCE(3)</f><v>1</v></c><c r="C1"><f t="dataTable" ref="C1:C9" r1="A1"/><v>5</v></c></row>';
    const { workbook, notShown } = readFile(withRows(rows));
    expect(workbook.sheets[0]?.cells).toEqual([
      { row: 0, column: 0, formula: "=SEQUENCE(3)", value: 1, spill: { rows: 3, columns: 1 } },
      { row: 0, column: 2, value: 5 },
    ]);
    expect(notShown.map(englishNotShown)).toEqual(["working out of tables of inputs (Lots!C1:C9)"]);
  });

  it("stay under merges and links", () => {
    const book = handwritten({
      sheets: {
        Lots: '<sheetData><row r="1"><c r="A1"><f>1+1</f><v>2</v></c><c r="B1"><f>2+2</f><v>4</v></c></row></sheetData><mergeCells><mergeCell ref="A1:B1"/></mergeCells><hyperlinks><hyperlink ref="A1" r:id="rId1"/><hyperlink ref="B2:B3" location="Lots!A1"/></hyperlinks>',
      },
      ofSheets: { Lots: [["rId1", "hyperlink", "https://farm.example/lots"]] },
    });
    const [sheet] = readWorkbook(book).sheets;
    expect(sheet?.cells.map(({ formula, value }) => [formula, value])).toEqual([
      ["=1+1", 2],
      ["=2+2", 4],
    ]);
    expect(sheet?.links).toEqual([
      { area: { row: 0, column: 0, rows: 1, columns: 1 }, address: "https://farm.example/lots" },
      { area: { row: 1, column: 1, rows: 2, columns: 1 }, place: "Lots!A1" },
    ]);
  });
});

describe("looks", () => {
  const theme =
    '<a:theme xmlns:a="a"><a:themeElements><a:clrScheme><a:dk1><a:sysClr val="windowText" lastClr="000000"/></a:dk1><a:lt1><a:sysClr val="window" lastClr="FFFFFF"/></a:lt1><a:dk2><a:srgbClr val="44546A"/></a:dk2><a:lt2><a:srgbClr val="E7E6E6"/></a:lt2><a:accent1><a:srgbClr val="4472C4"/></a:accent1></a:clrScheme></a:themeElements></a:theme>';
  const styleOf = (font: string, fill: string) => {
    const styles = `<fonts><font><sz val="12"/></font><font>${font}</font></fonts><fills><fill/><fill><patternFill patternType="solid">${fill}</patternFill></fill></fills><cellXfs><xf/><xf fontId="1" fillId="1"/></cellXfs>`;
    const book = withRows('<row><c s="1"/></row>', {
      styles,
      parts: { "xl/theme/theme1.xml": theme },
      relations: { theme: "theme/theme1.xml" },
    });
    return cellsOf(book)[0]?.style;
  };

  it("take colours outright, from the old palette, and from the theme", () => {
    expect(styleOf('<color rgb="FF2E5E4E"/>', '<fgColor indexed="13"/>')).toEqual({
      color: "#2e5e4e",
      fill: "#ffff00",
    });
    expect(styleOf('<color theme="0"/>', '<fgColor theme="4"/>')).toEqual({ color: "#ffffff", fill: "#4472c4" });
  });

  it("lighten and darken a theme's colour by its lightness alone", () => {
    // 4472C4 is hue 218.4°, saturation 0.52, lightness 0.5176; 60 % of the way to white 0.807, three quarters of it 0.388.
    expect(styleOf("", '<fgColor theme="4" tint="0.6"/>')).toEqual({ fill: "#b4c7e7" });
    expect(styleOf("", '<fgColor theme="4" tint="-0.25"/>')).toEqual({ fill: "#2f5597" });
  });

  it("leave the text's and the paper's own colour, and the file's usual size, to the page", () => {
    expect(styleOf('<sz val="12"/><color theme="1"/>', '<fgColor theme="0"/>')).toBeUndefined();
  });
});

describe("names like those that every object has", () => {
  it.each(["__proto__", "constructor", "toString"])("%s is a name for a sheet, a cell's text and cells", (name) => {
    const names = `<definedNames><definedName name="${name}">${name}!$A$1</definedName></definedNames>`;
    const sheet = `<sheetData><row r="1"><c r="A1" t="str"><v>${name}</v></c></row></sheetData>`;
    const { workbook } = readFile(handwritten({ sheets: { [name]: sheet, Lots: "" }, behind: names }));
    expect(workbook.sheets.map((each) => each.name)).toEqual([name, "Lots"]);
    expect(workbook.sheets[0]?.cells[0]?.value).toBe(name);
    expect(workbook.names).toEqual([{ name, formula: `=${name}!$A$1` }]);
  });
});

test("thirty thousand names are read in a moment, those of LAMBDAs among them", () => {
  const many = Array.from(
    { length: 30_000 },
    (_, index) => `<definedName name="n${index}">Lots!$A$${index + 1}</definedName>`,
  );
  const behind = `<definedNames>${many.join("")}<definedName name="half">_xlfn.LAMBDA(_xlpm.x,_xlpm.x/2)</definedName></definedNames>`;
  const { workbook, notShown, notWorkedOut } = readFile(withRows("", { behind }));
  expect(workbook.names).toHaveLength(30_001);
  expect(workbook.names?.at(-1)).toEqual({ name: "half", formula: "=LAMBDA(x,x/2)" });
  expect([notShown, notWorkedOut]).toEqual([[], ["half"]]);
}, 30_000);

test("a part of a kind that nobody knows is named all the same", () => {
  const part = {
    parts: { "xl/steam/steam1.xml": "<x/>" },
    types: { "xl/steam/steam1.xml": "application/x-steam+xml" },
  };
  expect(readFile(withRows("", part)).notShown.map(englishNotShown)).toEqual([
    "parts of the kind application/x-steam+xml",
  ]);
  expect(readFile(withRows("", { parts: { "xl/loose.xml": "<x/>" } })).notShown.map(englishNotShown)).toEqual([
    "the part xl/loose.xml",
  ]);
});

import { strFromU8, unzipSync, zipSync } from "fflate";
import { describe, expect, it, test } from "vitest";
import type { Cell } from "../../src/workbook/workbook";
import { Archive } from "../../src/xlsx/container/archive";
import { rewriteArchive } from "../../src/xlsx/container/rewrite-archive";
import { englishFileRefusal } from "../../src/xlsx/english-refusals";
import { englishSavingRemark } from "../../src/xlsx/english-remarks";
import type { Content, Edit } from "../../src/xlsx/patch/edit";
import { PatchableBook } from "../../src/xlsx/patch/patchable-book";
import { readWorkbook } from "../../src/xlsx/read-workbook";
import { type Handwritten, handwritten, partsOf } from "./handwritten-book";

/** Why the file does not take an edit, in English. */
function refusalIn(book: PatchableBook, edit: Edit): string | undefined {
  const refusal = book.refusal(edit);
  return refusal && englishFileRefusal(refusal);
}

const sheetPath = "xl/worksheets/sheet1.xml";
const textIn = (bytes: Uint8Array, path = sheetPath): string => strFromU8(unzipSync(bytes)[path] ?? new Uint8Array());

/** A place as a cell shows it, on the first sheet unless it says another. */
function at(address: string, content?: Content, style?: Edit["style"]): Edit {
  const [, sheet = "Lots", letter = "", digits = ""] = /^(?:(\w+)!)?([A-Z])(\d+)$/.exec(address) ?? [];
  const place = { sheet, row: Number(digits) - 1, column: letter.charCodeAt(0) - 65 };
  return { ...place, ...(content && { content }), ...(style && { style }) };
}
const constant = (value: number | string | boolean): Content => ({ is: "constant", value });
const formula = (text: string, value?: Cell["value"]): Content => ({ is: "formula", formula: text, value });

/** The rows of the first sheet after the edits; what stands around them must not move. */
function rowsAfter(rows: string, edits: readonly Edit[], around = ["", ""]): string {
  const [before = "", behind = ""] = around;
  const bytes = handwritten({ sheets: { Lots: `${before}<sheetData>${rows}</sheetData>${behind}` } });
  const text = textIn(new PatchableBook(bytes).saved(edits));
  const start = text.indexOf("<sheetData>") + "<sheetData>".length;
  const end = text.indexOf("</sheetData>");
  expect(text.slice(0, start)).toBe(textIn(bytes).slice(0, start));
  expect(text.slice(end)).toMatch(/<\/sheetData>/);
  expect(text.slice(end)).toBe(textIn(bytes).slice(textIn(bytes).indexOf("</sheetData>")));
  return text.slice(start, end);
}

describe("of a sheet, the text of the changed cells alone is another", () => {
  const row = '<row r="1" spans="1:3"  ht="20"><c r="A1" s="4"><v>1</v></c> <c r="C1" t="s"><v>0</v></c></row>';

  it.each<[string, Edit, string]>([
    ["a number", at("A1", constant(2.5)), row.replace("<v>1</v>", "<v>2.5</v>")],
    ["a tiny number", at("A1", constant(1e-9)), row.replace("<v>1</v>", "<v>1e-9</v>")],
    ["a truth", at("A1", constant(true)), row.replace('s="4"><v>1', 's="4" t="b"><v>1')],
    ["an error", at("A1", constant("#N/A")), row.replace('s="4"><v>1', 's="4" t="e"><v>#N/A')],
    [
      "a text, inline",
      at("A1", constant(" pan <2> & more")),
      row.replace(
        's="4"><v>1</v>',
        's="4" t="inlineStr"><is><t xml:space="preserve"> pan &lt;2&gt; &amp; more</t></is>',
      ),
    ],
    [
      "a text that reads like an error",
      at("A1", { is: "constant", value: "#N/A", isText: true }),
      row.replace('s="4"><v>1</v>', 's="4" t="inlineStr"><is><t>#N/A</t></is>'),
    ],
    [
      "a character that XML does not hold",
      at("A1", constant("a\u0001_x0041_")),
      row.replace('s="4"><v>1</v>', 's="4" t="inlineStr"><is><t>a_x0001__x005F_x0041_</t></is>'),
    ],
    ["nothing", at("A1", { is: "blank" }), row.replace('<c r="A1" s="4"><v>1</v></c>', '<c r="A1" s="4"/>')],
    ["over a shared text", at("C1", constant(7)), row.replace('<c r="C1" t="s"><v>0</v>', '<c r="C1"><v>7</v>')],
    ["between two cells", at("B1", constant(7)), row.replace('<c r="C1"', '<c r="B1"><v>7</v></c><c r="C1"')],
    ["behind the last", at("D1", constant(7)), row.replace("</row>", '<c r="D1"><v>7</v></c></row>')],
    ["in a row below", at("B3", constant(7)), `${row}<row r="3"><c r="B3"><v>7</v></c></row>`],
    [
      "a formula",
      at("A1", formula("=TEA.DRYMATTER(C1,0.75)&XOR(1)", "12<")),
      row.replace(
        's="4"><v>1</v>',
        's="4" t="str"><f>_xldudf_TEA_DRYMATTER(C1,0.75)&amp;_xlfn.XOR(1)</f><v>12&lt;</v>',
      ),
    ],
  ])("%s", (_, edit, rows) => {
    expect(rowsAfter(row, [edit])).toBe(rows);
  });

  it("a row between two others, in their order, and an empty row that opens", () => {
    const rows = '<row r="2"/><row r="9"><c r="A9"><v>9</v></c></row>';
    const edits = [at("B5", constant(5)), at("A2", constant(2)), at("A4", constant(4)), at("A5", constant(1))];
    expect(rowsAfter(rows, edits)).toBe(
      '<row r="2"><c r="A2"><v>2</v></c></row><row r="4"><c r="A4"><v>4</v></c></row><row r="5"><c r="A5"><v>1</v></c><c r="B5"><v>5</v></c></row><row r="9"><c r="A9"><v>9</v></c></row>',
    );
  });

  it("a new cell looks as its row does, or its column", () => {
    const cols = '<cols><col min="2" max="3" width="9" style="6"/></cols>';
    const rows = '<row r="1" s="5" customFormat="1"/><row r="2"/>';
    expect(rowsAfter(rows, [at("B1", constant(1)), at("B2", constant(2)), at("D2", constant(3))], [cols])).toBe(
      '<row r="1" s="5" customFormat="1"><c r="B1" s="5"><v>1</v></c></row><row r="2"><c r="B2" s="6"><v>2</v></c><c r="D2"><v>3</v></c></row>',
    );
  });

  it("cells without an address keep to their places", () => {
    const rows = "<row><c><v>1</v></c><c><v>2</v></c></row><row><c><v>3</v></c></row>";
    const edits = [at("B1", constant(7)), at("D1", constant(8)), at("B2", constant(9))];
    expect(rowsAfter(rows, edits)).toBe(
      '<row><c><v>1</v></c><c><v>7</v></c><c r="D1"><v>8</v></c></row><row><c><v>3</v></c><c r="B2"><v>9</v></c></row>',
    );
  });

  it("the names of elements have the prefix of the others, and a sheet without cells gets its first", () => {
    const whole = (data: string) =>
      `<?xml version="1.0" encoding="UTF-8"?>\r\n<x:worksheet xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><!-- <x:row/> -->${data}</x:worksheet>`;
    const bytes = handwritten({ sheets: { Lots: whole("<x:sheetData />") } });
    expect(textIn(new PatchableBook(bytes).saved([at("B2", constant("ü"))]))).toBe(
      whole(
        '<x:sheetData><x:row r="2"><x:c r="B2" t="inlineStr"><x:is><x:t>ü</x:t></x:is></x:c></x:row></x:sheetData>',
      ),
    );
  });

  it("the dimension grows with what is new", () => {
    const bytes = handwritten({ sheets: { Lots: '<dimension ref="B2:C3"/><sheetData/>' } });
    const text = textIn(new PatchableBook(bytes).saved([at("E1", constant(1))]));
    expect(text).toContain('<dimension ref="B1:E3"/>');
  });
});

describe("results", () => {
  const result = (value: Cell["value"]): Content => ({ is: "result", value });
  const cell = '<c r="A1" s="2" t="str" cm="1"><f t="shared" ref="A1:A2" si="0">1+1</f><v>two</v><extLst/></c>';

  it("take the place of the value and its kind, and of nothing else", () => {
    const rows = `<row r="1">${cell}</row>`;
    expect(rowsAfter(rows, [at("A1", result(2))])).toBe(rows.replace(' t="str"', "").replace("two", "2"));
    expect(rowsAfter(rows, [at("A1", result("#CALC!"))])).toBe(rows.replace('"str"', '"e"').replace("two", "#CALC!"));
    expect(rowsAfter(rows, [at("A1", result(undefined))])).toBe(rows.replace(' t="str"', "").replace("<v>two</v>", ""));
  });

  it("come where there was none, and let a spill grow", () => {
    const rows =
      '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A2">SEQUENCE(C1)</f></c></row><row r="2"><c r="A2"><v>2</v></c></row>';
    const grown = [at("A1", { is: "result", value: 1, spill: { rows: 3, columns: 1 } }), at("A3", result(3))];
    expect(rowsAfter(rows, grown)).toBe(
      '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A3">SEQUENCE(C1)</f><v>1</v></c></row><row r="2"><c r="A2"><v>2</v></c></row><row r="3"><c r="A3"><v>3</v></c></row>',
    );
  });
});

describe("formulas that share a text", () => {
  const share = (cell: string, text = "") =>
    `<c r="${cell}"><f t="shared"${text && ' ref="B1:B3"'} si="0">${text}</f><v>0</v></c>`;
  const rows = `<row r="1">${share("B1", "A1&amp;$C$1")}</row><row r="2">${share("B2")}</row><row r="3">${share("B3")}</row>`;

  it("get theirs written out when the first is typed over", () => {
    expect(rowsAfter(rows, [at("B1", constant(5)), at("B3", constant(6))])).toBe(
      '<row r="1"><c r="B1"><v>5</v></c></row><row r="2"><c r="B2"><f>A2&amp;$C$1</f><v>0</v></c></row><row r="3"><c r="B3"><v>6</v></c></row>',
    );
  });

  it("stay as they are when another is typed over, or a result changes", () => {
    expect(rowsAfter(rows, [at("B2", constant(5))])).toBe(rows.replace(share("B2"), '<c r="B2"><v>5</v></c>'));
    expect(rowsAfter(rows, [at("B1", { is: "result", value: 4 })])).toBe(rows.replace("<v>0</v>", "<v>4</v>"));
  });
});

describe("what cannot be changed alone is refused in a sentence, and nothing is saved", () => {
  const book = new PatchableBook(
    handwritten({
      sheets: {
        Lots: '<sheetData><row r="1"><c r="A1"><f t="array" ref="A1:A2">B1:B2*2</f><v>1</v></c><c r="C1" cm="1"><f t="array" ref="C1:C3">SEQUENCE(3)</f><v>1</v></c><c r="E1"><f t="dataTable" ref="E1:E4"/><v>1</v></c><c r="F1"><f t="array" ref="F1">SUM(B1:B2*2)</f><v>1</v></c></row></sheetData><mergeCells><mergeCell ref="H1:I2"/></mergeCells><tableParts><tablePart r:id="rId1"/></tableParts>',
      },
      ofSheets: {
        Lots: [
          ["rId1", "table", "../tables/table1.xml"],
          ["rId2", "pivotTable", "../pivotTables/pivotTable1.xml"],
        ],
      },
      parts: {
        "xl/tables/table1.xml": '<table displayName="Past" ref="A10:B13" totalsRowCount="1"/>',
        "xl/pivotTables/pivotTable1.xml": '<pivotTableDefinition><location ref="D10:E12"/></pivotTableDefinition>',
      },
    }),
  );

  it.each<[string, string]>([
    ["A1", "Lots!A1 belongs to the array formula in A1, which is changed as a whole"],
    ["A2", "Lots!A2 belongs to the array formula in A1"],
    ["C2", "Lots!C2 is filled by the formula in C1: change that one."],
    ["E1", "Lots!E1 belongs to a table of inputs"],
    ["E4", "Lots!E4 belongs to a table of inputs"],
    ["I1", "Lots!I1 lies under merged cells: change H1, the first of them."],
    ["A10", "Lots!A10 is a heading of the table Past"],
    ["B13", "Lots!B13 is a total of the table Past"],
    ["E12", "Lots!E12 belongs to a pivot table"],
    ["Shed!A1", "The file has no sheet Shed of cells."],
  ])("%s", (address, sentence) => {
    const edit = at(address, constant(1));
    expect(refusalIn(book, edit)).toContain(sentence);
    expect(() => book.saved([at("B20", constant(1)), edit])).toThrow(sentence);
  });

  it.each(["C1", "F1", "H1", "A11", "A14"])("%s may be changed", (address) => {
    expect(book.refusal(at(address, constant(1)))).toBeUndefined();
  });

  it.each<[string, string | undefined]>([
    ["=SUM(A1", "is not complete"],
    ["=Shed!A1", "names the sheet Shed, which the file does not have"],
    ["=Past[aired]", "names Past[aired], which no table of the file has"],
    ["=[Book.xlsx]Lots!A1", "names another workbook"],
    ["=@A1:A9", "has a @"],
    [`=${"1+".repeat(4096)}1`, "is longer than 8,192 characters"],
    ["=LET(x,lots!A1,x*2)", undefined],
  ])("a formula that a file cannot hold: %#", (text, words) => {
    const refusal = refusalIn(book, at("B20", formula(text)));
    if (words === undefined) expect(refusal).toBeUndefined();
    else expect(refusal).toContain(words);
  });

  it("a text that is longer than a cell holds", () => {
    expect(refusalIn(book, at("B20", constant("x".repeat(32_768))))).toContain("32,768 characters");
  });

  it("the cells of a spill are blank when its formula is typed over", () => {
    const rows =
      '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A2">SEQUENCE(2)</f><v>1</v></c></row><row r="2"><c r="A2" s="3"><v>2</v></c></row>';
    expect(rowsAfter(rows, [at("A1", constant(9))])).toBe(
      '<row r="1"><c r="A1"><v>9</v></c></row><row r="2"><c r="A2" s="3"/></row>',
    );
  });
});

describe("a formula inside a table", () => {
  const book: Handwritten = {
    sheets: {
      Lots: '<sheetData><row r="1"><c r="A1" t="str"><v>fresh</v></c><c r="B1" t="str"><v>made</v></c></row><row r="2"><c r="A2"><v>800</v></c></row></sheetData>',
    },
    ofSheets: { Lots: [["rId1", "table", "../tables/table1.xml"]] },
    parts: { "xl/tables/table1.xml": '<table displayName="Past" ref="A1:B3"/>' },
  };

  it("may leave out the table's name, and write @ for its row: the file has both in full", () => {
    const saved = new PatchableBook(handwritten(book)).saved([at("B2", formula("=[@fresh]*2", 1600))]);
    expect(textIn(saved)).toContain("<f>Past[[#This Row],[fresh]]*2</f>");
  });
});

describe("parts that follow", () => {
  const calcChain = {
    relations: { calcChain: "calcChain.xml" },
    parts: { "xl/calcChain.xml": "<calcChain/>", "docProps/notes.txt": "left alone" },
    types: { "xl/calcChain.xml": "application/vnd.openxmlformats-officedocument.spreadsheetml.calcChain+xml" },
  };
  const withChain = handwritten({
    sheets: { Lots: '<sheetData><row r="1"><c r="A1"><f>1+1</f><v>2</v></c><c r="B1"><v>2</v></c></row></sheetData>' },
    ...calcChain,
  });
  const saved = (bytes: Uint8Array, ...edits: Edit[]) => new PatchableBook(bytes).saved(edits);

  it("the order of calculation goes when a formula comes or goes, with what names it, and stays otherwise", () => {
    for (const edit of [at("A1", constant(1)), at("B1", formula("=2", 2)), at("D9", formula("=2", 2))]) {
      const after = saved(withChain, edit);
      expect(new Archive(after).entry("xl/calcChain.xml")).toBeUndefined();
      expect(textIn(after, "[Content_Types].xml")).not.toContain("calcChain");
      expect(textIn(after, "xl/_rels/workbook.xml.rels")).not.toContain("calcChain");
    }
    for (const edit of [at("A1", formula("=3", 3)), at("A1", { is: "result", value: 4 }), at("B1", constant(4))]) {
      expect(new Archive(saved(withChain, edit)).entry("xl/calcChain.xml")).toBeDefined();
    }
  });

  it("the list for spills comes with the first one, and is used by the next", () => {
    const spill = (address: string): Edit =>
      at(address, { is: "formula", formula: "=SEQUENCE(2)", value: 1, spill: { rows: 2, columns: 1 } });
    const once = saved(withChain, spill("D1"), at("D2", { is: "result", value: 2 }));
    expect(textIn(once)).toContain('<c r="D1" cm="1"><f t="array" ref="D1:D2">_xlfn.SEQUENCE(2)</f><v>1</v></c>');
    expect(textIn(once, "xl/metadata.xml")).toMatch(
      /name="XLDAPR".*<cellMetadata count="1"><bk><rc t="1" v="0"\/><\/bk>/,
    );
    expect(textIn(once, "[Content_Types].xml")).toContain('PartName="/xl/metadata.xml"');
    const twice = saved(once, spill("F1"));
    expect(textIn(twice, "xl/metadata.xml")).toBe(textIn(once, "xl/metadata.xml"));
    expect(readWorkbook(twice).sheets[0]?.cells.find(({ column }) => column === 5)?.spill).toEqual({
      rows: 2,
      columns: 1,
    });
  });

  it("the list for spills comes into a part that had others", () => {
    const metadata =
      '<metadata xmlns="x"><metadataTypes count="1"><metadataType name="XLRICHVALUE"/></metadataTypes><futureMetadata name="XLRICHVALUE" count="1"><bk/></futureMetadata><valueMetadata count="1"><bk><rc t="1" v="0"/></bk></valueMetadata></metadata>';
    const book = handwritten({
      sheets: { Lots: "<sheetData/>" },
      relations: { sheetMetadata: "metadata.xml" },
      parts: { "xl/metadata.xml": metadata },
    });
    const edit = at("A1", { is: "formula", formula: "=SEQUENCE(2)", value: 1, spill: { rows: 2, columns: 1 } });
    const text = textIn(saved(book, edit), "xl/metadata.xml");
    expect(text).toMatch(
      /<metadataTypes count="2"><metadataType name="XLRICHVALUE"\/><metadataType name="XLDAPR".*<\/metadataTypes><futureMetadata name="XLRICHVALUE".*<futureMetadata name="XLDAPR".*<cellMetadata count="1"><bk><rc t="2" v="0"\/><\/bk><\/cellMetadata><valueMetadata/,
    );
  });

  it("the workbook asks for calculation only where it must, and keeps its other settings", () => {
    const plain = { sheets: { Lots: "<sheetData/>" } };
    const bookText = (bytes: Uint8Array) =>
      textIn(new PatchableBook(bytes).saved([], { asksForCalculation: true }), "xl/workbook.xml");
    expect(bookText(handwritten(plain))).toContain('</sheets><calcPr fullCalcOnLoad="1"/></workbook>');
    expect(bookText(handwritten({ ...plain, behind: '<calcPr calcId="1"/>' }))).toContain(
      '<calcPr calcId="1" fullCalcOnLoad="1"/>',
    );
    expect(textIn(saved(handwritten(plain), at("A1", constant(1))), "xl/workbook.xml")).not.toContain("calcPr");
  });
});

describe("looks", () => {
  const styles =
    '<numFmts count="1"><numFmt numFmtId="164" formatCode="0.000"/></numFmts><fonts count="2"><font><sz val="11"/><name val="Arial"/></font><font><u/><sz val="12"/><name val="Arial"/></font></fonts> <fills count="2"><fill><patternFill/></fill><fill/></fills><borders count="1"><border/></borders><cellXfs count="3"><xf numFmtId="0"/> <xf numFmtId="164" fontId="1" xfId="0"><protection locked="0"/></xf><xf numFmtId="2"/></cellXfs><cellStyles/>';
  const book = handwritten({
    sheets: { Lots: '<sheetData><row r="1"><c r="A1" s="1"><v>1</v></c><c r="B1"><v>2</v></c></row></sheetData>' },
    styles,
  });
  const lookOf = (bytes: Uint8Array, column: number) =>
    readWorkbook(bytes).sheets[0]?.cells.find((cell) => cell.column === column)?.style;

  it("that the file does not have come behind those that it has, and nothing is renumbered", () => {
    const wanted = {
      format: "0.0%",
      size: 12,
      bold: true,
      color: "#2e5e4e",
      fill: "#e8f0e4",
      align: "right",
      wrap: true,
      border: "thin",
    } as const;
    const after = new PatchableBook(book).saved([at("A1", undefined, wanted)]);
    const text = textIn(after, "xl/styles.xml");
    expect(lookOf(after, 0)).toEqual(wanted);
    expect(textIn(after)).toContain('<c r="A1" s="3"><v>1</v></c><c r="B1"><v>2</v></c>');
    // What the look was based on stays in it: the line under the letters, the size, and what may be typed.
    expect(text).toContain('<font><b/><u/><sz val="12"/><color rgb="FF2E5E4E"/><name val="Arial"/></font>');
    expect(text).toContain('<protection locked="0"/></xf></cellXfs>');
    const kept = text
      .replace(
        /<numFmt numFmtId="165".*?\/>|<font><b\/>.*?<\/font>|<fill><patternFill patternType="solid">.*?<\/fill>/g,
        "",
      )
      .replace(/<border><left.*?<\/border>|<xf numFmtId="165".*?<\/xf>/g, "")
      .replace(/count="\d+"/g, "");
    expect(kept).toContain(styles.replace(/count="\d+"/g, ""));
  });

  it("that the file has are named, and one look comes once", () => {
    const percent = { format: "0.00" } as const;
    const after = new PatchableBook(book).saved([at("B1", constant(3), percent), at("C1", undefined, percent)]);
    expect(lookOf(after, 1)).toEqual(percent);
    expect(lookOf(after, 2)).toEqual(percent);
    expect(textIn(after, "xl/styles.xml").match(/<xf /g)).toHaveLength(4);
  });

  it("come with their part where a file has none", () => {
    const plain = handwritten({ sheets: { Lots: "<sheetData/>" } });
    const after = new PatchableBook(plain).saved([at("A1", constant(0.5), { format: "0%", bold: true })]);
    expect(lookOf(after, 0)).toEqual({ format: "0%", bold: true });
  });
});

describe("the archive", () => {
  const contents = partsOf({ sheets: { Lots: "<sheetData/>" } });
  const change = (bytes: Uint8Array, changes: [string, Uint8Array | undefined][]) =>
    rewriteArchive(new Archive(bytes), { contents: new Map(changes) });
  const zipped = zipSync(contents, { mtime: "2020-01-01", comment: "from the shed" } as never);
  const raw = (bytes: Uint8Array, path: string) => {
    const { localAt, dataAt, packedSize } = new Archive(bytes).entry(path) ?? { localAt: 0, dataAt: 0, packedSize: 0 };
    return bytes.slice(localAt, dataAt + packedSize);
  };

  it("without a change has the same bytes", () => {
    expect(change(zipped, [])).toEqual(zipped);
    expect(new PatchableBook(zipped).saved([])).toEqual(zipped);
  });

  it("keeps every other entry, its header and the order, whether parts grow, go or come", () => {
    const longer = new TextEncoder().encode("<worksheet>".padEnd(5000, "x"));
    const after = change(zipped, [
      [sheetPath, longer],
      ["_rels/.rels", undefined],
      ["xl/new.xml", longer],
    ]);
    const unpacked = unzipSync(after);
    expect(Object.keys(unpacked)).toEqual([
      ...Object.keys(contents).filter((path) => path !== "_rels/.rels"),
      "xl/new.xml",
    ]);
    expect(unpacked[sheetPath]).toEqual(longer);
    expect(unpacked["xl/new.xml"]).toEqual(longer);
    for (const path of ["[Content_Types].xml", "xl/workbook.xml", "xl/_rels/workbook.xml.rels"]) {
      expect(raw(after, path)).toEqual(raw(zipped, path));
    }
  });

  it("leaves the bytes that it was given alone, Node's own kind as well", () => {
    const given = Buffer.from(zipped);
    change(given, [[sheetPath, new Uint8Array(9)]]);
    expect(new Uint8Array(given)).toEqual(zipped);
  });
});

test("what will be out of date is said before saving", () => {
  const warnings = (types: Record<string, string>) =>
    new PatchableBook(
      handwritten({
        sheets: { Lots: "" },
        types,
        parts: Object.fromEntries(Object.keys(types).map((path) => [path, "<x/>"])),
      }),
    ).warnings();
  expect(warnings({})).toEqual([]);
  expect(
    warnings({
      "xl/charts/chart1.xml": "application/vnd.openxmlformats-officedocument.drawingml.chart+xml",
      "xl/pivotTables/pivotTable1.xml": "application/vnd.openxmlformats-officedocument.spreadsheetml.pivotTable+xml",
      "_xmlsignatures/sig1.xml": "application/vnd.openxmlformats-package.digital-signature-xmlsignature+xml",
    }).map((remark) => englishSavingRemark(remark).split(":")[0]),
  ).toEqual(["The file is signed", "The file has charts", "The file has pivot tables"]);
});

import { strToU8, zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { checksumOf } from "../../src/xlsx/container/checksum";
import { directoryEnd, viewOf } from "../../src/xlsx/container/records";
import { englishNotShown } from "../../src/xlsx/english-remarks";
import { mostCells } from "../../src/xlsx/read/limits";
import { readFile } from "../../src/xlsx/read-workbook";
import { Refusal } from "../../src/xlsx/refusal";
import { handwritten, partsOf, withRows } from "./handwritten-book";

/** The sentence with which the bytes are refused. */
function refusalOf(bytes: Uint8Array): string {
  try {
    readFile(bytes);
  } catch (problem) {
    if (problem instanceof Refusal) return problem.message;
    throw problem;
  }
  return "opened";
}

const plain = { sheets: { Lots: '<sheetData><row r="1"><c r="A1"><v>1</v></c></row></sheetData>' } };
const zipped = (parts: Record<string, Uint8Array>) => zipSync(parts, { mtime: "2020-01-01" });

describe("a file that is no .xlsx is refused by name", () => {
  const compound = (name: string) =>
    new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, ...[...name].flatMap((x) => [x.charCodeAt(0), 0])]);

  test.each([
    ["The file is empty", new Uint8Array()],
    ["The file is locked with a password", compound("EncryptedPackage")],
    ["The file is an old .xls workbook", compound("Workbook")],
    ["The file is not an .xlsx workbook", strToU8("lot;fresh\na;800")],
    ["The file is an OpenDocument file", zipped({ mimetype: strToU8("x"), "META-INF/manifest.xml": strToU8("<x/>") })],
    ["The file is a binary .xlsb workbook", zipped({ "xl/workbook.bin": new Uint8Array(3) })],
    ["The file is a text or a presentation", zipped({ "word/document.xml": strToU8("<x/>") })],
    ["The file is an archive, but not an .xlsx workbook", zipped({ "a.txt": strToU8("tea") })],
  ])("%s", (sentence, bytes) => {
    expect(refusalOf(bytes)).toMatch(new RegExp(`^${sentence}.*\\.$`));
  });

  test("with macros alone, or without a sheet of cells", () => {
    const parts = partsOf(plain);
    const relations = new TextDecoder().decode(parts["xl/_rels/workbook.xml.rels"]);
    const as = (kind: string) =>
      zipped({ ...parts, "xl/_rels/workbook.xml.rels": strToU8(relations.replace(/\/worksheet"/, `/${kind}"`)) });
    expect(refusalOf(as("xlMacrosheet"))).toContain("macros alone");
    expect(refusalOf(as("chartsheet"))).toContain("no sheet of cells");
  });
});

describe("an archive is refused before anything is unpacked", () => {
  /** Changes what the directory says of the entry at a place, counted from 0. */
  function withDirectory(bytes: Uint8Array, change: (view: DataView, at: number) => void, index = 0): Uint8Array {
    const changed = bytes.slice();
    const view = viewOf(changed);
    let at = directoryEnd(changed)?.start ?? 0;
    for (let entry = 0; entry < index; entry += 1)
      at += 46 + view.getUint16(at + 28, true) + view.getUint16(at + 30, true);
    change(view, at);
    return changed;
  }
  const book = handwritten(plain);

  test("when it declares more than 256 MB", () => {
    const bytes = withDirectory(book, (view, at) => view.setUint32(at + 24, 300 * 1024 * 1024, true));
    expect(refusalOf(bytes)).toContain("301 MB when it is unpacked, and 256 MB are read at most");
  });

  test("when its end, or a part, is cut off", () => {
    expect(refusalOf(book.subarray(0, book.length - 30))).toContain("its end is missing");
    const bytes = withDirectory(book, (view, at) => view.setUint32(at + 20, book.length, true));
    expect(refusalOf(bytes)).toContain("is cut off");
  });

  test("when two entries share a name, in whatever capitals", () => {
    expect(refusalOf(zipped({ ...partsOf(plain), "XL/Workbook.xml": strToU8("<x/>") }))).toContain("two parts named");
  });

  test("when entries lie over each other", () => {
    const first = viewOf(book).getUint32((directoryEnd(book)?.start ?? 0) + 42, true);
    const bytes = withDirectory(book, (view, at) => view.setUint32(at + 42, first, true), 1);
    expect(refusalOf(bytes)).toContain("lies over what follows it");
  });

  test.each(["../outside.xml", "xl/../../outside.xml", "..\\outside.xml"])("when a name climbs out: %s", (name) => {
    expect(refusalOf(zipped({ ...partsOf(plain), [name]: strToU8("<x/>") }))).toContain("leads out of it");
  });

  test("when a part is locked or packed in a strange way", () => {
    expect(refusalOf(withDirectory(book, (view, at) => view.setUint16(at + 8, 1, true)))).toContain("password");
    expect(refusalOf(withDirectory(book, (view, at) => view.setUint16(at + 10, 99, true)))).toContain("method 99");
  });
});

describe("a part is refused when it is unpacked", () => {
  const parts = partsOf(plain);
  const book = zipped(parts);
  const changedSize = (change: number) => {
    const bytes = book.slice();
    const view = viewOf(bytes);
    const at = directoryEnd(bytes)?.start ?? 0;
    view.setUint32(at + 24, view.getUint32(at + 24, true) + change, true);
    return bytes;
  };

  test("if it holds more or less than it declares, or something else", () => {
    expect(refusalOf(changedSize(-1))).toContain("holds more than it declares");
    expect(refusalOf(changedSize(1))).toContain("holds less than it declares");
    const stored = zipSync(parts, { level: 0, mtime: "2020-01-01" });
    const at = new TextDecoder("latin1").decode(stored).indexOf("<v>1</v>");
    const touched = stored.slice();
    touched[at + 3] = "2".charCodeAt(0);
    expect(refusalOf(touched)).toContain("xl/worksheets/sheet1.xml is not what was written");
  });

  const withSheet = (text: string | Uint8Array) =>
    zipped({ ...parts, "xl/worksheets/sheet1.xml": typeof text === "string" ? strToU8(text) : text });
  const utf16 = (text: string) => new Uint8Array([0xff, 0xfe, ...[...text].flatMap((x) => [x.charCodeAt(0), 0])]);

  test.each([
    ["declares a document type", '<!DOCTYPE x [<!ENTITY a "tea">]><worksheet>&a;</worksheet>'],
    ["is written in UTF-16", utf16("<worksheet/>")],
    ["is written in ISO-8859-1", '<?xml version="1.0" encoding="ISO-8859-1"?><worksheet/>'],
    ["is not well-formed XML", "<worksheet><sheetData></worksheet>"],
    ["is not well-formed XML", new Uint8Array([...strToU8("<worksheet>"), 0xff, ...strToU8("</worksheet>")])],
    ["nested more than 256 deep", `<worksheet>${"<x>".repeat(300)}${"</x>".repeat(300)}</worksheet>`],
    ["a text longer than a million characters", `<worksheet>${"x".repeat(1_200_000)}</worksheet>`],
  ])("if it %s", (words, text) => {
    expect(refusalOf(withSheet(text))).toContain(words);
  });
});

describe("cells are refused", () => {
  test("when there are more than a million, in all sheets together", () => {
    const row = (cells: number) => `<row>${"<c/>".repeat(cells)}</row>`;
    const sheet = (rows: number, cells: number) => `<sheetData>${row(cells).repeat(rows)}</sheetData>`;
    const sheets = { one: sheet(100, 9_999), two: sheet(1, mostCells - 999_900) };
    expect(refusalOf(handwritten({ sheets }))).toBe("opened");
    expect(refusalOf(handwritten({ sheets: { ...sheets, three: sheet(1, 1) } }))).toContain(
      "more than a million cells",
    );
  }, 60_000);

  test.each([
    ['<row r="1048577"/>', "row 1048577, which lies outside a sheet"],
    ['<row r="1"><c r="XFE1"/></row>', "XFE1, which lies outside a sheet"],
    ['<row r="1"><c r="A99999999"/></row>', "A99999999, which lies outside a sheet"],
    ['<row r="1"><c r="tea"/></row>', "tea, which lies outside a sheet"],
    [`<row r="1"><c r="A1"><f>${"1+".repeat(4096)}1</f></c></row>`, "a formula of 8,193 characters"],
    [`<row r="1"><c r="A1" t="str"><v>${"x".repeat(32_768)}</v></c></row>`, "a text of 32,768 characters"],
  ])("%#: outside the sheet, or too long", (rows, words) => {
    expect(refusalOf(withRows(rows))).toContain(words);
  });

  test("and whatever covers the whole sheet is an area", () => {
    const whole = "A1:XFD1048576";
    const { workbook, notShown } = readFile(
      handwritten({
        sheets: {
          Lots: `<cols><col min="1" max="16384" width="9" customWidth="1"/></cols><sheetData><row r="1"><c r="A1"><f t="array" ref="${whole}">ROW()</f><v>1</v></c></row></sheetData><mergeCells><mergeCell ref="${whole}"/></mergeCells><conditionalFormatting sqref="A:XFD"/><dataValidations><dataValidation sqref="${whole}"/></dataValidations>`,
        },
      }),
    );
    expect(workbook.sheets[0]?.merges).toEqual([{ row: 0, column: 0, rows: 1_048_576, columns: 16_384 }]);
    expect(workbook.sheets[0]?.cells[0]?.spill).toEqual({ rows: 1_048_576, columns: 16_384, isFixed: true });
    expect(Object.keys(workbook.sheets[0]?.columnWidths ?? {}).length).toBeLessThan(100);
    expect(notShown.map(englishNotShown)).toEqual([
      `data validation (Lots!${whole})`,
      `conditional formats (Lots!${whole})`,
    ]);
  });
});

test("the checksum is that of the catalogue of CRC algorithms: the digits 1 to 9 give CBF43926", () => {
  // Greg Cook, Catalogue of parametrised CRC algorithms, CRC-32/ISO-HDLC, its check value (from memory).
  expect(checksumOf(strToU8("123456789"))).toBe(0xcbf43926);
  expect(checksumOf(strToU8("6789"), checksumOf(strToU8("12345")))).toBe(0xcbf43926);
});

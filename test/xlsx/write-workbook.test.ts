import ExcelJS from "exceljs";
import JSZip from "jszip";
import { beforeAll, describe, expect, it } from "vitest";
import type { Cell, Workbook } from "../../src/workbook/workbook";
import { fittingText } from "../../src/xlsx/fitting-text";
import { readWorkbook } from "../../src/xlsx/read-workbook";
import { writeWorkbook } from "../../src/xlsx/write-workbook";

const cells: readonly Cell[] = [
  { row: 0, column: 0, value: "Fresh weight", style: { bold: true, fill: "#e8f0e4" }, note: "What the basket held." },
  { row: 0, column: 1, value: 930, style: { format: "0.0", border: "thin" } },
  { row: 1, column: 0, value: "Outturn", style: { wrap: true, italic: true, color: "#336633", size: 9 } },
  { row: 1, column: 1, formula: "=TEA.OUTTURN(B1,B3)", value: 0.2, style: { format: "0.0%" } },
  { row: 2, column: 1, value: 186 },
  { row: 3, column: 1, formula: '=IF(B3="","",XLOOKUP(B1,B1:B3,B1:B3))', value: "" },
  { row: 4, column: 1, formula: "=NA()", value: "#N/A" },
  { row: 5, column: 1, formula: "=B1>B3", value: true },
  { row: 6, column: 0, formula: "=TEA.CHARGEPLAN(B1,0.75,300,0.6)", value: "charge", spill: { rows: 2, columns: 2 } },
  { row: 6, column: 1, value: "load" },
  { row: 7, column: 0, value: 1 },
  { row: 7, column: 1, value: "" },
  { row: 9, column: 0, value: "across both columns", style: { align: "center" } },
  { row: 10, column: 0, formula: '=LET(x,B1,"x is "&SUM(FILTER(B1:B3,B1:B3>x-1)))', value: "x is 930" },
  { row: 11, column: 0, style: { fill: "#e8f0e4" } },
];

const workbook: Workbook = {
  name: "Trial book",
  sheets: [
    {
      name: "Lot",
      cells,
      columnWidths: { 0: 30, 1: 12.5 },
      rowHeights: { 9: 33 },
      merges: [{ row: 9, column: 0, rows: 1, columns: 2 }],
      frozenRows: 1,
      page: {
        paper: "A5",
        landscape: false,
        fitToOnePageWide: true,
        footer: "&LTrial book&RPage &P",
        printArea: { row: 0, column: 0, rows: 10, columns: 2 },
      },
    },
    { name: "Past lots", cells: [], columnWidths: {}, rowHeights: {}, merges: [] },
  ],
};

let bytes: Uint8Array;
let sheet: ExcelJS.Worksheet;
let sheetText: string;

beforeAll(async () => {
  bytes = await writeWorkbook(workbook);
  const read = new ExcelJS.Workbook();
  // exceljs declares a Buffer type of its own and takes any bytes.
  await read.xlsx.load(bytes as unknown as ExcelJS.Buffer);
  sheet = read.getWorksheet("Lot") as ExcelJS.Worksheet;
  sheetText = (await (await JSZip.loadAsync(bytes)).file("xl/worksheets/sheet1.xml")?.async("string")) ?? "";
});

describe("a written workbook", () => {
  it("has the same bytes whenever it is written", async () => {
    await new Promise((resolve) => setTimeout(resolve, 1100));
    expect(await writeWorkbook(workbook)).toEqual(bytes);
  });

  it("keeps constants, formulas and cached results", () => {
    expect(sheet.getCell("B1").value).toBe(930);
    expect(sheet.getCell("B2").value).toEqual({ formula: "_xldudf_TEA_OUTTURN(B1,B3)", result: 0.2 });
    expect(sheet.getCell("B5").value).toMatchObject({ formula: "NA()", result: { error: "#N/A" } });
    expect(sheet.getCell("B6").value).toEqual({ formula: "B1>B3", result: true });
  });

  it("keeps an empty text empty, as a result and in a spill", () => {
    expect(sheetText).toContain('IF(B3="","",_xlfn.XLOOKUP(B1,B1:B3,B1:B3))</f><v></v></c>');
    expect(sheet.getCell("B8").text).toBe("");
  });

  it("writes an error as an error, and a text that reads like one as a text", async () => {
    const errors = [
      { row: 0, column: 0, value: "#N/A" },
      { row: 1, column: 0, value: "#N/A", isText: true as const },
    ];
    const book = {
      name: "Errors",
      sheets: [{ name: "Lot", cells: errors, columnWidths: {}, rowHeights: {}, merges: [] }],
    };
    const file = await JSZip.loadAsync(await writeWorkbook(book));
    const written = await file.file("xl/worksheets/sheet1.xml")?.async("string");
    expect(written).toMatch(/<c r="A1"[^>]* t="e"><v>#N\/A<\/v><\/c>/);
    expect(written).toMatch(/<c r="A2"[^>]* t="s"><v>0<\/v><\/c>/);
  });

  it("shortens what is too long for a cell instead of failing, and says so there", async () => {
    const long = "é".repeat(40_000);
    const longCells = [
      { row: 0, column: 0, value: long },
      { row: 1, column: 0, value: 1, note: long },
      { row: 2, column: 0, formula: "=A1", value: long },
      { row: 3, column: 0, value: "x".repeat(32_767) },
    ];
    const page = { columnWidths: {}, rowHeights: {}, merges: [] };
    const bytes = await writeWorkbook({ name: "Long", sheets: [{ name: "Lot", cells: longCells, ...page }] });
    const [first, second, third, fourth] = (await readWorkbook(bytes)).sheets[0]?.cells ?? [];
    for (const text of [first?.value, second?.note, third?.value]) {
      expect(/^é+ … \(shortened: it was too long for a cell\)$/.test(String(text))).toBe(true);
      expect(String(text).length).toBe(text === second?.note ? 32_000 : 32_767);
    }
    expect(fourth?.value === "x".repeat(32_767)).toBe(true);
    // A character of two units is not cut in half, whichever of them the end falls on.
    for (const text of ["🍃".repeat(20_000), `x${"🍃".repeat(20_000)}`]) {
      expect(/^x?(?:🍃)+ … \(/u.test(fittingText(text))).toBe(true);
    }
  });

  it("writes a spill as a dynamic array with its values beside it", async () => {
    expect(sheetText).toContain('<c r="A7" cm="1" t="str"><f t="array" ref="A7:B8">_xldudf_TEA_CHARGEPLAN(');
    expect(sheet.getCell("B7").value).toBe("load");
    expect(sheet.getCell("A8").value).toBe(1);
    const metadata = await (await JSZip.loadAsync(bytes)).file("xl/metadata.xml")?.async("string");
    expect(metadata).toContain('fDynamic="1"');
  });

  it("prefixes what Excel expects prefixed", () => {
    expect(sheetText).toContain('_xlfn.LET(_xlpm.x,B1,"x is "&amp;SUM(_xlfn._xlws.FILTER(B1:B3,B1:B3&gt;_xlpm.x-1)))');
  });

  it("keeps styles, also of cells without a value", () => {
    expect(sheet.getCell("A1").font).toMatchObject({ bold: true });
    expect(sheet.getCell("A1").fill).toMatchObject({ pattern: "solid", fgColor: { argb: "FFE8F0E4" } });
    expect(sheet.getCell("A12").fill).toMatchObject({ pattern: "solid" });
    expect(sheet.getCell("B1").border.top).toMatchObject({ style: "thin" });
    expect(sheet.getCell("B1").numFmt).toBe("0.0");
    expect(sheet.getCell("B2").numFmt).toBe("0.0%");
    expect(sheet.getCell("A2").font).toMatchObject({ italic: true, size: 9, color: { argb: "FF336633" } });
    expect(sheet.getCell("A2").alignment).toMatchObject({ wrapText: true });
  });

  it("keeps widths, heights, merges, notes and frozen rows", () => {
    expect(sheet.getColumn(1).width).toBe(30);
    expect(sheet.getRow(10).height).toBe(33);
    expect(sheet.getCell("B10").master.address).toBe("A10");
    expect(sheet.getCell("A10").value).toBe("across both columns");
    expect(JSON.stringify(sheet.getCell("A1").note)).toContain("What the basket held.");
    expect(sheet.views[0]).toMatchObject({ state: "frozen", ySplit: 1 });
  });

  it("is set up for the printer", () => {
    expect(sheet.pageSetup).toMatchObject({ paperSize: 11, fitToPage: true, fitToHeight: 0, printArea: "A1:B10" });
    expect(sheet.headerFooter.oddFooter).toBe("&LTrial book&RPage &P");
  });
});

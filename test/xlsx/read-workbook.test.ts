import ExcelJS from "exceljs";
import JSZip from "jszip";
import { beforeAll, describe, expect, it, test } from "vitest";
import type { Cell, Workbook } from "../../src/workbook/workbook";
import { englishNotShown } from "../../src/xlsx/english-remarks";
import { readFile, readWorkbook } from "../../src/xlsx/read-workbook";
import { writeWorkbook } from "../../src/xlsx/write-workbook";

const written: Workbook = {
  name: "Round trip",
  sheets: [
    {
      name: "Lot",
      cells: [
        {
          row: 0,
          column: 0,
          value: "Fresh leaf",
          style: { bold: true, size: 14, fill: "#e8f0e4" },
          note: "Two\nlines.",
        },
        { row: 0, column: 1, value: 912.5, style: { format: "0.0", border: "thin", align: "right" } },
        { row: 1, column: 0, value: "Moisture", style: { italic: true, color: "#335544", wrap: true } },
        { row: 1, column: 1, value: 0.74, style: { format: "0.0%", border: "bottom" } },
        { row: 2, column: 1, formula: "=TEA.DRYMATTER(B1,B2)", value: 237.25 },
        { row: 3, column: 1, formula: '=IF(B9="","",B9)', value: "" },
        { row: 4, column: 1, formula: "=NA()", value: "#N/A" },
        { row: 5, column: 1, formula: "=B1>B2", value: true },
        { row: 6, column: 0, formula: "=TEA.DRYMATTER({600;300},B2)", value: 156, spill: { rows: 2, columns: 1 } },
        { row: 7, column: 0, value: 78 },
        { row: 8, column: 0, value: "across", style: { align: "center" } },
        {
          row: 9,
          column: 0,
          formula: '=LET(x,B1,"TEA.DRYMATTER("&SUM(FILTER(B1:B3,B1:B3>x)))',
          value: "TEA.DRYMATTER(0",
          spill: { rows: 1, columns: 1 },
        },
        { row: 10, column: 0, value: 0.25, style: { format: "hh:mm" } },
        { row: 11, column: 0, value: "0012" },
        { row: 12, column: 0, value: false },
        { row: 13, column: 0, value: "#N/A", style: { bold: true } },
        { row: 14, column: 0, value: "#DIV/0!" },
        { row: 15, column: 0, value: "#N/A", isText: true },
        { row: 16, column: 0, value: "#hashtag" },
        { row: 17, column: 0, formula: "=TEA.DRYMATTER({1;2},B2)", value: 1, spill: { rows: 2, columns: 1 } },
        { row: 18, column: 0, value: "#VALUE!" },
      ],
      columnWidths: { 0: 30, 1: 12 },
      rowHeights: { 8: 33 },
      merges: [{ row: 8, column: 0, rows: 1, columns: 2 }],
      frozenRows: 1,
      page: {
        paper: "A5",
        landscape: true,
        fitToOnePageWide: true,
        footer: "&LRound trip",
        printArea: { row: 0, column: 0, rows: 9, columns: 2 },
      },
    },
    { name: "Empty", cells: [], columnWidths: {}, rowHeights: {}, merges: [] },
  ],
};

describe("a workbook that was written and read again", () => {
  let read: Workbook;

  beforeAll(async () => {
    read = readWorkbook(await writeWorkbook(written));
  });

  it("hides what was hidden, and opens on the first sheet that is not", async () => {
    const cells = [{ row: 0, column: 0, value: 1 }];
    const plain = { cells, columnWidths: { 1: 30 }, rowHeights: { 2: 33 }, merges: [] };
    const sheets = [
      { ...plain, name: "Lists", isHidden: true as const },
      { ...plain, name: "Lot", hiddenRows: [2, 7], hiddenColumns: [1, 4] },
    ];
    const bytes = await writeWorkbook({ name: "Hidden", sheets });
    const [lists, lot] = readWorkbook(bytes).sheets;
    expect(lists?.isHidden).toBe(true);
    expect(lot).toMatchObject({ hiddenRows: [2, 7], hiddenColumns: [1, 4], columnWidths: { 1: 30 } });
    expect(lot?.rowHeights[2]).toBe(33);
    expect(lot?.isHidden).toBeUndefined();
    const file = await JSZip.loadAsync(bytes);
    expect(await file.file("xl/workbook.xml")?.async("string")).toContain('activeTab="1"');
    expect(await file.file("xl/worksheets/sheet1.xml")?.async("string")).not.toContain("tabSelected");
  });

  it("has the same name and sheets", () => {
    expect(read.name).toBe("Round trip");
    expect(read.sheets.map(({ name }) => name)).toEqual(["Lot", "Empty"]);
  });

  it.each(written.sheets[0]?.cells.map((cell) => ({ place: `row ${cell.row}, column ${cell.column}`, cell })) ?? [])(
    "has the same cell at $place",
    ({ cell }) => {
      const found = read.sheets[0]?.cells.find(({ row, column }) => row === cell.row && column === cell.column);
      expect(found).toEqual(cell);
    },
  );

  it("has no other cells", () => {
    expect(read.sheets[0]?.cells).toHaveLength(written.sheets[0]?.cells.length ?? 0);
    expect(read.sheets[1]?.cells).toEqual([]);
  });

  it("has the same widths, heights, merges, frozen rows and page", () => {
    const { cells: _, ...sheet } = read.sheets[0] as Workbook["sheets"][number];
    const { cells: __, ...expected } = written.sheets[0] as Workbook["sheets"][number];
    expect(sheet).toEqual(expected);
  });
});

describe("a workbook from elsewhere", () => {
  const cells = new Map<string, Cell>();

  beforeAll(async () => {
    const file = new ExcelJS.Workbook();
    const sheet = file.addWorksheet("Book");
    sheet.getCell("A1").value = new Date(Date.UTC(2024, 3, 5, 6));
    sheet.getCell("A2").value = { richText: [{ text: "spring " }, { text: "leaf", font: { bold: true } }] };
    sheet.getCell("A3").value = { text: "the pan", hyperlink: "https://example.org" };
    sheet.getCell("A4").value = { formula: "_xlfn._xlws.SORT(B1:B3)", result: 3 };
    sheet.getCell("B1").value = { formula: "A1*2", result: 4 };
    sheet.getCell("B2").value = { sharedFormula: "B1", result: 6 };
    sheet.getCell("C1").value = { formula: "1/0", result: { error: "#DIV/0!" } };
    sheet.getCell("C2").font = { bold: true };
    sheet.getCell("C2").note = "turned late";
    const bytes = new Uint8Array(await file.xlsx.writeBuffer());
    for (const cell of readWorkbook(bytes).sheets[0]?.cells ?? []) cells.set(`${cell.row},${cell.column}`, cell);
  });

  it("gives a date as the day that the spreadsheet counts", () => {
    // 5 April 2024 is day 45387: 45292 is 1 January 2024, then 31 + 29 + 31 + 4 days. Six o'clock is a quarter.
    expect(cells.get("0,0")?.value).toBe(45387.25);
  });

  it("gives formatted text and links as text", () => {
    expect(cells.get("1,0")?.value).toBe("spring leaf");
    expect(cells.get("2,0")?.value).toBe("the pan");
  });

  it("gives formulas as a cell shows them, those that share a text included", () => {
    expect(cells.get("3,0")?.formula).toBe("=SORT(B1:B3)");
    expect(cells.get("1,1")).toMatchObject({ formula: "=A2*2", value: 6 });
  });

  it("gives an error as its code and a note without a value", () => {
    expect(cells.get("0,2")).toMatchObject({ formula: "=1/0", value: "#DIV/0!" });
    expect(cells.get("1,2")).toEqual({ row: 1, column: 2, style: { bold: true }, note: "turned late" });
  });

  it("has no page set-up of its own making", async () => {
    const file = new ExcelJS.Workbook();
    file.addWorksheet("Book");
    expect(readWorkbook(new Uint8Array(await file.xlsx.writeBuffer())).sheets[0]?.page).toBeUndefined();
  });
});

test("a file that prints whole columns is read", async () => {
  const file = new ExcelJS.Workbook();
  const sheet = file.addWorksheet("Book");
  sheet.getCell("A1").value = 7;
  const bytes = await JSZip.loadAsync(new Uint8Array(await file.xlsx.writeBuffer()));
  const book = (await bytes.file("xl/workbook.xml")?.async("string")) ?? "";
  const names =
    '<definedNames><definedName name="_xlnm.Print_Area" localSheetId="0">Book!$A:$C</definedName></definedNames>';
  bytes.file("xl/workbook.xml", book.replace("</sheets>", `</sheets>${names}`));
  const read = readWorkbook(await bytes.generateAsync({ type: "uint8array" }));
  expect(read.sheets[0]?.cells).toEqual([{ row: 0, column: 0, value: 7 }]);
  expect(read.sheets[0]?.page?.printArea).toBeUndefined();
});

describe("what a file has that the grid does not show", () => {
  const pixel = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

  type Sheet = ExcelJS.Worksheet & { addConditionalFormatting(given: object): void };
  const kinds: readonly (readonly [string, (sheet: Sheet, file: ExcelJS.Workbook) => void])[] = [
    [
      "data validation (Book!A2)",
      (sheet) => (sheet.getCell("A2").dataValidation = { type: "list", formulae: ['"a,b"'] }),
    ],
    [
      "conditional formats (Book!A1:A3)",
      (sheet) =>
        sheet.addConditionalFormatting({
          ref: "A1:A3",
          rules: [{ type: "cellIs", operator: "greaterThan", formulae: ["1"], priority: 1, style: {} }],
        }),
    ],
    ["pictures", (sheet, file) => sheet.addImage(file.addImage({ base64: pixel, extension: "png" }), "C1:D3")],
  ];

  async function plainFile(): Promise<Uint8Array> {
    const file = new ExcelJS.Workbook();
    file.addWorksheet("Book").getCell("A1").value = 1;
    return new Uint8Array(await file.xlsx.writeBuffer());
  }

  async function notShownAfter(...changes: (typeof kinds)[number][1][]) {
    const file = new ExcelJS.Workbook();
    const sheet = file.addWorksheet("Book") as Sheet;
    sheet.getCell("A1").value = 1;
    sheet.pageSetup.printArea = "A1:B2";
    for (const change of changes) change(sheet, file);
    return readFile(new Uint8Array(await file.xlsx.writeBuffer())).notShown.map(englishNotShown);
  }

  it.each(kinds)("names %s", async (words, change) => {
    expect(await notShownAfter(change)).toEqual([words]);
  });

  const part = "<part/>";
  it.each([
    ["other kinds of charts", { "xl/charts/chart1.xml": part }],
    ["chart sheets", { "xl/chartsheets/sheet1.xml": part }],
    ["dialog sheets", { "xl/dialogsheets/sheet1.xml": part }],
    ["pivot tables", { "xl/pivotTables/pivotTable1.xml": part, "xl/pivotCache/pivotCacheDefinition1.xml": part }],
    ["macros", { "xl/vbaProject.bin": "" }],
    ["objects of other programs", { "xl/embeddings/oleObject1.bin": "" }],
    ["answers to comments", { "xl/threadedComments/threadedComment1.xml": part }],
    ["buttons and boxes", { "xl/ctrlProps/ctrlProp1.xml": part }],
    ["shapes", { "xl/drawings/drawing1.xml": '<d:wsDr xmlns:d="d"><d:sp macro=""><d:spPr/></d:sp></d:wsDr>' }],
    ["links to other workbooks", { "xl/externalLinks/externalLink1.xml": part }],
    ["a signature", { "_xmlsignatures/sig1.xml": part }],
  ] as const)("names %s by the part that holds them", async (words, added) => {
    const zip = await JSZip.loadAsync(await plainFile());
    for (const [path, content] of Object.entries(added)) zip.file(path, content);
    expect(readFile(await zip.generateAsync({ type: "uint8array" })).notShown.map(englishNotShown)).toEqual([words]);
  });

  it("stops no file: not a drawing that is not there, nor notes under another path", async () => {
    const file = new ExcelJS.Workbook();
    const sheet = file.addWorksheet("Book") as Sheet;
    sheet.getCell("A1").value = 1;
    sheet.getCell("A1").note = "Weighed wet.";
    sheet.addImage(file.addImage({ base64: pixel, extension: "png" }), "C1:D3");
    const zip = await JSZip.loadAsync(new Uint8Array(await file.xlsx.writeBuffer()));
    const links = "xl/worksheets/_rels/sheet1.xml.rels";
    const before = (await zip.file(links)?.async("string")) ?? "";
    zip.file("xl/comments/comment1.xml", (await zip.file("xl/comments1.xml")?.async("string")) ?? "");
    zip.remove("xl/comments1.xml").remove("xl/drawings");
    zip.file(links, before.replace("../comments1.xml", "/xl/comments/comment1.xml"));
    const { workbook } = readFile(await zip.generateAsync({ type: "uint8array" }));
    expect(workbook.sheets[0]?.cells).toEqual([{ row: 0, column: 0, value: 1, note: "Weighed wet." }]);
  });

  it("stops no file either when a validation covers the whole sheet", async () => {
    const zip = await JSZip.loadAsync(await plainFile());
    const path = "xl/worksheets/sheet1.xml";
    const sheet = (await zip.file(path)?.async("string")) ?? "";
    const validation =
      '<dataValidations count="1"><dataValidation allowBlank="1" sqref="A1:XFD1048576"/></dataValidations>';
    zip.file(path, sheet.replace("</sheetData>", `</sheetData>${validation}`));
    expect(readFile(await zip.generateAsync({ type: "uint8array" })).notShown.map(englishNotShown)).toEqual([
      "data validation (Book!A1:XFD1048576)",
    ]);
  });

  it("is nothing in a plain file, and in one of ours", async () => {
    expect(await notShownAfter()).toEqual([]);
    expect(readFile(await writeWorkbook(written)).notShown.map(englishNotShown)).toEqual([]);
  });
});

/** Writes the same book of an invented farm with exceljs, results of formulas and a formula that rows share included. */
import { readFileSync } from "node:fs";
import ExcelJS from "exceljs";

export async function writeWithExceljs(path: string): Promise<string> {
  const book = new ExcelJS.Workbook();
  const lots = book.addWorksheet("Lots", { views: [{ state: "frozen", ySplit: 1 }] });
  lots.addRow(["lot", "picked", "fresh g", "finished g", "outturn"]);
  const rows = [
    ["a1", new Date(Date.UTC(2024, 3, 4)), 812.5, 178.75],
    ["a2", new Date(Date.UTC(2024, 3, 5)), 900, 198],
    ["a3", new Date(Date.UTC(2024, 3, 6)), 1040, null],
  ];
  for (const row of rows) lots.addRow(row);
  lots.getCell("E2").value = {
    formula: 'IF(D2="","",D2/C2)',
    result: 0.22,
    shareType: "shared",
    ref: "E2:E4",
  } as never;
  lots.getCell("E3").value = { sharedFormula: "E2", result: 0.22 } as never;
  lots.getCell("E4").value = { sharedFormula: "E2", result: "" } as never;
  for (let row = 2; row <= 4; row += 1) {
    lots.getCell(row, 2).numFmt = "yyyy-mm-dd";
    lots.getCell(row, 5).numFmt = "0.0%";
  }
  lots.getCell("A6").value = "sum";
  lots.getCell("A6").font = { bold: true, color: { argb: "FF2E5E4E" } };
  lots.getCell("C6").value = { formula: "SUM(C2:C5)", result: 2752.5 };
  lots.getCell("C6").fill = { type: "pattern", pattern: "solid", fgColor: { argb: "FFF7EFD3" } };
  lots.getCell("A8").value = "007";
  lots.getCell("A8").numFmt = "@";
  lots.getCell("B8").value = { richText: [{ text: "茶青 " }, { font: { bold: true }, text: "& <tea>" }] };
  lots.getCell("C8").value = true;
  lots.getCell("D8").value = { error: "#N/A" };
  lots.getCell("E8").value = { formula: "usual*2", result: 1625 };
  lots.getCell("A9").value = { text: "the pan", hyperlink: "https://farm.example/pan" };
  lots.getCell("B9").value = "weighed wet";
  lots.getCell("B9").note = "Weighed again on Friday.";
  lots.mergeCells("C9:D10");
  lots.getCell("C9").value = "merged";
  lots.getCell("C2").dataValidation = { type: "decimal", operator: "greaterThan", formulae: [0] };
  lots.addConditionalFormatting({
    ref: "E2:E4",
    rules: [{ type: "cellIs", operator: "lessThan", formulae: ["0.2"], priority: 1, style: { font: { bold: true } } }],
  });
  lots.getColumn(2).width = 14;
  book.definedNames.add("Lots!$C$2", "usual");
  book.addWorksheet("Old book", { state: "hidden" }).getCell("A1").value = 1;
  await book.xlsx.writeFile(path);
  return (JSON.parse(readFileSync("test/node_modules/exceljs/package.json", "utf8")) as { version: string }).version;
}

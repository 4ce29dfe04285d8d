import ExcelJS from "exceljs";
import JSZip from "jszip";

/**
 * A workbook of another program, as exceljs 4.4 writes it: a table of lots of a farm of our own invention, with names
 * and with formulas that name its columns. The library writes names of cells alone: the others are put in afterwards.
 */
export async function bookWithNames(): Promise<Uint8Array> {
  const file = new ExcelJS.Workbook();
  const lots = file.addWorksheet("Lots");
  lots.addTable({
    name: "Lots",
    ref: "A1",
    headerRow: true,
    columns: [{ name: "lot" }, { name: "fresh" }, { name: "made" }, { name: "share" }],
    rows: [
      ["a", 800, 176, 0],
      ["b", 1000, 230, 0],
      ["c", 1200, 252, 0],
    ],
  });
  // 176/800, 230/1000 and 252/1200.
  [0.22, 0.23, 0.21].forEach((result, index) => {
    lots.getCell(`D${index + 2}`).value = { formula: "Lots[[#This Row],[made]]/Lots[[#This Row],[fresh]]", result };
  });
  const sums = file.addWorksheet("Sums");
  const formulas: readonly (readonly [string, number | string])[] = [
    ["SUM(Lots[fresh])", 3000],
    ["usual*2", 1.5],
    ["SUM(made)", 658],
    ["target*SUM(Lots[fresh])", 600],
    ["Lots[[#Headers],[made]]", "made"],
    ["here+1", 801],
    ["SUM(weighed)", 3000],
  ];
  formulas.forEach(([formula, result], row) => {
    sums.getCell(row + 1, 1).value = { formula, result };
  });
  const zip = await JSZip.loadAsync(new Uint8Array(await file.xlsx.writeBuffer()));
  const names = [
    name("usual", "0.5+0.25"),
    name("made", "Lots!$C$2:$C$4"),
    name("target", "0.2"),
    name("here", "Lots!$B$2", 1),
    name("weighed", "Lots[fresh]"),
    name("above", "Sums!A1"),
    name("gone", "#REF!$A$1"),
  ];
  const book = (await zip.file("xl/workbook.xml")?.async("string")) ?? "";
  zip.file("xl/workbook.xml", book.replace("</sheets>", `</sheets><definedNames>${names.join("")}</definedNames>`));
  return zip.generateAsync({ type: "uint8array" });
}

const name = (called: string, means: string, sheet?: number): string =>
  `<definedName name="${called}"${sheet === undefined ? "" : ` localSheetId="${sheet}"`}>${means}</definedName>`;

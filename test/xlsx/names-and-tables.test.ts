import JSZip from "jszip";
import { describe, expect, it } from "vitest";
import { openInNode } from "../../src/engine/node-workbook";
import { snapshotOf, workbookOf } from "../../src/engine/snapshot";
import { englishNotShown } from "../../src/xlsx/english-remarks";
import { readFile, readWorkbook } from "../../src/xlsx/read-workbook";
import { writeWorkbook } from "../../src/xlsx/write-workbook";
import { bookWithNames } from "./book-with-names";

const opened = readFile(await bookWithNames());

describe("a file with names and table references", () => {
  it("is read with them, and says which of the names lead nowhere or cannot be worked out", () => {
    expect(opened.workbook.names?.map(({ name, formula }) => `${name}${formula}`)).toEqual([
      "usual=0.5+0.25",
      "made=Lots!$C$2:$C$4",
      "target=0.2",
      "here=Lots!$B$2",
      "weighed=Lots[fresh]",
      "above=Sums!A1",
    ]);
    expect(opened.notShown.map(englishNotShown)).toEqual(["names gone"]);
    expect(opened.notWorkedOut).toEqual(["above"]);
  });

  it("comes back whole from the engine's form", () => {
    const { names, sheets } = workbookOf(snapshotOf(opened.workbook));
    expect(names).toEqual(opened.workbook.names);
    expect(sheets.map(formulasOf)).toEqual(opened.workbook.sheets.map(formulasOf));
  });

  it("is worked out to what the file holds, and follows a cell that changes, into the file that is written", async () => {
    const open = openInNode(opened.workbook);
    await open.calculate();
    const sums = () => [1, 2, 3, 4, 5, 6, 7].map((row) => open.value("Sums", `A${row}`));
    expect(sums()).toEqual([3000, 1.5, 658, 600, "made", 801, 3000]);
    expect(open.value("Lots", "D3")).toBe(0.23);
    open.set("Lots", "B2", 500);
    await open.calculate();
    expect(sums()).toEqual([2700, 1.5, 658, 540, "made", 501, 2700]);
    // 176/500.
    expect(open.value("Lots", "D2")).toBe(0.352);
    const again = readWorkbook(await writeWorkbook(open.toWorkbook()));
    open.close();
    expect(byName(again.names)).toEqual(byName(opened.workbook.names));
    expect(again.sheets.map(formulasOf)).toEqual(opened.workbook.sheets.map(formulasOf));
    expect(again.sheets[1]?.cells.map(({ value }) => value)).toEqual([2700, 1.5, 658, 540, "made", 501, 2700]);
  });

  it("is written with addresses where its table is none any more, since spreadsheets refuse a name for nothing", async () => {
    const [lots, sums] = opened.workbook.sheets;
    if (!lots || !sums) throw new Error("the book has two sheets");
    const cells = lots.cells.map((cell) => (cell.row === 0 && cell.column === 0 ? { ...cell, value: 7 } : cell));
    const file = await writeWorkbook({ ...opened.workbook, sheets: [{ ...lots, cells }, sums] });
    const zip = await JSZip.loadAsync(file);
    expect(await zip.file("xl/worksheets/sheet2.xml")?.async("string")).toContain("<f>SUM(Lots!$B$2:$B$4)</f>");
    expect(await zip.file("xl/worksheets/sheet1.xml")?.async("string")).toContain("<f>$C3/$B3</f>");
  });

  it("is read and written when the table has the name alone that is shown", async () => {
    const zip = await JSZip.loadAsync(await bookWithNames());
    const table = (await zip.file("xl/tables/table1.xml")?.async("string")) ?? "";
    zip.file("xl/tables/table1.xml", table.replace(' name="Lots"', ""));
    const { sheets } = readWorkbook(await zip.generateAsync({ type: "uint8array" }));
    expect(sheets[0]?.tables?.[0]?.name).toBe("Lots");
  });

  it("keeps a formula that names a column which is not there, says so, and writes its last value alone", async () => {
    const zip = await JSZip.loadAsync(await bookWithNames());
    const sheet = (await zip.file("xl/worksheets/sheet2.xml")?.async("string")) ?? "";
    zip.file("xl/worksheets/sheet2.xml", sheet.replace("SUM(Lots[fresh])", "SUM(Lots[aired])"));
    const { workbook, notShown } = readFile(await zip.generateAsync({ type: "uint8array" }));
    expect(workbook.sheets[1]?.cells[0]).toEqual({ row: 0, column: 0, formula: "=SUM(Lots[aired])", value: 3000 });
    expect(notShown.map(englishNotShown)).toContain(
      "working out of formulas with table columns that are not there, in Sums!A1",
    );
    const written = await writeWorkbook(workbook);
    expect(readWorkbook(written).sheets[1]?.cells[0]).toEqual({ row: 0, column: 0, value: 3000 });
  });
});

const formulasOf = ({ cells }: { cells: readonly { formula?: string }[] }) => cells.map(({ formula }) => formula);

/** Files hold names in the order of the alphabet. */
const byName = (names: readonly { name: string }[] = []) =>
  [...names].sort((one, other) => one.name.localeCompare(other.name));

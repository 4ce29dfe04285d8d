import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { CellError } from "../../src/cells/values";
import { type NodeWorkbook, openInNode } from "../../src/engine/node-workbook";
import type { Cell } from "../../src/workbook/workbook";

const tooMoist = "moisture must be from 0 up to, not including, 1 (76% or 0.76); got 76";

let book: NodeWorkbook;
const value = (address: string) => book.value("Lot", address);

/** Puts each content into column D, calculates once, and gives what the cells hold then. */
async function answers(...contents: (string | number | boolean)[]): Promise<unknown[]> {
  contents.forEach((content, row) => {
    book.set("Lot", `D${row + 1}`, content);
  });
  await book.calculate();
  const found = contents.map((_, row) => value(`D${row + 1}`));
  contents.forEach((_, row) => {
    book.set("Lot", `D${row + 1}`, null);
  });
  return found;
}

beforeAll(async () => {
  const cells: Cell[] = [
    { row: 0, column: 0, value: 650 },
    { row: 0, column: 1, value: 0.78 },
    { row: 0, column: 2, formula: "=TEA.DRYMATTER(A1,B1)", value: -1 },
    { row: 3, column: 0, formula: "=TEA.DRYMATTER({100;200;300},{0.5;76;0.1})", spill: { rows: 3, columns: 1 } },
    { row: 4, column: 0, value: 999 },
    { row: 9, column: 0, formula: "=SUM(A11:A13)" },
    { row: 10, column: 0, formula: "=TEA.DRYMATTER({100;200;300},0.5)" },
  ];
  book = openInNode({ name: "Trial", sheets: [{ name: "Lot", cells, columnWidths: {}, rowHeights: {}, merges: [] }] });
  await book.calculate();
});

afterAll(() => book.close());

describe("a workbook in Node", () => {
  it("calculates a formula that came with a cached result", () => {
    // 650 × (1 − 0.78) = 143
    expect(value("C1")).toBeCloseTo(143, 10);
  });

  it("gives values unrounded", async () => {
    expect(await answers("=1/3", "=TEA.DRYMATTER(1,2/3)")).toEqual([1 / 3, 1 - 2 / 3]);
  });

  it("spills over the cached values of the spill, each bad row with its own error", () => {
    expect(value("A4")).toBe(50);
    expect(value("A5")).toMatchObject({ code: "#VALUE!", message: tooMoist });
    expect(value("A6")).toBeCloseTo(270, 10);
    expect(book.size("Lot", "A4")).toEqual({ rows: 3, columns: 1 });
  });

  it("follows a spill that shrinks in what depends on it", async () => {
    book.set("Lot", "M1", "=TEA.DRYMATTER(N1:N3,0.5)");
    book.set("Lot", "P1", "=COUNT(M1:M6)");
    for (const row of [1, 2, 3]) book.set("Lot", `N${row}`, 100 * row);
    await book.calculate();
    expect(value("P1")).toBe(3);
    book.set("Lot", "M1", "=TEA.DRYMATTER(N1:N2,0.5)");
    await book.calculate();
    expect(value("P1")).toBe(2);
  });

  it("keeps apart from another one that is open", async () => {
    const sheet = { name: "Lot", columnWidths: {}, rowHeights: {}, merges: [] };
    const cells: Cell[] = [
      { row: 0, column: 0, value: 1000 },
      { row: 0, column: 2, formula: "=SUM(A1:A9)" },
    ];
    const other = openInNode({ name: "Other", sheets: [{ ...sheet, cells }] });
    await other.calculate();
    await book.calculate();
    expect(other.value("Lot", "C1")).toBe(1000);
    expect(value("C1")).toBeCloseTo(143, 10);
    other.close();
  });

  it("gives a blank as undefined", () => {
    expect(value("K40")).toBeUndefined();
  });

  it("says why a cell shows an error, until it recovers", async () => {
    book.set("Lot", "B1", 76);
    await book.calculate();
    expect(value("C1")).toMatchObject({ code: "#VALUE!", message: tooMoist });
    book.set("Lot", "B1", 0.78);
    await book.calculate();
    expect(value("C1")).toBeCloseTo(143, 10);
    book.set("Lot", "C1", '=VALUE("leaf")');
    await book.calculate();
    expect(value("C1")).toEqual(new CellError("#VALUE!", ""));
    book.set("Lot", "C1", "=TEA.DRYMATTER(A1,B1)");
    await book.calculate();
  });

  it("recalculates what depends on a spill that has shrunk", async () => {
    expect(value("A10")).toBe(300);
    book.set("Lot", "A11", "=TEA.DRYMATTER({100;200},0.5)");
    await book.calculate();
    expect([value("A13"), value("A10")]).toEqual([undefined, 150]);
    expect(book.size("Lot", "A11")).toEqual({ rows: 2, columns: 1 });
  });

  it("names the argument that is missing and refuses one too many", async () => {
    expect(await answers("=TEA.DRYMATTER(100)", "=TEA.DRYMATTER(1,0.5,3)")).toMatchObject([
      { code: "#VALUE!", message: "moisture must be given; got 1 in TEA.DRYMATTER(weight, moisture)" },
      {
        code: "#VALUE!",
        message: "TEA.DRYMATTER must have at most 2 arguments; got 3 in TEA.DRYMATTER(weight, moisture)",
      },
    ]);
  });

  it("keeps the message of a cell taken out of a spill, and none of an error that was caught", async () => {
    expect(
      await answers("=INDEX(TEA.DRYMATTER({100;200},{0.5;76}),2)", '=IFERROR(TEA.DRYMATTER(1,76),"caught")'),
    ).toMatchObject([{ code: "#VALUE!", message: tooMoist }, "caught"]);
  });

  it("reads names in any case and percentages", async () => {
    expect(await answers("=tea.DryMatter(100,50%)")).toEqual([50]);
  });

  it("takes a number for a number however it is typed, and text in quotes never for one", async () => {
    const [zeros, point, array, quoted, date, part] = await answers(
      "=TEA.DRYMATTER(100.0,0.50)",
      "=TEA.DRYMATTER(100,.5)",
      "=SUM(TEA.DRYMATTER(100,{0.50;.5}))",
      '=TEA.DRYMATTER(100,"50%")',
      '=TEA.DRYMATTER(100,"1/2")',
      '=TEA.DRYMATTER(100,LEFT("0.50 kg",4))',
    );
    expect([zeros, point, array]).toEqual([50, 50, 100]);
    expect((quoted as CellError).message).toContain('got the text "50%"');
    expect((date as CellError).message).toContain('got the text "1/2"');
    expect((part as CellError).message).toContain('got the text "0.50"');
  });

  it("refuses a sheet and an address that do not exist", () => {
    expect(() => book.value("Plot", "A1")).toThrow('there is no sheet "Plot"');
    expect(() => book.value("Lot", "first")).toThrow('"first" is not the address of a cell');
  });

  it("gives the workbook with fresh results and the sizes that spills have now", () => {
    const cells = book.toWorkbook().sheets[0]?.cells ?? [];
    const at = (row: number, column: number) => cells.find((cell) => cell.row === row && cell.column === column);
    expect(at(0, 2)?.formula).toBe("=TEA.DRYMATTER(A1,B1)");
    expect(at(0, 2)?.value).toBeCloseTo(143, 10);
    expect(at(3, 0)).toMatchObject({ value: 50, spill: { rows: 3, columns: 1 } });
    expect(at(4, 0)).toEqual({ row: 4, column: 0, value: "#VALUE!" });
    expect(at(10, 0)).toMatchObject({ value: 50, spill: { rows: 2, columns: 1 } });
    expect(at(11, 0)).toEqual({ row: 11, column: 0, value: 100 });
    expect(at(12, 0)).toBeUndefined();
  });
});

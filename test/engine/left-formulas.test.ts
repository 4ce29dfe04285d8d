import { describe, expect, it, test } from "vitest";
import { leftFormulas } from "../../src/engine/left-formulas";
import { openInNode } from "../../src/engine/node-workbook";
import { snapshotOf, workbookOf } from "../../src/engine/snapshot";
import type { Cell, Workbook } from "../../src/workbook/workbook";

const bookOf = (cells: readonly Cell[]): Workbook => ({
  name: "Farm",
  sheets: [{ name: "Lots", cells, columnWidths: {}, rowHeights: {}, merges: [] }],
});

describe("a formula that the engine is not given", () => {
  const formula = "=GETPIVOTDATA(A1,A1)";
  const book = bookOf([
    { row: 0, column: 0, formula, value: 20 },
    { row: 0, column: 1, formula: "=A1*2" },
  ]);
  const left = leftFormulas(book, { keepsChanging: false });

  it("stands there as its result, and comes back as it was", async () => {
    const open = openInNode(book, left);
    await open.calculate();
    expect(open.value("Lots", "B1")).toBe(40);
    expect(open.toWorkbook().sheets[0]?.cells[0]).toEqual({ row: 0, column: 0, formula, value: 20 });
    open.set("Lots", "A1", 5);
    await open.calculate();
    expect(open.value("Lots", "B1")).toBe(10);
    expect(open.toWorkbook().sheets[0]?.cells[0]).toEqual({ row: 0, column: 0, value: 5 });
    open.close();
    expect(workbookOf(snapshotOf(book, "again", left)).sheets).toEqual(book.sheets);
  });

  it("is none in what the engine knows, names and functions of ours among it", () => {
    const known = [
      "=TEA.DRYMATTER(A1,0.75)",
      "=LET(x,A1,x*2)",
      "=MAP(A1:A3,LAMBDA(each,each*2))",
      "=SUM(usual,Lots!A1)",
    ];
    const names = [{ name: "usual", formula: "=Lots!$A$1" }];
    const cells = known.map((text, row): Cell => ({ row, column: 0, formula: text }));
    expect([...leftFormulas({ ...bookOf(cells), names }, { keepsChanging: true }).values()]).toEqual([]);
  });
});

test("what is looked up in a column of results follows them, although no result is put into an index of its own", async () => {
  const rows = 50;
  const cells = Array.from({ length: rows }, (_, row): Cell[] => [
    { row, column: 0, value: row % 5 },
    { row, column: 1, formula: `=A${row + 1}*10` },
  ]).flat();
  const asked = ["=COUNTIF(B1:B50,20)", "=MATCH(40,B1:B50,0)", '=SUMIF(B1:B50,">20")', "=XLOOKUP(30,B1:B50,A1:A50)"];
  const open = openInNode(bookOf([...cells, ...asked.map((formula, row): Cell => ({ row, column: 3, formula }))]));
  const answers = () => asked.map((_, row) => open.value("Lots", `D${row + 1}`));
  await open.calculate();
  // Ten rows each of 0, 10, 20, 30 and 40: 300 and 400 are above 20.
  expect(answers()).toEqual([10, 5, 700, 3]);
  open.set("Lots", "A5", 2);
  await open.calculate();
  expect(answers()).toEqual([11, 10, 660, 3]);
  open.set("Lots", "A5", 4);
  await open.calculate();
  expect(answers()).toEqual([10, 5, 700, 3]);
  open.close();
});

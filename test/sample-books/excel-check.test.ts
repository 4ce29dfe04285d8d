import { expect, test } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import { openInNode } from "../../src/engine/node-workbook";
import { excelCheck } from "../../src/sample-books/excel-check";

test("every line of the check book agrees, in the engine that we can run, and a wrong answer would not", async () => {
  const book = excelCheck();
  const rows = (book.sheets[0]?.cells ?? [])
    .filter(({ column, row }) => column === 5 && row > 3)
    .map(({ row }) => row + 1);
  expect(rows.length).toBeGreaterThan(catalogue.reduce((sum, { page }) => sum + page.examples.length, 0));
  const open = openInNode(book);
  try {
    await open.calculate();
    const disagreeing = rows
      .filter((row) => open.value("Check", `F${row}`) !== "yes")
      .map((row) => `${open.value("Check", `D${row}`)}: ${String(open.value("Check", `C${row}`))}`);
    expect(disagreeing).toEqual([]);
    expect(open.value("Check", "B3")).toBe(`${rows.length} of ${rows.length}`);
    for (const row of rows) open.set("Check", `C${row}`, 123456.789);
    await open.calculate();
    expect(open.value("Check", "B3")).toBe(`0 of ${rows.length}`);
  } finally {
    open.close();
  }
});

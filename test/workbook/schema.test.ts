import { expect, test } from "vitest";
import { oneLot } from "../../src/sample-books/one-lot";
import { seasonBook } from "../../src/sample-books/season";
import { sampleWordsIn } from "../../src/words/in-every-language/samples";
import { workbook } from "../../src/workbook/schema";
import type { Workbook } from "../../src/workbook/workbook";

const area = { row: 1, column: 2, rows: 3, columns: 4 };
const axis = { title: "Lot", format: "0.0", least: 0, most: 10 };

/** Everything that a workbook can say: the compiler asks for each field. */
const full: Required<{ [Name in keyof Workbook]: Workbook[Name] }> = {
  name: "Book",
  names: [{ name: "Pan", formula: "=Lot!$B$4", sheet: "Lot" }],
  sheets: [
    {
      name: "Lot",
      cells: [
        { row: 0, column: 0, value: "#N/A", isText: true, note: "as written" },
        { row: 1, column: 0, value: 1, formula: "=SEQUENCE(2)", spill: { rows: 2, columns: 1, isFixed: true } },
        { row: 2, column: 0, value: true, style: { format: "0.0", bold: true, italic: true, size: 9, wrap: true } },
        { row: 3, column: 0, style: { color: "#112233", fill: "#ffffff", align: "center", border: "thin" } },
      ],
      columnWidths: { 0: 12.5 },
      rowHeights: { 3: 20 },
      merges: [area],
      isHidden: true,
      hiddenRows: [4],
      hiddenColumns: [5],
      frozenRows: 1,
      page: { paper: "A5", landscape: true, fitToOnePageWide: true, footer: "&P", printArea: area, repeatedRow: 0 },
      tables: [{ name: "Lots", area, hasTotals: true }],
      charts: [
        {
          ...{ kind: "dots", title: "Outturn", description: "one dot a lot", area, across: axis, up: axis },
          series: [{ name: "lots", across: "Lot!$A$1:$A$9", up: "Lot!$B$1:$B$9", color: "#336699" }],
        },
      ],
      links: [{ area, address: "https://example.org/", place: "Lot!B4" }],
    } satisfies Required<Workbook["sheets"][number]>,
  ],
};

test("what a browser keeps comes back with everything that a workbook can say", () => {
  const kept: unknown = structuredClone(full);
  expect(workbook.parse(kept)).toStrictEqual(full);
});

test.each([oneLot(sampleWordsIn.en), seasonBook(sampleWordsIn.en)])("a sample passes through as it is", (book) => {
  expect(workbook.parse(structuredClone(book))).toEqual(book);
});

test("what is no workbook is refused", () => {
  expect(
    workbook.safeParse({ ...full, sheets: [{ ...full.sheets[0], cells: [{ row: 0.5, column: 0 }] }] }).success,
  ).toBe(false);
  expect(workbook.safeParse({ name: "Book" }).success).toBe(false);
});

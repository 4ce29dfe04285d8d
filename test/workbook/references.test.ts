import { describe, expect, test } from "vitest";
import { areaWithin, partsOf, placeNamed, referenceTo, sheetInFormula } from "../../src/workbook/references";

describe("a reference", () => {
  test.each([
    ["B4", undefined, "B4"],
    ["Lot!$A$1:C9", "Lot", "$A$1:C9"],
    ["'Past lots'!A:B", "Past lots", "A:B"],
    ["'Don''t touch'!B4#", "Don't touch", "B4#"],
    ["Pan", undefined, "Pan"],
  ])("%s names its sheet and its cells", (reference, sheet, cells) => {
    expect(partsOf(reference)).toEqual({ sheet, cells });
  });

  test.each([
    ["B4", { row: 3, column: 1, rows: 1, columns: 1 }],
    ["$C$9:A1", { row: 0, column: 0, rows: 9, columns: 3 }],
    ["A:C", { row: 0, column: 0, rows: 20, columns: 3 }],
    ["2:5", { row: 1, column: 0, rows: 4, columns: 7 }],
  ])("%s covers its area, whole rows and columns as far as the sheet is used", (cells, area) => {
    expect(areaWithin(cells, { rows: 20, columns: 7 })).toEqual(area);
  });

  test.each(["Pan", "B4#", "A1:B", "A1:B2:C3", "Lots[Weight]", "A", "3"])("%s is no area by itself", (cells) => {
    expect(areaWithin(cells, { rows: 20, columns: 7 })).toBeUndefined();
  });

  test.each([
    ["Lot", "Lot"],
    ["Past lots", "'Past lots'"],
    ["Don't touch", "'Don''t touch'"],
    ["LOT14", "'LOT14'"],
    ["R1C1", "'R1C1'"],
    ["2026", "'2026'"],
    ["茶", "茶"],
  ])("the sheet %s is written %s", (name, written) => {
    expect(sheetInFormula(name)).toBe(written);
  });

  test("to an area is written as a formula has it", () => {
    expect(referenceTo({ sheet: "Past lots", row: 3, column: 1, rows: 1, columns: 1 })).toBe("'Past lots'!B4");
    expect(referenceTo({ sheet: "Lot", row: 0, column: 0, rows: 9, columns: 3 })).toBe("Lot!A1:C9");
  });
});

test("a place that something leads to is an address, whole columns and rows, or a name", () => {
  const sheet = (name: string) => ({ name, columnWidths: {}, rowHeights: {}, merges: [] });
  const book = {
    name: "Farm",
    names: [{ name: "Past", formula: "=Lots!$A:$B" }],
    sheets: [
      { ...sheet("Today"), cells: [] },
      { ...sheet("Lots"), cells: [{ row: 4, column: 2, value: 1 }] },
    ],
  };
  const whole = { sheet: "Lots", row: 0, column: 0, rows: 5, columns: 2 };
  expect(placeNamed("past", "Today", book)).toEqual(whole);
  expect(placeNamed("LOTS!A:B", "Today", book)).toEqual(whole);
  expect(placeNamed("2:3", "Lots", book)).toEqual({ sheet: "Lots", row: 1, column: 0, rows: 2, columns: 3 });
  expect(placeNamed("B4", "Today", book)).toEqual({ sheet: "Today", row: 3, column: 1, rows: 1, columns: 1 });
  expect(placeNamed("Elsewhere!A1", "Today", book)).toBeUndefined();
  expect(placeNamed("nowhere at all", "Today", book)).toBeUndefined();
});

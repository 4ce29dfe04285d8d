import { describe, expect, it } from "vitest";
import { snapshotOf, workbookOf } from "../../src/engine/snapshot";
import type { Workbook } from "../../src/workbook/workbook";

const workbook: Workbook = {
  name: "There and back",
  sheets: [
    {
      name: "Lot",
      cells: [
        { row: 0, column: 0, value: "Fresh leaf", style: { bold: true, italic: true, size: 14 }, note: "Weighed wet." },
        { row: 0, column: 1, value: 912.5, style: { format: "0.0", border: "thin", align: "right" } },
        { row: 1, column: 0, value: true, style: { color: "#335544", fill: "#e8f0e4", wrap: true, align: "left" } },
        { row: 1, column: 1, value: "0012", style: { border: "bottom", align: "center" } },
        { row: 2, column: 1, formula: "=TEA.DRYMATTER(B1,B2)", style: { format: "0.0" } },
        { row: 3, column: 0, formula: "=TEA.DRYMATTER({1;2},0.5)", spill: { rows: 2, columns: 1 } },
        { row: 4, column: 0, style: { format: "0.00" } },
        { row: 5, column: 0, note: "an empty cell with a note" },
        { row: 6, column: 0, value: "#N/A" },
        { row: 7, column: 0, value: "#N/A", isText: true },
        { row: 140, column: 30, value: 0 },
      ],
      columnWidths: { 0: 30.3, 2: 12 },
      rowHeights: { 8: 33.1 },
      merges: [{ row: 8, column: 0, rows: 1, columns: 2 }],
      hiddenRows: [3, 8, 20],
      hiddenColumns: [1, 2],
      frozenRows: 2,
      page: {
        paper: "A5",
        landscape: true,
        fitToOnePageWide: true,
        footer: "&LFarm",
        printArea: { row: 0, column: 0, rows: 9, columns: 2 },
      },
    },
    { name: "Empty", cells: [], columnWidths: {}, rowHeights: {}, merges: [], isHidden: true },
  ],
};

describe("a workbook in the engine's form", () => {
  it("comes back whole", () => {
    expect(workbookOf(snapshotOf(workbook))).toEqual(workbook);
  });

  it("comes back whole from storage as text", () => {
    expect(workbookOf(JSON.parse(JSON.stringify(snapshotOf(workbook))))).toEqual(workbook);
  });

  it("leaves out cached results, which would not be calculated, and spilled values, which would block the spill", () => {
    const cells = [
      { row: 0, column: 0, formula: "=TEA.DRYMATTER({1;2},0.5)", value: 0.5, spill: { rows: 2, columns: 1 } },
      { row: 1, column: 0, value: 1, style: { format: "0.0" } },
      { row: 2, column: 0, value: 7 },
    ];
    const sheet = { name: "Lot", cells, columnWidths: {}, rowHeights: {}, merges: [] };
    expect(workbookOf(snapshotOf({ name: "Cached", sheets: [sheet] })).sheets[0]?.cells).toEqual([
      { row: 0, column: 0, formula: "=TEA.DRYMATTER({1;2},0.5)", spill: { rows: 2, columns: 1 } },
      { row: 1, column: 0, style: { format: "0.0" } },
      { row: 2, column: 0, value: 7 },
    ]);
  });

  it("may have more cells than a function call has room for arguments", () => {
    const cells = Array.from({ length: 150_000 }, (_, row) => ({ row, column: 2, value: row }));
    const sheet = { name: "Long", cells, columnWidths: {}, rowHeights: {}, merges: [] };
    expect(snapshotOf({ name: "Long", sheets: [sheet] }).sheets["sheet-1"]?.rowCount).toBeGreaterThan(150_000);
  });

  it("has room to write in", () => {
    const { sheets } = snapshotOf(workbook);
    expect(sheets["sheet-1"]?.rowCount).toBeGreaterThan(141);
    expect(sheets["sheet-1"]?.columnCount).toBeGreaterThan(31);
    expect(sheets["sheet-2"]?.rowCount).toBeGreaterThanOrEqual(100);
    expect(sheets["sheet-2"]?.columnCount).toBeGreaterThanOrEqual(20);
  });

  it("gives the width that someone dragged a column to", () => {
    const snapshot = snapshotOf(workbook);
    Object.assign(snapshot.sheets["sheet-1"]?.columnData?.[0] ?? {}, { w: 140 });
    expect(workbookOf(snapshot).sheets[0]?.columnWidths[0]).toBe(20);
  });

  it("writes out formulas that were filled down and share one text", () => {
    const snapshot = snapshotOf({ name: "Filled", sheets: [] });
    snapshot.sheetOrder = ["one"];
    snapshot.sheets.one = {
      name: "One",
      cellData: { 0: { 1: { f: "=A1*$A$1", si: "shared" } }, 2: { 1: { si: "shared", v: 6, t: 2 } } },
    };
    expect(workbookOf(snapshot).sheets[0]?.cells[1]).toEqual({ row: 2, column: 1, value: 6, formula: "=A3*$A$1" });
  });
});

it("gives the engine no merge that takes all memory, and keeps it", () => {
  const merges = [
    { row: 0, column: 0, rows: 1_048_576, columns: 16_384 },
    { row: 3, column: 0, rows: 1, columns: 2 },
  ];
  const sheet = { name: "Lots", cells: [{ row: 0, column: 0, value: 1 }], columnWidths: {}, rowHeights: {}, merges };
  const snapshot = snapshotOf({ name: "Farm", sheets: [sheet] });
  expect(Object.values(snapshot.sheets)[0]?.mergeData).toHaveLength(1);
  expect(workbookOf(snapshot).sheets[0]?.merges).toEqual([merges[1], merges[0]]);
});

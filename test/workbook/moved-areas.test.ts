import { describe, expect, test } from "vitest";
import { movedArea, movedParts } from "../../src/workbook/moved-areas";
import type { Chart } from "../../src/workbook/workbook";

// Rows 5 to 8 as one counts them on the screen.
const area = { row: 4, column: 1, rows: 4, columns: 3 };
const rows = (at: number, count: number) => movedArea(area, { sheet: "Lots", along: "rows", at, count });

describe("an area after rows were put in", () => {
  test("moves down when they are above it or just at its first row", () => {
    expect(rows(0, 2)).toEqual({ ...area, row: 6 });
    expect(rows(4, 1)).toEqual({ ...area, row: 5 });
  });

  test("grows when they are within, and stays when they are below", () => {
    expect(rows(5, 2)).toEqual({ ...area, rows: 6 });
    expect(rows(7, 1)).toEqual({ ...area, rows: 5 });
    expect(rows(8, 1)).toEqual(area);
  });
});

describe("an area after rows were taken out", () => {
  test("moves up when they were above it", () => {
    expect(rows(0, -2)).toEqual({ ...area, row: 2 });
    expect(rows(3, -1)).toEqual({ ...area, row: 3 });
  });

  test("shrinks by what was within", () => {
    expect(rows(4, -1)).toEqual({ ...area, rows: 3 });
    expect(rows(5, -2)).toEqual({ ...area, rows: 2 });
    expect(rows(7, -1)).toEqual({ ...area, rows: 3 });
    // Two above it and two of its own.
    expect(rows(2, -4)).toEqual({ ...area, row: 2, rows: 2 });
    // Two of its own and two below it.
    expect(rows(6, -4)).toEqual({ ...area, rows: 2 });
  });

  test("is gone with all its rows, and stays when they were below", () => {
    expect(rows(4, -4)).toBeUndefined();
    expect(rows(0, -20)).toBeUndefined();
    expect(rows(8, -1)).toEqual(area);
  });
});

test("columns do the same", () => {
  const columns = (at: number, count: number) => movedArea(area, { sheet: "Lots", along: "columns", at, count });
  expect(columns(0, 1)).toEqual({ ...area, column: 2 });
  expect(columns(2, 1)).toEqual({ ...area, columns: 4 });
  expect(columns(1, -1)).toEqual({ ...area, columns: 2 });
});

describe("what a sheet has besides cells", () => {
  const chart: Chart = {
    kind: "dots",
    title: "Outturn",
    description: "",
    area: { row: 20, column: 0, rows: 10, columns: 5 },
    series: [{ name: "lots", across: "Lots!$B$2:$B$9", up: "'My flags'!$F$2:$F$9", color: "#2e5e4e" }],
    across: { title: "" },
    up: { title: "" },
  };
  const parts = {
    charts: [chart],
    tables: [{ name: "Lots", area: { row: 0, column: 0, rows: 9, columns: 3 } }],
    page: {
      paper: "A4",
      landscape: false,
      fitToOnePageWide: true,
      printArea: { row: 0, column: 0, rows: 9, columns: 3 },
      repeatedRow: 0,
    },
  } as const;

  test("follows a row taken out of its own sheet", () => {
    const moved = movedParts(parts, "Lots", { sheet: "Lots", along: "rows", at: 3, count: -1 });
    expect(moved.charts?.[0]?.area).toEqual({ ...chart.area, row: 19 });
    expect(moved.charts?.[0]?.series[0]).toMatchObject({ across: "Lots!$B$2:$B$8", up: "'My flags'!$F$2:$F$9" });
    expect(moved.tables?.[0]?.area.rows).toBe(8);
    expect(moved.page?.printArea?.rows).toBe(8);
    expect(moved.page?.repeatedRow).toBe(0);
  });

  test("draws from where the cells of another sheet went, and stays where it is", () => {
    const moved = movedParts(parts, "Season", { sheet: "My flags", along: "rows", at: 3, count: 2 });
    expect(moved.charts?.[0]).toEqual({
      ...chart,
      series: [{ ...chart.series[0], up: "'My flags'!$F$2:$F$11" }],
    });
    expect(moved.tables).toEqual(parts.tables);
    expect(moved.page).toEqual(parts.page);
  });

  test("loses what lost all its cells", () => {
    const moved = movedParts(parts, "Lots", { sheet: "Lots", along: "rows", at: 0, count: -9 });
    expect(moved.tables).toEqual([]);
    expect(moved.charts?.[0]?.series).toEqual([]);
    expect(moved.page).toEqual({ paper: "A4", landscape: false, fitToOnePageWide: true });
  });

  test("leaves names and whole columns as they are", () => {
    const series = [{ name: "", across: "Lots!$A:$A", up: "Lots!weights", color: "#2e5e4e" }];
    const odd = { charts: [{ ...chart, series }] };
    expect(movedParts(odd, "Season", { sheet: "Lots", along: "rows", at: 0, count: 1 })).toEqual(odd);
  });
});

import JSZip from "jszip";
import { beforeAll, describe, expect, it } from "vitest";
import { snapshotOf, workbookOf } from "../../src/engine/snapshot";
import type { Cell, Chart, Sheet, Workbook } from "../../src/workbook/workbook";
import { readWorkbook } from "../../src/xlsx/read-workbook";
import { writeWorkbook } from "../../src/xlsx/write-workbook";

const charts: readonly Chart[] = [
  {
    kind: "dots",
    title: "Outturn & day",
    description: "Two dots.",
    area: { row: 5, column: 0, rows: 12, columns: 4 },
    series: [
      { name: "as usual", across: "'Past lots'!$A$2:$A$4", up: "'Past lots'!$B$2:$B$4", color: "#2e5e4e" },
      { name: "flagged", across: "'Past lots'!$A$2:$A$4", up: "'Past lots'!$C$2:$C$4", color: "#b3261e" },
    ],
    across: { title: "picked", format: "d mmm", least: 45000.5 },
    up: { title: "", format: "0%", least: 0, most: 0.4 },
  },
  {
    kind: "columns",
    title: "By plot",
    description: "",
    area: { row: 5, column: 5, rows: 7, columns: 3 },
    series: [{ name: "g", across: "'Past lots'!$A$2:$A$4", up: "'Past lots'!$B$2:$B$4", color: "#7a9a5b" }],
    across: { title: "" },
    up: { title: "g for each m²" },
  },
];

const headings = ["Picked", "Outturn", "Flagged"];
const cells: readonly Cell[] = [
  ...headings.map((value, column) => ({ row: 0, column, value, style: { bold: true } })),
  ...[1, 2, 3].flatMap((row) => [
    { row, column: 0, value: 45010 + row },
    { row, column: 1, formula: "=NA()", value: "#N/A" },
    { row, column: 2, value: 0.2 + row / 100 },
  ]),
];

const sheet: Sheet = {
  name: "Past lots",
  cells,
  columnWidths: { 0: 20, 6: 3.5 },
  rowHeights: { 6: 31 },
  merges: [],
  page: { paper: "A4", landscape: false, fitToOnePageWide: true, repeatedRow: 0 },
  tables: [{ name: "Past", area: { row: 0, column: 0, rows: 4, columns: 3 } }],
  charts,
};
const plain: Sheet = {
  name: "Plain",
  cells: [{ row: 0, column: 0, value: 1 }],
  columnWidths: {},
  rowHeights: {},
  merges: [],
};
const workbook: Workbook = { name: "Charts", sheets: [plain, sheet] };

async function partsOf(book: Workbook) {
  const file = await JSZip.loadAsync(await writeWorkbook(book));
  return {
    paths: Object.keys(file.files),
    text: async (path: string) => (await file.file(path)?.async("string")) ?? "",
  };
}

/** The book with other cells or tables on its second sheet. */
const changed = (part: Partial<Sheet>): Workbook => ({ ...workbook, sheets: [plain, { ...sheet, ...part }] });
const withHeading = (column: number, cell: Partial<Cell>) =>
  changed({ cells: cells.map((each) => (each.row === 0 && each.column === column ? { ...each, ...cell } : each)) });

describe("a workbook with a table and charts", () => {
  let read: Workbook;

  beforeAll(async () => {
    read = readWorkbook(await writeWorkbook(workbook));
  });

  it("has them again after writing and reading", () => {
    const [first, second] = read.sheets;
    expect(first).toEqual(plain);
    expect(second?.tables).toEqual(sheet.tables);
    expect(second?.charts).toEqual(charts);
    expect(second?.page).toEqual(sheet.page);
    expect(second?.cells).toEqual(cells);
  });

  it("has its charts again also when the sheet has an apostrophe in its name", async () => {
    const named = JSON.parse(JSON.stringify(sheet).replaceAll("'Past lots'!", "'Ma''s lots'!")) as Sheet;
    const again = readWorkbook(await writeWorkbook({ ...workbook, sheets: [plain, { ...named, name: "Ma's lots" }] }));
    expect(again.sheets[1]?.charts).toEqual(named.charts);
  });

  it("has them again after a visit to the engine", () => {
    const { tables, charts: kept, page } = workbookOf(snapshotOf(workbook)).sheets[1] as Sheet;
    expect({ tables, charts: kept, page }).toEqual({ tables: sheet.tables, charts, page: sheet.page });
  });

  it("has the same bytes whenever it is written", async () => {
    expect(await writeWorkbook(workbook)).toEqual(await writeWorkbook(workbook));
  });

  it("puts the elements of a series in the order of the file format", async () => {
    const dots = await (await partsOf(workbook)).text("xl/charts/chart1.xml");
    const [series = ""] = dots.match(/<c:ser>.*?<\/c:ser>/) ?? [];
    const places = ["</c:tx>", "<c:spPr><a:ln", "<c:marker>", "<c:xVal>", "<c:yVal>"].map((part) =>
      series.indexOf(part),
    );
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((one, other) => one - other));
  });

  it("keeps the style of the table's headings", () => {
    expect(read.sheets[1]?.cells[0]).toEqual(cells[0]);
  });
});

describe("a table whose cells are no table any more", () => {
  it.each<[string, Workbook]>([
    ["a heading is blank", withHeading(1, { value: "" })],
    ["a heading is a number", withHeading(1, { value: 3 })],
    ["a heading is a formula", withHeading(1, { formula: '="Out"&"turn"', value: "Outturn" })],
    ["two headings are alike", withHeading(1, { value: "PICKED" })],
    [
      "a spill reaches into it",
      changed({
        cells: [...cells, { row: 2, column: 3, formula: "=B2:C3", value: 0, spill: { rows: 2, columns: 2 } }],
        tables: [
          { name: "Past", area: { row: 0, column: 0, rows: 4, columns: 3 } },
          { name: "Wide", area: { row: 0, column: 2, rows: 4, columns: 2 } },
        ],
      }),
    ],
  ])("is left out when %s, and its cells stay", async (reason, book) => {
    const parts = await partsOf(book);
    const tables = parts.paths.filter((path) => path.startsWith("xl/tables/"));
    expect(tables).toHaveLength(reason === "a spill reaches into it" ? 1 : 0);
    expect(readWorkbook(await writeWorkbook(book)).sheets[1]?.cells.length).toBeGreaterThanOrEqual(cells.length);
  });
});

describe("charts from elsewhere", () => {
  /** The file with one of its chart parts changed. */
  async function readChanged(change: (chart: string) => string) {
    const file = await JSZip.loadAsync(await writeWorkbook(workbook));
    const path = "xl/charts/chart2.xml";
    file.file(path, change((await file.file(path)?.async("string")) ?? ""));
    return readWorkbook(await file.generateAsync({ type: "uint8array" })).sheets[1]?.charts ?? [];
  }

  it("are passed over when they are of another kind", async () => {
    expect(await readChanged((chart) => chart.replaceAll("barChart", "pieChart"))).toEqual([charts[0]]);
    expect(await readChanged((chart) => chart.replace('barDir val="col"', 'barDir val="bar"'))).toEqual([charts[0]]);
  });

  it("take a name from the cell that they name it with, and a colour of ours for the theme's", async () => {
    const [, columns] = await readChanged((chart) =>
      chart
        .replace(
          "<c:tx><c:v>g</c:v></c:tx>",
          '<c:tx><c:strRef><c:f>Plain!$A$1</c:f><c:strCache><c:pt idx="0"><c:v>tea</c:v></c:pt></c:strCache></c:strRef></c:tx>',
        )
        .replace('<a:srgbClr val="7A9A5B"/>', '<a:schemeClr val="accent1"/>'),
    );
    expect(columns?.series[0]).toMatchObject({ name: "tea", color: "#2e5e4e" });
  });
});

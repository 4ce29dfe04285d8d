import { afterEach, describe, expect, test } from "vitest";
import { type NodeWorkbook, openInNode } from "../../src/engine/node-workbook";
import { seasonBook } from "../../src/sample-books/season";
import { springLots } from "../../src/sample-books/season/lots";
import { firstLotRow, largestDifference } from "../../src/sample-books/season/places";
import type { Direction } from "../../src/sorting/row-order";
import { lookersByPlace, type Sorting } from "../../src/sorting/sorted-table";
import { sampleWordsIn } from "../../src/words/in-every-language/samples";
import { addressOf, placeOf } from "../../src/workbook/addresses";
import type { Cell, Sheet, Workbook } from "../../src/workbook/workbook";

let open: NodeWorkbook;
afterEach(() => open.close());

type Content = string | number | Omit<Cell, "row" | "column">;
type Contents = Readonly<Record<string, Content | undefined>>;

const sheetOf = (name: string, contents: Contents, more: Partial<Sheet> = {}): Sheet => ({
  name,
  columnWidths: {},
  rowHeights: {},
  merges: [],
  cells: Object.entries(contents).flatMap(([address, content]) => {
    if (content === undefined) return [];
    if (typeof content === "object") return [{ ...placeOf(address), ...content }];
    const isFormula = typeof content === "string" && content.startsWith("=");
    return [{ ...placeOf(address), ...(isFormula ? { formula: content } : { value: content }) }];
  }),
  ...more,
});

/** Five lots of an invented farm; the third has no finished weight yet. */
const lots = [
  ["Hedge", 900, 207],
  ["Wall", 450, 99],
  ["Hedge", 610, undefined],
  ["Cherry", 1200, 288],
  ["Wall", 800, 168],
] as const;

/** Columns A to C as above, and what each test puts beside them, by row. */
function book(more: (row: number) => Contents, sheets: readonly Sheet[] = [], names: Workbook["names"] = []): Workbook {
  const contents: Record<string, Content | undefined> = { A1: "plot", B1: "fresh", C1: "finished", ...more(1) };
  for (const [index, [plot, fresh, finished]] of lots.entries()) {
    const row = index + 2;
    Object.assign(
      contents,
      { [`A${row}`]: plot, [`B${row}`]: fresh },
      finished && { [`C${row}`]: finished },
      more(row),
    );
  }
  const columns = Math.max(
    3,
    ...Object.keys({ ...more(2), ...more(3) })
      .filter((address) => address < "G")
      .map((address) => placeOf(address).column + 1),
  );
  const tables = [{ name: "Book", area: { row: 0, column: 0, rows: 9, columns } }];
  return { name: "a test", names, sheets: [sheetOf("Lots", contents, { tables }), ...sheets] };
}

async function start(workbook: Workbook): Promise<void> {
  open = openInNode(workbook);
  await open.calculate();
}

function sorting(column: string, direction: Direction = "up", more: Partial<Sorting> = {}): Sorting {
  const table = open.toWorkbook().sheets[0]?.tables?.[0];
  if (!table) throw new Error("there is no table");
  const place = placeOf(`${column}1`).column;
  return { sheet: "Lots", table, column: place, direction, withBeside: true, language: "en", ...more };
}

/** Sorts, and calculates what follows. */
async function sort(column: string, direction: Direction = "up", more: Partial<Sorting> = {}) {
  const done = open.sort(sorting(column, direction, more));
  await open.calculate();
  return done.is === "refused" ? done.refusal : done.is;
}

const column = (letter: string, sheet = "Lots") => [2, 3, 4, 5, 6].map((row) => open.value(sheet, `${letter}${row}`));
const formulas = (letter: string) => {
  const at = placeOf(`${letter}1`).column;
  return open
    .toWorkbook()
    .sheets[0]?.cells.flatMap((cell) =>
      cell.column === at && cell.row > 0 && cell.formula !== undefined ? cell.formula : [],
    );
};

/** By the fresh weight of a lot, which tells them apart, what stands in a column. */
const byLot = (letter: string) => new Map(column("B").map((fresh, index) => [fresh, column(letter)[index]]));

/** After undo everything is as before, after redo as it was sorted. */
async function comesBack(before: Workbook): Promise<void> {
  const sorted = open.toWorkbook();
  open.undo();
  await open.calculate();
  expect(open.toWorkbook()).toEqual(before);
  open.redo();
  await open.calculate();
  expect(open.toWorkbook()).toEqual(sorted);
}

describe("sorting a table", () => {
  test("puts rows in order, blanks last both ways, and comes back in one step", async () => {
    await start(book(() => ({})));
    const before = open.toWorkbook();
    expect(await sort("C")).toBe("sorted");
    expect(column("C")).toEqual([99, 168, 207, 288, undefined]);
    expect(column("A")).toEqual(["Wall", "Wall", "Hedge", "Cherry", "Hedge"]);
    await comesBack(before);
    await sort("C", "down");
    expect(column("C")).toEqual([288, 207, 168, 99, undefined]);
    expect(await sort("C", "down")).toBe("in order");
  });

  test("takes notes, formats and texts that read like numbers along with their row", async () => {
    const note = { value: "350", style: { format: "0.0", fill: "#f7efd3" }, note: "weighed twice" } as const;
    await start(book((row) => (row === 2 ? { D2: note } : row === 5 ? { D5: "=B5*2" } : {})));
    const before = open.toWorkbook();
    await sort("B");
    const moved = open.toWorkbook().sheets[0]?.cells.find((cell) => cell.note !== undefined);
    expect(moved).toEqual({ row: 4, column: 3, ...note });
    expect(formulas("D")).toEqual(["=B6*2"]);
    await comesBack(before);
  });

  test("has formulas read their own row again, and leaves all else that they read", async () => {
    await start(
      book(
        (row) =>
          row === 1
            ? { D1: "outturn", E1: "share", F1: "worth", H1: 0.3, H3: "=H1*2" }
            : {
                [`D${row}`]: `=IF(C${row}="","",C${row}/B$${row})`,
                [`E${row}`]: `=B${row}/SUM(B$2:B$6)+0*SUM($B:$B)`,
                [`F${row}`]: `=Lots!$B${row}*$H$1+H3+Prices!A${row}+0*Start`,
              },
        [sheetOf("Prices", { A2: 10, A3: 20, A4: 30, A5: 40, A6: 50 })],
        [{ name: "Start", formula: "=Lots!$H$1" }],
      ),
    );
    const before = open.toWorkbook();
    const answers = ["D", "E", "F"].map(byLot);
    await sort("B", "down");
    expect(column("B")).toEqual([1200, 900, 800, 610, 450]);
    expect(["D", "E", "F"].map(byLot)).toEqual(answers);
    expect(formulas("D")?.[0]).toBe('=IF(C2="","",C2/B$2)');
    expect(formulas("E")?.[0]).toBe("=B2/SUM(B$2:B$6)+0*SUM($B:$B)");
    expect(formulas("F")?.[0]).toBe("=Lots!$B2*$H$1+H3+Prices!A5+0*Start");
    await comesBack(before);
  });

  test("keeps what formulas call columns of the table", async () => {
    await start(
      book((row) => (row === 1 ? { D1: "loss" } : { [`D${row}`]: "=Book[[#This Row],[fresh]]-SUM(Book[finished])" })),
    );
    const before = open.toWorkbook();
    const answers = byLot("D");
    await sort("B");
    expect(byLot("D")).toEqual(answers);
    expect(new Set(formulas("D"))).toEqual(new Set(["=Book[[#This Row],[fresh]]-SUM(Book[finished])"]));
    await comesBack(before);
  });

  test("calculates on from there: what is typed into a row is followed where the row now stands", async () => {
    await start(book((row) => (row === 1 ? { D1: "outturn" } : { [`D${row}`]: `=C${row}/B${row}` })));
    await sort("B");
    open.set("Lots", "C2", 45);
    await open.calculate();
    expect(open.value("Lots", "D2")).toBe(0.1);
    open.set("Lots", "C2", 99);
    await open.calculate();
    expect(open.value("Lots", "D2")).toBe(0.22);
  });

  test("has a formula in one row alone move, and leaves nothing of it behind", async () => {
    await start(book((row) => (row === 5 ? { D5: "=B5+1" } : row === 4 ? { D4: "by hand" } : {})));
    await sort("B", "down");
    expect(column("D")).toEqual([1201, undefined, undefined, "by hand", undefined]);
    open.set("Lots", "B5", 1);
    await open.calculate();
    expect(column("D")).toEqual([1201, undefined, undefined, "by hand", undefined]);
  });

  test("takes what is typed right beside the table along, or leaves it when asked to", async () => {
    const beside = book(() => ({}));
    const [sheet] = beside.sheets as [Sheet];
    const remark = { row: 1, column: 3, value: "rain" };
    const apart = { row: 1, column: 6, value: "a heading of its own" };
    await start({ ...beside, sheets: [{ ...sheet, cells: [...sheet.cells, remark, apart] }] });
    await sort("B");
    expect(byLot("D").get(900)).toBe("rain");
    expect(open.value("Lots", "G2")).toBe("a heading of its own");
    open.undo();
    await sort("B", "up", { withBeside: false });
    expect(open.value("Lots", "D2")).toBe("rain");
  });

  test("has answers beside the table, spilled from above, stand by their lots", async () => {
    await start(book((row) => (row === 1 ? { G1: '=IF(ISNUMBER(B1:B9),B1:B9*2,"")' } : {})));
    const answers = byLot("G");
    expect(answers.get(900)).toBe(1800);
    await sort("B");
    expect(byLot("G")).toEqual(answers);
  });
});

describe("a table is not sorted", () => {
  const refused = (at: string, is: string, text?: string) => ({
    ...{ is, at: { sheet: "Lots", ...placeOf(at) } },
    ...(text !== undefined && { text }),
  });

  test.each<[string, (row: number) => Contents, object]>([
    [
      "a row above",
      (row) => (row > 2 ? { [`D${row}`]: `=B${row}-B${row - 1}` } : {}),
      refused("D3", "reads other rows", "B2"),
    ],
    ["a sum so far", (row) => ({ [`D${row}`]: `=SUM(B$2:B${row})` }), refused("D3", "reads other rows", "B$2:B3")],
    [
      "one row by dollars",
      (row) => (row > 1 ? { [`D${row}`]: `=B${row}/$B$3` } : {}),
      refused("D2", "reads other rows", "$B$3"),
    ],
    ["its own place", (row) => (row > 1 ? { [`D${row}`]: "=ROW()-1" } : {}), refused("D2", "goes by its place", "ROW")],
    [
      "a place reckoned out",
      (row) => (row > 2 ? { [`D${row}`]: `=OFFSET(B${row},-1,0)` } : {}),
      refused("D3", "goes by its place", "OFFSET"),
    ],
    [
      "a row by its number",
      (row) => (row > 1 ? { [`D${row}`]: `=B${row}/INDEX($B$2:$B$9, 2)` } : {}),
      refused("D2", "reads other rows", "INDEX($B$2:$B$9,2)"),
    ],
    [
      "what another sheet says of a row",
      (row) => (row > 1 ? { [`D${row}`]: `=Flags!B${row}` } : {}),
      refused("D2", "reads what follows rows", "Flags!B2"),
    ],
    [
      "a name for a row",
      (row) => (row > 1 ? { [`D${row}`]: `=B${row}/Best` } : {}),
      refused("D2", "reads other rows", "Best"),
    ],
  ])("where a formula reads %s", async (_, more, refusal) => {
    const flags = sheetOf(
      "Flags",
      Object.fromEntries(
        [2, 3, 4, 5, 6].flatMap((row) => [
          [`A${row}`, `=Lots!B${row}`],
          [`B${row}`, `=A${row}*2`],
        ]),
      ),
    );
    await start(
      book((row) => (row === 1 ? { D1: "more" } : more(row)), [flags], [{ name: "Best", formula: "=Lots!$B$3" }]),
    );
    const before = open.toWorkbook();
    expect(await sort("B")).toEqual(refusal);
    expect(open.toWorkbook()).toEqual(before);
  });

  test("with cells that spill, merged cells or hidden rows", async () => {
    await start(book((row) => (row === 3 ? { D3: { formula: "=B3:B4", spill: { rows: 2, columns: 1 } } } : {})));
    expect(await sort("B")).toEqual(refused("D3", "spills"));
    open.close();
    const plain = book(() => ({}));
    const [sheet] = plain.sheets as [Sheet];
    await start({ ...plain, sheets: [{ ...sheet, merges: [{ row: 2, column: 0, rows: 2, columns: 1 }] }] });
    expect(await sort("B")).toEqual(refused("A3", "merged"));
    open.close();
    await start({ ...plain, sheets: [{ ...sheet, hiddenRows: [4] }] });
    expect(await sort("B")).toEqual({ is: "hidden", row: 4 });
  });
});

describe("what looks at rows of a table by their place", () => {
  test("is named: formulas elsewhere, names and charts, but nothing that takes all rows or stands beside its row", async () => {
    const axis = { title: "" };
    const chart = {
      ...{
        kind: "columns" as const,
        title: "The first three",
        description: "",
        area: { row: 9, column: 0, rows: 9, columns: 4 },
      },
      ...{ series: [{ name: "fresh", across: "Lots!$A$2:$A$4", up: "Lots!$B$2:$B$4", color: "#2e5e4e" }] },
      ...{ across: axis, up: axis },
    } as const;
    const card = sheetOf(
      "Card",
      {
        B2: "=Lots!B3",
        B3: "=SUM(Lots!B1:B20)",
        B4: "=SUM(Lots!B2:B4)",
        B5: "=Best",
        B6: "=INDEX(Lots!B:B,3)",
        B7: "=INDEX(Lots!B:B,1)",
        B8: "=INDEX(Lots!B:B,MATCH(450,Lots!B:B,0))",
        B9: "=ROWS(TAKE(Lots!B1:B20,2))",
      },
      { charts: [chart] },
    );
    await start(
      book(
        (row) => (row > 1 ? { [`H${row}`]: `=C${row}/B${row}` } : {}),
        [card],
        [
          { name: "Best", formula: "=Lots!$B$5" },
          { name: "All", formula: "=Lots!$B$2:$B$9" },
        ],
      ),
    );
    const found = lookersByPlace(open.toWorkbook(), sorting("B")).map((each) =>
      typeof each === "string" ? each : `${each.sheet}!${addressOf(each.row, each.column)}`,
    );
    expect(found).toEqual(["Card!B2", "Card!B4", "Card!B5", "Card!B6", "Card!B9", "Best", "The first three"]);
  });
});

describe("the season, its lots sorted", () => {
  /** Every number of the season by what it belongs to: rows of the table by their group, all others by their cell. */
  const numbers = () => {
    const cells = open.toWorkbook().sheets.find(({ name }) => name === "Season")?.cells ?? [];
    const group = (row: number) => cells.find((cell) => cell.row === row && cell.column === 4)?.value;
    return new Map(
      cells.flatMap(({ row, column, value }) => {
        const isTable = row > 5 && row < 16 && column > 3 && column < 15;
        const at = isTable ? `${group(row)} ${column}` : addressOf(row, column);
        return typeof value === "number" ? [[at, Number(value.toPrecision(10))] as const] : [];
      }),
    );
  };
  const flags = () => {
    const rows = springLots().map((_, index) => firstLotRow + index);
    return new Map(rows.map((row) => [open.value("Lots", `A${row}`), open.value("Lots", `I${row}`)]));
  };

  test("keeps every number, flag and proof, table, charts and names, and comes back", {
    timeout: 240_000,
  }, async () => {
    await start(seasonBook(sampleWordsIn.en));
    const before = open.toWorkbook();
    const [season, flagged] = [numbers(), flags()];
    expect(season.size).toBeGreaterThan(70);
    const orders: [string, Direction][] = [
      ["E", "down"],
      ["C", "up"],
    ];
    for (const [letter, direction] of orders) {
      expect(lookersByPlace(open.toWorkbook(), sorting(letter))).toEqual([]);
      const unsorted = open.toWorkbook().sheets[0]?.cells;
      expect(await sort(letter, direction)).toBe("sorted");
      expect(open.toWorkbook().sheets[0]?.cells).not.toEqual(unsorted);
      expect(numbers()).toEqual(season);
      expect(flags()).toEqual(flagged);
      expect(open.value("Proof", largestDifference)).toBeLessThan(1e-9);
    }
    const { names, sheets } = open.toWorkbook();
    const besides = ({ tables, charts, page }: Sheet) => ({ tables, charts, page });
    expect(names).toEqual(before.names);
    expect(sheets.map(besides)).toEqual(before.sheets.map(besides));
    for (const _ of orders) open.undo();
    await open.calculate();
    expect(open.toWorkbook()).toEqual(before);
  });
});

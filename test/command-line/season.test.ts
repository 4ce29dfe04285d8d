import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it, test } from "vitest";
import { booksAt } from "../../src/command-line/files-in";
import { columnsIn } from "../../src/command-line/season/columns";
import { csvOf } from "../../src/command-line/season/csv";
import { optionsIn } from "../../src/command-line/season/options";
import { report } from "../../src/command-line/season/report";
import { SeasonOfBooks, type Wanted } from "../../src/command-line/season/season";
import { seasonWorkbook } from "../../src/command-line/season/season-workbook";
import { isOfOthers } from "../../src/command-line/season/weights";
import { openInNode } from "../../src/engine/node-workbook";
import { commandWordsIn } from "../../src/words/in-every-language/commands";
import type { Cell, Sheet, Workbook } from "../../src/workbook/workbook";
import { readWorkbook } from "../../src/xlsx/read-workbook";
import { writeWorkbook } from "../../src/xlsx/write-workbook";
import { bookOfLots } from "../book-speed/books";

const { season: words } = commandWordsIn.en;

type Content = string | number | null | { readonly formula: string; readonly value: string | number };

/** Rows from A1 on; null leaves a cell blank. A day is a number under a date format. */
function sheetOf(name: string, rows: readonly (readonly Content[])[], more: Partial<Sheet> = {}): Sheet {
  const cells = rows.flatMap((row, index) =>
    row.flatMap((content, column): Cell[] => {
      const place = { row: index, column };
      if (content === null) return [];
      if (typeof content === "object") return [{ ...place, ...content }];
      const isDay = typeof content === "number" && content > 40_000;
      return [{ ...place, value: content, ...(isDay && { style: { format: "yyyy-mm-dd" } }) }];
    }),
  );
  return { name, cells, columnWidths: {}, rowHeights: {}, merges: [], ...more };
}

const bookOf = (...sheets: Sheet[]): Workbook => ({ name: "Book", sheets });
const nothingSaid: Wanted = { columns: {}, unit: undefined, unnamed: undefined };

function seasonOf(books: Readonly<Record<string, Workbook>>, wanted: Partial<Wanted> = {}) {
  const all = new SeasonOfBooks({ ...nothingSaid, ...wanted });
  for (const [file, book] of Object.entries(books)) all.add(file, book);
  return { all, season: all.season() };
}

const grams = sheetOf("Lots", [
  ["Lot", "Picked", "Plot", "Fresh, g", "Finished, g"],
  ["a1", 45_386, "stream", 800, 176],
  ["a2", 45_387, "slope", 900, null],
  ["total", null, null, { formula: "=SUM(D2:D3)", value: 1700 }, { formula: "=SUM(E2:E3)", value: 176 }],
]);
const kilograms = sheetOf("Spring", [
  ["Our spring"],
  [],
  ["batch", "garden", "green leaf (kg)", "made tea (kg)"],
  ["b1", "slope", 1.25, 0.275],
]);

describe("a season over books", () => {
  it("takes the lots of the sample season in Chinese as those of the English one", () => {
    const sample = (name: string) => readWorkbook(new Uint8Array(readFileSync(`sample-workbooks/${name}`)));
    const taken = (name: string) => {
      const { season } = seasonOf({ "season.xlsx": sample(name) });
      const { unit, lots } = season;
      const plots = [...new Set(lots.map(({ plot }) => plot))];
      return {
        unit,
        lots: lots.map(({ sheet, plot, ...lot }) => ({ ...lot, plot: plots.indexOf(plot) })),
        columns: season.columns.map(({ as }) => as),
      };
    };
    expect(taken("season.xlsx").lots.length).toBeGreaterThan(70);
    expect(taken("zh/season.xlsx")).toEqual(taken("season.xlsx"));
  });

  it("takes lots by the usual headings, into one unit, with the place that each came from", () => {
    const { season } = seasonOf({ "a.xlsx": bookOf(grams), "b.xlsx": bookOf(kilograms) });
    expect(season.unit).toBe("g");
    expect(season.lots).toEqual([
      { file: "a.xlsx", sheet: "Lots", row: 2, lot: "a1", date: 45_386, plot: "stream", fresh: 800, finished: 176 },
      {
        file: "a.xlsx",
        sheet: "Lots",
        row: 3,
        lot: "a2",
        date: 45_387,
        plot: "slope",
        fresh: 900,
        finished: undefined,
      },
      { file: "b.xlsx", sheet: "Spring", row: 4, lot: "b1", date: "", plot: "slope", fresh: 1250, finished: 275 },
    ]);
    expect(season.notCounted).toEqual([]);
    expect(season.columns.filter(({ file }) => file === "b.xlsx")).toEqual([
      { file: "b.xlsx", as: "lot", heading: "batch" },
      { file: "b.xlsx", as: "plot", heading: "garden" },
      { file: "b.xlsx", as: "fresh", heading: "green leaf (kg)", unit: "kg" },
      { file: "b.xlsx", as: "finished", heading: "made tea (kg)", unit: "kg" },
    ]);
    const inKilograms = seasonOf({ "a.xlsx": bookOf(grams), "b.xlsx": bookOf(kilograms) }, { unit: "kg" }).season;
    expect(inKilograms.lots.map(({ fresh, finished }) => [fresh, finished])).toEqual([
      [0.8, 0.176],
      [0.9, undefined],
      [1.25, 0.275],
    ]);
  });

  // 1 jin is 500 g, and a pound 453.59237 g by definition: 10 · 500 / 453.59237 = 11.0231131…
  it("reads the units of headings, formats and labels", () => {
    const jin = sheetOf("账", [
      ["批次", "地块", "鲜叶（斤）", "成茶（斤）"],
      ["1", "东坡", 10, 2.2],
    ]);
    const { season } = seasonOf({ "c.xlsx": bookOf(jin) }, { unit: "lb" });
    expect(season.lots[0]?.fresh).toBeCloseTo(11.0231131, 6);
    expect(season.lots[0]).toMatchObject({ lot: "1", plot: "东坡" });
    const form = sheetOf("Lot 7", [
      ["lot", 7],
      ["date", 45_390],
      ["fresh leaf weight, g", 940],
      ["finished weight, g", 204],
    ]);
    expect(seasonOf({ "d.xlsx": bookOf(form) }).season.lots).toEqual([
      { file: "d.xlsx", sheet: "Lot 7", row: 3, lot: 7, date: 45_390, plot: "", fresh: 940, finished: 204 },
    ]);
  });

  it("takes the headings that are named, several for one thing, and the usual ones where a book has none of them", () => {
    const odd = sheetOf("Lots", [
      ["Nr", "Terrace side", "Basket kg", "Fresh (guess) kg", "Tin kg"],
      ["7", "north", 2.5, 3, 0.55],
    ]);
    const columns = columnsIn("lot = nr, plot=terrace  SIDE, fresh=Basket kg|Korb kg, finished=Tin kg");
    if (typeof columns === "string") throw new Error(columns);
    const { season, all } = seasonOf({ "odd.xlsx": bookOf(odd), "a.xlsx": bookOf(grams) }, { columns, unit: "kg" });
    expect(season.lots[0]).toMatchObject({ lot: "7", plot: "north", fresh: 2.5, finished: 0.55 });
    expect(season.lots[1]).toMatchObject({ lot: "a1", fresh: 0.8 });
    expect(all.unknownHeadings()).toEqual([
      { as: "fresh", heading: "korb kg", alike: ["basket kg", "fresh (guess) kg", "tin kg"] },
    ]);
  });

  it("says which other columns could be meant", () => {
    const twice = sheetOf("Lots", [
      ["lot", "fresh morning g", "fresh evening g", "finished g"],
      ["1", 500, 300, 110],
    ]);
    const { season } = seasonOf({ "t.xlsx": bookOf(twice) });
    expect(season.columns).toContainEqual({
      file: "t.xlsx",
      as: "fresh",
      heading: "fresh morning g",
      unit: "g",
      instead: ["fresh evening g"],
    });
    expect(report(season, 1, words)).toContain(
      'fresh from "fresh morning g" (g); "fresh evening g" could be meant as well: say which with --columns',
    );
  });

  it("leaves out what cannot be counted, with the cell and the reason", () => {
    const wrong = sheetOf("Lots", [
      ["lot", "fresh g", "finished g"],
      ["1", "about 350", 80],
      ["2", 200, 440],
      ["3", null, 90],
      ["4", -5, null],
      ["5", { formula: "=D6/E6", value: "#DIV/0!" }, 90],
      ["6", 500, "lost"],
      ["7", null, null],
      ["8", 500, 110],
    ]);
    const { season } = seasonOf({ "w.xlsx": bookOf(wrong) });
    expect(season.lots.map(({ lot }) => lot)).toEqual(["8"]);
    expect(season.notCounted.map(({ cell, why }) => [cell, words.why(why)])).toEqual([
      ["B2", 'the fresh weight is the text "about 350": type a number'],
      ["C3", "more tea than leaf: 440 g finished from 200 g fresh"],
      ["B4", "no fresh weight"],
      ["B5", "the fresh weight is -5: it must be above 0"],
      ["B6", "the fresh weight is the error #DIV/0!"],
      ["C7", 'the finished weight is the text "lost": type a number'],
    ]);
  });

  it("leaves out weights without a unit among others with one, unless their unit is said", () => {
    const plain = sheetOf("Lots", [
      ["lot", "fresh", "finished"],
      ["1", 700, 154],
    ]);
    const books = { "a.xlsx": bookOf(grams), "p.xlsx": bookOf(plain) };
    expect(seasonOf(books).season.notCounted.map(({ file, cell }) => [file, cell])).toEqual([["p.xlsx", "B2"]]);
    expect(words.why(seasonOf(books).season.notCounted[0]?.why ?? "hidden")).toContain("--unnamed g");
    const said = seasonOf(books, { unnamed: "kg" }).season;
    expect(said.lots.at(-1)).toMatchObject({ fresh: 700_000, finished: 154_000 });
    const alone = seasonOf({ "p.xlsx": bookOf(plain) }).season;
    expect([alone.unit, alone.lots[0]?.fresh]).toEqual([undefined, 700]);
    expect(report(alone, 1, words)).toContain("weights as they stand, since no heading names a unit");
  });

  it.each(Object.values(commandWordsIn).map(({ season }) => season.workbook.title))(
    "counts no lot twice, with %s among the books: sheets that read others, copies, hidden sheets, its own answer",
    (title) => {
      const restated = sheetOf("Card", [
        ["lot", "fresh g", "finished g"],
        ["a1", { formula: "=Lots!D2", value: 800 }, { formula: "=Lots!E2", value: 176 }],
      ]);
      const rows = [
        ["lot", "fresh g", "finished g"],
        ["x", 5, 1],
      ];
      const copy = sheetOf("Copy", rows, { isHidden: true });
      const { season } = seasonOf({
        "a.xlsx": bookOf(grams, restated, copy),
        "season.xlsx": { ...bookOf(grams), name: title },
      });
      expect(season.lots).toHaveLength(2);
      expect(season.notCounted).toEqual([
        { file: "season.xlsx", why: "own season", isMeant: true },
        { file: "a.xlsx", sheet: "Card", why: { kind: "rows of others", rows: 1 }, isMeant: true },
        { file: "a.xlsx", sheet: "Copy", why: "hidden" },
      ]);
      expect(season.notCounted.map(({ why }) => words.why(why))).toEqual([
        "it is a season that this command wrote",
        "1 row is worked out from other cells, which count already",
        "the sheet is hidden",
      ]);
    },
  );

  it("asks about a book that holds the lots of another", () => {
    const lots = [1, 2, 3, 4].map((lot) => [`c${lot}`, 45_400 + lot, 500 + lot, 110]);
    const heads = ["lot", "date", "fresh g", "finished g"];
    const { season } = seasonOf({
      "c.xlsx": bookOf(sheetOf("Lots", [heads, ...lots])),
      "older c.xlsx": bookOf(sheetOf("Lots", [heads, ...lots.slice(0, 3)])),
    });
    expect(season.alike).toEqual([{ file: "older c.xlsx", as: "c.xlsx", lots: 3 }]);
    expect(report(season, 2, words)).toContain("Counted twice?\n  older c.xlsx: 3 lots as in c.xlsx");
  });
});

test.each([
  ["=B4-C4", false],
  ["=400+420", false],
  ['=IF(B4="see Lots!A1",1,2)', false],
  ["=Lots!B4", true],
  ["=SUM(B2:B9)", true],
  ["=SUM(B2:D2)", false],
  ["=SUM(B:B)", true],
  ["=INDEX(Book[fresh],3)", true],
])("%s takes its weight from elsewhere: %s", (formula, expected) => {
  expect(isOfOthers(formula)).toBe(expected);
});

test("what was typed is read, or refused with what to type", () => {
  const options = optionsIn([
    "books",
    "--out",
    "s.xlsx",
    "--unit",
    "公斤",
    "--unnamed",
    "g",
    "--columns",
    "fresh=Leaf; finished=Tea, dry",
  ]);
  expect(optionsIn(["books", "--zh"])).toMatchObject({ language: "zh" });
  expect(options).toMatchObject({
    language: "en",
    paths: ["books"],
    out: "s.xlsx",
    unit: "kg",
    unnamed: "g",
    columns: { fresh: ["leaf"], finished: ["tea, dry"] },
  });
  expect(optionsIn(["books", "--columns", "leaf=Fresh"])).toContain(
    "lot, date, plot, fresh, finished before the equals signs",
  );
  expect(optionsIn(["books", "--columns"])).toContain('--columns must be followed by "fresh=');
  expect(optionsIn(["books", "--out", "s.csv"])).toContain("(--csv writes that)");
  expect(optionsIn(["books", "--unit", "stone"])).toContain("got stone");
  expect(optionsIn(["books", "--sum"])).toContain("got --sum");
  expect(optionsIn([])).toContain("npm run season -- FOLDER");
});

describe("what is written", () => {
  const { season } = seasonOf({ "a.xlsx": bookOf(grams), "b.xlsx": bookOf(kilograms) });

  // Slope: 275 of 1250, one lot open; stream: 176 of 800.
  it("is a workbook whose formulas come to what stands in it, and follow a weight", async () => {
    const workbook = readWorkbook(await writeWorkbook(seasonWorkbook(season, words)));
    expect(workbook.sheets.map(({ name }) => name)).toEqual(["By plot", "By book", "Lots", "Headings"]);
    const at = (sheet: string, row: number, column: number) =>
      workbook.sheets
        .find(({ name }) => name === sheet)
        ?.cells.find((cell) => cell.row === row && cell.column === column);
    expect(at("By plot", 3, 0)).toMatchObject({
      formula: "=TEA.SEASONTABLE(Lots!$F$1:$F$5,Lots!$G$1:$G$5,Lots!$H$1:$H$5)",
    });
    expect([4, 5, 6].map((row) => [0, 1, 2, 4, 5].map((column) => at("By plot", row, column)?.value))).toEqual([
      ["stream", 1, 0, 800, 176],
      ["slope", 1, 1, 1250, 275],
      ["total", 2, 1, 2050, 451],
    ]);
    expect(at("Lots", 1, 0)?.value).toBe("a.xlsx");
    const book = openInNode(workbook);
    try {
      await book.calculate();
      expect(book.value("By plot", "F6")).toBe(275);
      expect(book.value("By book", "G7")).toBeCloseTo(451 / 2050, 12);
      expect(book.value("Lots", "I2")).toBeCloseTo(0.22, 12);
      expect(book.value("Lots", "I3")).toBe("");
      book.set("Lots", "H3", 198);
      await book.calculate();
      expect(book.value("By plot", "F6")).toBe(473);
      expect(book.value("Lots", "I3")).toBeCloseTo(0.22, 12);
    } finally {
      book.close();
    }
  });

  it("is the same workbook in Chinese, with headings above what the function gives without its own", async () => {
    const inChinese = commandWordsIn.zh.season;
    const workbook = readWorkbook(await writeWorkbook(seasonWorkbook(season, inChinese)));
    expect(workbook.sheets.map(({ name }) => name)).toEqual(["按地块", "按工作簿", "批次", "标题"]);
    const texts = workbook.sheets.flatMap(({ name, cells }) =>
      cells.flatMap(({ value, formula }) => (typeof value === "string" && !formula && name !== "标题" ? [value] : [])),
    );
    const ofBooks = /^(?:[ab]\.xlsx|[ab]\d|Lots|Spring|stream|slope|total)$/;
    const names = /[（ ]g(?:）|。)|total/g;
    for (const text of texts) if (!ofBooks.test(text)) expect(text.replaceAll(names, "")).not.toMatch(/[a-z]/i);
    const book = openInNode(workbook);
    try {
      await book.calculate();
      expect(["A4", "E4", "A5", "A7", "F6"].map((address) => book.value("按地块", address))).toEqual([
        "地块",
        "鲜叶",
        "stream",
        "total",
        275,
      ]);
      book.set("批次", "H3", 198);
      await book.calculate();
      expect(book.value("按地块", "F6")).toBe(473);
    } finally {
      book.close();
    }
    expect(report(season, 2, inChinese)).toMatch(/^2 个工作簿的 3 批（读了 2 个文件），单位 g，1 批未完成\n/);
    expect(report(season, 2, inChinese)).toMatch(/\n合计 +2 +1 +0 +2050 +451/);
  });

  it("is CSV with numbers in full, days as days, and nothing that a spreadsheet would run", () => {
    const odd = sheetOf("Lots", [
      ["lot", "plot", "fresh g", "finished g"],
      ["=1+1", 'the "old", hedge', 3, 1],
    ]);
    const csv = csvOf(seasonOf({ "a.xlsx": bookOf(grams), "o.xlsx": bookOf(odd) }).season);
    expect(csv).toBe(
      [
        "\uFEFFfile,sheet,row,lot,date,plot,fresh g,finished g,outturn",
        "a.xlsx,Lots,2,a1,2024-04-04,stream,800,176,0.22",
        "a.xlsx,Lots,3,a2,2024-04-05,slope,900,,",
        `o.xlsx,Lots,2,'=1+1,,"the ""old"", hedge",3,1,${1 / 3}`,
        "",
      ].join("\r\n"),
    );
  });
});

test("a pattern that nothing matches is named as it was typed", () => {
  expect(booksAt(["test/nowhere/*.xlsx", "sample-workbooks"])).toBe("there is no test/nowhere/*.xlsx");
  expect(booksAt(["test/xlsx/*.docx"])).toBe("there is no test/xlsx/*.docx");
  expect(booksAt(["docs/guide"])).toBe("there is no .xlsx file there");
  expect(booksAt(["sample-workbooks/*lot.xlsx"])).toEqual([join("sample-workbooks", "one-lot.xlsx")]);
});

test("the command reads a folder, writes both files, and keeps what was there before", () => {
  const folder = mkdtempSync(join(tmpdir(), "season-"));
  try {
    mkdirSync(join(folder, "books"));
    writeFileSync(join(folder, "books", "one.xlsx"), bookOfLots(1, 4));
    writeFileSync(join(folder, "books", "two.xlsx"), bookOfLots(2, 4));
    writeFileSync(join(folder, "books", "copy of two.xlsx"), bookOfLots(2, 4));
    writeFileSync(join(folder, "season.csv"), "an older one");
    const files = ["--out", join(folder, "books", "season.xlsx"), "--csv", join(folder, "season.csv")];
    const run = (...words: string[]) =>
      spawnSync(process.execPath, ["--import", "tsx", "src/command-line/season.ts", ...words], { encoding: "utf8" });
    // As a command window hands it over that leaves the asterisk alone; what marks an open file is no book.
    writeFileSync(join(folder, "books", "~$one.xlsx"), "open");
    const first = run(join(folder, "books", "*.xlsx"), ...files);
    expect(first.stdout).toContain("8 lots of 2 books (3 files read)");
    expect(first.stdout).toContain("two.xlsx: it is the same file as copy of two.xlsx");
    expect(first.status).toBe(1);
    expect(readFileSync(join(folder, "season.csv.bak"), "utf8")).toBe("an older one");
    expect(readFileSync(join(folder, "season.csv"), "utf8").split("\r\n")).toHaveLength(10);
    rmSync(join(folder, "books", "copy of two.xlsx"));
    const again = run(join(folder, "books"), "--json");
    expect(again.status).toBe(0);
    const { lots, notCounted } = JSON.parse(again.stdout) as { lots: unknown[]; notCounted: unknown[] };
    expect(lots).toHaveLength(8);
    expect(notCounted).toEqual([{ file: "season.xlsx", why: "it is a season that this command wrote", isMeant: true }]);
  } finally {
    rmSync(folder, { recursive: true });
  }
}, 60_000);

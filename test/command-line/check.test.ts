import { describe, expect, it } from "vitest";
import { FileHost } from "../../src/command-line/check/file-host";
import { standingOut } from "../../src/command-line/check/standing-out";
import { english } from "../../src/words/en/messages";
import { chinese } from "../../src/words/zh/messages";
import type { Cell, Workbook } from "../../src/workbook/workbook";

/** Rows from A1 on; a text that begins with an equals sign is a formula, with what it holds behind it. */
const bookOf = (rows: readonly (readonly (string | number | readonly [string, string | number])[])[]): Workbook => ({
  name: "Farm",
  sheets: [
    {
      name: "Lots",
      columnWidths: {},
      rowHeights: {},
      merges: [],
      cells: rows.flatMap((row, index) =>
        row.map((content, column): Cell => {
          const place = { row: index, column };
          return typeof content === "object"
            ? { ...place, formula: content[0], value: content[1] }
            : { ...place, value: content };
        }),
      ),
    },
  ],
});

const heads = ["lot", "fresh g", "finished g"];

describe("the sheet check of a file", () => {
  it("says in words what stands out, and where", async () => {
    const book = bookOf([heads, ["a", 800, 176], ["b", 820, 1180], ["c", 900, 198]]);
    const { cells, standingOut: found, passedOver } = await standingOut(book, english);
    expect(cells).toBe(12);
    expect(passedOver).toEqual([]);
    expect(found).toContainEqual({
      sheet: "Lots",
      cell: "C3",
      rule: "finished above fresh",
      title: "More tea than leaf",
      words: "1180 finished from 820 fresh.",
    });
  });

  it("works out why a function of ours refuses, from the cells that it names", async () => {
    const book = bookOf([
      ["fresh", 912.5],
      ["moisture", 76],
      ["dry", ["=TEA.DRYMATTER(B1,B2)", "#VALUE!"]],
    ]);
    const { standingOut: found } = await standingOut(book, english);
    const error = found.find(({ rule }) => rule === "a TEA function with an error");
    expect(error?.words).toBe("#VALUE!: “moisture” must be from 0 up to, not including, 1 (76% or 0.76); got 76");
    const inChinese = (await standingOut(book, chinese)).standingOut.find(({ rule }) => rule === error?.rule);
    expect(inChinese?.title).toBe(chinese.check.rules["a TEA function with an error"].title);
  });

  it("finds nothing in a sheet without cells, and passes over one whose cells lie too far apart", async () => {
    const far: Cell = { row: 1_000_000, column: 16_000, value: 1 };
    const [sheet] = bookOf([["a", 1]]).sheets;
    if (!sheet) throw new Error("the book has a sheet");
    const sheets = [
      { ...sheet, cells: [] },
      { ...sheet, name: "Wide", cells: [...sheet.cells, far] },
    ];
    const found = await standingOut({ name: "Farm", sheets }, english);
    expect(found).toEqual({ cells: 3, standingOut: [], passedOver: ["Wide"] });
  });
});

describe("a file as a host", () => {
  const host = new FileHost({ ...bookOf([heads, ["a", 800, 176]]), names: [{ name: "fresh", formula: "=Lots!$B$2" }] });
  const beside = { sheet: "Lots", row: 0, column: 0 };

  it("reads addresses, whole columns and names", async () => {
    expect((await host.read("B2", beside)).values).toEqual([[800]]);
    expect((await host.read("Lots!C:C", beside)).values).toEqual([["finished g"], [176]]);
    expect((await host.read("FRESH", beside)).values).toEqual([[800]]);
  });

  it("says what it cannot read or work out", async () => {
    await expect(host.read("Shed!A1", beside)).rejects.toThrow("Shed");
    await expect(host.read("unknown", beside)).rejects.toThrow("unknown");
    await expect(host.evaluate("B2*2")).rejects.toThrow("B2*2");
  });
});

import { describe, expect, test } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import type { CellContent } from "../../src/host/workbook-host";
import { findingsOf } from "../../src/sheet-check/findings-of";
import { addressOf } from "../../src/workbook/addresses";
import { type Cell, type Rows, sheetOf } from "./sheet-of";

/** Sheets as farms keep them, invented: sound ones beside ones with a slip. */
const found = (rows: Rows): string[] =>
  findingsOf(sheetOf(rows), catalogue).map(({ rule, row, column }) => `${rule}: ${addressOf(row, column)}`);

const day = (value: CellContent): Cell => ({ value, format: 'd" "mmm yyyy' });
const sum = (formula: string, value: number): Cell => ({ formula, value });

const book = ["lot", "fresh g", "finished g"];
const lots: Rows = [
  ["A", 1200, 258],
  ["B", 840, 178],
  ["C", 1000, 216],
  ["D", 600, 126],
  ["E", 1500, 318],
];
const total: readonly Cell[] = ["Total", sum("=SUM(B2:B6)", 5140), sum("=SUM(C2:C6)", 1096)];

describe("units that stand in headings, behind numbers and in formats", () => {
  const kilograms = ["Lot", "Fresh, kg", "Tea packed, g"];
  const sound = [kilograms, ["A", 1.2, 258], ["B", 0.84, 178], ["C", 1, 216], ["D", 0.6, 126], ["E", 1.5, 318]];

  test("are converted before leaf and tea are compared", () => {
    expect(found(sound)).toEqual([]);
    expect(found([kilograms, ["A", 1.2, 1258]])).toEqual(["finished above fresh: C2"]);
    expect(found([...sound, ["F", 1, 150]])).toEqual(["outturn far from the others: C7"]);
    expect(
      found([
        ["批次", "鲜叶（斤）", "干茶（两）"],
        ["A", 12, 25],
        ["B", 8, 17],
      ]),
    ).toEqual([]);
    expect(
      found([
        ["批次", "鲜叶（斤）", "干茶（两）"],
        ["A", 2, 25],
      ]),
    ).toEqual(["finished above fresh: C2"]);
    expect(
      found([
        ["lot", "fresh", "finished"],
        ["", "kg", "g"],
        ["A", 1.2, 258],
      ]),
    ).toEqual([]);
    const inFormat: Rows = [
      book.slice(0, 1).concat("fresh", "finished"),
      ["A", { value: 1.2, format: '0.0" kg"' }, { value: 258, format: '0" g"' }],
    ];
    expect(found(inFormat)).toEqual([]);
  });

  test("are converted before dry matter is compared", () => {
    const headings = [...kilograms, "fresh moisture", "finished moisture"];
    expect(found([headings, ["A", 1.2, 258, 0.77, 0.05]])).toEqual([]);
    expect(found([headings, ["A", 0.95, 268, 0.76, 0.05]])).toEqual(["more dry matter out than in: C2"]);
  });

  test("are converted before a weight is held to the step of the scale", () => {
    const leaf: Rows = [[""], ["Lot", "Fresh leaf, kg"], ["A", 12.3], ["B", 11.7], ["C", 9.8]];
    expect(found([["Scale step, g", 0.5], ...leaf])).toEqual([]);
    expect(found([["Scale step", 0.5, "g"], ...leaf])).toEqual([]);
    expect(found([["Scale step", 0.5], ...leaf])).toEqual([]);
    expect(
      found([
        ["Scale step, kg", 0.5],
        ["Fresh leaf, kg", 12.3],
      ]),
    ).toEqual(["not a step of the scale: B2"]);
  });

  test("are those of a region where a word names it, and a catty otherwise weighs what it may", () => {
    const fresh = (heading: string, weight: number, finished = 129) =>
      found([
        ["lot", heading, "finished g"],
        ["A", weight, finished],
      ]);
    expect(fresh("fresh 台斤", 1)).toEqual([]);
    expect(fresh("fresh 台斤", 1, 620)).toEqual(["finished above fresh: C2"]);
    expect(fresh("fresh 司馬斤", 1)).toEqual([]);
    expect(fresh("fresh, catties", 10, 1290)).toEqual([]);
    expect(fresh("fresh, taels", 16, 129)).toEqual([]);
    const dry = (heading: string, weight: number) =>
      found([
        ["lot", heading, "finished g", "fresh moisture", "finished moisture"],
        ["A", weight, 1290, 0.76, 0.05],
      ]);
    // Ten 斤 of 500 g hold 1200 g of dry matter, ten of 604.79 g 1451 g; the tea holds 1225.5 g, seven at the most 1016 g.
    expect(dry("鲜叶（斤）", 10)).toEqual([]);
    expect(dry("鲜叶（斤）", 7)).toEqual(["more dry matter out than in: C2"]);
    expect(dry("鲜叶（公斤）", 4.5)).toEqual(["more dry matter out than in: C2"]);
  });
});

describe("columns that hold something else", () => {
  test("are no finished weights: days, scores", () => {
    const packed: Rows = [
      ["Lot", "Fresh, g", "Packed", "Made tea, g"],
      ["A", 1200, day(45760), 258],
    ];
    expect(found(packed)).toEqual([]);
    expect(
      found([
        ["Lot", "Fresh, g", "Final score"],
        ["A", 80, 91],
      ]),
    ).toEqual([]);
    expect(
      found([
        ["Lot", "Fresh, kg", "Finished, kg/ha"],
        ["A", 80, 91],
      ]),
    ).toEqual([]);
    const done = ["Lot", "Fresh, g", "Finished", "Made tea, g"];
    expect(found([done, ["A", 1200, day(45760), 258], ["B", 840, day(""), 178]])).toEqual([]);
    expect(found([done, ["A", 1200, day(45760), 1258]])).toEqual(["finished above fresh: D2"]);
    expect(
      found([
        ["Lot", "Fresh, g", "Packed, g"],
        ["A", 1200, 1258],
      ]),
    ).toEqual(["finished above fresh: C2"]);
  });

  test("are no moistures: air and meters", () => {
    expect(
      found([
        ["Lot", "Room humidity %", "Moisture meter no."],
        ["A", 60, 12],
      ]),
    ).toEqual([]);
    expect(
      found([
        ["批次", "空气湿度"],
        ["A", 60],
      ]),
    ).toEqual([]);
    expect(
      found([
        ["空气湿度", 60],
        ["Moisture meter no.", 12],
      ]),
    ).toEqual([]);
    expect(
      found([
        ["Lot", "Moisture"],
        ["A", 60],
      ]),
    ).toEqual(["moisture typed as a number of percent: B2"]);
  });

  test("are no targets of a round: a final drying is no weight", () => {
    expect(
      found([
        ["Scale step", 0.1],
        ["Final drying", 0.055],
      ]),
    ).toEqual([]);
  });

  test("are names, also when they are digits stored as text", () => {
    const numbered = (heading: string): Rows => [
      [heading, "Fresh, g"],
      [1, 1200],
      ["2", 800],
      [3, 900],
    ];
    for (const heading of ["No.", "Lot", "Lot no.", "批号", "编号"])
      expect(found(numbered(heading)), heading).toEqual([]);
    expect(found(numbered("Readings"))).toEqual(["text that looks like a number: A3"]);
  });
});

describe("rows that are no lots", () => {
  test("are below the total, below a blank row, and begin with the word of a summary", () => {
    const summary: Rows = [
      ["Days worked", 6, 9],
      ["Spring 2025", 5140, 1296],
    ];
    expect(found([book, ...lots, total, ...summary, ["Baskets", 7, 8]])).toEqual([]);
    expect(found([book, ...lots, [], ...summary])).toEqual([]);
    expect(found([book, ...lots, ...summary])).toEqual([]);
    expect(found([["批次", "鲜叶", "干茶"], ...lots, ["天数", 6, 9], ["2025年春茶", 5140, 5996]])).toEqual([]);
  });

  test("leave those that go on after a blank row, a day or a subtotal in the book", () => {
    const slip = ["F", 200, 900];
    expect(found([book, ...lots, [], slip])).toEqual(["finished above fresh: C8"]);
    expect(found([book, ...lots, [], ["Tuesday"], slip])).toEqual(["finished above fresh: C9"]);
    const subtotal = (row: number): Cell[] => ["", sum(`=SUM(B${row - 2}:B${row - 1})`, 2), sum("=1+0", 1)];
    const open = [book, ["A", 1200, 258], ["B", 840, 178], subtotal(4), slip, ["D", 600, 126], subtotal(7), slip];
    expect(found(open)).toEqual(["finished above fresh: C5", "finished above fresh: C8"]);
  });

  test("are none of those beside a running mean of the rows before", () => {
    const mean = (row: number): Cell => sum(`=AVERAGE(B$2:B${row - 1})`, 1000);
    const running = [
      [...book, "mean"],
      ["A", 1200, 258],
      ["B", 840, 178, mean(3)],
      ["C", 200, 900, mean(4)],
    ];
    expect(found(running)).toEqual(["finished above fresh: C4"]);
  });

  test("are answers of a table and what stands below them", () => {
    const split: Cell = { formula: "=TEA.CHARGESPLIT(C2,320)", value: 310.03 };
    const spill: Rows = [["weight g", "scale step", 0.1], [split, "", 930.1], [310.03], [310.03]];
    expect(found(spill)).toEqual([]);
    const typed: Rows = [["weight g", "scale step", 0.1], [310.03]];
    expect(found(typed)).toEqual(["not a step of the scale: A2"]);
  });

  test("are parts of two books beside each other", () => {
    expect(
      found([
        ["Lot", "Fresh, g", "", "Lot", "Finished, g"],
        ["A", 100, "", "X", 400],
      ]),
    ).toEqual([]);
    const two: Rows = [
      [...book, "", ...book],
      ["A", 1000, 200, "", "X", 100, 200],
    ];
    expect(found(two)).toEqual(["finished above fresh: G2"]);
  });
});

describe("forms with their labels at the left", () => {
  test("are lots without any function", () => {
    expect(
      found([
        ["Fresh weight", 300],
        ["Finished weight", 1300],
      ]),
    ).toEqual(["finished above fresh: B2"]);
    expect(
      found([
        ["Fresh weight", 1300],
        ["Finished weight", 300],
      ]),
    ).toEqual([]);
    expect(
      found([
        ["鲜叶重", 300, "克"],
        ["干茶重", 1300, "克"],
      ]),
    ).toEqual(["finished above fresh: B2"]);
    expect(
      found([
        ["鲜叶重", 3, "公斤"],
        ["干茶重", 650, "克"],
      ]),
    ).toEqual([]);
    expect(
      found([
        ["Finished weight", 1300],
        ["Fresh weight", 300],
      ]),
    ).toEqual([]);
  });

  test("are none where the labels speak of no weight", () => {
    expect(
      found([
        ["Fresh leaf spread", 14],
        ["Finished rolling", 45],
      ]),
    ).toEqual([]);
    expect(
      found([
        ["Fresh leaf", 14, "g"],
        ["Finished tea", 45, "g"],
      ]),
    ).toEqual(["finished above fresh: B2"]);
  });

  test("keep their labels below the headings of another table", () => {
    const form: Rows = [["stage", "moisture"], ["pan", 0.6], [], ["Fresh weight", 300, "g"], ["Fresh moisture", 0.76]];
    expect(found(form)).toEqual([]);
    expect(
      found([
        ["note", "moisture"],
        ["Fresh weight", 300],
      ]),
    ).toEqual(["moisture typed as a number of percent: B2"]);
    expect(
      found([
        ["", "moisture"],
        ["A", 0.6],
        ["Fresh weight", 300],
      ]),
    ).toEqual([]);
  });
});

describe("the step of a scale that nobody names", () => {
  const column = (weights: readonly number[]): Rows => [["fresh g"], ...weights.map((weight) => [weight])];

  test("shows one slip among eight or nine weights", () => {
    const weights = [1020, 1000.5, 990, 1010.5, 1020.37, 1005, 998.5, 1003];
    expect(found(column(weights))).toEqual(["not a step of the scale: A6"]);
    expect(found(column([...weights, 1001]))).toEqual(["not a step of the scale: A6"]);
  });

  test("is not taken for whole grams because one of few weights is half a gram", () => {
    expect(found(column([1020, 1000, 990, 1010, 1020.5, 1005, 998, 1003]))).toEqual([]);
  });
});

describe("a column for each lot", () => {
  const tall: Rows = [
    ["Lot", "A", "B", "C"],
    ["Fresh, g", 1200, 840, 1000],
    ["Finished, g", 258, 1178, 216],
    ["Finished moisture", 0.052, 0.051, 0.48],
  ];

  test("is read row by row, below a row of names or over three numbers and more", () => {
    const both = ["a moisture ten times off: D4", "finished above fresh: C3"];
    expect(found(tall)).toEqual(both);
    expect(found(tall.slice(1))).toEqual(["a moisture ten times off: D3", "finished above fresh: C2"]);
    expect(
      found([
        ["批次", "甲", "乙"],
        ["鲜叶（克）", 1200, 840],
        ["干茶（克）", 258, 878],
      ]),
    ).toEqual(["finished above fresh: C3"]);
  });

  test("is none in a form with an error beside each value, nor in its sums", () => {
    expect(
      found([
        ["Fresh weight, g", 1200, 0.2],
        ["Finished weight, g", 258, 0.3],
      ]),
    ).toEqual([]);
    const week: Rows = [
      ["Fresh, g", 1200, 840, 1000, sum("=SUM(B1:C1)", 2040)],
      ["Finished, g", 258, 178, 216, sum("=SUM(B2:D2)*9", 5868)],
    ];
    expect(found(week)).toEqual([]);
  });
});

describe("numbers that say how sure others are", () => {
  test("are no moistures, below a title in either language, and those above it are", () => {
    const form = (title: string): Rows => [
      ["Finished moisture", 0.052],
      ["Fresh moisture", 0.076],
      [],
      [title],
      ["Fresh moisture", 0.01],
      ["Finished moisture", 0.003],
    ];
    for (const title of ["How sure the readings are", "Errors of the readings", "Accuracy", "读数误差"]) {
      expect(found(form(title)), title).toEqual(["a moisture ten times off: B2"]);
    }
    expect(found(form("Measured again"))).toHaveLength(3);
    expect(found([["Uncertainty"], ["Lot", "Fresh moisture", "Finished moisture"], ["A", 0.01, 0.003]])).toEqual([]);
  });
});

describe("moistures in percent", () => {
  const book = (heading: string, third: Cell): Rows => [
    ["Lot", heading],
    ["A", 5.2],
    ["B", 4.9],
    ["C", third],
  ];

  test("are numbers where the heading says percent, and one that is ten times off stands out", () => {
    expect(found(book("Finished moisture, %", 5.1))).toEqual([]);
    expect(found(book("Finished moisture, %", 51))).toEqual(["a moisture ten times off: B4"]);
    expect(found(book("成茶含水率（百分数）", 5.1))).toEqual([]);
    expect(found(book("Finished moisture", 5.1))).toHaveLength(3);
  });

  test("are slips where the cell itself shows percent", () => {
    const shown: Cell = { value: 5.2, format: "0.0%" };
    expect(
      found([
        ["Lot", "Finished moisture, %"],
        ["A", shown],
      ]),
    ).toEqual(["moisture typed as a number of percent: B2"]);
  });
});

describe("dry matter that is gone", () => {
  const lot = (fresh: number, finished: number): Rows => [
    ["Lot", "Fresh, g", "Finished, g", "Fresh moisture", "Finished moisture"],
    ["A", fresh, finished, 0.76, 0.05],
  ];

  test("is asked about below half, and sift-outs are not", () => {
    // 1000 g hold 240 g of dry matter; 127 g of tea 120.65 g, 126 g 119.7 g.
    expect(found(lot(1000, 127))).toEqual([]);
    expect(found(lot(1000, 126))).toEqual(["most of the dry matter gone: C2"]);
    expect(found(lot(10_000, 252))).toEqual(["most of the dry matter gone: C2"]);
  });
});

describe("lists besides the books", () => {
  test("name no step for the weights: several scales, and a phone number is no weight", () => {
    const rows: Rows = [
      ["Fresh weight", 1240.25, "g", "", "Scale", "Reads to, g"],
      ["Finished weight", 279.6, "g", "", "kitchen", 0.1],
      ["", "", "", "", "platform", 50],
      ["Bags", 14],
      ["Phone of the carrier", "0171 555 0100"],
      ["Baskets", 6],
    ];
    expect(found(rows)).toEqual([]);
  });

  test("are followed by a form whose weight is still to come", () => {
    expect(
      found([
        ["鲜叶重", 1240, "克"],
        ["干茶重", "", "克"],
      ]),
    ).toEqual(["waits for a weight: B2"]);
  });
});

import { describe, expect, test } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import { findingsOf } from "../../src/sheet-check/findings-of";
import { addressOf } from "../../src/workbook/addresses";
import { type Cell, type Rows, sheetOf } from "./sheet-of";

/** Slips of the pen, one by one, on sheets of an invented farm; beside each what is like it and sound. */
const found = (rows: Rows): string[] =>
  findingsOf(sheetOf(rows), catalogue).map(({ rule, row, column }) => `${rule}: ${addressOf(row, column)}`);

const column = (heading: string, cells: readonly Cell[]): Rows => [
  ["Lot", heading],
  ...cells.map((cell, at) => [at + 1, cell]),
];
const time = (value: number): Cell => ({ value, format: "[h]:mm" });

describe("errors", () => {
  const error = "a TEA function with an error";
  const failing = (formula: string, value = "#VALUE!"): Cell => ({ formula, value });

  test("that one wrong text causes are counted behind it, however it comes to them", () => {
    const form: Rows = [
      ["Fresh weight", "abc", "g"],
      ["After airing", "", "g"],
      ["Aired", { formula: "=IF(ISBLANK(B2),B1,B2)", value: "abc" }],
      ["Water", failing("=TEA.WATER(B1,0.76)")],
      ["Dry", failing("=TEA.DRYMATTER(B3,0.76)")],
      ["Twice", failing("=B5*2")],
      ["All", failing("=SUM(B4:B6)")],
    ];
    const findings = findingsOf(sheetOf(form), catalogue);
    expect(findings.map(({ rule, row, column }) => `${rule}: ${addressOf(row, column)}`)).toEqual([
      "text that looks like a number: B1",
    ]);
    expect(findings[0]?.details).toEqual({ value: "abc", first: "B4", followers: "4" });
  });

  test("that others only hand on are counted behind the first", () => {
    const form: Rows = [
      ["Fresh weight", 900, failing("=TEA.WATER(B1,B2)"), failing("=TEA.DRYBASIS(C1)"), failing("=C1+D1")],
      ["Moisture", 76, failing("=1/0", "#DIV/0!"), failing("=TEA.DRYBASIS(C2)", "#DIV/0!")],
    ];
    const found = findingsOf(sheetOf(form), catalogue).filter(({ rule }) => rule === error);
    expect(found.map(({ row, column, details }) => [addressOf(row, column), details])).toEqual([
      ["C1", { code: "#VALUE!", first: "D1", followers: "2" }],
      ["D2", { code: "#DIV/0!", first: "C2", followers: "1" }],
    ]);
    expect(found[0]?.names).toEqual({ weight: "“Fresh weight”", moisture: "“Moisture”" });
  });

  test("of a formula that reads a heading are its own", () => {
    const book: Rows = [
      ["Plot", "Fresh, g", "Share of water"],
      ["slope", 900, 0.76, failing("=TEA.WATER(B1,C2)")],
    ];
    expect(found(book)).toEqual([`${error}: D2`]);
  });

  test("name arguments by the headings of a book, and not by the names of its rows", () => {
    const book: Rows = [
      ["Plot", "Picked", "Share of water"],
      ["slope", 900, 76, failing("=TEA.WATER(B2,C2)")],
    ];
    const [finding] = findingsOf(sheetOf(book), catalogue).filter(({ rule }) => rule === error);
    expect(finding?.names).toEqual({ weight: "“Picked”", moisture: "“Share of water”" });
  });
});

describe("a letter that slipped among digits", () => {
  const rule = "text that looks like a number";

  test.each(["12O0", "1l40", "3S0 g", "12.5O", "1I.5", "110O"])(
    "%s is a number gone wrong, and no heading",
    (typed) => {
      expect(found([...column("Fresh, g", [1200, typed, 1.1, 1150, 1180])])).toContain(`${rule}: B3`);
      const book: Rows = [
        ["Lot", "Fresh, g", "Finished, g"],
        ["A", 1200, 258],
        ["B", typed, typed],
        ["C", 192, 900],
      ];
      expect(found(book)).toEqual([`${rule}: B3`, `${rule}: C3`, "finished above fresh: C4"]);
      expect(found([["Fresh weight", typed, "g"]])).toEqual([`${rule}: B1`]);
    },
  );

  test.each(["L12", "1B", "2O", "A1l0", "Slope 10", "B2SO"])("%s is a name", (name) => {
    expect(
      found([
        ["Lot", "Fresh, g"],
        [name, 1200],
        [12, 900],
        [13, 950],
      ]),
    ).toEqual([]);
  });
});

describe("aired leaf heavier than fresh", () => {
  const rule = "heavier after than before";

  test("is found in a book, in a form, and in Chinese", () => {
    expect(
      found([
        ["Lot", "Fresh, g", "After airing, g"],
        ["A", 1200, 1100],
        ["B", 840, 940],
      ]),
    ).toEqual([`${rule}: C3`]);
    expect(
      found([
        ["Fresh weight", 1240, "g"],
        ["After airing overnight", 1361.2, "g"],
      ]),
    ).toEqual([`${rule}: B2`]);
    // A formula that writes the unit beside the number.
    const unit: Cell = { formula: '=IF(ISBLANK(B2)," assumed: not aired"," g")', value: " g" };
    expect(
      found([
        ["Fresh weight", 1240, unit],
        ["After airing overnight", 1361.2, unit],
      ]),
    ).toEqual([`${rule}: B2`]);
    expect(
      found([
        ["批次", "鲜叶（克）", "摊放后（克）"],
        ["甲", 1200, 1300],
      ]),
    ).toEqual([`${rule}: C2`]);
  });

  test("is compared in one unit, and hours of airing are no weight", () => {
    expect(
      found([
        ["Lot", "Fresh, kg", "After airing, g"],
        ["A", 1.2, 1100],
        ["B", 0.84, 760],
      ]),
    ).toEqual([]);
    expect(
      found([
        ["Lot", "Fresh, kg", "Aired"],
        ["A", 9.5, 14],
      ]),
    ).toEqual([]);
    expect(
      found([
        ["Lot", "Fresh, kg", "Airing time, h"],
        ["A", 9.5, 14],
      ]),
    ).toEqual([]);
  });

  test("is found from stage to stage", () => {
    const stages: Rows = [
      ["stage", "weight g", "moisture"],
      ["fresh", 900, 0.76],
      ["pan", 480, 0.6],
      ["fired", 2180, ""],
    ];
    expect(found(stages)).toEqual([`${rule}: B4`]);
  });
});

describe("a charge that gets heavier as it dries", () => {
  const rule = "heavier after than before";
  const clock = (minutes: number): Cell => ({ value: (540 + minutes) / 1440, format: "hh:mm" });
  const card = (weights: readonly Cell[], formula?: string): Rows => [
    ["Time", "Weight, g", ...(formula ? [{ formula, value: 0.5 }] : [])],
    ...weights.map((weight, row) => [clock(20 * row), weight]),
  ];

  test("is found in the list that a forecast reads, with a row not weighed yet between", () => {
    const forecast = "=TEA.DRYINGTIME(A2:A7,B2:B7,265,258)";
    expect(found(card([420, 381.5, "", 391, 351, 309.5], forecast))).toEqual([`${rule}: B5`]);
    expect(found(card([420, 381.5, "", 351, 327.5, 309.5], forecast))).toEqual([]);
    // Without a heading, and inside another function.
    const bare = card([420, 381.5, 391, 351, 327.5, 309.5], "=INDEX(TEA.DRYINGTIME(A2:A7,B2:B7,265,258),1,2)").map(
      (row, index) => (index === 0 ? ["", "", row[2] ?? ""] : row),
    );
    expect(found(bare)).toEqual([`${rule}: B4`]);
  });

  test("is found whatever else reads the cells, and however the forecast names the list", () => {
    const weights = [420, 381.5, 391, 351, 327.5, 309.5];
    const whole = "=TEA.DRYINGTIME(A:A,B:B,265,258)";
    expect(found(card(weights, whole))).toEqual([`${rule}: B4`]);
    const forecast = "=TEA.DRYINGTIME(A2:A7,B2:B7,265,258)";
    for (const other of ["=TEA.MOISTURENOW(420,0.75,B4)", '=TEA.CONVERTWEIGHT(B$2:B$7,"g","kg")']) {
      for (const headed of [true, false]) {
        const [first = [], ...rows] = card(weights, forecast);
        const top = headed ? first : ["", "", first[2] ?? ""];
        const sheet: Rows = [top, ...rows, [], ["", "", "", "", { formula: other, value: 0.7 }]];
        expect(found(sheet), `${other}, headed: ${headed}`).toEqual([`${rule}: B4`]);
      }
    }
  });

  test("is found beside clock times where all the others fall, and not among baskets that come in", () => {
    expect(found(card([420, 381.5, 351, 372.5, 309.5, 297, 288]))).toEqual([`${rule}: B5`]);
    expect(found(card([420, 381.5, 351, 372.5, 309.5, 325, 288]))).toEqual([]);
    expect(found(card([420, 381.5, 351, 372.5]))).toEqual([]);
    expect(found(card([3.2, 2.8, 4.1, 3.9, 2.2, 4.4, 3.1]))).toEqual([]);
  });
});

describe("a moisture ten times off", () => {
  const rule = "a moisture ten times off";

  test("is found on finished tea and on fresh leaf", () => {
    expect(found([["Finished moisture", 0.52]])).toEqual([`${rule}: B1`]);
    expect(found([["成茶含水率", 0.75]])).toEqual([`${rule}: B1`]);
    expect(found([["Finished moisture", 0.0052]])).toEqual([`${rule}: B1`]);
    expect(found([["Fresh moisture", 0.076]])).toEqual([`${rule}: B1`]);
    expect(
      found([
        ["Finished moisture", 0.12],
        ["Fresh moisture", 0.6],
      ]),
    ).toEqual([]);
    expect(
      found([
        ["Lot", "± finished moisture"],
        ["A", 0.003],
      ]),
    ).toEqual([]);
  });

  test("is found by the others of its column", () => {
    expect(found(column("Moisture", [0.052, 0.048, 0.05, 0.51, 0.055, 0.049]))).toEqual([`${rule}: B5`]);
    expect(found(column("Moisture", [0.76, 0.61, 0.35, 0.05, 0.74, 0.6]))).toEqual([]);
  });

  const plan = (targets: readonly number[], kinds: readonly string[] = []): Rows => [
    [
      "Leaf",
      1100,
      0.75,
      { formula: `=TEA.DRYINGSTEPS(B1,C1,B3:B${targets.length + 2},C3:C${targets.length + 2})`, value: "#VALUE!" },
    ],
    ["Round", "Target", "Kind"],
    ...targets.map((target, at) => [`round ${at + 1}`, target, kinds[at] ?? "moisture"]),
  ];
  const slips = (rows: Rows) => found(rows).filter((line) => line.startsWith(rule));

  test("is found among targets that fall round by round, and none among those that do", () => {
    expect(slips(plan([0.6, 0.47, 0.33, 0.055]))).toEqual([]);
    expect(slips(plan([0.6, 0.47, 0.33, 0.55]))).toEqual([`${rule}: B6`]);
    expect(slips(plan([0.6, 0.47, 0.033, 0.055]))).toEqual([`${rule}: B5`]);
    expect(slips(plan([0.6, 0.47, 0.33, 0.0055]))).toEqual([`${rule}: B6`]);
    expect(slips(plan([0.06, 0.47, 0.33, 0.055]))).toEqual([`${rule}: B3`]);
  });

  test("is none among losses of water", () => {
    expect(slips(plan([0.2, 0.47, 0.33, 0.055], ["water"]))).toEqual([]);
  });
});

describe("a dry basis of 5 and more", () => {
  test("is asked about, and one of wet leaf is not", () => {
    const rule = "a dry basis above 500 %";
    expect(found([["Dry basis", 5.5]])).toEqual([`${rule}: B1`]);
    expect(found([["Dry basis", 300]])).toEqual([`${rule}: B1`]);
    expect(found([[25, { formula: "=TEA.WETBASIS(A1)", value: 0.96 }]])).toEqual([`${rule}: A1`]);
    expect(found([["Dry basis", 4.3]])).toEqual([]);
  });
});

describe("tins in kilograms among grams", () => {
  const tins = [50.1, 49.8, 50.3, 0.05, 49.9, 50.2];
  const formula = "=TEA.PACKCHECK(A2:A7,50,4.5)";

  test.each([["Net weights, g"], ["Tins"], [""]])("are found below “%s”", (heading) => {
    const rows: Rows = [[heading, { formula, value: "agrees" }], ...tins.map((tin) => [tin])];
    expect(found(rows)).toEqual(["kilograms among grams: A5"]);
  });
});

describe("a time typed as a number", () => {
  const rule = "a time typed as a number";
  const turns = (wrap: Cell): Rows => [
    ["start", { value: 0.6, format: "hh:mm" }, { formula: "=TEA.TURNTIMES(B1,B2,B3)", value: 0.7 }],
    ["wrap", wrap],
    ["every", time(0.125)],
  ];

  test("is found where a function takes a time span", () => {
    expect(found(turns(9.3))).toEqual([`${rule}: B2`]);
    expect(found(turns(time(0.396)))).toEqual([]);
    expect(found(turns(0.5))).toEqual([]);
  });

  test("is found in a column of times, and no number of hours in a column of its own", () => {
    expect(found(column("Wrapped", [time(0.39), time(0.41), 9.3, time(0.375)]))).toEqual([`${rule}: B4`]);
    expect(found(column("Wrapped, hours", [9.3, 8.5, 10]))).toEqual([]);
    expect(found(column("Wrapped", [time(2.5), time(0.41), time(0.375)]))).toEqual([]);
  });
});

describe("a usual loss outside its limits", () => {
  const rule = "usual loss outside its limits";

  test("is found by labels, by functions, and in Chinese", () => {
    expect(
      found([
        ["Usual loss", 0.08],
        ["Least loss", 0.01],
        ["Largest loss", 0.06],
      ]),
    ).toEqual([`${rule}: B1`]);
    expect(
      found([
        ["通常损失", 0.005],
        ["最少损失", 0.01],
        ["最大损失", 0.06],
      ]),
    ).toEqual([`${rule}: B1`]);
    const form = (usual: number): Rows => [
      ["usually", usual, { formula: "=TEA.FINISHEDWEIGHT(900,0.76,0.05,B1)", value: 220 }],
      ["at the most", 0.06, { formula: "=TEA.FINISHEDBAND(900,0.76,0.05,,,,B2)", value: 210 }],
    ];
    expect(found(form(0.3))).toEqual([`${rule}: B1`]);
    expect(found(form(0.03))).toEqual([]);
  });
});

describe("kilograms among grams", () => {
  const rule = "kilograms among grams";

  const unit: Cell = { formula: '=" g"', value: " g" };
  /** The weights of one lot, with others in the place of some. */
  const lot = (other: Readonly<Record<number, Cell>> = {}): Rows =>
    [
      ["Fresh weight", 1240, unit],
      ["After airing overnight", 1136.2, unit],
      ["Sift-outs", 28.9, unit],
      ["For the pan (sifted)", 1106.6, unit],
      ["Finished weight written down", 279.6, unit],
    ].map(([label = "", value = "", behind = ""], row): Cell[] => [label, other[row] ?? value, behind]);

  test("are found in a single lot, in every weight of it", () => {
    expect(found(lot())).toEqual([]);
    for (const [row, address] of ["B1", "B2", "B3", "B4", "B5"].entries()) {
      for (const typed of row === 0 ? [1.24, 1.137] : [0.78, 1.137]) {
        expect(found(lot({ [row]: typed })), `${typed} in ${address}`).toContain(`${rule}: ${address}`);
      }
    }
    // A little was sifted out.
    expect(found(lot({ 2: 2.5 }))).toEqual([]);
    const [finding] = findingsOf(sheetOf(lot({ 3: 1.137 })), catalogue);
    expect(finding?.details).toEqual({ value: "1.137", meant: "1137" });
  });

  test("are found in a lot in Chinese", () => {
    const rows: Rows = [
      ["鲜叶重量", 1240, "克"],
      ["筛出", 0.78, "克"],
      ["下锅", 1106.6, "克"],
    ];
    expect(found(rows)).toEqual([`${rule}: B2`]);
  });

  test("are found in a column, and so are grams among kilograms", () => {
    expect(found(column("Fresh, g", [1200, 0.84, 1000, 600, 1500]))).toEqual([`${rule}: B3`]);
    expect(found(column("鲜叶（公斤）", [1.2, 840, 1, 0.6, 1.5]))).toEqual([`${rule}: B3`]);
  });

  test("are none in a column of small weights", () => {
    expect(found(column("Sample weight, g", [1200, 5, 1000, 600, 1500]))).toEqual([]);
    expect(found(column("Fresh, kg", [1.2, 24, 1, 0.6, 1.5]))).toEqual([]);
  });
});

describe("a formula that reads another row", () => {
  const rule = "a formula that reads another row";
  const outturns = (rows: readonly number[]): Rows => [
    ["lot", "fresh g", "finished g", "outturn"],
    ...rows.map((row, at): Cell[] => [`L${at}`, 1000, 215, { formula: `=C${row}/B${row}`, value: 0.215 }]),
  ];

  test("is found among formulas that read their own", () => {
    expect(found(outturns([2, 3, 4, 4, 6, 7]))).toEqual([`${rule}: D5`]);
    expect(found(outturns([2, 3, 4, 5, 6, 6]))).toEqual([`${rule}: D7`]);
    expect(found(outturns([2, 3, 4, 5, 6, 7]))).toEqual([]);
  });

  test("takes no name for a reference", () => {
    const named = [2, 3, 4, 4, 6, 7].map((row, at): Cell[] => [
      ...[`L${at}`, 1000, 215],
      { formula: `=C${row}/B${row}*X0`, value: 0.215 },
    ]);
    expect(found([["lot", "fresh g", "finished g", "outturn"], ...named])).toEqual([`${rule}: D5`]);
  });

  test("is found across a row, and across the headings of the next page", () => {
    const across = (columns: string): Rows => [
      ["Fresh, g", 1200, 840, 1000, 600, 1500],
      ["Finished, g", 258, 178, 216, 126, 318],
      ["kept", ...[...columns].map((letter): Cell => ({ formula: `=${letter}2/${letter}1`, value: 0.2 }))],
    ];
    expect(found(across("BCCEF"))).toEqual([`${rule}: D3`]);
    expect(found(across("BCDEF"))).toEqual([]);
    const pages: Rows = [2, 3, 4, 0, 0, 6, 8, 9].map((row): Cell[] =>
      row === 0 ? [] : ["lot", 1000, 215, { formula: `=C${row}/B${row}`, value: 0.215 }],
    );
    expect(found([["lot", "fresh g", "finished g", "outturn"], ...pages])).toEqual([`${rule}: D7`]);
  });

  test("is none where a whole part of a column reads elsewhere", () => {
    expect(found(outturns([2, 3, 4, 6, 7, 8]))).toEqual([]);
  });
});

describe("a number typed over a formula, where no column of formulas shows it", () => {
  const rule = "a number among formulas";
  const by = (formula: string): Cell => ({ formula, value: 0.2 });

  test("is found in a row of formulas that are alike", () => {
    const totals = (second: Cell): Rows => [
      ["day", "Ana", "Bo", "Cy", "Di"],
      ["Mon", 1200, 1130, 258, 5],
      ["Tue", 840, 790, 178, 4],
      ["", ""],
      ["both", by("=B2+B3"), second, by("=D2+D3"), by("=E2+E3")],
    ];
    expect(found(totals(1920))).toEqual([`${rule}: C5`]);
    expect(found(totals(by("=C2+C3")))).toEqual([]);
  });

  test("is found before and behind a row of formulas that read their own columns", () => {
    const kept = (letters: string): Rows => [
      ["Fresh, g", 1200, 840, 1000, 600],
      ["Finished, g", 258, 178, 216, 126],
      ["kept", ...[..."BCDE"].map((letter) => (letters.includes(letter) ? by(`=${letter}2/${letter}1`) : 0.2))],
    ];
    expect(found(kept("CDE"))).toEqual([`${rule}: B3`]);
    expect(found(kept("BCD"))).toEqual([`${rule}: E3`]);
    expect(found(kept("BCDE"))).toEqual([]);
    expect(found([["balance", 100, by("=B1*2"), by("=C1*2"), by("=D1*2")]])).toEqual([]);
  });

  test("is found with two formulas that are alike above, below, or around it", () => {
    const three = (at: number): Rows => [
      ["lot", "fresh g", "finished g", "part"],
      ...[2, 3, 4].map((row): Cell[] => [`L${row}`, 1000, 200, row === at ? 0.2 : by(`=C${row}/B${row}`)]),
    ];
    expect(found(three(2))).toEqual([`${rule}: D2`]);
    expect(found(three(3))).toEqual([`${rule}: D3`]);
    expect(found(three(4))).toEqual([`${rule}: D4`]);
    expect(found(three(0))).toEqual([]);
  });

  test("is found beside a formula in a block with labels", () => {
    const block = (odd: Cell): Rows => [
      ["worked out", "first pan", "second pan"],
      ["leaf", by("=B11*2"), by("=C11*2")],
      ["dry", by("=B12/3+1"), by("=C12/3+1")],
      ["lost", by("=B13-7"), odd],
      ["cost", by("=B14*B15"), by("=C14*C15")],
      ["kept", by("=1-B12"), by("=1-C12")],
      [],
      ["given", "first pan", "second pan"],
      ["-", "-", "-"],
      ["-", "-", "-"],
      ...[11, 12, 13, 14, 15].map((row): Cell[] => [`k${row}`, row, row + 1]),
    ];
    expect(found(block(7)).filter((line) => line.startsWith(rule))).toEqual([`${rule}: C4`]);
    expect(found(block(by("=C13-7")))).toEqual([]);
  });

  test("is none where inputs and formulas take turns, where a share has its base, or where formulas read it", () => {
    expect(
      found([
        ["share", 4],
        ["of it", by("=B1*2")],
        ["share", 5],
        ["of it", by("=B3*2")],
        ["share", 6],
        ["of it", by("=B5*2")],
      ]),
    ).toEqual([]);
    expect(found([["sums", 4, by("=B1+1"), 9, by("=D1+1"), by("=E1+1")]])).toEqual([]);
    expect(
      found([
        ["worked", by("=A10*12")],
        ["worked", by("=A11*15")],
        ["fee", 40],
        ["worked", by("=A12*8")],
        ["worked", by("=A13*9")],
      ]),
    ).toEqual([]);
  });
});

describe("a wrong text", () => {
  test("hides no slip in the rows below it", () => {
    const book: Rows = [
      ["lot", "fresh g", "finished g"],
      ["A", 1200, 258],
      ["B", "840 g", ""],
      ["C", 200, 900],
    ];
    expect(found(book)).toEqual(["text that looks like a number: B3", "finished above fresh: C4"]);
    const about: Rows = [
      ["lot", "fresh g", "finished g"],
      ["A", 1200, 258],
      ["B", "about 840", ""],
      ["C", 200, 900],
    ];
    expect(found(about)).toEqual(["finished above fresh: C4"]);
  });

  test("hides no slip beside the errors that it causes", () => {
    const outturn = (row: number, value: Cell & string): Cell => ({ formula: `=TEA.OUTTURN(B${row},C${row})`, value });
    const book: Rows = [
      ["lot", "fresh g", "finished g", "outturn"],
      ["A", "1200 g", "258 g", outturn(2, "#VALUE!")],
      ["B", 200, 900, outturn(3, "#VALUE!")],
    ];
    expect(found(book).filter((line) => line.startsWith("finished"))).toEqual(["finished above fresh: C3"]);
    expect(found(book).filter((line) => line.startsWith("text"))).toHaveLength(2);
  });

  test("is found in a form as well", () => {
    expect(
      found([
        ["Fresh weight", "350 g"],
        ["Finished moisture", 0.52],
      ]),
    ).toEqual(
      ["a moisture ten times off: B2", "text that looks like a number: B1"].sort((one, other) =>
        one < other ? 1 : -1,
      ),
    );
  });
});

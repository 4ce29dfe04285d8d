import { readFileSync } from "node:fs";
import JSZip from "jszip";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { CellError } from "../../src/cells/values";
import { type NodeWorkbook, openInNode } from "../../src/engine/node-workbook";
import { fileOf } from "../../src/sample-books/sample-books";
import { seasonBook } from "../../src/sample-books/season";
import { openLots, planted, plots, springLots } from "../../src/sample-books/season/lots";
import { fittedLot, verdictRow } from "../../src/sample-books/season/one-lot-sheet";
import { firstLotRow, largestDifference, lastLotRow, season } from "../../src/sample-books/season/places";
import { sampleWordsIn } from "../../src/words/in-every-language/samples";
import { addressOf, areaOf, placeOf } from "../../src/workbook/addresses";
import { isErrorAnswer } from "../../src/workbook/workbook";
import { readWorkbook } from "../../src/xlsx/read-workbook";
import { expectSample } from "./expect-sample";
import { practiceWeights } from "./practice-weights";

const committed = () => new Uint8Array(readFileSync("sample-workbooks/season.xlsx"));
const rowOf = (lot: number) => firstLotRow + lot - 1;
const book = springLots();
const lotAt = (number: number) => {
  const lot = book[number - 1];
  if (!lot) throw new Error(`there is no lot ${number}`);
  return lot;
};

let open: NodeWorkbook;
const sample = seasonBook(sampleWordsIn.en);
/** What stands in a cell before anyone types over it. */
const original = (sheet: string, address: string) => {
  const { row, column } = placeOf(address);
  const cells = sample.sheets.find(({ name }) => name === sheet)?.cells;
  const cell = cells?.find((each) => each.row === row && each.column === column);
  return cell?.formula ?? cell?.value ?? null;
};

let changed: [sheet: string, address: string][] = [];

/** Puts back what the test before has typed. */
function putBack(): void {
  for (const [sheet, address] of changed) open.set(sheet, address, original(sheet, address));
  changed = [];
}

/** Types over cells of the season as it was at first. */
async function seasonWith(changes: Record<string, number | string | null> = {}): Promise<void> {
  // As it stands already, it is calculated already.
  if (changed.length === 0 && Object.keys(changes).length === 0) return;
  putBack();
  for (const [place, content] of Object.entries(changes)) {
    const [sheet = "", address = ""] = place.split("!");
    changed.push([sheet, address]);
    open.set(sheet, address, content);
  }
  await open.calculate();
}

/** The cells of a block as rows. */
function block(sheet: string, reference: string) {
  const { row, column, rows, columns } = areaOf(reference);
  return Array.from({ length: rows }, (_, down) =>
    Array.from({ length: columns }, (_, right) => open.value(sheet, addressOf(row + down, column + right))),
  );
}

const numbersIn = (sheet: string, reference: string) =>
  block(sheet, reference)
    .flat()
    .filter((value) => typeof value === "number");

/** Lots by number, with what the column Flag says of them. */
const flagged = () =>
  block("Lots", `I${firstLotRow}:I${lastLotRow}`).flatMap(([flag], index) => (flag ? [[index + 1, flag]] : []));

describe("the committed season", () => {
  it("holds a worksheet table of the lots and two native charts", async () => {
    const parts = await JSZip.loadAsync(committed());
    expect(Object.keys(parts.files)).toEqual(
      expect.arrayContaining(["xl/tables/table1.xml", "xl/charts/chart1.xml", "xl/charts/chart2.xml"]),
    );
    const table = await parts.file("xl/tables/table1.xml")?.async("string");
    expect(table).toContain(`ref="A1:F${lastLotRow}"`);
    const dots = await parts.file("xl/charts/chart1.xml")?.async("string");
    expect(dots).toContain("<c:scatterChart>");
    expect(dots).toContain("<c:f>Flags!$B$2:$B$161</c:f>");
    expect(dots?.match(/<c:ser>/g)).toHaveLength(2);
    expect(await parts.file("xl/charts/chart2.xml")?.async("string")).toContain('<c:barDir val="col"/>');
  });

  it("has no spill inside the table", async () => {
    const [lots] = readWorkbook(committed()).sheets;
    const spilling = lots?.cells.filter(({ spill }) => spill !== undefined) ?? [];
    const right = Math.max(...(lots?.tables ?? []).map(({ area }) => area.column + area.columns));
    expect(spilling.map(({ column }) => column)).toEqual([right]);
  });
});

// A calculation takes seconds: one workbook is opened for all, and each calculation serves as many
// changes as can be told apart in its results.
describe("the season", { timeout: 300_000 }, () => {
  beforeAll(async () => {
    open = openInNode(sample);
    await open.calculate();
  });

  afterAll(() => open.close());

  it("is what `npm run samples` makes of the sources today", async () => {
    expectSample("season.xlsx", await fileOf(open.toWorkbook()));
  });

  it("is the same in every build", () => {
    expect(springLots()).toEqual(book);
    expect(book).toHaveLength(80);
  });

  it("flags the lots that were written down wrong, and no other", async () => {
    await seasonWith();
    expect(flagged()).toEqual([
      [planted.tooHigh, "high"],
      [planted.swapped, "more out than in"],
      [planted.tooLow, "low"],
    ]);
    expect(book.filter(({ remark }) => remark === "rain").length).toBeGreaterThan(8);
  });

  it("counts three open lots, leaves out the swapped one, and names it by its row", async () => {
    await seasonWith();
    const table = block("Season", "E6:O13");
    expect(table[0]?.slice(0, 4)).toEqual(["group", "lots", "open", "left out"]);
    expect(table.slice(1, 6).map(([name]) => name)).toEqual(expect.arrayContaining(plots.map(({ name }) => name)));
    expect(table[6]?.slice(0, 4)).toEqual(["total", book.length - openLots - 1, openLots, 1]);
    expect(open.value("Season", "E17")).toMatch(
      new RegExp(`^in full: rows left out: 1, .*“Finished, g”.*in place ${rowOf(planted.swapped)} `),
    );
  });

  it("waits in the outturn of an open lot and shows no error but those that charts pass over", async () => {
    await seasonWith();
    expect(open.value("Lots", `G${rowOf(book.length)}`)).toBe("");
    expect(open.value("Lots", `G${rowOf(planted.swapped)}`)).toBeGreaterThan(1);
    const errors = seasonBook(sampleWordsIn.en)
      .sheets.filter(({ name }) => name !== "Flags")
      .flatMap(({ name, cells }) =>
        cells
          .filter(({ row, column }) => open.value(name, addressOf(row, column)) instanceof CellError)
          .map(({ row, column }) => `${name}!${addressOf(row, column)}`),
      );
    expect(errors).toEqual([]);
  });

  it("puts every finished lot on the chart once, in the series that it belongs to", async () => {
    await seasonWith();
    const shown = block("Flags", `F${firstLotRow}:G${lastLotRow}`).map((row) =>
      row.map((value) => typeof value === "number"),
    );
    for (const [index, [asUsual, asFlagged]] of shown.entries()) {
      const lot = book[index];
      const bad = Object.values<number>(planted).includes(index + 1);
      expect([asUsual, asFlagged]).toEqual(lot?.finished ? [!bad, bad] : [false, false]);
    }
  });

  it("gives the chart a number for every day, since one text among them makes Excel count the lots instead", async () => {
    await seasonWith();
    expect(numbersIn("Flags", "B2:B161")).toHaveLength(160);
  });

  it("suspects the reading that was taken wrong in the lot that was weighed at every stage", async () => {
    await seasonWith();
    expect(open.value("One lot", "B8")).toBe(lotAt(fittedLot).fresh);
    expect(open.value("One lot", `A${verdictRow}`)).toMatch(/^does not balance: suspect "second firing"/);
    expect(open.value("One lot", "I22")).toMatch(/^dry matter grows/);
  });

  it("is proved by plain arithmetic", async () => {
    await seasonWith();
    expect(open.value("Proof", largestDifference)).toBeLessThan(1e-9);
    expect(open.value("Proof", "C3")).toBe("every answer agrees to nine decimals");
    // Of five plots and the total, and of every lot with both weights.
    expect(numbersIn("Proof", "B31:K39")).toHaveLength(60);
    expect(numbersIn("Proof, lot by lot", `I${firstLotRow}:I${lastLotRow}`)).toHaveLength(book.length - openLots);
  });

  it.each<[string, Record<string, number | string | null>]>([
    [
      "an open lot finished, another one opened, another leaf for today, another area, a text among the weights",
      {
        ...rightReading,
        [`Lots!F${rowOf(79)}`]: 171.4,
        [`Lots!F${rowOf(12)}`]: null,
        [`Season!${season.today}`]: 2240.5,
        "Season!B7": 512,
        [`Lots!F${rowOf(20)}`]: "lost",
      },
    ],
    [
      "no leaf today, another confidence, a plot of open lots alone, a sixth plot with a lot of its own",
      {
        [`Season!${season.today}`]: null,
        [`Season!${season.confidence}`]: 0.8,
        ...opened("Wall"),
        ...sixthPlot(),
      },
    ],
    [
      "lots that came out alike",
      Object.fromEntries(book.map(({ number, fresh }) => [`Lots!F${rowOf(number)}`, fresh / 4])),
    ],
  ])("and its proof follow %s", async (_, changes) => {
    await seasonWith(changes);
    expect(open.value("Proof", largestDifference)).toBeLessThan(1e-9);
    // The lot that was weighed at every stage balances once its one wrong reading is put right.
    expect(open.value("One lot", "A27") === "agrees").toBe("One lot!C12" in changes);
  });

  it("notices a wrong answer", async () => {
    await seasonWith({ "Season!F22": 300, [`Flags!D${rowOf(5)}`]: 1 });
    // Each in lines of its own, of which the largest is the one to look at.
    const [ofFlags, ofForecast] = [numbersIn("Proof", "B50"), numbersIn("Proof", "C74:C76")].map((all) =>
      Math.max(...all),
    );
    expect(ofFlags).toBeGreaterThan(1e-3);
    expect(ofForecast).toBeGreaterThan(1e-3);
    const others = ["B31:K39", "B51", "B74:B76"].flatMap((lines) => numbersIn("Proof", lines));
    expect(Math.max(...others)).toBeLessThan(1e-9);
    expect(open.value("Proof", largestDifference)).toBe(Math.max(ofFlags as number, ofForecast as number));
    expect(open.value("Proof", "C3")).toBe("look below for the number that differs");
  });

  it.each(["in the list", "in the book alone"])("waits for the land of a new plot that is named %s", async (where) => {
    const { "Season!B12": _, "Season!A12": name, ...lot } = sixthPlot();
    await seasonWith(where === "in the list" ? { "Season!A12": name as string, ...lot } : lot);
    isWhole();
    expect(open.value("Season", "A12")).toBe("New rows");
    expect([open.value("Season", "A13"), open.value("Season", "A14")]).toEqual(["", ""]);
    expect(open.value("Season", "C12")).toBe("land?");
    expect(open.value("Season", "E12")).toBe("New rows");
    expect([open.value("Season", "M12"), open.value("Season", "N12")]).toEqual(["", ""]);
    expect([open.value("Season", "M13"), open.value("Season", "N13")]).toEqual(["", ""]);
  });

  it("lists each new plot of the book once, however its name is written", async () => {
    const row = (lot: number) => rowOf(book.length + lot);
    const plotsOf = ["New rows", "new rows ", "Gully", " hedge"];
    await seasonWith({
      "Season!A7": "Wall ",
      ...Object.fromEntries(
        plotsOf.flatMap((plot, lot) => [
          [`Lots!C${row(lot + 1)}`, plot],
          [`Lots!E${row(lot + 1)}`, 500],
        ]),
      ),
    });
    const added = [open.value("Season", "A12"), open.value("Season", "A13"), open.value("Season", "A14")];
    expect(added.map((plot) => String(plot).toLowerCase())).toEqual(["gully", "new rows", ""]);
  });

  it("needs no flag once the bad lots are mended, and forecasts the same from all lots as from those unflagged", async () => {
    await seasonWith(mended());
    expect(flagged()).toEqual([]);
    const [all, unflagged] = block("Season", "F21:H22");
    expect(all).toEqual(unflagged);
    expect(open.value("Season", "E17")).toBe("no row of the book is left out");
    expect(open.value("Proof", largestDifference)).toBeLessThan(1e-9);
  });

  /** Nothing is broken anywhere, and flags, table, forecast, charts and proof have so many lots. */
  function staysWholeWith(finishedLots: number, lotsInTheMaking: number): void {
    isWhole();
    expect(seasonLots()).toEqual([finishedLots, lotsInTheMaking]);
    // On the charts stand all lots with both weights, the swapped one too.
    expect(numbersIn("Flags", "F2:G161")).toHaveLength(finishedLots + 1);
  }

  it("stays whole when the lots are sorted by weight", async () => {
    await seasonWith(sortedByWeight());
    staysWholeWith(76, 3);
  });

  /** The engine calculates a part by itself after each change of rows: the first end may be that of such a part. */
  async function calculateRows(): Promise<void> {
    await open.calculate();
    await open.calculate();
  }

  // What one of these steps broke, the others would not mend.
  it("stays whole while lots come and go", async () => {
    putBack();
    for (const row of [lastLotRow, rowOf(book.length), rowOf(40), rowOf(1)]) open.deleteRows("Lots", row);
    await calculateRows();
    staysWholeWith(74, 2);
    // Empty rows in the middle and above the first lot, and a lot below each of them and at the very end.
    const end = lastLotRow - 3;
    open.insertRows("Lots", end);
    putLot(end);
    for (const row of [rowOf(40), rowOf(1)]) {
      open.insertRows("Lots", row, 2);
      putLot(row + 1);
    }
    await calculateRows();
    staysWholeWith(77, 2);
  });

  it("carries no numbers of anyone's real lot as inputs", () => {
    const inputs = seasonBook(sampleWordsIn.en).sheets.flatMap(({ cells }) => cells.map(({ value }) => value));
    expect(practiceWeights.length).toBeGreaterThan(5);
    for (const weight of practiceWeights) expect(inputs).not.toContain(weight);
  });

  it("says on every sheet for the maker that the farm is invented", () => {
    for (const { name, cells } of seasonBook(sampleWordsIn.en).sheets.slice(0, 3)) {
      expect(
        cells.some(({ value }) => /invented/i.test(String(value))),
        name,
      ).toBe(true);
    }
  });
});

function putLot(row: number): void {
  open.set("Lots", `A${row}`, 99);
  open.set("Lots", `C${row}`, "Wall");
  open.set("Lots", `E${row}`, 1000);
  open.set("Lots", `F${row}`, 230.4);
}

/** As a spreadsheet sorts: whole rows of what is typed, by fresh weight. */
const sortedByWeight = () =>
  Object.fromEntries(
    [...book]
      .sort((one, other) => one.fresh - other.fresh)
      .flatMap(({ number, picked, plot, remark, fresh, finished }, index) =>
        [number, picked, plot, remark || null, fresh, finished].map(
          (content, column) => [`Lots!${addressOf(rowOf(index + 1) - 1, column)}`, content] as const,
        ),
      ),
  );

/** Nothing is broken anywhere, and every number is proved from what stands in the book now. */
const isWhole = () => {
  const broken = open
    .toWorkbook()
    .sheets.flatMap(({ name, cells }) =>
      cells.flatMap(({ row, column, value }) =>
        typeof value === "string" && isErrorAnswer(value) && !(name === "Flags" && value === "#N/A")
          ? [`${name}!${addressOf(row, column)}: ${value}`]
          : [],
      ),
    );
  expect(broken).toEqual([]);
  expect(open.value("Proof", largestDifference)).toBeLessThan(1e-9);
};
const seasonLots = () => {
  const table = block("Season", "E7:G16");
  return table.find(([name]) => name === "total")?.slice(1, 3);
};

/** What the three bad lots should have been. */
function mended(): Record<string, number> {
  const swapped = lotAt(planted.swapped);
  return {
    [`Lots!F${rowOf(planted.tooHigh)}`]: (lotAt(planted.tooHigh).finished ?? 0) - 118,
    [`Lots!F${rowOf(planted.tooLow)}`]: (lotAt(planted.tooLow).finished ?? 0) + 100,
    [`Lots!E${rowOf(planted.swapped)}`]: swapped.finished ?? 0,
    [`Lots!F${rowOf(planted.swapped)}`]: swapped.fresh,
  };
}

/** What the scale showed in the lot that was weighed at every stage, where the book has another reading. */
const rightReading = { "One lot!C12": 0.43 };

const opened = (plot: string): Record<string, null> =>
  Object.fromEntries(book.filter((lot) => lot.plot === plot).map(({ number }) => [`Lots!F${rowOf(number)}`, null]));

function sixthPlot(): Record<string, number | string> {
  const row = rowOf(book.length + 1);
  return {
    "Season!A12": "New rows",
    "Season!B12": 210,
    [`Lots!A${row}`]: book.length + 1,
    [`Lots!C${row}`]: "New rows",
    [`Lots!E${row}`]: 640.2,
    [`Lots!F${row}`]: 145.1,
  };
}

describe("the proof of the season", () => {
  const proofs = seasonBook(sampleWordsIn.en).sheets.filter(({ name }) => name.startsWith("Proof"));
  const formulas = proofs.flatMap(({ cells }) => cells.flatMap(({ formula }) => formula ?? []));

  it("uses only functions that every spreadsheet knows", () => {
    const used = new Set(formulas.flatMap((formula) => formula.match(/[A-Z][A-Z.]*(?=\()/g) ?? []));
    expect([...used].sort()).toEqual(
      [
        "ABS AND ATAN AVERAGE COUNT COUNTIFS EXP GAMMALN IF INDEX ISERROR ISNUMBER LN MATCH MAX MEDIAN MIN MOD NORMSINV OR PI ROW ROWS SQRT STDEV SUM",
        "SUMIFS TINV",
      ].flatMap((names) => names.split(" ")),
    );
  });

  it("takes its plain side from inputs, never from an answer", () => {
    const typed = /^(?:Lots!\$[ACEF]\$\d+|Season!\$?[AB]\$?\d+)$/;
    const [proof, byLot] = proofs;
    const plain = [
      ...(proof?.cells.filter(({ row }) => row < 15 || (row > 43 && row < 68) || row > 76) ?? []),
      ...(byLot?.cells.filter(({ column }) => column !== 7 && column !== 10) ?? []),
    ];
    const references = plain.flatMap(
      ({ formula }) => (formula ?? "").match(/(?:Lots|Season|Flags|'One lot')!\$?[A-Z]+\$?\d+/g) ?? [],
    );
    expect(references.length).toBeGreaterThan(500);
    expect(references.filter((reference) => !typed.test(reference))).toEqual([]);
  });
});

import { describe, expect, test } from "vitest";
import { CellError } from "../../src/cells/values";
import { openInNode } from "../../src/engine/node-workbook";
import { type Lot, newLot, withEntries, withWeighing } from "../../src/lots/lot";
import { lotWorkbook } from "../../src/lots/lot-workbook";
import { rowsToPaste } from "../../src/lots/rows-to-paste";
import { english } from "../../src/words/en/messages";
import { englishPhone } from "../../src/words/en/phone";
import { chinese } from "../../src/words/zh/messages";
import { chinesePhone } from "../../src/words/zh/phone";
import { addressOf } from "../../src/workbook/addresses";
import type { Cell } from "../../src/workbook/workbook";
import { readWorkbook } from "../../src/xlsx/read-workbook";
import { writeWorkbook } from "../../src/xlsx/write-workbook";

const morning = new Date(2026, 4, 12, 9, 0).getTime();
const minute = 60_000;
const words = { messages: english, phone: englishPhone };

/** Four charges of 240 g at 75 %, down to 60 % and then 20 %; the second weighed four times, the third once. */
function lotOfTheMorning(): Lot {
  let lot = newLot("a", "Upper / terrace: 12 May", "g", morning);
  lot = withEntries(
    lot,
    "charges",
    {
      weight: { texts: ["960"] },
      moisture: { texts: ["75 %"] },
      panLoad: { texts: ["240"] },
      targets: { texts: ["60 %", "20 %"] },
      targetKinds: { texts: ["moisture", "moisture"] },
    },
    morning,
  );
  lot = withEntries(lot, "turns", { start: { texts: ["13:40"] } }, morning);
  lot = withEntries(lot, "tins", { finishedWeight: { texts: ["180"] } }, morning);
  lot = withEntries(lot, "scale", { weight: { texts: ["much"] } }, morning);
  lot = withEntries(lot, "balance", { stages: { texts: ["=1", "withered", "fired", "finished"] } }, morning);
  const weighed = [
    { charge: 2, text: "200,5", at: 0 },
    { charge: 2, text: "190", at: 4 },
    { charge: 2, text: "0.182 kg", at: 8 },
    { charge: 3, text: "210", at: 9 },
    { charge: 2, text: "176", at: 12 },
  ];
  return weighed.reduce<Lot>(
    (all, { charge, text, at }, index) =>
      withWeighing(all, { id: `${index}`, charge, round: 1, text, unit: "g", at: morning + at * minute }, morning),
    { ...lot, endWeights: { "2": { text: "140", unit: "g" } } },
  );
}

const formulas = (cells: readonly Cell[]) => cells.filter(({ formula }) => formula !== undefined);

describe("a lot as a workbook", () => {
  const lot = lotOfTheMorning();
  const workbook = lotWorkbook(lot, words);
  const sheet = (name: string) => workbook.sheets.find((each) => each.name === name);

  test("has a sheet for each job that was typed into, the card and the weighings", () => {
    expect(workbook.sheets.map(({ name }) => name)).toEqual([
      "Plan the charges",
      "What should the scale read",
      "Turning times",
      "Fill the tins",
      "Close a lot's balance",
      "Firing card",
      "Weighings",
    ]);
  });

  test("has formulas whose results come out the same when they are worked out anew", async () => {
    const engine = openInNode(workbook);
    await engine.calculate();
    let compared = 0;
    for (const { name, cells } of workbook.sheets) {
      for (const { row, column, value } of cells.filter((cell) => cell.value !== undefined)) {
        const now = engine.value(name, addressOf(row, column));
        const where = `${name}!${addressOf(row, column)}`;
        if (now instanceof CellError) expect(now.code, where).toBe(value);
        else if (typeof value === "number") expect(now, where).toBeCloseTo(value, 9);
        else expect(now ?? "", where).toBe(value);
        compared += 1;
      }
    }
    engine.close();
    expect(compared).toBeGreaterThan(100);
    expect(workbook.sheets.flatMap(({ cells }) => formulas(cells)).length).toBeGreaterThan(30);
  });

  test("forecasts as its own formula does, whatever stands between the readings and in which order they came", async () => {
    // Noted late, moved from another lot, and one that nobody can read.
    const late = { id: "late", charge: 2, round: 1, text: "196", unit: "g" as const, at: morning + 2 * minute };
    const unread = { ...late, id: "unread", text: "heavy", at: morning + 6 * minute };
    const mixed = [late, unread].reduce((all, weighing) => withWeighing(all, weighing, morning), lot);
    const book = lotWorkbook(mixed, words);
    const weighed = book.sheets.find(({ name }) => name === "Weighings")?.cells ?? [];
    expect(weighed.filter(({ column, row }) => column === 3 && row > 2).map(({ value }) => value)).toEqual([
      200.5,
      196,
      190,
      182,
      176,
      "heavy",
      210,
    ]);
    const card = book.sheets.find(({ name }) => name === "Firing card")?.cells ?? [];
    const forecast = card.find(({ formula }) => formula?.includes("DRYINGTIME("));
    expect(forecast?.formula).toContain("$D$4:$D$8,");
    expect(card.find(({ row, column }) => row === forecast?.row && column === 4)?.value).toBe(176);
    const engine = openInNode(book);
    await engine.calculate();
    const now = [0, 1, 2, 3].map((right) => engine.value("Firing card", addressOf(forecast?.row ?? 0, 8 + right)));
    engine.close();
    const shown = [0, 1, 2, 3].map(
      (right) => card.find(({ row, column }) => row === forecast?.row && column === 8 + right)?.value,
    );
    expect(shown.map((value) => typeof value)).toEqual(["number", "number", "number", "number"]);
    expect(now).toEqual(shown.map((value) => expect.closeTo(Number(value), 9)));
  });

  test("shows what was noted in the row of the card", () => {
    const card = sheet("Firing card")?.cells ?? [];
    const rowOf = (charge: number, round: number) => 5 + (charge - 1) * 2 + (round - 1);
    const at = (row: number, column: number) => card.find((cell) => cell.row === row && cell.column === column);
    const second = rowOf(2, 1);
    // 60 g of dry matter in 176 g, and 150 g wanted.
    expect(at(second, 4)?.value).toBe(176);
    expect(at(second, 6)?.value).toBeCloseTo(26, 9);
    expect(at(second, 7)?.value).toBeCloseTo(1 - 60 / 176, 9);
    expect(at(second, 7)?.formula).toContain("TEA.MOISTURENOW(");
    expect(at(second, 8)?.formula).toContain("TEA.DRYINGTIME(");
    expect(at(rowOf(3, 1), 4)?.value).toBe(210);
    expect(at(rowOf(3, 1), 8)).toBeUndefined();
    expect(at(rowOf(1, 1), 4)?.value).toBeUndefined();
    expect(at(rowOf(1, 1), 6)?.value).toBe("");
  });

  test("is a file that opens with all of it", async () => {
    const read = readWorkbook(await writeWorkbook(workbook));
    expect(read.sheets.map(({ name }) => name)).toEqual(workbook.sheets.map(({ name }) => name));
    const before = workbook.sheets.flatMap(({ cells }) => formulas(cells)).length;
    expect(read.sheets.flatMap(({ cells }) => formulas(cells)).length).toBe(before);
  });

  test("speaks Chinese where the page does", () => {
    const names = lotWorkbook(lot, { messages: chinese, phone: chinesePhone }).sheets.map(({ name }) => name);
    expect(names.filter((name) => /[a-z]/i.test(name))).toEqual([]);
  });

  test("writes Chinese with the marks of Chinese", () => {
    const { sheets } = lotWorkbook(lot, { messages: chinese, phone: chinesePhone });
    const card = sheets.find(({ name }) => name === chinesePhone.sheet.card)?.cells ?? [];
    const weighings = sheets.find(({ name }) => name === chinesePhone.sheet.weighings)?.cells ?? [];
    const said = [...card, ...weighings].flatMap(({ value }) => (typeof value === "string" ? [value] : []));
    expect(said).toContain("称重：Upper / terrace: 12 May");
    expect(said).toContain("秤上读数（克）");
    const ours = said.map((text) => text.replace(lot.name, ""));
    expect(ours.filter((text) => /\p{Script=Han}.*[,;:](?!\d)|[,;:].*\p{Script=Han}/u.test(text))).toEqual([]);
  });

  test("gives each sheet a name of its own that a spreadsheet takes", () => {
    const named = {
      ...englishPhone,
      sheet: { ...englishPhone.sheet, card: "'Turning times'", weighings: "turning times" },
    };
    const names = lotWorkbook(lot, { messages: english, phone: named }).sheets.map(({ name }) => name);
    expect(names.slice(-2)).toEqual(["Turning times 2", "turning times 3"]);
  });

  test("with nothing planned has its weighings alone", () => {
    const unplanned = { ...lot, jobs: {} };
    expect(lotWorkbook(unplanned, words).sheets.map(({ name }) => name)).toEqual(["Weighings"]);
  });
});

describe("rows to paste", () => {
  const rows = rowsToPaste(lotWorkbook(lotOfTheMorning(), words), ".").split("\n");

  test("show numbers as the sheet does, and times as times", () => {
    expect(rows).toContain("2\t1\t2026-05-12 09:00\t200.5");
    const [card] = rows.filter((row) => row.startsWith("2\t60 % moisture left\t"));
    expect(card?.split("\t").slice(2, 8)).toEqual(["240.0", "150.0", "176.0", "09:12", "26.0", "65.9%"]);
  });

  test("take the decimal sign that the phone's language has", () => {
    const german = rowsToPaste(lotWorkbook(lotOfTheMorning(), words), ",").split("\n");
    expect(german).toContain("2\t1\t2026-05-12 09:00\t200,5");
  });

  test("never begin a formula with what someone typed", () => {
    expect(rows.some((row) => row.startsWith("'=1\t"))).toBe(true);
    expect(rows.filter((row) => row.split("\t").some((cell) => cell.startsWith("=")))).toEqual([]);
  });
});

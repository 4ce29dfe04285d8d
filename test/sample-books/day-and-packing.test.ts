import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { type NodeWorkbook, openInNode } from "../../src/engine/node-workbook";
import { day, drying, packing, picking } from "../../src/sample-books/day/places";
import { dayAndPacking } from "../../src/sample-books/day-and-packing";
import { sampleWordsIn } from "../../src/words/in-every-language/samples";
import { addressOf, areaOf, placeOf } from "../../src/workbook/addresses";

const book = dayAndPacking(sampleWordsIn.en);
let open: NodeWorkbook;
let typed: [sheet: string, address: string][] = [];

const original = (sheet: string, address: string) => {
  const { row, column } = placeOf(address);
  const cells = book.sheets.find(({ name }) => name === sheet)?.cells;
  return cells?.find((cell) => cell.row === row && cell.column === column)?.value ?? null;
};

/** Types over cells, and puts back what the test before has typed. */
async function bookWith(changes: Readonly<Record<string, number | string | null>> = {}): Promise<void> {
  for (const [sheet, address] of typed) open.set(sheet, address, original(sheet, address));
  typed = Object.keys(changes).map((place) => place.split("!") as [string, string]);
  for (const [sheet, address] of typed) open.set(sheet, address, changes[`${sheet}!${address}`] ?? null);
  await open.calculate();
}

const value = (sheet: string, address: string) => open.value(sheet, address);
const number = (sheet: string, address: string) => value(sheet, address) as number;
const clock = (days: number): string => {
  const minutes = Math.round(days * 1440);
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
};
const column = (sheet: string, reference: string) => {
  const { row, column, rows } = areaOf(reference);
  return Array.from({ length: rows }, (_, down) => value(sheet, addressOf(row + down, column)));
};

const proofSays = () => value("Proof", "C3");
const agrees = "every answer agrees to nine decimals";

beforeAll(() => {
  open = openInNode(book);
});
beforeEach(() => bookWith());
afterAll(() => open.close());

describe("the day of the invented farm", () => {
  test("has six charges, ends at 16:06, and the break makes four wraps overrun, by 1:01 at the most", () => {
    expect(value("Day", day.charges)).toBe(6);
    expect(clock(number("Day", day.end))).toBe("16:06");
    expect(clock(number("Day", day.longest))).toBe("1:01");
    expect(value("Day", day.overruns)).toBe(4);
  });

  test("with one pan would end at 17:00, with six overruns", () => {
    expect(clock(number("Day", day.onePan.end))).toBe("17:00");
    expect(clock(number("Day", day.onePan.longest))).toBe("1:01");
    expect(value("Day", day.onePan.overruns)).toBe(6);
  });

  test("follows the leaf, and waits without it", async () => {
    await bookWith({ [`Day!${day.leaf}`]: 840 });
    expect(value("Day", day.charges)).toBe(3);
    expect(column("Day", `E${day.firstRow}:E${day.firstRow + 10}`)[9]).toBe("total");
    expect(proofSays()).toBe(agrees);
    await bookWith({ [`Day!${day.leaf}`]: null });
    expect(value("Day", day.charges)).toBe("");
    expect(value("Day", day.end)).toBe("");
  });
});

describe("the other sheets", () => {
  test("expect the tea at 12:31, between 11:09 and 13:05", () => {
    const row = drying.forecastRow;
    expect(["E", "F", "G"].map((column) => clock(number("Drying", `${column}${row}`)))).toEqual([
      "11:09",
      "12:31",
      "13:05",
    ]);
  });

  test("fill 50.3 and 20.3 g, thirty and sixteen tins, and leave 8.8 g over", () => {
    const row = packing.planRow;
    expect([number("Packing", `F${row + 1}`), number("Packing", `F${row + 2}`)]).toEqual([50.3, 20.3]);
    expect([value("Packing", `G${row + 1}`), value("Packing", `G${row + 2}`)]).toEqual([30, 16]);
    expect(number("Packing", `I${row + 3}`)).toBeCloseTo(8.8, 9);
    expect(value("Packing", `E${packing.checkRow}`)).toBe("agrees");
  });

  test("take both verdicts of the stock into one line", () => {
    expect(value("Stock", "H21")).toBe(
      "From the tea: agrees. From the leaf: agrees, within 187 g: it shows that the tea can come from the leaf, never that it did.",
    );
  });
});

describe("the proof", () => {
  test("agrees with every answer", () => {
    expect(proofSays()).toBe(agrees);
  });

  test.each([
    [
      "another break and three pans",
      { [`Day!${day.breakStart}`]: 0.5, [`Day!${day.breakEnd}`]: 0.55, [`Day!${day.pans}`]: 3 },
    ],
    ["a sixth weighing", { [`Drying!A${drying.firstRow + 5}`]: 640 / 1440, [`Drying!B${drying.firstRow + 5}`]: 296 }],
    ["another sample", { [`Picking!B${picking.firstRow}`]: 9.4, [`Picking!${picking.halfWidth}`]: 0.2 }],
    [
      "moistures that fall in the tin",
      { [`Packing!${packing.moisture}`]: 0.052, [`Packing!${packing.driest}`]: 0.045 },
    ],
    ["a light tin", { [`Packing!A${packing.lastNet}`]: 40.9 }],
    ["another year", { "Stock!C7": 8012, "Stock!C16": 7000, "Stock!E6": 9 }],
  ])("agrees after typing %s", async (_, changes) => {
    await bookWith(changes);
    expect(proofSays()).toBe(agrees);
  });

  test("is proof of something: a wrong answer would be named", async () => {
    await bookWith({ "Proof!H6": 12, [`Packing!E${packing.checkRow}`]: "agrees?" });
    expect(proofSays()).toBe("look below for the one that differs");
  });
});

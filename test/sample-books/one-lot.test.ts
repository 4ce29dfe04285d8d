import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { CellError } from "../../src/cells/values";
import { type NodeWorkbook, openInNode } from "../../src/engine/node-workbook";
import { oneLot } from "../../src/sample-books/one-lot";
import { pastLots as samplePastLots } from "../../src/sample-books/one-lot/past-lots-sheet";
import { found, given, planRow } from "../../src/sample-books/one-lot/places";
import { firstValueRow, sampleCells } from "../../src/sample-books/one-lot/sample-values";
import { fileOf } from "../../src/sample-books/sample-books";
import { sampleWordsIn } from "../../src/words/in-every-language/samples";
import { addressOf, placeOf } from "../../src/workbook/addresses";
import { expectSample } from "./expect-sample";
import { practiceWeights } from "./practice-weights";

let open: NodeWorkbook;
const sample = oneLot(sampleWordsIn.en);

/** What stands in a cell of the sheet Lot before anyone types over it. */
const original = (address: string) => {
  const { row, column } = placeOf(address);
  return sample.sheets[0]?.cells.find((cell) => cell.row === row && cell.column === column)?.value ?? null;
};

let changed: string[] = [];

/** Types over cells of the sheet Lot, and puts back what the test before has typed. */
async function lotWith(changes: Record<string, number | string | null> = {}): Promise<void> {
  // As it stands already, it is calculated already.
  if (changed.length === 0 && Object.keys(changes).length === 0) return;
  for (const address of changed) open.set("Lot", address, original(address));
  for (const [address, content] of Object.entries(changes)) open.set("Lot", address, content);
  changed = Object.keys(changes);
  await open.calculate();
}

const onLot = (address: string) => open.value("Lot", address);
const largestDifference = () => open.value("Proof", "D3");

function errorsAnywhere(): string[] {
  return sample.sheets.flatMap(({ name, cells }) =>
    cells.flatMap(({ row, column }) => {
      const value = open.value(name, addressOf(row, column));
      return value instanceof CellError ? [`${name}!${addressOf(row, column)}: ${value.code} ${value.message}`] : [];
    }),
  );
}

describe("the sample lot", () => {
  beforeAll(async () => {
    open = openInNode(sample);
    await open.calculate();
  });

  afterAll(() => open.close());

  it("is what `npm run samples` makes of the sources today", async () => {
    expectSample("one-lot.xlsx", await fileOf(open.toWorkbook()));
  });

  it("plans four charges that add up to the leaf for the pan", async () => {
    await lotWith();
    expect(onLot(found.charges)).toBe(4);
    expect([0, 1, 2, 3].map((charge) => onLot(`F${planRow + charge}`))).toEqual([276.7, 276.7, 276.6, 276.6]);
    expect(onLot(`F${planRow + 4}`)).toBeCloseTo(1106.6, 9);
    expect(onLot(found.check)).toBe("agrees");
    expect(errorsAnywhere()).toEqual([]);
  });

  it("is proved by plain arithmetic", async () => {
    await lotWith();
    expect(largestDifference()).toBeLessThan(1e-9);
  });

  it.each<[string, Record<string, number | string | null>, number]>([
    ["a smaller pan", { [given.panLoad]: 190, [given.largestLoad]: 210 }, 6],
    ["no largest load", { [given.largestLoad]: null, [given.panLoad]: 400 }, 3],
    ["another fresh weight", { [given.fresh]: 1301.5 }, 4],
    ["less leaf for the pan", { [given.forPan]: 560.4 }, 2],
    ["a largest load that needs another charge", { [given.forPan]: 612.3 }, 3],
    ["a scale of whole grams", { [given.readability]: 1, [given.forPan]: 1106 }, 4],
    ["a measured fresh moisture", { [given.freshMoisture]: 0.761 }, 4],
    ["targets of another kind", { C24: "weight", B24: 0.25, C25: "points", B25: 0.2 }, 4],
    ["a finished weight that is too good", { [given.finished]: 330 }, 4],
    ["a finished weight that is too low", { [given.finished]: 226 }, 4],
  ])("and its proof follow %s", async (_, changes, charges) => {
    await lotWith(changes);
    expect(onLot(found.charges)).toBe(charges);
    expect(onLot(`E${planRow + charges}`)).toBe("total");
    expect(largestDifference()).toBeLessThan(1e-9);
    expect(errorsAnywhere()).toEqual([]);
  });

  it("changes plan and card together with the pan load", async () => {
    await lotWith({ [given.panLoad]: 190, [given.largestLoad]: 210 });
    const first = onLot(`G${planRow}`);
    expect(first).not.toBeCloseTo(212.2, 0);
    expect(open.value("Firing card", "B6")).toBe(first);
    expect(open.value("Firing card, continued", "A11")).toBe("Charge 6");
    expect(open.value("Firing card, continued", "A17")).toBe("");
    expect(open.value("Firing card", "A2")).toContain("Charges 5 to 6 stand on the next card");
  });

  it("says on the card when there are more charges than it holds", async () => {
    await lotWith({ [given.panLoad]: 100 });
    expect(onLot(found.charges)).toBe(11);
    expect(open.value("Firing card", "A2")).toContain("has 11 charges, the cards hold 8");
  });

  it.each<[string, Record<string, null>, number, string]>([
    [
      "airing",
      { [given.aired]: null },
      1106.6,
      "Assumed: not aired, although 104.5 g are neither sifted out nor for the pan",
    ],
    [
      "airing and sifting",
      { [given.aired]: null, [given.siftOuts]: null, [given.forPan]: null },
      1240,
      "Assumed: not aired; nothing sifted out",
    ],
    ["sifting", { [given.siftOuts]: null, [given.forPan]: null }, 1136.2, "Assumed: nothing sifted out"],
    ["a weight for the pan", { [given.forPan]: null }, 1107.3, "Assumed: all the rest is for the pan"],
    ["sift-outs", { [given.siftOuts]: null }, 1106.6, "Assumed: sift-outs are what is left over"],
  ])("goes on without %s, says what it assumes, on the card too, and is proved", async (_, missing, forPan, says) => {
    await lotWith(missing);
    expect(onLot(found.forPan)).toBeCloseTo(forPan, 9);
    const planned = Array.from({ length: onLot(found.charges) as number }, (_, row) => onLot(`F${planRow + row}`));
    expect((planned as number[]).reduce((sum, load) => sum + load, 0)).toBeCloseTo(forPan, 9);
    expect(onLot(found.assumed)).toBe(says);
    expect(open.value("Firing card", "A2")).toContain(says);
    for (const [address, label] of [
      [given.aired, "E13"],
      [given.siftOuts, "E14"],
      [given.forPan, "E15"],
    ] as const) {
      expect(onLot(label)).toMatch(address in missing ? /, assumed$/ : /[a-z]$/);
      expect(onLot(address.replace("B", "C"))).toMatch(address in missing ? /^ assumed/ : /^ g/);
    }
    expect(largestDifference()).toBeLessThan(1e-9);
    expect(errorsAnywhere()).toEqual([]);
  });

  it("takes the fresh weight of 1240 g as aired, so that its moisture for the pan is the fresh one", async () => {
    await lotWith({ [given.aired]: null, [given.siftOuts]: null, [given.forPan]: null, [given.freshMoisture]: 0.76 });
    expect(onLot(found.airedMoisture)).toBeCloseTo(0.76, 12);
    // 1240 g at 76 % hold 297.6 g dry matter; less 3 %, at 5.2 %: 297.6 · 0.97 / 0.948.
    expect(onLot(found.expected)).toBeCloseTo((297.6 * 0.97) / 0.948, 9);
    expect(onLot(found.missing)).toBe("not known");
  });

  it("asks beside a weight that cannot be, but not about a step of the scale", async () => {
    await lotWith({ [given.aired]: 1300 });
    expect(onLot("C10")).toBe(" g: more than the fresh leaf?");
    await lotWith({ [given.aired]: 1240.1, [given.forPan]: 1240.3, [given.siftOuts]: 0 });
    expect(onLot("C10")).toMatch(/^ g($| {2}·)/);
    expect(onLot("C12")).toBe(" g: more than there was?");
    await lotWith({ [given.fresh]: null, [given.aired]: "350 g" });
    expect(onLot("C10")).toBe(" g");
  });

  it("says which numbers are still the sample's: all at first, then those that nobody has typed over", async () => {
    await lotWith();
    expect(onLot("A3")).toMatch(/^Every number below is still the sample's/);
    expect(open.value("Firing card", "A3")).toBe("Every number on this card is the sample's, and invented.");
    await lotWith({ [given.fresh]: 1502 });
    expect(onLot("A3")).toMatch(/^Still the sample's, not yours: B5, B6, B10, B11, .* and 8 past lots\./);
    expect(onLot("C9")).toBe(" g");
    expect(onLot("C10")).toBe(" g  · sample");
    // What has no room in two rows of the card is counted, and named where there is room.
    expect(open.value("Firing card", "A3")).toBe(
      "10 of the 11 numbers behind this card are still the sample's, not yours: the sheet Sample values has them. So are the past lots.",
    );
    const own = Object.fromEntries(sampleCells.map((address) => [address, (original(address) as number) * 1.01]));
    const pastLots = Object.fromEntries([6, 7, 8, 9, 10, 11, 12, 13].map((row) => [`C${row}`, 1000 + row]));
    await lotWith({ ...own, [given.panLoad]: original(given.panLoad) as number });
    expect(open.value("Firing card", "A3")).toBe(
      "Still the sample's, not yours: Pan load wanted, the past lots behind the moisture.",
    );
    await lotWith({ ...own, [given.freshMoisture]: 0.75, [given.readability]: null });
    expect(onLot("A3")).toBe("Still the sample's, not yours: 8 past lots.");
    expect(open.value("Firing card", "A3")).toBe("");
    for (const [address, weight] of Object.entries(pastLots)) open.set("Past lots", address, weight);
    await open.calculate();
    expect(onLot("A3")).toBe("");
    for (const [index, [, , fresh]] of samplePastLots.entries()) open.set("Past lots", `C${index + 6}`, fresh);
  });

  it("lets a maker say that a number is theirs although it is the sample's too", async () => {
    await lotWith();
    const row = firstValueRow + sampleCells.indexOf(given.readability);
    open.set("Sample values", `E${row}`, "x");
    await open.calculate();
    expect(onLot("C20")).toBe(" g");
    expect(onLot("A3")).not.toContain("B20");
    open.set("Sample values", `E${row}`, null);
  });

  it.each([
    ["the finished weight", [given.finished]],
    ["the finished weight and its moisture", [given.finished, given.finishedMoisture]],
    ["every weight of the day", [given.fresh, given.aired, given.siftOuts, given.forPan, given.finished]],
  ])("waits without an error while %s is missing", async (_, missing) => {
    await lotWith(Object.fromEntries(missing.map((address) => [address, null])));
    expect(errorsAnywhere()).toEqual([]);
    expect(onLot(found.outturn)).toBe("");
    expect(onLot(found.check)).toBe("");
    expect(largestDifference()).toBeLessThan(1e-9);
  });

  it("carries no numbers of anyone's real lot as inputs", () => {
    const inputs = oneLot(sampleWordsIn.en).sheets.flatMap(({ cells }) => cells.map(({ value }) => value));
    expect(practiceWeights.length).toBeGreaterThan(5);
    for (const weight of practiceWeights) expect(inputs).not.toContain(weight);
  });

  it("says on its first lines that the farm and the numbers are invented", () => {
    const [lot] = oneLot(sampleWordsIn.en).sheets;
    expect(lot?.cells.find(({ row, column }) => row === 1 && column === 0)?.value).toMatch(/invented farm.*invented/);
  });
});

describe("the sample lot in Chinese", () => {
  const names = sampleWordsIn.zh.oneLot.sheets;
  const value = (address: string) => open.value(names.Lot, address);
  beforeAll(async () => {
    open = openInNode(oneLot(sampleWordsIn.zh));
    await open.calculate();
  });
  afterAll(() => open.close());

  it.each([
    ["the kinds of targets in its own words", { C24: "重量", B24: 0.25, C25: "百分点", B25: 0.2 }],
    ["those of the functions", { C24: "weight", B24: 0.25, C25: "points", B25: 0.2 }],
  ])("is proved with %s", async (_, changes) => {
    for (const [address, content] of Object.entries(changes)) open.set(names.Lot, address, content);
    await open.calculate();
    expect(value("H20")).toBeGreaterThan(0);
    expect(open.value(names.Proof, "D3")).toBeLessThan(1e-9);
  });

  it("says in Chinese what the check finds, what is assumed, and which numbers are the sample's", async () => {
    expect(value("F8")).toBe("相符");
    for (const [address, content] of Object.entries({ [given.finished]: 226, [given.aired]: null })) {
      open.set(names.Lot, address, content);
    }
    await open.calculate();
    expect([value("F8"), value("G66")]).toEqual(["损耗比预期多", " 损耗比预期多"]);
    expect(value(found.assumed)).toBe("假定：没有摊放，但有 104.5 克既未筛出也未下锅");
    expect(value("C9")).toBe(" 克  · 示例");
    expect(open.value(names["Firing card"], "A1")).toBe("炒茶卡，第 14 批");
  });
});

describe("the proof", () => {
  const proof = oneLot(sampleWordsIn.en).sheets.find(({ name }) => name === "Proof");
  const formulas = proof?.cells.flatMap(({ formula }) => formula ?? []) ?? [];

  it("uses only functions that every spreadsheet knows", () => {
    const used = new Set(formulas.flatMap((formula) => formula.match(/[A-Z][A-Z.]*(?=\()/g) ?? []));
    expect([...used].sort()).toEqual([
      "ABS",
      "AND",
      "COUNT",
      "IF",
      "INDEX",
      "INT",
      "ISBLANK",
      "ISNUMBER",
      "ISTEXT",
      "MAX",
      "MEDIAN",
      "N",
      "OR",
      "ROUND",
      "ROUNDUP",
      "SQRT",
    ]);
  });

  it("takes its plain side from inputs, never from an answer", () => {
    const inputs = new Set<string>([...Object.values(given), "B24", "B25", "B26", "B27", "C24", "C25", "C26", "C27"]);
    const plain = proof?.cells.filter(({ column, formula }) => column === 1 && formula !== undefined) ?? [];
    const references = plain.flatMap(({ formula }) => [...(formula ?? "").matchAll(/Lot!\$([A-Z]+)\$(\d+)/g)]);
    expect(references.length).toBeGreaterThan(100);
    for (const [, column, row] of references) expect(inputs).toContain(`${column}${row}`);
    for (const { formula } of plain) expect(formula).not.toMatch(/'Past lots'!\$[HI]/);
  });
});

import { afterAll, beforeAll, expect, test } from "vitest";
import { type NodeWorkbook, openInNode } from "../../src/engine/node-workbook";
import { moistureBench } from "../../src/sample-books/moisture-bench";
import { oven } from "../../src/sample-books/moisture-bench/places";
import { sampleWordsIn } from "../../src/words/in-every-language/samples";

let open: NodeWorkbook;
const agrees = "every answer agrees to nine decimals";

beforeAll(async () => {
  open = openInNode(moistureBench(sampleWordsIn.en));
  await open.calculate();
});
afterAll(() => open.close());

test("the dishes agree, and four of them are enough to know the basket to 0.4 points", () => {
  expect(open.value("Oven", "I5")).toBeCloseTo(0.772845, 6);
  expect(open.value("Oven", `L${oven.meanRow}`)).toBe(4);
});

test("the three meanings of a loss of 30 % stand beside each other", () => {
  expect(["F5", "F6", "F7"].map((cell) => Number((open.value("Losses", cell) as number).toFixed(1)))).toEqual([
    310, 280, 181.8,
  ]);
});

test("the proof agrees, also with a fifth dish and a worse scale", async () => {
  expect(open.value("Proof", "C3")).toBe(agrees);
  const row = oven.firstRow + 4;
  for (const [column, weight] of Object.entries({ A: 31, B: 41, C: 33.3 })) open.set("Oven", `${column}${row}`, weight);
  open.set("Scale", "B5", 250.6);
  await open.calculate();
  expect(open.value("Oven", `K${oven.meanRow}`)).toBe(5);
  expect(open.value("Proof", "C3")).toBe(agrees);
  open.set("Proof", "C20", 1);
  await open.calculate();
  expect(open.value("Proof", "C3")).toBe("look below for the one that differs");
});

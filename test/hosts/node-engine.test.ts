import { afterAll, beforeAll, expect, test } from "vitest";
import { type NodeWorkbook, openInNode } from "../../src/engine/node-workbook";
import { addressOf } from "../../src/workbook-files/addresses";
import { answerIn, callsWorkbook } from "./calls-workbook";

const { workbook, calls } = callsWorkbook();
let book: NodeWorkbook;

beforeAll(async () => {
  book = openInNode(workbook);
  await book.calculate();
});

afterAll(() => book.close());

test.each(calls.map((placed) => ({ ...placed, name: placed.call.name })))("$name, $form", (placed) => {
  const { sheet, row, formula, expected } = placed;
  expect(book.size(sheet, addressOf(row, 0)), formula).toEqual({
    rows: expected.length,
    columns: expected[0]?.length,
  });
  expect(
    answerIn(placed, (row, column) => book.value(sheet, addressOf(row, column))),
    formula,
  ).toStrictEqual(expected);
});

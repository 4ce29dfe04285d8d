import { afterAll, beforeAll, expect, test } from "vitest";
import { type NodeWorkbook, openInNode } from "../../src/engine/node-workbook";
import { addressOf } from "../../src/workbook/addresses";
import { asShown } from "./calls";
import { answerIn, callsWorkbook } from "./calls-workbook";

const { workbook, calls } = callsWorkbook();
let book: NodeWorkbook;

beforeAll(async () => {
  book = openInNode(workbook);
  await book.calculate();
});

const shownAt = (sheet: string, address: string) => {
  const value = book.value(sheet, address);
  return value === undefined ? undefined : asShown(value);
};

afterAll(() => book.close());

test.each(calls.map((placed) => ({ ...placed, name: placed.call.name })))("$name, $form", (placed) => {
  const { sheet, row, formula, expected } = placed;
  expect(book.size(sheet, addressOf(row, 0)), formula).toEqual({
    rows: expected.length,
    columns: expected[0]?.length,
  });
  expect(
    answerIn(placed, (row, column) => shownAt(sheet, addressOf(row, column))),
    formula,
  ).toStrictEqual(expected);
});

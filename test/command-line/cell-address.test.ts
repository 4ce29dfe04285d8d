import { expect, test } from "vitest";
import { cellIn } from "../../src/command-line/cell-address";

test.each([
  ["=B4", "B4"],
  ["=$B$4*2", "$B$4"],
  ["=SUM(A1:C9)", "A1:C9"],
  ["=SUM(A:A)", "A:A"],
  ["=SUM(2:5)", "2:5"],
  ["=Lot!B4", "Lot!B4"],
  ["='Past lots'!B4:B9", "'Past lots'!B4:B9"],
  ["=TEA.DRYBASIS(aa12)", "aa12"],
  ["=ROW(A1:A9)+B2", "B2"],
])("%s asks for a cell: %s", (formula, cell) => {
  expect(cellIn(formula)).toBe(cell);
});

test.each([
  "=TEA.DRYBASIS(0.75)",
  '="B4"&"Lot!A1"',
  "=LOG10(5)",
  "=1E5+1e-3",
  "=ROW(A1:A1500)",
  "=COLUMNS(A1:C1)",
  "=LET(dry,80,dry/0.4)",
  "={1,2;3,4}",
  "=ATAN2(1,2)",
])("%s asks for none", (formula) => {
  expect(cellIn(formula)).toBeUndefined();
});

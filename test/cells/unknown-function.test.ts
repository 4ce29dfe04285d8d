import { expect, test } from "vitest";
import { unknownFunction } from "../../src/cells/unknown-function";
import { catalogue } from "../../src/core/catalogue";

const known = new Set([
  ...["AVERAGE", "AVERAGEIF", "SUM", "SUMIF", "LET", "LAMBDA", "IF", "ROUND"],
  ...catalogue.map(({ spec }) => `TEA.${spec.id}`),
]);

test.each([
  ["=TEA.OUTRUN(B1,B2)", "TEA.OUTRUN", ["TEA.OUTTURN"]],
  ["=AVERGE(B1:B3)", "AVERGE", ["AVERAGE"]],
  ["=sum(B1,averge(B1:B3))", "AVERGE", ["AVERAGE"]],
  ["=OUTTURN(B1,B2)", "OUTTURN", ["TEA.OUTTURN"]],
  ['=IF(B1="(averge,",AVERGE(B1:B3),0)', "AVERGE", ["AVERAGE"]],
  ["=QQQQQQQQQQ(B1)", "QQQQQQQQQQ", []],
])("%s: %s may mean %j", (formula, name, nearest) => {
  expect(unknownFunction(formula, known)).toEqual({ name, nearest });
});

test.each(["=SUM(B1:B3)", "=LET(f,LAMBDA(x,x+1),f(2))", '="AVERGE("&B1', "=TEA.OUTTURN(B1,B2)"])(
  "%s calls nothing unknown",
  (formula) => {
    expect(unknownFunction(formula, known)).toBeUndefined();
  },
);

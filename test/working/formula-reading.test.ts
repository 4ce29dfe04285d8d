import { describe, expect, test } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import { type ArgumentReading, formulaReading } from "../../src/working/formula-reading";

const read = (formula: string) => formulaReading(formula, catalogue);

/** The arguments of the first call, shortly: what they are and how they are written. */
const given = (formula: string): string[] =>
  (read(formula).calls[0]?.given ?? []).map((argument) =>
    "text" in argument ? `${argument.is} ${argument.text}` : argument.is,
  );

const argument = (formula: string): ArgumentReading | undefined => read(formula).calls[0]?.given[0];

describe("reading a formula", () => {
  test("finds constants, percentages, texts, truths and arguments left out", () => {
    expect(given('=TEA.FIRINGTARGET(316.5, 77%, .3, "water")')).toEqual([
      "constant 316.5",
      "constant 77%",
      "constant .3",
      'constant "water"',
    ]);
    expect(given("=TEA.SCALEERROR(1,,,TRUE)")).toEqual(["constant 1", "left out", "left out", "constant TRUE"]);
    expect(given("=TEA.DRYBASIS()")).toEqual([]);
  });

  test("takes a quotation mark inside a text as it was meant", () => {
    expect(argument('=TEA.UNCERTAINTY("a ""b"" (c, d", A1:A4, B1:B4)')).toMatchObject({ rows: [['a "b" (c, d']] });
  });

  test("reads array constants by rows", () => {
    expect(argument("=TEA.OVENMEAN({0.046,0.048;-0.05,TRUE})")).toMatchObject({
      is: "constant",
      rows: [
        [0.046, 0.048],
        [-0.05, true],
      ],
    });
  });

  test("reads references, whole columns, other sheets, names, spills and the row of a column", () => {
    const address = (formula: string) => (argument(formula) as { address?: string }).address;
    expect(address("=TEA.DRYBASIS($B$4)")).toBe("$B$4");
    expect(address("=TEA.LOTFLAGS(B:B,C:C)")).toBe("B:B");
    expect(address("=TEA.DRYBASIS('Two, (words)'!B4:B9)")).toBe("'Two, (words)'!B4:B9");
    expect(address("=TEA.DRYBASIS(freshMoisture)")).toBe("freshMoisture");
    expect(address("=TEA.OVENMEAN(B4#)")).toBe("B4#");
    expect(argument("=TEA.DRYBASIS(@B4:B9)")).toMatchObject({ address: "B4:B9", thisRow: true });
  });

  test("reads calls inside calls", () => {
    const call = argument("=TEA.WETBASIS(TEA.DRYBASIS(A1))");
    expect(call).toMatchObject({ is: "call", call: { text: "TEA.DRYBASIS(A1)" } });
  });

  test("leaves every other expression to the workbook, word for word", () => {
    expect(given('=TEA.DRYBASIS(IF(A1>0, B1, "x"))')).toEqual(['expression IF(A1>0, B1, "x")']);
    expect(given("=TEA.OUTTURN(SUM(B:B), C2 - C3)")).toEqual(["arithmetic SUM(B:B)", "arithmetic C2 - C3"]);
  });

  test("keeps the brackets at either end of an expression", () => {
    expect(given("=TEA.DRYMATTER((B2+B4)*ROUND(B5,0), (1-B6)/(1+B7))")).toEqual([
      "arithmetic (B2+B4)*ROUND(B5,0)",
      "arithmetic (1-B6)/(1+B7)",
    ]);
    expect(given("=TEA.DRYMATTER(B2*((B3+B4)), (B5))")).toEqual(["arithmetic B2*((B3+B4))", "reference B5"]);
    expect(given('=TEA.DRYMATTER(("(" & B2)=B3, (ROUND(B4,0)))')).toEqual([
      'expression ("(" & B2)=B3',
      "expression ROUND(B4,0)",
    ]);
    expect(argument("=LET(a,(B2+B4)*(B5+1),TEA.DRYMATTER(ROUND(a,0),0.5))")).toMatchObject({
      asked: "LET(a,(B2+B4)*(B5+1),ROUND(a,0))",
    });
  });

  test("leaves sums to the workbook that are of more than cells and numbers", () => {
    expect(given('=TEA.DRYMATTER(SUM("5",1), SUM(B2:B4,3))')).toEqual([
      'expression SUM("5",1)',
      "arithmetic SUM(B2:B4,3)",
    ]);
    expect(given("=TEA.DRYMATTER(MAX(TRUE,B2), AVERAGE(1,,3))")).toEqual([
      "expression MAX(TRUE,B2)",
      "expression AVERAGE(1,,3)",
    ]);
  });

  test("puts an expression into the LETs around it, of which an inner one may use a name again", () => {
    const formula = "=LET(a,B1,LET(a,a*2,b,3,TEA.DRYBASIS(ROUND(a/b,1))))";
    expect(argument(formula)).toMatchObject({
      is: "expression",
      text: "ROUND(a/b,1)",
      asked: "LET(a,B1,LET(a,a*2,LET(b,3,ROUND(a/b,1))))",
    });
    expect(argument("=LET(a,B1,TEA.DRYBASIS(A))")).toMatchObject({ is: "expression", asked: "LET(a,B1,A)" });
  });

  test("asks nothing of what a LAMBDA is called with, and does ask of what it is not", () => {
    expect(argument("=MAP(A1:A3,LAMBDA(x,TEA.DRYBASIS(ABS(X))))")).toMatchObject({ asked: undefined });
    expect(argument("=MAP(A1:A3,LAMBDA(x,TEA.DRYBASIS(ABS(B1))))")).toMatchObject({ asked: "ABS(B1)" });
    expect(argument('=MAP(A1:A3,LAMBDA(x,TEA.DRYBASIS(LEN("x"))))')).toMatchObject({ asked: 'LEN("x")' });
  });

  test("knows a name in any case, and as a saved workbook writes it", () => {
    expect(read("=tea.drybasis(1)").calls[0]?.entry.spec.id).toBe("DRYBASIS");
    expect(read("=_xldudf_TEA_DRYBASIS(1)").calls[0]?.entry.spec.id).toBe("DRYBASIS");
  });

  test("finds the calls inside other formulas, and says that they are not all of it", () => {
    const { calls, isCall } = read("=IF(A1>0, ROUND(TEA.WATER(A1,B1),1), INDEX(TEA.CHARGESPLIT(A1,320),1))");
    expect(calls.map(({ text }) => text)).toEqual(["TEA.WATER(A1,B1)", "TEA.CHARGESPLIT(A1,320)"]);
    expect(isCall).toBe(false);
    expect(read("=TEA.WATER(A1,B1)").isCall).toBe(true);
  });

  test.each([
    "",
    "TEA.WATER(1,2)",
    "=TEA.WATER(1",
    "=1+",
    '="TEA.WATER(1,2)"',
    "=WATER(1,2)",
    "=TEA.NOSUCH(1)",
    "=)(",
    "=<b>",
  ])("finds nothing in %j", (formula) => {
    expect(read(formula).calls).toEqual([]);
  });
});

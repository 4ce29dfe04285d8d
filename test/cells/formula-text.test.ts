import { describe, expect, it, test } from "vitest";
import { calledNames, plainCall, worksheetFormula } from "../../src/cells/formula-text";
import { nearestNames } from "../../src/cells/nearest-names";
import { CellError } from "../../src/cells/values";
import { jsonAnswer, writtenAnswer } from "../../src/command-line/written-answer";
import { catalogue } from "../../src/core/catalogue";
import { formula } from "../../src/core/describe";

describe("what people type becomes a worksheet's formula", () => {
  test.each([
    ["=TEA.TARGETWEIGHT(320, 0.75, 0.6)", "=TEA.TARGETWEIGHT(320, 0.75, 0.6)"],
    ["TEA.TARGETWEIGHT(320;0.75;0.6)", "=TEA.TARGETWEIGHT(320,0.75,0.6)"],
    ["=TEA.TARGETWEIGHT(320;0,75;0,6)", "=TEA.TARGETWEIGHT(320,0.75,0.6)"],
    ["=SUM(320,75)", "=SUM(320,75)"],
    ['=CONCAT("a;b";"1,5";2,5)', '=CONCAT("a;b","1,5",2.5)'],
    ["=SUM({1,2;3,4};0,5)", "=SUM({1,2;3,4},0.5)"],
    ["  = SUM(.5, 1.5) ", "=SUM(0.5, 1.5)"],
    ['=LEN("he said ""a;b""";1)', '=LEN("he said ""a;b""",1)'],
  ])("%s", (typed, formula) => {
    expect(worksheetFormula(typed)).toBe(formula);
  });

  test.each([
    ["=TEA.WATER（320，0.75）", "=TEA.WATER(320,0.75)"],
    ["＝SUM（１；2）", "=SUM(1,2)"],
    ['=LEN("（，）")', '=LEN("（，）")'],
  ])("%s, typed at full width, too", (typed, formula) => {
    expect(worksheetFormula(typed)).toBe(formula);
  });

  test.each([
    ["=", "a formula must be given; got nothing behind the equals sign"],
    ["=TEA.WATER(320 g,0.75)", "a number must stand without a unit; got 320 g"],
    ["=TEA.WATER(320g;0,75)", "a number must stand without a unit; got 320g"],
    ["=SUM(21 °C)", "a number must stand without a unit; got 21 °C"],
    ["=TEA.WATER(1 320,0.75)", "a number must have no separator between thousands; got 1 320"],
    ["=TEA.WATER(1'320,0.75)", "a number must have no separator between thousands; got 1'320"],
    ["=TEA.WATER(1.320,5;0,75)", "a number must have no separator between thousands; got 1.320,5"],
    ["=TEA.WATER(320,water)", 'a text must stand in quotation marks: "water"; got water without them'],
    ["=TEA.WATER(fresh leaf,1)", 'a text must stand in quotation marks: "fresh leaf"; got fresh leaf without them'],
    ["=LEN(“water”)", 'a text must stand in straight quotation marks, "like this"; got “'],
    ["=SUM(9:00,1)", "a time must be written as TIME(9,0,0); got 9:00"],
    ["=SUM(9:05:30,1)", "a time must be written as TIME(9,5,30); got 9:05:30"],
  ])("and %s is refused in plain words", (typed, message) => {
    expect(() => worksheetFormula(typed)).toThrow(message);
  });

  test.each([
    '=LEN("320 g, 9:00, “water”, 1 320")',
    "=SUM(1E5,1e-3,A1:A3,$B$2,C:C,AB:AC)",
    "=IF(TRUE,A1-B2,LOG10(5))",
    "=LET(water,1,water+1)",
    "=SUM(1,250,300)",
    "=SUM(Sheet!A1)",
  ])("but %s is not", (typed) => {
    expect(worksheetFormula(typed)).toBe(typed);
  });

  it("refuses what stays open", () => {
    expect(() => worksheetFormula('=LEN("leaf)')).toThrow("a quotation mark must be closed");
    expect(() => worksheetFormula("=SUM(1,(2)")).toThrow("brackets must be closed; got 2 that open and 1 that close");
  });

  it("finds the functions that are called, outside of texts", () => {
    expect(calledNames('=sum(TEA.water(1,0.5),LEN("TEA.NONE(1)"))')).toEqual(["SUM", "TEA.WATER", "LEN"]);
  });
});

describe("a function of constants is answered without a worksheet", () => {
  it("when every argument is a constant, a blank or an array of constants", () => {
    expect(plainCall('=tea.trial(1.5,-2e3,50%,"a ""b"", c",TRUE,,{1,"x;y";3,4})')).toEqual({
      name: "TEA.TRIAL",
      given: [
        1.5,
        -2000,
        0.5,
        'a "b", c',
        true,
        null,
        [
          [1, "x;y"],
          [3, 4],
        ],
      ],
    });
    expect(plainCall("=TEA.TRIAL()")).toEqual({ name: "TEA.TRIAL", given: [] });
  });

  test.each([
    "=1+2",
    "=TEA.TRIAL(1)+1",
    "=TEA.TRIAL(A1)",
    "=TEA.TRIAL(1+2)",
    "=TEA.TRIAL(TEA.TRIAL(1))",
    "=TEA.TRIAL({1,2;3})",
    "=TEA.A(1)+TEA.B(2)",
  ])("but not %s", (formula) => {
    expect(plainCall(formula)).toBeUndefined();
  });

  it("and so are the examples of the catalogue, from the same arguments", () => {
    for (const { spec, page } of catalogue) {
      for (const { given } of page.examples) {
        const read = plainCall(formula(spec, given));
        expect(read?.name).toBe(`TEA.${spec.id}`);
        const blanksAsTexts = given.map((argument) =>
          Array.isArray(argument) ? argument.map((row) => row.map((cell: unknown) => cell ?? "")) : argument,
        );
        expect(read?.given).toEqual(blanksAsTexts);
      }
    }
  });
});

describe("a mistyped name", () => {
  const known = ["TARGETWEIGHT", "FIRINGTARGET", "FINISHEDWEIGHT", "WATER", "OUTTURN"];

  it("is compared with the names there are, the nearest first", () => {
    expect(nearestNames("TARGETWIEGHT", known)[0]).toBe("TARGETWEIGHT");
    expect(nearestNames("OUTURN", known)).toEqual(["OUTTURN"]);
    expect(nearestNames("TARGET", known)).toEqual(["TARGETWEIGHT", "FIRINGTARGET"]);
    expect(nearestNames("ZZZZZZ", known)).toEqual([]);
  });
});

describe("an answer in writing", () => {
  it("shows 15 significant digits without noise", () => {
    expect(writtenAnswer([[0.1 + 0.2]]).text).toBe("0.3");
    expect(writtenAnswer([[2 / 3]]).text).toBe("0.666666666666667");
    expect(writtenAnswer([[210]]).text).toBe("210");
  });

  it("lines up rows and says once what is wrong", () => {
    const wrong = new CellError("#VALUE!", "weight must be a weight above 0; got -1");
    const { text, problems } = writtenAnswer([
      ["step", "scale reading"],
      ["wrap", 9.5],
      ["dry", wrong],
      ["sort", wrong],
    ]);
    expect(text).toBe("step  scale reading\nwrap            9.5\ndry         #VALUE!\nsort        #VALUE!");
    expect(problems).toBe("#VALUE! weight must be a weight above 0; got -1");
  });

  it("is in full for another program", () => {
    expect(jsonAnswer("=X", [[1 / 3]])).toBe(`{"formula":"=X","value":${1 / 3}}`);
    expect(JSON.parse(jsonAnswer("=X", [["a", new CellError("#N/A", "none")]]))).toEqual({
      formula: "=X",
      rows: [["a", { error: "#N/A", message: "none" }]],
    });
  });
});

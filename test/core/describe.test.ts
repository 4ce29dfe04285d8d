import { describe, expect, test } from "vitest";
import {
  bookList,
  defineFunction,
  headers,
  measured,
  measuredList,
  optional,
  optionalList,
  type Result,
  setting,
} from "../../src/core/define";
import {
  accepts,
  asSentence,
  cellOf,
  columnsInWords,
  formula,
  meaning,
  oneCellForm,
  resultInWords,
  rowsOf,
  shownNumber,
  signature,
  typed,
  whenBlank,
} from "../../src/core/describe";
import { moisture, share, text, weight, yesNo } from "../../src/core/quantities";

const probe = (result: Result) =>
  defineFunction({
    id: "PROBE",
    group: "moisture",
    parameters: [measured("load", weight), optional("part", share, 0.5)],
    result,
    calculate: () => [],
  });
const cell = probe({ shape: "cell", quantity: moisture });
const column = probe({ shape: "column", quantity: weight });
const columns = [
  { name: "part", quantity: text },
  { name: "reading", quantity: weight, repeats: true },
];
const row = probe({ shape: "row", columns });
const table = probe({ shape: "table", columns });

describe("a formula", () => {
  test("has its signature with optional arguments in brackets", () => {
    expect(signature(cell)).toBe("TEA.PROBE(load, [part])");
  });

  test("types every kind of argument, ranges as array constants", () => {
    expect([null, 'a "b"', true, false, 0.5].map((given) => typed(given))).toEqual([
      "",
      '"a ""b"""',
      "TRUE",
      "FALSE",
      "0.5",
    ]);
    expect(
      typed([
        [1, "x"],
        [null, true],
      ]),
    ).toBe('{1,"x";"",TRUE}');
  });

  test("leaves out the arguments that are left out at its end", () => {
    expect(formula(cell, [8, null])).toBe("=TEA.PROBE(8)");
    expect(formula(cell, [null, 0.5])).toBe("=TEA.PROBE(,0.5)");
    expect(formula(cell, [])).toBe("=TEA.PROBE()");
  });

  test("for one cell of an answer asks INDEX for it, but for a single value", () => {
    expect(cellOf(cell, [8], 2, 3)).toBe("=TEA.PROBE(8)");
    expect(cellOf(column, [8], 2, 1)).toBe("=INDEX(TEA.PROBE(8),2)");
    expect(cellOf(row, [8], 1, 2)).toBe("=INDEX(TEA.PROBE(8),1,2)");
    expect(oneCellForm(cell, [8])).toBeUndefined();
    expect(oneCellForm(column, [8])).toBe("=INDEX(TEA.PROBE(8),1)");
    expect(oneCellForm(row, [8])).toBe("=INDEX(TEA.PROBE(8),1,1)");
    expect(oneCellForm(table, [8])).toBe("=INDEX(TEA.PROBE(8),2,2)");
  });
});

describe("a parameter in words", () => {
  test("says what a blank does", () => {
    expect(whenBlank(measured("load", weight))).toBe("the answer waits");
    expect(whenBlank(setting("load", weight))).toBe("refused");
    expect(whenBlank(optional("load", weight))).toBe("allowed");
    expect(whenBlank(optional("part", share, 1 / 3))).toBe("counts as 0.3333333333");
    expect(whenBlank(optional("kind", text, "water"))).toBe('counts as "water"');
    expect(whenBlank(headers)).toBe("counts as TRUE");
    expect(whenBlank(optional("tared", yesNo, false))).toBe("counts as FALSE");
  });

  test("says what it takes", () => {
    expect(accepts(measured("load", weight))).toBe("a weight above 0");
    expect(accepts(measuredList("loads", weight))).toBe("a list: a weight above 0");
    expect(accepts(bookList("lots", "loads", weight))).toBe("a list, also a whole column: a weight above 0");
    expect(accepts(optionalList("loads", weight, { oneForAll: true }))).toBe(
      "a list, or one for all: a weight above 0",
    );
    expect(accepts(optionalList("loads", weight, { gaps: true }))).toBe("a list with gaps: a weight above 0");
  });

  test("has the meaning of its page, and headers the same everywhere", () => {
    expect(meaning(measured("load", weight), { load: "what is in the pan" })).toBe("what is in the pan");
    expect(meaning(measured("load", weight), {})).toBe("");
    expect(meaning(headers, { headers: "other" })).toBe("FALSE leaves out the row of headings");
  });
});

describe("an answer in words", () => {
  test("has its shape and its number format", () => {
    expect(resultInWords(cell)).toBe("One value (number format 0.0%); a range as argument gives one for each cell.");
    expect(resultInWords(probe({ shape: "cell", quantity: text }))).toMatch(/^One value \(text\);/);
    expect(resultInWords(column)).toBe("One column, which spills downwards (number format 0.0).");
    expect(resultInWords(row)).toMatch(/^One row, which spills to the right/);
    expect(resultInWords(table)).toBe("A table, which spills to the right and downwards.");
  });

  test("has its columns, the one that repeats with dots", () => {
    const inWords = [
      { name: "part", column: "part", format: "text", unit: "" },
      { name: "reading 1, 2, …", column: "reading", format: "0.0", unit: weight.unit },
    ];
    expect([cell, column, row, table].map(columnsInWords)).toEqual([[], [], inWords, inWords]);
  });

  test("is rows, a refusal its code", () => {
    expect([5, "x", [[1], [2]], { error: "#N/A" }].map(rowsOf)).toEqual([[[5]], [["x"]], [[1], [2]], [["#N/A"]]]);
  });

  test("shows ten digits, and begins a sentence with a capital", () => {
    expect(shownNumber(2 / 3)).toBe("0.6666666667");
    expect(asSentence("leaf in rain")).toBe("Leaf in rain");
  });
});

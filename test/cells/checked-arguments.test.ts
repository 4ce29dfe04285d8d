import { describe, expect, test } from "vitest";
import { checkedArguments } from "../../src/cells/checked-arguments";
import { CellError } from "../../src/cells/values";
import { defineFunction, headers, measured, measuredList, setting } from "../../src/core/define";
import { looseWeight, share, text, weight } from "../../src/core/quantities";

const spec = defineFunction({
  id: "PROBE",
  group: "moisture",
  parameters: [measured("load", weight), setting("part", share), measuredList("dishes", looseWeight), headers],
  result: { shape: "table", columns: [{ name: "part", quantity: text }] },
  calculate: () => [],
});
const error = new CellError("#N/A", "made elsewhere");
const partRefused = "part must be from 0 to 1 (5% or 0.05); got 5";

describe("the arguments that a calculation is called with", () => {
  test("are read and checked, without headers", () => {
    expect(checkedArguments(spec, [8, 0.5, [[1], [2]], false])).toEqual({ values: [8, 0.5, [1, 2]] });
  });

  test("are those of the row and column asked for", () => {
    const given = [[[8], [9]], [[0.5, 0.25]], 1];
    expect(checkedArguments(spec, given, 1, 1)).toEqual({ values: [9, 0.25, [1]] });
    expect(checkedArguments(spec, given)).toEqual({ values: [8, 0.5, [1]] });
  });

  test("wait for a reading in a cell or in a list", () => {
    expect(checkedArguments(spec, [null, 0.5, 1])).toEqual({ instead: "" });
    expect(checkedArguments(spec, [8, 0.5, null])).toEqual({ instead: "" });
  });

  test("are an error of the sheet where one stands among them, first that of a cell", () => {
    const other = new CellError("#REF!");
    expect(checkedArguments(spec, [error, 0.5, 1])).toEqual({ instead: error });
    expect(checkedArguments(spec, [8, 0.5, [[1], [error]]])).toEqual({ instead: error });
    expect(checkedArguments(spec, [error, 0.5, other])).toEqual({ instead: error });
    expect(checkedArguments(spec, [null, 0.5, error])).toEqual({ instead: error });
  });

  test("are a refusal with its code and message where one is due", () => {
    expect(checkedArguments(spec, [8, 5, 1])).toMatchObject({ instead: { code: "#VALUE!", message: partRefused } });
    expect(checkedArguments(spec, [8, 5, null])).toMatchObject({ instead: { code: "#VALUE!", message: partRefused } });
    expect(checkedArguments(spec, [8, 0.5, [[-1]]])).toMatchObject({
      instead: { code: "#VALUE!", message: "dishes must be a weight of 0 or more; got -1 in place 1 of the list" },
    });
  });
});

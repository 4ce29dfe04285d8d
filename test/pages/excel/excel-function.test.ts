import { beforeAll, describe, expect, test } from "vitest";
import type { FunctionSpec } from "../../../src/core/define";
import { measured, setting } from "../../../src/core/define";
import { noAnswer } from "../../../src/core/errors";
import { moisture, weight } from "../../../src/core/quantities";
import { targetWeight } from "../../../src/core/targets/target-weight";
import { excelFunction } from "../../../src/pages/excel/excel-function";

/** As the runtime's own class: an Error with the code in `code`, and no message for an incoming error. */
class RuntimeError extends Error {
  readonly code: string;
  constructor(code: string, message = "") {
    super(message);
    this.code = code;
  }
}

/** What Excel appends behind the arguments. */
const invocation = { functionName: "TARGETWEIGHT", address: "Lot!B4", parameterAddresses: undefined };

beforeAll(() => {
  Object.assign(globalThis, { CustomFunctions: { Error: RuntimeError } });
});

function thrownBy(call: () => unknown): RuntimeError {
  try {
    call();
  } catch (problem) {
    expect(problem).toBeInstanceOf(RuntimeError);
    return problem as RuntimeError;
  }
  throw new Error("nothing was thrown");
}

const call = excelFunction(targetWeight);

describe("a function as Excel calls it", () => {
  test("takes cells as Excel passes them, one by one in rows of one, and gives a grid", () => {
    expect(call([[320]], [[0.75]], [[0.6]], invocation)).toEqual([[expect.closeTo(200, 9)]]);
  });

  test("does not take the object that Excel appends for an argument that was left out", () => {
    const doubled: FunctionSpec = {
      ...targetWeight,
      parameters: [measured("weight", weight), { ...setting("moisture", moisture), optional: true, fallback: 0.5 }],
      calculate: (weight: number, moisture: number) => weight * moisture,
    };
    expect(excelFunction(doubled)([[10]], null, invocation)).toEqual([[5]]);
    expect(excelFunction(doubled)([[10]], invocation)).toEqual([[5]]);
  });

  test("throws the refusal of a single answer, with its message", () => {
    const error = thrownBy(() => call([[320]], [[76]], [[0.6]], invocation));
    expect(error.code).toBe("#VALUE!");
    expect(error.message).toBe("moisture must be from 0 up to, not including, 1 (76% or 0.76); got 76");
  });

  test("throws #N/A with its message where sound data have no answer", () => {
    const silent: FunctionSpec = {
      ...targetWeight,
      calculate: () => {
        throw noAnswer("weight", { do: "hold at least one value" }, "got none");
      },
    };
    const error = thrownBy(() => excelFunction(silent)([[320]], [[0.75]], [[0.6]]));
    expect([error.code, error.message]).toEqual(["#N/A", "weight must hold at least one value; got none"]);
  });

  test("puts refusals inside a column beside the answers that are sound", () => {
    const grid = call([[320], [-1], [""]], [[0.75]], [[0.6]], invocation);
    expect(grid[0]).toEqual([expect.closeTo(200, 9)]);
    expect(grid[1]).toEqual([new RuntimeError("#VALUE!", "weight must be a weight above 0; got -1")]);
    expect(grid[2]).toEqual([""]);
  });

  test("gives back the error that stands in a cell as the very object that came", () => {
    const missing = new RuntimeError("#N/A");
    expect(thrownBy(() => call([[missing]], [[0.75]], [[0.6]], invocation))).toBe(missing);
    const grid = call([[320], [missing]], [[0.75]], [[0.6]], invocation);
    expect(grid[1]?.[0]).toBe(missing);
  });

  test("gives back an error that arrives as plain data, without a message of ours", () => {
    const divided = { type: "Error", basicType: "Error", basicValue: "#DIV/0!" };
    const error = thrownBy(() => call([[divided]], [[0.75]], [[0.6]], invocation));
    expect([error.code, error.message]).toEqual(["#DIV/0!", ""]);
  });

  test("gives an error that cannot be thrown under its own code inside the grid", () => {
    const lost = new RuntimeError("#REF!");
    expect(call([[lost]], [[0.75]], [[0.6]], invocation)).toEqual([[lost]]);
  });
});

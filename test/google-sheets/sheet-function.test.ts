import { expect, test } from "vitest";
import { share } from "../../src/core/quantities";
import { targetWeight } from "../../src/core/targets/target-weight";
import { sheetFunction } from "../../src/google-sheets/sheet-function";

test("a bound that changes in the catalogue changes in a sheet, with its words", () => {
  const given = [320, 0.75, 0.6];
  expect(sheetFunction(targetWeight)(given)).toBeCloseTo(200, 9);
  const parameters = targetWeight.parameters.map((parameter) =>
    parameter.name === "weight" ? { ...parameter, quantity: share } : parameter,
  );
  expect(() => sheetFunction({ ...targetWeight, parameters })(given)).toThrow(
    /^weight must be from 0 to 1 \(5% or 0\.05\); got 320$/,
  );
});

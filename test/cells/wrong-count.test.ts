import { expect, test } from "vitest";
import { wrongCount } from "../../src/cells/wrong-count";
import { finishedWeight } from "../../src/core/yields/finished-weight";

const signature = "TEA.FINISHEDWEIGHT(freshWeight, freshMoisture, finishedMoisture, [dryLoss])";

test("a call with every argument that is asked for, and no more than are taken, is let through", () => {
  expect([3, 4].map((given) => wrongCount(finishedWeight, given))).toEqual([undefined, undefined]);
});

test("too few arguments are refused by the name of the first that is missing", () => {
  expect(wrongCount(finishedWeight, 0)).toMatchObject({
    code: "#VALUE!",
    message: `freshWeight must be given; got 0 in ${signature}`,
  });
  expect(wrongCount(finishedWeight, 2)?.message).toBe(`finishedMoisture must be given; got 2 in ${signature}`);
});

test("too many arguments are refused with how many there may be", () => {
  expect(wrongCount(finishedWeight, 5)).toMatchObject({
    code: "#VALUE!",
    message: `TEA.FINISHEDWEIGHT must have at most 4 arguments; got 5 in ${signature}`,
  });
});

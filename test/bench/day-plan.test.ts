import { expect, test } from "vitest";
import { firingsOf, plannedDay } from "../../src/bench/day-plan";
import { bind } from "../../src/cells/bind";
import { dayPlan } from "../../src/core/time/day-plan";

test("the bench refuses to measure anything but the whole day", () => {
  const plan = bind(dayPlan);
  const refused = plan(0.25, -1, [[0.01]], null, 3);
  expect(() => firingsOf(refused)).toThrow("0 firings");
  const short = plan(0.25, 3, [[0.01], [0.01]], null, 3);
  expect(() => firingsOf(short)).toThrow("6 firings");
  expect(firingsOf(plannedDay())).toHaveLength(500);
});

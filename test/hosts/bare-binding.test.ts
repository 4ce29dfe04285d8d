import { expect, test } from "vitest";
import { expectGrid } from "../core/compare";
import { bareAnswer, calls, edgeCalls } from "./calls";

/** The examples and checks among the calls are compared with their pages in test/core/catalogue.test.ts. */
test.each(edgeCalls)("$name", (call) => {
  expectGrid(bareAnswer(call), call.gives, { relative: 1e-15 });
});

test("no two calls have the same name", () => {
  expect(new Set(calls.map(({ name }) => name)).size).toBe(calls.length);
});

import { expect, test } from "vitest";
import { withoutPage } from "../../src/build/without-pages";

const file = `import { defineFunction, type FunctionPage } from "../define";
import { weight } from "../quantities";

/** A limit that the function keeps to. */
const most = limitOf(500);
const column = (values: readonly number[]) => values.map((value) => [value]);
const shown = column([1, 2]);

export interface Drying {
  readonly weight: number;
}

export const drying = defineFunction({
  id: "DRYING",
  group: "time",
  calculate: (given: Drying) => leastOfPage(given.weight, most),
});

function leastOfPage(one: number, other: number): number {
  return Math.min(one, other);
}

export const dryingPage: FunctionPage = { examples: [{ call: shown, shows: "two readings" }] };
`;

test("what serves the page alone goes with it, and what the function needs stays", () => {
  expect(
    withoutPage(file).replaceAll(/\n+/g, "\n"),
  ).toBe(`import { defineFunction, type FunctionPage } from "../define";
import { weight } from "../quantities";
/** A limit that the function keeps to. */
const most = limitOf(500);
export interface Drying {
  readonly weight: number;
}
export const drying = defineFunction({
  id: "DRYING",
  calculate: (given: Drying) => leastOfPage(given.weight, most),
});
function leastOfPage(one: number, other: number): number {
  return Math.min(one, other);
}
export const dryingPage = () => undefined;`);
});

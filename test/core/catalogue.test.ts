import { describe, expect, test } from "vitest";
import { bind } from "../../src/cells/bind";
import { catalogue } from "../../src/core/catalogue";
import { groups, headers } from "../../src/core/define";
import { expectGrid } from "./compare";

describe.each(catalogue.map(({ spec, page }) => ({ id: spec.id, spec, page })))("$id", ({ spec, page }) => {
  const call = bind(spec);

  test.each(page.examples)("example: $shows", ({ given, gives }) => {
    expectGrid(call(...given), gives, { relative: 1e-9 });
  });

  test.each(page.checks.map((check, index) => ({ name: `${index + 1}, ${check.status}`, check })))(
    "check $name",
    ({ check }) => {
      expectGrid(call(...check.given), check.expected, check.tolerance);
    },
  );

  test("has an example and a check from outside the project", () => {
    expect(page.examples.length).toBeGreaterThan(0);
    expect(page.checks.some(({ status }) => ["published", "certified", "exact"].includes(status))).toBe(true);
  });

  test("explains every parameter and no other", () => {
    const names = spec.parameters.filter((parameter) => parameter !== headers).map(({ name }) => name);
    expect(Object.keys(page.parameters)).toEqual(names);
  });

  test("has a summary that fits a line of help", () => {
    expect(page.summary.length).toBeLessThanOrEqual(100);
    expect(page.summary).toMatch(/^[A-Z].*\.$/);
  });

  test("has an id that a cell cannot be mistaken for", () => {
    expect(spec.id).toMatch(/^[A-Z][A-Z0-9]{2,}$/);
    expect(spec.id).not.toMatch(/^[A-Z]{1,3}\d+$/);
  });

  test("names optional parameters last", () => {
    const optional = spec.parameters.map((parameter) => parameter.optional);
    expect(optional.indexOf(true) === -1 || !optional.slice(optional.indexOf(true)).includes(false)).toBe(true);
  });
});

test("a smooth function calculates with what may be left out left out, as UNCERTAINTY calls it", () => {
  for (const { spec, page } of catalogue.filter(({ spec }) => spec.smooth)) {
    const required = spec.parameters.filter(({ optional }) => !optional).length;
    const fallbacks = spec.parameters.slice(required).map(({ fallback }) => fallback);
    const answer = spec.calculate(...(page.examples[0]?.given.slice(0, required) ?? []), ...fallbacks);
    expect(Number.isFinite(answer), spec.id).toBe(true);
  }
});

test("ids are unique and stand in the order of the groups", () => {
  const ids = catalogue.map(({ spec }) => spec.id);
  expect(new Set(ids).size).toBe(ids.length);
  const order = catalogue.map(({ spec }) => groups.indexOf(spec.group));
  expect(order).toEqual([...order].sort((left, right) => left - right));
});

test("the same parameter name means the same kind of quantity everywhere", () => {
  const kinds = new Map<string, string>();
  for (const { spec } of catalogue) {
    for (const { name, quantity } of spec.parameters) {
      // A choice has the words of its function, and a limit is one of whatever its function measures.
      if (quantity.holds === "choice" || name === "limit") continue;
      expect(`${name}: ${kinds.get(name) ?? quantity.name}`).toBe(`${name}: ${quantity.name}`);
      kinds.set(name, quantity.name);
    }
  }
});

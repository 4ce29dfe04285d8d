import { describe, expect, test } from "vitest";
import { bind } from "../../src/cells/bind";
import { CellError, type Grid } from "../../src/cells/values";
import { catalogue } from "../../src/core/catalogue";
import type { Check, FunctionPage, FunctionSpec, Given } from "../../src/core/define";
import { exerciseOf, isPublished } from "../../src/generate/checks-table";
import { isAsExpected } from "../../src/release/answers";

const entries = catalogue.map(({ spec, page }): { id: string; spec: FunctionSpec; page: FunctionPage } => ({
  id: spec.id,
  spec,
  page,
}));

type Changed = (value: number) => number;

/** As far as a number is moved to see whether an answer hangs on it: by shares, a whole one by steps, a 0 by a little. */
const moves: readonly Changed[] = [
  ...[1.5, 1.1, 1.01, 2, 5, 10, 20, 100].flatMap((factor): Changed[] => [
    (value) => value * factor,
    (value) => value / factor,
  ]),
  ...[0.01, 1].flatMap((step): Changed[] => [(value) => value + step, (value) => value - step]),
];

/** An argument with all its numbers moved, or only one of them: the share of a list may be what counts. */
function moved(argument: Given, change: Changed): Given[] {
  if (typeof argument === "number") return [change(argument)];
  if (!Array.isArray(argument)) return [];
  const at = (place: number | undefined): Given => {
    let index = -1;
    return argument.map((row) =>
      row.map((cell: Given) => {
        if (typeof cell !== "number") return cell;
        index += 1;
        return place === undefined || place === index ? change(cell) : cell;
      }),
    ) as Given;
  };
  const numbers = argument.flat().filter((cell) => typeof cell === "number").length;
  return numbers === 0 ? [] : [at(undefined), at(0), at(numbers - 1)];
}

const isRefused = (grid: Grid): boolean => grid.every((row) => row.every((cell) => cell instanceof CellError));

const asAnswered = (grid: Grid) =>
  grid.map((row) => row.map((cell) => (cell instanceof CellError ? { code: cell.code, message: cell.message } : cell)));

describe.each(entries)("$id", ({ spec, page }) => {
  const call = bind(spec);
  const { checks } = page;

  test.each(checks.map((check, index) => ({ name: index + 1, check })))(
    "check $name says what it exercises",
    ({ check }) => {
      // Where it does not follow from the answer it is said, and nowhere else.
      const { exercises, ...unsaid } = check;
      expect(exercises === undefined).toBe(exerciseOf(unsaid as Check) !== undefined);
    },
  );

  test("numbers of a calculation are at work, but for those that it calls idle: the check fails when one of them is another", () => {
    for (const [index, check] of checks.entries()) {
      if (check.exercises !== "calculation") continue;
      const idle = check.given.flatMap((argument, place) => {
        const tries = moves.flatMap((change) => moved(argument, change));
        const isAtWork = tries.some((other) => {
          const given = check.given.map((each, at) => (at === place ? other : each));
          const answer = call(...given);
          // Refused, a number has not been calculated with.
          return !isRefused(answer) && !isAsExpected(asAnswered(answer), check.expected, check.tolerance);
        });
        return tries.length === 0 || isAtWork ? [] : [spec.parameters[place]?.name];
      });
      expect(idle, `check ${index + 1}`).toEqual(check.idle ?? []);
    }
  });

  test("rests on a published value that puts it to work, or says why there is none", () => {
    expect(checks.some(isPublished)).toBe(page.unpublished === undefined);
    expect(checks.filter(isPublished).filter(({ exercises }) => exercises !== "calculation")).toEqual([]);
  });
});

test("a degenerate check is no published one, whatever its status", () => {
  const degenerate = entries.flatMap(({ page }) => page.checks.filter(({ degenerate }) => degenerate !== undefined));
  expect(degenerate.filter(({ status }) => status === "published").length).toBeGreaterThan(0);
  expect(degenerate.filter(isPublished)).toEqual([]);
});

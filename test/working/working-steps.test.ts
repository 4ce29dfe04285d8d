import { describe, expect, test } from "vitest";
import { bind } from "../../src/cells/bind";
import { checkedArguments } from "../../src/cells/checked-arguments";
import { CellError } from "../../src/cells/values";
import { catalogue } from "../../src/core/catalogue";
import { type FunctionSpec, type Given, headers, type Step } from "../../src/core/define";
import { DomainError } from "../../src/core/errors";
import { Phrase } from "../../src/core/phrases";

/** The worked-out calls of a page: those of its examples and checks that have an answer. */
const calls = catalogue.flatMap(({ spec, page }) =>
  [
    ...page.examples.map(({ given, gives }) => ({ given, gives })),
    ...page.checks.map((check) => ({ given: check.given, gives: check.expected })),
  ]
    .filter(({ gives }) => typeof gives !== "object" || !("error" in gives))
    .map(({ given }, index) => ({ name: `${spec.id} ${index + 1}`, spec, page, given })),
);

/** Rows of what a step gives, errors as their codes. */
function rowsOf({ gives }: Step): (number | string)[][] {
  const rows = Array.isArray(gives) ? gives : [gives];
  const plain = (value: unknown): number | string =>
    value instanceof DomainError || value instanceof CellError
      ? value.code
      : value instanceof Phrase
        ? String(value)
        : (value as number | string);
  return rows.map((row) => (Array.isArray(row) ? row.map(plain) : [plain(row)]));
}

const withoutHeadings = (spec: FunctionSpec, given: readonly Given[]): readonly Given[] =>
  spec.parameters.map((parameter, place) => (parameter === headers ? false : (given[place] ?? null)));

function stepsOf({ spec, page, given }: (typeof calls)[number]): readonly Step[] | undefined {
  const checked = checkedArguments(spec, given);
  return "values" in checked ? page.working(...checked.values) : undefined;
}

describe("the working of every function", () => {
  test.each(calls)("comes to what the cell function gives: $name", (call) => {
    const { spec, given } = call;
    const steps = stepsOf(call);
    const grid = bind(spec)(...withoutHeadings(spec, given)).map((row) =>
      row.map((cell) => (cell instanceof CellError ? cell.code : cell)),
    );
    // A reading is still to come.
    if (steps === undefined) return expect(grid[0]?.[0]).toBe("");
    const last = rowsOf(steps.at(-1) as Step);
    if (spec.result.shape === "cell") expect(last).toEqual([[grid[0]?.[0]]]);
    else if (spec.result.shape === "row") expect(last.flat()).toEqual(grid[0]);
    else expect(last).toEqual(grid);
  });

  test.each(calls)("writes numbers that come to its results: $name", (call) => {
    for (const step of stepsOf(call) ?? []) {
      const worked = workedOut(step.numbers);
      if (worked === undefined || typeof step.gives !== "number") continue;
      expect(Math.abs(worked - step.gives), `${step.says}: ${step.numbers} = ${step.gives}`).toBeLessThanOrEqual(
        2e-5 * Math.max(1, Math.abs(step.gives)),
      );
    }
  });

  test("says what each step is, in symbols and in numbers, without a number that is none", () => {
    for (const call of calls) {
      for (const { says, symbols, numbers } of stepsOf(call) ?? []) {
        expect(says).toMatch(/^[a-z]/);
        expect(symbols).not.toBe("");
        expect(numbers).not.toMatch(/NaN|Infinity|undefined|null|object/);
      }
    }
  });

  test("is checked by arithmetic for all but clock times", () => {
    const checked = new Set(
      calls.flatMap((call) =>
        (stepsOf(call) ?? []).some(
          ({ numbers, gives }) => typeof gives === "number" && workedOut(numbers) !== undefined,
        )
          ? [call.spec.id]
          : [],
      ),
    );
    expect(catalogue.map(({ spec }) => spec.id).filter((id) => !checked.has(id))).toEqual(["TURNTIMES"]);
  });
});

/** Works a line of numbers out as a reader with a calculator would; undefined for words, lists and clock times. */
function workedOut(numbers: string): number | undefined {
  const script = numbers
    .replaceAll("×", "*")
    .replaceAll("−", "-")
    .replaceAll(" %", "/100")
    .replaceAll("²", "**2")
    .replaceAll("√(", "Math.sqrt(")
    .replaceAll("ln(", "Math.log(");
  if (!/^[\d\s.e+\-*/()]+$/.test(script.replaceAll(/Math\.(sqrt|log)/g, ""))) return undefined;
  // (-2)**2 needs its brackets; the workings write them.
  return new Function(`return ${script}`)() as number;
}

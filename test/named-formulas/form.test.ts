import {
  functionArray,
  functionCompatibility,
  functionDatabase,
  functionDate,
  functionEngineering,
  functionFinancial,
  functionInformation,
  functionLogical,
  functionLookup,
  functionMath,
  functionStatistical,
  functionText,
} from "@univerjs/engine-formula";
import { describe, expect, test } from "vitest";
import { chargeSplit } from "../../src/core/charges/charge-split";
import type { FunctionSpec, Parameter } from "../../src/core/define";
import { firingTarget } from "../../src/core/targets/firing-target";
import { finishedWeight } from "../../src/core/yields/finished-weight";
import { framed } from "../../src/named-formulas/frame";
import { namedFormulas, neededFor } from "../../src/named-formulas/named-formulas";
import { wordsFormula, wordsName } from "../../src/named-formulas/reading";
import { formulaPieces } from "../../src/workbook/formula";
import { toFileFormula } from "../../src/workbook/formula-names";

const functions = new Set(
  [
    functionArray,
    functionCompatibility,
    functionDatabase,
    functionDate,
    functionEngineering,
    functionFinancial,
    functionInformation,
    functionLogical,
    functionLookup,
    functionMath,
    functionStatistical,
    functionText,
  ].flatMap((group) => group.map(([, name]) => String(name))),
);

/** What the formulas call that Excel has had since 2007 or before: a file writes whatever is younger with a prefix. */
const withoutPrefix =
  /^(?:ABS|CHOOSE|FALSE|IF|IFERROR|INDEX|INT|ISBLANK|ISERROR|ISLOGICAL|ISNUMBER|ISTEXT|LOG10|MAX|MIN|MOD|ROUND|ROUNDUP|SQRT|SUM|TRIM|TRUE)$/;

describe.each([...namedFormulas.values()])("$name", ({ name, formula, comment, calls }) => {
  const stored = toFileFormula(formula);

  test("fits into a file", () => {
    expect(stored.length).toBeLessThan(8_000);
    expect(comment.length).toBeLessThan(255);
    expect(name).toMatch(/^_?TEA_[A-Z0-9_]+$/);
  });

  test("has no word of its own that is a function, a cell or a number in R1C1, or has a dot", () => {
    const own = formulaPieces(formula).flatMap(({ kind, text }) =>
      kind === "name" && /^[a-z]/.test(text.replace(/^_xlop\./, "")) ? [text.replace(/^_xlop\./, "")] : [],
    );
    for (const word of own) {
      expect(functions.has(word.toUpperCase()), word).toBe(false);
      expect(word).toMatch(/^[a-z][a-z_]*$/);
      // R and C alone are rows and columns.
      expect(word).not.toMatch(/^[rc]$/);
    }
  });

  test("carries the prefixes of a file wherever it needs one", () => {
    const names = formulaPieces(stored).filter(({ kind }) => kind === "name");
    for (const { text } of names.filter((name) => !withoutPrefix.test(name.text))) {
      expect(text).toMatch(/^(?:_xlfn\.(?:_xlws\.)?[A-Z0-9.]+|_xl[po][mp]\.[a-z_]+|_?TEA_[A-Z0-9_]+)$/);
    }
    expect(stored).not.toMatch(/_xlpm\._xlop|\[/);
  });

  test("has no number of more digits than a formula may hold", () => {
    for (const [number] of formula.matchAll(/\d[\d.]*/g))
      expect(number.replace(/\D|^0\.0*/g, "").length).toBeLessThan(16);
  });

  test("calls names that there are", () => {
    for (const called of calls) expect(namedFormulas.has(called), called).toBe(true);
  });
});

test("a file gets the names that it uses and those that these call, and no other", () => {
  const names = neededFor(["TEA_DRYMATTER"]).map(({ name }) => name);
  expect(names).toContain("_TEA_DRYMATTER");
  expect(names).toContain("_TEA_NUMBER");
  expect(names).not.toContain("_TEA_WATER");
  expect(names).not.toContain("_TEA_WORD");
});

describe("a named formula follows the catalogue", () => {
  const withParameter = (spec: FunctionSpec, name: string, change: Partial<Parameter>): FunctionSpec => ({
    ...spec,
    parameters: spec.parameters.map((parameter) => (parameter.name === name ? { ...parameter, ...change } : parameter)),
  });

  test("in its bounds", () => {
    const { quantity } = chargeSplit.parameters[0] as Parameter;
    const changed = withParameter(chargeSplit, "weight", {
      quantity: { ...quantity, bounds: { atLeast: 3, atMost: 77 } },
    });
    expect(framed(chargeSplit)).not.toContain("(weightAt>=3)*(weightAt<=77)");
    expect(framed(changed)).toContain("(weightAt>=3)*(weightAt<=77)");
  });

  test("in what stands for a parameter left out", () => {
    expect(framed(finishedWeight)).toContain("_TEA_INSTEAD(dryLossIs,0)");
    expect(framed(withParameter(finishedWeight, "dryLoss", { fallback: 0.25 }))).toContain(
      "_TEA_INSTEAD(dryLossIs,0.25)",
    );
  });

  test("in whether a blank waits", () => {
    const waits = 'IF(0+(weightIs="")+(moistureIs="")>0,""';
    expect(framed(firingTarget)).toContain(waits);
    expect(framed(withParameter(firingTarget, "moisture", { blank: "is refused" }))).not.toContain(waits);
  });

  test("in its words", () => {
    const { quantity } = firingTarget.parameters[3] as Parameter;
    const changed = { ...quantity, name: "new words", choices: { ...quantity.choices, steam: ["vapour"] } };
    expect(wordsName(changed)).toBe("_TEA_WORD_NEW_WORDS");
    expect(wordsFormula(changed)).toContain('"steam","vapour"');
    expect(framed(withParameter(firingTarget, "lossOf", { quantity: changed }))).toContain(
      "_TEA_WORD_NEW_WORDS(lossOfAt)",
    );
  });
});

/** Functions that a workbook calls by named formulas of its own: the engine has no LAMBDA in names. */
import { describe, expect, test } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import { plainName } from "../../src/core/describe";
import { ErrorMessages } from "../../src/engine/error-messages";
import { descriptionsFor, executorsFor } from "../../src/engine/executors";
import { leftFormulas } from "../../src/engine/left-formulas";
import { openInNode } from "../../src/engine/node-workbook";
import { neededFor } from "../../src/named-formulas/named-formulas";
import type { Cell, DefinedName, Workbook } from "../../src/workbook/workbook";
import { formulaReading } from "../../src/working/formula-reading";

const namesFor = (...ids: string[]): DefinedName[] =>
  neededFor(ids.map(plainName)).map(({ name, formula }) => ({ name, formula }));

/** A2 the fresh weight, B2 its moisture; answers as they may have been stored. */
const book = (names: readonly DefinedName[], ...formulas: string[]): Workbook => ({
  name: "Farm",
  sheets: [
    {
      name: "Lots",
      cells: [
        { row: 1, column: 0, value: 400 },
        { row: 1, column: 1, value: 0.75 },
        ...formulas.map((formula, at): Cell => ({ row: 4 + at, column: 0, formula, value: -1 })),
      ],
      columnWidths: {},
      rowHeights: {},
      merges: [],
    },
  ],
  names,
});

async function workedOut(given: Workbook) {
  const open = openInNode(given, leftFormulas(given, { keepsChanging: false }));
  await open.calculate();
  const after = open.toWorkbook();
  const answers = (after.sheets[0]?.cells ?? []).filter(({ row }) => row > 3).map(({ value }) => value);
  const [refused] = [open.value("Lots", "A5")];
  open.close();
  return { after, answers, refused };
}

describe("a call by name", () => {
  test("is worked out as the function, beside calls of the add-in, and names and formulas stay as they were", async () => {
    const formulas = ["=TEA_WATER(A2,B2)", "=TEA.WATER(A2,B2)", "=tea_water(A2,B2)+TEA.DRYMATTER(A2,B2)"];
    const given = book(namesFor("WATER"), ...formulas);
    const { after, answers } = await workedOut(given);
    expect(answers).toEqual([300, 300, 400]);
    expect(after.names).toEqual(given.names);
    expect(after.sheets[0]?.cells.flatMap(({ formula }) => formula ?? [])).toEqual(formulas);
  });

  test("spills, and says why it refuses", async () => {
    const { after } = await workedOut(book(namesFor("LOSSMEANINGS"), "=TEA_LOSSMEANINGS(A2,B2,0.3)"));
    expect(after.sheets[0]?.cells.find(({ formula }) => formula)?.spill).toEqual({ rows: 4, columns: 5 });
    const { refused } = await workedOut(book(namesFor("WATER"), "=TEA_WATER(A2,75)"));
    expect(refused).toMatchObject({ code: "#VALUE!", message: expect.stringContaining("moisture must be") });
  });

  test.each([
    ["without the name", []],
    ["of a name that stands for something of the maker's", [{ name: "TEA_WATER", formula: "=LAMBDA(a,b,7)" }]],
    ["of a name without all that it calls", namesFor("WATER").filter(({ name }) => name !== "_TEA_NUMBER")],
    ["of a name of one sheet", namesFor("WATER").map((name) => ({ ...name, sheet: "Lots" }))],
  ])("%s keeps the answer that it came with", async (_, names) => {
    const { answers } = await workedOut(book(names, "=TEA_WATER(A2,B2)", "=A5*2"));
    expect(answers).toEqual([-1, -2]);
  });
});

test("each function is described once, whatever a workbook calls by name", () => {
  const byName = new Set(["WATER", "OUTTURN"]);
  const names = executorsFor(catalogue, new ErrorMessages(), byName).map(([, name]) => name);
  expect(names.filter((name) => name.includes("_")).sort()).toEqual(["TEA_OUTTURN", "TEA_WATER"]);
  expect(descriptionsFor(catalogue).map(({ functionName }) => functionName)).toEqual(
    names.filter((name) => !name.includes("_")),
  );
});

test("working and sheet check read a call by name as the function that it is", () => {
  const { calls, isCall } = formulaReading("=TEA_OUTTURN(A1,B1)", catalogue);
  expect([calls.map(({ entry }) => entry.spec.id), isCall]).toEqual([["OUTTURN"], true]);
});

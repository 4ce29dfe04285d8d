import { describe, expect, test } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import {
  bookList,
  defineFunction,
  type FunctionSpec,
  headers,
  measured,
  measuredList,
  optional,
  optionalList,
  parameter,
  setting,
} from "../../src/core/define";
import { choice, isInHundredths, isTime, looseWeight, text, weight, yesNo } from "../../src/core/quantities";
import { ownRows } from "../../src/core/tables";

const shared = { id: "LEAFSHARE", group: "yields", result: { shape: "cell", quantity: weight } } as const;
const side = choice("side", { sunny: ["阳"], shady: ["阴"] });

describe("the arguments of a calculation follow from its parameters", () => {
  test("in kind, in number, and in what may be missing", () => {
    // What the compiler infers, said again: it refuses any other answer.
    const spec = defineFunction({
      ...shared,
      parameters: [
        measured("weight", weight),
        setting("side", side),
        measuredList("weights", weight),
        parameter("gappy", weight, { takes: "list", gaps: true }),
        optionalList("filled", weight, { gaps: true, fallback: 0 }),
        bookList("lots", "groups", text),
        optional("tared", yesNo, false),
        optional("limit", weight),
        headers,
      ],
      calculate: (fresh, where, all, gappy, filled, book, tared, limit) => {
        const single: number = fresh;
        const word: "sunny" | "shady" = where;
        const numbers: readonly number[] = [...all, ...filled];
        const withGaps: readonly (number | null)[] = gappy;
        const cells: readonly (readonly unknown[])[] = book;
        const isTared: boolean = tared;
        const most: number | undefined = limit;
        return [single, word, numbers.length, withGaps.length, cells.length, `${isTared}`, most ?? "none"];
      },
    });
    expect(spec.calculate(1, "sunny", [1, 2], [null], [], [["a"]], true)).toEqual([
      1,
      "sunny",
      2,
      1,
      1,
      "true",
      "none",
    ]);
  });

  test("or the function does not compile", () => {
    const wrong: FunctionSpec[] = [
      // @ts-expect-error a weight is no text
      defineFunction({ ...shared, parameters: [measured("weight", weight)], calculate: (given: string) => given }),
      // @ts-expect-error there is no second parameter
      defineFunction({ ...shared, parameters: [measured("weight", weight)], calculate: (one, _other: number) => one }),
      // @ts-expect-error what has no fallback may be missing
      defineFunction({ ...shared, parameters: [optional("most", weight)], calculate: (most: number) => most }),
      defineFunction({
        ...shared,
        parameters: [parameter("gappy", weight, { takes: "list", gaps: true })],
        // @ts-expect-error a list may have gaps
        calculate: (gappy: readonly number[]) => gappy.length,
      }),
      // @ts-expect-error no other word is ever given
      defineFunction({ ...shared, parameters: [setting("side", side)], calculate: (on: "sunny") => on }),
      // @ts-expect-error headers are the cell layer's
      defineFunction({ ...shared, parameters: [headers], calculate: (withHeaders: boolean) => `${withHeaders}` }),
      // @ts-expect-error a weight falls back to a number
      defineFunction({ ...shared, parameters: [optional("most", weight, "none")], calculate: () => 1 }),
    ];
    expect(wrong.length).toBe(7);
  });
});

describe.each(catalogue.map(({ spec }) => ({ id: spec.id, spec })))("$id", ({ spec }) => {
  const { result, parameters } = spec;
  const quantities = [
    ...parameters.map(({ quantity }) => quantity),
    ...("columns" in result ? result.columns.map(({ quantity }) => quantity) : [result.quantity]),
  ];

  test("has number formats that show what its quantities are", () => {
    for (const quantity of quantities) {
      expect(quantity.format.includes("%"), quantity.name).toBe(isInHundredths(quantity));
      expect(quantity.format.includes(":mm"), quantity.name).toBe(isTime(quantity));
      expect(quantity.format === "hh:mm", quantity.name).toBe(quantity.kind === "time of day");
      expect(quantity.holds === "choice", quantity.name).toBe(quantity.kind === "word");
    }
  });

  test.runIf("picture" in result && result.picture !== undefined)("has what its picture shows", () => {
    if (!("picture" in result) || result.picture === undefined) return;
    const { shows, ...places } = result.picture;
    const ofAnswer = shows === "stages" || shows === "meanings" || shows === "charges";
    const names = [...result.columns, ...(ofAnswer ? [] : parameters)].map(({ name }) => name);
    for (const place of Object.values(places)) expect(names).toContain(place);
  });
});

test("the rows of a table are those before its total or its verdict", () => {
  const table = { shape: "table", columns: [{ name: "weight", quantity: looseWeight }] } as const;
  const rows = [
    ["hill", 3],
    ["total", 4],
    ["sum", 7],
  ];
  expect(ownRows(table, rows)).toEqual(rows);
  expect(ownRows({ ...table, lastRow: { is: "verdict", columns: [] } }, rows)).toEqual(rows.slice(0, 2));
  // A plot may have any name, and a note may stand behind the total.
  expect(ownRows({ ...table, lastRow: { is: "total" } }, rows)).toEqual(rows.slice(0, 2));
  expect(ownRows({ ...table, lastRow: { is: "total" } }, [...rows, ["rows left out: 1", ""]])).toEqual(
    rows.slice(0, 2),
  );
  expect(ownRows({ ...table, lastRow: { is: "total" } }, [])).toEqual([]);
});

import { describe, expect, test } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import { corrections } from "../../src/generate/corrections";
import { signatureBreaches, staleFiles } from "../../src/generate/generate";
import {
  type Breach,
  breaches,
  type RecordedParameter,
  type Signature,
  signatureRecord,
  unusedCorrections,
} from "../../src/generate/signatures";
import { correctionsSince, lastRelease } from "../../src/release/last-release";

const required = (name: string): RecordedParameter => ({ name, optional: false, takes: "cell", holds: "number" });
const optional = (name: string): RecordedParameter => ({ ...required(name), optional: true });

const weight: RecordedParameter = { ...required("weight"), takes: "list", oneForAll: true, gaps: true };
const recorded: Signature = {
  id: "LEAFSHARE",
  parameters: [
    { ...weight, bounds: { above: 0, atMost: 10 } },
    { ...optional("readability"), fallback: 0.1 },
    { ...optional("unit"), holds: "choice", choices: { g: ["gram", "grams"], kg: ["kilogram"] } },
  ],
  shape: "table",
  columns: ["step", "weight"],
};
const [first, second, third] = recorded.parameters as [RecordedParameter, RecordedParameter, RecordedParameter];
const changed = (change: Partial<Signature>) => breaches([recorded], [{ ...recorded, ...change }]);
const changedFirst = (change: Partial<RecordedParameter>) =>
  changed({ parameters: [{ ...first, ...change }, second, third] });
const firstWithout = (left: "oneForAll" | "gaps") => {
  const { [left]: _, ...others } = first;
  return changed({ parameters: [others, second, third] });
};
const changedUnit = (choices: NonNullable<RecordedParameter["choices"]>) =>
  changed({ parameters: [first, second, { ...third, choices }] });

describe("saved workbooks go on working", () => {
  test("when nothing changed, a function came, an optional was appended or a column added on the right", () => {
    expect(changed({})).toEqual([]);
    expect(breaches([recorded], [{ ...recorded, id: "ANOTHER" }, recorded])).toEqual([]);
    expect(changed({ parameters: [...recorded.parameters, optional("headers")] })).toEqual([]);
    expect(changed({ columns: ["step", "weight", "moisture"] })).toEqual([]);
  });

  test("when bounds got wider, and words and readings were added", () => {
    expect(changedFirst({ bounds: { atLeast: 0, atMost: 10 } })).toEqual([]);
    expect(changedFirst({ bounds: { atLeast: 0 } })).toEqual([]);
    expect(changedUnit({ jin: [], kg: ["kilogram", "kilo"], g: ["grams", "gram"] })).toEqual([]);
    expect(changed({ parameters: [first, { ...second, oneForAll: true, gaps: true }, third] })).toEqual([]);
  });

  test.each([
    ["a function goes", breaches([recorded], []), "LEAFSHARE is gone"],
    [
      "a parameter is renamed",
      changed({ parameters: [{ ...first, name: "mass" }, second, third] }),
      "LEAFSHARE: parameter 1 was weight and is mass",
    ],
    ["a parameter goes", changed({ parameters: [first, second] }), "LEAFSHARE: parameter 3 was unit and is gone"],
    [
      "an optional becomes required",
      changed({ parameters: [first, { ...second, optional: false }, third] }),
      "LEAFSHARE: readability was optional and is required",
    ],
    [
      "a required parameter becomes optional",
      changedFirst({ optional: true }),
      "LEAFSHARE: weight was required and is optional",
    ],
    [
      "a required parameter is appended",
      changed({ parameters: [...recorded.parameters, required("moisture")] }),
      "LEAFSHARE: moisture was appended and is not optional",
    ],
    [
      "a column is put before another",
      changed({ columns: ["step", "moisture", "weight"] }),
      "LEAFSHARE: column 2 was weight and is moisture",
    ],
    ["a column goes", changed({ columns: ["step"] }), "LEAFSHARE: column 2 was weight and is gone"],
    ["the answer has another shape", changed({ shape: "row" }), "LEAFSHARE: the answer was table and is row"],
    ["a list is taken cell by cell", changedFirst({ takes: "cell" }), "LEAFSHARE: weight was list and is cell"],
    ["a list becomes a book's", changedFirst({ takes: "book" }), "LEAFSHARE: weight was list and is book"],
    [
      "one value no longer stands for all",
      firstWithout("oneForAll"),
      "LEAFSHARE: weight could be one value for all rows and no longer can",
    ],
    ["gaps are refused", firstWithout("gaps"), "LEAFSHARE: weight could have gaps and no longer can"],
    ["a number becomes a text", changedFirst({ holds: "text" }), "LEAFSHARE: weight was number and is text"],
    [
      "a fallback changes",
      changed({ parameters: [first, { ...second, fallback: 1 }, third] }),
      "LEAFSHARE: readability left out was 0.1 and is 1",
    ],
    [
      "a fallback comes",
      changed({ parameters: [first, second, { ...third, fallback: "g" }] }),
      "LEAFSHARE: unit left out was nothing and is g",
    ],
    [
      "the least number rises",
      changedFirst({ bounds: { atLeast: 1, atMost: 10 } }),
      "LEAFSHARE: weight could be 1e-12 and has to be 1 or more",
    ],
    [
      "the greatest number falls",
      changedFirst({ bounds: { above: 0, atMost: 9 } }),
      "LEAFSHARE: weight could be 10 and has to be 9 or less",
    ],
    [
      "decimals are refused",
      changedFirst({ bounds: { above: 0, atMost: 10, whole: true } }),
      "LEAFSHARE: weight could have decimals and has to be whole",
    ],
    [
      "a word goes",
      changedUnit({ g: ["gram", "grams"], kg: [] }),
      'LEAFSHARE: unit took "kilogram" as "kg" and no longer does',
    ],
    [
      "a word means another choice",
      changedUnit({ g: ["gram"], kg: ["kilogram", "grams"] }),
      'LEAFSHARE: unit took "grams" as "g" and no longer does',
    ],
  ])("no longer when %s", (_change, found, line) => {
    expect(found).toEqual([line]);
  });
});

test("a choice that goes takes all its words along", () => {
  expect(changedUnit({ g: ["gram", "grams"] })).toEqual([
    'LEAFSHARE: unit took "kg" as "kg" and no longer does',
    'LEAFSHARE: unit took "kilogram" as "kg" and no longer does',
  ]);
});

test("a record holds what a spec says", () => {
  const records = catalogue.map(({ spec }) => signatureRecord(spec));
  const parameters = records.flatMap((record) => record.parameters);
  expect(new Set(records.map(({ shape }) => shape))).toEqual(new Set(["cell", "row", "column", "table"]));
  expect(new Set(parameters.map(({ takes }) => takes))).toEqual(new Set(["cell", "list", "book"]));
  for (const { spec } of catalogue) {
    const record = signatureRecord(spec);
    spec.parameters.forEach(({ quantity, fallback }, index) => {
      expect(record.parameters[index]?.fallback).toBe(fallback);
      expect(record.parameters[index]?.choices).toBe(quantity.choices);
      if (quantity.holds === "number") expect(record.parameters[index]?.bounds).toBe(quantity.bounds);
    });
  }
});

test("the catalogue keeps every signature that was recorded", () => {
  expect(signatureBreaches()).toEqual([]);
});

test("no generated page, signature or token is stale (npm run generate writes them)", () => {
  expect(staleFiles()).toEqual([]);
});

describe("a correction", () => {
  const narrower = [{ ...recorded, parameters: [{ ...first, bounds: { above: 0, atMost: 9 } }, second, third] }];
  const correction: Breach = { id: "LEAFSHARE", parameter: "weight", of: "greatest", before: 10, after: 9 };
  const gone: Breach = { id: "LEAFSHARE", parameter: "readability", of: "left out", before: 0.1, after: "nothing" };

  test("lets exactly itself pass", () => {
    expect(breaches([recorded], narrower, [correction])).toEqual([]);
    expect(unusedCorrections([recorded], narrower, [correction])).toEqual([]);
    const { fallback: _, ...withoutFallback } = second;
    const changedFallback = [{ ...recorded, parameters: [first, withoutFallback, third] }];
    expect(breaches([recorded], changedFallback, [gone])).toEqual([]);
  });

  test.each<Partial<Breach>>([{ id: "OTHER" }, { parameter: "unit" }, { of: "least" }, { before: 11 }, { after: 8 }])(
    "of %j is another one, and is not needed",
    (change) => {
      const other = { ...correction, ...change };
      expect(breaches([recorded], narrower, [other])).toEqual([
        "LEAFSHARE: weight could be 10 and has to be 9 or less",
      ]);
      expect(unusedCorrections([recorded], narrower, [other])).toHaveLength(1);
    },
  );

  test("cannot take a function, a parameter or a word away", () => {
    expect(breaches([recorded], [], [correction, gone])).toEqual(["LEAFSHARE is gone"]);
    const form: Breach = { id: "LEAFSHARE", of: "form", before: "", after: "" };
    expect(breaches([recorded], [], [form])).toEqual(["LEAFSHARE is gone"]);
  });
});

test("the corrections since the last release are exactly what the catalogue takes back", () => {
  const last = lastRelease() as NonNullable<ReturnType<typeof lastRelease>>;
  const now = catalogue.map(({ spec }) => signatureRecord(spec));
  const due = correctionsSince(last);
  expect(breaches(last.signatures, now, due)).toEqual([]);
  expect(unusedCorrections(last.signatures, now, due)).toEqual([]);
});

test("every correction says why, and no two are of the same thing in one version", () => {
  const keys = corrections.map(({ version, id, parameter, of }) => `${version} ${id} ${parameter} ${of}`);
  expect(new Set(keys).size).toBe(keys.length);
  for (const { why } of corrections) expect(why.split(" ").length).toBeGreaterThan(5);
});

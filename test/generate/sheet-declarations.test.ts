import { expect, test } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import type { Entry } from "../../src/core/entry";
import { sheetDeclarations } from "../../src/generate/sheet-declarations";

const entryOf = (id: string): Entry => {
  const found = catalogue.find(({ spec }) => spec.id === id);
  if (!found) throw new Error(id);
  return found;
};

/** A function with other parameters, as if the catalogue said so. */
const changed = ({ spec, page }: Entry, change: (name: string) => object): Entry => ({
  spec: { ...spec, parameters: spec.parameters.map((each) => ({ ...each, ...change(each.name) })) },
  page,
});

test("a default that changes in the catalogue changes in the help", () => {
  const entry = entryOf("OVENMOISTURE");
  expect(sheetDeclarations([entry], "answer")).toContain("(optional: 0)");
  const other = changed(entry, (name) => (name === "dishWeight" ? { fallback: 42 } : {}));
  expect(sheetDeclarations([other], "answer")).toContain("(optional: 42)");
});

test("a parameter that is added stands in the declaration and in the help", () => {
  const { spec, page } = entryOf("OUTTURN");
  const added = { ...spec.parameters[0], name: "aired", optional: true } as (typeof spec.parameters)[number];
  const declared = sheetDeclarations([{ spec: { ...spec, parameters: [...spec.parameters, added] }, page }], "answer");
  expect(declared).toMatch(/ \* @param \{number\} aired .*\(optional\)\n/);
  expect(declared).toContain(", aired) {\n");
});

test("no text of a page can end the comment that it stands in", () => {
  const { spec, page } = entryOf("OUTTURN");
  const declared = sheetDeclarations([{ spec, page: { ...page, summary: "leaf */ throw 1; /*" } }], "answer");
  expect(declared.split("*/")).toHaveLength(2);
});

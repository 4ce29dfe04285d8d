import { describe, expect, test } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import { groups } from "../../src/core/define";
import { findFunctions } from "../../src/pane/find-functions";

const found = (query: string) =>
  findFunctions(catalogue, query).flatMap(({ entries }) => entries.map(({ spec }) => spec.id));

describe("searching the functions", () => {
  test("shows all of them, by group, for no query", () => {
    expect(found("  ")).toEqual(catalogue.map(({ spec }) => spec.id));
    const shown = findFunctions(catalogue, "").map(({ group }) => group);
    expect(shown).toEqual(groups.filter((group) => shown.includes(group)));
  });

  test("finds by name, with or without the namespace and whatever the case", () => {
    expect(found("targetw")).toEqual(["TARGETWEIGHT"]);
    expect(found("TEA.TargetWeight")).toEqual(["TARGETWEIGHT"]);
  });

  test("finds by a word of the summary and by an argument or its meaning", () => {
    expect(found("scale read target")).toContain("TARGETWEIGHT");
    expect(found("targetmoisture")).toContain("TARGETWEIGHT");
    expect(found("moisture wanted")).toContain("TARGETWEIGHT");
  });

  test("wants every word", () => {
    expect(found("targetweight zebra")).toEqual([]);
  });
});

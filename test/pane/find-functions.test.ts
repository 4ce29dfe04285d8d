import { describe, expect, test } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import { groups } from "../../src/core/define";
import { findFunctions } from "../../src/pane/find-functions";
import { english } from "../../src/words/en/messages";
import { chinese } from "../../src/words/zh/messages";

const found = (query: string, { says } = english) =>
  findFunctions(catalogue, query, says).flatMap(({ entries }) => entries.map(({ spec }) => spec.id));

describe("searching the functions", () => {
  test("shows all of them, by group, for no query", () => {
    expect(found("  ")).toEqual(catalogue.map(({ spec }) => spec.id));
    const shown = findFunctions(catalogue, "", english.says).map(({ group }) => group);
    expect(shown).toEqual(groups.filter((group) => shown.includes(group)));
  });

  test("finds by name, with or without the namespace and whatever the case", () => {
    expect(found("outtu")).toContain("OUTTURN");
    // DRYINGTIME takes a targetWeight.
    expect(found("targetw")).toEqual(["TARGETWEIGHT", "DRYINGTIME"]);
    expect(found("TEA.TargetWeight")).toEqual(["TARGETWEIGHT"]);
    expect(found("TargetWeight")).toEqual(["TARGETWEIGHT"]);
    expect(found("tea.bud")).toEqual(found("BUD"));
  });

  test("finds by a word of the summary and by an argument or its meaning", () => {
    expect(found("scale read target")).toContain("TARGETWEIGHT");
    expect(found("targetmoisture")).toContain("TARGETWEIGHT");
    expect(found("moisture wanted")).toContain("TARGETWEIGHT");
  });

  test("finds by Chinese words in Chinese, and still by English ones", () => {
    expect(found("秤上 目标", chinese)).toContain("TARGETWEIGHT");
    expect(found("moisture wanted", chinese)).toContain("TARGETWEIGHT");
    expect(found("秤上 目标")).toEqual([]);
  });

  test("wants every word", () => {
    expect(found("targetweight zebra")).toEqual([]);
  });
});

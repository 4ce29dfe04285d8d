/**
 * A sentence that promises how often something is so stands on a measurement, and the page leads to it; or it says
 * plainly what is meant, and is listed here with the reason.
 */
import { expect, test } from "vitest";
import { measurementOf } from "../../src/calibrate/measure";
import { studies } from "../../src/calibrate/studies";
import type { Quote } from "../../src/calibrate/study";
import { catalogue } from "../../src/core/catalogue";
import type { FunctionPage } from "../../src/core/define";
import { asMarkdown } from "../../src/generate/blocks";
import { functionPages } from "../../src/generate/function-pages";
import { howSurePage } from "../../src/generate/how-sure-page";
import { measuredStudies } from "../../src/generate/measured";

/** Words that say how often, without a number that could be looked up. "Normally" is a way to scatter here. */
const vague =
  /\b(?:rarely|seldom|hardly ever|usually|mostly|typically|generally|almost (?:always|never|all|every\w*)|nearly (?:always|never|all|every\w*)|as a rule|in most cases|most of the time|most (?:lots|books|readings|packages|makers))\b/gi;
/** And with one. "A moisture of 100 %" is none. */
const counted =
  /\b(?:of 100\b(?! %)|in 100\b|of a hundred\b|of an? hundred\b|in a hundred\b|of twenty\b|in twenty\b|two in three|9\d(?:\.\d)? %)/gi;

/** What is said plainly: words in a text of a function's page, and why they promise nothing that has to be measured. */
const plain: readonly (readonly [id: string, words: string, why: string])[] = [
  ["TARGETWEIGHT", "about four in a hundred", "arithmetic: one point of 24 % dry matter"],
  ["STOCKBALANCE", "95 % is 95 of 100", "what is asked for: the meaning of the setting"],
  ["BUDCOUNT", "95 % is 95 of 100", "what is asked for: the meaning of the setting"],
  ["SAMPLEMEAN", "95 % is 95 of 100", "what is asked for: the meaning of the setting"],
  ["FINISHEDFORECAST", "95 % is 95 lots of 100", "what is asked for: the meaning of the setting"],
  [
    "FINISHEDFORECAST",
    "a confidence of 95 % means to hold it in 95 of 100",
    "what is asked for, when nothing is wrong",
  ],
  ["PACKPLAN", "that you ask for, 95 % when you ask for none", "what stands for a setting left out"],
  ["PACKCHECK", "99.5 % of samples keep to", "what the regulations allow the mean of a sample"],
  ["PACKCHECK", "for a sample of 100 packages and more", "the size of a lot"],
  ["PACKCHECK", "some packages of a lot of a hundred and more", "the size of a lot"],
  ["BUDCOUNT", "Four samples of a hundred say far more", "a hundred buds"],
  ["LOTFLAG", "more tea than the leaf usually makes", "what the word “high” stands for"],
  ["LOTFLAGS", "more tea than the leaf usually makes", "what the word “high” stands for"],
];

const measured = measuredStudies(".");
/** The words on the pages that are made of what was measured. */
const quotes = Object.entries(studies).flatMap(([name, study]) =>
  measured
    .filter(({ file }) => file.endsWith(`/${name}.ts`))
    .flatMap((found): readonly Quote[] => study.quotes(measurementOf(found))),
);
const studied = new Set(Object.values(studies).flatMap(({ functions }) => functions));

/** What a page says beside its examples and checks, which are worked out by other tests. */
const textsOf = ({ summary, parameters, guide, formula }: FunctionPage): readonly string[] => [
  summary,
  formula,
  ...Object.values(parameters),
  ...guide,
];

interface Hit {
  readonly said: string;
  readonly at: number;
  readonly around: string;
}

const hits = (text: string, words: RegExp): readonly Hit[] =>
  [...text.matchAll(words)].map((match) => ({
    said: match[0],
    at: match.index,
    around: text.slice(Math.max(0, match.index - 60), match.index + match[0].length + 60),
  }));

const isPlain = (id: string, around: string): boolean =>
  plain.some(([function_, words]) => function_ === id && around.includes(words));

/** Whether the words stand inside a sentence that the measurement makes. */
const isMeasured = (id: string, text: string, { said, at }: Hit): boolean =>
  quotes.some(({ on, words }) => {
    const from = on === id ? text.indexOf(words) : -1;
    return from >= 0 && from <= at && at + said.length <= from + words.length;
  });

test("the words are found", () => {
  const said = (text: string, words: RegExp) => hits(text, words).map(({ said }) => said);
  expect(said("Good lots are rarely flagged, and nearly always mostly right.", vague)).toEqual([
    "rarely",
    "nearly always",
    "mostly",
  ]);
  const promise = "It holds 95 % of lots, two in three or 6 of 100, at a moisture of 100 %.";
  expect(said(promise, counted)).toEqual(["95 %", "two in three", "of 100"]);
});

test.each(catalogue.map(({ spec, page }) => ({ id: spec.id, page: page as FunctionPage })))(
  "$id says how often only in numbers that were measured, or plainly",
  ({ id, page }) => {
    for (const text of textsOf(page)) {
      for (const { around } of hits(text, vague)) expect(isPlain(id, around), around).toBe(true);
      for (const hit of hits(text, counted)) {
        expect(isMeasured(id, text, hit) || isPlain(id, hit.around), hit.around).toBe(true);
      }
    }
  },
);

test("the page of every function that was studied leads to the measurement", () => {
  const pages = functionPages(catalogue, measured);
  for (const id of studied) {
    const page = pages.find(({ name }) => name === id.toLowerCase());
    expect(page && asMarkdown(page), id).toContain("](../how-sure.md#tea");
  }
});

test("the page of what was measured says nothing vague beside its tables", () => {
  expect(hits(asMarkdown(howSurePage(measured)), vague).map(({ around }) => around)).toEqual([]);
});

test("what is listed as plain is still said", () => {
  for (const [id, words] of plain) {
    const page = catalogue.find(({ spec }) => spec.id === id)?.page as FunctionPage | undefined;
    expect(page && textsOf(page).some((text) => text.includes(words)), `${id}: ${words}`).toBe(true);
  }
});

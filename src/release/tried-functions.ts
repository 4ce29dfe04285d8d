import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { catalogue } from "../core/catalogue";
import type { Given } from "../core/define";
import { type Answered, isAsExpected } from "./answers";
import { type Trial, trials } from "./trials";

/** Excel hands over every argument as rows; null is one that is left out. */
const asRows = (given: Given): unknown => (given === null || typeof given === "object" ? given : [[given]]);

/** On the page, put there by its script through the stand-in for Office.js. */
declare const associated: Readonly<Record<string, (...given: readonly unknown[]) => unknown[][]>>;

/** What the functions of a served release do otherwise than their pages say. */
export async function faultsOfFunctions(page: Page, folder: string, address: string): Promise<string[]> {
  const { functions } = JSON.parse(readFileSync(join(folder, "functions.json"), "utf8")) as {
    functions: { id: string }[];
  };
  await page.goto(`${address}functions.html`);
  const there = await page.evaluate(() => (typeof associated === "undefined" ? [] : Object.keys(associated)));
  const differing = [
    ...differenceTo(functions.map(({ id }) => id)).map((difference) => `functions.json ${difference}`),
    ...differenceTo(there).map((difference) => `functions.js ${difference}`),
  ];
  const tried = trials.filter(({ id }) => there.includes(id));
  const answers = await answersOn(page, tried);
  const wrong = tried.flatMap(({ says, expected, tolerance }, index) => {
    const answer = answers[index] ?? [];
    if (isAsExpected(answer, expected, tolerance)) return [];
    return [`${says} gives ${JSON.stringify(answer)} instead of ${JSON.stringify(expected)}`];
  });
  return [...differing, ...wrong];
}

/** How a list of functions differs from the catalogue. */
function differenceTo(ids: readonly string[]): string[] {
  const known = catalogue.map(({ spec }) => spec.id);
  return [
    ...known.filter((id) => !ids.includes(id)).map((id) => `lacks ${id}`),
    ...ids.filter((id) => !known.includes(id)).map((id) => `has ${id}, which the catalogue has not`),
  ];
}

/**
 * Works out every call on the page. Calls and answers go as one text, since so many values one by one would take longer
 * than to work them out. Errors come back as plain objects, since theirs would not.
 */
async function answersOn(page: Page, tried: readonly Trial[]): Promise<Answered[]> {
  const calls = JSON.stringify(tried.map(({ id, given }) => ({ id, given: given.map(asRows) })));
  const answers = await page.evaluate((text) => {
    const answered = (JSON.parse(text) as { id: string; given: unknown[] }[]).map(({ id, given }) => {
      try {
        const rows = associated[id]?.(...given) ?? [];
        return rows.map((row) =>
          row.map((value) => (value instanceof Error ? { ...value, message: value.message } : value)),
        );
      } catch (problem) {
        const { code = "an exception", message } = problem as { code?: string; message: string };
        return { code, message };
      }
    });
    return JSON.stringify(answered);
  }, calls);
  return JSON.parse(answers) as Answered[];
}

import fc from "fast-check";
import { expect, test } from "vitest";
import { bind } from "../../src/cells/bind";
import { CellError } from "../../src/cells/values";
import { catalogue } from "../../src/core/catalogue";
import { englishRefusal } from "../../src/core/english-refusals";
import type { Refusal } from "../../src/core/refusals";
import { calls } from "../fuzz/junk";

/** What a function refuses over a few hundred calls of junk, with the messages. */
function refusalsOf({ spec, page }: (typeof catalogue)[number]): CellError[] {
  const call = bind(spec);
  const given = [
    ...fc.sample(calls({ spec, page }), { numRuns: 400, seed: 20_261_126 }),
    ...[...page.checks, ...page.examples].map((worked) => worked.given as readonly unknown[]),
  ];
  return given
    .flatMap((one) => call(...one).flat())
    .filter((cell): cell is CellError => cell instanceof CellError)
    .filter(({ message }) => / must /.test(message));
}

/** Names that are no words of a sentence, such as panLoad. */
const isUnmistakable = (name: string): boolean => /[A-Z]/.test(name);

/** UNCERTAINTY refuses in the words of the function that it asks. */
const anyName = new Set(catalogue.flatMap(({ spec }) => spec.parameters.map(({ name }) => name)));

/** Stands for a name where a refusal calls it. */
const called = (name: string): string => `<${name}>`;

test.each(catalogue.map((entry) => ({ id: entry.spec.id, entry })))(
  "$id refuses as data, which says its message and names arguments as they are called",
  ({ entry }) => {
    const names = entry.spec.parameters.map(({ name }) => name);
    const unmistakable = names.filter(isUnmistakable).map((name) => new RegExp(`\\b${name}\\b`));
    const refusals = refusalsOf(entry);
    expect(refusals.length).toBeGreaterThan(0);
    // All of them looked at, then expected at once: an expectation each takes longer than the calls.
    const reasons = refusals.map(({ reason }) => reason as Refusal);
    expect(reasons.map((refusal) => englishRefusal(refusal))).toEqual(refusals.map(({ message }) => message));
    expect(reasons.map(({ argument }) => argument).filter((argument) => !anyName.has(argument))).toEqual([]);
    // What was typed is quoted, and is no name of ours.
    const said = reasons.map((refusal) => englishRefusal(refusal, called).replaceAll(/"[^"]*"|<[^>]*>/g, ""));
    expect(said.filter((words) => unmistakable.some((name) => name.test(words)))).toEqual([]);
  },
);

import fc from "fast-check";
import { expect, test } from "vitest";
import { bind } from "../../src/cells/bind";
import { CellError } from "../../src/cells/values";
import { catalogue } from "../../src/core/catalogue";
import type { Refusal } from "../../src/core/errors";
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

test.each(catalogue.map((entry) => ({ id: entry.spec.id, entry })))(
  "$id refuses in parts that make up its message, and says which arguments it names",
  ({ entry }) => {
    const names = entry.spec.parameters.map(({ name }) => name);
    const refusals = refusalsOf(entry);
    expect(refusals.length).toBeGreaterThan(0);
    for (const { message, refusal } of refusals) {
      expect(refusal, message).toBeDefined();
      const { argument, demand, mentions = [], item } = refusal as Refusal;
      expect(`${argument} ${demand}`).toBe(message);
      expect(anyName.has(argument), argument).toBe(true);
      for (const mentioned of mentions) expect(demand).toContain(mentioned);
      // The reason why a row was left out is a refusal of its own, inside of this one.
      const [own = ""] = demand.split(" (rows left out:");
      if (/ in (?:place|step) \d/.test(own)) expect(item, message).toBeGreaterThan(0);
      const named = names.filter((name) => isUnmistakable(name) && new RegExp(`\\b${name}\\b`).test(own));
      expect(mentions, message).toEqual(expect.arrayContaining(named));
    }
  },
);

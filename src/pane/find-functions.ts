import { type Group, groups } from "../core/define";
import type { Entry } from "../core/entry";

/** What a search looks through: the name, the summary, and the parameters with their meanings, in the language that is spoken and in English. */
function words({ spec, page }: Entry, says: (english: string) => string): string {
  const texts = [page.summary, ...Object.values(page.parameters)];
  const names = [spec.id, `tea.${spec.id}`, ...spec.parameters.map(({ name }) => name)];
  return [...names, ...texts, ...texts.map(says)].join(" ").toLowerCase();
}

/**
 * Functions that hold every word of the query, by group and in the order of the catalogue; the one whose whole name it
 * is alone, since parameters of others may be called so too.
 */
export function findFunctions(
  catalogue: readonly Entry[],
  query: string,
  says: (english: string) => string,
): { readonly group: Group; readonly entries: readonly Entry[] }[] {
  const wanted = query.toLowerCase().split(/\s+/).filter(Boolean);
  const named = catalogue.filter(({ spec }) => wanted.join() === spec.id.toLowerCase());
  const matches = catalogue.filter((entry) => {
    const text = words(entry, says);
    return wanted.every((word) => text.includes(word));
  });
  const found = named.length > 0 ? named : matches;
  return groups
    .map((group) => ({ group, entries: found.filter(({ spec }) => spec.group === group) }))
    .filter(({ entries }) => entries.length > 0);
}

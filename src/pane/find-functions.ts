import { groups } from "../core/define";
import type { Entry } from "../core/entry";

/** What a search looks through: the name, the summary, and the parameters with their meanings. */
function words({ spec, page }: Entry): string {
  const parameters = spec.parameters.map(({ name }) => `${name} ${page.parameters[name] ?? ""}`);
  return [spec.id, `tea.${spec.id}`, page.summary, ...parameters].join(" ").toLowerCase();
}

/** Functions that hold every word of the query, by group and in the order of the catalogue. */
export function findFunctions(
  catalogue: readonly Entry[],
  query: string,
): { readonly group: string; readonly entries: readonly Entry[] }[] {
  const wanted = query.toLowerCase().split(/\s+/).filter(Boolean);
  const found = catalogue.filter((entry) => {
    const text = words(entry);
    return wanted.every((word) => text.includes(word));
  });
  return groups
    .map((group) => ({ group, entries: found.filter(({ spec }) => spec.group === group) }))
    .filter(({ entries }) => entries.length > 0);
}

import { namespace } from "../core/describe";
import { calledNames } from "./formula-text";
import { nearestNames } from "./nearest-names";

/** What is wrong with a formula that calls a function of ours which is not among those with these ids. */
export function misspeltFunction(formula: string, ids: readonly string[]): string | undefined {
  const isOurs = (name: string) => name.startsWith(`${namespace}.`);
  const idOf = (name: string) => name.slice(namespace.length + 1);
  const unknown = calledNames(formula).find((name) => isOurs(name) && !ids.includes(idOf(name)));
  if (unknown === undefined) return undefined;
  const nearest = nearestNames(idOf(unknown), ids).map((id) => `${namespace}.${id}`);
  return `there is no function ${unknown}${nearest.length > 0 ? `; did you mean ${nearest.join(" or ")}?` : ""}`;
}

/** The same of one that is called without its namespace. */
export function bareFunction(formula: string, ids: readonly string[]): string | undefined {
  const bare = calledNames(formula).find((name) => ids.includes(name));
  return bare && `a name in the formula is not known; did you mean ${namespace}.${bare}?`;
}

/** What a misspelt function may have been meant for. */
import { namespace } from "../core/namespace";
import { calledNames, outsideTexts } from "./formula-text";
import { nearestNames } from "./nearest-names";

interface UnknownFunction {
  readonly name: string;
  readonly nearest: readonly string[];
}

/** The first function in the formula that nobody knows; `known` are the names of all, ours with their namespace. */
export function unknownFunction(formula: string, known: ReadonlySet<string>): UnknownFunction | undefined {
  const outside = outsideTexts(formula);
  const name = calledNames(formula).find((called) => !known.has(called) && !isGiven(outside, called));
  return name === undefined ? undefined : { name, nearest: nearestTo(name, known) };
}

const ours = `${namespace}.`;

function nearestTo(name: string, known: ReadonlySet<string>): readonly string[] {
  const [own, others] = [[...known].filter(isOurs), [...known].filter((each) => !isOurs(each))];
  const nearestOwn = (alone: string) =>
    nearestNames(
      alone,
      own.map((each) => each.slice(ours.length)),
    ).map((id) => ours + id);
  if (isOurs(name)) return nearestOwn(name.slice(ours.length));
  // One of ours without its namespace.
  if (known.has(ours + name)) return [ours + name];
  const nearest = nearestNames(name, others);
  return nearest.length > 0 ? nearest : nearestOwn(name);
}

const isOurs = (name: string): boolean => name.startsWith(ours);

/** A name that LET or LAMBDA gives. */
const isGiven = (outside: string, name: string): boolean =>
  new RegExp(`[(,]\\s*${name.replaceAll(".", "\\.")}\\s*,`, "i").test(outside);

import { limits } from "../core/bounds";
import type { FunctionSpec, Parameter } from "../core/define";
import type { Bounds, Choices } from "../core/quantities";

/** What saved workbooks rely on, as signatures.json records it. */
export interface Signature {
  readonly id: string;
  readonly parameters: readonly RecordedParameter[];
  readonly shape: FunctionSpec["result"]["shape"];
  readonly columns: readonly string[];
}

export interface RecordedParameter {
  readonly name: string;
  readonly optional: boolean;
  readonly takes: "cell" | "list" | "book";
  readonly oneForAll?: true;
  readonly gaps?: true;
  readonly holds: Parameter["quantity"]["holds"];
  readonly fallback?: number | string | boolean;
  readonly bounds?: Bounds;
  readonly choices?: Choices;
}

export const signatureRecord = ({ id, parameters, result }: FunctionSpec): Signature => ({
  id,
  parameters: parameters.map(recordOf),
  shape: result.shape,
  columns: "columns" in result ? result.columns.map(({ name }) => name) : [],
});

const recordOf = ({ name, optional, takes, book, oneForAll, gaps, quantity, fallback }: Parameter) => ({
  name,
  optional,
  takes: book === undefined ? takes : ("book" as const),
  ...(oneForAll && { oneForAll }),
  ...(gaps && { gaps }),
  holds: quantity.holds,
  ...(fallback !== undefined && { fallback }),
  ...(quantity.holds === "number" && { bounds: quantity.bounds }),
  ...(quantity.choices && { choices: quantity.choices }),
});

/**
 * What would break a workbook that was saved with the recorded signatures, one line each. Allowed are new functions,
 * optional parameters at the end, columns on the right, wider bounds, and more words for a choice.
 */
export function breaches(recorded: readonly Signature[], now: readonly Signature[]): string[] {
  return recorded.flatMap((before) => {
    const after = now.find(({ id }) => id === before.id);
    if (after === undefined) return [`${before.id} is gone`];
    return breachesOf(before, after).map((breach) => `${before.id}: ${breach}`);
  });
}

function breachesOf(before: Signature, after: Signature): string[] {
  const appended = after.parameters.slice(before.parameters.length).filter(({ optional }) => !optional);
  return [
    ...changed("the answer", before.shape, after.shape),
    ...before.parameters.flatMap((parameter, index) => {
      const same = after.parameters[index];
      if (same?.name === parameter.name) return parameterBreaches(parameter, same);
      return changed(`parameter ${index + 1}`, parameter.name, same?.name ?? "gone");
    }),
    ...appended.map(({ name }) => `${name} was appended and is not optional`),
    ...before.columns.flatMap((column, index) =>
      changed(`column ${index + 1}`, column, after.columns[index] ?? "gone"),
    ),
  ];
}

function parameterBreaches(before: RecordedParameter, after: RecordedParameter): string[] {
  const { name } = before;
  return [
    ...changed(name, wanted(before), wanted(after)),
    ...changed(name, before.takes, after.takes),
    ...changed(name, before.holds, after.holds),
    ...changed(`${name} left out`, before.fallback ?? "nothing", after.fallback ?? "nothing"),
    ...(before.oneForAll && !after.oneForAll ? [`${name} could be one value for all rows and no longer can`] : []),
    ...(before.gaps && !after.gaps ? [`${name} could have gaps and no longer can`] : []),
    ...narrowed(name, before.bounds, after.bounds),
    ...lostWords(name, before.choices, after.choices),
  ];
}

const changed = (what: string, before: unknown, after: unknown): string[] =>
  before === after ? [] : [`${what} was ${before} and is ${after}`];

const wanted = ({ optional }: RecordedParameter): string => (optional ? "optional" : "required");

/** Numbers that a saved workbook may hold and that would be refused. */
function narrowed(name: string, before: Bounds = {}, after: Bounds = {}): string[] {
  const [were, are] = [limits(before), limits(after)];
  return [
    ...(are.low > were.low ? [`${name} could be ${were.low} and has to be ${are.low} or more`] : []),
    ...(are.high < were.high ? [`${name} could be ${were.high} and has to be ${are.high} or less`] : []),
    ...(after.whole && !before.whole ? [`${name} could have decimals and has to be whole`] : []),
  ];
}

/** Words that a saved workbook may hold and that would be refused, or be read as another choice. */
function lostWords(name: string, before: Choices = {}, after: Choices = {}): string[] {
  return Object.entries(before).flatMap(([choice, aliases]) =>
    [choice, ...aliases]
      .filter((word) => word !== choice || !(choice in after))
      .filter((word) => !after[choice]?.includes(word))
      .map((word) => `${name} took "${word}" as "${choice}" and no longer does`),
  );
}

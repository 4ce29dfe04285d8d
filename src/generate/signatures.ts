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

/** One thing that would break saved workbooks. */
export interface Breach {
  readonly id: string;
  /** Absent where it is about the whole function. */
  readonly parameter?: string;
  /** What of it changed: the greatest or the least number it takes, what stands for it left out, or anything else. */
  readonly of: "greatest" | "least" | "left out" | "form";
  readonly before: number | string | boolean;
  readonly after: number | string | boolean;
}

/** A breach of another form says in words what is wrong. */
interface Worded extends Breach {
  readonly line: string;
}

/**
 * What would break a workbook that was saved with the recorded signatures, one line each. Allowed are new functions,
 * optional parameters at the end, columns on the right, wider bounds, more words for a choice, and the corrections.
 */
export function breaches(
  recorded: readonly Signature[],
  now: readonly Signature[],
  corrections: readonly Breach[] = [],
): string[] {
  return recorded
    .flatMap((before) => {
      const after = now.find(({ id }) => id === before.id);
      if (after === undefined) return [other(before.id, "is gone")];
      return breachesOf(before, after);
    })
    .filter((breach) => !corrections.some((correction) => isSame(correction, breach)))
    .map(({ line }) => line);
}

/** Corrections that correct nothing between these signatures, one line each. */
export function unusedCorrections(
  recorded: readonly Signature[],
  now: readonly Signature[],
  corrections: readonly Breach[],
): string[] {
  const found = recorded.flatMap((before) =>
    now.filter(({ id }) => id === before.id).flatMap((after) => breachesOf(before, after)),
  );
  return corrections
    .filter((correction) => !found.some((breach) => isSame(correction, breach)))
    .map(
      ({ id, parameter, before, after }) =>
        `${id}: the correction of ${parameter} from ${before} to ${after} is not needed`,
    );
}

/** A change of form is never corrected: the workbook could not be read any more. */
const isSame = (one: Breach, another: Breach): boolean =>
  another.of !== "form" &&
  (["id", "parameter", "of", "before", "after"] as const).every((part) => one[part] === another[part]);

const other = (id: string, problem: string): Worded => ({
  id,
  of: "form",
  before: "",
  after: "",
  line: problem.startsWith("is ") ? `${id} ${problem}` : `${id}: ${problem}`,
});

function breachesOf(before: Signature, after: Signature): Worded[] {
  const { id } = before;
  const appended = after.parameters.slice(before.parameters.length).filter(({ optional }) => !optional);
  const asOther = (lines: readonly string[]) => lines.map((line) => other(id, line));
  return [
    ...asOther(changed("the answer", before.shape, after.shape)),
    ...before.parameters.flatMap((parameter, index) => {
      const same = after.parameters[index];
      if (same?.name === parameter.name) return parameterBreaches(id, parameter, same);
      return asOther(changed(`parameter ${index + 1}`, parameter.name, same?.name ?? "gone"));
    }),
    ...asOther(appended.map(({ name }) => `${name} was appended and is not optional`)),
    ...before.columns.flatMap((column, index) =>
      asOther(changed(`column ${index + 1}`, column, after.columns[index] ?? "gone")),
    ),
  ];
}

function parameterBreaches(id: string, before: RecordedParameter, after: RecordedParameter): Worded[] {
  const { name } = before;
  const [were, are] = [limits(before.bounds ?? {}), limits(after.bounds ?? {})];
  const asOther = (lines: readonly string[]) => lines.map((line) => other(id, line));
  const about = { id, parameter: name };
  const [fallback, fallbackNow] = [before.fallback ?? "nothing", after.fallback ?? "nothing"];
  return [
    ...asOther(changed(name, wanted(before), wanted(after))),
    ...asOther(changed(name, before.takes, after.takes)),
    ...asOther(changed(name, before.holds, after.holds)),
    ...changed(`${name} left out`, fallback, fallbackNow).map((line) => ({
      ...about,
      of: "left out" as const,
      before: fallback,
      after: fallbackNow,
      line: `${id}: ${line}`,
    })),
    ...asOther(
      before.oneForAll && !after.oneForAll ? [`${name} could be one value for all rows and no longer can`] : [],
    ),
    ...asOther(before.gaps && !after.gaps ? [`${name} could have gaps and no longer can`] : []),
    ...(are.low > were.low ? [narrowed(about, "least", were.low, are.low)] : []),
    ...(are.high < were.high ? [narrowed(about, "greatest", were.high, are.high)] : []),
    ...asOther(after.bounds?.whole && !before.bounds?.whole ? [`${name} could have decimals and has to be whole`] : []),
    ...asOther(lostWords(name, before.choices, after.choices)),
  ];
}

const changed = (what: string, before: unknown, after: unknown): string[] =>
  before === after ? [] : [`${what} was ${before} and is ${after}`];

const wanted = ({ optional }: RecordedParameter): string => (optional ? "optional" : "required");

/** Numbers that a saved workbook may hold and that would be refused. */
const narrowed = (
  about: { readonly id: string; readonly parameter: string },
  of: "least" | "greatest",
  before: number,
  after: number,
): Worded => ({
  ...about,
  of,
  before,
  after,
  line: `${about.id}: ${about.parameter} could be ${before} and has to be ${after} or ${of === "least" ? "more" : "less"}`,
});

/** Words that a saved workbook may hold and that would be refused, or be read as another choice. */
function lostWords(name: string, before: Choices = {}, after: Choices = {}): string[] {
  return Object.entries(before).flatMap(([choice, aliases]) =>
    [choice, ...aliases]
      .filter((word) => word !== choice || !(choice in after))
      .filter((word) => !after[choice]?.includes(word))
      .map((word) => `${name} took "${word}" as "${choice}" and no longer does`),
  );
}

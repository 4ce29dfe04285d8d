import type { FunctionSpec } from "../core/define";

/** What saved workbooks rely on, as signatures.json records it. */
export interface Signature {
  readonly id: string;
  readonly parameters: readonly { readonly name: string; readonly optional: boolean }[];
  readonly columns: readonly string[];
}

export const signatureRecord = ({ id, parameters, result }: FunctionSpec): Signature => ({
  id,
  parameters: parameters.map(({ name, optional }) => ({ name, optional })),
  columns: "columns" in result ? result.columns.map(({ name }) => name) : [],
});

/**
 * What would break a workbook that was saved with the recorded signatures, one line each. Allowed are new
 * functions, optional parameters at the end and columns on the right.
 */
export function breaches(recorded: readonly Signature[], now: readonly Signature[]): string[] {
  return recorded.flatMap((before) => {
    const after = now.find(({ id }) => id === before.id);
    return after === undefined ? [`${before.id} is gone`] : breachesOf(before, after);
  });
}

function breachesOf(before: Signature, after: Signature): string[] {
  const found: string[] = [];
  before.parameters.forEach((parameter, index) => {
    const same = after.parameters[index];
    if (same?.name !== parameter.name) {
      found.push(`${before.id}: parameter ${index + 1} was ${parameter.name} and is ${same?.name ?? "gone"}`);
    } else if (same.optional !== parameter.optional) {
      found.push(`${before.id}: ${parameter.name} was ${wanted(parameter)} and is ${wanted(same)}`);
    }
  });
  for (const parameter of after.parameters.slice(before.parameters.length)) {
    if (!parameter.optional) found.push(`${before.id}: ${parameter.name} was appended and is not optional`);
  }
  before.columns.forEach((column, index) => {
    const same = after.columns[index];
    if (same !== column) found.push(`${before.id}: column ${index + 1} was ${column} and is ${same ?? "gone"}`);
  });
  return found;
}

const wanted = ({ optional }: { optional: boolean }): string => (optional ? "optional" : "required");

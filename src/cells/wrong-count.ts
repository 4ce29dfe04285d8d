import type { FunctionSpec } from "../core/define";
import { signature } from "../core/describe";
import { must } from "../core/errors";
import { namespace } from "../core/namespace";
import { type CellError, refusedCell } from "./values";

/**
 * The refusal that is due to a call with too few or too many arguments; undefined when their number will do. For
 * hosts that let such a call through: Excel itself does not.
 */
export function wrongCount(spec: FunctionSpec, given: number): CellError | undefined {
  const { id, parameters } = spec;
  const found = { kind: "arguments", count: given, signature: signature(spec) } as const;
  const missing = parameters[given];
  if (missing && !missing.optional) {
    return refusedCell(must(missing.name, { be: "given" }, found));
  }
  if (given <= parameters.length) return undefined;
  const most = parameters.length;
  return refusedCell(must(`${namespace}.${id}`, { do: { kind: "few arguments", most } }, found));
}

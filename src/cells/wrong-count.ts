import type { FunctionSpec } from "../core/define";
import { namespace, signature } from "../core/describe";
import { CellError } from "./values";

/**
 * The refusal that is due to a call with too few or too many arguments; undefined when their number will do. For
 * hosts that let such a call through: Excel itself does not.
 */
export function wrongCount(spec: FunctionSpec, given: number): CellError | undefined {
  const { id, parameters } = spec;
  const missing = parameters[given];
  if (missing && !missing.optional) {
    return new CellError("#VALUE!", `${missing.name} must be given; got ${given} in ${signature(spec)}`);
  }
  if (given <= parameters.length) return undefined;
  const most = `at most ${parameters.length} arguments`;
  return new CellError("#VALUE!", `${namespace}.${id} must have ${most}; got ${given} in ${signature(spec)}`);
}

import type { FunctionSpec } from "../core/define";
import { plainName } from "../core/describe";

/**
 * The arithmetic of a function, as a formula of the function's parameters by their names. It is called with what was
 * read and checked: lists as columns, `""` for what may be left out and was, and a gap in a list. A refusal is its code.
 * Where the answer is a row, the formula also gets `column`, the number of the column that is asked for.
 */
export interface Arithmetic {
  readonly spec: FunctionSpec;
  readonly formula: string;
}

export const arithmetic = (spec: FunctionSpec, formula: string): Arithmetic => ({ spec, formula });

/** The name that holds the arithmetic of a function alone. */
export const coreName = ({ id }: FunctionSpec): string => `_${plainName(id)}`;

/**
 * The one reader of formulas: whatever takes a formula apart does it through this file, and nothing else knows the
 * tokenizer behind it. What people type is made into a formula first (cells/formula-text.ts).
 */
import { tokenize } from "@borgar/fx";

export {
  type AstExpression,
  type CallExpression,
  type Identifier,
  type LambdaExpression,
  type LetExpression,
  parse,
  parseA1Ref,
  parseStructRef,
  stringifyA1Ref,
  stringifyStructRef,
  type Token,
  tokenize,
} from "@borgar/fx";

/** A formula taken apart, as far as it takes to find the names in it. */
export interface Piece {
  /** `kept`: texts, sheet names, structured references, references with dollars or to whole columns, numbers. */
  readonly kind: "name" | "gap" | "kept" | "sign";
  readonly text: string;
}

/** The pieces in their order; together they are the formula. */
export function formulaPieces(formula: string): Piece[] {
  const tokens = tokenize(formula, { mergeRefs: false, withLocation: false });
  return tokens.map(({ type, value }, index) => ({ kind: kindOf(type, value, tokens[index - 1]?.value), text: value }));
}

function kindOf(type: string, value: string, before: string | undefined): Piece["kind"] {
  switch (type) {
    case "whitespace":
    case "newline":
      return "gap";
    case "func":
    case "range_named":
    case "range":
    case "bool":
    case "unknown":
      // What a sheet's name stands before is no name that LET introduces.
      return before === "!" || !/^[\p{L}_\\]/u.test(value) ? "kept" : "name";
    case "operator":
    case "fx_prefix":
      return "sign";
    default:
      return "kept";
  }
}

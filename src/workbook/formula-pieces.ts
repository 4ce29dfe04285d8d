/** A formula taken apart, as far as it takes to find the names in it. */
export interface Piece {
  /** `kept`: texts, sheet names, structured references, references with dollars or to whole columns, numbers. */
  readonly kind: "name" | "gap" | "kept" | "sign";
  readonly text: string;
}

/** The pieces in their order; together they are the formula. */
export function formulaPieces(formula: string): Piece[] {
  const pieces: Piece[] = [];
  let at = 0;
  while (at < formula.length) {
    const piece = pieceAt(formula, at);
    pieces.push(piece);
    at += piece.text.length;
  }
  return pieces;
}

const patterns: readonly (readonly [Piece["kind"], RegExp])[] = [
  ["gap", /\s+/uy],
  // A text; a sheet's name in quotes; one without, which ends in an exclamation mark, and what it names.
  ["kept", /"(?:[^"]|"")*"?|'(?:[^']|'')*'?!?/uy],
  ["kept", /[\p{L}_][\p{L}\p{M}\p{N}_.]*!(?:\$?[\p{L}\p{N}_.]+)?/uy],
  ["kept", /\$[A-Z]{1,3}(?![\p{L}_])|[A-Z]{1,3}:\$?[A-Z]{1,3}(?![\p{L}\p{N}_.(])/iuy],
  ["kept", /\d[\d.]*(?:E[+-]?\d+)?/iuy],
  ["kept", /#[A-Z/0]+[!?]?/iuy],
  ["name", /[\p{L}_\\][\p{L}\p{M}\p{N}_.\\?]*/uy],
];

function pieceAt(formula: string, at: number): Piece {
  if (formula[at] === "[") return { kind: "kept", text: formula.slice(at, bracketEnd(formula, at)) };
  for (const [kind, pattern] of patterns) {
    pattern.lastIndex = at;
    const [text] = pattern.exec(formula) ?? [];
    if (text) return { kind, text };
  }
  return { kind: "sign", text: String.fromCodePoint(formula.codePointAt(at) as number) };
}

/** Behind the bracket that closes a structured reference: they may hold others, and an apostrophe takes the next sign. */
function bracketEnd(formula: string, start: number): number {
  let depth = 0;
  for (let at = start; at < formula.length; at += 1) {
    if (formula[at] === "'") at += 1;
    else if (formula[at] === "[") depth += 1;
    else if (formula[at] === "]") depth -= 1;
    if (depth === 0) return at + 1;
  }
  return formula.length;
}

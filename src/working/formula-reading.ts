import { plainName, savedName } from "../core/describe";
import type { Entry } from "../core/entry";
import { namespace } from "../core/namespace";
import type { CellContent } from "../host/workbook-host";
import {
  type AstExpression,
  type CallExpression,
  formulaPieces,
  type LambdaExpression,
  type LetExpression,
  parse,
  tokenize,
} from "../workbook/formula";

/** An argument as the formula writes it. `text` is that, word for word. */
export type ArgumentReading =
  | { readonly is: "left out" }
  | { readonly is: "constant"; readonly text: string; readonly rows: readonly (readonly CellContent[])[] }
  /** Cells, or a name that stands for some. `thisRow`: of a column, the cell in the formula's own row. */
  | {
      readonly is: "reference";
      readonly text: string;
      readonly address: string;
      readonly thisRow: boolean;
      readonly asked: Asked;
    }
  | { readonly is: "call"; readonly text: string; readonly call: TeaCall }
  | {
      readonly is: "arithmetic";
      readonly text: string;
      readonly operator: string;
      readonly of: readonly ArgumentReading[];
      readonly asked: Asked;
    }
  /** Anything else: the workbook works it out. */
  | { readonly is: "expression"; readonly text: string; readonly asked: Asked };

/**
 * What the workbook is asked where the pane does not know a value itself: the text, inside the LET whose names it may
 * use. undefined for what depends on a parameter of a LAMBDA, which has no single value.
 */
type Asked = string | undefined;

export interface TeaCall {
  readonly entry: Entry;
  readonly text: string;
  readonly given: readonly ArgumentReading[];
}

interface FormulaReading {
  /** The calls that stand in no other call, from left to right. */
  readonly calls: readonly TeaCall[];
  /** Whether the formula is one call and nothing else. */
  readonly isCall: boolean;
}

/** Operators and functions that are worked out here where what they are of is known. */
const operators = new Set(["+", "-", "*", "/", "^", "%"]);
const aggregates = new Set(["SUM", "AVERAGE", "MIN", "MAX"]);

/** Finds the functions of the catalogue in a formula; a formula that cannot be read has none. */
export function formulaReading(formula: string, catalogue: readonly Entry[]): FormulaReading {
  const parsed = parsedFormula(formula);
  if (parsed === undefined) return { calls: [], isCall: false };
  const reader = new Reader(formula, catalogue);
  return { calls: reader.outermost(parsed), isCall: reader.entryOf(parsed) !== undefined };
}

function parsedFormula(formula: string): AstExpression | undefined {
  if (!formula.startsWith("=")) return undefined;
  try {
    return parse(tokenize(formula, { withLocation: true })) as AstExpression;
  } catch {
    return undefined;
  }
}

const known = new WeakMap<readonly Entry[], ReadonlyMap<string, Entry>>();

/**
 * A saved workbook writes the name of an add-in's function in a form of its own, and a named formula is the same
 * function. Made once: sheets hold thousands.
 */
function entriesByName(catalogue: readonly Entry[]): ReadonlyMap<string, Entry> {
  const before = known.get(catalogue);
  if (before !== undefined) return before;
  const entries = new Map(
    catalogue.flatMap((entry): [string, Entry][] => [
      [`${namespace}.${entry.spec.id}`, entry],
      [savedName(entry.spec.id).toUpperCase(), entry],
      [plainName(entry.spec.id), entry],
    ]),
  );
  known.set(catalogue, entries);
  return entries;
}

/** The names that the LETs and LAMBDAs around a place in the formula introduce. */
interface Scope {
  readonly names: readonly { readonly name: string; readonly value: string }[];
  readonly parameters: readonly string[];
}

const none: Scope = { names: [], parameters: [] };

const withParameters = (scope: Scope, { params }: LambdaExpression): Scope => ({
  ...scope,
  parameters: [...scope.parameters, ...params.map(({ name }) => name)],
});

const isIntroduced = (word: string, { names, parameters }: Scope): boolean =>
  [...names.map(({ name }) => name), ...parameters].some((each) => sameName(each, word));

const sameName = (one: string, other: string): boolean => one.toUpperCase() === other.toUpperCase();

function asked(text: string, { names, parameters }: Scope): Asked {
  // One LET a name: an inner one may take the name of an outer one again.
  const whole = names.reduceRight((inner, { name, value }) => `LET(${name},${value},${inner})`, text);
  return formulaPieces(whole).some(
    ({ kind, text }) => kind === "name" && parameters.some((each) => sameName(each, text)),
  )
    ? undefined
    : whole;
}

class Reader {
  readonly #formula: string;
  readonly #entries: ReadonlyMap<string, Entry>;

  constructor(formula: string, catalogue: readonly Entry[]) {
    this.#formula = formula;
    this.#entries = entriesByName(catalogue);
  }

  entryOf(node: AstExpression): Entry | undefined {
    if (node.type !== "CallExpression") return undefined;
    const name = "name" in node.callee ? String(node.callee.name).toUpperCase() : "";
    return this.#entries.get(name.replace(/^_XLFN\./, ""));
  }

  outermost(node: AstExpression, scope: Scope = none): TeaCall[] {
    const entry = this.entryOf(node);
    if (entry !== undefined) return [this.#call(entry, node as CallExpression, scope)];
    if (node.type === "LetExpression") return this.#inLet(node, scope);
    if (node.type === "LambdaExpression") {
      return node.body === null ? [] : this.outermost(node.body, withParameters(scope, node));
    }
    const inner = "arguments" in node ? (node.arguments as readonly (AstExpression | null)[]) : [];
    return inner.flatMap((each) => (each === null ? [] : this.outermost(each, scope)));
  }

  /** Each name of a LET can use those before it. */
  #inLet(node: LetExpression, scope: Scope): TeaCall[] {
    const calls: TeaCall[] = [];
    let known = scope;
    for (const { id, init } of node.declarations) {
      if (init !== null) calls.push(...this.outermost(init, known));
      const value = init === null ? "" : this.#textOf(init);
      known = { ...known, names: [...known.names, { name: id.name, value }] };
    }
    return node.body === null ? calls : [...calls, ...this.outermost(node.body, known)];
  }

  #call(entry: Entry, node: CallExpression, scope: Scope): TeaCall {
    const given = (node.arguments as readonly (AstExpression | null)[]).map((each) => this.#argument(each, scope));
    return { entry, text: this.#textOf(node), given };
  }

  #argument(node: AstExpression | null, scope: Scope): ArgumentReading {
    if (node === null) return { is: "left out" };
    const text = this.#textOf(node);
    const entry = this.entryOf(node);
    if (entry !== undefined) return { is: "call", text, call: this.#call(entry, node as CallExpression, scope) };
    const expression = { is: "expression", text, asked: asked(text, scope) } as const;
    switch (node.type) {
      case "Literal":
        return { is: "constant", text, rows: [[node.value as CellContent]] };
      case "ErrorLiteral":
        return { is: "constant", text, rows: [[node.value]] };
      case "ArrayExpression":
        return constantRows(node, text) ?? expression;
      case "ReferenceIdentifier":
        if (isIntroduced(node.value, scope)) return expression;
        return { is: "reference", text, address: node.value, thisRow: false, asked: asked(text, scope) };
      case "UnaryExpression":
        return this.#unary(node.operator, node.arguments[0] as AstExpression, text, scope);
      case "BinaryExpression":
        return this.#combined(node.operator, node.arguments as readonly AstExpression[], text, scope);
      case "CallExpression":
        return this.#aggregate(node, text, scope);
      default:
        return expression;
    }
  }

  #unary(operator: string, of: AstExpression, text: string, scope: Scope): ArgumentReading {
    const reading = this.#argument(of, scope);
    const whole = asked(text, scope);
    if (operator === "@" && reading.is === "reference") return { ...reading, text, thisRow: true, asked: whole };
    // `B4#` is the spill that begins in B4.
    if (operator === "#" && reading.is === "reference") return { ...reading, text, address: text, asked: whole };
    const typed = reading.is === "constant" ? reading.rows[0]?.[0] : undefined;
    // 60% is typed as it stands, and nothing to work out.
    if (operator === "%" && typeof typed === "number") return { is: "constant", text, rows: [[typed / 100]] };
    return this.#combined(operator, [of], text, scope);
  }

  #combined(operator: string, of: readonly AstExpression[], text: string, scope: Scope): ArgumentReading {
    if (!operators.has(operator)) return { is: "expression", text, asked: asked(text, scope) };
    return this.#arithmetic(operator, of, text, scope);
  }

  #aggregate(node: CallExpression, text: string, scope: Scope): ArgumentReading {
    const name = "name" in node.callee ? String(node.callee.name).toUpperCase() : "";
    const reading = this.#arithmetic(name, node.arguments as readonly (AstExpression | null)[], text, scope);
    // Texts and truths that are typed count, and so does an argument left out: only those of cells are passed over.
    const isPlain = "of" in reading && reading.of.every((each) => each.is !== "left out" && !isTypedOddly(each));
    return aggregates.has(name) && isPlain ? reading : { is: "expression", text, asked: asked(text, scope) };
  }

  #arithmetic(operator: string, of: readonly (AstExpression | null)[], text: string, scope: Scope): ArgumentReading {
    const operands = of.map((each) => this.#argument(each, scope));
    return { is: "arithmetic", text, operator, of: operands, asked: asked(text, scope) };
  }

  #textOf(node: AstExpression): string {
    const [start, end] = withBrackets(this.#formula, spanOf(node));
    return this.#formula.slice(start, end).trim();
  }
}

const isTypedOddly = (reading: ArgumentReading): boolean =>
  reading.is === "constant" && reading.rows.flat().some((value) => typeof value !== "number");

/** From where to where a node is written. The place of the `#` in `B4#` alone does not hold what stands before it. */
function spanOf(node: AstExpression): readonly [number, number] {
  const [start = 0, end = 0] = node.loc ?? [];
  const inner = "arguments" in node ? (node.arguments as readonly (AstExpression | null)[]) : [];
  const spans = inner.flatMap((each) => (each === null ? [] : [spanOf(each)]));
  return [Math.min(start, ...spans.map(([from]) => from)), Math.max(end, ...spans.map(([, to]) => to))];
}

/** Brackets belong to no node: a span that begins or ends inside some is widened to hold them whole. */
function withBrackets(formula: string, [start, end]: readonly [number, number]): readonly [number, number] {
  const places = bracketsIn(formula);
  const inside = places.filter(({ at }) => at >= start && at < end);
  let depth = 0;
  let lowest = 0;
  for (const { opens } of inside) {
    depth += opens ? 1 : -1;
    lowest = Math.min(lowest, depth);
  }
  const before = places.filter(({ at, opens }) => opens && at < start).slice(lowest === 0 ? Infinity : lowest);
  const missing = depth - lowest;
  const after = places.filter(({ at, opens }) => !opens && at >= end).slice(0, missing);
  return [before[0]?.at ?? start, (after.at(-1)?.at ?? end - 1) + 1];
}

/** The brackets of a formula, without those inside texts and quoted sheet names. */
function bracketsIn(formula: string): readonly { readonly at: number; readonly opens: boolean }[] {
  let end = 0;
  return formulaPieces(formula).flatMap(({ kind, text }) => {
    const at = end;
    end += text.length;
    return kind === "sign" && (text === "(" || text === ")") ? [{ at, opens: text === "(" }] : [];
  });
}

/** An array constant; undefined where it holds more than constants. */
function constantRows(node: AstExpression & { type: "ArrayExpression" }, text: string): ArgumentReading | undefined {
  const rows = node.elements.map((row) =>
    row.map((cell) =>
      cell.type === "Literal" || cell.type === "ErrorLiteral" ? (cell.value as CellContent) : undefined,
    ),
  );
  return rows.some((row) => row.includes(undefined))
    ? undefined
    : { is: "constant", text, rows: rows as CellContent[][] };
}

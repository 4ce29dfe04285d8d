import { type AstExpression, type CallExpression, parse, tokenize } from "@borgar/fx";
import type { Entry } from "../../core/entry";
import type { CellContent } from "../host/workbook-host";

/** An argument as the formula writes it. `text` is that, word for word. */
export type ArgumentReading =
  | { readonly is: "left out" }
  | { readonly is: "constant"; readonly text: string; readonly rows: readonly (readonly CellContent[])[] }
  /** Cells, or a name that stands for some. `thisRow`: of a column, the cell in the formula's own row. */
  | { readonly is: "reference"; readonly text: string; readonly address: string; readonly thisRow: boolean }
  | { readonly is: "call"; readonly text: string; readonly call: TeaCall }
  | {
      readonly is: "arithmetic";
      readonly text: string;
      readonly operator: string;
      readonly of: readonly ArgumentReading[];
    }
  /** Anything else: the workbook works it out. */
  | { readonly is: "expression"; readonly text: string };

export interface TeaCall {
  readonly entry: Entry;
  readonly text: string;
  readonly given: readonly ArgumentReading[];
}

export interface FormulaReading {
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

/** A saved workbook writes the name of an add-in's function in a form of its own. Made once: sheets hold thousands. */
function entriesByName(catalogue: readonly Entry[]): ReadonlyMap<string, Entry> {
  const before = known.get(catalogue);
  if (before !== undefined) return before;
  const names = ["TEA.", "_XLDUDF_TEA_"].flatMap((prefix) =>
    catalogue.map((entry): [string, Entry] => [`${prefix}${entry.spec.id}`, entry]),
  );
  const entries = new Map(names);
  known.set(catalogue, entries);
  return entries;
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

  outermost(node: AstExpression): TeaCall[] {
    const entry = this.entryOf(node);
    if (entry !== undefined) return [this.#call(entry, node as CallExpression)];
    const inner = "arguments" in node ? (node.arguments as readonly (AstExpression | null)[]) : [];
    return inner.flatMap((each) => (each === null ? [] : this.outermost(each)));
  }

  #call(entry: Entry, node: CallExpression): TeaCall {
    const given = (node.arguments as readonly (AstExpression | null)[]).map((each) => this.#argument(each));
    return { entry, text: this.#textOf(node), given };
  }

  #argument(node: AstExpression | null): ArgumentReading {
    if (node === null) return { is: "left out" };
    const text = this.#textOf(node);
    const entry = this.entryOf(node);
    if (entry !== undefined) return { is: "call", text, call: this.#call(entry, node as CallExpression) };
    switch (node.type) {
      case "Literal":
        return { is: "constant", text, rows: [[node.value as CellContent]] };
      case "ErrorLiteral":
        return { is: "constant", text, rows: [[node.value]] };
      case "ArrayExpression":
        return constantRows(node, text) ?? { is: "expression", text };
      case "ReferenceIdentifier":
        return { is: "reference", text, address: node.value, thisRow: false };
      case "UnaryExpression":
        return this.#unary(node.operator, node.arguments[0] as AstExpression, text);
      case "BinaryExpression":
        return this.#combined(node.operator, node.arguments as readonly AstExpression[], text);
      case "CallExpression":
        return this.#aggregate(node, text);
      default:
        return { is: "expression", text };
    }
  }

  #unary(operator: string, of: AstExpression, text: string): ArgumentReading {
    const reading = this.#argument(of);
    if (operator === "@" && reading.is === "reference") return { ...reading, text, thisRow: true };
    // `B4#` is the spill that begins in B4.
    if (operator === "#" && reading.is === "reference") return { ...reading, text, address: text };
    const typed = reading.is === "constant" ? reading.rows[0]?.[0] : undefined;
    // 60% is typed as it stands, and nothing to work out.
    if (operator === "%" && typeof typed === "number") return { is: "constant", text, rows: [[typed / 100]] };
    return this.#combined(operator, [of], text);
  }

  #combined(operator: string, of: readonly AstExpression[], text: string): ArgumentReading {
    if (!operators.has(operator)) return { is: "expression", text };
    return { is: "arithmetic", text, operator, of: of.map((each) => this.#argument(each)) };
  }

  #aggregate(node: CallExpression, text: string): ArgumentReading {
    const name = "name" in node.callee ? String(node.callee.name).toUpperCase() : "";
    if (!aggregates.has(name)) return { is: "expression", text };
    const of = (node.arguments as readonly (AstExpression | null)[]).map((each) => this.#argument(each));
    return { is: "arithmetic", text, operator: name, of };
  }

  #textOf(node: AstExpression): string {
    const [start, end] = spanOf(node);
    return this.#formula.slice(start, end).trim();
  }
}

/** From where to where a node is written. The place of the `#` in `B4#` alone does not hold what stands before it. */
function spanOf(node: AstExpression): readonly [number, number] {
  const [start = 0, end = 0] = node.loc ?? [];
  const inner = "arguments" in node ? (node.arguments as readonly (AstExpression | null)[]) : [];
  const spans = inner.flatMap((each) => (each === null ? [] : [spanOf(each)]));
  return [Math.min(start, ...spans.map(([from]) => from)), Math.max(end, ...spans.map(([, to]) => to))];
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

/**
 * Which formulas of a workbook the engine cannot work out, and why: it would make #NAME? of them, or never end. They keep
 * the results that they came with, and what depends on them is worked out from those.
 */

import {
  functionArray,
  functionCompatibility,
  functionDatabase,
  functionDate,
  functionEngineering,
  functionFinancial,
  functionInformation,
  functionLogical,
  functionLookup,
  functionMath,
  functionMeta,
  functionStatistical,
  functionText,
} from "@univerjs/engine-formula";
import { catalogue } from "../core/catalogue";
import { plainName } from "../core/describe";
import { namespace } from "../core/namespace";
import { idsByName } from "../named-formulas/own-names";
import { type AstExpression, type Identifier, parse, tokenize } from "../workbook/formula";
import { type TableColumns, tablesIn, withAddresses } from "../workbook/table-references";
import { workableNames } from "../workbook/workable-names";
import type { Cell, Sheet, Workbook } from "../workbook/workbook";

/** Why each is left as it is, in words that follow "because of". */
export type LeftFormulas = ReadonlyMap<Cell, string>;

export interface Leaving {
  /** Formulas whose answer is another whenever they are worked out keep the one that they have. */
  readonly keepsChanging: boolean;
}

export function leftFormulas({ sheets, names = [] }: Workbook, { keepsChanging }: Leaving): LeftFormulas {
  const tables = tablesIn(sheets);
  const workable = workableNames(names);
  const known: Known = {
    tables,
    sheets: new Set(sheets.map(({ name }) => name.toUpperCase())),
    names: new Set(
      names.flatMap((name) =>
        workable.has(name) && withAddresses(name.formula, {}, tables) !== undefined ? [name.name.toUpperCase()] : [],
      ),
    ),
    called: new Set([...functions, ...[...idsByName(names)].map(plainName)]),
    keepsChanging,
  };
  const left = new Map<Cell, string>();
  for (const sheet of sheets) {
    for (const cell of sheet.cells) {
      const why = cell.formula === undefined ? undefined : whyLeft(cell, sheet, known);
      if (why !== undefined) left.set(cell, why);
    }
  }
  return left;
}

interface Known extends Leaving {
  readonly tables: readonly TableColumns[];
  /** In capitals, as the names. */
  readonly sheets: ReadonlySet<string>;
  readonly names: ReadonlySet<string>;
  /** What the engine can call here. */
  readonly called: ReadonlySet<string>;
}

function whyLeft({ formula = "", row, spill }: Cell, sheet: Sheet, known: Known): string | undefined {
  if (spill?.isFixed && spill.rows * spill.columns > 1) return "an array formula over several cells";
  const here = withAddresses(formula, { sheet: sheet.name, row }, known.tables);
  if (here === undefined) return "a table column that is not there";
  let parsed: AstExpression | undefined;
  try {
    parsed = parse(tokenize(here, { withLocation: true })) as AstExpression | undefined;
  } catch {
    return "something that cannot be read here";
  }
  return parsed && new Look(sheet, known).whyNot(parsed, new Set());
}

/** Functions of the engine, and ours. */
const functions: ReadonlySet<string> = new Set([
  ...[
    functionArray,
    functionCompatibility,
    functionDatabase,
    functionDate,
    functionEngineering,
    functionFinancial,
    functionInformation,
    functionLogical,
    functionLookup,
    functionMath,
    functionMeta,
    functionStatistical,
    functionText,
  ].flatMap((each) => each.map(([, name]) => String(name))),
  ...catalogue.map(({ spec }) => `${namespace}.${spec.id}`),
]);

/** What these answer depends on the program, the file or the computer. */
const ofTheProgram: ReadonlySet<string> = new Set(["CELL", "INFO", "GETPIVOTDATA", "RTD"]);
/** What these leave out is hidden by hand or by a filter, which the engine does not tell apart. */
const ofShownRows: ReadonlySet<string> = new Set(["SUBTOTAL", "AGGREGATE"]);
const changing: ReadonlySet<string> = new Set(["NOW", "TODAY", "RAND", "RANDBETWEEN", "RANDARRAY"]);

class Look {
  readonly #sheet: Sheet;
  readonly #known: Known;
  readonly #introduced = new Set<string>();

  constructor(sheet: Sheet, known: Known) {
    this.#sheet = sheet;
    this.#known = known;
  }

  /** `inside`: the names that LET and LAMBDA have introduced around the expression. */
  whyNot(expression: AstExpression, inside: ReadonlySet<string>): string | undefined {
    switch (expression.type) {
      case "ReferenceIdentifier":
        return this.#reference(expression.value, expression.kind, inside);
      case "UnaryExpression":
        if (expression.operator === "@" || expression.operator === "#") return `the sign ${expression.operator}`;
        return this.#first(expression.arguments, inside);
      case "BinaryExpression":
        return this.#first(expression.arguments, inside);
      case "CallExpression": {
        // The library's types know of no LAMBDA that is called where it stands.
        const callee = expression.callee as Identifier | AstExpression;
        const why = callee.type === "Identifier" ? this.#called(callee.name, inside) : this.whyNot(callee, inside);
        return why ?? this.#first(expression.arguments, inside);
      }
      case "LetExpression": {
        const introduced = new Set(inside);
        for (const { id, init } of expression.declarations) {
          const why = (init && this.whyNot(init as AstExpression, introduced)) ?? this.#introduce(id.name);
          if (why !== undefined) return why;
          introduced.add(id.name.toUpperCase());
        }
        return expression.body ? this.whyNot(expression.body as AstExpression, introduced) : undefined;
      }
      case "LambdaExpression": {
        const introduced = new Set([...inside, ...expression.params.map(({ name }) => name.toUpperCase())]);
        return expression.body ? this.whyNot(expression.body as AstExpression, introduced) : undefined;
      }
      default:
        return undefined;
    }
  }

  #first(expressions: readonly unknown[], inside: ReadonlySet<string>): string | undefined {
    for (const each of expressions) {
      const why = each ? this.whyNot(each as AstExpression, inside) : undefined;
      if (why !== undefined) return why;
    }
    return undefined;
  }

  /** The engine throws at a name that LET introduces twice, and its calculation never ends. */
  #introduce(name: string): string | undefined {
    const key = name.toUpperCase();
    if (this.#introduced.has(key)) return `the name ${name}, which LET introduces twice`;
    this.#introduced.add(key);
    return undefined;
  }

  #called(name: string, inside: ReadonlySet<string>): string | undefined {
    const key = name.replace(/^_xlfn\.(?:_xlws\.)?/i, "").toUpperCase();
    if (inside.has(key)) return undefined;
    if (!this.#known.called.has(key) || ofTheProgram.has(key)) return `the function ${name}`;
    if (ofShownRows.has(key) && (this.#sheet.hiddenRows ?? []).length > 0) return `${name} with hidden rows`;
    if (changing.has(key) && this.#known.keepsChanging) return `${name}, which changes by itself`;
    return undefined;
  }

  #reference(value: string, kind: string, inside: ReadonlySet<string>): string | undefined {
    const [, sheets] = /^(?:'((?:[^']|'')+)'|([^'!]+))!/.exec(value)
      ? [value, value.slice(0, value.lastIndexOf("!"))]
      : [];
    if (sheets?.includes("[")) return "another workbook";
    const named = sheets?.replace(/^'|'$/g, "").replaceAll("''", "'");
    if (named !== undefined && !this.#known.sheets.has(named.toUpperCase())) {
      return named.includes(":") ? "a reference through several sheets" : `the sheet ${named}`;
    }
    if (kind !== "name") return undefined;
    const name = value.slice(value.lastIndexOf("!") + 1);
    return inside.has(name.toUpperCase()) || this.#known.names.has(name.toUpperCase()) ? undefined : `the name ${name}`;
  }
}

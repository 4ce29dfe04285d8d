/** Every named formula there is: those that people call, the arithmetic of each, and what these share. */
import { catalogue } from "../core/catalogue";
import type { FunctionSpec } from "../core/define";
import { mayCallOurs, plainName } from "../core/describe";
import { namespace } from "../core/namespace";
import type { Quantity } from "../core/quantities";
import { formulaPieces } from "../workbook/formula";
import { coreName } from "./arithmetic";
import { arithmetics } from "./arithmetics";
import { framed } from "./frame";
import { helpers } from "./helpers";
import { wordsFormula, wordsName } from "./reading";
import { sharedArithmetic } from "./shared-arithmetic";
import { withSpelledNames } from "./words";

interface NamedFormula {
  readonly name: string;
  /** As a spreadsheet shows it, but for `_xlop.` before a parameter that may be left out. */
  readonly formula: string;
  /** What the Name Manager says of it. */
  readonly comment: string;
  /** The names of ours that it calls itself. */
  readonly calls: readonly string[];
}

const parameterNames = ({ parameters, result }: FunctionSpec): string =>
  [
    ...parameters.filter(({ name }) => name !== "headers").map(({ name }) => name),
    ...(result.shape === "row" ? ["column"] : []),
  ].join(",");

const choices: ReadonlyMap<string, Quantity> = new Map(
  arithmetics
    .flatMap(({ spec }) => spec.parameters.map(({ quantity }) => quantity))
    .filter(({ holds }) => holds === "choice")
    .map((quantity) => [wordsName(quantity), quantity]),
);

const summaryOf = ({ id }: FunctionSpec): string => catalogue.find(({ spec }) => spec.id === id)?.page.summary ?? "";

const named = (name: string, formula: string, comment: string): NamedFormula => {
  const spelled = `=${withSpelledNames(formula)}`;
  return { name, formula: spelled, comment, calls: callsOf(spelled).filter((called) => called !== name) };
};

/** The names of ours that a formula calls. */
export const callsOf = (formula: string): readonly string[] => [
  ...new Set(
    formulaPieces(formula).flatMap(({ kind, text }) =>
      kind === "name" && mayCallOurs(text) ? [text.toUpperCase()] : [],
    ),
  ),
];

export const namedFormulas: ReadonlyMap<string, NamedFormula> = new Map(
  [
    ...arithmetics.flatMap(({ spec, formula }) => [
      named(plainName(spec.id), framed(spec), `${summaryOf(spec)} As ${namespace}.${spec.id} of the add-in.`),
      named(
        coreName(spec),
        `LAMBDA(${parameterNames(spec)},${formula})`,
        `The arithmetic of ${plainName(spec.id)}, without its checks.`,
      ),
    ]),
    ...[...choices].map(([name, quantity]) =>
      named(name, wordsFormula(quantity), `Reads a ${quantity.name}, for names that begin with TEA_.`),
    ),
    ...Object.entries({ ...helpers, ...sharedArithmetic }).map(([name, formula]) =>
      named(name, formula, "A part of the formulas whose names begin with TEA_."),
    ),
  ].map((formula) => [formula.name, formula]),
);

/** The formulas of these names, and of every name that they call, in the order in which files have names. */
export function neededFor(names: Iterable<string>): readonly NamedFormula[] {
  const needed = new Set<string>();
  const add = (name: string): void => {
    const formula = namedFormulas.get(name);
    if (formula === undefined || needed.has(name)) return;
    needed.add(name);
    for (const called of formula.calls) add(called);
  };
  for (const name of names) add(name.toUpperCase());
  const inFile = ({ name }: NamedFormula): string => name.toLowerCase();
  return [...namedFormulas.values()]
    .filter(({ name }) => needed.has(name))
    .sort((one, other) => (inFile(one) < inFile(other) ? -1 : 1));
}

/** As it is typed: there brackets, not a mark, say of a parameter that it may be left out. */
export const asTyped = (formula: string): string =>
  formulaPieces(formula)
    .map(({ text }) => (text.startsWith("_xlop.") ? `[${text.slice("_xlop.".length)}]` : text))
    .join("");

/** The ids of the functions that have a named formula. */
export const namedIds: ReadonlySet<string> = new Set(arithmetics.map(({ spec }) => spec.id));

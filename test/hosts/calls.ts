/**
 * ONE table of calls for every host: each example and check of the catalogue, and a list of edge cases. Whatever the
 * host, a call has to give what the bare binding gives, to the last digit; where a host has to differ, the call says so.
 */
import { bind } from "../../src/cells/bind";
import { CellError, type CellValue, type Grid } from "../../src/cells/values";
import { catalogue } from "../../src/core/catalogue";
import type { Expected, FunctionSpec } from "../../src/core/define";
import { edgeCases } from "./edge-cases";

/** An error that stands in a cell before the call. */
export interface ErrorCell {
  readonly error: string;
}

/** What stands in a cell; null for a blank one. */
export type Content = number | string | boolean | null | ErrorCell;

/** One argument: a constant, a range as rows, or null for one that is left out. A blank cell is `[[null]]`. */
export type CallArgument = Content | readonly (readonly Content[])[];

export interface EdgeCase {
  /** What it is about; with the function's name in front, no other call is called so. */
  readonly name: string;
  readonly id: string;
  readonly given: readonly CallArgument[];
  /** By hand. */
  readonly gives: Expected;
}

export interface Call {
  readonly name: string;
  readonly spec: FunctionSpec;
  readonly given: readonly CallArgument[];
}

export const edgeCalls: readonly (Call & Pick<EdgeCase, "gives">)[] = edgeCases.map(({ name, id, given, gives }) => {
  const entry = catalogue.find(({ spec }) => spec.id === id);
  if (!entry) throw new Error(`the catalogue has no ${id}`);
  return { name: `${id}, ${name}`, spec: entry.spec, given, gives };
});

const catalogueCalls: readonly Call[] = catalogue.flatMap(({ spec, page }) => [
  ...page.examples.map(({ given }, index) => ({ name: `${spec.id}, example ${index + 1}`, spec, given })),
  ...page.checks.map(({ given }, index) => ({ name: `${spec.id}, check ${index + 1}`, spec, given })),
]);

export const calls: readonly Call[] = [...catalogueCalls, ...edgeCalls];

/** Where a host in another engine than Node's may differ, in the last digits alone, and why. */
export const lastDigits: Readonly<Record<string, string>> = {
  LOTFLAGS:
    "z is a difference of two Math.log, whose last digit the language leaves to the engine; Node and Chromium differ",
  DRYINGTIME:
    "its fit is made of Math.expm1 and Math.log, whose last digit the language leaves to the engine; Node and Chromium differ",
  BUDCOUNT:
    "its range is made of Math.atan, whose last digit the language leaves to the engine; Node and Chromium differ",
  SAMPLEMEAN:
    "its range is made of Math.atan, whose last digit the language leaves to the engine; Node and Chromium differ",
};

export const isRange = (argument: CallArgument): argument is readonly (readonly Content[])[] => Array.isArray(argument);

export const isErrorCell = (content: unknown): content is ErrorCell =>
  typeof content === "object" && content !== null && "error" in content;

/** The arguments of a call with every content as a host passes it. */
export const argumentsOf = (given: readonly CallArgument[], passed: (content: Content) => unknown): unknown[] =>
  given.map((argument) => (isRange(argument) ? argument.map((row) => row.map(passed)) : passed(argument)));

/** What the bare binding gives: the measure for every host. */
export const bareAnswer = ({ spec, given }: Call): Grid =>
  bind(spec)(...argumentsOf(given, (content) => (isErrorCell(content) ? new CellError(content.error) : content))).map(
    (row) => row.map(asShown),
  );

/** An error as a host shows it: its code and its words. The reason behind them stays with us. */
export const asShown = (value: CellValue): CellValue =>
  value instanceof CellError ? new CellError(value.code, value.message) : value;

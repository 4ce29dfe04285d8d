import { bind } from "../../src/cells/bind";
import { CellError, type Grid } from "../../src/cells/values";
import { wrongCount } from "../../src/cells/wrong-count";
import { catalogue } from "../../src/core/catalogue";
import type { FunctionSpec } from "../../src/core/define";
import { namespace } from "../../src/core/namespace";
import type { Quantity } from "../../src/core/quantities";
import type { Arguments } from "./junk";

/** What is wrong with the answer to a call, whatever its arguments are; undefined where nothing is. */
export type FaultFinder = (given: Arguments) => string | undefined;

export function faultFinder(spec: FunctionSpec): FaultFinder {
  const call = bind(spec);
  const names = argumentNames(spec);
  return (given) => {
    given.forEach(freeze);
    let grid: Grid;
    try {
      grid = call(...given);
    } catch (problem) {
      return `threw ${String(problem)}`;
    }
    const count = wrongCount(spec, given.length);
    if (count !== undefined && !namesOne([...names, `${namespace}.${spec.id}`], count.message)) {
      return `the refusal of ${given.length} arguments names none: ${count.message}`;
    }
    return cellFault(grid, names, given) ?? shapeFault(spec, grid, given) ?? kindFault(spec, grid);
  };
}

/** Changing an argument then throws, which the binding turns into a refusal that names nothing. */
function freeze(value: unknown): void {
  if (!Array.isArray(value) || Object.isFrozen(value)) return;
  Object.freeze(value);
  value.forEach(freeze);
}

/** UNCERTAINTY judges values by the bounds of the function that it is asked about, and names its arguments. */
const argumentNames = (spec: FunctionSpec): readonly string[] =>
  [spec, ...(spec.id === "UNCERTAINTY" ? catalogue.map((entry) => entry.spec) : [])].flatMap(({ parameters }) =>
    parameters.map(({ name }) => name),
  );

const namesOne = (names: readonly string[], message: string): boolean =>
  names.some((name) => message.startsWith(`${name} must `));

/** The errors among the arguments, which come back as they are. */
const errorsIn = (given: unknown): unknown[] =>
  Array.isArray(given) ? given.flatMap(errorsIn) : given instanceof CellError ? [given] : [];

function cellFault(grid: Grid, names: readonly string[], given: Arguments): string | undefined {
  const errors = new Set(errorsIn(given));
  for (const row of grid) {
    for (const cell of row) {
      if (errors.has(cell)) continue;
      const fault = cell instanceof CellError ? refusalFault(cell, names) : valueFault(cell);
      if (fault !== undefined) return fault;
    }
  }
  return undefined;
}

function valueFault(cell: unknown): string | undefined {
  if (typeof cell === "string") return undefined;
  if (typeof cell !== "number" || !Number.isFinite(cell)) return `gave ${String(cell)}`;
  return Object.is(cell, -0) ? "gave a zero with a sign" : undefined;
}

function refusalFault({ code, message }: CellError, names: readonly string[]): string | undefined {
  if (code !== "#VALUE!" && code !== "#N/A") return `made the error ${code}`;
  if (!namesOne(names, message)) return `a refusal names no argument: ${message}`;
  return message.length > 600 ? `a refusal is ${message.length} characters long` : undefined;
}

function shapeFault({ parameters, result }: FunctionSpec, grid: Grid, given: Arguments): string | undefined {
  const width = grid[0]?.length ?? 0;
  if (width === 0 || grid.some((row) => row.length !== width)) return "gave rows of different lengths, or none";
  const [[first]] = grid as [[unknown]];
  if (grid.length === 1 && width === 1 && (first === "" || first instanceof CellError)) return undefined;
  const size = `${grid.length} × ${width} cells`;
  const ranges = parameters.flatMap(({ takes }, place) => {
    const argument = given[place];
    return takes === "cell" && Array.isArray(argument) ? [argument as unknown[][]] : [];
  });
  const rows = Math.max(1, ...ranges.map((range) => range.length));
  const columns = Math.max(1, ...ranges.map(([row]) => row?.length ?? 0));
  switch (result.shape) {
    case "cell":
      return grid.length === rows && width === columns ? undefined : `gave ${size} for ${rows} × ${columns}`;
    case "row":
      return grid.length === rows && width === result.columns.length ? undefined : `gave ${size} for ${rows} rows`;
    case "column":
      return width === 1 ? undefined : `gave ${size} for a column`;
    case "table": {
      const repeats = result.columns.at(-1)?.repeats === true;
      const least = result.columns.length;
      return width === least || (repeats && width >= least)
        ? undefined
        : `gave ${size} for a table of ${least} columns`;
    }
  }
}

/** The declared quantity of a single value, of a column and of a row holds for every number that they give. */
function kindFault({ result }: FunctionSpec, grid: Grid): string | undefined {
  if (result.shape === "table") return undefined;
  const quantities = result.shape === "row" ? result.columns.map(({ quantity }) => quantity) : undefined;
  for (const row of grid) {
    for (const [place, cell] of row.entries()) {
      const quantity = quantities?.[place] ?? (result as { quantity: Quantity }).quantity;
      if (typeof cell === "number" && !isWithin(quantity, cell)) return `gave ${cell} as a ${quantity.name}`;
      if (typeof cell === "string" && cell !== "" && quantity.holds === "number") {
        return `gave the text "${cell}" as a ${quantity.name}`;
      }
    }
  }
  return undefined;
}

/** Rounding may reach a bound that the numbers themselves do not; the top of a share is one for results too. */
function isWithin({ holds, bounds }: Quantity, value: number): boolean {
  if (holds !== "number" || (bounds.whole && !Number.isInteger(value))) return false;
  const low = bounds.atLeast ?? bounds.above ?? Number.NEGATIVE_INFINITY;
  const high = bounds.atMost ?? bounds.below ?? Number.POSITIVE_INFINITY;
  return value >= low && (high > 1 || value <= high);
}

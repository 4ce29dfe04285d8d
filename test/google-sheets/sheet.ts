/** A sheet of Google's as far as its functions can tell: what it passes, and what it gets back. */
import { createContext, runInContext } from "node:vm";
import { CellError, type Grid } from "../../src/cells/values";
import { plainName } from "../../src/core/describe";
import { isTime } from "../../src/core/quantities";
import { bareAnswer, type Call, type CallArgument, type Content, isErrorCell, isRange } from "../hosts/calls";

/** What Node has beside the language. */
const beside = ["Atomics", "Intl", "SharedArrayBuffer", "WebAssembly", "console"];

/** A context in which there is the language, the script, and what else is given. */
export function contextWith(script: string, services: Readonly<Record<string, unknown>> = {}) {
  const context = createContext({ ...services });
  runInContext(beside.map((name) => `delete globalThis.${name};`).join(" "), context);
  runInContext(script, context);
  return context as Record<string, unknown>;
}

/** What a call gave: its value or rows, or the words that it threw. */
export type Given = number | string | boolean | readonly (readonly unknown[])[] | { readonly thrown: string };

export function calledIn(context: Record<string, unknown>, id: string, given: readonly unknown[]): Given {
  const call = context[plainName(id)] as (...given: readonly unknown[]) => Given;
  try {
    const answer = call(...given);
    return Array.isArray(answer) ? Array.from(answer, (row: readonly unknown[]) => Array.from(row)) : answer;
  } catch (problem) {
    return { thrown: (problem as Error).message };
  }
}

/** Makes the moment at which the clock of a sheet shows a number of days. */
export type MomentOf = (days: number) => Date;

const day = 86_400_000;
/** A moment has milliseconds and no less. */
const toTheMillisecond = (days: number): number => Math.round(days * day) / day;

/** In the time zone of this process. */
export const momentHere: MomentOf = (days) => new Date(1899, 11, 30, 0, 0, 0, Math.round(days * day));

/** The arguments of a call as Google passes them: a cell alone as a value, times as moments, errors as texts. */
export function passedByGoogle({ spec, given }: Call, momentOf: MomentOf, leftOut: unknown): unknown[] {
  return given.map((argument, place) => {
    const showsTime = spec.parameters[place] !== undefined && isTime(spec.parameters[place].quantity);
    const passed = (content: Content): unknown => {
      if (content === null) return "";
      if (isErrorCell(content)) return content.error;
      return showsTime && typeof content === "number" ? momentOf(content) : content;
    };
    if (argument === null) return leftOut;
    if (!isRange(argument)) return passed(argument);
    const rows = argument.map((row) => row.map(passed));
    return rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows;
  });
}

/** What Google has to show for a call: what the bare binding gives, with errors as Google takes them. */
export function expectedInGoogle(call: Call): Given {
  const grid: Grid = bareAnswer({
    ...call,
    given: call.given.map((argument, place) => asPassed(call, argument, place)),
  });
  const [[only] = []] = grid;
  const isOne = grid.length === 1 && grid[0]?.length === 1;
  if (isOne && only instanceof CellError) return { thrown: only.message === "" ? only.code : only.message };
  const rows = grid.map((row) => row.map((value) => (value instanceof CellError ? value.code : value)));
  return isOne ? (rows[0]?.[0] as string) : rows;
}

function asPassed({ spec }: Call, argument: CallArgument, place: number): CallArgument {
  const parameter = spec.parameters[place];
  if (parameter === undefined || !isTime(parameter.quantity)) return argument;
  const rounded = (content: Content): Content => (typeof content === "number" ? toTheMillisecond(content) : content);
  return isRange(argument) ? argument.map((row) => row.map(rounded)) : rounded(argument);
}

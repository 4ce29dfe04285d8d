/** Calls with a seed, of every function that has a named formula, as far as a sheet can hold what is given. */
import fc from "fast-check";
import { bind } from "../../src/cells/bind";
import { CellError } from "../../src/cells/values";
import { catalogue } from "../../src/core/catalogue";
import type { Entry } from "../../src/core/entry";
import { namedIds } from "../../src/named-formulas/named-formulas";
import { calls as anyCalls } from "../fuzz/junk";
import { type Call, type CallArgument, type Content, isErrorCell } from "../hosts/calls";

/** Taller answers are the same row again and again, and take the engine long. */
const tallest = 40;

const codes = new Set(["#VALUE!", "#N/A", "#DIV/0!", "#NUM!", "#REF!", "#NAME?"]);

/** Where functions have bounds. */
const bounds = [1, 0.5, 0.2, 0.05, 0.025, 1e12];

/** Whether a spreadsheet tells the number from 0 and from every bound: see `everywhere` among the differences. */
function isTold(value: number): boolean {
  const size = Math.abs(value);
  if (size < 1e-9 || size > 1e300) return size === 0;
  const offWhole = Math.abs(size - Math.round(size));
  if (offWhole > 0 && offWhole < 1e-13 * size) return false;
  return bounds.every((bound) => size === bound || Math.abs(size / bound - 1) > 1e-13);
}

/** undefined for what no cell holds. */
function contentOf(value: unknown): Content | undefined {
  if (value === null || value === undefined) return null;
  if (typeof value === "boolean") return value;
  if (typeof value === "number") return isTold(value) ? value + 0 : undefined;
  if (typeof value === "string")
    return /^[\x20-\x7e\u00a1-\u00ac\u00ae-\u04ff\u4e00-\u9fff]{0,40}$/.test(value) ? value : undefined;
  return value instanceof CellError && codes.has(value.code) ? { error: value.code } : undefined;
}

function argumentOf(value: unknown): CallArgument | undefined {
  if (!Array.isArray(value)) return contentOf(value);
  const width = Array.isArray(value[0]) ? value[0].length : 0;
  if (width === 0 || value.some((row) => !Array.isArray(row) || row.length !== width)) return undefined;
  const rows = (value as unknown[][]).map((row) => row.map(contentOf));
  return rows.some((row) => row.includes(undefined)) ? undefined : (rows as Content[][]);
}

/** See the differences of the functions with a confidence. */
const isUsual = (confidence: CallArgument | undefined): boolean =>
  [confidence]
    .flat(2)
    .every((value) => typeof value !== "number" || value <= 0 || (value >= 0.1 && value <= 0.9999) || value >= 1);

function callOf({ spec }: Entry, given: readonly unknown[]): Call | undefined {
  const needed = spec.parameters.filter(({ optional }) => !optional).length;
  // A spreadsheet refuses to enter these.
  if (given.length < needed || given.length > spec.parameters.length) return undefined;
  // A call of nothing at all is no call with one argument that is left out.
  if (given.every((argument) => argument === null || argument === undefined)) return undefined;
  const whole = given.map(argumentOf);
  if (whole.includes(undefined)) return undefined;
  // See `everywhere` among the differences.
  if (spec.parameters.some(({ takes }, place) => takes === "list" && (whole[place] === "" || whole[place] === 0)))
    return undefined;
  if (spec.parameters.some(({ name }, place) => name === "confidence" && !isUsual(whole[place]))) return undefined;
  const call = { name: "", spec, given: whole as CallArgument[] };
  return answerTo(call).length > tallest ? undefined : { ...call, name: `${spec.id} ${JSON.stringify(whole)}` };
}

export const answerTo = ({ spec, given }: Pick<Call, "spec" | "given">) => {
  const passed = (content: Content) => (isErrorCell(content) ? new CellError(content.error) : content);
  return bind(spec)(
    ...given.map((argument) =>
      Array.isArray(argument) ? argument.map((row) => row.map(passed)) : passed(argument as Content),
    ),
  );
};

export function randomCalls(seed: number, total: number): readonly Call[] {
  const entries = catalogue.filter(({ spec }) => namedIds.has(spec.id));
  const each = Math.ceil(total / entries.length);
  return entries.flatMap((entry) => {
    const found: Call[] = [];
    for (let round = 0; found.length < each; round += 1) {
      for (const given of fc.sample(anyCalls(entry), { seed: seed + round, numRuns: each })) {
        const call = callOf(entry, given);
        if (call && found.length < each) found.push(call);
      }
    }
    return found;
  });
}

import { bind } from "../cells/bind";
import { checkedArguments } from "../cells/checked-arguments";
import { shapeOfAll } from "../cells/shape";
import { CellError, refusedCell } from "../cells/values";
import { headers, type Parameter, type Step } from "../core/define";
import type { Entry } from "../core/entry";
import { DomainError } from "../core/errors";
import { asArgument } from "../host/cell-arguments";
import { HostProblem } from "../host/host-problem";
import type { CellArea, CellContent, CellPlace, ReadArea, WorkbookHost, WorkbookReader } from "../host/workbook-host";
import { referenceTo } from "../workbook/references";
import { isErrorAnswer } from "../workbook/workbook";
import { arithmetic } from "./arithmetic";
import { type ArgumentReading, formulaReading, type TeaCall } from "./formula-reading";

/** An argument with what the workbook knows of it. */
export interface ShownArgument {
  readonly parameter: Parameter;
  /** As the formula writes it; "" where it was left out. */
  readonly text: string;
  readonly is: ArgumentReading["is"];
  /** Rows of values; undefined where only the workbook can work them out. */
  readonly rows: readonly (readonly unknown[])[] | undefined;
  /** Whether the workbook has only not been asked. */
  readonly canAsk: boolean;
  /** Of a range where the function takes one cell: which row of it is shown, from 1. */
  readonly rowPicked: number | undefined;
  /** The unit that a format such as `0.0" g"` puts behind the number. */
  readonly unit: string;
}

export interface CallWorking {
  readonly entry: Entry;
  readonly text: string;
  readonly given: readonly ShownArgument[];
  /** How many more arguments there are than the function takes. */
  readonly tooMany: number;
  readonly outcome:
    | { readonly is: "steps"; readonly steps: readonly Step[] }
    | { readonly is: "waits" }
    | { readonly is: "error"; readonly error: CellError }
    /** These arguments are worked out by the workbook, and their values are not known here, or not yet. */
    | { readonly is: "unknown"; readonly texts: readonly string[]; readonly canAsk: boolean };
}

export interface CellWorking {
  readonly place: CellPlace;
  readonly formula: string;
  /** Whether the formula does something more with what its functions give. */
  readonly isCall: boolean;
  /** Inner calls before the calls they stand in. */
  readonly calls: readonly CallWorking[];
  readonly cell: CellContent;
  readonly unit: string;
  /** The error that the cell shows, with what the host or one of the calls says of it. */
  readonly error: CellError | undefined;
  /** The cell that is selected, where it only shows a part of what this formula gives. */
  readonly partOf?: {
    readonly spill: CellArea;
    readonly row: number;
    readonly column: number;
    readonly shows: CellContent;
  };
  /** Whether the workbook could still work something out here, which it does not do unasked. */
  readonly canAsk: boolean;
}

interface Options {
  /** Whether the maker has asked for what the workbook does not do unasked. */
  readonly isAsked?: boolean;
}

/** The working of the selected cell, or of the first of several; undefined where no function of the catalogue is in it. */
export async function workingOf(
  host: WorkbookHost,
  catalogue: readonly Entry[],
  options: Options = {},
): Promise<CellWorking | undefined> {
  const selected = await host.selection();
  const shows = selected.values[0]?.[0] ?? "";
  const spill = isConstant(selected) ? await host.spillAround(selected) : undefined;
  if (spill === undefined) return workingIn(selected, host, catalogue, options);
  const first = await host.read(referenceTo({ ...spill, rows: 1, columns: 1 }), selected);
  const found = await workingIn(first, host, catalogue, options);
  const { row, column } = selected;
  return found && { ...found, partOf: { spill, row, column, shows } };
}

/** Whether the first cell holds something, and no formula. */
const isConstant = ({ values, formulas }: ReadArea): boolean =>
  (values[0]?.[0] ?? "") !== "" && (formulas[0]?.[0] ?? "") === "";

/** The working of the first cell of an area that was read. */
export async function workingIn(
  area: ReadArea,
  host: WorkbookReader,
  catalogue: readonly Entry[],
  { isAsked = false }: Options = {},
): Promise<CellWorking | undefined> {
  const formula = area.formulas[0]?.[0] ?? "";
  const { calls, isCall } = formulaReading(formula, catalogue);
  if (calls.length === 0) return undefined;
  const place = { sheet: area.sheet, row: area.row, column: area.column };
  const cell = area.values[0]?.[0] ?? "";
  const found: CallWorking[] = [];
  const asked: Asked = { host, place, found, mayEvaluate: isAsked || host.evaluatesUntouched, left: [] };
  for (const call of calls) await workedCall(call, asked);
  const error = isErrorAnswer(cell) ? knownError(String(cell), await host.errorMessage(place), found) : undefined;
  return {
    place,
    formula,
    isCall,
    calls: found,
    cell,
    unit: unitIn(area.formats[0]?.[0]),
    error,
    canAsk: asked.left.length > 0,
  };
}

/** An error with its reason, where it is the one of a call; hosts keep words alone, or none. */
function knownError(code: string, message: string | undefined, calls: readonly CallWorking[]): CellError {
  const refused = calls.flatMap(({ outcome }) => (outcome.is === "error" ? [outcome.error] : []));
  return refused.find((error) => error.message === message) ?? new CellError(code, message);
}

interface Asked {
  readonly host: WorkbookReader;
  readonly place: CellPlace;
  readonly found: CallWorking[];
  readonly mayEvaluate: boolean;
  /** What the workbook could work out and was not asked. */
  readonly left: string[];
}

type Values = readonly (readonly unknown[])[] | undefined;

/** Works a call out, adds it to those found, and gives its values; undefined where they are not known here. */
async function workedCall(call: TeaCall, asked: Asked): Promise<Values> {
  const { spec } = call.entry;
  const given: ShownArgument[] = [];
  for (const [index, parameter] of spec.parameters.entries()) {
    given.push(await shownArgument(parameter, call.given[index] ?? { is: "left out" }, asked));
  }
  const tooMany = Math.max(0, call.given.length - spec.parameters.length);
  const add = (outcome: CallWorking["outcome"]) =>
    asked.found.push({ entry: call.entry, text: call.text, given, tooMany, outcome });
  const unknown = given.filter(({ rows }) => rows === undefined);
  if (unknown.length > 0) {
    add({ is: "unknown", texts: unknown.map(({ text }) => text), canAsk: unknown.every(({ canAsk }) => canAsk) });
    return undefined;
  }
  const values = given.map(({ is, rows }) => (is === "left out" ? null : single(rows as unknown[][])));
  add(outcomeOf(call.entry, values));
  return bind(spec)(...values);
}

function outcomeOf({ spec, page }: Entry, values: readonly unknown[]): CallWorking["outcome"] {
  try {
    const asked = checkedArguments(spec, values);
    // Ranges that do not fit each other have no first cell.
    shapeOfAll(spec.parameters, values);
    if ("values" in asked) return { is: "steps", steps: page.working(...asked.values) };
    if (asked.instead === "") return { is: "waits" };
    return { is: "error", error: asked.instead };
  } catch (problem) {
    if (problem instanceof DomainError) return { is: "error", error: refusedCell(problem) };
    throw problem;
  }
}

async function shownArgument(parameter: Parameter, reading: ArgumentReading, asked: Asked): Promise<ShownArgument> {
  const shown = { parameter, is: reading.is, rowPicked: undefined, unit: "", canAsk: false };
  if (reading.is === "left out") return { ...shown, text: "", rows: [[null]] };
  const leftBefore = asked.left.length;
  const { rows, unit } = await valuesOf(reading, asked);
  const canAsk = asked.left.length > leftBefore;
  const isRange = parameter.takes === "cell" && parameter !== headers && (rows?.length ?? 0) > 1;
  return { ...shown, text: reading.text, rows, unit, canAsk, rowPicked: isRange ? 1 : undefined };
}

async function valuesOf(reading: ArgumentReading, asked: Asked): Promise<{ rows: Values; unit: string }> {
  switch (reading.is) {
    case "left out":
      return { rows: [[null]], unit: "" };
    case "constant":
      return { rows: reading.rows.map((row) => row.map(asArgument)), unit: "" };
    case "reference":
      return cellsOf(reading, asked);
    case "call":
      return { rows: await workedCall(reading.call, asked), unit: "" };
    case "arithmetic": {
      const operands: Values[] = [];
      for (const operand of reading.of) operands.push((await valuesOf(operand, asked)).rows);
      if (operands.includes(undefined)) return { rows: undefined, unit: "" };
      const value = arithmetic(reading.operator, operands as unknown[][][]);
      return { rows: value === undefined ? await evaluated(reading.asked, asked) : [[value]], unit: "" };
    }
    case "expression":
      return { rows: await evaluated(reading.asked, asked), unit: "" };
  }
}

/** What the workbook says; undefined where it cannot be asked, or not yet. */
async function evaluated(expression: string | undefined, { host, place, mayEvaluate, left }: Asked): Promise<Values> {
  if (expression === undefined) return undefined;
  if (!mayEvaluate) {
    left.push(expression);
    return undefined;
  }
  try {
    return (await host.evaluate(expression, place)).map((row) => row.map(asArgument));
  } catch (problem) {
    // Unasked, nobody waits for it: the rest of the working is shown all the same.
    if (host.evaluatesUntouched && problem instanceof HostProblem && problem.reason !== "busy") return undefined;
    throw problem;
  }
}

/** The cells of a reference. What the host cannot read, such as a name that stands for a formula, it works out. */
async function cellsOf(
  reading: ArgumentReading & { is: "reference" },
  asked: Asked,
): Promise<{ rows: Values; unit: string }> {
  const { host, place } = asked;
  const area = await readArea(reading.address, host, place);
  const rows = area?.values.map((row) => row.map(asArgument));
  const picked = reading.thisRow && area ? rows?.slice(place.row - area.row, place.row - area.row + 1) : rows;
  return picked === undefined || picked.length === 0
    ? { rows: await evaluated(reading.asked, asked), unit: "" }
    : { rows: picked, unit: unitIn(area?.formats[0]?.[0]) };
}

async function readArea(address: string, host: WorkbookReader, place: CellPlace): Promise<ReadArea | undefined> {
  try {
    return await host.read(address, place);
  } catch (problem) {
    if (problem instanceof HostProblem && problem.reason !== "busy") return undefined;
    throw problem;
  }
}

const single = (rows: readonly (readonly unknown[])[]): unknown =>
  rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows;

/** `0.0" g"` → g. */
const unitIn = (format = ""): string => /"\s*([^"]{1,12}?)\s*"\s*$/.exec(format)?.[1] ?? "";

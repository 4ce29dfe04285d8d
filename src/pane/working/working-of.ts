import { bind } from "../../cells/bind";
import { checkedArguments } from "../../cells/checked-arguments";
import { shapeOfAll } from "../../cells/shape";
import { CellError } from "../../cells/values";
import { headers, type Parameter, type Step } from "../../core/define";
import type { Entry } from "../../core/entry";
import { DomainError } from "../../core/errors";
import { type CellContent, type CellPlace, HostProblem, type ReadArea, type WorkbookHost } from "../host/workbook-host";
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
    | { readonly is: "error"; readonly code: string; readonly message: string }
    /** These arguments are worked out by the workbook, and their values are not known here. */
    | { readonly is: "unknown"; readonly texts: readonly string[] };
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
  /** Of the error that the cell shows, where the host knows it. */
  readonly message: string | undefined;
}

/** The working of the selected cell, or of the first of several; undefined where no function of the catalogue is in it. */
export async function workingOf(host: WorkbookHost, catalogue: readonly Entry[]): Promise<CellWorking | undefined> {
  return workingIn(await host.selection(), host, catalogue);
}

/** The working of the first cell of an area that was read. */
export async function workingIn(
  area: ReadArea,
  host: WorkbookHost,
  catalogue: readonly Entry[],
): Promise<CellWorking | undefined> {
  const formula = area.formulas[0]?.[0] ?? "";
  const { calls, isCall } = formulaReading(formula, catalogue);
  if (calls.length === 0) return undefined;
  const place = { sheet: area.sheet, row: area.row, column: area.column };
  const cell = area.values[0]?.[0] ?? "";
  const found: CallWorking[] = [];
  for (const call of calls) await workedCall(call, { host, place, found });
  const message = isErrorCode(cell) ? await host.errorMessage(place) : undefined;
  return { place, formula, isCall, calls: found, cell, unit: unitIn(area.formats[0]?.[0]), message };
}

interface Asked {
  readonly host: WorkbookHost;
  readonly place: CellPlace;
  readonly found: CallWorking[];
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
    add({ is: "unknown", texts: unknown.map(({ text }) => text) });
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
    return { is: "error", code: asked.instead.code, message: asked.instead.message };
  } catch (problem) {
    if (problem instanceof DomainError) return { is: "error", code: problem.code, message: problem.message };
    throw problem;
  }
}

async function shownArgument(parameter: Parameter, reading: ArgumentReading, asked: Asked): Promise<ShownArgument> {
  const shown = { parameter, is: reading.is, rowPicked: undefined, unit: "" };
  if (reading.is === "left out") return { ...shown, text: "", rows: [[null]] };
  const { rows, unit } = await valuesOf(reading, asked);
  const isRange = parameter.takes === "cell" && parameter !== headers && (rows?.length ?? 0) > 1;
  return { ...shown, text: reading.text, rows, unit, rowPicked: isRange ? 1 : undefined };
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
      const value = operands.includes(undefined) ? undefined : arithmetic(reading.operator, operands as unknown[][][]);
      return { rows: value === undefined ? undefined : [[value]], unit: "" };
    }
    case "expression":
      return { rows: undefined, unit: "" };
  }
}

/** The cells of a reference; what the host cannot read, such as a name that stands for a formula, is not known. */
async function cellsOf(
  { address, thisRow }: ArgumentReading & { is: "reference" },
  { host, place }: Asked,
): Promise<{ rows: Values; unit: string }> {
  try {
    const area = await host.read(address, place);
    const unit = unitIn(area.formats[0]?.[0]);
    const rows = area.values.map((row) => row.map(asArgument));
    if (!thisRow) return { rows, unit };
    const own = rows[place.row - area.row];
    return { rows: own === undefined ? undefined : [own], unit };
  } catch (problem) {
    if (problem instanceof HostProblem && problem.reason !== "busy") return { rows: undefined, unit: "" };
    throw problem;
  }
}

const errorCode =
  /^#(NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|SPILL!|CALC!|FIELD!|BLOCKED!|BUSY!|GETTING_DATA|CONNECT!|UNKNOWN!)$/;

export const isErrorCode = (value: unknown): value is string => typeof value === "string" && errorCode.test(value);

/** As the functions take a cell: an error is one, and a blank is no text. */
const asArgument = (value: unknown): unknown =>
  isErrorCode(value) ? new CellError(value) : value === "" ? null : value;

const single = (rows: readonly (readonly unknown[])[]): unknown =>
  rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows;

/** `0.0" g"` → g. */
const unitIn = (format = ""): string => /"\s*([^"]{1,12}?)\s*"\s*$/.exec(format)?.[1] ?? "";

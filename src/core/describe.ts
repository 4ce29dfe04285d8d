/** A function's own words, as the pages, the pane and the workbook's help show them. */
import type { Expected, ExpectedRefusal, FunctionSpec, Given, Parameter } from "./define";
import { headers } from "./define";
import { englishBeing } from "./english-refusals";
import { namespace } from "./namespace";
import type { Quantity } from "./quantities";

/** A function by a name without a dot, for where a name may hold none: TEA_OUTTURN. */
export const plainName = (id: string): string => `${namespace}_${id}`;

/** A function as a saved workbook calls it: those of an add-in have a prefix there. */
export const savedName = (id: string): string => `_xldudf_${plainName(id)}`;

const anyOfOurs = new RegExp(`${namespace}[._]`, "i");
/** Whether a formula may call a function of ours: a quick look, before it is read. */
export const mayCallOurs = (formula: string): boolean => anyOfOurs.test(formula);

const inSavedName = new RegExp(`^_xldudf_${namespace}_([A-Z][A-Z0-9]*)$`, "i");
const inName = new RegExp(`^${namespace}\\.([A-Z][A-Z0-9]*)$`, "i");
/** The id of a function of ours by its name in a cell; undefined for any other name. */
export const idInCell = (name: string): string | undefined => inName.exec(name)?.[1]?.toUpperCase();
/** Likewise by its name in a saved workbook. */
export const idInFile = (name: string): string | undefined => inSavedName.exec(name)?.[1]?.toUpperCase();
/** Likewise by its name without a dot. */
export const idInPlainName = (name: string): string | undefined => idInFile(`_xldudf_${name}`);

/** `TEA.FINISHEDWEIGHT(freshWeight, freshMoisture, finishedMoisture, [dryLoss])` */
export function signature({ id, parameters }: FunctionSpec): string {
  const names = parameters.map(({ name, optional }) => (optional ? `[${name}]` : name));
  return `${namespace}.${id}(${names.join(", ")})`;
}

/** An argument as it is typed into a formula. A range becomes an array constant, and its gaps empty texts. */
export function typed(given: Given): string {
  if (given === null) return "";
  if (typeof given === "string") return `"${given.replaceAll('"', '""')}"`;
  if (typeof given === "boolean") return given ? "TRUE" : "FALSE";
  if (typeof given === "number") return String(given);
  return `{${given.map((row) => row.map((cell) => (cell === null ? '""' : typed(cell))).join(",")).join(";")}}`;
}

/** `=TEA.TARGETWEIGHT(320,0.75,0.6)`, as an example of a page is typed into a cell. */
export function formula({ id }: FunctionSpec, given: readonly Given[]): string {
  let last = given.length;
  while (last > 0 && given[last - 1] === null) last -= 1;
  return `=${namespace}.${id}(${given.slice(0, last).map(typed).join(",")})`;
}

/** What an example or a check gives, as rows; a refusal of all of it is one cell. */
export const cellsOf = (gives: Expected): readonly (readonly (number | string | ExpectedRefusal)[])[] =>
  typeof gives === "object" && !("error" in gives) ? gives : [[gives]];

/** The same with refusals as cells show them, by their codes. */
export const rowsOf = (gives: Expected): readonly (readonly (number | string)[])[] =>
  cellsOf(gives).map((row) => row.map((cell) => (typeof cell === "object" ? cell.error : cell)));

/** A plain number as a page shows it: ten significant digits at most. */
export const shownNumber = (value: number): string => String(Number(value.toPrecision(10)));

/** What a blank in this place does, or an argument that is left out. */
export function whenBlank(parameter: Parameter): string {
  if (!parameter.optional) return parameter.blank === "waits" ? "the answer waits" : "refused";
  const { fallback } = parameter;
  if (fallback === undefined) return "allowed";
  if (typeof fallback === "boolean") return `counts as ${fallback ? "TRUE" : "FALSE"}`;
  return `counts as ${typeof fallback === "string" ? `"${fallback}"` : shownNumber(fallback)}`;
}

/** What may stand in this place: one cell or a list, and its bounds. */
export function accepts({ takes, oneForAll, gaps, book, quantity }: Parameter): string {
  const shape =
    takes === "cell"
      ? ""
      : book
        ? "a list, also a whole column: "
        : oneForAll
          ? "a list, or one for all: "
          : gaps
            ? "a list with gaps: "
            : "a list: ";
  return shape + englishBeing(quantity.requirement);
}

/** `headers` is the same everywhere and no page explains it again. */
export function meaning(parameter: Parameter, meanings: Readonly<Record<string, string>>): string {
  if (parameter === headers) return "FALSE leaves out the row of headings";
  return meanings[parameter.name] ?? "";
}

const format = ({ format, holds }: Quantity): string => (holds === "number" ? `number format ${format}` : "text");

/** What the function gives, with the number format to set beside it: results arrive as plain numbers. */
export function resultInWords({ result }: FunctionSpec): string {
  if (result.shape === "cell")
    return `One value (${format(result.quantity)}); a range as argument gives one for each cell.`;
  if (result.shape === "column") return `One column, which spills downwards (${format(result.quantity)}).`;
  if (result.shape === "row")
    return "One row, which spills to the right; a column as argument gives a row for each cell.";
  return "A table, which spills to the right and downwards.";
}

interface ColumnInWords {
  /** As the heading has it; numbered where the column repeats. */
  readonly name: string;
  readonly column: string;
  readonly format: string;
  readonly unit: string;
}

/** The columns of a row or table with their number formats. */
export function columnsInWords({ result }: FunctionSpec): ColumnInWords[] {
  if (result.shape !== "row" && result.shape !== "table") return [];
  return result.columns.map(({ name, quantity, repeats }) => ({
    name: repeats ? `${name} 1, 2, …` : name,
    column: name,
    format: quantity.holds === "number" ? quantity.format : "text",
    unit: quantity.unit,
  }));
}

/** One cell of what the function gives, by its place counted from 1; a single value as it is. */
export function cellOf(spec: FunctionSpec, given: readonly Given[], row: number, column: number): string {
  const whole = formula(spec, given);
  if (spec.result.shape === "cell") return whole;
  const place = spec.result.shape === "column" ? `${row}` : `${row},${column}`;
  return `=INDEX(${whole.slice(1)},${place})`;
}

/** A spill cannot stand inside a worksheet table: this takes one cell out of it. */
export function oneCellForm(spec: FunctionSpec, given: readonly Given[]): string | undefined {
  if (spec.result.shape === "cell") return undefined;
  return spec.result.shape === "table" ? cellOf(spec, given, 2, 2) : cellOf(spec, given, 1, 1);
}

/** What an example shows, as the beginning of a sentence. */
export const asSentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

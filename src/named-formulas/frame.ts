/**
 * The frame of a named formula: what cells/ does for the add-in, written as a formula out of the same specs. Reading,
 * bounds, what stands for a parameter left out, words, waiting, refusing, and the shape of the answer.
 */
import { type Column, type FunctionSpec, headers, type Parameter } from "../core/define";
import { coreName } from "./arithmetic";
import { listFrame } from "./list-frame";
import { reading } from "./reading";
import { literal } from "./words";

/** The whole formula that stands behind the name of a function. */
export function framed(spec: FunctionSpec): string {
  const parameters = spec.parameters.map(({ name, optional }) => (optional ? `_xlop.${name}` : name));
  return `LAMBDA(${[...parameters, bodyOf(spec)].join(",")})`;
}

function bodyOf(spec: FunctionSpec): string {
  switch (spec.result.shape) {
    case "cell":
      return elementByElement(spec);
    case "row":
      return rowByRow(spec, spec.result.columns.length);
    case "column":
      return once(spec);
    case "table":
      return table(spec, spec.result.columns);
  }
}

const isRead = (parameter: Parameter): boolean => parameter !== headers;
const cellsOf = ({ parameters }: FunctionSpec): readonly Parameter[] =>
  parameters.filter((parameter) => parameter.takes === "cell" && isRead(parameter));
const listsOf = ({ parameters }: FunctionSpec): readonly Parameter[] =>
  parameters.filter(({ takes }) => takes === "list");

/** What was given, as an array in which a blank is `""`. */
const taken = ({ name }: Parameter): string => `${name}In,IF(ISOMITTED(${name}),"",_TEA_CELLS(${name}))`;

/** How many of these hold. The 0 makes a number of one alone: TRUE and FALSE are both above 0. */
const added = (terms: readonly string[]): string => ["0", ...terms].join("+");

/** Gives what `answer` is where every reading is there, and what is due instead where one is not. */
function checked(cells: readonly Parameter[], hasLists: boolean, answer: string): string {
  const is = ({ name }: Parameter): string => `${name}Is`;
  const isBlank = (parameter: Parameter): string => `(${is(parameter)}="")`;
  const readings = cells.filter(({ optional, blank }) => !optional && blank === "waits").map(isBlank);
  const settings = cells.filter(({ optional, blank }) => !optional && blank === "is refused").map(isBlank);
  const withLists = hasLists ? `IF(ISERROR(listsSay),listsSay,IF(listsSay="","",${answer}))` : answer;
  const withSettings = settings.length === 0 ? withLists : `IF(${added(settings)}>0,#VALUE!,${withLists})`;
  const waiting = hasLists ? 'IF(ISERROR(listsSay),listsSay,"")' : '""';
  const withReadings = readings.length === 0 ? withSettings : `IF(${added(readings)}>0,${waiting},${withSettings})`;
  const refusals = cells.map((cell) => `ISERROR(${is(cell)})`);
  const withRefusals = refusals.length === 0 ? withReadings : `IF(${added(refusals)}>0,#VALUE!,${withReadings})`;
  return cells.reduceRight((rest, { name }) => `IF(ISERROR(${name}At),${name}At,${rest})`, withRefusals);
}

/** The names of what was read, each with how. */
const readings = (cells: readonly Parameter[]): string =>
  cells.map(({ name, quantity }) => `${name}Is,${reading(quantity, `${name}At`)},`).join("");

const inLet = (declarations: string, answer: string): string =>
  declarations === "" ? answer : `LET(${declarations}${answer})`;

/** The arithmetic with what was read. */
function called(spec: FunctionSpec, ...more: readonly string[]): string {
  const values = spec.parameters.filter(isRead).map(({ name, takes, fallback }) => {
    if (takes === "list") return `${name}List`;
    return fallback === undefined ? `${name}Is` : `_TEA_INSTEAD(${name}Is,${literal(fallback)})`;
  });
  return `${coreName(spec)}(${[...values, ...more].join(",")})`;
}

const sizes = (cells: readonly Parameter[]): string =>
  [
    `high,MAX(${cells.map(({ name }) => `_TEA_ROWS(${name}In)`).join(",")})`,
    `wide,MAX(${cells.map(({ name }) => `_TEA_COLUMNS(${name}In)`).join(",")})`,
  ].join(",");

const misfits = (cells: readonly Parameter[]): string =>
  added(cells.map(({ name }) => `_TEA_MISFIT(${name}In,high,wide)`));

/** A value for each element of the ranges given. */
function elementByElement(spec: FunctionSpec): string {
  const cells = cellsOf(spec);
  const lists = listsOf(spec);
  const frame = listFrame(lists);
  if (cells.length === 0) return inLet(frame, checked([], true, called(spec)));
  const one = inLet(readings(cells), checked(cells, lists.length > 0, called(spec)));
  const each = cells.map(({ name }) => `_TEA_SPREAD(${name}In,high,wide)`).join(",");
  const all = `MAP(${each},LAMBDA(${cells.map(({ name }) => `${name}At`).join(",")},${one}))`;
  const declarations = `${frame}${cells.map(taken).join(",")},${sizes(cells)},`;
  return inLet(declarations, `IF(${misfits(cells)}>0,#VALUE!,${all})`);
}

/** A row of values for each row of the columns given; what stands instead stands in every cell of its row. */
function rowByRow(spec: FunctionSpec, width: number): string {
  const cells = cellsOf(spec);
  const lists = listsOf(spec);
  const frame = listFrame(lists);
  const at = cells.map(({ name }) => `${name}At,INDEX(${name}All,place,1),`).join("");
  const one = inLet(at + readings(cells), checked(cells, lists.length > 0, called(spec, "column")));
  const rows = (high: string) => `MAKEARRAY(${high},${width},LAMBDA(place,column,${one}))`;
  if (cells.length === 0) return inLet(frame, rows("1"));
  const spread = cells.map(({ name }) => `${name}All,_TEA_SPREAD(${name}In,high,1),`).join("");
  const declarations = `${frame}${cells.map(taken).join(",")},${sizes(cells)},`;
  return inLet(declarations, `IF(${misfits(cells)}+(wide>1)>0,#VALUE!,LET(${spread}${rows("high")}))`);
}

/** One answer of several cells, from single cells and lists. */
function once(
  spec: FunctionSpec,
  more: readonly Parameter[] = [],
  within = (answer: string): string => answer,
): string {
  const cells = cellsOf(spec);
  const lists = listsOf(spec);
  const single = [...cells, ...more];
  const at = single.map(({ name }) => `${name}At,INDEX(VSTACK(${name}In),1,1),`).join("");
  const answer = checked(cells, lists.length > 0, called(spec));
  const declarations = `${listFrame(lists)}${at}${readings(single)}`;
  const whole = inLet(declarations, within(answer));
  if (single.length === 0) return whole;
  const large = added(single.map(({ name }) => `(_TEA_SIZE(${name}In)>1)`));
  return inLet(`${single.map(taken).join(",")},`, `IF(${large}>0,#VALUE!,${whole})`);
}

/** Rows under headings. */
function table(spec: FunctionSpec, columns: readonly Column[]): string {
  const { name } = headers;
  return once(
    spec,
    [headers],
    (answer) =>
      `IF(ISERROR(${name}Is),${name}Is,LET(body,${answer},IF(_TEA_SIZE(body)=1,body,IF(_TEA_INSTEAD(${name}Is,${literal(headers.fallback)}),VSTACK(${headings(columns)},body),body))))`,
  );
}

function headings(columns: readonly Column[]): string {
  const fixed = columns.filter(({ repeats }) => !repeats).map(({ name }) => name);
  const constants = `{${fixed.map(literal).join(",")}}`;
  const repeated = columns.find(({ repeats }) => repeats);
  if (repeated === undefined) return constants;
  return `HSTACK(${constants},${literal(`${repeated.name} `)}&SEQUENCE(1,_TEA_COLUMNS(body)-${fixed.length}))`;
}

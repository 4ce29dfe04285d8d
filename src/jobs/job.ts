import { type Caution, cautions } from "../core/cautions";
import type { FunctionSpec, Parameter } from "../core/define";
import { cautionsOfFunctions } from "./cautions-of-functions";

/** A list that is typed in the words of the pane's language. */
type ExampleWords = "steps" | "plots" | "stages";

/**
 * A job of the maker's day: the functions that it joins, and what its form starts with, by the names of their
 * parameters. All else, from the bounds of a field to the arguments of a formula, follows from the catalogue.
 */
export interface Job {
  readonly id: string;
  /** A parameter that several of them have is one field. The last one may grow downwards in the sheet. */
  readonly functions: readonly FunctionSpec[];
  /** Fields, in the order of the form. Weights in grams: other units are converted. */
  readonly inputs: Readonly<Record<string, string>>;
  /** Fields that most makers leave blank. They are folded away: nothing stands in them that nobody typed. */
  readonly more?: readonly string[];
  /** Lists that are typed side by side, row by row. */
  readonly lists?: readonly Readonly<Record<string, readonly string[] | ExampleWords>>[];
  /** Inputs that an earlier function of the job answers, by the names of their parameters: one cell each. */
  readonly feeds?: Readonly<Record<string, FunctionSpec>>;
  /** Rows kept free below the answer, into which it can grow when an input changes. */
  readonly spareRows?: number;
  /** Beside those of its functions' pages. */
  readonly cautions?: readonly Caution[];
}

/** One thing that the form asks for. */
export interface Field {
  readonly name: string;
  readonly parameter: Parameter;
  readonly start: readonly string[] | ExampleWords;
}

function field(job: Job, name: string, start: Field["start"]): Field {
  const parameter = job.functions.flatMap(({ parameters }) => parameters).find((each) => each.name === name);
  if (parameter === undefined) throw new Error(`no function of the job ${job.id} has a parameter ${name}`);
  return { name, parameter, start };
}

const fields = (job: Job, inputs: Readonly<Record<string, string>>): Field[] =>
  Object.entries(inputs).map(([name, start]) => field(job, name, [start]));

export const inputsOf = (job: Job): Field[] => fields(job, job.inputs);
export const moreOf = (job: Job): Field[] => (job.more ?? []).map((name) => field(job, name, [""]));
export const listsOf = (job: Job): Field[][] =>
  (job.lists ?? []).map((list) => Object.entries(list).map(([name, start]) => field(job, name, start)));

export const fieldsOf = (job: Job): Field[] => [...inputsOf(job), ...moreOf(job), ...listsOf(job).flat()];

/** What to be careful of, in the order of the working day. */
export function cautionsOf(job: Job): readonly Caution[] {
  const ids = new Set(job.functions.flatMap(({ id }): readonly string[] => cautionsOfFunctions[id] ?? []));
  return cautions.filter((caution) => ids.has(caution.id) || job.cautions?.includes(caution));
}

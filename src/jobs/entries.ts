import "../workbook/zod-under-policy";
import * as z from "zod/mini";
import type { Messages } from "../words/messages";
import type { Field } from "./job";
import { startingWeight, type WeightUnit } from "./shown-number";

const area = z.object({
  sheet: z.string(),
  row: z.number(),
  column: z.number(),
  rows: z.number(),
  columns: z.number(),
});

/** What stands in one row: what was typed, or the row of the example that still stands there. */
const row = z.union([z.string(), z.number()]);
export type Row = z.infer<typeof row>;

const entry = z.object({
  /** What was typed, also while cells are picked instead: the way back to typing finds it again. */
  texts: z.optional(z.array(row)),
  /** The cells of the sheet that stand in for what is typed. */
  picked: z.optional(area),
  /** Other lists of the row were picked without this one: nothing stands for it, until one of them is typed again. */
  leftOut: z.optional(z.literal(true)),
});

/** What someone put into one field; a single field is a list of one. */
type Entry = z.infer<typeof entry>;
/** By the names of the fields. A field that nobody touched is not there. */
export type Entries = Readonly<Record<string, Entry>>;

export const entriesOfJob = z.record(z.string(), entry);
export const entriesOfJobs = z.record(z.string(), entriesOfJob);

/** Where the words and weights that a form starts with come from. */
export interface Wording {
  readonly messages: Messages;
  readonly unit: WeightUnit;
  /** Decimals that weights of an answer have at least: those of the scale's own step. */
  readonly decimals?: number;
}

export function startOf({ start, parameter }: Field, { messages, unit }: Wording): readonly string[] {
  const texts = typeof start === "string" ? messages.examples[start] : start;
  return texts.map((text) => startingWeight(text, parameter.quantity, unit));
}

/** What stands in each row of a field; a single field has one. */
export function rowsOf({ name, start }: Field, entries: Entries, wording: Wording): readonly Row[] {
  const { texts, leftOut } = entries[name] ?? {};
  if (leftOut) return [];
  const examples = typeof start === "string" ? wording.messages.examples[start] : start;
  return texts ?? examples.map((_, place) => place);
}

export function textsOf(field: Field, entries: Entries, wording: Wording): readonly string[] {
  const examples = startOf(field, wording);
  return rowsOf(field, entries, wording).map((row) => (typeof row === "number" ? (examples[row] ?? "") : row));
}

/** Whether a row of a field still shows the number that it started with. */
export function isExampleAt(place: number, field: Field, entries: Entries, wording: Wording): boolean {
  const row = rowsOf(field, entries, wording)[place];
  return typeof row === "number" && (startOf(field, wording)[row] ?? "") !== "";
}

/** Whether any row of a field does. */
export const isExample = (field: Field, entries: Entries, wording: Wording): boolean =>
  entries[field.name]?.picked === undefined &&
  rowsOf(field, entries, wording).some((_, place) => isExampleAt(place, field, entries, wording));

/** The labels of the fields that an answer rests on though nobody filled them in. */
export const exampleLabels = (fields: readonly Field[], entries: Entries, wording: Wording): readonly string[] => [
  ...new Set(
    fields
      .filter((field) => isExample(field, entries, wording))
      .map(({ name }) => wording.messages.inputs[name]?.label ?? name),
  ),
];

export const withRows = (entries: Entries, { name }: Field, rows: readonly Row[]): Entries => ({
  ...entries,
  [name]: { ...entries[name], texts: [...rows] },
});

/** With cells in the place of what was typed; without any, what was typed stands there again. */
export const withPicked = (entries: Entries, { name }: Field, picked: Entry["picked"]): Entries => {
  const { texts } = entries[name] ?? {};
  return { ...entries, [name]: { ...(texts && { texts }), ...(picked && { picked }) } };
};

export const withoutField = (entries: Entries, { name }: Field): Entries => {
  const { texts } = entries[name] ?? {};
  return { ...entries, [name]: { ...(texts && { texts }), leftOut: true } };
};

/** Typed again, as far as it is left out. */
export const withAllOf = (entries: Entries, fields: readonly Field[]): Entries =>
  fields.reduce((all, field) => (all[field.name]?.leftOut ? withPicked(all, field, undefined) : all), entries);

import * as z from "zod";
import { kept } from "../kept";
import type { Messages } from "../messages/messages";
import type { Field } from "./job";
import { startingWeight, type WeightUnit } from "./shown-number";

const area = z.object({
  sheet: z.string(),
  row: z.number(),
  column: z.number(),
  rows: z.number(),
  columns: z.number(),
});

const entry = z.object({
  /** What was typed, also while cells are picked instead: the way back to typing finds it again. */
  texts: z.array(z.string()).optional(),
  /** The cells of the sheet that stand in for what is typed. */
  picked: area.optional(),
});

/** What someone put into one field; a single field is a list of one. */
export type Entry = z.infer<typeof entry>;
/** By the names of the fields. A field that nobody touched is not there. */
export type Entries = Readonly<Record<string, Entry>>;

/** By jobs. */
export const keptEntries = kept("jobs", z.record(z.string(), z.record(z.string(), entry)), {});

/** Where the words and weights that a form starts with come from. */
export interface Wording {
  readonly messages: Messages;
  readonly unit: WeightUnit;
}

export function startOf({ start, parameter }: Field, { messages, unit }: Wording): readonly string[] {
  const texts = typeof start === "string" ? messages.examples[start] : start;
  return texts.map((text) => startingWeight(text, parameter.quantity, unit));
}

export const textsOf = (field: Field, entries: Entries, wording: Wording): readonly string[] =>
  entries[field.name]?.texts ?? startOf(field, wording);

/** Whether a field still shows the number that it started with. */
export const isExample = (field: Field, entries: Entries, wording: Wording): boolean =>
  entries[field.name]?.picked === undefined &&
  entries[field.name]?.texts === undefined &&
  startOf(field, wording).some((text) => text !== "");

export const withTexts = (entries: Entries, { name }: Field, texts: readonly string[]): Entries => ({
  ...entries,
  [name]: { ...entries[name], texts: [...texts] },
});

export const withPicked = (entries: Entries, { name }: Field, picked: Entry["picked"]): Entries => {
  const { texts } = entries[name] ?? {};
  return { ...entries, [name]: { ...(texts && { texts }), ...(picked && { picked }) } };
};

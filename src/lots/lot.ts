/**
 * A lot as a phone beside the pan keeps it: what was typed into the guided jobs, and what was weighed. This schema makes
 * the types and checks what is read again. Moments are milliseconds since 1970, as the phone's clock gives them.
 */
import "../workbook/zod-under-policy";
import * as z from "zod/mini";
import { type Entries, entriesOfJob } from "../jobs/entries";
import { type WeightUnit, weightUnits } from "../jobs/shown-number";

const moment = z.number();
const unit = z.enum(weightUnits);

const weighing = z.object({
  id: z.string(),
  charge: z.int(),
  /** Which target of the plan it is on the way to, from 1. */
  round: z.int(),
  /** As it was typed, in the unit that the lot had then. */
  text: z.string(),
  unit,
  at: moment,
});

const jobOfLot = z.object({
  entries: entriesOfJob,
  /** When the time that the job begins at was typed: which day it means follows from it. */
  clockTyped: z.optional(moment),
});

export const lotSchema = z.object({
  id: z.string(),
  name: z.string(),
  unit,
  begun: moment,
  changed: moment,
  /** When it was last sent on. */
  sent: z.optional(moment),
  jobs: z.record(z.string(), jobOfLot),
  /** In the order in which they were typed. */
  weighings: z.array(weighing),
  /** Where drying would come to rest, as it was typed, by charge. */
  endWeights: z.record(z.string(), z.object({ text: z.string(), unit })),
  /** What was due up to then has been seen to. */
  seenTo: moment,
});

export type Lot = z.infer<typeof lotSchema>;
export type Weighing = z.infer<typeof weighing>;

export const newLot = (id: string, name: string, weighedIn: WeightUnit, now: number): Lot => ({
  id,
  name,
  unit: weighedIn,
  begun: now,
  changed: now,
  jobs: {},
  weighings: [],
  endWeights: {},
  seenTo: now,
});

/** The field at whose time of day a job begins. */
export const clockOf: Readonly<Record<string, string>> = { turns: "start", day: "firstStart" };

export function withEntries(lot: Lot, job: string, entries: Entries, now: number): Lot {
  const before = lot.jobs[job];
  const clock = clockOf[job];
  const isTypedNow = clock !== undefined && entries[clock] !== undefined && entries[clock] !== before?.entries[clock];
  const clockTyped = isTypedNow ? now : before?.clockTyped;
  return {
    ...lot,
    changed: now,
    jobs: { ...lot.jobs, [job]: { entries: { ...entries }, ...(clockTyped !== undefined && { clockTyped }) } },
  };
}

export const entriesIn = (lot: Lot | undefined, job: string): Entries => lot?.jobs[job]?.entries ?? {};

/** With a weighing as it now reads: the same one while it is typed on. One that was emptied again never was. */
export function withWeighing(lot: Lot, typed: Weighing, now: number): Lot {
  const isThere = lot.weighings.some(({ id }) => id === typed.id);
  const weighings = isThere
    ? lot.weighings.map((each) => (each.id === typed.id ? { ...typed, at: each.at } : each))
    : [...lot.weighings, typed];
  return { ...lot, changed: now, weighings: weighings.filter(({ text }) => text.trim() !== "") };
}

export const withoutWeighing = (lot: Lot, id: string, now: number): Lot => ({
  ...lot,
  changed: now,
  weighings: lot.weighings.filter((each) => each.id !== id),
});

/** Both lots, with the weighing in the other one, at the time at which it was weighed. */
export function moved(weighingId: string, from: Lot, to: Lot, now: number): { readonly from: Lot; readonly to: Lot } {
  const found = from.weighings.find(({ id }) => id === weighingId);
  if (found === undefined) return { from, to };
  return { from: withoutWeighing(from, weighingId, now), to: withWeighing(to, found, now) };
}

/** Newest first, by when they were begun. */
export const inOrder = (lots: readonly Lot[]): Lot[] => [...lots].sort((one, other) => other.begun - one.begun);

/** How many lots were begun on the day of a moment. */
export const begunOnDay = (lots: readonly Lot[], now: number): number =>
  lots.filter(({ begun }) => new Date(begun).toDateString() === new Date(now).toDateString()).length;

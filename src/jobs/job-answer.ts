import { bindInPhrases, type PhraseGrid } from "../cells/bind";
import { CellError, type CellValue } from "../cells/values";
import { type FunctionSpec, headers } from "../core/define";
import { asArgument } from "../host/cell-arguments";
import type { CellContent } from "../host/workbook-host";
import { type Entries, textsOf, type Wording } from "./entries";
import { type Field, fieldsOf, type Job, listsOf } from "./job";
import { type Understood, understood } from "./read-text";

/** The cells that were picked, as they are now, by the names of their fields. */
export type PickedValues = Readonly<Record<string, readonly (readonly CellContent[])[]>>;

/** What a form says of one field: each text that was typed, or that its cells come from the sheet. */
export type FieldReading = { readonly typed: readonly Understood[] } | { readonly picked: true };

/** Reads every field. A row of a list that is blank in all its columns is no row. */
export function readingsOf(job: Job, entries: Entries, wording: Wording): Map<string, FieldReading> {
  const lists = listsOf(job);
  const textsAt = (field: Field, row: number) => textsOf(field, entries, wording)[row] ?? "";
  return new Map(
    fieldsOf(job).map((field): [string, FieldReading] => {
      if (entries[field.name]?.picked) return [field.name, { picked: true }];
      const beside = lists.find((list) => list.some(({ name }) => name === field.name)) ?? [];
      const typed = textsOf(field, entries, wording).map((text, row) => {
        const isNoRow = beside.length > 0 && beside.every((other) => textsAt(other, row).trim() === "");
        return isNoRow ? ({ is: "blank" } as const) : understood(text, field.parameter, wording.unit);
      });
      return [field.name, { typed }];
    }),
  );
}

/** The fields that need another look, in the order of the form; `unread`: those whose cells could not be read. */
export const brokenFields = (
  readings: ReadonlyMap<string, FieldReading>,
  unread: Readonly<Record<string, unknown>> = {},
): string[] =>
  [...readings].flatMap(([name, reading]) => {
    const isBroken = "typed" in reading ? reading.typed.some(({ is }) => is === "problem") : name in unread;
    return isBroken ? [name] : [];
  });

/** The number that a field holds, typed or picked. */
export function numberIn(
  name: string,
  readings: ReadonlyMap<string, FieldReading>,
  picked: PickedValues,
): number | undefined {
  const reading = readings.get(name);
  if (reading === undefined) return undefined;
  const typed = "typed" in reading ? reading.typed[0] : undefined;
  const value = "picked" in reading ? picked[name]?.[0]?.[0] : typed?.is === "value" ? typed.value : undefined;
  return typeof value === "number" ? value : undefined;
}

export interface JobAnswer {
  readonly spec: FunctionSpec;
  /** What it was given, as its cells would be. */
  readonly given: readonly unknown[];
  /** As cells would hold it, without the row of headings, and with what it says as phrases. */
  readonly grid: PhraseGrid;
  /** Where it is one error. */
  readonly refusal: CellError | undefined;
  /** A measured input is still blank. */
  readonly waits: boolean;
}

export const isGiven = ({ refusal, waits }: JobAnswer): boolean => refusal === undefined && !waits;

/** What each function of the job answers; undefined while a field needs another look. */
export function answersOf(
  job: Job,
  readings: ReadonlyMap<string, FieldReading>,
  picked: PickedValues,
  unread: Readonly<Record<string, unknown>> = {},
): readonly JobAnswer[] | undefined {
  if (brokenFields(readings, unread).length > 0) return undefined;
  const answers: JobAnswer[] = [];
  for (const spec of job.functions) {
    const given = spec.parameters.map((parameter) => {
      if (parameter === headers) return false;
      const feeding = answers.find((answer) => answer.spec === job.feeds?.[parameter.name]);
      if (feeding) return feeding.grid[0]?.[0] ?? null;
      const reading = readings.get(parameter.name);
      if (reading === undefined) return null;
      if ("picked" in reading) {
        return (picked[parameter.name] ?? [[""]]).map((row) => row.map(asArgument));
      }
      const values = reading.typed.map((each) => (each.is === "value" ? each.value : null));
      if (values.every((value) => value === null)) return parameter.optional ? null : values.map((value) => [value]);
      return parameter.takes === "list" ? values.map((value) => [value]) : (values[0] ?? null);
    });
    const grid = bindInPhrases(spec)(...given);
    const first = grid[0]?.[0] as CellValue;
    const isSingle = grid.length === 1 && grid[0]?.every((value) => sameError(value, first));
    answers.push({
      spec,
      given,
      grid,
      refusal: isSingle && first instanceof CellError ? first : undefined,
      waits: grid.length === 1 && (grid[0]?.every((value) => value === "") ?? false),
    });
  }
  return answers;
}

const sameError = (one: unknown, other: unknown): boolean =>
  one instanceof CellError && other instanceof CellError && one.message === other.message && one.code === other.code;

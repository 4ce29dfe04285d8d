import { chargePlan } from "../core/charges/charge-plan";
import { exampleLabels, textsOf, type Wording } from "../jobs/entries";
import { fieldsOf, type Job } from "../jobs/job";
import { answersOf, isGiven, readingsOf } from "../jobs/job-answer";
import { jobs } from "../jobs/jobs";
import { entriesIn, type Lot } from "./lot";

export interface PlannedCharge {
  readonly number: number;
  readonly load: number;
  /** What the scale should read, round by round. */
  readonly targets: readonly number[];
}

export interface FiringPlan {
  /** Of the leaf in every charge. */
  readonly moisture: number;
  readonly charges: readonly PlannedCharge[];
  /** The fields that nobody has filled in: the plan rests on our examples there. */
  readonly examples: readonly string[];
  /** What each round goes by, as it was typed. */
  readonly rounds: readonly string[];
}

export const planningJob = jobs.find(({ functions }) => functions.includes(chargePlan)) as Job;

/** The charges of a lot; undefined before it is planned, for nobody should fire by an example. */
export function firingPlan(lot: Lot | undefined, wording: Wording): FiringPlan | undefined {
  const entries = entriesIn(lot, planningJob.id);
  if (Object.keys(entries).length === 0) return undefined;
  const readings = readingsOf(planningJob, entries, wording);
  const answer = answersOf(planningJob, readings, {})?.find(({ spec }) => spec === chargePlan);
  const moisture = readings.get("moisture");
  const given = moisture && "typed" in moisture ? moisture.typed[0] : undefined;
  if (answer === undefined || !isGiven(answer) || given?.is !== "value") return undefined;
  // The row of the total has a word in the place of a number.
  const charges = answer.grid.flatMap(([number, load, ...targets]): PlannedCharge[] =>
    typeof number === "number" && typeof load === "number" ? [{ number, load, targets: targets as number[] }] : [],
  );
  const fields = fieldsOf(planningJob);
  const textsIn = (name: string) => {
    const field = fields.find((each) => each.name === name);
    return field ? textsOf(field, entries, wording) : [];
  };
  const kinds = textsIn("targetKinds").map((kind) => wording.messages.choices[kind] ?? kind);
  return {
    moisture: given.value as number,
    charges,
    examples: exampleLabels(fields, entries, wording),
    rounds: textsIn("targets").flatMap((text, row) =>
      text.trim() === "" ? [] : [`${text} ${kinds[row] ?? ""}`.trim()],
    ),
  };
}

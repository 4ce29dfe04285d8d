/** What a lot is due for by the clock: turns of the wrapped leaf, firings of the day's plan. */
import { dayPlan } from "../core/time/day-plan";
import { turnTimes } from "../core/time/turn-times";
import { columnsOf } from "../jobs/answer-columns";
import { isExample, type Wording } from "../jobs/entries";
import { fieldsOf, type Job } from "../jobs/job";
import { answersOf, isGiven, readingsOf } from "../jobs/job-answer";
import { jobs } from "../jobs/jobs";
import type { DueWork } from "../words/phone";
import { clockOf, type Lot } from "./lot";
import { momentNear } from "./spreadsheet-time";

export interface Due {
  readonly lot: string;
  readonly work: DueWork;
  readonly at: number;
}

const jobOf = (spec: (typeof jobs)[number]["functions"][number]): Job =>
  jobs.find(({ functions }) => functions.includes(spec)) as Job;

const turning = jobOf(turnTimes);
const day = jobOf(dayPlan);

/** In the order in which they come. Nothing is counted from an example of ours. */
export const dueTimes = (lot: Lot, wording: Wording): Due[] =>
  [...turnsOf(lot, wording), ...firingsOf(lot, wording)].sort((one, other) => one.at - other.at);

function turnsOf(lot: Lot, wording: Wording): Due[] {
  const found = clockedAnswer(lot, turning, wording);
  return (found?.rows ?? []).flatMap(([time], index): Due[] =>
    typeof time === "number"
      ? [{ lot: lot.id, work: { is: "turn", number: index + 1 }, at: found?.momentOf(time) ?? 0 }]
      : [],
  );
}

function firingsOf(lot: Lot, wording: Wording): Due[] {
  const found = clockedAnswer(lot, day, wording);
  const columns = columnsOf(dayPlan, found?.rows[0]?.length ?? 0);
  const place = (name: string) => columns.findIndex((column) => column.name === name);
  const [charge, round, pan, start] = ["charge", "round", "pan", "start"].map(place) as [
    number,
    number,
    number,
    number,
  ];
  return (found?.rows ?? []).flatMap((row): Due[] => {
    const [which, time, where, at] = [row[charge], row[round], row[pan], row[start]];
    return typeof which === "number" && typeof time === "number" && typeof where === "number" && typeof at === "number"
      ? [{ lot: lot.id, work: { is: "firing", charge: which, round: time, pan: where }, at: found?.momentOf(at) ?? 0 }]
      : [];
  });
}

/** What the last function of a job answers, and the moment of each of its times. */
function clockedAnswer(lot: Lot, job: Job, wording: Wording) {
  const clock = clockOf[job.id] ?? "";
  const { entries, clockTyped } = lot.jobs[job.id] ?? {};
  const field = fieldsOf(job).find(({ name }) => name === clock);
  if (entries === undefined || clockTyped === undefined || field === undefined) return undefined;
  const readings = readingsOf(job, entries, wording);
  const typed = readings.get(clock);
  const first = typed && "typed" in typed ? typed.typed[0] : undefined;
  if (isExample(field, entries, wording) || first?.is !== "value") return undefined;
  const answer = answersOf(job, readings, {})?.at(-1);
  if (answer === undefined || !isGiven(answer)) return undefined;
  return { rows: answer.grid, momentOf: (time: number) => momentNear(clockTyped, Number(first.value), time) };
}

interface Clock {
  /** What came due and nobody has seen to, the oldest first. */
  readonly overdue: readonly Due[];
  readonly next: Due | undefined;
}

/** How all lots stand at a moment; `seenTo` of each lot says up to when its work was seen to. */
export function clockAt(lots: readonly Lot[], dues: readonly Due[], now: number): Clock {
  const seenTo = new Map(lots.map((lot) => [lot.id, lot.seenTo]));
  const open = dues.filter(({ lot, at }) => at > (seenTo.get(lot) ?? now)).sort((one, other) => one.at - other.at);
  return { overdue: open.filter(({ at }) => at <= now), next: open.find(({ at }) => at > now) };
}

/** A stretch of time as hours, minutes and seconds: 0:12:05. */
export function inClockForm(milliseconds: number): string {
  const seconds = Math.max(0, Math.round(milliseconds / 1000));
  const two = (number: number) => String(number).padStart(2, "0");
  return `${Math.floor(seconds / 3600)}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`;
}

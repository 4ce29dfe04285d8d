import { secondsInDay } from "../days";

/** A time of day at which nothing is fired, in seconds from midnight; over midnight where the end is the smaller. */
export interface Break {
  readonly from: number;
  readonly length: number;
}

/** How long a firing of this round takes, and the least rest after it. */
interface Round {
  readonly firing: number;
  readonly rest: number;
}

export interface Day {
  readonly start: number;
  readonly charges: number;
  readonly rounds: readonly Round[];
  readonly pans: number;
  readonly pause?: Break | undefined;
}

/** All in seconds. */
export interface Firing {
  readonly charge: number;
  readonly round: number;
  readonly pan: number;
  readonly due: number;
  readonly start: number;
  readonly end: number;
}

interface Waiting {
  readonly charge: number;
  readonly due: number;
}

/**
 * A non-delay list schedule: again and again the firing is placed that could start first; ties go to the earlier due
 * time, then to the lower charge; it takes the lowest-numbered pan free then. Rounds wait in queues of their own, in
 * order of due time and charge: within a round all firings last as long, so only the first of each queue can be next.
 * Starts never go back, so a pan is free from the end of its last firing on.
 * Source: K. R. Baker, Introduction to Sequencing and Scheduling (1974).
 */
export function daySchedule({ start, charges, rounds, pans, pause }: Day): Firing[] {
  const queues: Waiting[][] = rounds.map(() => []);
  queues[0] = Array.from({ length: charges }, (_, index) => ({ charge: index + 1, due: start }));
  const freeFrom = new Array<number>(Math.min(pans, charges)).fill(start);
  const firings: Firing[] = [];
  while (firings.length < charges * rounds.length) {
    const panFree = Math.min(...freeFrom);
    const { rest, ...next } = queues
      .flatMap(([first], index) => {
        if (first === undefined) return [];
        const { firing, rest } = rounds[index] as Round;
        const begins = clearOf(pause, Math.max(first.due, panFree), firing);
        return [{ ...first, round: index + 1, start: begins, end: begins + firing, rest }];
      })
      .reduce((soonest, one) => (comesBefore(one, soonest) ? one : soonest));
    const pan = freeFrom.findIndex((free) => free <= next.start);
    freeFrom[pan] = next.end;
    firings.push({ ...next, pan: pan + 1 });
    queues[next.round - 1]?.shift();
    const after = queues[next.round];
    if (after) putInOrder(after, { charge: next.charge, due: next.end + rest });
  }
  return firings.sort((one, other) => one.start - other.start || one.pan - other.pan);
}

type Placed = Waiting & { readonly start: number };

const comesBefore = (one: Placed, other: Placed): boolean =>
  one.start < other.start ||
  (one.start === other.start && (one.due < other.due || (one.due === other.due && one.charge < other.charge)));

/** Nearly always at the end: a round's firings end in the order in which they began. */
function putInOrder(queue: Waiting[], waiting: Waiting): void {
  let place = queue.length;
  while (place > 0 && isAfter(queue[place - 1] as Waiting, waiting)) place -= 1;
  queue.splice(place, 0, waiting);
}

const isAfter = (one: Waiting, other: Waiting): boolean =>
  one.due > other.due || (one.due === other.due && one.charge > other.charge);

/** The first moment from `earliest` on that leaves the whole firing clear of breaks. It may touch them. */
function clearOf(pause: Break | undefined, earliest: number, firing: number): number {
  if (pause === undefined || pause.length === 0) return earliest;
  const sinceBreak = (((earliest - pause.from) % secondsInDay) + secondsInDay) % secondsInDay;
  const begins = sinceBreak < pause.length ? earliest + pause.length - sinceBreak : earliest;
  const untilBreak = secondsInDay - Math.max(sinceBreak, pause.length);
  return firing <= untilBreak ? begins : begins + untilBreak + pause.length;
}

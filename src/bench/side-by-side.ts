/**
 * Two ways to the same answer, measured in turn in one run: machines are noisy, so what counts is the ratio of the two
 * and not the milliseconds of either.
 */
export interface Comparison {
  readonly what: string;
  readonly ours: Measured;
  readonly other: Measured;
  /** Time of ours over time of the other: below 1 is faster. */
  readonly ratio: number;
  /** The ratio that the project holds itself to. */
  readonly goal: string;
}

export interface Measured {
  readonly name: string;
  /** Of the fastest round: whatever else a machine does only adds. */
  readonly milliseconds: number;
}

export interface Contestant {
  readonly name: string;
  readonly run: () => unknown;
}

const rounds = 9;
/** The first runs of any code are interpreted: both warm up for this long. */
const warmUp = 300;
/** A round repeats short work until it lasts at least this long, so that the clock's step does not matter. */
const shortestRound = 20;

export function sideBySide(what: string, ours: Contestant, other: Contestant, goal: string): Comparison {
  const contestants = [ours, other].map((contestant) => ({ ...contestant, repeats: repeatsFor(contestant.run) }));
  const times: number[][] = [[], []];
  for (let round = 0; round < rounds; round += 1) {
    for (const [index, { run, repeats }] of contestants.entries()) times[index]?.push(timeOf(run, repeats));
  }
  const [mine, theirs] = times.map((round) => Math.min(...round)) as [number, number];
  return {
    what,
    ours: { name: ours.name, milliseconds: mine },
    other: { name: other.name, milliseconds: theirs },
    ratio: mine / theirs,
    goal,
  };
}

function repeatsFor(run: () => unknown): number {
  for (const end = performance.now() + warmUp; performance.now() < end; ) run();
  let repeats = 1;
  while (timeOf(run, repeats) * repeats < shortestRound) repeats *= 2;
  return repeats;
}

export function timeOf(run: () => unknown, repeats = 1): number {
  const start = performance.now();
  for (let repeat = 0; repeat < repeats; repeat += 1) run();
  return (performance.now() - start) / repeats;
}

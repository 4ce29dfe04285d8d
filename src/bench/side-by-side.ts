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
  /** The largest ratio that the project allows itself; absent where a ratio is only shown. */
  readonly atMost?: number;
}

interface Measured {
  readonly name: string;
  /** Of the fastest round: whatever else a machine does only adds. */
  readonly milliseconds: number;
}

interface Contestant {
  readonly name: string;
  readonly run: () => unknown;
}

const rounds = 9;
/** The first runs of any code are interpreted: both warm up for this long. */
const warmUp = 300;
/** A round repeats short work until it lasts at least this long, so that the clock's step does not matter. */
const shortestRound = 20;

export function sideBySide(what: string, ours: Contestant, other: Contestant, atMost?: number): Comparison {
  const contestants = [ours, other].map((contestant) => ({ ...contestant, repeats: repeatsFor(contestant.run) }));
  const times: number[][] = [[], []];
  for (let round = 0; round < rounds; round += 1) {
    for (const [index, { run, repeats }] of contestants.entries()) times[index]?.push(timeOf(run, repeats));
  }
  return comparison(
    what,
    { name: ours.name, times: times[0] ?? [] },
    { name: other.name, times: times[1] ?? [] },
    atMost,
  );
}

interface Timed {
  readonly name: string;
  /** Of each round, in milliseconds. */
  readonly times: readonly number[];
}

/** What two rows of rounds, taken in turn, come to. */
export function comparison(what: string, ours: Timed, other: Timed, atMost?: number): Comparison {
  const [mine, theirs] = [ours, other].map(({ times }) => Math.min(...times)) as [number, number];
  return {
    what,
    ours: { name: ours.name, milliseconds: mine },
    other: { name: other.name, milliseconds: theirs },
    ratio: mine / theirs,
    ...(atMost !== undefined && { atMost }),
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

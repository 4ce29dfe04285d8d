/** An invented season of any length, for measuring alone: the same numbers at every run. */
export interface SeasonRows {
  readonly groups: readonly string[];
  readonly fresh: readonly number[];
  readonly finished: readonly number[];
}

export function seasonRows(count: number, groupCount: number): SeasonRows {
  const next = numbers(20250401);
  const groups: string[] = [];
  const fresh: number[] = [];
  const finished: number[] = [];
  for (let row = 0; row < count; row += 1) {
    const weight = 400 + Math.round(next() * 12000) / 10;
    groups.push(`plot ${Math.floor(next() * groupCount) + 1}`);
    fresh.push(weight);
    finished.push(Math.round(weight * (0.19 + 0.05 * next()) * 10) / 10);
  }
  return { groups, fresh, finished };
}

/** A column of cells, as a host passes it. */
export const column = <Value>(values: readonly Value[]): Value[][] => values.map((value) => [value]);

/** A linear congruential generator (Numerical Recipes' constants): good enough to vary weights. */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

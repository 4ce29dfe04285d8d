/** Numbers that look like chance and are the same in every run, so that a measurement can be made again. */
export interface Random {
  /** From 0 up to 1. */
  readonly uniform: () => number;
  /** About 0 with a standard deviation of 1. */
  readonly normal: () => number;
  /** From the first up to the second. */
  readonly between: (from: number, to: number) => number;
}

/** Mulberry32, and normal numbers from pairs of it by Box and Muller. */
export function randomFrom(seed: number): Random {
  let state = seed | 0;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  return {
    uniform,
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
    between: (from, to) => from + (to - from) * uniform(),
  };
}

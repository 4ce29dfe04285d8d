/** Numbers that look like chance and are the same in every build. Marsaglia's xorshift, 32 bits. */
export interface SeededNumbers {
  /** From 0 up to 1. */
  next(): number;
  /** About 0 with a standard deviation of 1, and never beyond 3: the sum of twelve, less six, held in. */
  scatter(): number;
}

export function seededNumbers(seed: number): SeededNumbers {
  let state = seed;
  const next = (): number => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
  return {
    next,
    scatter: () => {
      const sum = Array.from({ length: 12 }, next).reduce((total, number) => total + number, 0);
      return Math.max(-3, Math.min(3, sum - 6));
    },
  };
}

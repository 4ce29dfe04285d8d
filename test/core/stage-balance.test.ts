import { expect, test } from "vitest";
import { stageBalance } from "../../src/core/balance/stage-balance";
import { Phrase } from "../../src/core/phrases";

/** Mulberry32. */
function uniform(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

test("the table of any lot adds up, in weights and in dry matter", () => {
  const next = uniform(11);
  for (let lot = 0; lot < 500; lot += 1) {
    const rows = 2 + Math.floor(next() * 6);
    const weights = Array.from({ length: rows }, (_, row) => (900 / (row + 1)) * (0.8 + 0.4 * next()));
    const moistures = weights.map(() => (next() < 0.25 ? null : 0.02 + 0.9 * next()));
    const first = moistures.findIndex((moisture) => moisture !== null);
    const removed = weights.map((_, row) => (first >= 0 && row > first && next() < 0.6 ? 30 * next() : null));
    const removedMoistures = weights.map(() => 0.8 * next());
    const table = stageBalance.calculate(weights.map(String), weights, moistures, removed, removedMoistures);
    if (!Array.isArray(table)) {
      expect(first).toBe(-1);
      continue;
    }
    const last = moistures.findLastIndex((moisture) => moisture !== null);
    const total = table[table.length - 1] as number[];
    const [waterOff, dryRemoved, unaccounted, leafRemoved] = [4, 5, 6, 9].map((column) => total[column] as number) as [
      number,
      number,
      number,
      number,
    ];
    const [start, end] = [weights[first] as number, weights[last] as number];
    expect(end + waterOff + leafRemoved + unaccounted).toBeCloseTo(start, 8);
    const dry = (row: number) => (weights[row] as number) * (1 - (moistures[row] as number));
    expect(dry(last) + dryRemoved + unaccounted).toBeCloseTo(dry(first), 8);
    const column = table.slice(0, -1).map((row) => row[9]);
    expect(column.reduce<number>((sum, cell) => sum + (cell === "" ? 0 : (cell as number)), 0)).toBeCloseTo(
      leafRemoved,
      9,
    );
  }
});

test("rows after the last moisture say that the balance ended before them", () => {
  const table = stageBalance.calculate(["fresh", "fired", "resting"], [600, 375, 360], [0.75, 0.6, null]);
  if (!Array.isArray(table)) throw new Error("no table");
  const inCells = table.map((row) => row.map((value) => (value instanceof Phrase ? String(value) : value)));
  expect(inCells[2]).toEqual([
    "resting",
    360,
    "",
    "",
    "",
    "",
    "",
    "",
    "no moisture: the balance ends at the last row with one",
    "",
  ]);
  expect(inCells[3]).toEqual(["total", "", "", "", 225, 0, 0, 1, "", 0]);
});

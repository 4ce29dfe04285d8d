import { bind } from "../cells/bind";
import { targetWeight } from "../core/targets/target-weight";
import { column } from "./season-rows";
import { type Comparison, sideBySide, timeOf } from "./side-by-side";

const call = bind(targetWeight);
const { calculate } = targetWeight;

interface Readings {
  readonly weights: number[][];
  readonly moistures: number[][];
  readonly targets: number[][];
}

function readings(count: number): Readings {
  const rows = Array.from({ length: count }, (_, row) => row);
  return {
    weights: column(rows.map((row) => 280.5 + (row % 90))),
    moistures: column(rows.map((row) => 0.7 + (row % 10) / 100)),
    targets: column(rows.map((row) => 0.4 + (row % 9) / 100)),
  };
}

/** The same cells and the same rows of answers, with nothing between them but the arithmetic. */
function bareArithmetic({ weights, moistures, targets }: Readings): number[][] {
  const answers: number[][] = [];
  for (let row = 0; row < weights.length; row += 1) {
    const weight = (weights[row] as number[])[0] as number;
    const moisture = (moistures[row] as number[])[0] as number;
    const target = (targets[row] as number[])[0] as number;
    answers.push([calculate(weight, moisture, target)]);
  }
  return answers;
}

function oneByOne({ weights, moistures, targets }: Readings): unknown[] {
  const answers: unknown[] = [];
  for (let row = 0; row < weights.length; row += 1)
    answers.push(call(weights[row]?.[0], moistures[row]?.[0], targets[row]?.[0]));
  return answers;
}

export function compareRowsOfCells(): Comparison[] {
  const tenThousand = readings(10_000);
  const { weights, moistures, targets } = tenThousand;
  const bare = { name: "bare arithmetic", run: () => bareArithmetic(tenThousand) };
  const inOneCall = { name: "one call on a range", run: () => call(weights, moistures, targets) };
  const inTenThousand = { name: "10,000 calls", run: () => oneByOne(tenThousand) };
  // Hosts hold many functions: each of these has been called before, as in a filled workbook.
  return [
    sideBySide("TARGETWEIGHT cell by cell, 10,000 cells", inTenThousand, bare),
    sideBySide("TARGETWEIGHT on a range of 10,000 rows", inOneCall, bare, 2),
    sideBySide("the range against the single calls", inOneCall, inTenThousand),
  ];
}

/** Nanoseconds for each row of one call, and of the bare arithmetic on the same cells. */
export function growthOfRows(counts: readonly number[]): { readonly ours: number[]; readonly bare: number[] } {
  const perRow = (run: (given: Readings) => unknown) =>
    counts.map((count) => {
      const given = readings(count);
      return (steadyTime(() => run(given)) / count) * 1e6;
    });
  return {
    ours: perRow(({ weights, moistures, targets }) => call(weights, moistures, targets)),
    bare: perRow(bareArithmetic),
  };
}

export function steadyTime(run: () => unknown): number {
  run();
  return Math.min(...[0, 1, 2].map(() => timeOf(run)));
}

import { bind } from "../cells/bind";
import { CellError, type Grid } from "../cells/values";
import { dayPlan, mostFirings } from "../core/time/day-plan";
import { column } from "./season-rows";
import { type Comparison, sideBySide } from "./side-by-side";

const plan = bind(dayPlan);
const minutes = (count: number): number => count / 1440;

/** The most firings that a call takes: 100 charges of five rounds in three pans, with rests and a break at noon. */
const day: readonly unknown[] = [
  minutes(360),
  100,
  column([25, 20, 20, 15, 15].map(minutes)),
  column([150, 120, 90, 60, 0].map(minutes)),
  3,
  minutes(720),
  minutes(765),
];

/** The whole day, as a cell gets it. */
export const plannedDay = (): Grid => plan(...day);

/** The rows of the firings alone; throws unless the whole day was planned. */
export function firingsOf(answer: Grid): Grid {
  const firings = answer.slice(1, -1);
  const isWhole =
    firings.length === mostFirings && firings.every((row) => row.every((cell) => !(cell instanceof CellError)));
  if (!isWhole) throw new Error(`the day of the bench has ${firings.length} firings: ${String(answer[0]?.[0])}`);
  return firings;
}

/** A plan of the day against putting its finished rows in the order of their starts, which any such table must do. */
export function compareDayPlan(): Comparison {
  const firings = firingsOf(plannedDay()).sort((one, other) => Number(one[0]) - Number(other[0]));
  const start = 4;
  return sideBySide(
    `the day of ${firings.length} firings`,
    { name: "DAYPLAN", run: plannedDay },
    {
      name: "sorting its rows by start",
      run: () => [...firings].sort((one, other) => Number(one[start]) - Number(other[start])),
    },
  );
}

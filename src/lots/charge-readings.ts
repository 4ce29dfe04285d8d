import { bind } from "../cells/bind";
import { CellError, type Grid } from "../cells/values";
import { moistureNow } from "../core/moisture/moisture-now";
import { weight } from "../core/quantities";
import { dryingTime } from "../core/time/drying-time";
import { convertWeight } from "../core/units/convert-weight";
import { type Understood, understood } from "../jobs/read-text";
import type { WeightUnit } from "../jobs/shown-number";
import type { FiringPlan, PlannedCharge } from "./firing-plan";
import type { Lot, Weighing } from "./lot";
import { spreadsheetTime } from "./spreadsheet-time";

/** A weighing that can be read, in the unit of its lot. */
export interface ChargeReading {
  readonly id: string;
  readonly round: number;
  readonly weight: number;
  readonly at: number;
}

const weightParameter = { name: "weight", quantity: weight, takes: "cell", blank: "waits", optional: false } as const;

/** What a text on the way to a weight is taken for, in the unit of the lot. */
export function readWeight(text: string, typedIn: WeightUnit, unit: WeightUnit): Understood {
  const read = understood(text, weightParameter, typedIn);
  if (typedIn === unit || read.is !== "value" || typeof read.value !== "number") return read;
  return { is: "value", value: Number(convertWeight.calculate(read.value, typedIn, unit).toPrecision(15)) };
}

/** What a weighing reads in the unit of its lot; undefined where it cannot be read. */
export function weightRead({ text, unit }: Weighing, lot: Lot): number | undefined {
  const read = readWeight(text, unit, lot.unit);
  return read.is === "value" && typeof read.value === "number" ? read.value : undefined;
}

/** The weighings of a charge as the clock had them, whenever they were noted; without what cannot be read. */
export const readingsOfCharge = (lot: Lot, charge: number): ChargeReading[] =>
  lot.weighings
    .filter((weighing) => weighing.charge === charge)
    .flatMap((weighing): ChargeReading[] => {
      const { id, round, at } = weighing;
      const read = weightRead(weighing, lot);
      return read === undefined ? [] : [{ id, round, weight: read, at }];
    })
    .sort((one, other) => one.at - other.at);

/** The round that a charge is in: the first whose target no reading has reached yet; at the end the last. */
export function roundOf({ targets }: PlannedCharge, readings: readonly ChargeReading[]): number {
  const open = targets.findIndex(
    (target, index) =>
      !readings.some(({ round, weight }) => round > index + 1 || (round === index + 1 && weight <= target)),
  );
  return open === -1 ? targets.length : open + 1;
}

interface ReadingSays {
  /** Below 0 where more has gone than should. */
  readonly left: number;
  readonly moisture: number | CellError;
}

/** What a weight of a charge says: what is left to lose, and how moist the leaf is. */
export function readingSays(weightNow: number, charge: PlannedCharge, round: number, plan: FiringPlan): ReadingSays {
  const moisture = bind(moistureNow)(charge.load, plan.moisture, weightNow)[0]?.[0];
  return {
    left: weightNow - (charge.targets[round - 1] ?? Number.NaN),
    moisture: moisture instanceof CellError ? moisture : Number(moisture),
  };
}

/** From so many timed readings on it is said when a charge will be ready. */
export const fewestTimed = 3;

interface ReadyWhen {
  readonly early: number | undefined;
  readonly likely: number | undefined;
  readonly late: number | undefined;
  /** Why it cannot be said. */
  readonly refusal: CellError | undefined;
  /** As cells of a sheet hold it. */
  readonly cells: Grid;
}

/** When a charge will weigh its target, in a spreadsheet's time; undefined while too little was weighed in this round. */
export function readyWhen(
  readings: readonly ChargeReading[],
  target: number,
  endWeight: number | undefined,
): ReadyWhen | undefined {
  if (readings.length < fewestTimed) return undefined;
  const times = readings.map(({ at }) => [spreadsheetTime(at)]);
  const weights = readings.map((reading) => [reading.weight]);
  const cells = bind(dryingTime)(times, weights, target, endWeight ?? null);
  const [row = []] = cells;
  const [early, likely, late] = row.map((cell) => (typeof cell === "number" ? cell : undefined));
  const [first] = row;
  return { early, likely, late, refusal: first instanceof CellError ? first : undefined, cells };
}

import { noAnswer } from "../errors";
import { type Balance, leastAdjustment } from "../numeric/least-adjustment";
import type { Finding } from "../refusals";
import type { Stage } from "./stage";

/** A stage with what is known of its errors, one standard uncertainty each, and of its loss. */
export interface UncertainStage extends Stage {
  readonly weightError: number;
  readonly moistureError: number;
  /** Share of the dry matter lost since the stage before. */
  readonly dryLoss: number;
}

export interface FittedStage {
  readonly weight: number;
  /** Solved from the rest where it was not measured; then it may lie outside 0…1. */
  readonly moisture: number;
  /** |fitted − read| over its standard deviation; null where nothing could move. */
  readonly score: number | null;
}

export interface StageFit {
  readonly stages: readonly FittedStage[];
  readonly gamma: number;
  readonly degreesOfFreedom: number;
}

/** A stage whose moisture was measured. It reaches the reading before it through `factor`·D − `off`. */
interface Reading extends UncertainStage {
  readonly moisture: number;
  readonly factor: number;
  readonly off: number;
}

const mostRounds = 50;
const settled = 1e-12;
/** How far, as a share of the dry matter, exact readings may disagree: rounding, no more. */
const exactAgreement = 1e-9;

/**
 * The weights and moistures nearest to those read, each weighed by its error, whose dry matter balances from stage to
 * stage: minimise Σ(x − y)²/σ² where f(x) = 0. Each round takes the balances as straight lines at x and measures the
 * adjustment from y: x ← y − V·Aᵀ·(A·V·Aᵀ)⁻¹·[f(x) + A(y − x)]. Measured from x instead, the balances close but the
 * sum of squares is not at its least.
 * Source: Britt and Luecke, Technometrics 15 (1973), without parameters; Knepper and Gorman, AIChE Journal 26 (1980).
 */
export function stageFit(stages: readonly UncertainStage[]): StageFit {
  const readings = readingsOf(stages);
  const y = readings.flatMap(({ weight, moisture }) => [weight, moisture]);
  const errors = readings.flatMap(({ weightError, moistureError }) => [weightError, moistureError]);
  const variances = errors.map((error) => error * error);

  let x = y;
  for (let round = 0; round < mostRounds; round += 1) {
    const balances = balancesAt(readings, x);
    const from = x;
    const residuals = balances.map((balance, row) => {
      let residual = imbalance(readings, row + 1, from);
      for (const [place, slope] of balance) residual += slope * ((y[place] as number) - (from[place] as number));
      return residual;
    });
    const { changes, deviations, rank, open } = leastAdjustment(balances, variances, residuals);
    refuseConflict(readings, open);
    x = y.map((value, place) => value + (changes[place] as number));
    if (isSettled(from, x)) {
      refuseImpossible(readings, x);
      const spread = deviations();
      const scores = changes.map((change, place) => {
        const deviation = spread[place] as number;
        return deviation > 0 ? Math.abs(change) / deviation : null;
      });
      return {
        stages: withSolved(stages, x, scores),
        gamma: changes.reduce((sum, change, place) => sum + squared(change, errors[place] as number), 0),
        degreesOfFreedom: rank,
      };
    }
  }
  const found = { kind: "rounds", rounds: mostRounds } as const;
  throw noAnswer("weights", { do: "come near a balance" }, found, { question: "are all in the same unit?" });
}

const squared = (change: number, error: number): number => (error === 0 ? 0 : (change / error) ** 2);

/** The stages whose moisture was measured; what lies between two of them is carried by the later one. */
function readingsOf(stages: readonly UncertainStage[]): Reading[] {
  const readings: Reading[] = [];
  let factor = 1;
  let off = 0;
  stages.forEach((stage, row) => {
    const { weight, moisture, removed, removedMoisture, dryLoss } = stage;
    if (row > 0) {
      factor *= 1 - dryLoss;
      off *= 1 - dryLoss;
    }
    if (moisture !== null) {
      readings.push({ ...stage, moisture, factor, off });
      factor = 1;
      off = 0;
    } else if (removedMoisture !== null) {
      off += removed * (1 - removedMoisture);
    } else {
      const kept = weight / (weight + removed);
      factor *= kept;
      off *= kept;
    }
  });
  return readings;
}

/** What the dry matter of the reading before holds more than this one: f of the balance that this reading closes. */
function imbalance(readings: readonly Reading[], row: number, x: readonly number[]): number {
  const { factor, off, removed, removedMoisture } = readings[row] as Reading;
  const [weightBefore, moistureBefore, weight, moisture] = x.slice(2 * row - 2, 2 * row + 2) as Four;
  const dryRemoved = removed * (1 - (removedMoisture ?? moisture));
  return factor * weightBefore * (1 - moistureBefore) - off - weight * (1 - moisture) - dryRemoved;
}

type Four = [number, number, number, number];

/** The slopes of every balance at x. */
function balancesAt(readings: readonly Reading[], x: readonly number[]): Balance[] {
  return readings.slice(1).map(({ factor, removed, removedMoisture }, index) => {
    const place = 2 * index;
    const [weightBefore, moistureBefore, weight, moisture] = x.slice(place, place + 4) as Four;
    return new Map([
      [place, factor * (1 - moistureBefore)],
      [place + 1, -factor * weightBefore],
      [place + 2, -(1 - moisture)],
      [place + 3, weight + (removedMoisture === null ? removed : 0)],
    ]);
  });
}

function refuseConflict(readings: readonly Reading[], open: readonly number[]): void {
  const dryMatter = readings.reduce((most, { weight, moisture }) => Math.max(most, weight * (1 - moisture)), 0);
  const row = open.findIndex((gap) => Math.abs(gap) > exactAgreement * dryMatter);
  if (row === -1) return;
  const reading = readings[row + 1] as Reading;
  throw noAnswer("weights", { do: "agree where they are exact" }, { kind: "unbalanced", stage: reading.name });
}

function refuseImpossible(readings: readonly Reading[], x: readonly number[]): void {
  readings.forEach((reading, row) => {
    const [weight, moisture] = x.slice(2 * row, 2 * row + 2) as [number, number];
    if (moisture < 0 || moisture >= 1) {
      throw noAnswer("moistures", { do: "stay from 0 up to 1 in the fit" }, putAt(reading, moisture));
    }
    if (weight <= 0) throw noAnswer("weights", { do: "stay above 0 in the fit" }, putAt(reading, weight));
  });
}

const putAt = ({ name }: Reading, value: number): Finding => ({ kind: "put at", stage: name, value });

/** Weights settle as a share of themselves, moistures as a share of the leaf. */
const isSettled = (before: readonly number[], after: readonly number[]): boolean =>
  after.every((value, place) => {
    const size = place % 2 === 0 ? Math.abs(value) : 1;
    return Math.abs(value - (before[place] as number)) <= settled * size;
  });

/** Every stage with its fit; a moisture that was not measured follows from the dry matter of its neighbours. */
function withSolved(
  stages: readonly UncertainStage[],
  x: readonly number[],
  scores: readonly (number | null)[],
): FittedStage[] {
  const fitted: FittedStage[] = [];
  let place = 0;
  let dry: number | undefined;
  for (const stage of stages) {
    if (stage.moisture === null) {
      if (dry !== undefined) dry = dryAfter(stage, dry);
      fitted.push(solved(stage, dry ?? Number.NaN));
      continue;
    }
    const [weight, moisture] = x.slice(place, place + 2) as [number, number];
    const [ofWeight, ofMoisture] = scores.slice(place, place + 2) as [number | null, number | null];
    const score = ofWeight === null && ofMoisture === null ? null : Math.max(ofWeight ?? 0, ofMoisture ?? 0);
    fitted.push({ weight, moisture, score });
    dry = weight * (1 - moisture);
    place += 2;
  }
  // Stages before the first moisture are worked out backwards.
  for (let row = stages.findIndex(({ moisture }) => moisture !== null) - 1; row >= 0; row -= 1) {
    fitted[row] = solved(stages[row] as UncertainStage, dryBefore(stages[row + 1] as UncertainStage, fitted[row + 1]));
  }
  return fitted;
}

const solved = ({ weight }: UncertainStage, dry: number): FittedStage => ({
  weight,
  moisture: 1 - dry / weight,
  score: null,
});

/** Dry matter on a stage without a moisture, from the dry matter on the stage before. */
function dryAfter({ weight, removed, removedMoisture, dryLoss }: UncertainStage, dry: number): number {
  const left = dry * (1 - dryLoss);
  return removedMoisture === null ? (left * weight) / (weight + removed) : left - removed * (1 - removedMoisture);
}

/** Dry matter on the stage before, from a fitted stage. */
function dryBefore({ removed, removedMoisture, dryLoss }: UncertainStage, fitted: FittedStage | undefined): number {
  const { weight, moisture } = fitted as FittedStage;
  return (weight * (1 - moisture) + removed * (1 - (removedMoisture ?? moisture))) / (1 - dryLoss);
}

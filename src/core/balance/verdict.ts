import { DomainError, noAnswer } from "../errors";
import { normalQuantile } from "../numeric/normal";
import type { Saying } from "../phrases";
import { type StageFit, stageFit, type UncertainStage } from "./stage-fit";

/** Scores this near, as a share, are the same: the balance cannot tell their rows apart. */
const sameScore = 1e-6;

/**
 * What the fit says of the readings. Only when the sum of squares is too large for the errors is a row named, and only
 * a row whose score is too large for the largest of so many (Šidák).
 */
export function verdict(stages: readonly UncertainStage[], fit: StageFit, tail: number, confidence: number): Saying {
  if (stages.filter(({ moisture }) => moisture !== null).length < 2) return "nothing to balance yet";
  if (tail >= 1 - confidence) return "agrees";
  const scores = fit.stages.map(({ score }) => score ?? 0);
  const rows = scores.filter((score) => score > 0).length;
  const largest = scores.reduce((most, score) => Math.max(most, score), 0);
  if (largest <= criticalScore(confidence, rows)) return "does not balance: no single row stands out";
  const suspects = stages.filter((_, row) => (scores[row] as number) >= largest * (1 - sameScore));
  const [suspect] = suspects as [UncertainStage];
  if (suspects.length > 1) return { kind: "cannot tell", stages: suspects.map(({ name }) => name) };
  return { kind: "suspect", stage: suspect.name, ...remedy(stages, suspect) };
}

/** The score that the largest of so many passes by chance as rarely as the confidence allows. */
const criticalScore = (confidence: number, rows: number): number => normalQuantile((1 + confidence ** (1 / rows)) / 2);

/** What would fit in place of a reading: its weight if its moisture is right, and the reverse. */
function remedy(stages: readonly UncertainStage[], suspect: UncertainStage) {
  const { weight } = suspect;
  const dryIfWeightRight = fitWithout(stages, suspect, false)?.dry;
  return {
    weight: fitWithout(stages, suspect, true)?.fitting,
    moisture: dryIfWeightRight !== undefined && dryIfWeightRight <= weight ? 1 - dryIfWeightRight / weight : undefined,
  };
}

interface FitWithout {
  readonly gamma: number;
  /** The dry matter that the other rows leave for this one. */
  readonly dry: number;
  /** The weight that holds it if the moisture of the row is right. */
  readonly fitting: number;
}

/** The fit of the other rows; undefined where they do not fit, or leave no dry matter for this one. */
function fitWithout(
  stages: readonly UncertainStage[],
  suspect: UncertainStage,
  moistureIsRight: boolean,
): FitWithout | undefined {
  const right = suspect.moisture as number;
  const removedMoisture = suspect.removedMoisture ?? (moistureIsRight ? right : null);
  const without: UncertainStage = { ...suspect, moisture: null, removedMoisture };
  try {
    const fit = stageFit(stages.map((stage) => (stage === suspect ? without : stage)));
    const { weight, moisture } = fit.stages[stages.indexOf(suspect)] as { weight: number; moisture: number };
    const dry = weight * (1 - moisture);
    return dry > 0 ? { gamma: fit.gamma, dry, fitting: dry / (1 - right) } : undefined;
  } catch (problem) {
    if (problem instanceof DomainError) return undefined;
    throw problem;
  }
}

/** Every row means another fit, and a fit of this many rows takes a few hundredths of a second. */
const mostLeftOut = 50;
/** Of the sum of squares, for each row: readings that are five times as far apart as their errors say. */
const worstRest = 25;

/**
 * Where no fit settles: the row that does not belong, which is the one without which the rest fits best. In a simulation
 * of misread lots, docs/how-sure.md, this names the misread row, while where the fit went wrong is often another.
 */
export function misfit(stages: readonly UncertainStage[]): DomainError | undefined {
  const read = stages.filter(({ moisture }) => moisture !== null);
  // Of two rows either may be the wrong one.
  if (read.length < 3 || read.length > mostLeftOut) return undefined;
  const fits = read.flatMap((stage) => {
    const fit = fitWithout(stages, stage, true);
    return fit === undefined ? [] : [{ stage, ...fit }];
  });
  const [suspect] = fits.sort((one, other) => one.gamma - other.gamma);
  // Where the rest does not fit without it either, more than one row is wrong.
  if (suspect === undefined || suspect.gamma > worstRest * read.length) return undefined;
  const { stage, fitting } = suspect;
  const found = { kind: "misfit", stage: stage.name, weight: stage.weight, fitting } as const;
  return noAnswer("weights", { do: "come near a balance" }, found, { question: "are all in the same unit?" });
}

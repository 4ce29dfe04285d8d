import { DomainError } from "../errors";
import { normalQuantile } from "../numeric/normal";
import { shown } from "../shown";
import { listed, named } from "./stage";
import { type StageFit, stageFit, type UncertainStage } from "./stage-fit";

/** Scores this near, as a share, are the same: the balance cannot tell their rows apart. */
const sameScore = 1e-6;

/**
 * What the fit says of the readings. Only when the sum of squares is too large for the errors is a row named, and only
 * a row whose score is too large for the largest of so many (Šidák).
 */
export function verdict(stages: readonly UncertainStage[], fit: StageFit, tail: number, confidence: number): string {
  if (stages.filter(({ moisture }) => moisture !== null).length < 2) return "nothing to balance yet";
  if (tail >= 1 - confidence) return "agrees";
  const scores = fit.stages.map(({ score }) => score ?? 0);
  const rows = scores.filter((score) => score > 0).length;
  const largest = scores.reduce((most, score) => Math.max(most, score), 0);
  if (largest <= criticalScore(confidence, rows)) return "does not balance: no single row stands out";
  const suspects = stages.filter((_, row) => (scores[row] as number) >= largest * (1 - sameScore));
  const [suspect] = suspects as [UncertainStage];
  if (suspects.length > 1) return `does not balance: cannot tell which of ${listed(suspects)} is wrong`;
  return `does not balance: suspect ${named(suspect)}${remedy(stages, suspect)}`;
}

/** The score that the largest of so many passes by chance as rarely as the confidence allows. */
const criticalScore = (confidence: number, rows: number): number => normalQuantile((1 + confidence ** (1 / rows)) / 2);

/** What would fit in place of a reading: its weight if its moisture is right, and the reverse. */
function remedy(stages: readonly UncertainStage[], suspect: UncertainStage): string {
  const { weight, moisture, removedMoisture } = suspect;
  const right = moisture as number;
  const dryWith = (removedAt: number | null): number | undefined =>
    dryMatterWithout(stages, suspect, { ...suspect, moisture: null, removedMoisture: removedAt });
  const dryIfMoistureRight = dryWith(removedMoisture ?? right);
  const dryIfWeightRight = dryWith(removedMoisture);
  const remedies: string[] = [];
  if (dryIfMoistureRight !== undefined) {
    remedies.push(`weight ${shown(dryIfMoistureRight / (1 - right))} would fit if its moisture is right`);
  }
  if (dryIfWeightRight !== undefined && dryIfWeightRight <= weight) {
    remedies.push(`moisture ${shown(1 - dryIfWeightRight / weight)} if its weight is right`);
  }
  return remedies.length === 0 ? "" : `; ${remedies.join(", ")}`;
}

/** The dry matter that the other rows leave for a row; undefined where they do not fit without it. */
function dryMatterWithout(
  stages: readonly UncertainStage[],
  suspect: UncertainStage,
  withoutMoisture: UncertainStage,
): number | undefined {
  try {
    const fit = stageFit(stages.map((stage) => (stage === suspect ? withoutMoisture : stage)));
    const { weight, moisture } = fit.stages[stages.indexOf(suspect)] as { weight: number; moisture: number };
    const dry = weight * (1 - moisture);
    return dry > 0 ? dry : undefined;
  } catch (problem) {
    if (problem instanceof DomainError) return undefined;
    throw problem;
  }
}

import { isAbove } from "../comparison";
import { optional } from "../define";
import { mustBe } from "../errors";
import { looseWeight, moisture, moistureError, share, weightError } from "../quantities";

/** Width of the band: two standard uncertainties to either side. */
export const coverage = 2;

/** What FINISHEDBAND and FINISHEDCHECK may be told beside the four readings, in the same order in both. */
export const lotDetails = [
  optional("removed", looseWeight, 0),
  optional("removedMoisture", moisture),
  optional("lowLoss", share, 0),
  optional("highLoss", share),
  optional("weightError", weightError, 0),
  // One point is an assumption of this project: few makers know the moisture of fresh leaf better.
  optional("freshMoistureError", moistureError, 0.01),
  optional("finishedMoistureError", moistureError, 0),
] as const;

export type LotDetails = [
  removed: number,
  removedMoisture: number | undefined,
  lowLoss: number,
  highLoss: number | undefined,
  weightError: number,
  freshMoistureError: number,
  finishedMoistureError: number,
];

interface FinishedLimits {
  /** Absent without highLoss: nobody else can know how much a maker's lots lose. */
  readonly low: number | undefined;
  readonly atNoLoss: number;
  readonly high: number;
  /** Above it there is more dry matter in the tea than came in. */
  readonly limit: number;
}

/**
 * Between which finished weights the readings of a lot agree. N = F(1 − Mf) − S(1 − Ms) is the dry matter that went
 * on, P₀ = N/(1 − Mp) the weight at no loss; each error is carried to first order, as independent of the others.
 */
export function finishedLimits(
  freshWeight: number,
  freshMoisture: number,
  finishedMoisture: number,
  ...details: LotDetails
): FinishedLimits {
  const [removed, removedMoisture, lowLoss, highLoss] = details;
  const [, , , , weightError, freshMoistureError, finishedMoistureError] = details;
  if (highLoss !== undefined && isAbove(lowLoss, highLoss)) {
    throw mustBe("highLoss", { kind: "at least", least: lowLoss, argument: "lowLoss" }, highLoss);
  }
  const dryShare = 1 - freshMoisture;
  const removedDryShare = 1 - (removedMoisture ?? freshMoisture);
  const dryMatter = freshWeight * dryShare - removed * removedDryShare;
  if (dryMatter <= 0) {
    const allOfIt = (freshWeight * dryShare) / removedDryShare;
    throw mustBe(
      "removed",
      { kind: "limit", is: "below", limit: allOfIt, what: "which holds all the dry matter of the fresh leaf" },
      removed,
    );
  }
  const atNoLoss = dryMatter / (1 - finishedMoisture);

  // Leaf taken out at the moisture of the fresh leaf shares its error, so only what went on is touched by it.
  const touched = removedMoisture === undefined ? freshWeight - removed : freshWeight;
  const removedError = removed === 0 ? 0 : removedDryShare * weightError;
  const dryMatterError = Math.hypot(dryShare * weightError, removedError, touched * freshMoistureError);
  const relativeError = Math.hypot(
    dryMatterError / dryMatter,
    finishedMoistureError / (1 - finishedMoisture),
    weightError / atNoLoss,
  );
  const up = 1 + coverage * relativeError;
  // Readings so rough that they allow less than nothing allow 0.
  const down = Math.max(0, 1 - coverage * relativeError);
  return {
    low: highLoss === undefined ? undefined : atNoLoss * (1 - highLoss) * down,
    atNoLoss,
    high: atNoLoss * (1 - lowLoss) * up,
    limit: atNoLoss * up,
  };
}

/** How the pages of both functions explain the parameters they share. */
export const lotDetailsExplained = {
  removed: "weight of leaf taken out on the way, sift-outs and samples, as leaf; 0 when left out",
  removedMoisture: "moisture of that leaf when it was weighed; that of the fresh leaf when left out",
  lowLoss: "least share of the dry matter that is lost beside that, as dust and breathing; 0 when left out",
  highLoss: "largest share that is lost beside that in a lot that goes well; no lower limit when left out",
  weightError: "one standard uncertainty of each weight, that of removed leaf too, in its unit; 0 when left out",
  freshMoistureError: "one standard uncertainty of the fresh moisture; one point (0.01) when left out, our assumption",
  finishedMoistureError: "one standard uncertainty of the finished moisture; 0 when left out",
} as const;

/** What both pages have to say about assumptions. */
export const aboutErrors =
  "Errors are single standard uncertainties, and the limits stand two of them away. When freshMoistureError is left out it is one point (0.01). That figure is our own assumption, from no source: a maker who dries samples in an oven knows the moisture better, one who takes it from last year knows it worse. Type your own as soon as you have one, and 0 to take the moisture as exact. At 76 %, one point alone makes the band about 8 % wide to either side.";

export const aboutLosses =
  "There is no honest figure for lowLoss and highLoss that we could supply: they depend on your sifting and your hands. Take them from your own lots. List those that went well and were weighed with care, a dozen or more, and work out 1 less DRYRECOVERY for each, with its sift-outs as removed and their own moisture as removedMoisture. Leave lots out only for a reason that you knew at the time. The mean of these losses, not below 0, is your lowLoss and your highLoss alike: what the errors allow to either side comes on top, so that each error counts once.";

/** What the recipe finds: measured, src/calibrate/studies/finished-check.ts. */
export const aboutPower =
  "Measured with simulated lots, with limits from 20 past ones and one point of error in the fresh moisture: a good lot was called wrong in 6 of 100, a lot that lost 10 % more was found in 66 of 100 and one that lost 15 % more in 94; with half a point of error, 10 % were found in 99. The smallest and the largest of the losses as limits would count the errors twice and find 12.";
